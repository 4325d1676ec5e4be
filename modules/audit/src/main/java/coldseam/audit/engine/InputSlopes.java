package coldseam.audit.engine;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.ground.Basement;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.HeatLoss;
import coldseam.audit.VertexSheet;
import coldseam.conduction.Region;
import coldseam.conduction.Solution;
import coldseam.conduction.Solved;
import coldseam.envelope.Assembly;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm.Second;
import coldseam.envelope.Layer;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionResult.Leg.Part;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.JunctionSetup.GroundBlock;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.plan.HeatInput;
import coldseam.junctions.plan.HeatInput.OfFramed;
import coldseam.junctions.plan.HeatInput.OfSpace;
import coldseam.junctions.plan.HeatInput.Other;
import coldseam.junctions.plan.SectionPlan.Fill;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.Surroundings;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;

/**
 * dH_T / d ln of each input of a house, W/K.
 *
 * <p>Of a surface: dH / d ln k = −A b U² dR / d ln k, with R that of its assembly by ISO 6946, members and fasteners counted in
 * ({@link LayerSlopes}); of an air layer A b U² R, for 1/R. Of a seam: l (E − Σ b l U² R), with E how the rooms' heat flow into the section follows the material, for a unit difference of
 * temperature, which is dL2D / d ln k, and nothing of what a neighbour loses there; the legs lose it as their surfaces do, so that
 * what a seam shares with its surfaces counts once. A layer with members is drawn as one body, whose slope is
 * parted among all that its conductivity follows; air between members counts as the whole layer's. Of a point likewise, in its body, but for the ground under it; of a corner as
 * its chi says. What two seams in one section lose more than apart is left out, hundredths of what they lose. On the ground U² R is exact where the floor is well insulated (ISO 13370), and the same on both sides of the
 * difference.
 *
 * <p>An unheated space's factor: all that surfaces, openings, seams and points beside it alone lose, which is in proportion to it.
 * What seams between it and other air lose, and corners, is left out: the one field of each does not tell how much goes which way.
 *
 * <p>The ground: quotients of the formulas of ISO 13370 a ten-thousandth to either side, of surfaces and of the sections' floors;
 * the sections' soil by its energy, where they have any (a foundation wall's head is drawn in outdoor air); where an inner wall stands on it, whose soil is drawn as thick as U asks, by what that moves.
 * A declared U of an opening is its own slope; a described one's parts are those of ISO 10077-1. A frame in a section is a body
 * of its U: k = d/R, R = 1/U − Rsi − Rse, so d ln k / d ln U = 1/(U R). Worked out apart.
 */
final class InputSlopes {

    private final Audit audit;
    private final boolean external;
    private final SortedMap<HeatInput, Double> slopes = new TreeMap<>(HeatInput.ORDER);
    private final Map<Build, Map<HeatInput, Double>> resistances = new HashMap<>();

    /** All that a surface's resistance follows. */
    private record Build(Optional<Assembly> assembly, HeatFlow flow, OuterSurface outer) {}

    InputSlopes(Audit audit) {
        this.audit = audit;
        this.external = audit.heatLoss().system() == DimensionSystem.EXTERNAL;
    }

    /** By the inputs, in their order. */
    SortedMap<HeatInput, Double> sum() {
        audit.heatLoss().lines().forEach(this::line);
        ground();
        Map<String, Map<HeatInput, Double>> bySheet = new LinkedHashMap<>();
        for (BridgeRow row : audit.bridges()) {
            if (row.source().computed() && row.sheet().isPresent()) {
                BridgeSheet<?> sheet = row.sheet().get();
                space(row, sheet.result())
                        .ifPresent(space -> add(slopes, space, row.loss().middle()));
                bySheet.computeIfAbsent(sheet.id(), id -> bridge(sheet.result()))
                        .forEach((input, slope) -> add(slopes, input, slope * row.size() * row.factor()));
            }
        }
        corners();
        return parted();
    }

    /** With what follows layers with members given to all that those follow. */
    private SortedMap<HeatInput, Double> parted() {
        SortedMap<HeatInput, Double> parts = new TreeMap<>(HeatInput.ORDER);
        slopes.forEach((input, slope) -> {
            Map<HeatInput, Double> of = input instanceof OfFramed framed
                    ? LayerSlopes.framed(framed.layer(), audit.shell().surfaces())
                    : Map.of(input, 1.0);
            of.forEach((each, share) -> add(parts, each, slope * share));
        });
        return parts;
    }

    private Map<HeatInput, Double> bridge(BridgeResult result) {
        return result instanceof PointResult point ? point(point) : seam((JunctionResult) result);
    }

    private void corners() {
        for (VertexSheet sheet : audit.vertexSheets()) {
            sheet.result()
                    .heat()
                    .ifPresent(heat -> heat.sloped(audit.heatLoss().system())
                            .slopes()
                            .forEachKeyValue((input, slope) ->
                                    add(slopes, input, slope * sheet.places().size())));
        }
    }

