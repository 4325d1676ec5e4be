package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Compass;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.files.Words;

/** Where a person finds things, in words. */
final class Places {

    /** Of a right angle: a wall at 45° to within the lattice belongs to the side that follows counterclockwise. */
    private static final double TIE = 1e-6;

    private Places() {}

    public static Side side(Body.Use use, Point3 normal) {
        return switch (use) {
            case FLOOR, OVERHANG -> Side.BELOW;
            case ROOF, CEILING, TERRACE -> Side.ABOVE;
            case WALL -> Math.abs(normal.z()) > 0.95 ? normal.z() > 0 ? Side.ABOVE : Side.BELOW : side(normal);
        };
    }

    /** From which a surface leans to a side: more than a flat roof's falls. */
    private static final double SLOPES = 0.05;

    /** The compass side of a direction in plan; of a house at 45° each of its four sides has one. */
    private static Side side(Point3 direction) {
        double quarters = Math.atan2(direction.y(), direction.x()) / (Math.PI / 2) + 0.5;
        return switch (Math.floorMod((int) Math.floor(quarters + TIE), 4)) {
            case 0 -> Side.EAST;
            case 1 -> Side.NORTH;
            case 2 -> Side.WEST;
            default -> Side.SOUTH;
        };
    }

    public static String name(JunctionKind kind, Surface first, Surface second) {
        return kind.label() + ": " + first.name() + " / " + second.name();
    }

    public static String of(JunctionKind kind, Surface first, Surface second) {
        return switch (kind.where()) {
            case CORNER ->
                word(first).equals(word(second)) || first.side() == Side.ABOVE || second.side() == Side.ABOVE
                        ? "corner between " + first.name() + " and " + second.name()
                        : corner(first, second) + " corner, " + first.storey();
            case INSIDE_CORNER ->
                "inside corner between " + first.name() + " and " + second.name() + ", " + first.storey();
            case STOREYS ->
                first.storey().equals(second.storey())
                        ? word(first) + " side, in the wall of the " + first.storey()
                        : word(first) + " side, between the " + first.storey() + " and the " + second.storey();
            case BETWEEN -> kind.label() + " between " + first.name() + " and " + second.name();
            case MEETING ->
                first.use() == Body.Use.FLOOR && second.use() == Body.Use.FLOOR
                        ? kind.label() + " between the " + first.storey() + " and the " + second.storey()
                        : where(first, second) + " side, " + first.storey() + ", where " + noun(first) + " meets "
                                + noun(second, first);
        };
    }

    /** The side on which two surfaces meet: that of the wall, or else of what slopes. */
    private static String where(Surface first, Surface second) {
        Surface upright = second.use() == Body.Use.WALL || first.use() != Body.Use.WALL && leans(first) < leans(second)
                ? second
                : first;
        Point3 normal = upright.normal();
        return leans(upright) < SLOPES
                ? word(upright)
                : Compass.of(normal.x(), normal.y()).word();
    }

    /** How far a surface leans: 0 level, 1 upright. */
    private static double leans(Surface surface) {
        return Math.hypot(surface.normal().x(), surface.normal().y());
    }

    public static String of(Opening opening, Surface wall, String part) {
        return word(wall) + " side, " + wall.storey() + ", at the " + part + " of " + Words.word(opening.kind()) + " \""
                + opening.name() + "\"";
    }

    public static String word(Side side) {
        return switch (side) {
            case BELOW -> "under";
            case ABOVE -> "top";
            default -> Words.word(side);
        };
    }

    /** Walls by the eight ways of the compass, so that those of a turned house are told apart. */
    public static String word(Surface surface) {
        return word(surface.side(), surface.normal());
    }

    public static String word(Side side, Point3 normal) {
        return side == Side.BELOW || side == Side.ABOVE
                ? word(side)
                : Compass.of(normal.x(), normal.y()).word();
    }

    private static String corner(Surface first, Surface second) {
        return Compass.of(
                        first.normal().x() + second.normal().x(),
                        first.normal().y() + second.normal().y())
                .word();
    }

    private static String noun(Surface surface) {
        if (surface.storey().equals(surface.name())) {
            return surface.name();
        }
        return switch (surface.use()) {
            case FLOOR -> "the lowest floor";
            case OVERHANG -> "the overhanging floor";
            case TERRACE -> "the terrace";
            case ROOF -> surface.name().startsWith("lower roof") ? "the lower roof" : "the roof";
            case CEILING -> "the top ceiling";
            case WALL -> surface.name().startsWith("gable over ") ? "the gable" : "the wall";
        };
    }

    private static String noun(Surface surface, Surface beside) {
        boolean elsewhere = surface.use() == Body.Use.WALL
                && !surface.storey().equals(beside.storey())
                && !surface.storey().equals(surface.name());
        return noun(surface) + (elsewhere ? " of the " + surface.storey() : "");
    }
}
