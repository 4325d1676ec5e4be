package coldseam.junctions.detail;

import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.language.Condition;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.language.Expression;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

/**
 * What a drawing asks of the layers it is laid on, and the words of its own.
 *
 * @param needs layers without which it does not fit
 * @param thicknesses allowed thicknesses
 * @param conditions what must hold between lines
 * @param parameters lengths of its own, in the file's order
 * @param lines lines of its own, in the file's order
 * @param materials of its own
 * @param content the file's bytes as text: what the drawing is known by
 */
public record DrawingTerms(
        ImmutableList<Need> needs,
        ImmutableList<Thickness> thicknesses,
        ImmutableList<Condition> conditions,
        ImmutableList<DetailParameter> parameters,
        ImmutableList<OwnLine> lines,
        ImmutableMap<String, Material> materials,
        String content) {

    /** A material of its own, or one that several details draw; empty where it is named by neither. */
    public Optional<Material> material(String name) {
        return Optional.ofNullable(materials.getIfAbsent(name, () -> SharedMaterials.ALL.get(name)));
    }

    /** Adds its own lengths and lines, m, to the values of the names that they are written in. */
    public void name(MutableMap<String, Double> scope) {
        parameters.each(each -> scope.put(each.name(), each.value()));
        lines.each(each -> scope.put(each.name(), each.line().value(scope.toImmutable())));
    }

    /** The same with other values of its parameters, m, by name. */
    DrawingTerms with(ImmutableMap<String, Double> values) {
        return new DrawingTerms(
                needs,
                thicknesses,
                conditions,
                parameters.collect(each -> values.containsKey(each.name()) ? each.with(values.get(each.name())) : each),
                lines,
                materials,
                content);
    }

    /** The same, whether or not there are layers of a role, and however thick. */
    DrawingTerms without(Role role) {
        return new DrawingTerms(
                needs.reject(each -> each.role() == role),
                thicknesses.reject(each -> each.role().filter(role::equals).isPresent()),
                conditions,
                parameters,
                lines,
                materials,
                content);
    }

    /** A layer that must be there, in a band by its name in the drawing. */
    public record Need(String band, Role role) {}

    /** m, least and most thickness of a role's layers together; the whole band's where the role is empty. */
    public record Thickness(String band, Optional<Role> role, double least, double most) {

        /** Such as {@code wall insulation}. */
        public String words() {
            return band + role.map(each -> " " + DrawingNames.word(each)).orElse("");
        }
    }

    public record OwnLine(String name, Expression line) {}
}
