package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.audit.PointRow;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Limits;
import coldseam.envelope.Opening;
import coldseam.envelope.Seam;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.set.ImmutableSet;

/** What keeps people from harm: guards where one may fall, and ways out in a fire. */
public final class Safety {

    /** m of fall from which a guard is asked for (common practice, no source). */
    private static final double FALL = 0.6;

    /** m; parapets lower than this stop nobody (common practice, no source). */
    private static final double GUARD = 0.8;

    /** m between the posts of a guard, at the most; rails between them seldom span more (common practice, no source). */
    private static final double FAR_APART = 2.5;

    /** m, 72 in and 24 in: windows higher over the ground and lower over the floor have guards (IRC 2018, R312.2, from memory). */
    private static final double FALL_FROM_WINDOW = 1.8288;

    private static final double LOW_SILL = 0.6096;

    /** Brackets that a rail has at the least. */
    private static final int ENDS = 2;

    /** What one steps out on. */
    private static final ImmutableSet<JunctionKind> STEPPED_ON = Sets.immutable.of(
            JunctionKind.of("balcony"), JunctionKind.of("ledger"), JunctionKind.of("outside stair against the wall"));

    /**
     * m, 36 in, before the wall, of a light well by which people get out in a fire (International Residential Code 2018, R310, from
     * memory).
     */
    public static final double WAY_OUT = 0.9144;

    /** m², 9 ft² in plan (the same). */
    public static final double WAY_OUT_AREA = 0.83612736;

    /** m², 5.7 ft², of what opens (the same); frames are counted in here, so that nobody is asked in vain. */
    private static final double CLIMBED_THROUGH = 0.5295;

    /** Decks over rooms, high over the ground, that neither a parapet nor enough posts or brackets listed at them guard. */
    public static final Assumption<Deck> GUARDS = audit -> OfHouse.surfaces(
                    audit,
                    deck -> deck.use() == Body.Use.TERRACE
                            && deck.foot() - HouseShape.ground(audit.house().body(), deck) > FALL
                            && !isGuarded(audit, deck))
            .collect(deck -> deck(audit, deck))
            .select(deck -> deck.posts() == 0 || deck.posts() * FAR_APART < deck.length());

    /** Doors high over the ground, and windows down to the floor, before which no deck, stair, balcony or guard is. */
    public static final Assumption<Opening> FALLS = audit -> OfHouse.surfaces(
                    audit, surface -> surface.use() == Body.Use.WALL && surface.faces(Exposure.Kind.OUTDOORS))
            .reject(wall -> audit.points()
                            .select(row -> row.kind().carries() && row.surface().equals(wall))
                            .sumOfInt(PointRow::number)
                    >= ENDS)
            .flatCollect(wall -> audit.house()
                    .openings()
                    .select(opening -> wall.holds(opening)
                            && isHigh(audit, wall, opening)
                            && audit.house()
                                                    .seams()
                                                    .select(seam -> STEPPED_ON.contains(seam.kind())
                                                            && OfHouse.isOn(seam, wall))
                                                    .sumOfDouble(Seam::length)
                                            + UnderSill.of(audit, opening, wall)
                                                    .select(each ->
                                                            each.surface().use() == Body.Use.TERRACE)
                                                    .sumOfDouble(UnderSill::width)
                                    < opening.width() - OfHouse.HAIR));

    /** What people walk on, above and below. */
    private static final ImmutableSet<Body.Use> WALKED_ON =
            Sets.immutable.of(Body.Use.TERRACE, Body.Use.FLOOR, Body.Use.OVERHANG);

    /** Windows that lie in decks and floors. */
    public static final Assumption<Opening> STEPPED_THROUGH =
            audit -> OfHouse.surfaces(audit, surface -> WALKED_ON.contains(surface.use()))
                    .flatCollect(deck -> audit.house()
                            .openings()
                            .select(opening -> opening.kind() == Opening.Kind.WINDOW && deck.holds(opening)));

    /** Those with a light well by which hardly anybody gets out. */
    public static final Assumption<Opening> NO_WAY_OUT = audit -> audit.house()
            .openings()
            .select(opening -> opening.lightWell()
                    .filter(well -> Limits.under(well.projection(), WAY_OUT)
                            || Limits.under(well.projection() * well.width(), WAY_OUT_AREA)
                            || opening.width() * opening.height() < CLIMBED_THROUGH)
                    .isPresent());

    private Safety() {}

    /**
     * A deck that one may fall off.
     *
     * @param posts posts, brackets and the like that are listed on it and beside it
     * @param length m, of its edges over rooms that nothing rises from
     */
    public record Deck(Surface surface, int posts, double length) {}

    private static Deck deck(Audit audit, Surface deck) {
        return new Deck(
                deck,
                (int) audit.points()
                        .select(row -> row.kind().carries() && isBeside(audit, row.surface(), deck))
                        .sumOfInt(PointRow::number),
                audit.shell()
                        .edges()
                        .select(edge -> edge.kind() == JunctionKind.TERRACE_EDGE && edge.isAt(deck))
                        .sumOfDouble(Edge::externalLength));
    }

    private static boolean isHigh(Audit audit, Surface wall, Opening opening) {
        double foot = audit.shell()
                .edges()
                .select(edge -> edge.isOf(opening))
                .collectDouble(edge -> Math.min(edge.from().z(), edge.to().z()))
                .minIfEmpty(Double.NEGATIVE_INFINITY);
        double fall = foot - HouseShape.ground(audit.house().body(), wall);
        return opening.kind() == Opening.Kind.DOOR ? fall > FALL : fall > FALL_FROM_WINDOW && opening.sill() < LOW_SILL;
    }

    private static boolean isGuarded(Audit audit, Surface deck) {
        return audit.house().body().parapetHeight(deck.name(), deck.storey()) >= GUARD
                && audit.shell()
                        .edges()
                        .anySatisfy(edge ->
                                edge.kind().parapet() && edge.first().name().equals(deck.name()));
    }

    private static boolean isBeside(Audit audit, Surface surface, Surface deck) {
        return surface.name().equals(deck.name())
                || audit.shell().edges().anySatisfy(edge -> edge.isAt(surface) && edge.isAt(deck));
    }
}
