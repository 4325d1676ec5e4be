package coldseam.junctions;

import coldseam.conduction.Finite;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Upkeep;
import coldseam.junctions.plan.SectionPlan;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A detail computed for one setup.
 *
 * @param setup what it was computed for
 * @param solution of the heat-flow section, with surface resistances 0.10, 0.13 and 0.17 m²·K/W (ISO 6946)
 * @param plan what is drawn, and where it lies
 * @param legs the plane parts whose U·l is taken off: one for each surface
 * @param coupling L2D, W/(m·K)
 * @param psiExternal W/(m·K)
 * @param psiInternal W/(m·K)
 * @param temperatureFactor fRsi with Rsi 0.25 m²·K/W (ISO 13788); an estimate
 * @param coldest where it is lowest, in the section
 * @param penLine inside the insulation
 * @param weakestPath through everything
 * @param controls the ways of air, water and vapour control, in this order
 * @param frameSetBack m, from the outer face of the wall that its frame stands in to the frame's; empty where the section has none, or
 *     does not draw that wall
 * @param notes what was simplified, in plain words
 */
public record JunctionResult(
        Detail detail,
        JunctionSetup setup,
        Solution solution,
        SectionPlan plan,
        ImmutableList<Leg> legs,
        Interval coupling,
        Interval psiExternal,
        Interval psiInternal,
        double temperatureFactor,
        Point coldest,
        PenLine penLine,
        WeakestPath weakestPath,
        ImmutableList<ControlLine> controls,
        OptionalDouble frameSetBack,
        ImmutableList<String> notes)
        implements BridgeResult {

    /** @throws IllegalStateException where a result is no number, naming the detail */
    public JunctionResult {
        Finite.bounds(psiExternal, "W/(m·K)", () -> "external psi of " + detail.id());
        Finite.bounds(psiInternal, "W/(m·K)", () -> "internal psi of " + detail.id());
        Finite.number(temperatureFactor, "", () -> "fRsi of " + detail.id());
        legs.forEach(leg ->
                Finite.number(leg.transmittance(), "W/(m²·K)", () -> "U of \"" + leg.name() + "\" in " + detail.id()));
    }

    /**
     * A plane part of the section.
     *
     * @param part which of the setup's it is
     * @param name the band's name in its kind
     * @param transmittance U of the stack as drawn (or of ISO 13370 for a floor on ground), W/(m²·K)
     * @param externalLength m, in the section, to the outer faces
     * @param internalLength m, in the section, to the inner faces
     * @param insulationThickness m, of its insulation
     */
    public record Leg(
            Part part,
            String name,
            double transmittance,
            double externalLength,
            double internalLength,
            double insulationThickness) {

        /** What a plane part is of. */
        public enum Part {
            /** The first build-up. */
            FIRST,
            /** The second build-up; beside a cellar above the ground. */
            SECOND,
            /** The second build-up below the ground. */
            IN_THE_GROUND,
            /** A window's frame or a door. */
            OPENING
        }
    }

    /** Temperature factor b of what a plane part faces, 0 to 1: psi is L2D less the sum of b, U and length of its parts. */
    public double factor(Leg leg) {
        return (leg.part() == Leg.Part.FIRST ? setup.firstExposure() : setup.secondExposure()).factor();
    }

    @Override
    public Interval psiOrChi(DimensionSystem system) {
        return psi(system);
    }

    @Override
    public Dimension dimension() {
        return Dimension.LINEAR_TRANSMITTANCE;
    }

    /** By what is drawn on these layers: a mesh asks where they have an air gap. */
    @Override
    public ImmutableList<Upkeep> upkeep() {
        return Upkeep.of(detail, plan.pieces().collect(SectionPlan.Piece::own));
    }

    /** psi in a dimension system, W/(m·K). */
    public Interval psi(DimensionSystem system) {
        return system == DimensionSystem.EXTERNAL ? psiExternal : psiInternal;
    }
}
