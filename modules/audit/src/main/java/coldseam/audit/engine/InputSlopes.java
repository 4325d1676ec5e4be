package coldseam.audit.engine;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.ground.Basement;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.HeatLoss;
import coldseam.audit.HeatLoss.Part;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.VertexSheet;
import coldseam.conduction.Region;
import coldseam.conduction.Solution;
import coldseam.conduction.solid.PaintedBox;
import coldseam.envelope.Assembly;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm.Second;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.JunctionSetup.GroundBlock;
import coldseam.junctions.PointResult;
import coldseam.junctions.PointSetup;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import coldseam.junctions.point.PointSection;
import coldseam.junctions.section.Band;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;

/**
 * dH_T / d ln of each input of a house, W/K.
 *
 * <p>Of a surface: dH / d ln k = A b U² R, with R the layers' resistance of that material; of an air layer likewise, for 1/R. Of a
 * seam: l (E − Σ b l U² R), with E the energy ∫ k |∇u|² of the material in the section for a unit difference of temperature,
 * which is dL2D / d ln k; the legs lose it as their surfaces do, so that what a seam shares with its surfaces counts once. A
 * layer with members counts as its main material's. Of a point likewise, in its body, but for the ground under it; of a corner as
 * its chi says. On the ground U² R is exact where the floor is well insulated (ISO 13370), and the same on both sides of the
 * difference. A field with a space at b of the difference has b² there where the coupling has b: what its legs lose goes by b²,
 * too, and where all that lies outside has one b, it is taken out of both.
 *
 * <p>The ground: quotients of the formulas of ISO 13370 a ten-thousandth to either side, of surfaces and of the sections' floors;
 * the sections' soil by its energy, where they have any (a foundation wall's head is drawn in outdoor air); where an inner wall stands on it, whose soil is drawn as thick as U asks, by what that moves.
 * A declared U of an opening is its own slope; a described one's parts are those of ISO 10077-1. A frame in a section is a body
 * of its U: k = d/R, R = 1/U − Rsi − Rse, so d ln k / d ln U = 1/(U R). Worked out apart.
 */
final class InputSlopes {

    static final String GROUND = "the ground";
    static final String AIR_LAYERS = "air layers";
    static final String OPENINGS = "windows and doors, their declared U";
    static final String GLASS = "glass";
    static final String EDGES = "edges of glass";
    static final String FRAMES = "frames and doors' leaves";

    /** Step of ln k for quotients of closed formulas, whose error is of its square. */
    private static final double STEP = 1e-4;

    private final Audit audit;
    private final boolean external;
    private final Map<String, Double> slopes = new TreeMap<>();

    InputSlopes(Audit audit) {
        this.audit = audit;
        this.external = audit.heatLoss().system() == DimensionSystem.EXTERNAL;
    }

    /** By the inputs' names. */
    ImmutableMap<String, Double> sum() {
        audit.heatLoss().lines().forEach(this::line);
        ground();
        Map<String, Map<String, Double>> bySheet = new LinkedHashMap<>();
        for (JunctionRow row : audit.junctions()) {
            if (row.source().computed() && row.sheet().isPresent()) {
                BridgeSheet<JunctionResult> sheet = row.sheet().get();
                bySheet.computeIfAbsent(sheet.id(), id -> seam(sheet.result()))
                        .forEach((input, slope) -> add(slopes, input, slope * row.length() * row.factor()));
            }
        }
        points();
        corners();
        return Maps.immutable.ofAll(slopes);
    }

    private void points() {
        Map<String, Map<String, Double>> bySheet = new LinkedHashMap<>();
        for (PointRow row : audit.points()) {
            if (row.source().computed() && row.sheet().isPresent()) {
                BridgeSheet<PointResult> sheet = row.sheet().get();
                bySheet.computeIfAbsent(sheet.id(), id -> point(sheet.result()))
                        .forEach((input, slope) -> add(slopes, input, slope * row.number() * row.factor()));
            }
        }
    }

    private void corners() {
        for (VertexSheet sheet : audit.vertexSheets()) {
            sheet.result()
                    .heat()
                    .ifPresent(heat -> heat.sloped(audit.heatLoss().system())
                            .slopes()
                            .forEachKeyValue((material, slope) -> add(
                                    slopes,
                                    known(material),
                                    slope * sheet.places().size())));
        }
    }