    /** W/K for each ln, of one point's chi. */
    private static Map<HeatInput, Double> point(PointResult result) {
        Map<HeatInput, Double> of = new TreeMap<>(HeatInput.ORDER);
        PointSetup setup = result.setup();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        ImmutableDoubleList flows = result.body()
                .<Solved<?>>map(body -> body)
                .orElseGet(result::solution)
                .slopes(Surroundings.INDOOR);
        result.fills()
                .forEachWithIndex((fill, i) -> fill.map(Fill::input)
                        .filter(input -> input != Other.GROUND)
                        .ifPresent(input -> add(of, input, flows.get(i) / difference)));
        stack(of, Band.of("", setup.host(), setup.exposure(), setup.flow()), result.transmittance(), -result.area());
        return of;
    }

    private void line(HeatLoss.Line line) {
        double weight = line.size() * line.factor();
        host(line.part())
                .filter(surface -> surface.exposure().factor() == line.factor())
                .flatMap(InputSlopes::space)
                .ifPresent(space ->
                        add(slopes, space, weight * line.transmittance().middle()));
        if (line.part() instanceof HeatLoss.Part.OfSurface of) {
            Surface surface = of.surface();
            double u = line.transmittance().middle();
            resistance(surface).forEach((input, slope) -> add(slopes, input, -weight * u * u * slope));
            surface.assembly()
                    .ifPresent(assembly -> stack(
                            slopes,
                            Band.of("", assembly, surface.exposure(), HeatFlow.through(surface.normal())),
                            layer -> layer.air().isPresent(),
                            u,
                            weight));
        } else if (line.part() instanceof HeatLoss.Part.OfOpening of) {
            Optional<WindowTransmittance> parts = WindowTransmittance.of(of.opening());
            if (parts.isEmpty()) {
                add(slopes, Other.OPENINGS, weight * line.transmittance().middle());
            }
            parts.ifPresent(each -> {
                add(slopes, Other.GLASS, line.factor() * each.panes().sumOfDouble(p -> p.area() * p.transmittance()));
                add(slopes, Other.EDGES, line.factor() * each.panes().sumOfDouble(p -> p.perimeter() * p.edge()));
                add(slopes, Other.FRAMES, line.factor() * each.frames().sumOfDouble(p -> p.area() * p.transmittance()));
            });
        }
    }

    /** Of a surface's resistance, asked once of all that are built alike. */
    private Map<HeatInput, Double> resistance(Surface surface) {
        return resistances.computeIfAbsent(
                new Build(surface.assembly(), HeatFlow.through(surface.normal()), OuterSurface.of(surface.exposure())),
                first -> LayerSlopes.resistance(surface));
    }

    /** The surface that a part is, or is in. */
    private Optional<Surface> host(HeatLoss.Part part) {
        if (part instanceof HeatLoss.Part.OfSurface plane) {
            return Optional.of(plane.surface());
        }
        return part instanceof HeatLoss.Part.OfOpening pane
                ? audit.shell()
                        .surfaces()
                        .detectOptional(
                                each -> each.openings().contains(pane.opening().name()))
                : Optional.empty();
    }

    /** The factor of the unheated space that a surface faces. */
    private static Optional<HeatInput> space(Surface surface) {
        return Optional.of(surface.exposure())
                .filter(each -> each.kind() == Exposure.Kind.UNHEATED)
                .map(each -> new OfSpace(each.neighbour()));
    }

    /** The factor that all of a bridge's loss follows; none where it loses heat elsewhere as well. */
    private static Optional<HeatInput> space(BridgeRow row, BridgeResult result) {
        ImmutableList<Optional<HeatInput>> spaces =
                row.surfaces().collect(InputSlopes::space).distinct();
        boolean frameElsewhere = result instanceof JunctionResult junction
                && junction.setup().secondExposure().kind() != Exposure.Kind.UNHEATED;
        return spaces.size() == 1 && !frameElsewhere ? spaces.getOnly() : Optional.empty();
    }

    private void ground() {
        boolean rims = Auditor.rimsComputed(audit.junctions());
        double slope = LayerSlopes.slope(factor -> new SurfaceHeats(audit.house(), audit.shell(), rims, factor)
                .compute()
                .select(heat -> heat.group() == HeatLoss.Group.GROUND)
                .sumOfDouble(heat -> heat.loss(audit.heatLoss().system())));
        if (slope != 0) {
            add(slopes, Other.GROUND, slope);
        }
    }

