package coldseam.envelope.shell;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point3;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * A surface in the making: its outline on the lattice and what its neighbours must know of it.
 *
 * @param name unique
 * @param use what it is to the house
 * @param assembly empty where none is given or the facet is a step
 * @param exposure what it faces
 * @param outline counterclockwise seen from outdoors
 * @param inset m, from its outer plane inwards to its inner plane
 * @param missing whether it is left out: it still bounds its neighbours' inner faces, but leaves the shell open
 * @param traits where it stands
 */
record Facet(
        String name,
        Body.Use use,
        Optional<Assembly> assembly,
        Exposure exposure,
        ImmutableList<Vertex> outline,
        double inset,
        boolean missing,
        Traits traits) {

    /** What sets a facet apart from others of its use. */
    enum Mark {
        /** A strip where the outer planes of two walls differ, or a jog between two levels. */
        STEP,
        /** A wall that a gable or verge stands on. */
        UNDER_GABLE,
        /** A flat roof with a parapet. */
        PARAPET,
        /** A cellar's floor or walls. */
        CELLAR,
        NONE
    }

    /**
     * Where a facet stands.
     *
     * @param storey in words
     * @param level index of its storey, −1 where the body has none
     * @param floor m, z of its storey's floor; NaN where only the facet's inner outline tells
     * @param mark what sets it apart
     */
    record Traits(String storey, int level, double floor, Mark mark) {}

    boolean step() {
        return traits.mark() == Mark.STEP;
    }

    boolean marked(Mark mark) {
        return traits.mark() == mark;
    }

    Facet withOutline(ImmutableList<Vertex> corners) {
        return new Facet(name, use, assembly, exposure, corners, inset, missing, traits);
    }

    Facet withName(String other) {
        return new Facet(other, use, assembly, exposure, outline, inset, missing, traits);
    }

    /** Twice the area vector, lattice units squared, exact. */
    Vertex doubleArea() {
        return doubleArea(outline);
    }

    static Vertex doubleArea(ImmutableList<Vertex> outline) {
        Vertex origin = outline.get(0);
        Vertex sum = new Vertex(0, 0, 0);
        for (int i = 1; i + 1 < outline.size(); i++) {
            sum = sum.plus(outline.get(i).minus(origin).cross(outline.get(i + 1).minus(origin)));
        }
        return sum;
    }

    /** Outward unit normal. */
    Point3 normal() {
        Vertex area = doubleArea();
        return Vectors.unit(new Point3(area.x(), area.y(), area.z()));
    }

    /** The outline without repeated corners and without corners in the middle of a straight line. */
    static ImmutableList<Vertex> tidy(ImmutableList<Vertex> outline) {
        return within(outline, 0);
    }

    /** The same without corners that rounding alone puts beside a straight line. */
    static ImmutableList<Vertex> straight(ImmutableList<Vertex> outline) {
        return within(outline, 2 * Vertex.ONE);
    }

    private static ImmutableList<Vertex> within(ImmutableList<Vertex> outline, double off) {
        MutableList<Vertex> kept = Lists.mutable.empty();
        for (Vertex corner : outline) {
            if (kept.isEmpty() || !kept.getLast().equals(corner)) {
                kept.add(corner);
            }
        }
        while (kept.size() > 1 && kept.getFirst().equals(kept.getLast())) {
            kept.remove(kept.size() - 1);
        }
        for (int i = 0; i < kept.size() && kept.size() > 3; ) {
            Vertex before = kept.get((i + kept.size() - 1) % kept.size());
            Vertex after = kept.get((i + 1) % kept.size());
            Vertex here = kept.get(i);
            Vertex turn = here.minus(before).cross(after.minus(here));
            boolean back = off > 0 && here.minus(before).dot(after.minus(here)) < 0;
            if (!back && turn.length() <= off * after.minus(before).length()) {
                kept.remove(i);
                i = Math.max(0, i - 1);
            } else {
                i++;
            }
        }
        return kept.toImmutable();
    }
}
