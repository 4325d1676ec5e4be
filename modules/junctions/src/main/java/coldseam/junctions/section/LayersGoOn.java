package coldseam.junctions.section;

import coldseam.assemblies.EquivalentLayer;
import coldseam.envelope.KindForm;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.plan.SectionPlan.Origin;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Whether a drawing shows each surface, where it stops, as the house has it: there psi takes off the loss of all its layers, and
 * there each control layer comes in. A layer that is left out, or painted over to the end, would be nobody's. What lies outside a
 * ventilated air layer conducts and controls nothing and may end before.
 */
final class LayersGoOn {

    /** m from the section's end. */
    private static final double NEAR = 1e-3;

    /** Of a layer's thickness that must be seen: a groove or a rule of boards may take the rest (judgement). */
    private static final double SEEN = 0.9;

    private LayersGoOn() {}

    /**
     * Refuses a drawing that leaves out a layer where a surface stops.
     *
     * @param ends across the first surface and, where there is one, the second
     * @throws DetailDoesNotFit with every such layer
     */
    static void require(Detail detail, Scene scene, SectionPlan plan, ImmutableList<Geometry> ends) {
        ImmutableList<String> first = missing(scene.first(), true, plan, ends.getFirst());
        ImmutableList<String> all = first.newWithAll(scene.second()
                .filter(band -> scene.form().second() == KindForm.Second.SURFACE)
                .map(band -> missing(band, false, plan, ends.getLast()))
                .orElse(Lists.immutable.empty()));
        if (all.notEmpty()) {
            throw new DetailDoesNotFit(all.collect(each -> Phrase.of(detail.who() + " leaves out " + each
                    + " where its section ends, and nothing of it goes on into the surface. Paint the band with all its layers"
                    + " there.")));
        }
    }

    private static ImmutableList<String> missing(Band band, boolean first, SectionPlan plan, Geometry end) {
        Geometry strip = end.buffer(NEAR, 1, BufferParameters.CAP_FLAT);
        return band.strata()
                .selectWithIndex((stratum, index) -> stratum.layer().part() != EquivalentLayer.Part.VENTILATED
                        && seen(first, index, plan, strip) < SEEN * (stratum.outside() - stratum.inside()))
                .collect(stratum -> "\"" + stratum.layer().layer().material().name() + "\" of the " + band.name());
    }

    /** m of a layer, across it. */
    private static double seen(boolean first, int index, SectionPlan plan, Geometry strip) {
        return plan.seen()
                        .faces()
                        .select(face -> plan.pieces().get(face.painted()).origin() instanceof Origin.OfLayer layer
                                && layer.first() == first
                                && layer.index() == index)
                        .sumOfDouble(face -> area(face, strip))
                / NEAR;
    }

    private static double area(PlanarSubdivision.Face face, Geometry strip) {
        return Shapes.intersection(Shapes.of(face.rings().getFirst()), strip).getArea();
    }
}
