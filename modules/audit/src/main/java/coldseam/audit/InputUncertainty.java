package coldseam.audit;

import coldseam.assemblies.HeatFlow;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import coldseam.envelope.Assembly;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm.Second;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import coldseam.junctions.section.Band;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What the uncertainty of the conductivities does to the heat-loss coefficient: to first order, each conductivity within its
 * class. The solver's interval says how well the model of the house is computed; this how well the model is known.
 *
 * <p>Of a surface: dH / d ln k = A b U² R, with R the layers' resistance of that material. Of a seam: l (E − Σ b l U² R), with E
 * the energy ∫ k |∇u|² of the material in the section for a unit difference of temperature, which is dL2D / d ln k; the legs
 * lose it as their surfaces do, so that what a seam shares with its surfaces counts once. A layer with members counts
 * as its main material's. On the ground U² R is exact where the floor is well insulated (ISO 13370), and the same on both sides of
 * the difference; beside unheated spaces E is that of the field as it is. Left out: air layers, the ground, frames and glass,
 * points and corners. Worked out apart.
 *
 * @param inputs by the material's name
 */
public record InputUncertainty(ImmutableList<Input> inputs) {

    /**
     * One conductivity.
     *
     * @param material its name
     * @param within share of the conductivity, by which it may be off to either side
     * @param given whether the material says so itself
     * @param effect W/K, that H_T moves when it is off by that
     */
    public record Input(String material, double within, boolean given, double effect) {}

    /** Share of a conductivity where its material says nothing (common practice, no source). */
    public static final double USUAL = 0.1;

    /** Of an audit. */
    public static InputUncertainty of(Audit audit) {
        Map<String, Double> slopes = new TreeMap<>();
        audit.heatLoss().lines().forEach(line -> {
            if (line.part() instanceof HeatLoss.Part.OfSurface of) {
                Surface surface = of.surface();
                surface.assembly()
                        .ifPresent(assembly -> stack(
                                slopes,
                                Band.of("", assembly, surface.exposure(), HeatFlow.through(surface.normal())),
                                line.transmittance().middle(),
                                line.size() * line.factor()));
            }
        });
        Map<String, Map<String, Double>> bySheet = new LinkedHashMap<>();
        for (JunctionRow row : audit.junctions()) {
            if (row.source().computed() && row.sheet().isPresent()) {
                BridgeSheet<JunctionResult> sheet = row.sheet().get();
                bySheet.computeIfAbsent(sheet.id(), id -> seam(sheet.result(), audit))
                        .forEach((material, slope) -> add(slopes, material, slope * row.length() * row.factor()));
            }
        }
        Map<String, Material> materials = new LinkedHashMap<>();
        audit.house()
                .assemblies()
                .forEachValue(assembly -> assembly.layers()
                        .collect(Layer::material)
                        .forEach(material -> materials.put(material.name(), material)));
        return new InputUncertainty(Lists.immutable.withAll(slopes.entrySet()).collect(each -> {
            Optional<Double> given = Optional.ofNullable(materials.get(each.getKey()))
                    .flatMap(material -> material.within().isPresent()
                            ? Optional.of(material.within().getAsDouble())
                            : Optional.empty());
            double within = given.orElse(USUAL);
            return new Input(each.getKey(), within, given.isPresent(), within * each.getValue());
        }));
    }

    /** W/K to either side, where the conductivities are off independently of one another: the root of the sum of squares. */
    public double independent() {
        return Math.sqrt(inputs.sumOfDouble(each -> each.effect() * each.effect()));
    }

    /** W/K to either side, where all are off at once to the worse. */
    public double together() {
        return inputs.sumOfDouble(each -> Math.abs(each.effect()));
    }

    /** H_T with the conductivities off independently, W/K: the solver's interval, widened. */
    public Interval range(Interval total) {
        return new Interval(total.lower() - independent(), total.upper() + independent());
    }

    /** An input's share of the variance, 0 to 1. */
    public double share(Input input) {
        double all = independent();
        return all > 0 ? input.effect() * input.effect() / (all * all) : 0;
    }

    /** Those with the largest shares first; of equal ones by name. */
    public ImmutableList<Input> largestFirst() {
        return inputs.toSortedListBy(each -> -Math.abs(each.effect())).toImmutable();
    }

    /** W/(m·K) for each ln k, of a seam's psi in the site's dimensions. */
    private static Map<String, Double> seam(JunctionResult result, Audit audit) {
        Map<String, Double> slopes = new TreeMap<>();
        JunctionSetup setup = result.setup();
        Solution solution = result.solution();
        double difference = setup.indoorTemperature() - setup.outdoorTemperature();
        double[] energies = solution.field().energies();
        solution.section()
                .regions()
                .forEachWithIndex((region, i) -> material(result, region.material())
                        .ifPresent(material -> add(slopes, material, energies[i] / (difference * difference))));
        boolean external = audit.heatLoss().system() == DimensionSystem.EXTERNAL;
        for (JunctionResult.Leg leg : result.legs()) {
            double length = external ? leg.externalLength() : leg.internalLength();
            band(setup, leg.name())
                    .ifPresent(band -> stack(
                            slopes,
                            band,
                            leg.transmittance(),
                            -length * band.exposure().factor()));
        }
        return slopes;
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

    /** The material of a region of a section; empty of air, frames and the ground. */
    private static Optional<String> material(JunctionResult result, String region) {
        int named = region.indexOf(": ");
        if (named >= 0) {
            return known(region.substring(named + 2));
        }
        return result.plan()
                .pieces()
                .detectOptional(piece -> is(piece, region))
                .flatMap(piece -> known(piece.material().name()));
    }

    private static boolean is(Piece piece, String region) {
        if (piece.origin() instanceof Origin.OfDetail detail) {
            return detail.what().equals(region);
        }
        if (piece.origin() instanceof Origin.OfStrip strip) {
            return strip.what().equals(region);
        }
        return piece.origin() instanceof Origin.ByHand
                && piece.material().name().equals(region);
    }

    private static Optional<String> known(String material) {
        return material.equals("air") ? Optional.empty() : Optional.of(material);
    }

    /** Adds weight · U² R of every layer that carries heat. */
    private static void stack(Map<String, Double> slopes, Band band, double transmittance, double weight) {
        band.strata()
                .select(Band.Stratum::solved)
                .reject(stratum -> stratum.layer().layer().material().isAir())
                .forEach(stratum -> add(
                        slopes,
                        stratum.layer().layer().material().name(),
                        weight * transmittance * transmittance * stratum.layer().resistance()));
    }

    private static void add(Map<String, Double> slopes, String material, double slope) {
        slopes.merge(material, slope, Double::sum);
    }
}
