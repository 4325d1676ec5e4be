package coldseam.junctions.vertex;

import coldseam.junctions.DetailDoesNotFit;
import java.util.ArrayDeque;
import java.util.Arrays;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Which air of a vertex's box is the rooms' and which lies outside them: it spreads from the box's eight corners, each of which
 * lies in an octant that is a room or not. Air that it does not reach takes and gives no heat. Solids that touch the rest
 * nowhere are left out, as in a section.
 */
final class VertexAir {

    static final int SOLID = -1;
    static final int ENCLOSED = 0;
    static final int INDOOR = 1;
    static final int OUTSIDE = 2;

    private final VertexCells cells;
    private final int[] kind;
    private final MutableList<String> notes = Lists.mutable.empty();

    /** @throws DetailDoesNotFit where the rooms' air reaches what lies outside, or a corner's own detail encloses air */
    VertexAir(VertexSetup setup, VertexCells cells) {
        this.cells = cells;
        this.kind = new int[cells.size(0) * cells.size(1) * cells.size(2)];
        keepLargest();
        cells.each(cell -> kind[cells.index(cell)] = cells.at(cell).air() ? ENCLOSED : SOLID);
        for (int octant = 0; octant < 8; octant++) {
            int[] corner = new int[3];
            for (int axis = 0; axis < 3; axis++) {
                corner[axis] = (octant >> axis & 1) == 0 ? 0 : cells.size(axis) - 1;
            }
            spread(corner, setup.room(octant) ? INDOOR : OUTSIDE);
        }
        cells.each(cell -> {
            if (at(cell) == ENCLOSED && cells.isEmptied(cell)) {
                cells.refuseHole();
            }
        });
        if (Arrays.stream(kind).anyMatch(each -> each == ENCLOSED)) {
            notes.add("A hole in the drawing that faces neither rooms nor outdoors is adiabatic.");
        }
    }

    int at(int[] cell) {
        return kind[cells.index(cell)];
    }

    MutableList<String> notes() {
        return notes;
    }

    private void spread(int[] from, int as) {
        if (kind[cells.index(from)] == SOLID) {
            return;
        }
        flood(from, index -> kind[index] != SOLID && kind[index] != as, index -> {
            if (kind[index] != ENCLOSED) {
                throw DetailDoesNotFit.of(
                        "the sections of its edges leave a way from the rooms to outdoors in the corner");
            }
            kind[index] = as;
        });
    }

    private void keepLargest() {
        int[] part = new int[kind.length];
        MutableList<Integer> sizes = Lists.mutable.of(0);
        cells.each(cell -> {
            if (!cells.at(cell).air() && part[cells.index(cell)] == 0) {
                int number = sizes.size();
                int[] count = new int[1];
                boolean[] solid = new boolean[kind.length];
                cells.each(each -> solid[cells.index(each)] = !cells.at(each).air());
                flood(cell.clone(), index -> solid[index] && part[index] == 0, index -> {
                    part[index] = number;
                    count[0]++;
                });
                sizes.add(count[0]);
            }
        });
        if (sizes.size() > 2) {
            int largest = sizes.indexOf(sizes.max());
            cells.each(cell -> {
                if (part[cells.index(cell)] != largest) {
                    cells.clear(cell);
                }
            });
            notes.add("Parts that touch the rest nowhere are left out of the heat flow.");
        }
    }

    /** Whether a cell is to be reached. */
    private interface Open {
        boolean at(int index);
    }

    /** Marks a cell that was reached, so that it is no longer open. */
    private interface Mark {
        void at(int index);
    }

    private void flood(int[] from, Open open, Mark mark) {
        ArrayDeque<int[]> next = new ArrayDeque<>();
        if (open.at(cells.index(from))) {
            mark.at(cells.index(from));
            next.add(from);
        }
        while (!next.isEmpty()) {
            int[] cell = next.removeFirst();
            for (int axis = 0; axis < 3; axis++) {
                for (int way = -1; way <= 1; way += 2) {
                    int[] beyond = cell.clone();
                    beyond[axis] += way;
                    boolean within = beyond[axis] >= 0 && beyond[axis] < cells.size(axis);
                    if (within && open.at(cells.index(beyond))) {
                        mark.at(cells.index(beyond));
                        next.add(beyond);
                    }
                }
            }
        }
    }
}
