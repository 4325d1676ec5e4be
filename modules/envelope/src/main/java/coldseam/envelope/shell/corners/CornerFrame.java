package coldseam.envelope.shell.corners;

import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Surface;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The three axes of a vertex where all surfaces and edges are at right angles, and where the rooms lie about it.
 *
 * @param axes outward unit normals: of two walls, then of what lies level; where nothing does, up
 * @param rooms which of the eight octants are rooms: bit a + 2b + 4c, where a, b and c are 1 on the outer side of the planes
 */
public record CornerFrame(ImmutableList<Point3> axes, int rooms) {

    /** Of a sine: 0.06°, as closely as the shell's corners lie on their lattice. */
    private static final double SQUARE = 1e-3;

    /** m from the vertex at which a surface is looked for. */
    private static final double NEAR = 0.005;

    private static final int UNKNOWN = 0;
    private static final int ROOM = 1;
    private static final int OUT = 2;

    /** The frame of a vertex; empty where something about it is aslant, or its surfaces do not bound one room's corner. */
    public static Optional<CornerFrame> of(Corner corner) {
        MutableList<Point3> level = Lists.mutable.empty();
        MutableList<Point3> upright = Lists.mutable.empty();
        corner.ends().select(end -> isUpright(end.away())).forEach(end -> {
            upright.add(end.edge().first().normal());
            upright.add(end.edge().second().orElseThrow().normal());
        });
        corner.surfaces().forEach(surface -> (isUpright(surface.normal()) ? level : upright).add(surface.normal()));
        if (level.isEmpty()) {
            level.add(Vectors.UP);
        }
        ImmutableList<Point3> axes = distinct(upright).newWithAll(distinct(level));
        // An edge lies in both its surfaces: where each runs along an axis, the axes are square to one another.
        boolean square = axes.size() == 3
                && corner.ends().allSatisfy(end -> axes.anySatisfy(axis -> parallel(axis, end.away())));
        return square ? rooms(corner, axes).map(rooms -> new CornerFrame(axes, rooms)) : Optional.empty();
    }

    /** Whether some surface or edge of a vertex is neither parallel nor square to another one, or to what stands upright. */
    public static boolean aslant(Corner corner) {
        ImmutableList<Point3> directions = corner.surfaces()
                .collect(Surface::normal)
                .newWithAll(corner.ends()
                        .flatCollect(end -> Lists.immutable.of(
                                end.away(),
                                end.edge().first().normal(),
                                end.edge().second().orElseThrow().normal())))
                .newWith(Vectors.UP);
        return directions.anySatisfy(one ->
                directions.anySatisfy(other -> !parallel(one, other) && Math.abs(Vectors.dot(one, other)) > SQUARE));
    }

    private static boolean isUpright(Point3 direction) {
        return parallel(direction, Vectors.UP);
    }

    private static ImmutableList<Point3> distinct(MutableList<Point3> normals) {
        MutableList<Point3> found = Lists.mutable.empty();
        for (Point3 normal : normals) {
            if (found.noneSatisfy(each -> Vectors.dot(each, normal) > 1 - SQUARE)) {
                found.add(normal);
            }
        }
        return found.toImmutable();
    }

    private static boolean parallel(Point3 one, Point3 other) {
        return Vectors.length(Vectors.cross(one, other)) < SQUARE;
    }

    /** The axis along which a direction runs; -1 where it runs along none. */
    public int axis(Point3 direction) {
        return axes.detectIndex(axis -> parallel(axis, direction));
    }

    /** Whether a direction runs towards growing coordinates of its axis. */
    public boolean grows(Point3 direction) {
        return Vectors.dot(axes.get(axis(direction)), direction) > 0;
    }

    /** Whether the third axis points up. */
    public boolean upwards() {
        return axes.get(2).z() > 0;
    }

    /** Rooms lie behind surfaces, outdoors before them; where there is no surface between two octants they are alike. */
    private static Optional<Integer> rooms(Corner corner, ImmutableList<Point3> axes) {
        int[] kind = new int[8];
        boolean[][] surface = new boolean[3][8];
        for (int axis = 0; axis < 3; axis++) {
            for (int octant = 0; octant < 8; octant++) {
                surface[axis][octant] = covered(corner, axes, axis, octant);
                if (surface[axis][octant]) {
                    int wanted = (octant >> axis & 1) == 0 ? ROOM : OUT;
                    if (kind[octant] != UNKNOWN && kind[octant] != wanted) {
                        return Optional.empty();
                    }
                    kind[octant] = wanted;
                }
            }
        }
        for (int round = 0; round < 8; round++) {
            for (int axis = 0; axis < 3; axis++) {
                for (int octant = 0; octant < 8; octant++) {
                    int other = octant ^ 1 << axis;
                    if (surface[axis][octant] || kind[octant] == UNKNOWN) {
                        continue;
                    }
                    if (kind[other] != UNKNOWN && kind[other] != kind[octant]) {
                        return Optional.empty();
                    }
                    kind[other] = kind[octant];
                }
            }
        }
        int rooms = 0;
        for (int octant = 0; octant < 8; octant++) {
            rooms |= kind[octant] == ROOM ? 1 << octant : 0;
        }
        return Arrays.stream(kind).anyMatch(each -> each == UNKNOWN) ? Optional.empty() : Optional.of(rooms);
    }

    /** Whether a surface with this axis for its normal lies between an octant and the one beyond. */
    private static boolean covered(Corner corner, ImmutableList<Point3> axes, int axis, int octant) {
        Point3 at = corner.at();
        for (int other = 0; other < 3; other++) {
            if (other != axis) {
                at = Vectors.plus(at, Vectors.times(axes.get(other), (octant >> other & 1) == 1 ? NEAR : -NEAR));
            }
        }
        Point3 place = at;
        return corner.surfaces()
                .anySatisfy(
                        surface -> Vectors.dot(surface.normal(), axes.get(axis)) > 1 - SQUARE && surface.covers(place));
    }
}
