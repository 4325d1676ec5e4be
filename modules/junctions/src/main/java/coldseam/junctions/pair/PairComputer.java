package coldseam.junctions.pair;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.SectionException;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.junctions.Keeping;
import coldseam.junctions.Once;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.hand.HandDrawing;
import coldseam.junctions.section.SeamRun;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Computes pairs of seams and remembers what it has computed. */
public final class PairComputer implements PairComputing {

    private final Accuracy accuracy;
    private final SectionSolving sections;
    private final Keeping keeping;
    private final Once<PairSetup, PairAnswer> answers = new Once<>(this::kept);
    private final Once<PairSetup, PairAnswer> hindrances = new Once<>(this::hindered);

    /**
     * @param keeping of whole answers
     */
    public PairComputer(Accuracy accuracy, SectionSolving sections, Keeping keeping) {
        this.accuracy = accuracy;
        this.sections = sections;
        this.keeping = keeping;
    }

    @Override
    public PairAnswer compute(PairSetup setup) {
        return answers.answer(setup);
    }

    @Override
    public PairAnswer hindrance(PairSetup setup) {
        return hindrances.answer(setup);
    }

    private PairAnswer kept(PairSetup setup) {
        return keeping.answer(Lists.immutable.of(setup, accuracy), () -> computed(setup));
    }

    private SeamRun run(PairSetup.End end) {
        return SeamRun.of(end.detail(), end.setup(), end.cut());
    }

    /** Both sections, laid along their surface and put together; or what stands in the way. */
    private record Laid(SeamRun one, SeamRun other, Optional<JoinedSections> joined, PairAnswer hindrance) {}

    private Optional<Laid> laid(PairSetup setup) {
        if (byHand(setup.one()) || byHand(setup.other())) {
            return Optional.empty();
        }
        SeamRun one = run(setup.one());
        SeamRun other = run(setup.other());
        boolean alike = JoinedSections.alike(one, other);
        if (!alike || setup.distance() > one.end() + other.end()) {
            PairObstacle obstacle = alike ? PairObstacle.FAR : PairObstacle.OTHER_LAYERS;
            return Optional.of(new Laid(one, other, Optional.empty(), PairAnswer.not(obstacle)));
        }
        JoinedSections joined = new JoinedSections(one, other, setup.distance());
        return Optional.of(
                joined.lacking() > 0
                        ? new Laid(one, other, Optional.empty(), PairAnswer.reaches(joined.lacking()))
                        : new Laid(one, other, Optional.of(joined), PairAnswer.not(PairObstacle.NOT_ASKED)));
    }

    private PairAnswer hindered(PairSetup setup) {
        return laid(setup).map(Laid::hindrance).orElseGet(() -> PairAnswer.not(PairObstacle.BY_HAND));
    }

    private PairAnswer computed(PairSetup setup) {
        Optional<Laid> laid = laid(setup);
        Optional<JoinedSections> joined = laid.flatMap(Laid::joined);
        if (joined.isEmpty()) {
            return laid.map(Laid::hindrance).orElseGet(() -> PairAnswer.not(PairObstacle.BY_HAND));
        }
        try {
            return PairAnswer.of(solved(setup, laid.get().one(), laid.get().other(), joined.get()));
        } catch (SectionException unsolvable) {
            return PairAnswer.not(PairObstacle.UNSOLVABLE);
        }
    }

    private static boolean byHand(PairSetup.End end) {
        return end.detail().drawing() instanceof HandDrawing;
    }

    private PairResult solved(PairSetup setup, SeamRun one, SeamRun other, JoinedSections joined) {
        Solution heatFlow = sections.solve(joined.heatFlow(), accuracy);
        double indoor = setup.one().setup().indoorTemperature();
        double outdoor = setup.one().setup().outdoorTemperature();
        Solution surface = sections.solve(
                joined.surfaceTemperature(),
                SectionSolving.aimed(accuracy, Surroundings.INDOOR, Math.abs(indoor - outdoor)));
        SurfaceTemperature<Point> coldest = surface.surface(Surroundings.INDOOR);
        double more = one.end() + other.end() - setup.distance();
        return new PairResult(
                setup,
                heatFlow,
                coupling(heatFlow, one.surroundings(), other.surroundings()),
                one.surface().transmittance() * one.surface().exposure().factor() * more,
                Surroundings.temperatureFactor(surface, coldest.lowest()),
                coldest.at(),
                joined.seams(),
                heatFlow.notes().newWithAll(surface.notes()).distinct());
    }

    /** W/(m·K), of the rooms with each space outside, by its temperature factor. */
    private static Interval coupling(Solution heatFlow, Surroundings one, Surroundings other) {
        ImmutableList<Surroundings.Space> spaces =
                one.spaces().newWithAll(other.spaces()).distinctBy(Surroundings.Space::name);
        return Surroundings.coupling(heatFlow, spaces);
    }
}
