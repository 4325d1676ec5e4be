package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Together;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * A hole in the shell: open edges that touch at their ends.
 *
 * @param edges that surround it, as far as they are there
 * @param area m², of the plane that would close it; zero where the edges are no closed ring
 */
public record Hole(ImmutableList<OpenEdge> edges, double area, Side side) {

    /** m; ends nearer than this are one corner of the hole. */
    private static final double SAME_CORNER = 1e-6;

    /** The sine of 45°: a plane as steep as this or steeper is a wall. */
    private static final double STEEP = Math.sqrt(0.5);

    /** All holes of a shell, in the order of their first edge. */
    public static ImmutableList<Hole> of(Shell shell) {
        Point3 middle = Vectors.mean(shell.surfaces().flatCollect(Surface::outline));
        return Together.parts(shell.openEdges(), Hole::touch).collect(edges -> hole(edges, middle));
    }

    private static Hole hole(ImmutableList<OpenEdge> edges, Point3 middle) {
        ImmutableList<Point3> ring = ring(edges);
        Point3 vector = ring.size() < 3 ? Vectors.ZERO : Vectors.areaVector(ring);
        ImmutableList<Point3> corners = edges.flatCollect(edge -> Lists.immutable.of(edge.from(), edge.to()));
        Point3 outwards = Vectors.minus(Vectors.mean(corners), middle);
        boolean turned = Vectors.dot(vector, outwards) < 0;
        Point3 normal = turned ? Vectors.times(vector, -1) : vector;
        return new Hole(edges, Vectors.length(vector), side(Vectors.length(vector) > 0 ? normal : outwards));
    }

    private static Side side(Point3 direction) {
        Point3 unit = Vectors.unit(direction);
        if (Math.abs(unit.z()) <= STEEP) {
            return Places.side(Body.Use.WALL, unit);
        }
        return unit.z() > 0 ? Side.ABOVE : Side.BELOW;
    }

    /** The corners one after the other; fewer than three where the edges are no closed ring. */
    private static ImmutableList<Point3> ring(ImmutableList<OpenEdge> edges) {
        MutableList<OpenEdge> left = edges.toList();
        OpenEdge first = left.remove(0);
        MutableList<Point3> ring = Lists.mutable.of(first.from());
        Point3 end = first.to();
        while (left.notEmpty()) {
            Point3 at = end;
            OpenEdge next = left.detect(edge -> near(edge.from(), at) || near(edge.to(), at));
            if (next == null) {
                return Lists.immutable.empty();
            }
            left.remove(next);
            ring.add(at);
            end = near(next.from(), at) ? next.to() : next.from();
        }
        return near(end, ring.getFirst()) ? ring.toImmutable() : Lists.immutable.empty();
    }

    private static boolean touch(OpenEdge a, OpenEdge b) {
        return near(a.from(), b.from()) || near(a.from(), b.to()) || near(a.to(), b.from()) || near(a.to(), b.to());
    }

    private static boolean near(Point3 a, Point3 b) {
        return Vectors.length(Vectors.minus(a, b)) < SAME_CORNER;
    }
}
