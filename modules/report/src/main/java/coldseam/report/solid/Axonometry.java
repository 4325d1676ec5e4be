package coldseam.report.solid;

import coldseam.conduction.solid.BodyField;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BoxSide;
import coldseam.conduction.solid.Place;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import java.util.Comparator;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The body from the octant that shows most of the warmest environment's surface, its surfaces in the colours of their
 * temperatures, its cut planes in the tints of their materials.
 *
 * <p>The cells of one grid hide each other in the order of their slabs, so that drawing from the farthest slab to the
 * nearest in each direction is right.
 */
final class Axonometry {

    /** How far the eye is turned from the axes, and raised, in radians. */
    private static final double TURN = Math.toRadians(32);

    private static final double RISE = Math.toRadians(28);

    private final BodySolution solution;
    private final ImmutableList<BodyField.Face> faces;
    /** Towards the eye in each direction: 1 or -1. */
    private final int[] eye;

    Axonometry(BodySolution solution) {
        this.solution = solution;
        this.faces = solution.field().faces();
        this.eye = eye();
    }

    private int[] eye() {
        Optional<String> warmest = solution.body()
                .environments()
                .maxByOptional(each -> each.temperature())
                .map(each -> each.name());
        double[] seen = new double[6];
        for (BodyField.Face face : faces) {
            if (face.environment().equals(warmest)) {
                double area = 1;
                for (int d = 0; d < 3; d++) {
                    area *= d == face.side().direction() ? 1 : face.cell().size(d);
                }
                seen[face.side().ordinal()] += area;
            }
        }
        int[] best = new int[3];
        for (int d = 0; d < 3; d++) {
            // Where nothing decides, the eye stands in front, to the right and above.
            best[d] = seen[2 * d] > seen[2 * d + 1] || d == 1 && seen[2 * d] == seen[2 * d + 1] ? -1 : 1;
        }
        return best;
    }

    /** Colours from the coldest to the warmest surface that is seen. */
    Warmth warmth() {
        ImmutableList<Double> seen = faces.select(
                        face -> sees(face.side()) && face.environment().isPresent())
                .collect(Axonometry::mean);
        return seen.isEmpty() ? new Warmth(0, 0) : new Warmth(seen.min(), seen.max());
    }

    private static double mean(BodyField.Face face) {
        return face.temperatures().sumOfDouble(each -> each) / 4;
    }

    /** Where a place lies in the view: metres to the right and up. */
    Spot at(Place place) {
        // Seen from (ex cos t, ey sin t) the right hand points along (−ey sin t, ex cos t).
        double along = -eye[1] * Math.sin(TURN) * place.x() + eye[0] * Math.cos(TURN) * place.y();
        double towards = eye[0] * Math.cos(TURN) * place.x() + eye[1] * Math.sin(TURN) * place.y();
        double up = Math.cos(RISE) * place.z() - eye[2] * Math.sin(RISE) * towards;
        return new Spot(along, up);
    }

    private ImmutableList<Place> corners(BodyField.Face face) {
        int d = face.side().direction();
        MutableList<Place> corners = Lists.mutable.empty();
        for (int[] corner : new int[][] {{0, 0}, {1, 0}, {1, 1}, {0, 1}}) {
            double[] at = new double[3];
            at[d] = face.side().high() ? face.cell().high(d) : face.cell().low(d);
            int e = (d + 1) % 3;
            int f = (d + 2) % 3;
            at[e] = corner[0] == 0 ? face.cell().low(e) : face.cell().high(e);
            at[f] = corner[1] == 0 ? face.cell().low(f) : face.cell().high(f);
            corners.add(new Place(at[0], at[1], at[2]));
        }
        return corners.toImmutable();
    }

    /** Draws it as large as a box allows. */
    void draw(Canvas canvas, Box box, Warmth warmth, Palettes palettes) {
        ImmutableList<BodyField.Face> seen = faces.select(face -> sees(face.side()))
                .toImmutableSortedList(Comparator.comparingDouble((BodyField.Face face) -> nearness(face, 2))
                        .thenComparingDouble(face -> nearness(face, 1))
                        .thenComparingDouble(face -> nearness(face, 0)));
        Box whole = Box.around(seen.flatCollect(this::corners).collect(this::at));
        double scale = Math.min(box.width() / whole.width(), box.height() / whole.height());
        double dx = box.middleX() - scale * whole.middleX();
        double dy = box.middleY() - scale * whole.middleY();
        for (BodyField.Face face : seen) {
            ImmutableList<Spot> outline =
                    corners(face).collect(this::at).collect(s -> new Spot(dx + scale * s.x(), dy + scale * s.y()));
            Ink ink = face.environment().isPresent()
                    ? warmth.ink(mean(face))
                    : palettes.of(face.piece()).tint().tint(0.3);
            canvas.patch(outline, ink);
            MutableList<ImmutableList<Spot>> rims = Lists.mutable.empty();
            // Rims in the order low and high of the direction after the side's own, then of the one after.
            int[][] ends = {{0, 3}, {1, 2}, {0, 1}, {3, 2}};
            for (int i = 0; i < 4; i++) {
                if (face.rims().get(i)) {
                    rims.add(Lists.immutable.of(outline.get(ends[i][0]), outline.get(ends[i][1])));
                }
            }
            canvas.strokes(rims.toImmutable(), Pen.of(0.5, Palette.INK).rounded());
        }
    }

    private boolean sees(BoxSide side) {
        return side.high() == eye[side.direction()] > 0;
    }

    private double nearness(BodyField.Face face, int d) {
        return eye[d] * (face.cell().low(d) + face.cell().high(d));
    }
}
