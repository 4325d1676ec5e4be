package coldseam.assemblies;

import coldseam.envelope.Assembly;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Thermal transmittance of an assembly with all that leads to it, by ISO 6946:2017 (from memory).
 *
 * <p>Upper limit R'T: heat flows straight through, 1/R'T = Σ fa/RTa over every path, the paths of several bridged layers
 * multiplying their shares. Lower limit R''T: each bridged layer levels out, 1/Rj = Σ fa/Raj. RT is their mean. A slightly
 * ventilated air layer weighs the totals without and with ventilation by its openings; from a well-ventilated one outwards nothing
 * counts and Rse is Rsi.
 *
 * @param assembly name
 * @param outerSurface what the outer face meets
 * @param interiorSurfaceResistance Rsi, m²·K/W
 * @param exteriorSurfaceResistance Rse as counted, m²·K/W
 * @param layers inside → outside, each with its resistance
 * @param upperLimit R'T, m²·K/W, tapered layers at their thinnest
 * @param lowerLimit R''T, m²·K/W, tapered layers at their thinnest
 * @param taper how tapered layers enter; empty where none is
 * @param total RT, m²·K/W; with tapered layers 1/U of the field
 * @param corrections for gaps, fasteners and rain
 * @param warnings where the result is outside the method's limits
 */
public record Transmittance(
        String assembly,
        HeatFlow direction,
        OuterSurface outerSurface,
        double interiorSurfaceResistance,
        double exteriorSurfaceResistance,
        ImmutableList<LayerResistance> layers,
        double upperLimit,
        double lowerLimit,
        Optional<Taper> taper,
        double total,
        Corrections corrections,
        ImmutableList<Warning> warnings) {

    /** The ratio R'T/R''T above which the method is not valid (ISO 6946:2017 6.7.2, from memory). */
    public static final double MOST_RATIO = 1.5;

    /**
     * The transmittance of an assembly.
     *
     * @throws AssemblyException where the assembly cannot be computed, with all its faults
     */
    public static Transmittance of(Assembly assembly, HeatFlow direction, OuterSurface outerSurface) {
        AssemblyFaults.refuse(assembly);
        return new TransmittanceCalculation(assembly, direction, outerSurface).result();
    }

    /** Without corrections, 1/RT, W/(m²·K). */
    public double uncorrected() {
        return 1 / total;
    }

    /** Uc: with the corrections where they apply, W/(m²·K). */
    public double corrected() {
        return uncorrected() + (corrections.applied() ? corrections.sum() : 0);
    }

    /** The largest relative error of RT, (R'T − R''T)/(2·RT), of its value where no layer is tapered. */
    public double relativeError() {
        return (upperLimit - lowerLimit) / (upperLimit + lowerLimit);
    }

    /** Resistance from surface to surface, RT − Rsi − Rse, m²·K/W: what ISO 13370 calls Rf of a floor. */
    public double surfaceToSurface() {
        return total - interiorSurfaceResistance - exteriorSurfaceResistance;
    }

    /**
     * A tapered field.
     *
     * @param rest R0, m²·K/W, all but what the taper adds to its thinnest place
     * @param greatest R2, m²·K/W, what the taper adds at its thickest
     */
    public record Taper(double rest, double greatest) {}

    /**
     * Corrections of ISO 6946:2017 annex F (from memory), W/(m²·K).
     *
     * @param gaps ΔUg
     * @param fasteners ΔUf
     * @param rain ΔUr
     * @param applied whether they reach 3 % of U together; smaller ones are left out
     */
    public record Corrections(double gaps, double fasteners, double rain, boolean applied) {

        /** ΔU, W/(m²·K). */
        public double sum() {
            return gaps + fasteners + rain;
        }
    }

    /**
     * Something that puts the result outside the method's limits.
     *
     * @param kind of warning
     * @param text what it is, where, and what to do
     */
    public record Warning(Kind kind, String text) {

        /** Kinds of warning. */
        public enum Kind {
            /** R'T/R''T is above 1.5. */
            LIMITS_FAR_APART,
            /** Metal bridges an insulating layer. */
            METAL_BRIDGE,
            /** An air layer is thicker than 0.3 m. */
            THICK_AIR_LAYER,
            /** Gaps, fasteners or rain are given, yet nothing insulates. */
            NOTHING_INSULATES
        }
    }
}
