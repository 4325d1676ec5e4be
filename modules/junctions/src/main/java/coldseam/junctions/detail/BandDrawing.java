package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A junction's drawing: what is painted where two bands of layers meet.
 *
 * @param kind whose bands it draws
 * @param terms what it asks of them
 * @param insulatedInside bands, by name, that may be insulated inside what carries them though the other is outside it
 * @param angles degrees, least and most; empty where the kind's own range holds
 * @param statements in painting order
 */
public record BandDrawing(
        JunctionKind kind,
        DrawingTerms terms,
        ImmutableSet<String> insulatedInside,
        Optional<Angles> angles,
        ImmutableList<Statement> statements)
        implements DetailDrawing {

    @Override
    public ImmutableList<DetailParameter> parameters() {
        return terms.parameters();
    }

    @Override
    public BandDrawing with(ImmutableMap<String, Double> values) {
        return new BandDrawing(kind, terms.with(values), insulatedInside, angles, statements);
    }

    @Override
    public BandDrawing onBareLayers() {
        return new BandDrawing(
                kind, terms.without(Role.INSULATION), kind.bands().toSet().toImmutable(), angles, statements);
    }

    /** Degrees, least and most. */
    public record Angles(double least, double most) {}
}
