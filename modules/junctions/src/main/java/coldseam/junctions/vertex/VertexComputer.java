package coldseam.junctions.vertex;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Section;
import coldseam.conduction.SectionException;
import coldseam.conduction.SurfaceTemperature;
import coldseam.conduction.solid.Body;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.CutPlanes;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.Side;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Material;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.BodySolving;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.SectionSolving;
import coldseam.junctions.section.Surroundings;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/** Computes vertices and remembers what it has computed. */
public final class VertexComputer implements VertexComputing {

    /** Relative width of the cut planes' intervals: small beside the body's own. */
    private static final double PLANES = 2e-5;

    /**
     * Relative width from which on refinement is aimed at the coldest place where ground is drawn: its couplings through metres of
     * soil, which converge slowly, are asked of nobody.
     */
    private static final double ON_GROUND = 0.01;

    private final Accuracy accuracy;
    private final BodySolving bodies;
    private final SectionSolving sections;
    private final Function<String, Optional<Material>> library;
    private final Map<VertexSetup, VertexResult> answers = new ConcurrentHashMap<>();

    /** A computer that keeps what it solves in memory only. */
    public static VertexComputer inMemory() {
        return new VertexComputer(BodySolver.STANDARD, BodySolver::solve, Conduction::solve, MaterialLibrary::named);
    }

    /**
     * @param accuracy of the coupling
     * @param bodies solves bodies
     * @param sections solves their cut planes
     * @param library the built-in materials by name
     */
    public VertexComputer(
            Accuracy accuracy,
            BodySolving bodies,
            SectionSolving sections,
            Function<String, Optional<Material>> library) {
        this.accuracy = accuracy;
        this.bodies = bodies;
        this.sections = sections;
        this.library = library;
    }

    /** Computed inside the map, so that of two threads with one question the second waits for the first. */
    @Override
    public VertexResult compute(VertexSetup setup) {
        return answers.computeIfAbsent(setup, this::fitting);
    }

    private VertexResult fitting(VertexSetup setup) {
        try {
            return computed(setup);
        } catch (SectionException unsolvable) {
            throw new DetailDoesNotFit(unsolvable.faults());
        }
    }

    private VertexResult computed(VertexSetup setup) {
        VertexBody composed = VertexBody.of("Vertex", setup, library);
        Optional<VertexResult.Heat> heat = setup.countsHeat() ? Optional.of(heat(setup, composed)) : Optional.empty();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        Accuracy asked = setup.onGround()
                ? new Accuracy(Math.max(accuracy.relativeWidth(), ON_GROUND), accuracy.maximumUnknowns())
                : accuracy;
        BodySolution surface = bodies.solve(
                composed.surfaceTemperature(), SectionSolving.aimed(asked, Surroundings.INDOOR, difference));
        SurfaceTemperature<Place> coldest = surface.surface(Surroundings.INDOOR);
        return new VertexResult(
                setup,
                composed.corner(),
                heat,
                surface,
                (coldest.lowest() - setup.outdoorTemperature()) / difference,
                coldest.at(),
                composed.notes()
                        .newWithAll(heat.map(each -> each.solution().notes()).orElse(surface.notes()))
                        .distinct());
    }

    private VertexResult.Heat heat(VertexSetup setup, VertexBody composed) {
        Body body = composed.heatFlow();
        BodySolution solution = bodies.solve(body, accuracy);
        Interval coupling = weighted(composed.spaces(), solution::coupling);
        Interval[] planes = planes(composed, body);
        return new VertexResult.Heat(
                solution,
                coupling,
                chi(composed, setup, coupling, planes, false),
                chi(composed, setup, coupling, planes, true));
    }

    /** L2D of each cut plane, W/(m·K); zero where it joins no room with what lies outside. */
    private Interval[] planes(VertexBody composed, Body body) {
        Interval[] planes = new Interval[6];
        for (int axis = 0; axis < 3; axis++) {
            for (int side = 0; side < 2; side++) {
                planes[2 * axis + side] =
                        composed.isCut(axis, side) ? plane(composed, body, composed.side(axis, side)) : Interval.of(0);
            }
        }
        return planes;
    }

    private Interval plane(VertexBody composed, Body body, Side side) {
        Section section = CutPlanes.section(body, side);
        ImmutableSet<String> faced =
                section.boundaries().collect(each -> each.environment()).toImmutableSet();
        return faced.contains(Surroundings.INDOOR) && faced.size() > 1
                ? weighted(
                        composed.spaces().select(space -> faced.contains(space.name())),
                        sections.solve(section, new Accuracy(PLANES, accuracy.maximumUnknowns()))::coupling)
                : Interval.of(0);
    }

    /** The couplings of the rooms with each space, by its temperature factor. */
    private static Interval weighted(
            ImmutableList<Surroundings.Space> spaces, BiFunction<String, String, Interval> coupling) {
        Interval sum = Interval.of(0);
        for (Surroundings.Space space : spaces) {
            if (space.factor() > 0) {
                sum = sum.plus(coupling.apply(Surroundings.INDOOR, space.name()).times(space.factor()));
            }
        }
        return sum;
    }

    /**
     * L3D − Σ psi·l − Σ U·A, each by the temperature factor of the space that it loses heat to. Every plane part of a surface lies beside two cut planes, whose psi take its U·A off once each,
     * so that it comes back once: L3D − Σ L2D·l + Σ U·A.
     */
    private static Interval chi(
            VertexBody composed, VertexSetup setup, Interval coupling, Interval[] planes, boolean internal) {
        Interval chi = coupling;
        for (int axis = 0; axis < 3; axis++) {
            for (int side = 0; side < 2; side++) {
                if (composed.isCut(axis, side)) {
                    chi = chi.plus(planes[2 * axis + side].times(-composed.length(axis, side, internal)));
                }
            }
            int e = (axis + 1) % 3;
            int f = (axis + 2) % 3;
            for (int quadrant = 0; quadrant < 4; quadrant++) {
                if (setup.surface(axis, quadrant % 2, quadrant / 2)) {
                    chi = chi.plus(composed.factor(axis)
                            * composed.transmittance(axis)
                            * composed.length(e, quadrant % 2, internal)
                            * composed.length(f, quadrant / 2, internal));
                }
            }
        }
        return chi;
    }
}
