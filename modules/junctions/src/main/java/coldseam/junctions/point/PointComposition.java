package coldseam.junctions.point;

import coldseam.conduction.Polygon;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.PointSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.PointDrawing;
import coldseam.junctions.plan.SectionPlan.Fill;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import coldseam.junctions.section.Band;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * From a point detail and a surface's layers to what can be solved and drawn.
 *
 * <p>The surface reaches at least 1 m and three times the build-up's thickness past the widest body (ISO 10211:2017 clause 5.3,
 * from memory); its rim is adiabatic.
 *
 * @param section a body of revolution; or, where bodies are boxes, what the plane through the axis cuts, sideways and outwards
 * @param boxes what is solved instead of the section where not all bodies are round
 * @param pieces what is drawn in that plane, in painting order
 * @param fills what the section's regions are, in their order; of boxes what those of their body are, empty where air is
 * @param notes what was simplified, in plain words
 */
public record PointComposition(
        PointSection section,
        Optional<PointBoxes> boxes,
        ImmutableList<Piece> pieces,
        ImmutableList<Optional<Fill>> fills,
        ImmutableList<String> notes) {

    /**
     * Composes a detail's section.
     *
     * @throws DetailDoesNotFit where the setup lies outside the detail's valid range, with every reason
     */
    public static PointComposition compose(Detail detail, PointSetup setup) {
        if (!(detail.drawing() instanceof PointDrawing drawing)) {
            throw DetailDoesNotFit.of(
                    detail.who() + " is for: " + detail.kind().label() + ". Choose a detail of a point.");
        }
        PointLaying laying = new PointLaying(detail, drawing, setup);
        return drawing.isRound() ? round(detail, setup, laying) : ofBoxes(detail, setup, laying);
    }

    private static PointComposition round(Detail detail, PointSetup setup, PointLaying laying) {
        PointSection section = section(
                detail,
                setup,
                laying,
                laying.bodies.select(PointLaying.Laid::solved).collect(PointComposition::body));
        ImmutableList<PointSection.Body> floating = section.floating();
        ImmutableList<PointSection.Body> inTheWind = floating.select(body -> laying.inTheWind(body.from()));
        laying.refuseFloating(floating.reject(inTheWind::contains).collect(PointSection.Body::material));
        if (inTheWind.notEmpty()) {
            laying.noteInTheWind();
        }
        ImmutableList<Painted> painted = laying.bodies
                .collect(each -> new Painted(
                        each.material(), each.hole(), each.halfWidth(), each.from(), each.to(), each.solved()))
                .toImmutable();
        return new PointComposition(
                section.without(inTheWind),
                Optional.empty(),
                pieces(laying, section.radius(), painted),
                laying.fills
                        .toImmutable()
                        .newWithAll(laying.bodies
                                .select(each -> each.solved() && !inTheWind.contains(body(each)))
                                .collect(each -> each.material())
                                .collect(PointComposition::fill))
                        .collect(Optional::of),
                laying.notes.distinct().toImmutable());
    }

    private static PointSection.Body body(PointLaying.Laid laid) {
        return new PointSection.Body(
                laid.material().name(),
                laid.material().conductivity(),
                laid.hole(),
                laid.halfWidth(),
                laid.from(),
                laid.to());
    }

    /** Something of a detail's own. */
    static Fill fill(Material material) {
        return new Fill(material, new Origin.OfDetail(material.name()));
    }

    private static PointComposition ofBoxes(Detail detail, PointSetup setup, PointLaying laying) {
        PointBoxes boxes = PointBoxes.of(detail.name(), setup, laying);
        return new PointComposition(
                section(detail, setup, laying, boxes.inPlane().collect(PointBoxes.Crossed::body)),
                Optional.of(boxes),
                pieces(laying, boxes.half(), painted(laying, boxes)),
                boxes.fills(laying.fills.toImmutable()),
                laying.notes.distinct().toImmutable());
    }

    /** What the plane through the axis cuts, with what is only drawn. */
    private static ImmutableList<Painted> painted(PointLaying laying, PointBoxes boxes) {
        MutableList<Painted> all = Lists.mutable.empty();
        for (PointLaying.Laid laid : laying.bodies) {
            for (PointBoxes.Block block : PointBoxes.blocks(laid).select(PointBoxes::isInPlane)) {
                PointSection.Body body = PointBoxes.crossed(block).body();
                boolean solved = laid.solved() && boxes.blocks().contains(block);
                all.add(new Painted(block.material(), body.inner(), body.outer(), body.from(), body.to(), solved));
            }
        }
        return all.toImmutable();
    }

    private static PointSection section(
            Detail detail, PointSetup setup, PointLaying laying, Iterable<PointSection.Body> bodies) {
        return new PointSection(
                detail.name(),
                laying.sheets.toImmutable(),
                Lists.immutable.ofAll(bodies),
                laying.band.rsi(),
                laying.band.rse(),
                laying.radius(),
                setup.indoorTemperature(),
                laying.farTemperature());
    }

    /** A body as it is drawn. */
    private record Painted(Material material, double inner, double outer, double from, double to, boolean solved) {}

    private static ImmutableList<Piece> pieces(PointLaying laying, double radius, ImmutableList<Painted> painted) {
        MutableList<Piece> all = Lists.mutable.empty();
        Band band = laying.band;
        for (Band.Stratum stratum : band.strata()) {
            all.add(new Piece(
                    Polygon.rectangle(0, stratum.inside(), radius, stratum.outside()),
                    stratum.layer().layer().material(),
                    stratum.role(),
                    stratum.solved(),
                    laying.origin(stratum)));
        }
        if (laying.ground > 0) {
            all.add(new Piece(
                    Polygon.rectangle(0, band.thickness(), radius, band.solvedOutside() + laying.ground),
                    PointLaying.SOIL,
                    Role.STRUCTURE,
                    true,
                    new Origin.OfGround()));
        }
        painted.forEach(each -> all.add(new Piece(
                Polygon.rectangle(each.inner(), each.from(), each.outer(), each.to()),
                each.material(),
                each.material().isAir()
                        ? Role.AIR_LAYER
                        : each.material().insulates() ? Role.INSULATION : Role.STRUCTURE,
                each.solved(),
                fill(each.material()).origin())));
        return all.toImmutable();
    }
}
