package coldseam.envelope.shell;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Heights of sloping planes over the plan: one at each node for all planes that meet there.
 *
 * <p>A node may lie a tenth of a millimetre off the line it stands for, and the planes over it that much apart. Heights that
 * belong together are made one: that of a corner of the roof or of its eaves where one is near, else the least.
 */
final class RoofField {

    /** Lattice units of height within which planes meet: the plan's reach up the steepest slope, and to spare. */
    private static final long MEET = 10 * Vertex.ONE;

    private final Plan plan;
    private final ImmutableList<Optional<RoofForm>> forms;
    private final MutableList<Optional<RoofForm.Plane>> planes = Lists.mutable.empty();
    private final Map<Vertex, MutableList<Long>> heights = new TreeMap<>();

    /**
     * @param forms for each storey what slopes over it where no other storey does
     */
    RoofField(Plan plan, ImmutableList<Optional<RoofForm>> forms) {
        this.plan = plan;
        this.forms = forms;
        for (int c = 0; c < plan.cells().size(); c++) {
            Vertex inside =
                    Plan.vertex(plan.cells().get(c).polygon().getInteriorPoint().getCoordinate());
            planes.add(form(c).map(form -> form.at(inside)));
        }
        ImmutableList<Vertex> corners =
                forms.flatCollect(form -> form.map(RoofForm::nodes).orElse(Lists.immutable.empty()));
        for (int c = 0; c < planes.size(); c++) {
            for (Plan.Bound bound : planes.get(c).isPresent() ? plan.beside(c) : Lists.immutable.<Plan.Bound>empty()) {
                heights.computeIfAbsent(bound.from(), v -> anchors(v, corners)).add(raw(c, bound.from()));
                heights.computeIfAbsent(bound.to(), v -> anchors(v, corners)).add(raw(c, bound.to()));
            }
        }
    }

    private MutableList<Long> anchors(Vertex node, ImmutableList<Vertex> corners) {
        MutableList<Long> near = Lists.mutable.empty();
        forms.forEach(form -> form.ifPresent(f -> near.add(f.eaves())));
        corners.select(corner -> corner.at(0).minus(node).length() <= 2 * Vertex.ONE)
                .forEach(corner -> near.add(corner.z()));
        return near;
    }

    private Optional<RoofForm> form(int cell) {
        int top = plan.cells().get(cell).storeys().length() - 1;
        return top < 0 ? Optional.empty() : forms.get(top);
    }

    private long raw(int cell, Vertex node) {
        return form(cell).orElseThrow().height(planes.get(cell).orElseThrow(), node);
    }

    /** The plane over a cell; empty where none slopes there. */
    Optional<RoofForm.Plane> plane(int cell) {
        return planes.get(cell);
    }

    /** z of the plane over a cell at a node beside it. */
    long at(int cell, Vertex node) {
        return first(node, first(node, raw(cell, node)));
    }

    /** The first of all heights at a node, corners before planes, that one meets. */
    private long first(Vertex node, long height) {
        return heights.get(node).detect(other -> Math.abs(other - height) <= MEET);
    }
}
