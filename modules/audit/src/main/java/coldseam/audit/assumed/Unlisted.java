package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.audit.PointRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.PointKind;
import coldseam.envelope.PointKind.Service;
import coldseam.envelope.Seam;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Spans;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import java.util.Collections;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** What most houses have and the house file does not list: who leaves it out has less to lose and fewer seams. */
public final class Unlisted {

    /** m; less than the height of one inner wall, or the length of one joist, meets nothing (judgement). */
    private static final double LEAST_MET = 1;

    /** m; joists and slabs that run through seldom go out farther past what bears them (common practice, no source). */
    private static final double FAR_OUT = 1.2;

    /** m² of floor that one post bears, at the most; they seldom stand 5 m apart both ways (common practice, no source). */
    private static final double BORNE = 25;

    /** What is missing where no point is listed. */
    public static final ImmutableList<Service> EVERY_HOUSE =
            Lists.immutable.with(Service.values()).reject(service -> service == Service.AIR_FOR_A_FIRE);

    private static final JunctionKind BALCONY = JunctionKind.of("balcony");

    private static final JunctionKind BEARING_WALL = JunctionKind.of("bearing wall through the slab's insulation");

    /**
     * What one goes to from the rooms and no door or hatch is listed to: unheated spaces by name, empty for a loft; decks, and balconies
     * on walls without a door.
     */
    public static final Assumption<String> UNREACHED = audit -> {
        ImmutableList<Surface> cold = OfHouse.surfaces(audit, Neighbours::isUnheated);
        ImmutableList<String> spaces = cold.collect(
                        surface -> surface.exposure().neighbour())
                .distinct()
                .reject(space -> cold.anySatisfy(surface -> surface.openingArea() > 0
                        && surface.exposure().neighbour().equals(space)));
        ImmutableList<Surface> before = OfHouse.surfaces(audit, surface -> surface.use() == Body.Use.WALL)
                .flatCollect(wall -> doors(audit, wall).flatCollect(door -> UnderSill.of(audit, door, wall)))
                .collect(UnderSill::surface);
        ImmutableList<String> decks = OfHouse.surfaces(audit, surface -> surface.use() == Body.Use.TERRACE)
                .reject(deck -> deck.openingArea() > 0
                        || before.anySatisfy(each ->
                                each.use() == Body.Use.TERRACE && each.partOf().equals(deck.partOf())))
                .collect(Surface::name);
        ImmutableList<String> balconies = audit.house()
                .seams()
                .select(seam -> seam.kind() == BALCONY
                        && audit.shell()
                                .surfaces()
                                .noneSatisfy(wall -> OfHouse.isOn(seam, wall)
                                        && doors(audit, wall).notEmpty()))
                .collect(Seam::name);
        return spaces.newWithAll(decks).newWithAll(balconies);
    };

    /** m², of walls insulated inside on which hardly a seam of an inner wall, stair or joist bay is listed, gross. */
    public static final Assumption<Double> INNER_WALLS =
            audit -> OfHouse.over(0, OfHouse.area(audit, surface -> nothingMeets(audit, surface)));

    /** m²; no inner wall need stand in smaller rooms (judgement). */
    private static final double ONE_ROOM = 40;

    /**
     * Floors whose insulation lies over what carries them, slabs and not joists, and on which hardly a wall is listed: what stands on a
     * slab indoors cuts what lies on it.
     */
    public static final Assumption<Surface> WALLS_ON_SLABS = audit -> OfHouse.surfaces(
            audit,
            surface -> surface.use() == Body.Use.FLOOR
                    && surface.internalArea() > ONE_ROOM
                    && surface.assembly()
                            .filter(floor ->
                                    floor.insulatedInside() && floor.structure().noneSatisfy(Carrying::isOfWood))
                            .isPresent()
                    && !isListed(audit, seam -> seam.kind() == BEARING_WALL && OfHouse.isOn(seam, surface)));

    /** Listed seams on walls with openings: nobody says where on the wall they lie. */
    public static final Assumption<Seam> PLACES = audit -> audit.house()
            .seams()
            .select(seam -> audit.shell()
                    .surfaces()
                    .anySatisfy(surface -> OfHouse.isOn(seam, surface)
                            && surface.use() == Body.Use.WALL
                            && surface.openingArea() > 0));

