package coldseam.junctions.vertex;

import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.section.Surroundings;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Which space the air of a vertex outside its rooms belongs to.
 *
 * <p>Past a surface's outer face lies what it faces. Where nothing divides two spaces they meet in the plane of an outer face, as
 * they do at the outer corner of a section. Past the outer faces of several surfaces lies the coldest of what they face, which is
 * open air where one of them faces it.
 */
final class VertexSpaces {

    private final VertexSetup setup;
    private final VertexSections sections;
    private final Surroundings.Space[] octants = new Surroundings.Space[8];

    /** @throws DetailDoesNotFit where two surfaces on one quarter of air face different spaces */
    VertexSpaces(VertexSetup setup, VertexSections sections) {
        this.setup = setup;
        this.sections = sections;
        Surroundings.Space coldest = all().maxBy(Surroundings.Space::factor);
        for (int octant = 0; octant < octants.length; octant++) {
            octants[octant] = faced(octant, coldest);
        }
    }

    private Surroundings.Space faced(int octant, Surroundings.Space otherwise) {
        MutableList<Surroundings.Space> found = Lists.mutable.empty();
        for (int axis = 0; axis < 3; axis++) {
            if (setup.room(octant ^ 1 << axis)) {
                sections.space(axis).ifPresent(found::add);
            }
        }
        if (!setup.room(octant) && found.distinct().size() > 1) {
            throw DetailDoesNotFit.of("the same air beside it is said to be "
                    + found.collect(Surroundings.Space::name)
                            .distinct()
                            .sortThis()
                            .makeString(" and "));
        }
        return found.isEmpty() ? otherwise : found.getFirst();
    }

    /** Each once, in the order of the axes. */
    ImmutableList<Surroundings.Space> all() {
        MutableList<Surroundings.Space> all = Lists.mutable.empty();
        for (int axis = 0; axis < 3; axis++) {
            sections.space(axis).ifPresent(all::add);
        }
        return all.distinct().toImmutable();
    }

    /** The space of a cell of air outside the rooms. */
    Surroundings.Space at(int[] cell) {
        int octant = 0;
        int nearest = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int axis = 0; axis < 3; axis++) {
            double past = sections.middle(axis, cell[axis]) - sections.outside[axis];
            octant |= past > 0 ? 1 << axis : 0;
            if (past > most && !setup.room(octant ^ 1 << axis)) {
                most = past;
                nearest = axis;
            }
        }
        // A notch within the thicknesses belongs to what the nearest outer face faces.
        return octants[setup.room(octant) ? octant ^ 1 << nearest : octant];
    }

    /** What is taken where nothing divides two spaces, in plain words. */
    ImmutableList<String> notes(VertexCells cells, VertexAir air) {
        MutableList<String> notes = Lists.mutable.empty();
        cells.each(cell -> {
            for (int axis = 0; axis < 3 && air.at(cell) == VertexAir.OUTSIDE; axis++) {
                int[] next = cell.clone();
                next[axis]++;
                if (next[axis] < cells.size(axis) && air.at(next) == VertexAir.OUTSIDE && !at(next).equals(at(cell))) {
                    notes.add("Nothing divides "
                            + Lists.mutable
                                    .of(at(cell).name(), at(next).name())
                                    .sortThis()
                                    .makeString(" from ")
                            + ": they are taken to meet in the plane of an outer face.");
                }
            }
        });
        return notes.distinct().toImmutable();
    }
}
