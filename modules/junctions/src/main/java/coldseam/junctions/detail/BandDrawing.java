package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.language.DetailParameter;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A junction's drawing: what is painted where two bands of layers meet.
 *
 * @param kind whose bands it draws
 * @param terms what it asks of them
 * @param only what it is drawn for alone
 * @param insulatedInside bands, by name, that may be insulated inside what carries them though the other is outside it
 * @param angles degrees, least and most; empty where the kind's own range holds
 * @param statements in painting order
 */
public record BandDrawing(
        JunctionKind kind,
        DrawingTerms terms,
        Only only,
        ImmutableSet<String> insulatedInside,
        Optional<Angles> angles,
        ImmutableList<Statement> statements)
        implements DetailDrawing {

    @Override
    public ImmutableList<DetailParameter> parameters() {
        return terms.parameters();
    }

    @Override
    public boolean forAnyBuild() {
        return only.anything();
    }

    @Override
    public BandDrawing of(JunctionKind other) {
        return new BandDrawing(other, terms, only, insulatedInside, angles, statements);
    }

    @Override
    public BandDrawing with(ImmutableMap<String, Double> values) {
        return new BandDrawing(kind, terms.with(values), only, insulatedInside, angles, statements);
    }

    @Override
    public BandDrawing onBareLayers() {
        return new BandDrawing(
                kind,
                terms.without(Role.INSULATION),
                Only.ANYTHING,
                kind.bands().toSet().toImmutable(),
                angles,
                statements);
    }

    /** Degrees, least and most. */
    public record Angles(double least, double most) {}

    /**
     * Builds that a drawing is for, and for nothing else.
     *
     * @param bands how bands must be built
     * @param sidesChange whether the insulation must lie inside what carries one surface and outside what carries the other
     */
    public record Only(ImmutableList<Built> bands, boolean sidesChange) {

        /** What sets no such condition. */
        public static final Only ANYTHING = new Only(Lists.immutable.empty(), false);

        /** How a file says that insulation changes sides. */
        static final String SIDES_CHANGE = "insulation changes sides";

        /** Whether it sets none. */
        public boolean anything() {
            return bands.isEmpty() && !sidesChange;
        }

        /** As the file has it, such as {@code wall insulated inside}. */
        public String words() {
            return bands.collect(each -> each.band() + " " + each.build().words())
                    .newWithAll(sidesChange ? Lists.immutable.of(SIDES_CHANGE) : Lists.immutable.empty())
                    .makeString(" and ");
        }
    }

    /**
     * A band that is built in one way.
     *
     * @param band its name in the kind
     * @param first whether it is the kind's first
     */
    public record Built(String band, boolean first, Statement.Build build) {}
}
