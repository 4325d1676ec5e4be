package coldseam.junctions.section;

import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.plan.SectionPlan;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A piece on the chart, in painting order.
 *
 * @param what it is, for drawings and messages
 * @param drawn its outline; of a strip, its way
 * @param solved its outline in the conduction; differs beside membranes
 * @param conductivity W/(m·K), with which it is solved
 * @param insulates whether it counts as insulation
 * @param effect what it does to the conduction
 * @param origin what it was painted for
 */
record Painted(
        String what,
        ImmutableList<Chart.Place> drawn,
        ImmutableList<Chart.Place> solved,
        Material material,
        double conductivity,
        Role role,
        boolean insulates,
        Effect effect,
        SectionPlan.Origin origin) {

    /** One that conducts as its material does, where it is drawn. */
    static Painted conducting(
            String what, ImmutableList<Chart.Place> outline, Material material, Role role, SectionPlan.Origin origin) {
        return new Painted(
                what,
                outline,
                outline,
                material,
                material.conductivity(),
                role,
                material.insulates(),
                Effect.CONDUCTS,
                origin);
    }

    /** What it is, wherever it lies. */
    SectionPlan.Fill fill() {
        return new SectionPlan.Fill(material, origin);
    }

    /** Whether its outline is a way and not an area. */
    boolean strip() {
        return origin instanceof SectionPlan.Origin.OfStrip;
    }

    /** What a piece does to the conduction. */
    enum Effect {
        CONDUCTS,
        /** It is drawn; the conduction does not see it. */
        DRAWN,
        /** It is drawn, and nothing beneath it conducts. */
        REPLACES_BY_AIR,
        /** It is not drawn, and nothing beneath it is there. */
        CLEARS
    }
}
