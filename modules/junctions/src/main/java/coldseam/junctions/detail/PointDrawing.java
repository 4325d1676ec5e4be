package coldseam.junctions.detail;

import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.Expression;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A point's drawing: bodies on an axis at right angles to a surface, placed from the lines of the surface they go through.
 * Where all of them are round about the axis it is a body of revolution, otherwise it is made of boxes.
 *
 * @param terms what it asks of the surface
 * @param bodies in painting order
 * @param drawnRound how the true shape became the drawn one, and what that leaves out; empty where it is drawn as it is
 */
public record PointDrawing(DrawingTerms terms, ImmutableList<Body> bodies, String drawnRound) implements DetailDrawing {

    @Override
    public Optional<Material> material(String name) {
        return terms.material(name);
    }

    @Override
    public ImmutableList<DetailParameter> parameters() {
        return terms.parameters();
    }

    @Override
    public ImmutableList<String> pieces() {
        return bodies.collect(Body::what);
    }

    @Override
    public PointDrawing with(ImmutableMap<String, Double> values) {
        return new PointDrawing(terms.with(values), bodies, drawnRound);
    }

    /** Whether all of it is round about the axis. */
    public boolean isRound() {
        return bodies.allSatisfy(
                each -> each.shape().round().isPresent() && each.where().isEmpty());
    }

    /**
     * A body from one line to another.
     *
     * @param shape across the axis
     * @param where beside the axis its middle lies; empty on the axis
     * @param from line of one end
     * @param to line of the other
     * @param drawnOnly whether the heat flow does not see it
     */
    public record Body(
            String what,
            Filling material,
            Shape shape,
            Optional<Where> where,
            Expression from,
            Expression to,
            boolean drawnOnly) {}

    /**
     * The outline across the axis.
     *
     * @param round diameter; empty for a rectangle
     * @param hole diameter inside a round one; empty for a solid one
     * @param width of a rectangle, sideways; empty for a round one
     * @param height of a rectangle, upwards; likewise
     */
    public record Shape(
            Optional<Expression> round,
            Optional<Expression> hole,
            Optional<Expression> width,
            Optional<Expression> height) {}

    /**
     * Where the middle of a body lies. What stands sideways off the axis is there on both sides.
     *
     * @param sideways from the axis; empty for none
     * @param upwards from the axis; likewise
     * @param belowToo whether it is there below the axis as above
     */
    public record Where(Optional<Expression> sideways, Optional<Expression> upwards, boolean belowToo) {}

    /**
     * What fills a body.
     *
     * @param name of a material; empty for a layer's own
     * @param like the role of the surface's layer it is made of; empty for a name
     */
    public record Filling(Optional<String> name, Optional<Role> like) {}
}
