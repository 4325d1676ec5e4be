package coldseam.envelope.shell.corners;

import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A vertex of the shell: a place where three or more edges meet.
 *
 * @param name unique and stable: the surfaces around it
 * @param at on the outer shell
 * @param ends of the edges that meet here, in the shell's order; an edge that goes on past it has two
 * @param surfaces around it, in the shell's order
 * @param place where a person finds it, in words
 */
public record Corner(String name, Point3 at, ImmutableList<End> ends, ImmutableList<Surface> surfaces, String place) {

    /**
     * An edge as it leaves the vertex.
     *
     * @param away unit vector along it, away from the vertex
     */
    public record End(Edge edge, Point3 away) {}

    /** Degrees between the surfaces of each end, measured indoors, in the ends' order. */
    public ImmutableList<Double> angles() {
        return ends.collect(end -> end.edge().angle());
    }
}
