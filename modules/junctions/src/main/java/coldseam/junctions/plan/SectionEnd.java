package coldseam.junctions.plan;

import coldseam.conduction.Point;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A straight piece of a section's outline at which the drawing stops and the house goes on; it is adiabatic. On the way from
 * → to the section lies on the left.
 *
 * @param from m
 * @param to m
 */
public record SectionEnd(Point from, Point to) {

    /** m; a place this near to a boundary lies on it. */
    private static final double ON = 1e-4;

    /** m; how far a section may reach over one of its ends: the rounding of slanted corners. */
    private static final double OVER = 1e-3;

    /** m. */
    public double length() {
        return from.distance(to);
    }

    /** Halfway. */
    public Point middle() {
        return from.middle(to);
    }

    /** Whether a place lies on its line: what is drawn and not solved ends there too, beside it. */
    public boolean aligned(Point place) {
        return Math.abs(beside(place)) < OVER;
    }

    /** The ends of a section of which no more is known: what faces no environment, with all the rest on one side. */
    public static ImmutableList<SectionEnd> of(Section section) {
        return PlanarSubdivision.of(section.regions().collect(Region::outline))
                .edges()
                .select(edge -> edge.left() == PlanarSubdivision.NOTHING || edge.right() == PlanarSubdivision.NOTHING)
                .collect(edge -> edge.right() == PlanarSubdivision.NOTHING
                        ? new SectionEnd(edge.from(), edge.to())
                        : new SectionEnd(edge.to(), edge.from()))
                .reject(end -> section.boundaries().anySatisfy(boundary -> boundary.distance(end.middle()) < ON))
                .select(end -> section.regions()
                        .allSatisfy(region -> region.outline().corners().allSatisfy(end::onThisSide)));
    }

    private boolean onThisSide(Point corner) {
        return beside(corner) > -OVER;
    }

    /** m, to the left of its line. */
    private double beside(Point place) {
        return ((to.x() - from.x()) * (place.y() - from.y()) - (to.y() - from.y()) * (place.x() - from.x())) / length();
    }
}
