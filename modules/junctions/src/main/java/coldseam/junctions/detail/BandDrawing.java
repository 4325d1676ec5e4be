package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.language.Condition;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The drawing part of a detail file.
 *
 * @param kind whose bands it draws
 * @param needs layers without which it does not fit
 * @param angles degrees, least and most; empty where the kind's own range holds
 * @param thicknesses allowed thicknesses
 * @param conditions what must hold between lines
 * @param parameters lengths of its own, in the file's order
 * @param lines lines of its own, in the file's order
 * @param materials of its own
 * @param statements in painting order
 * @param content the file's bytes as text: what the drawing is known by
 */
public record BandDrawing(
        JunctionKind kind,
        ImmutableList<Need> needs,
        Optional<Angles> angles,
        ImmutableList<Thickness> thicknesses,
        ImmutableList<Condition> conditions,
        ImmutableList<DetailParameter> parameters,
        ImmutableList<OwnLine> lines,
        ImmutableMap<String, Material> materials,
        ImmutableList<Statement> statements,
        String content)
        implements DetailDrawing {

    /** The same drawing with other values of its parameters, m, by name. */
    BandDrawing with(ImmutableMap<String, Double> values) {
        return new BandDrawing(
                kind,
                needs,
                angles,
                thicknesses,
                conditions,
                parameters.collect(each -> values.containsKey(each.name()) ? each.with(values.get(each.name())) : each),
                lines,
                materials,
                statements,
                content);
    }

    /** A layer that must be there. */
    public record Need(boolean first, String band, Role role) {}

    /** Degrees, least and most. */
    public record Angles(double least, double most) {}

    /** m, least and most thickness of a role's layers together; the whole band's where the role is empty. */
    public record Thickness(boolean first, String band, Optional<Role> role, double least, double most) {}

    /** A line with a name. */
    public record OwnLine(String name, Expression line) {}
}
