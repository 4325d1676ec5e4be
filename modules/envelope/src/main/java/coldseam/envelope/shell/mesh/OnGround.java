package coldseam.envelope.shell.mesh;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.files.quantity.Format;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Whether a floor that is said to lie on the ground does. */
public final class OnGround {

    /** m, of fill between stem walls; what lies higher stands on a cellar, a crawl space or posts (judgement). */
    private static final double MOST_FILL = 1.2;

    private OnGround() {}

    /**
     * What is wrong with a facet: its underside lies far over the ground beside one of its corners. Empty where nothing is.
     *
     * @param ground m, z of the ground beside a point of the plan
     */
    public static Optional<String> fault(Facet facet, ToDoubleFunction<Vertex> ground) {
        if (facet.use() != Body.Use.FLOOR || !facet.faces(Exposure.Kind.GROUND)) {
            return Optional.empty();
        }
        Vertex highest = facet.outline().maxBy(corner -> over(corner, ground));
        return Optional.of(highest)
                .filter(corner -> over(corner, ground) > MOST_FILL)
                .map(corner -> Format.of(
                        "it lies on the ground, but its underside is at %.3f m and the ground beside [%.3f m, %.3f m] at %.3f m; up to"
                                + " %.1f m of fill are known. Correct the heights, or say what is below it: a crawl space, a cellar, or"
                                + " an overhang over the open air.",
                        corner.point().z(),
                        corner.point().x(),
                        corner.point().y(),
                        ground.applyAsDouble(corner),
                        MOST_FILL));
    }

    private static double over(Vertex corner, ToDoubleFunction<Vertex> ground) {
        return corner.point().z() - ground.applyAsDouble(corner);
    }
}
