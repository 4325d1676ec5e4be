package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Selector;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.plan.StepZones;
import java.util.Optional;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A junction's line: an edge shared by two surfaces, one side of an opening, or a seam the house file names.
 *
 * @param name unique and stable: kind and the surfaces beside it
 * @param kind by geometry
 * @param first surface of the kind's first band
 * @param second surface of its second band; empty where the kind has one surface
 * @param opening it belongs to; empty for others
 * @param from one end, on the outer shell
 * @param to the other end
 * @param externalLength m, on the outer shell
 * @param internalLength m, on the inner shell; zero where the line lies within the thickness of what it ends at, and nothing of
 *     it is indoors
 * @param angle degrees between the surfaces, measured indoors: 90 at an outside corner, 270 at an inside corner, 180 in a
 *     plane
 * @param firstSetBack m, how much longer the first surface is outside than inside across this edge; may be negative
 * @param secondSetBack m, the same for the second surface
 * @param upperStorey name of the storey above an intermediate floor; empty for others
 * @param floorThickness m, of the internal floor that meets this edge; zero where none does
 * @param floorRise m, by which the underside of a floor behind a deck or a step lies above the first surface's inner face; zero
 *     where what carries the deck goes on as that floor
 * @param place where a person finds it, in words, without its length
 */
public record Edge(
        String name,
        JunctionKind kind,
        Surface first,
        Optional<Surface> second,
        Optional<Opening> opening,
        Point3 from,
        Point3 to,
        double externalLength,
        double internalLength,
        double angle,
        double firstSetBack,
        double secondSetBack,
        String upperStorey,
        double floorThickness,
        double floorRise,
        String place) {

    /** m, by which inner faces may be out of line and still be drawn in one plane: what leaves no step outside, either. */
    public static final double FLUSH = StepZones.HAIR;

    /**
     * m, by which the second's inner face lies farther out than the first's where the two go straight on from one another;
     * negative where it lies farther in, zero for others.
     */
    public double innerStep() {
        return angle != Vectors.STRAIGHT || second.isEmpty()
                ? 0
                : Vectors.dot(
                        first.normal(),
                        Vectors.minus(
                                second.get().innerOutline().getFirst(),
                                first.innerOutline().getFirst()));
    }

    /** m, of one end above the plane of the first surface's outer face: of a door's sill above the deck before it. */
    public double sillHeight() {
        Point3 normal = first.normal();
        return Vectors.dot(normal, Vectors.minus(from, first.outline().getFirst())) / normal.z();
    }

    /** A line on one surface, as long indoors as outside, at which no other surface and no floor is known. */
    static Edge on(
            Surface surface,
            String name,
            JunctionKind kind,
            Optional<Opening> opening,
            Point3 from,
            Point3 to,
            double length,
            String place) {
        return new Edge(
                name,
                kind,
                surface,
                Optional.empty(),
                opening,
                from,
                to,
                length,
                length,
                Vectors.STRAIGHT,
                0,
                0,
                "",
                0,
                0,
                place);
    }

    /** The same line as a junction of another kind, by its name and place as well. */
    Edge as(JunctionKind other) {
        return as(name.replace(kind.label(), other.label()), other, place.replace(kind.label(), other.label()));
    }

    /** The same line by another name. */
    Edge named(String other) {
        return as(other, kind, place);
    }

    private Edge as(String otherName, JunctionKind otherKind, String otherPlace) {
        return new Edge(
                otherName,
                otherKind,
                first,
                second,
                opening,
                from,
                to,
                externalLength,
                internalLength,
                angle,
                firstSetBack,
                secondSetBack,
                upperStorey,
                floorThickness,
                floorRise,
                otherPlace);
    }

    /** Whether the internal floor that meets it is said to be of joists. */
    public boolean isAtJoists(Body body) {
        return internalFloor(body).equals(Optional.of(Body.InternalFloor.JOISTS));
    }

    /** What the internal floor that meets it is of; empty where none does, and where nothing says. */
    public Optional<Body.InternalFloor> internalFloor(Body body) {
        return meetsFloor() ? body.internalFloor(storeyOnFloor()) : Optional.empty();
    }

    /** Whether an internal floor of its own meets it, and not what carries the deck before it, gone on as the floor. */
    public boolean meetsFloor() {
        return floorThickness > 0 || kind.threshold();
    }

    /** Name of the storey on the internal floor that meets it, where one does: behind a deck or under a door, that of the wall. */
    public String storeyOnFloor() {
        return upperStorey.isEmpty() ? second.orElse(first).storey() : upperStorey;
    }

    /** The one surface beside it, or both. */
    public ImmutableList<Surface> surfaces() {
        return second.isPresent() ? Lists.immutable.of(first, second.get()) : Lists.immutable.of(first);
    }

    /** Whether a surface lies beside it. */
    public boolean isAt(Surface surface) {
        return first.name().equals(surface.name())
                || second.isPresent() && second.get().name().equals(surface.name());
    }

    /** Whether it is a side of an opening. */
    public boolean isOf(Opening other) {
        return opening.filter(other::equals).isPresent();
    }

    /** Whether a selector means this edge: any of its kinds, and all of its names beside the edge. */
    public boolean isMeantBy(Selector selector) {
        if (selector.kinds().notEmpty() && !selector.kinds().contains(kind)) {
            return false;
        }
        MutableSet<String> names = Sets.mutable.with(first.name(), name);
        second.map(Surface::name).ifPresent(names::add);
        opening.map(Opening::name).ifPresent(names::add);
        return names.containsAll(selector.surfaces().castToList());
    }
}
