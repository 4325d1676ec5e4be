package coldseam.junctions.vertex;

import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.SectionLayout;
import coldseam.junctions.section.SectionLayout.End;
import coldseam.junctions.section.SectionLayout.Piece;
import coldseam.junctions.section.Surroundings;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/**
 * The sections of a vertex's edges, each on the lines of two axes, and the box of cells that all their lines cut.
 *
 * <p>A section goes on past its own cuts as it is there. Past a side where it is not cut there is air.
 */
final class VertexSections {

    /** m, of air past what is drawn. */
    private static final double MARGIN = 0.01;

    /** Lines closer than a micrometre are one. */
    private static final double PER_METRE = 1e6;

    private final VertexSetup setup;
    private final ImmutableList<SectionLayout> layouts;
    /** The edge that leaves through each face of the box: of each axis at its low and its high end. */
    private final ImmutableList<Optional<Integer>> leaving;
    /** m, ascending, of each axis. */
    final double[][] line = new double[3][];
    /** Whether the box is cut at its low and at its high end of each axis, where the house goes on. */
    final boolean[][] cut = new boolean[3][2];
    /** Whether ground ends at the box's high end of each axis: nothing goes on there, and no heat passes. */
    final boolean[] earth = new boolean[3];
    /** m, the inner face of each axis' band; where layers change in the plane of a wall, the inmost. */
    final double[] inside = new double[3];
    /** m, the outer face of each axis' band or thing. */
    final double[] outside = new double[3];
    /** m, that of what of it is solved: not a ventilated air layer and what stands before it. */
    final double[] solved = new double[3];

    /** Of each axis' surface below and above the vertex along axis 2; others where layers change in the plane of a wall. */
    private final Band[][] band = new Band[3][2];
    /** What each axis' surface faces; null where there is none. */
    private final Surroundings.Space[] space = new Surroundings.Space[3];
    /** All that the edges' surfaces face. */
    private final MutableSet<Surroundings.Space> faced = Sets.mutable.empty();
    /** What fills the cells of each edge's section: of its first axis, then of its second. */
    private final Filling[][][] filled;
    /** Boxes of the corner's own detail; empty without one. */
    final Optional<CornerBoxes> corner;

    /**
     * @param own the corner's own detail
     * @param laying lays an edge's detail out
     * @throws DetailDoesNotFit where a section or that detail cannot be laid out, or two sections show other layers for one
     *     surface
     */
    VertexSections(
            VertexSetup setup, Optional<CornerDetail> own, BiFunction<Detail, JunctionSetup, SectionLayout> laying) {
        this.setup = setup;
        this.leaving = Lists.immutable
                .of(0, 1, 2)
                .flatCollect(axis -> Lists.immutable.of(leaving(axis, false), leaving(axis, true)));
        this.layouts = setup.edges().collect(each -> layout(each, laying));
        layouts.forEachWithIndex((layout, i) -> {
            Surroundings around = around(setup.edges().get(i));
            faced.add(around.first());
            layout.second().ifPresent(second -> faced.add(around.second()));
        });
        layouts.forEachWithIndex((layout, i) -> bands(setup.edges().get(i), layout));
        corner = own.map(each -> new CornerBoxes(each, setup, this));
        for (int axis = 0; axis < 3; axis++) {
            lines(axis);
        }
        filled = new Filling[layouts.size()][][];
        for (int i = 0; i < filled.length; i++) {
            filled[i] = fill(setup.edges().get(i), layouts.get(i));
        }
    }

    /** A section; that of a corner over which the walls' inner faces lie farther out than under it, so much farther out. */
    private SectionLayout layout(EdgeEnd edge, BiFunction<Detail, JunctionSetup, SectionLayout> laying) {
        SectionLayout layout = laying.apply(edge.detail(), edge.setup());
        return edge.along() == 2 && edge.growing() && !edge.inPlane()
                ? layout.moved(innerStep(edge.first()), innerStep(edge.second()))
                : layout;
    }

    /** m, by which the inner face of an axis' wall lies farther out above the vertex than below. */
    private double innerStep(int axis) {
        return setup.edges()
                .select(edge -> edge.inPlane() && edge.first() == axis)
                .collectDouble(edge -> edge.setup().innerStep())
                .sum();
    }

