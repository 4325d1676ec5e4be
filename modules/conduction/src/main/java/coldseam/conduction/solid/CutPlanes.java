package coldseam.conduction.solid;

import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
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
        at[d] = side.high() ? grid.n[d] - 1 : 0;
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
        int surface = PaintedGrid.FIRST_SURFACE - grid.side[6 * cell + s];
        if (surface >= 0) {
            boundaries.add(new Boundary(
                    grid.body
                            .environments()
                            .get(grid.environmentOf(grid.partOfSurface(surface)))
                            .name(),
                    Lists.immutable.of(from, to),
                    OptionalDouble.of(grid.resistance(surface))));
        }
    }

    /**
     * The thermal transmittance of the layers along the line where two cut planes meet, W/(m²·K).
     *
     * @param body without faults
     * @return empty where that line does not lead from one environment through solids alone into another
     */
    public static OptionalDouble transmittance(SolidBody body, BoxSide one, BoxSide other) {
        PaintedGrid grid = new PaintedGrid(body, Lists.mutable.empty());
        int d = 3 - one.direction() - other.direction();
        int[] at = new int[3];
        at[one.direction()] = one.high() ? grid.n[one.direction()] - 1 : 0;
        at[other.direction()] = other.high() ? grid.n[other.direction()] - 1 : 0;
        double resistance = 0;
        int from = -1;
        int open = -1;
        for (at[d] = 0; at[d] < grid.n[d]; at[d]++) {
            int cell = grid.cell(at[0], at[1], at[2]);
            if (grid.piece[cell] < 0) {
                continue;
            }
            int low = PaintedGrid.FIRST_SURFACE - grid.side[6 * cell + 2 * d];
            int high = PaintedGrid.FIRST_SURFACE - grid.side[6 * cell + 2 * d + 1];
            if (low >= 0 && open < 0 && from < 0) {
                resistance += grid.resistance(low);
                from = grid.environmentOf(grid.partOfSurface(low));
                open = from;
            } else if (low >= 0 || open < 0) {
                return OptionalDouble.empty();
            }
            resistance += (grid.plane[d][at[d] + 1] - grid.plane[d][at[d]]) / grid.conductivity(cell);
            if (high >= 0) {
                resistance += grid.resistance(high);
                if (grid.environmentOf(grid.partOfSurface(high)) == from) {
                    return OptionalDouble.empty();
                }
                open = -1;
            }
        }
        return from < 0 || open >= 0 ? OptionalDouble.empty() : OptionalDouble.of(1 / resistance);
    }
}
