package coldseam.conduction.solid;

import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What a body is where it is cut: on a cut plane a section, along the line where two cut planes meet a stack of layers.
 * A cut plane at right angles to an edge is that edge's own section, the line where two meet is a surface's own stack, so
 * that nothing has to be given beside the drawing.
 */
public final class CutPlanes {

    private CutPlanes() {}

    /**
     * The section on a cut plane: its x is the body's first direction that lies in the plane, its y the second.
     *
     * @param boxes which of the body's painted boxes each region is cut from
     */
    public record Cut(Section section, ImmutableList<Integer> boxes) {}

    /**
     * Cuts a body.
     *
     * @param body without faults
     */
    public static Cut cut(SolidBody body, BoxSide side) {
        PaintedGrid grid = new PaintedGrid(body, Lists.mutable.empty());
        int d = side.direction();
        int e = d == 0 ? 1 : 0;
        int f = d == 2 ? 1 : 2;
        MutableList<Region> regions = Lists.mutable.empty();
        MutableList<Integer> boxes = Lists.mutable.empty();
        MutableList<Boundary> boundaries = Lists.mutable.empty();
        int[] at = new int[3];
        at[d] = edge(grid, side);
        for (at[f] = 0; at[f] < grid.n[f]; at[f]++) {
            for (at[e] = 0; at[e] < grid.n[e]; at[e]++) {
                int cell = grid.cell(at[0], at[1], at[2]);
                if (grid.piece[cell] < 0) {
                    continue;
                }
                double x0 = grid.plane[e][at[e]];
                double x1 = grid.plane[e][at[e] + 1];
                double y0 = grid.plane[f][at[f]];
                double y1 = grid.plane[f][at[f] + 1];
                boxes.add(grid.piece[cell]);
                regions.add(new Region(
                        body.painted().get(grid.piece[cell]).match(PaintedBox.Solid::material, air -> "", none -> ""),
                        grid.conductivity(cell),
                        Polygon.rectangle(x0, y0, x1, y1)));
                boundary(grid, cell, 2 * e, new Point(x0, y0), new Point(x0, y1), boundaries);
                boundary(grid, cell, 2 * e + 1, new Point(x1, y0), new Point(x1, y1), boundaries);
                boundary(grid, cell, 2 * f, new Point(x0, y0), new Point(x1, y0), boundaries);
                boundary(grid, cell, 2 * f + 1, new Point(x0, y1), new Point(x1, y1), boundaries);
            }
        }
        Section section = new Section(
                body.name() + ", cut at " + side,
                Symmetry.PLANAR,
                regions.toImmutable(),
                body.environments()
                        .collect(each -> new Environment(each.name(), each.temperature(), each.horizontal())),
                boundaries.toImmutable(),
                Lists.immutable.empty());
        return new Cut(section, boxes.toImmutable());
    }

    /** The section on a cut plane of a body without faults. */
    public static Section section(SolidBody body, BoxSide side) {
        return cut(body, side).section();
    }

    private static void boundary(
            PaintedGrid grid, int cell, int s, Point from, Point to, MutableList<Boundary> boundaries) {
        face(grid, cell, s, 0)
                .ifPresent(face -> boundaries.add(new Boundary(
                        face.environment(), Lists.immutable.of(from, to), OptionalDouble.of(face.resistance()))));
    }

    /**
     * A sheet of a stack.
     *
     * @param thickness m
     * @param conductivity W/(m·K)
     */
    public record Sheet(double thickness, double conductivity) {

        private double resistance() {
            return thickness / conductivity;
        }
    }

    /**
     * A face of a stack.
     *
     * @param at m, along the stack
     * @param environment whose air it faces
     * @param resistance m²·K/W
     */
    public record Face(double at, String environment, double resistance) {}

    /**
     * The layers along a line that leads from one environment through solids alone into another.
     *
     * @param low face at the lesser coordinate
     * @param sheets from there on
     * @param high the other face
     */
    public record Stack(Face low, ImmutableList<Sheet> sheets, Face high) {

        /** U, W/(m²·K). */
        public double transmittance() {
            return 1 / (low.resistance() + sheets.sumOfDouble(Sheet::resistance) + high.resistance());
        }
    }

