package coldseam.envelope.shell.mesh;

import coldseam.envelope.shell.lattice.Vertex;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A body taken apart into facets, and what only the body knows.
 *
 * @param facets of the whole shell, those left out included
 * @param storeys what lies between each storey and the next
 * @param floorArea m², of all storeys between inner faces; NaN where only the facets can tell
 * @param widestStep m, between the outer faces of two walls; a junction that is shorter belongs to the corner it lies in
 * @param measured whether the corners were measured one by one, as those of explicit surfaces are, not reckoned from a plan
 */
public record BodyFacets(
        ImmutableList<Facet> facets,
        ImmutableList<Above> storeys,
        double floorArea,
        double widestStep,
        boolean measured) {

    /**
     * One storey, and the line where the next storey's walls take over.
     *
     * @param name of the storey
     * @param floor m, z of its floor's upper face
     * @param floorThickness m, of the internal floor on which it stands
     * @param takeOver m, how much higher the line lies on the inner faces than on the outer; zero where nothing says
     *     otherwise
     */
    public record Above(String name, double floor, double floorThickness, double takeOver) {}

    /** Lattice units within which a corner lies on a side: explicit corners were measured, others are reckoned. */
    public long reach() {
        return measured ? Vertex.ONE : 2;
    }
}