    /** W/K for each ln, of one point's chi. */
    private static Map<String, Double> point(PointResult result) {
        Map<String, Double> of = new TreeMap<>();
        PointSetup setup = result.setup();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        double[] energies = result.body()
                .map(body -> body.field().energies())
                .orElseGet(() -> result.solution().field().energies());
        ImmutableList<String> materials = result.body()
                .map(body -> body.body()
                        .painted()
                        .collect(each -> each.match(PaintedBox.Solid::material, air -> "", none -> "")))
                .orElseGet(() -> result.solution().section().regions().collect(Region::material));
        materials.forEachWithIndex((material, i) -> {
            if (!material.isEmpty() && !material.equals(PointSection.GROUND)) {
                add(of, known(material), energies[i] / (difference * difference));
            }
        });
        stack(of, Band.of("", setup.host(), setup.exposure(), setup.flow()), result.transmittance(), -result.area());
        return of;
    }

    private void line(HeatLoss.Line line) {
        double weight = line.size() * line.factor();
        if (line.part() instanceof Part.OfSurface of) {
            Surface surface = of.surface();
            surface.assembly()
                    .ifPresent(assembly -> stack(
                            slopes,
                            Band.of("", assembly, surface.exposure(), HeatFlow.through(surface.normal())),
                            line.transmittance().middle(),
                            weight));
        } else if (line.part() instanceof Part.OfOpening of) {
            Optional<WindowTransmittance> parts = WindowTransmittance.of(of.opening());
            if (parts.isEmpty()) {
                add(slopes, OPENINGS, weight * line.transmittance().middle());
            }
            parts.ifPresent(each -> {
                add(slopes, GLASS, line.factor() * each.panes().sumOfDouble(p -> p.area() * p.transmittance()));
                add(slopes, EDGES, line.factor() * each.panes().sumOfDouble(p -> p.perimeter() * p.edge()));
                add(slopes, FRAMES, line.factor() * each.frames().sumOfDouble(p -> p.area() * p.transmittance()));
            });
        }
    }

    private void ground() {
        boolean rims = Auditor.rimsComputed(audit.junctions());
        double slope = slope(factor -> new SurfaceHeats(audit.house(), audit.shell(), rims, factor)
                .compute()
                .select(heat -> heat.group() == HeatLoss.Group.GROUND)
                .sumOfDouble(heat -> heat.loss(audit.heatLoss().system())));
        if (slope != 0) {
            add(slopes, GROUND, slope);
        }
    }

    /** df / d ln k at k, of a function of what k is multiplied by. */
    private static double slope(ToDoubleFunction<Double> of) {
        return (of.applyAsDouble(1 + STEP) - of.applyAsDouble(1 - STEP)) / (2 * STEP);
    }

    /** W/(m·K) for each ln, of a seam's psi in the site's dimensions. */
    private Map<String, Double> seam(JunctionResult result) {
        Map<String, Double> of = new TreeMap<>();
        JunctionSetup setup = result.setup();
        Solution solution = result.solution();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        double common = common(setup);
        double[] energies = solution.field().energies();
        Map<String, Double> moved = setup.kind().form().ground()
                ? setup.ground().map(block -> moved(setup, block)).orElse(Map.of())
                : Map.of();
        solution.section()
                .regions()
                .forEachWithIndex((region, i) -> input(result, region)
                        .ifPresent(input -> add(
                                of,
                                input,
                                energies[i]
                                        / (common * difference * difference)
                                        * share(result, input, region, moved))));
        for (JunctionResult.Leg leg : result.legs()) {
            double length = external ? leg.externalLength() : leg.internalLength();
            double onGround = moved.getOrDefault(leg.name(), 0.0);
            if (onGround != 0) {
                add(of, GROUND, -length * onGround);
            }
            if (isFrame(leg)) {
                double factor = setup.secondExposure().factor();
                add(of, FRAMES, -length * leg.transmittance() * factor * factor / common);
            }
            band(setup, leg.name())
                    .ifPresent(band -> stack(
                            of,
                            band,
                            leg.transmittance(),
                            -length * Math.pow(band.exposure().factor(), 2) / common));
        }
        return of;
    }

    /** The temperature factor of all that lies outside; 1 where there is more than one. */
    private static double common(JunctionSetup setup) {
        double first = setup.firstExposure().factor();
        return first == setup.secondExposure().factor() && first > 0 ? first : 1;
    }

    private static boolean isFrame(JunctionResult.Leg leg) {
        return leg.name().equals("frame") || leg.name().equals("door");
    }

