package coldseam.junctions.detail;

import coldseam.envelope.Role;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.Expression;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A point's drawing: round bodies about one axis, placed from the lines of the surface they go through.
 *
 * @param terms what it asks of the surface
 * @param bodies in painting order
 * @param drawnRound how the true shape became a round one, and what that leaves out
 */
public record RoundDrawing(DrawingTerms terms, ImmutableList<Turned> bodies, String drawnRound)
        implements DetailDrawing {

    @Override
    public ImmutableList<DetailParameter> parameters() {
        return terms.parameters();
    }

    @Override
    public RoundDrawing with(ImmutableMap<String, Double> values) {
        return new RoundDrawing(terms.with(values), bodies, drawnRound);
    }

    /**
     * A round body.
     *
     * @param what it is
     * @param material that fills it
     * @param diameter outside
     * @param hole diameter inside; empty for a solid one
     * @param from line of one end
     * @param to line of the other
     * @param drawnOnly whether the heat flow does not see it
     */
    public record Turned(
            String what,
            Filling material,
            Expression diameter,
            Optional<Expression> hole,
            Expression from,
            Expression to,
            boolean drawnOnly) {}

    /**
     * What fills a body.
     *
     * @param name of a material; empty for a layer's own
     * @param like the role of the surface's layer it is made of; empty for a name
     */
    public record Filling(Optional<String> name, Optional<Role> like) {}
}