    private void bands(EdgeEnd edge, SectionLayout layout) {
        Surroundings around = around(edge);
        if (edge.inPlane()) {
            band(edge.first(), 0, layout.first(), around.first());
            band(edge.first(), 1, layout.second().orElseThrow(), around.second());
            return;
        }
        for (int half = 0; half < 2; half++) {
            if (edge.along() != 2
                    || edge.growing() == (half == 1)
                    || setup.edges().noneSatisfy(EdgeEnd::inPlane)) {
                int of = half;
                band(edge.first(), of, layout.first(), around.first());
                layout.second().ifPresent(second -> band(edge.second(), of, second, around.second()));
            }
        }
        outside[edge.second()] = Math.max(outside[edge.second()], layout.thing());
        solved[edge.second()] = Math.max(solved[edge.second()], layout.thing());
    }

    private static Surroundings around(EdgeEnd edge) {
        return Surroundings.of(edge.setup().firstExposure(), edge.setup().secondExposure());
    }

    /** Spaces as warm as one another, of one surface resistance, are one to the heat. */
    private Surroundings.Space together(Surroundings.Space one) {
        String names = faced.select(
                        each -> each.factor() == one.factor() && each.surfaceResistance() == one.surfaceResistance())
                .collect(Surroundings.Space::name)
                .toSortedList()
                .makeString(" and ");
        return new Surroundings.Space(names, one.factor(), one.surfaceResistance());
    }

    private void band(int axis, int half, Band found, Surroundings.Space beside) {
        Surroundings.Space there = together(beside);
        if (space[axis] != null && !space[axis].equals(there)) {
            throw DetailDoesNotFit.of("one of its surfaces faces " + space[axis].name() + " on one side and "
                    + there.name() + " on the other");
        }
        space[axis] = there;
        Band before = band[axis][half];
        if (before != null && !(before.strata().equals(found.strata()) && before.rse() == found.rse())) {
            throw DetailDoesNotFit.of(
                    "the layers on the two sides of one of its surfaces differ, so no single stack reaches the corner");
        }
        band[axis][half] = found;
        inside[axis] = Math.min(inside[axis], found.inside());
        outside[axis] = Math.max(outside[axis], found.outside());
        solved[axis] = Math.max(solved[axis], found.solvedOutside());
    }

    /** The layers of an axis' surface; those below where they change in its plane; empty where there is none. */
    Optional<Band> band(int axis) {
        return band(axis, 0);
    }

    /** The layers of an axis' surface below or above the vertex, 0 or 1; empty where there is none. */
    Optional<Band> band(int axis, int half) {
        return Optional.ofNullable(band[axis][half]);
    }

    /** What an axis' surface faces; empty where there is none. */
    Optional<Surroundings.Space> space(int axis) {
        return Optional.ofNullable(space[axis]);
    }