    /** d ln k of a region for each d ln of the input. */
    private static double share(JunctionResult result, String input, Region region, Map<String, Double> moved) {
        JunctionSetup setup = result.setup();
        if (input.equals(FRAMES)) {
            Opening opening = setup.opening().orElseThrow();
            return region.conductivity() / (opening.frameDepth() * opening.frameTransmittance());
        }
        if (input.equals(GROUND) && setup.kind().form().second() == Second.THING) {
            // Its soil is as thick as U asks: R = 1/U − the floor's, so d ln R = −dU / (U² R), and k d ln k follows.
            JunctionResult.Leg floor = result.legs().getFirst();
            Band band = Band.of(setup.kind(), 0, setup.first(), setup.firstExposure());
            double soil = 1 / floor.transmittance() - band.rsi() - band.resistance() - band.rse();
            return moved.getOrDefault(floor.name(), 0.0) / (floor.transmittance() * floor.transmittance() * soil);
        }
        return 1;
    }

    /** dU / d ln k of the ground, of each leg that meets it, by the leg's name. */
    private static Map<String, Double> moved(JunctionSetup setup, GroundBlock block) {
        JunctionKind kind = setup.kind();
        Band floor = Band.of(kind, 0, setup.first(), setup.firstExposure());
        String name = kind.bands().getFirst();
        double depth = block.depth().orElse(0);
        if (!(depth > 0) || setup.second().isEmpty()) {
            return Map.of(name, slope(factor -> of(block, factor).transmittance(floor.resistance())));
        }
        Band wall = Band.of(kind, 1, setup.second().get(), setup.secondExposure());
        ToDoubleFunction<Double> under =
                factor -> cellar(block, factor, floor, wall).floorTransmittance();
        ToDoubleFunction<Double> beside =
                factor -> cellar(block, factor, floor, wall).wallTransmittance();
        return Map.of(name, slope(under), wall.name() + " in the ground", slope(beside));
    }

    private static Basement cellar(GroundBlock block, double factor, Band floor, Band wall) {
        return Basement.of(
                of(block, factor).strip(), block.depth().orElseThrow(), floor.resistance(), wall.resistance());
    }

    private static GroundBlock of(GroundBlock block, double factor) {
        return new GroundBlock(
                block.conductivity() * factor, block.floorWidth(), block.wallThickness(), block.depth(), block.edge());
    }

    private static Optional<Band> band(JunctionSetup setup, String leg) {
        JunctionKind kind = setup.kind();
        boolean first = leg.equals(kind.bands().getFirst());
        if (first || kind.form().second() == Second.THING) {
            return Optional.of(Band.of(kind, 0, setup.first(), setup.firstExposure()));
        }
        boolean second =
                kind.form().twoBuildUps() && leg.startsWith(kind.bands().getLast());
        Optional<Assembly> build = second ? setup.second() : Optional.empty();
        Exposure exposure = setup.secondExposure();
        return build.map(assembly -> Band.of(kind, 1, assembly, exposure));
    }

    /** The input that a region of a section hangs on. */
    private static Optional<String> input(JunctionResult result, Region region) {
        int named = region.material().indexOf(": ");
        if (named >= 0) {
            return Optional.of(known(region.material().substring(named + 2)));
        }
        return result.plan()
                .pieces()
                .detectOptional(piece -> is(piece, region.material()))
                .map(piece -> {
                    if (piece.origin() instanceof Origin.OfFrame) {
                        return FRAMES;
                    }
                    return piece.origin() instanceof Origin.OfGround
                            ? GROUND
                            : known(piece.material().name());
                });
    }

    private static boolean is(Piece piece, String region) {
        if (piece.origin() instanceof Origin.OfDetail detail) {
            return detail.what().equals(region);
        }
        if (piece.origin() instanceof Origin.OfStrip strip) {
            return strip.what().equals(region);
        }
        boolean byMaterial = piece.origin() instanceof Origin.ByHand
                || piece.origin() instanceof Origin.OfFrame
                || piece.origin() instanceof Origin.OfGround;
        return byMaterial && piece.material().name().equals(region);
    }

    private static String known(String material) {
        return material.equals("air") ? AIR_LAYERS : material;
    }

    /** Adds weight · U² R of every layer that carries heat. */
    private static void stack(Map<String, Double> slopes, Band band, double transmittance, double weight) {
        band.strata()
                .select(Band.Stratum::solved)
                .forEach(stratum -> add(
                        slopes,
                        known(stratum.layer().layer().material().name()),
                        weight * transmittance * transmittance * stratum.layer().resistance()));
    }

    private static void add(Map<String, Double> slopes, String input, double slope) {
        slopes.merge(input, slope, Double::sum);
    }
}
