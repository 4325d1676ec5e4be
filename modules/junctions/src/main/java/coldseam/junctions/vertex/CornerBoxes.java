package coldseam.junctions.vertex;

import coldseam.envelope.Duty;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.detail.CornerDrawing;
import coldseam.junctions.detail.DrawingTerms;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import coldseam.junctions.plan.HeatInput;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.TermsCheck;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;

/** A corner's own detail laid on the layers of a vertex' surfaces: its boxes, along the vertex' axes. */
final class CornerBoxes {

    private final CornerDetail corner;
    private final CornerDrawing drawing;
    private final VertexSetup setup;
    private final VertexSections sections;
    private final MutableMap<String, Double> scope = Maps.mutable.empty();
    private final MutableList<Phrase> reasons = Lists.mutable.empty();
    private final MutableList<Material> materials = Lists.mutable.empty();
    private final ImmutableList<Laid> boxes;

    /** A box between places of each axis, m. */
    private record Laid(ImmutableList<Double> from, ImmutableList<Double> to, Filling filling, boolean open) {

        boolean holds(int axis, double at) {
            return from.get(axis) < at && at < to.get(axis);
        }
    }

    /** @throws DetailDoesNotFit where the layers are not such as the detail asks for, with every reason */
    CornerBoxes(CornerDetail corner, VertexSetup setup, VertexSections sections) {
        this.corner = corner;
        this.drawing = corner.drawing();
        this.setup = setup;
        this.sections = sections;
        name();
        TermsCheck terms = new TermsCheck(corner.detail().who(), drawing.terms(), reasons);
        terms.layers(this::band);
        terms.conditions(this::value);
        this.boxes = drawing.boxes()
                .select(each -> each.where()
                        .map(where -> Band.built(band(where.surface()), where.build()))
                        .orElse(true))
                .flatCollect(each -> laid(each).stream().toList());
        if (reasons.notEmpty()) {
            throw new DetailDoesNotFit(reasons.distinct().toImmutable());
        }
    }

    /** m, along an axis: where boxes begin and end. */
    ImmutableList<Double> lines(int axis) {
        return boxes.flatCollect(each ->
                        Lists.immutable.of(each.from().get(axis), each.to().get(axis)))
                .select(Double::isFinite);
    }

    /**
     * What the last box that holds a place fills it with.
     *
     * @param open whether one is meant that fills only what the sections leave open
     */
    Optional<Filling> at(double[] place, boolean open) {
        return boxes.toReversed()
                .detectOptional(each -> each.open() == open
                        && each.holds(0, place[0])
                        && each.holds(1, place[1])
                        && each.holds(2, place[2]))
                .map(Laid::filling);
    }

    /** The detail with what its boxes are filled with. */
    VertexResult.Own own() {
        return new VertexResult.Own(corner.detail(), materials.distinct().toImmutable());
    }

    /** That it changes what goes on past the drawing. */
    DetailDoesNotFit refused() {
        return DetailDoesNotFit.of(corner.detail().who()
                + " draws over the sections of the edges where they leave the corner; let its boxes end before that");
    }

    /** That it lets air be where no air comes in. */
    DetailDoesNotFit encloses() {
        return DetailDoesNotFit.of(corner.detail().who()
                + " encloses air, through which no heat would pass. Draw what is there, or the space as a box with a material"
                + " of its own: width over its resistance (ISO 6946)");
    }

    /** Whether a box's filling insulates and gives way under a load. */
    boolean isSoft(Filling filling) {
        return materials.anySatisfy(
                each -> each.name().equals(filling.material()) && each.insulates() && !each.canBear(Duty.LOAD));
    }

    /** @throws DetailDoesNotFit where the house's own file puts what gives way in the place of what carries */
    void refuseUnborne(Filling layer) {
        if (corner.detail().own()) {
            throw DetailDoesNotFit.of(
                    corner.detail().who() + " puts what bears no load in the place of " + layer.material()
                            + ", a layer that goes on there. Let its boxes leave it, or draw what carries in its place");
        }
    }

    private int axis(String surface) {
        return corner.axes().get(drawing.kind().surfaces().indexOf(surface));
    }

    private Optional<Band> band(String surface) {
        return sections.band(axis(surface));
    }

    private void name() {
        for (String surface : drawing.kind().surfaces()) {
            // A floor that bears in has no layers here: all its lines lie at its faces.
            double thickness = sections.outside[axis(surface)];
            scope.put(surface + ".inside", 0.0);
            scope.put(surface + ".outside", thickness);
            for (String layer : Lists.immutable
                    .with(Role.values())
                    .collect(DrawingNames::word)
                    .newWithAll(DrawingNames.CONTROLS.collect(DrawingNames::word))) {
                scope.put(surface + "." + layer + ".inside", 0.0);
                scope.put(surface + "." + layer + ".outside", thickness);
            }
            band(surface).ifPresent(band -> band.nameLines(surface, scope));
        }
        drawing.terms().name(scope);
    }

    private double value(Expression expression) {
        return expression.value(scope.toImmutable());
    }

    private Optional<Laid> laid(CornerDrawing.Box box) {
        Double[] from = new Double[3];
        Double[] to = new Double[3];
        for (int surface = 0; surface < 3; surface++) {
            int axis = corner.axes().get(surface);
            Optional<CornerDrawing.Range> range = box.ranges().get(surface);
            from[axis] = range.map(each -> VertexSections.rounded(value(each.from())))
                    .orElse(Double.NEGATIVE_INFINITY);
            to[axis] =
                    range.map(each -> VertexSections.rounded(value(each.to()))).orElse(Double.POSITIVE_INFINITY);
        }
        Optional<Filling> filling = filling(box);
        // Where lines have crossed, because a house's layers are thinner, nothing is painted.
        boolean there = from[0] < to[0] && from[1] < to[1] && from[2] < to[2];
        return filling.filter(any -> there)
                .map(each -> new Laid(Lists.immutable.with(from), Lists.immutable.with(to), each, box.onlyOpen()));
    }

    private Optional<Filling> filling(CornerDrawing.Box box) {
        Optional<CornerDrawing.Like> like = box.material().like();
        if (like.isPresent()) {
            Optional<Band.Stratum> layer = band(like.get().surface())
                    .flatMap(band -> band.main(like.get().role()));
            if (layer.isEmpty()) {
                reasons.add(Phrase.of(corner.detail().who() + " draws " + box.what() + " of the "
                        + like.get().surface() + "'s "
                        + DrawingNames.word(like.get().role())
                        + "; it has none. Choose another detail."));
            }
            layer.ifPresent(each -> materials.add(each.layer().layer().material()));
            return layer.map(each -> Filling.of(
                    each.layer().layer().material().name(),
                    HeatInput.of(each.layer().layer()),
                    each.conductivity()));
        }
        String name = box.material().name().orElseThrow();
        DrawingTerms terms = drawing.terms();
        Optional<Material> found = setup.edges()
                .collect(end -> end.setup().material(name))
                .detectOptional(Optional::isPresent)
                .flatMap(each -> each)
                .or(() -> terms.material(name))
                .or(() -> MaterialLibrary.named(name));
        if (found.isEmpty()) {
            reasons.add(Phrase.of(corner.detail().who() + " draws " + box.what() + " of \"" + name
                    + "\", which is neither the house's, nor in the detail, nor built in. Name another"
                    + " material."));
        }
        found.ifPresent(materials::add);
        return found.map(
                each -> each.isAir() ? Filling.AIR : Filling.of(each.name(), HeatInput.of(each), each.conductivity()));
    }
}
