package coldseam.junctions.vertex;

import coldseam.conduction.Coupling;
import coldseam.conduction.Interval;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BoxSide;
import coldseam.conduction.solid.CutPlanes;
import coldseam.conduction.solid.SolidBody;
import coldseam.junctions.plan.HeatInput;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.Surroundings;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What a vertex adds to the heat loss, and how that follows the conductivities of what it is made of.
 *
 * <p>chi = L3D − Σ psi·l − Σ U·A, each by the temperature factor of the space that it loses heat to. Every plane part of a
 * surface lies beside two cut planes, whose psi take its U·A off once each, so that it comes back once: L3D − Σ L2D·l + Σ U·A.
 *
 * <p>Its slope is the same sum of slopes: of the rooms' heat flow, which is by the spaces' temperature factors, for a difference of
 * one, and of U its U² R.
 */
final class VertexChi {

    /** Relative width of the cut planes' intervals: small beside the body's own. */
    static final double PLANES = 2e-5;

    /**
     * What is asked of a solved cut plane.
     *
     * @param couplings of all environments, W/(m·K)
     * @param slopes of the rooms' heat flow by ln k of each region, W/m
     */
    record Plane(ImmutableList<Coupling> couplings, ImmutableDoubleList slopes) {

        static Plane of(Solution solved) {
            return new Plane(solved.couplings(), solved.slopes(Surroundings.INDOOR));
        }

        private Interval ofRooms(String space) {
            return couplings
                    .detect(each -> each.first().equals(Surroundings.INDOOR)
                                    && each.second().equals(space)
                            || each.first().equals(space) && each.second().equals(Surroundings.INDOOR))
                    .value();
        }
    }

    private final VertexSetup setup;
    private final VertexBody composed;
    private final Function<Section, Plane> solving;
    private final BodySolution solution;
    private final ImmutableList<Optional<HeatInput>> inputs;

    /** W/(m·K), of each cut plane: an axis' low and high one. */
    private final Sloped[] planes = new Sloped[6];

    /** @param solving solves cut planes, whose name tells nothing, to {@link #PLANES} */
    VertexChi(VertexSetup setup, VertexBody composed, BodySolution solution, Function<Section, Plane> solving) {
        this.setup = setup;
        this.composed = composed;
        this.solution = solution;
        this.inputs = composed.inputs();
        this.solving = solving;
        for (int axis = 0; axis < 3; axis++) {
            for (int side = 0; side < 2; side++) {
                planes[2 * axis + side] =
                        composed.isCut(axis, side) ? plane(solution.body(), composed.side(axis, side)) : Sloped.NONE;
            }
        }
    }

    /** What there is to tell. */
    VertexResult.Heat heat() {
        Sloped coupling = Sloped.of(
                weighted(composed.spaces(), space -> solution.coupling(Surroundings.INDOOR, space)),
                inputs,
                solution.slopes(Surroundings.INDOOR).toArray(),
                scale());
        return new VertexResult.Heat(solution, coupling.value(), chi(coupling, false), chi(coupling, true));
    }

    private double scale() {
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        return 1 / difference;
    }

    /** L2D of a cut plane; nothing where it joins no room with what lies outside. */
    private Sloped plane(SolidBody body, BoxSide side) {
        CutPlanes.Cut cut = CutPlanes.cut(body, side);
        Section section = cut.section();
        ImmutableSet<String> faced =
                section.boundaries().collect(each -> each.environment()).toImmutableSet();
        if (!faced.contains(Surroundings.INDOOR) || faced.size() == 1) {
            return Sloped.NONE;
        }
        Plane solved = solving.apply(new Section(
                "cut plane",
                section.symmetry(),
                section.regions(),
                section.environments(),
                section.boundaries(),
                section.probes()));
        return Sloped.of(
                weighted(composed.spaces().select(space -> faced.contains(space.name())), solved::ofRooms),
                cut.boxes().collect(inputs::get),
                solved.slopes().toArray(),
                scale());
    }

    /** The couplings of the rooms with each space, by its temperature factor. */
    private static Interval weighted(ImmutableList<Surroundings.Space> spaces, Function<String, Interval> coupling) {
        Interval sum = Interval.of(0);
        for (Surroundings.Space space : spaces) {
            if (space.factor() > 0) {
                sum = sum.plus(coupling.apply(space.name()).times(space.factor()));
            }
        }
        return sum;
    }

    private Sloped chi(Sloped coupling, boolean internal) {
        Sloped chi = coupling;
        for (int axis = 0; axis < 3; axis++) {
            for (int side = 0; side < 2; side++) {
                if (composed.isCut(axis, side)) {
                    chi = chi.plus(planes[2 * axis + side], -composed.length(axis, side, internal));
                }
            }
            int e = (axis + 1) % 3;
            int f = (axis + 2) % 3;
            for (int quadrant = 0; quadrant < 4; quadrant++) {
                if (setup.surface(axis, quadrant % 2, quadrant / 2)) {
                    chi = chi.plus(
                            surface(axis),
                            composed.length(e, quadrant % 2, internal) * composed.length(f, quadrant / 2, internal));
                }
            }
        }
        return chi;
    }

    /** An axis' U as drawn, by its factor, W/(m²·K). */
    private Sloped surface(int axis) {
        return composed.band(axis).map(band -> surface(axis, band)).orElse(Sloped.NONE);
    }

    private Sloped surface(int axis, Band band) {
        double b = composed.factor(axis);
        double u = band.transmittance();
        ImmutableList<Band.Stratum> layers = band.strata().select(Band.Stratum::solved);
        return Sloped.of(
                Interval.of(b * u),
                layers.collect(each -> Optional.of(HeatInput.of(each.layer().layer()))),
                layers.collectDouble(each -> b * u * u * each.layer().resistance())
                        .toArray(),
                1);
    }
}
