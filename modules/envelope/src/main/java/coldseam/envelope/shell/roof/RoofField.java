package coldseam.envelope.shell.roof;

import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Plan;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;

/**
 * Heights of sloping planes over the plan: one at each node for all planes that meet there.
 *
 * <p>A node may lie a tenth of a millimetre off the line it stands for, and the planes over it that much apart. Heights that
 * belong together are made one: that of a corner of the roof or of its eaves where one is near, else the least.
 */
public final class RoofField {

    /** Lattice units of height within which planes meet: the plan's reach up the steepest slope, and to spare. */
    private static final long MEET = 10 * Vertex.ONE;

    /** A plane over a cell. */
    private record Placed(RoofForm form, RoofForm.Plane plane) {

        long at(Vertex node) {
            return form.height(plane, node);
        }
    }

    /** What slopes over a storey in a cell of the plan, if anything does. */
    public interface Forms {
        Optional<RoofForm> over(int cell, int storey);
    }

    private final MutableList<Map<Integer, Placed>> planes = Lists.mutable.empty();
    private final Map<Vertex, MutableList<Long>> heights = new TreeMap<>();

    /**
     * @param levels that slopes may cross
     */
    public RoofField(Plan plan, int storeys, Forms forms, ImmutableList<Long> levels) {
        MutableSet<RoofForm> all = Sets.mutable.empty();
        for (int c = 0; c < plan.cells().size(); c++) {
            Vertex inside =
                    Plan.vertex(plan.cells().get(c).polygon().getInteriorPoint().getCoordinate());
            Map<Integer, Placed> here = new TreeMap<>();
            for (int k = 0; k < storeys; k++) {
                if (plan.in(c, k)) {
                    int storey = k;
                    forms.over(c, k).ifPresent(form -> {
                        here.put(storey, new Placed(form, form.at(inside)));
                        all.add(form);
                    });
                }
            }
            planes.add(here);
        }
        ImmutableList<Long> eaves =
                all.collect(RoofForm::eaves).toImmutableSortedList().newWithAll(levels);
        ImmutableList<Vertex> corners =
                all.flatCollect(RoofForm::nodes, Lists.mutable.<Vertex>empty()).toImmutableSortedList();
        for (int c = 0; c < planes.size(); c++) {
            for (Placed placed : planes.get(c).values()) {
                for (Plan.Bound bound : plan.beside(c)) {
                    for (Vertex node : new Vertex[] {bound.from(), bound.to()}) {
                        heights.computeIfAbsent(node, v -> anchors(v, eaves, corners))
                                .add(placed.at(node));
                    }
                }
            }
        }
    }

    private static MutableList<Long> anchors(Vertex node, ImmutableList<Long> eaves, ImmutableList<Vertex> corners) {
        MutableList<Long> near = eaves.toList();
        corners.select(corner -> corner.at(0).minus(node).length() <= 2 * Vertex.ONE)
                .forEach(corner -> near.add(corner.z()));
        return near;
    }

    /** The plane over a storey in a cell; empty where none slopes there. */
    public Optional<RoofForm.Plane> plane(int cell, int storey) {
        return Optional.ofNullable(planes.get(cell).get(storey)).map(Placed::plane);
    }

    /** z of the plane over a storey in a cell, at a node beside it. */
    public long at(int cell, int storey, Vertex node) {
        return first(node, first(node, planes.get(cell).get(storey).at(node)));
    }

    /** The first of all heights at a node, corners before planes, that one meets. */
    private long first(Vertex node, long height) {
        return heights.get(node).detect(other -> Math.abs(other - height) <= MEET);
    }
}
