package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.audit.PointRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.PointKind.Service;
import coldseam.envelope.Seam;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import java.util.Collections;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/** What most houses have and the house file does not list: who leaves it out has less to lose and fewer seams. */
public final class Unlisted {

    /** m; the least of a door that one walks through (judgement). */
    private static final double WALK_WIDE = 0.6;

    private static final double WALK_HIGH = 1.6;

    /** m; less than the height of one inner wall, or the length of one joist, meets nothing (judgement). */
    private static final double LEAST_MET = 1;

    /** m of fall from which a guard is asked for (common practice, no source). */
    private static final double FALL = 0.6;

    /** m; parapets lower than this stop nobody (common practice, no source). */
    private static final double GUARD = 0.8;

    /** m, 72 in and 24 in: windows higher over the ground and lower over the floor have guards (IRC 2018, R312.2, from memory). */
    private static final double FALL_FROM_WINDOW = 1.8288;

    private static final double LOW_SILL = 0.6096;

    /** What one steps out on. */
    private static final ImmutableSet<JunctionKind> STEPPED_ON = Sets.immutable.of(
            JunctionKind.of("balcony"), JunctionKind.of("ledger"), JunctionKind.of("outside stair against the wall"));

    private static final JunctionKind BEARING_WALL = JunctionKind.of("bearing wall through the slab's insulation");

    /** m², of walls insulated inside on which hardly a seam of an inner wall, stair or joist bay is listed, gross. */
    public static final Assumption<Double> INNER_WALLS =
            audit -> OfHouse.over(0, OfHouse.area(audit, surface -> nothingMeets(audit, surface)));

    /** m, of seams where two floors meet, with hardly a wall listed that goes down through the insulation of either. */
    public static final Assumption<Double> WALLS_BETWEEN_FLOORS = audit -> OfHouse.over(
            0,
            audit.shell()
                    .edges()
                    .select(edge -> edge.kind() == JunctionKind.FLOOR_CHANGE)
                    .select(edge -> !isListed(
                            audit,
                            seam -> seam.kind() == BEARING_WALL
                                    && (isOn(seam, edge.first())
                                            || isOn(seam, edge.second().orElseThrow()))))
                    .sumOfDouble(Edge::externalLength));

    /** Floors over open air that no wall of the house stands under, on which no point that carries and no seam is listed. */
    public static final Assumption<Surface> SUPPORTS = audit -> audit.shell()
            .surfaces()
            .select(surface ->
                    side(surface) == Side.FLOORS && surface.exposure().kind() == Exposure.Kind.OUTDOORS)
            .reject(surface -> audit.shell()
                            .edges()
                            .anySatisfy(edge -> edge.kind() == JunctionKind.WALL_UNDER_OVERHANG
                                    && (edge.first().equals(surface)
                                            || edge.second().orElseThrow().equals(surface)))
                    || audit.house().seams().anySatisfy(seam -> isOn(seam, surface))
                    || audit.points()
                            .anySatisfy(
                                    row -> row.kind().carries() && row.surface().equals(surface)));

    /** Kinds of opening of which the house has none, of doors those by which one comes in: hatches and doors to decks are others. */
    public static final Assumption<NoOpening> OPENINGS = audit -> Lists.immutable
            .with(Opening.Kind.values())
            .collect(kind ->
                    new NoOpening(kind, audit.house().openings().anySatisfy(opening -> opening.kind() == kind)))
            .reject(none -> none.other()
                    && (none.kind() == Opening.Kind.WINDOW
                            || audit.house().openings().anySatisfy(opening -> isWayIn(audit, opening))));

    /** Decks over rooms, high over the ground, that neither a parapet nor posts or brackets listed at them guard. */
    public static final Assumption<Surface> GUARDS = audit -> OfHouse.surfaces(
            audit,
            deck -> deck.use() == Body.Use.TERRACE
                    && deck.outline().collectDouble(Point3::z).min()
                                    - HouseShape.ground(audit.house().body(), deck)
                            > FALL
                    && !isGuarded(audit, deck)
                    && audit.points().noneSatisfy(row -> row.kind().carries() && isBeside(audit, row.surface(), deck)));

    /** Doors high over the ground, and windows down to the floor, before which no deck, stair, balcony or guard is. */
    public static final Assumption<Opening> FALLS = audit -> OfHouse.surfaces(
                    audit,
                    surface ->
                            surface.use() == Body.Use.WALL && surface.exposure().kind() == Exposure.Kind.OUTDOORS)
            .reject(wall ->
                    audit.house().seams().anySatisfy(seam -> STEPPED_ON.contains(seam.kind()) && isOn(seam, wall))
                            || audit.points()
                                    .anySatisfy(row -> row.kind().carries()
                                            && row.surface().equals(wall)))
            .flatCollect(wall ->
                    audit.house().openings().select(opening -> wall.holds(opening) && isHigh(audit, wall, opening)));

