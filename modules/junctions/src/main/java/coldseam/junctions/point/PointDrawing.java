package coldseam.junctions.point;

import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.language.Condition;
import coldseam.junctions.language.Expression;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The drawing part of a point file: round bodies about one axis, placed from the lines of the surface they go through.
 *
 * @param needs layers without which it does not fit
 * @param thicknesses allowed thicknesses
 * @param conditions what must hold
 * @param parameters lengths of its own, in the file's order
 * @param lines lines and lengths of its own, in the file's order
 * @param materials of its own
 * @param bodies in painting order
 * @param content the file as text: what the drawing is known by
 */
public record PointDrawing(
        ImmutableList<Role> needs,
        ImmutableList<Thickness> thicknesses,
        ImmutableList<Condition> conditions,
        ImmutableList<Parameter> parameters,
        ImmutableList<OwnLine> lines,
        ImmutableMap<String, Material> materials,
        ImmutableList<Turned> bodies,
        String content) {

    /** m, least and most thickness of a role's layers together; the whole surface's where the role is empty. */
    record Thickness(Optional<Role> role, double least, double most) {}

    /**
     * A length that a house may change.
     *
     * @param name unique in its file
     * @param value m, unless the house says otherwise
     * @param from m, least that makes sense
     * @param to m, most that makes sense
     * @param says what it is
     */
    public record Parameter(String name, double value, double from, double to, String says) {

        /** Whether a value lies in its range. */
        public boolean allows(double other) {
            return other >= from - SLACK && other <= to + SLACK;
        }

        /** m: round-off of unit conversions. */
        private static final double SLACK = 1e-9;
    }

    /** A line or length with a name. */
    record OwnLine(String name, Expression line) {}

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
    record Turned(
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
    record Filling(Optional<String> name, Optional<Role> like) {}
}