    /**
     * The layers along the line where two cut planes meet.
     *
     * @param body without faults
     * @return empty where that line does not lead from one environment through solids alone into another
     */
    public static Optional<Stack> stack(SolidBody body, BoxSide one, BoxSide other) {
        PaintedGrid grid = new PaintedGrid(body, Lists.mutable.empty());
        int d = 3 - one.direction() - other.direction();
        int[] at = new int[3];
        at[one.direction()] = edge(grid, one);
        at[other.direction()] = edge(grid, other);
        MutableList<Sheet> sheets = Lists.mutable.empty();
        Optional<Face> first = Optional.empty();
        Optional<Face> last = Optional.empty();
        for (at[d] = 0; at[d] < grid.n[d]; at[d]++) {
            int cell = grid.cell(at[0], at[1], at[2]);
            if (grid.piece[cell] < 0 && (first.isEmpty() || last.isPresent())) {
                continue;
            }
            if (grid.piece[cell] < 0) {
                return Optional.empty();
            }
            Optional<Face> low = face(grid, cell, 2 * d, grid.plane[d][at[d]]);
            if (last.isPresent() || low.isPresent() == first.isPresent()) {
                return Optional.empty();
            }
            first = first.or(() -> low);
            sheets.add(new Sheet(grid.plane[d][at[d] + 1] - grid.plane[d][at[d]], grid.conductivity(cell)));
            last = face(grid, cell, 2 * d + 1, grid.plane[d][at[d] + 1]);
        }
        return last.isEmpty()
                        || last.get().environment().equals(first.orElseThrow().environment())
                ? Optional.empty()
                : Optional.of(new Stack(first.orElseThrow(), sheets.toImmutable(), last.get()));
    }

    private static int edge(PaintedGrid grid, BoxSide side) {
        return side.high() ? grid.n[side.direction()] - 1 : 0;
    }

    private static Optional<Face> face(PaintedGrid grid, int cell, int side, double at) {
        int surface = PaintedGrid.FIRST_SURFACE - grid.side[6 * cell + side];
        return surface < 0
                ? Optional.empty()
                : Optional.of(new Face(at, grid.environmentAt(surface), grid.resistance(surface)));
    }

    /** m from a cut plane into a body without faults, to where what the cut shows no longer goes on. */
    public static double undisturbed(SolidBody body, BoxSide side) {
        PaintedGrid grid = new PaintedGrid(body, Lists.mutable.empty());
        int d = side.direction();
        int step = side.high() ? -1 : 1;
        int shown = edge(grid, side);
        int slab = shown;
        while (slab >= 0 && slab < grid.n[d] && alike(grid, d, shown, slab)) {
            slab += step;
        }
        return Math.abs(grid.plane[d][side.high() ? slab + 1 : slab] - side.of(body.extent()));
    }

    /** Whether a body without faults shows the same at its two faces of a direction. */
    public static boolean showsAlike(SolidBody body, int direction) {
        PaintedGrid grid = new PaintedGrid(body, Lists.mutable.empty());
        return alike(grid, direction, 0, grid.n[direction] - 1);
    }

    private static boolean alike(PaintedGrid grid, int d, int one, int other) {
        int e = (d + 1) % 3;
        int f = (d + 2) % 3;
        int[] at = new int[3];
        for (at[e] = 0; at[e] < grid.n[e]; at[e]++) {
            for (at[f] = 0; at[f] < grid.n[f]; at[f]++) {
                at[d] = one;
                int first = grid.cell(at[0], at[1], at[2]);
                at[d] = other;
                int second = grid.cell(at[0], at[1], at[2]);
                if (grid.conductivity(first) != grid.conductivity(second)
                        || grid.piece[first] >= 0 && !facesAlike(grid, d, first, second)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether two solid cells meet the same air, through as much, in all directions but d. */
    private static boolean facesAlike(PaintedGrid grid, int d, int one, int other) {
        for (int side = 0; side < 6; side++) {
            int there = grid.side[6 * one + side];
            int here = grid.side[6 * other + side];
            boolean solid = there >= 0 && here >= 0;
            if (side / 2 != d && !solid && there != here && !sameAir(grid, there, here)) {
                return false;
            }
        }
        return true;
    }

    /** Patches are pieces of a surface, and part nothing. */
    private static boolean sameAir(PaintedGrid grid, int one, int other) {
        int a = PaintedGrid.FIRST_SURFACE - one;
        int b = PaintedGrid.FIRST_SURFACE - other;
        return a >= 0
                && b >= 0
                && grid.environmentOf(grid.partOfSurface(a)) == grid.environmentOf(grid.partOfSurface(b))
                && grid.resistance(a) == grid.resistance(b);
    }
}