    private void lines(int axis) {
        TreeSet<Double> all = new TreeSet<>();
        double soil = Double.POSITIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < layouts.size(); i++) {
            EdgeEnd edge = setup.edges().get(i);
            boolean first = edge.first() == axis;
            if (!first && edge.second() != axis) {
                continue;
            }
            for (Piece piece : layouts.get(i).pieces()) {
                all.add(rounded(first ? piece.s0() : upright(edge, layouts.get(i), piece.t0())));
                all.add(rounded(first ? piece.s1() : upright(edge, layouts.get(i), piece.t1())));
            }
            soil = Math.min(soil, soil(layouts.get(i), first));
            for (End end : layouts.get(i).ends().select(each -> each.alongS() == first)) {
                double at = rounded(first ? end.at() : upright(edge, layouts.get(i), end.at()));
                low = Math.min(low, at < 0 ? at : low);
                high = Math.max(high, at > 0 ? at : high);
            }
        }
        corner.ifPresent(boxes -> all.addAll(boxes.lines(axis).castToList()));
        cut[axis][0] = low < 0;
        cut[axis][1] = high > 0;
        earth[axis] = !cut[axis][1] && soil < Double.POSITIVE_INFINITY;
        double from = cut[axis][0] ? low : all.first() - MARGIN;
        double to = cut[axis][1] ? high : earth[axis] ? soil : all.last() + MARGIN;
        all.add(from);
        all.add(to);
        line[axis] = all.subSet(from, true, to, true).stream()
                .mapToDouble(each -> each)
                .toArray();
    }

    /** Where the ground of a section ends, m along s or t; endless where it has none. */
    private static double soil(SectionLayout layout, boolean alongS) {
        return layout.pieces()
                .select(each -> each.fill().origin() instanceof Origin.OfGround)
                .collectDouble(each -> rounded(alongS ? each.s1() : each.t1()))
                .maxIfEmpty(Double.POSITIVE_INFINITY);
    }

    static double rounded(double at) {
        // Plus nothing, so that no line lies at both 0 and -0.
        return Math.rint(at * PER_METRE) / PER_METRE + 0.0;
    }

    /** How many cells an axis has. */
    int cells(int axis) {
        return line[axis].length - 1;
    }

    /** The middle of a cell along an axis, m. */
    double middle(int axis, int cell) {
        return (line[axis][cell] + line[axis][cell + 1]) / 2;
    }

    private Filling[][] fill(EdgeEnd edge, SectionLayout layout) {
        Filling[][] all = new Filling[cells(edge.first())][cells(edge.second())];
        for (int i = 0; i < all.length; i++) {
            for (int j = 0; j < all[i].length; j++) {
                double s = within(layout, true, middle(edge.first(), i));
                double t = within(layout, false, upright(edge, layout, middle(edge.second(), j)));
                all[i][j] = at(edge, layout, s, t);
            }
        }
        return all;
    }

    /** Between t of a section and its second axis: a thing is drawn upwards from its near face, whichever way the axis points. */
    private double upright(EdgeEnd edge, SectionLayout layout, double at) {
        return layout.second().isEmpty() && edge.second() == 2 && !setup.upwards() ? layout.thing() - at : at;
    }

    /** A place past the section's own cut is as it is at the cut. */
    private static double within(SectionLayout layout, boolean alongS, double at) {
        double place = at;
        for (End end : layout.ends().select(each -> each.alongS() == alongS)) {
            place = end.high() ? Math.min(place, end.at() - 2 / PER_METRE) : Math.max(place, end.at() + 2 / PER_METRE);
        }
        return place;
    }

    private Filling at(EdgeEnd edge, SectionLayout layout, double s, double t) {
        ImmutableList<Piece> there = layout.pieces()
                .toReversed()
                .select(each -> each.s0() < s && s < each.s1() && each.t0() < t && t < each.t1());
        if (there.isEmpty() || there.getFirst().conductivity() == 0) {
            return Filling.AIR;
        }
        Piece seen = there.getFirst();
        if (!(seen.fill().origin() instanceof Origin.OfLayer layer)) {
            return Filling.of(seen.fill().material().name(), seen.fill().input(), seen.conductivity());
        }
        // Whichever is drawn last: where like layers of two surfaces turn into one another, what lies there is both's.
        Optional<Origin.OfLayer> turned = there.size() > 1 && !edge.inPlane()
                ? Optional.of(there.get(1))
                        .filter(each -> each.conductivity() == seen.conductivity()
                                && each.fill().material().equals(seen.fill().material()))
                        .map(each -> each.fill().origin())
                        .filter(Origin.OfLayer.class::isInstance)
                        .map(Origin.OfLayer.class::cast)
                        .filter(each -> each.first() != layer.first())
                : Optional.empty();
        int[] own = layer(edge, layer);
        int[] other = turned.map(each -> layer(edge, each)).orElse(new int[] {-1, -1});
        return new Filling(
                seen.fill().material().name(),
                seen.fill().input(),
                seen.conductivity(),
                own[0],
                own[1],
                other[0],
                other[1]);
    }

    /** The axis of the surface that a layer of an edge's section is of, and the layer's number there. */
    private int[] layer(EdgeEnd edge, Origin.OfLayer layer) {
        int axis = layer.first() || edge.inPlane() ? edge.first() : edge.second();
        boolean above = edge.inPlane() ? !layer.first() : edge.along() == 2 && edge.growing();
        boolean other =
                above && band[axis][0] != null && !band[axis][0].strata().equals(band[axis][1].strata());
        return new int[] {axis, layer.index() + (other ? band[axis][0].strata().size() : 0)};
    }

    /** The edge that leaves through a face of the box; empty where none does. */
    Optional<Integer> edge(int axis, int side) {
        return leaving.get(2 * axis + side);
    }

    private Optional<Integer> leaving(int axis, boolean growing) {
        int found = setup.edges().detectIndex(each -> each.along() == axis && each.growing() == growing);
        return found < 0 ? Optional.empty() : Optional.of(found);
    }

    /** What an edge's section shows in a cell of the box. */
    Filling of(int edge, int[] cell) {
        EdgeEnd end = setup.edges().get(edge);
        return filled[edge][cell[end.first()]][cell[end.second()]];
    }

    /** What the sections' drawings simplify. */
    ImmutableList<String> notes() {
        MutableList<String> notes = Lists.mutable.empty();
        layouts.forEach(each -> notes.addAllIterable(each.notes()));
        return notes.distinct().toImmutable();
    }
}
