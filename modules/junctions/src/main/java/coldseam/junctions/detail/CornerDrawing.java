package coldseam.junctions.detail;

import coldseam.envelope.CornerKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.Expression;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A corner's drawing: boxes between lines of its three surfaces, painted over what the sections of its edges make of it, or only
 * where they leave it open.
 *
 * @param kind whose surfaces it draws on
 * @param terms what it asks of them
 * @param meets the ids of details that edges of a kind may have; any where the kind is not in it
 * @param boxes in painting order
 */
public record CornerDrawing(
        CornerKind kind,
        DrawingTerms terms,
        ImmutableMap<JunctionKind, ImmutableSet<String>> meets,
        ImmutableList<Box> boxes)
        implements DetailDrawing {

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
        return boxes.collect(Box::what);
    }

    @Override
    public CornerDrawing with(ImmutableMap<String, Double> values) {
        return new CornerDrawing(kind, terms.with(values), meets, boxes);
    }

    /** Whether an edge's detail is one of those it is drawn for. */
    public boolean meets(Detail edge) {
        ImmutableSet<String> allowed = meets.get(edge.junction());
        return allowed == null || allowed.contains(edge.id());
    }

    /**
     * A box of a material.
     *
     * @param ranges along the three surfaces' normals; empty where it runs on
     * @param onlyOpen whether it fills only what the sections leave open
     * @param where the build it is for; any where empty
     */
    public record Box(
            String what,
            Filling material,
            ImmutableList<Optional<Range>> ranges,
            boolean onlyOpen,
            Optional<Where> where) {}

    /** How a surface of the corner is built. */
    public record Where(String surface, Statement.Build build) {}

    /** From one line of a surface to another. */
    public record Range(Expression from, Expression to) {}

    /**
     * What fills a box.
     *
     * @param name of a material; empty for a layer's own
     * @param like the surface and role of the layer it is made of; empty for a name
     */
    public record Filling(Optional<String> name, Optional<Like> like) {}

    /** The thickest layer of a role in a surface. */
    public record Like(String surface, Role role) {}
}