    /** m, of seams where two floors meet, with hardly a wall listed that goes down through the insulation of either. */
    public static final Assumption<Double> WALLS_BETWEEN_FLOORS = audit -> OfHouse.over(
            0,
            audit.shell()
                    .edges()
                    .select(edge -> edge.kind() == JunctionKind.FLOOR_CHANGE)
                    .select(edge -> !isListed(
                            audit,
                            seam -> seam.kind() == BEARING_WALL
                                    && edge.surfaces().anySatisfy(each -> OfHouse.isOn(seam, each))))
                    .sumOfDouble(Edge::externalLength));

    /**
     * Floors over open air that no wall of the house stands under, or that go out far from one, on which no seam is listed and too few
     * points that carry.
     */
    public static final Assumption<Borne> SUPPORTS = audit -> audit.shell()
            .surfaces()
            .select(surface -> side(surface) == Side.FLOORS && surface.faces(Exposure.Kind.OUTDOORS))
            .reject(surface -> Spans.beyond(
                                    surface,
                                    audit.shell()
                                            .edges()
                                            .select(edge -> edge.kind() == JunctionKind.WALL_UNDER_OVERHANG
                                                    && edge.isAt(surface)))
                            < FAR_OUT
                    || isListed(audit, seam -> OfHouse.isOn(seam, surface)))
            .collect(surface -> new Borne(surface, (int) audit.points()
                    .select(row -> row.kind().carries() && row.surface().equals(surface))
                    .sumOfInt(PointRow::number)))
            .select(borne -> borne.posts() * BORNE < borne.floor().externalArea());

    /**
     * A floor over open air.
     *
     * @param posts how many points that carry are listed on it
     */
    public record Borne(Surface floor, int posts) {}

    /**
     * Services for which no point is listed, or none is left: each is one pipe, duct or box of its own. One that may be several is
     * taken for what nothing else serves.
     */
    public static final Assumption<Service> SERVICES = audit -> {
        MutableList<PointRow> left = audit.points()
                .flatCollect(row -> Collections.nCopies(Math.min(row.number(), Service.values().length), row))
                .toSortedListBy(row -> row.kind().serves().size());
        MutableList<Service> missing = Lists.mutable.withAll(EVERY_HOUSE);
        audit.points()
                .flatCollect(row -> row.kind().needs().stream().toList())
                .distinct()
                .forEach(missing::add);
        left.forEach(row -> row.kind()
                .serves()
                .detectOptional(each -> missing.contains(each)
                        && (side(row.surface()) == Side.ROOFS || each != Service.VENT_OF_WASTE_PIPES)
                        && (side(row.surface()) != Side.ROOFS || each != Service.WASTE_WATER))
                .ifPresent(missing::remove));
        return missing.toImmutable();
    };

    /** Kinds of which more are listed than hardly any house has. */
    public static final Assumption<Many> MANY = audit -> Groups.by(audit.points(), PointRow::kind)
            .collect(rows -> new Many(rows.getFirst().kind(), (int) rows.sumOfInt(PointRow::number)))
            .select(many -> many.number() > many.kind().atMost().orElse(Integer.MAX_VALUE));

    private Unlisted() {}

    /** A kind of point, and how many a house has of it. */
    public record Many(PointKind kind, int number) {}

    private static ImmutableList<Opening> doors(Audit audit, Surface wall) {
        return audit.house().openings().select(opening -> opening.kind() == Opening.Kind.DOOR && wall.holds(opening));
    }

    private enum Side {
        WALLS,
        ROOFS,
        FLOORS
    }

    /** Whether all is left out that meets a wall's insulation indoors; geometry shows none of it but floors. */
    private static boolean nothingMeets(Audit audit, Surface surface) {
        return !surface.faces(Exposure.Kind.PARTY)
                && surface.use() == Body.Use.WALL
                && surface.assembly().filter(Assembly::insulatedInside).isPresent()
                && !isListed(audit, seam -> seam.kind().atInsideInsulation() && OfHouse.isOn(seam, surface));
    }

    private static boolean isListed(Audit audit, Predicate<Seam> which) {
        return audit.house().seams().select(which).sumOfDouble(Seam::length) >= LEAST_MET;
    }

    private static Side side(Surface surface) {
        return switch (surface.use()) {
            case WALL -> Side.WALLS;
            case ROOF, CEILING, TERRACE -> Side.ROOFS;
            case FLOOR, OVERHANG -> Side.FLOORS;
        };
    }
}