    /**
     * Services for which no point is listed, or none is left: each is one pipe, duct or box of its own. One that may be several is
     * taken for what nothing else serves.
     */
    public static final Assumption<Service> SERVICES = audit -> {
        MutableList<PointRow> left = audit.points()
                .flatCollect(row -> Collections.nCopies(Math.min(row.number(), Service.values().length), row))
                .toSortedListBy(row -> row.kind().serves().size());
        MutableList<Service> missing = Lists.mutable.with(Service.values());
        left.forEach(row -> row.kind()
                .serves()
                .detectOptional(each -> missing.contains(each)
                        && (side(row.surface()) == Side.ROOFS || each != Service.VENT_OF_WASTE_PIPES)
                        && (side(row.surface()) != Side.ROOFS || each != Service.WASTE_WATER))
                .ifPresent(missing::remove));
        return missing.toImmutable();
    };

    private Unlisted() {}

    /**
     * A kind of opening that is missing.
     *
     * @param other whether there are some by which nobody comes in
     */
    public record NoOpening(Opening.Kind kind, boolean other) {}

    private enum Side {
        WALLS,
        ROOFS,
        FLOORS
    }

    /** Whether all is left out that meets a wall's insulation indoors; geometry shows none of it but floors. */
    private static boolean nothingMeets(Audit audit, Surface surface) {
        return surface.exposure().kind() != Exposure.Kind.PARTY
                && surface.use() == Body.Use.WALL
                && surface.assembly().filter(Assembly::insulatedInside).isPresent()
                && !isListed(audit, seam -> seam.kind().atInsideInsulation() && isOn(seam, surface));
    }

    private static boolean isListed(Audit audit, Predicate<Seam> which) {
        return audit.house().seams().select(which).sumOfDouble(Seam::length) >= LEAST_MET;
    }

    private static boolean isOn(Seam seam, Surface surface) {
        return seam.surface().equals(surface.name());
    }

    private static boolean isWayIn(Audit audit, Opening opening) {
        return opening.kind() == Opening.Kind.DOOR
                && opening.width() >= WALK_WIDE
                && opening.height() >= WALK_HIGH
                && audit.shell()
                        .surfaces()
                        .anySatisfy(surface -> surface.use() == Body.Use.WALL && surface.holds(opening))
                && audit.shell()
                        .edges()
                        .noneSatisfy(edge -> edge.kind() == JunctionKind.TERRACE_THRESHOLD
                                && edge.opening().filter(opening::equals).isPresent());
    }

    private static boolean isHigh(Audit audit, Surface wall, Opening opening) {
        ImmutableList<Edge> deck = audit.shell()
                .edges()
                .select(edge -> edge.kind() == JunctionKind.WALL_TO_TERRACE && isBetween(edge, wall)
                        || edge.kind() == JunctionKind.TERRACE_THRESHOLD
                                && edge.opening().filter(opening::equals).isPresent());
        double foot = audit.shell()
                .edges()
                .select(edge -> edge.opening().filter(opening::equals).isPresent())
                .collectDouble(edge -> Math.min(edge.from().z(), edge.to().z()))
                .minIfEmpty(Double.NEGATIVE_INFINITY);
        double fall = foot - HouseShape.ground(audit.house().body(), wall);
        return deck.isEmpty()
                && (opening.kind() == Opening.Kind.DOOR
                        ? fall > FALL
                        : fall > FALL_FROM_WINDOW && opening.sill() < LOW_SILL);
    }

    private static boolean isBetween(Edge edge, Surface one) {
        return edge.first().equals(one) || edge.second().filter(one::equals).isPresent();
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
                || audit.shell()
                        .edges()
                        .anySatisfy(edge -> edge.second()
                                .filter(other -> Lists.immutable
                                        .with(edge.first().name(), other.name())
                                        .containsAllArguments(surface.name(), deck.name()))
                                .isPresent());
    }

    private static Side side(Surface surface) {
        return switch (surface.use()) {
            case WALL -> Side.WALLS;
            case ROOF, CEILING, TERRACE -> Side.ROOFS;
            case FLOOR, OVERHANG -> Side.FLOORS;
        };
    }
}
