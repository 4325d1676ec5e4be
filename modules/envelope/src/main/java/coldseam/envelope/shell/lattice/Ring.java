package coldseam.envelope.shell.lattice;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Outlines on the lattice: their area and their corners. */
public final class Ring {

    private Ring() {}

    /** The area within corners, the first of which is not repeated. */
    public static Polygon polygon(GeometryFactory factory, ImmutableList<Coordinate> corners) {
        return factory.createPolygon(corners.newWith(corners.getFirst().copy()).toArray(new Coordinate[0]));
    }

    /** Twice the area vector, lattice units squared, exact. */
    public static Vertex doubleArea(ImmutableList<Vertex> outline) {
        Vertex origin = outline.get(0);
        Vertex sum = new Vertex(0, 0, 0);
        for (int i = 1; i + 1 < outline.size(); i++) {
            sum = sum.plus(outline.get(i).minus(origin).cross(outline.get(i + 1).minus(origin)));
        }
        return sum;
    }

    /** The outline without repeated corners and without corners in the middle of a straight line. */
    public static ImmutableList<Vertex> tidy(ImmutableList<Vertex> outline) {
        return within(outline, 0);
    }

    /** The same without corners that rounding alone puts beside a straight line. */
    public static ImmutableList<Vertex> straight(ImmutableList<Vertex> outline) {
        return within(outline, 2 * Vertex.ONE);
    }

    private static ImmutableList<Vertex> within(ImmutableList<Vertex> outline, double off) {
        MutableList<Vertex> kept = Lists.mutable.empty();
        for (Vertex corner : outline) {
            if (kept.isEmpty() || !kept.getLast().equals(corner)) {
                kept.add(corner);
            }
        }
        while (kept.size() > 1 && kept.getFirst().equals(kept.getLast())) {
            kept.remove(kept.size() - 1);
        }
        for (int i = 0; i < kept.size() && kept.size() > 3; ) {
            Vertex before = kept.get((i + kept.size() - 1) % kept.size());
            Vertex after = kept.get((i + 1) % kept.size());
            Vertex here = kept.get(i);
            Vertex turn = here.minus(before).cross(after.minus(here));
            boolean back = off > 0 && here.minus(before).dot(after.minus(here)) < 0;
            if (!back && turn.length() <= off * after.minus(before).length()) {
                kept.remove(i);
                i = Math.max(0, i - 1);
            } else {
                i++;
            }
        }
        return kept.toImmutable();
    }
}
