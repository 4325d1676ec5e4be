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
    public record Above(String name, double floor, double floorThickness, double takeOver) {

        /** m of wall between a deck and the underside of a floor over it, under which no seam of its own fits there (judgement). */
        private static final double CLOSE = 0.05;

        /** m; nobody levels closer. */
        private static final double LEVEL = 0.001;

        /**
         * Whether a deck before a wall ends in the height of the floor behind it or so little under it that both are one seam.
         *
         * @param floor m, z of the floor's upper face
         * @param floorThickness m, of it
         * @param deck m, z of the deck's outer face
         */
        public static boolean isJustOver(double floor, double floorThickness, double deck) {
            return deck < floor && deck >= floor - floorThickness - CLOSE;
        }

        /**
         * The storey's floor behind something flat that its wall rises from; {@link Floor#NONE} where it lies elsewhere, or what
         * carries the one goes on as the other.
         *
         * @param inner m, z of the inner face of what lies flat
         * @param thickness m, of it
         */
        public Floor behind(double inner, double thickness) {
            double rise = floor - floorThickness - inner;
            boolean there = rise <= thickness + CLOSE && rise + floorThickness > 0;
            return floorThickness > 0 && there && Math.abs(rise) > LEVEL ? new Floor(floorThickness, rise) : Floor.NONE;
        }
    }

    /**
     * An internal floor that meets a seam.
     *
     * @param thickness m; zero where there is none
     * @param rise m, of its underside above the inner face of what lies flat before it
     */
    public record Floor(double thickness, double rise) {

        public static final Floor NONE = new Floor(0, 0);
    }

    /** Lattice units within which a corner lies on a side: explicit corners were measured, others are reckoned. */
    public long reach() {
        return measured ? Vertex.ONE : 2;
    }
}
