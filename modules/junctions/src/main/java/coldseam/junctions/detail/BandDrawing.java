package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.Material;
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
    public Optional<Material> material(String name) {
        return terms.material(name);
    }

    @Override
    public ImmutableList<DetailParameter> parameters() {
        return terms.parameters();
    }

    @Override
    public ImmutableList<String> pieces() {
        return statements.collect(BandDrawing::name).reject(String::isEmpty);
    }

    private static String name(Statement statement) {
        if (statement instanceof Statement.Where where) {
            return name(where.statement());
        }
        if (statement instanceof Statement.PaintBlock block) {
            return block.what();
        }
        if (statement instanceof Statement.PaintShape shape) {
            return shape.what();
        }
        return statement instanceof Statement.PaintStrip strip ? strip.what() : "";
    }

    @Override
    public boolean forAnyBuild() {
        return only.usual();
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
                kind.bands().toImmutableSet(),
                angles,
                statements);
    }

    /** Degrees, least and most. */
    public record Angles(double least, double most) {}

    /**
     * Builds that a drawing is for, and for nothing else.
     *
     * @param bands how bands must be built
     * @param contrasts how the two surfaces must differ
     */
    public record Only(ImmutableList<Built> bands, ImmutableList<Contrast> contrasts) {

        /** What sets no such condition. */
        public static final Only ANYTHING = new Only(Lists.immutable.empty(), Lists.immutable.empty());

        /** Whether it sets none. */
        public boolean anything() {
            return bands.isEmpty() && contrasts.isEmpty();
        }

        /** Whether it keeps out boards inside alone, if anything. */
        public boolean usual() {
            return bands.allSatisfy(each -> each.build() == Statement.Build.INSULATED_OUTSIDE)
                    && contrasts.allSatisfy(each -> each == Contrast.NOT_BOTH_INSIDE);
        }

        /** As the file has it, such as {@code wall insulated inside}. */
        public String words() {
            return bands.collect(each -> each.band() + " " + each.build().words())
                    .newWithAll(contrasts.collect(Contrast::words))
                    .makeString(" and ");
        }
    }

    /** How two surfaces differ, whichever of them the shell names first. */
    public enum Contrast {
        /** The insulation lies inside what carries the one and outside what carries the other. */
        SIDES_CHANGE("insulation changes sides"),
        /** What carries is all that insulates the one, and not the other. */
        ONE_MONOLITHIC("one monolithic"),
        /** A frame's bays hold all that insulates the one, and not the other. */
        ONE_IN_ITS_FRAME("one insulated in its frame alone"),
        /** All insulation of the one lies inside what carries it, and the other's does not. */
        ONE_INSIDE("one insulated inside"),
        /** At least one of the two is insulated outside what carries it, or nowhere but in that. */
        NOT_BOTH_INSIDE("not both insulated inside");

        private final String words;

        Contrast(String words) {
            this.words = words;
        }

        /** As details write it. */
        public String words() {
            return words;
        }

        /** The one that a detail writes so; empty where it writes something else. */
        static Optional<Contrast> of(String words) {
            return Lists.immutable.of(values()).detectOptional(each -> each.words.equals(words));
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
