package coldseam.junctions.point;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.SurfaceTemperature;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.compute.JunctionComputers;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Computes point thermal transmittances: chi = L3D − U·A over a disc (ISO 10211). Answers equal questions once; safe to use
 * from several threads.
 *
 * <p>chi is a small difference of two larger numbers, so the coupling is solved ten times as narrowly as that of a line
 * junction: 1e-5 of a disc of 3 m² at U 0.2 W/(m²·K) is 0.000006 W/K.
 */
public final class PointComputer {

    /** Rsi for surface temperatures, m²·K/W (ISO 13788:2012, from memory). */
    private static final double SURFACE_TEMPERATURE_RSI = 0.25;

    /** Of the temperature difference: a tenth of what fRsi is printed to. */
    private static final double STEADY = 0.001;

    private static final int MOST_ROUNDS = 3;

    private final Accuracy accuracy;
    private final SectionSolving solving;
    private final Map<Question, PointResult> answers = new ConcurrentHashMap<>();

    private record Question(PointDetail detail, PointSetup setup) {}

    /** @param accuracy of the coupling of the whole disc */
    public PointComputer(Accuracy accuracy) {
        this(accuracy, JunctionComputers.solving());
    }

    /**
     * A computer that solves by other means, such as from a folder of earlier runs.
     *
     * @param accuracy of the coupling of the whole disc
     * @param solving solves the sections
     */
    public PointComputer(Accuracy accuracy, SectionSolving solving) {
        this.accuracy = accuracy;
        this.solving = solving;
    }

    /** 1e-5 of the disc's coupling. */
    public static PointComputer standard() {
        return standard(JunctionComputers.solving());
    }

    /** 1e-5 of the disc's coupling, solved by other means. */
    public static PointComputer standard(SectionSolving solving) {
        return new PointComputer(new Accuracy(1e-5, Accuracy.standard().maximumUnknowns()), solving);
    }

    /**
     * Computes a detail for a surface.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range
     */
    public PointResult compute(PointDetail detail, PointSetup setup) {
        // Computed inside the map, so that of two threads with one question the second waits for the first.
        return answers.computeIfAbsent(new Question(detail, setup), this::answer);
    }

    private PointResult answer(Question question) {
        PointComposition composition = PointComposition.compose(question.detail(), question.setup());
        PointSolution solved = compute(composition.section());
        return new PointResult(
                question.detail(),
                question.setup(),
                solved,
                composition.pieces(),
                Lists.immutable
                        .of(question.detail().drawnRound())
                        .newWithAll(composition.notes())
                        .newWithAll(solved.solution().notes())
                        .distinct());
    }

    /**
     * Solves one section.
     *
     * @throws coldseam.conduction.SectionException where it cannot be drawn
     */
    public PointSolution compute(PointSection section) {
        Solution solution = solving.solve(section.section(), accuracy);
        Interval coupling = solution.coupling(PointSection.INDOOR, PointSection.OUTDOOR);
        SurfaceTemperature<Point> coldest = coldest(section);
        return new PointSolution(
                section,
                solution,
                coupling,
                coupling.plus(-section.transmittance() * section.area()),
                (coldest.lowest() - section.outdoorTemperature())
                        / (section.indoorTemperature() - section.outdoorTemperature()),
                coldest.at());
    }

    /** Narrows until the last refinement changed the temperature by no more than {@link #STEADY}, or three times. */
    private SurfaceTemperature<Point> coldest(PointSection section) {
        double width = accuracy.relativeWidth();
        double steady = STEADY * (section.indoorTemperature() - section.outdoorTemperature());
        SurfaceTemperature<Point> coldest;
        int round = 0;
        do {
            coldest = solving.solve(
                            section.withInterior(SURFACE_TEMPERATURE_RSI).section(),
                            new Accuracy(width, accuracy.maximumUnknowns()))
                    .surface(PointSection.INDOOR);
            width /= 10;
            round++;
        } while (round < MOST_ROUNDS && Math.abs(coldest.change()) > steady);
        return coldest;
    }
}