    /** W/(m·K) for each ln, of a seam's psi in the site's dimensions. */
    private Map<HeatInput, Double> seam(JunctionResult result) {
        Map<HeatInput, Double> of = new TreeMap<>(HeatInput.ORDER);
        JunctionSetup setup = result.setup();
        Solution solution = result.solution();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        ImmutableDoubleList flows = solution.slopes(Surroundings.INDOOR);
        Map<Part, Double> moved = setup.kind().form().ground()
                ? setup.ground().map(block -> moved(setup, block)).orElse(Map.of())
                : Map.of();
        result.plan().fills().collect(Fill::input).forEachWithIndex((input, i) -> {
            add(
                    of,
                    input,
                    flows.get(i)
                            / difference
                            * share(result, input, solution.section().regions().get(i), moved));
        });
        for (JunctionResult.Leg leg : result.legs()) {
            double length = external ? leg.externalLength() : leg.internalLength();
            double onGround = moved.getOrDefault(leg.part(), 0.0);
            if (onGround != 0) {
                add(of, Other.GROUND, -length * onGround);
            }
            if (leg.part() == Part.OPENING) {
                double factor = setup.secondExposure().factor();
                add(of, Other.FRAMES, -length * leg.transmittance() * factor);
            }
            band(setup, leg.part())
                    .ifPresent(band -> stack(
                            of,
                            band,
                            leg.transmittance(),
                            -length * band.exposure().factor()));
        }
        return of;
    }

    /** d ln k of a region for each d ln of the input. */
    private static double share(JunctionResult result, HeatInput input, Region region, Map<Part, Double> moved) {
        JunctionSetup setup = result.setup();
        if (input == Other.FRAMES) {
            Opening opening = setup.opening().orElseThrow();
            return region.conductivity() / (opening.frameDepth() * opening.frameTransmittance());
        }
        if (input == Other.GROUND && setup.kind().form().second() == Second.THING) {
            // Its soil is as thick as U asks: R = 1/U − the floor's, so d ln R = −dU / (U² R), and k d ln k follows.
            JunctionResult.Leg floor = result.legs().getFirst();
            Band band = Band.of(setup.kind(), 0, setup.first(), setup.firstExposure());
            double soil = 1 / floor.transmittance() - band.rsi() - band.resistance() - band.rse();
            return moved.getOrDefault(floor.part(), 0.0) / (floor.transmittance() * floor.transmittance() * soil);
        }
        return 1;
    }

    /** dU / d ln k of the ground, of each leg that meets it. */
    private static Map<Part, Double> moved(JunctionSetup setup, GroundBlock block) {
        JunctionKind kind = setup.kind();
        Band floor = Band.of(kind, 0, setup.first(), setup.firstExposure());
        double depth = block.depth().orElse(0);
        if (!(depth > 0) || setup.second().isEmpty()) {
            return Map.of(
                    Part.FIRST, LayerSlopes.slope(factor -> of(block, factor).transmittance(floor.resistance())));
        }
        Band wall = Band.of(kind, 1, setup.second().get(), setup.secondExposure());
        ToDoubleFunction<Double> under =
                factor -> cellar(block, factor, floor, wall).transmittance();
        ToDoubleFunction<Double> beside =
                factor -> cellar(block, factor, floor, wall).wallTransmittance();
        return Map.of(Part.FIRST, LayerSlopes.slope(under), Part.IN_THE_GROUND, LayerSlopes.slope(beside));
    }

    private static Basement cellar(GroundBlock block, double factor, Band floor, Band wall) {
        return Basement.of(
                of(block, factor).strip(), block.depth().orElseThrow(), floor.resistance(), wall.resistance());
    }

    private static GroundBlock of(GroundBlock block, double factor) {
        return new GroundBlock(
                block.conductivity() * factor, block.floorWidth(), block.wallThickness(), block.depth(), block.edge());
    }

    private static Optional<Band> band(JunctionSetup setup, Part leg) {
        JunctionKind kind = setup.kind();
        return switch (leg) {
            case FIRST -> Optional.of(Band.of(kind, 0, setup.first(), setup.firstExposure()));
            case SECOND, IN_THE_GROUND ->
                setup.second().map(assembly -> Band.of(kind, 1, assembly, setup.secondExposure()));
            case OPENING -> Optional.empty();
        };
    }

    /** Adds weight · U² R of every layer that carries heat. */
    private static void stack(Map<HeatInput, Double> slopes, Band band, double transmittance, double weight) {
        stack(slopes, band, layer -> true, transmittance, weight);
    }

    private static void stack(
            Map<HeatInput, Double> slopes, Band band, Predicate<Layer> meant, double transmittance, double weight) {
        band.strata()
                .select(stratum ->
                        stratum.solved() && meant.test(stratum.layer().layer()))
                .forEach(stratum -> add(
                        slopes,
                        HeatInput.of(stratum.layer().layer()),
                        weight * transmittance * transmittance * stratum.layer().resistance()));
    }

    private static void add(Map<HeatInput, Double> slopes, HeatInput input, double slope) {
        slopes.merge(input, slope, Double::sum);
    }
}
