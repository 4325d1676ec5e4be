package coldseam.assemblies.moisture;

import coldseam.assemblies.AssemblyFaults;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.LayerResistance;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.files.quantity.Format;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What heat and vapour pass one after another, between the framing where there is framing.
 *
 * <p>sd = μ·d. An air layer counts 0.01 m; a vapour-tight sheet at most {@link #TIGHT} m. Layers from a well-ventilated air layer
 * outwards are left out; a slightly ventilated one counts as closed. Source: ISO 13788:2012 clause 6 (from memory).
 *
 * @param interiorSurfaceResistance Rsi, m²·K/W
 * @param exteriorSurfaceResistance Rse, m²·K/W
 * @param slices inside → outside, at least one
 */
public record VapourStack(
        double interiorSurfaceResistance, double exteriorSurfaceResistance, ImmutableList<Slice> slices) {

    /** m: the most a layer's sd counts; an aluminium foil of 0.05 mm has it (ISO 10456:2007 table 5, from memory). */
    public static final double TIGHT = 1500;

    /** m, of an air layer whatever its thickness. */
    private static final double AIR_LAYER = 0.01;

    /** m²·K/W, the most a slice may resist (ISO 13788:2012 6.3, from memory). */
    private static final double MOST_PER_SLICE = 0.25;

    /**
     * A layer or a part of one.
     *
     * @param name of its material
     * @param resistance m²·K/W, zero or more
     * @param diffusion sd, m, greater than zero
     */
    public record Slice(String name, double resistance, double diffusion) {

        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException where one is outside its range
         */
        public Slice {
            Arguments.notNegative("the thermal resistance of " + name, resistance, "m²·K/W");
            Arguments.positive("the sd value of " + name, diffusion, "m");
        }
    }

    /**
     * The stack of an assembly.
     *
     * @param interiorSurfaceResistance Rsi, m²·K/W: of the heat flow's direction for condensation inside, 0.25 in the block method
     * @throws IllegalArgumentException where the assembly cannot be computed or a layer has no vapour resistance factor, naming
     *     every such layer
     */
    public static VapourStack of(
            Assembly assembly, HeatFlow direction, OuterSurface outer, double interiorSurfaceResistance) {
        ImmutableList<String> missing = missing(assembly);
        ImmutableList<String> faults = AssemblyFaults.of(assembly);
        if (missing.notEmpty() || faults.notEmpty()) {
            throw new IllegalArgumentException("assembly \"" + assembly.name() + "\": "
                    + Lists.mutable.withAll(faults).withAll(missing).makeString("; "));
        }
        Transmittance u = Transmittance.of(assembly, direction, outer);
        ImmutableList<Slice> slices = u.layers()
                .select(layer -> layer.counted() > 0)
                .collect(layer -> new Slice(name(layer), layer.resistance(), diffusion(layer.layer())));
        boolean vented = slices.size() < assembly.layers().size();
        double exterior = vented ? direction.interiorSurfaceResistance() : outer.resistance(direction);
        return new VapourStack(interiorSurfaceResistance, exterior, slices);
    }

    /**
     * What keeps an assembly from being computed: one sentence for each solid layer that counts and has no vapour resistance
     * factor, or that no layer counts; empty where nothing does.
     */
    public static ImmutableList<String> missing(Assembly assembly) {
        MutableList<String> missing = Lists.mutable.empty();
        if (assembly.insideVentilation().isEmpty()) {
            missing.add("nothing lies inside its well-ventilated air layer; vapour passes freely");
        }
        assembly.insideVentilation().forEachWithIndex((layer, i) -> {
            if (layer.air().isEmpty()
                    && layer.material().vapourResistanceFactor().isEmpty()) {
                missing.add(Format.of(
                        "layer %d from inside (%s) has no vapour resistance factor; give its material one of 1 or more",
                        i + 1, layer.material().name()));
            }
        });
        return missing.toImmutable();
    }

    private static String name(LayerResistance layer) {
        return layer.layer().material().name();
    }

    /** sd of a layer, m: its material's factor must be known. */
    static double diffusion(Layer layer) {
        if (layer.air().isPresent()) {
            return AIR_LAYER;
        }
        double mu = layer.material().vapourResistanceFactor().orElseThrow();
        return Math.min(TIGHT, mu * layer.thickness());
    }

    /** The same stack cut so that no slice resists more than 0.25 m²·K/W, as ISO 13788 asks. */
    public VapourStack subdivided() {
        return new VapourStack(interiorSurfaceResistance, exteriorSurfaceResistance, slices.flatCollect(slice -> {
            // The allowance keeps a layer of exactly 0.25 whole in spite of round-off.
            int parts = Math.max(1, (int) Math.ceil(slice.resistance() / MOST_PER_SLICE - 1e-9));
            Slice part = new Slice(slice.name(), slice.resistance() / parts, slice.diffusion() / parts);
            return Lists.mutable.withNValues(parts, () -> part);
        }));
    }

    /** RT, m²·K/W. */
    public double resistance() {
        return interiorSurfaceResistance + slices.sumOfDouble(Slice::resistance) + exteriorSurfaceResistance;
    }

    /** How many planes there are: both surfaces and those between slices. */
    int planes() {
        return slices.size() + 1;
    }

    /** °C at each plane, inside → outside. */
    double[] temperatures(double indoor, double outdoor) {
        double total = resistance();
        double[] temperatures = new double[planes()];
        double passed = interiorSurfaceResistance;
        for (int i = 0; i < temperatures.length; i++) {
            temperatures[i] = indoor - (indoor - outdoor) * passed / total;
            if (i < slices.size()) {
                passed += slices.get(i).resistance();
            }
        }
        return temperatures;
    }

    /** sd from the inner surface to each plane, m. */
    double[] positions() {
        double[] positions = new double[planes()];
        for (int i = 0; i < slices.size(); i++) {
            positions[i + 1] = positions[i] + slices.get(i).diffusion();
        }
        return positions;
    }

    /** What lies on either side of a plane, such as "mineral wool | plywood"; within a layer its name twice. */
    String plane(int i) {
        String inside = i == 0 ? "room" : slices.get(i - 1).name();
        String outside = i == slices.size() ? "outdoors" : slices.get(i).name();
        return inside + " | " + outside;
    }
}
