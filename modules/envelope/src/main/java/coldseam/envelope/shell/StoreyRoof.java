package coldseam.envelope.shell;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** The roof over the top storey: its shape, its facets, and how high the walls under it reach. */
final class StoreyRoof {

    private final House house;
    private final Body.Storeys body;
    private final ImmutableList<Vertex> walk;
    private final ImmutableList<Vertex> corners;
    private final StoreyLevels levels;
    private final RoofShape shape;

    private StoreyRoof(
            House house,
            Body.Storeys body,
            ImmutableList<Vertex> walk,
            ImmutableList<Vertex> corners,
            StoreyLevels levels,
            RoofShape shape) {
        this.house = house;
        this.body = body;
        this.walk = walk;
        this.corners = corners;
        this.levels = levels;
        this.shape = shape;
    }

    /** The roof, or none where a fault was added. */
    static Optional<StoreyRoof> of(House house, Body.Storeys body, Plan plan, StoreyLevels levels, ShellFaults faults) {
        ImmutableList<Vertex> walk = plan.walk(body.storeys().size() - 1);
        ImmutableList<Vertex> ring = Facet.straight(walk);
        int least = ring.indexOf(ring.min());
        ImmutableList<Vertex> corners = ring.drop(least).newWithAll(ring.take(least));
        Body.Roof r = body.roof();
        boolean square = RoofShape.rectangle(corners);
        Body.Storey storey = body.storeys().getLast();
        if (!RoofShape.flatTop(r) && !square) {
            faults.add(
                    ShellFault.Part.ROOF,
                    "",
                    "Roof: a %s roof needs a rectangular top storey, but the outer faces of \"%s\" have %d corners (steps between"
                            + " walls of different thickness count). Use a flat roof, or describe the body by explicit surfaces.",
                    r.form().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    storey.name(),
                    corners.size());
            return Optional.empty();
        }
        boolean sided = r.form() == Body.Roof.Form.MONO_PITCH || r.form() == Body.Roof.Form.GABLE;
        Vertex low = sided && square ? middle(storey, r.lowSide()) : corners.get(0);
        Optional<Assembly> assembly = r.assembly().map(house.assemblies()::get);
        RoofShape rectangle = RoofShape.of(corners, r, assembly, low, 0, levels.top());
        double wall = 0;
        for (int i = 0; i < storey.walls().size(); i++) {
            if (!square || !rectangle.gableSide(rectangle.side(middle(storey, i)))) {
                Optional<Assembly> own = storey.walls().get(i).assembly().map(house.assemblies()::get);
                wall = Math.max(wall, Footprint.thickness(own));
            }
        }
        RoofShape shape = RoofShape.of(corners, r, assembly, low, wall, levels.top());
        return Optional.of(new StoreyRoof(house, body, walk, corners, levels, shape));
    }

    private static Vertex middle(Body.Storey storey, int side) {
        var a = storey.footprint().get(side);
        var b = storey.footprint().get((side + 1) % storey.footprint().size());
        return new Vertex(Vertex.units((a.x() + b.x()) / 2), Vertex.units((a.y() + b.y()) / 2), 0);
    }

    /** Height at which a wall of the top storey ends over a plan point. */
    long wallTop(Vertex point) {
        return shape.wallTop(point);
    }

    /** Whether a side of the top storey carries a gable or a verge. */
    boolean gableOver(int side) {
        return RoofShape.rectangle(corners)
                && shape.gableSide(shape.side(middle(body.storeys().getLast(), side)));
    }

    /**
     * Slopes and gables.
     *
     * @param centre of the top storey
     */
    ImmutableList<Facet> facets(Vertex centre) {
        Body.Roof r = body.roof();
        Optional<Assembly> assembly = r.assembly().map(house.assemblies()::get);
        boolean cold = r.insulatedAtCeiling();
        Exposure exposure = cold
                ? new Exposure(Exposure.Kind.UNHEATED, "loft", r.loftFactor().orElse(1))
                : Exposure.outdoors();
        boolean parapet = !cold && r.form() == Body.Roof.Form.FLAT && r.parapetHeight() > 0;
        MutableList<Facet> slopes = Lists.mutable.empty();
        MutableList<Facet> gables = Lists.mutable.empty();
        for (RoofShape.Plane plane : shape.planes()) {
            if (plane.wall() >= 0) {
                gables.add(gable(plane));
                continue;
            }
            slopes.add(new Facet(
                    "",
                    cold ? Body.Use.CEILING : Body.Use.ROOF,
                    assembly,
                    exposure,
                    alongWalls(plane.outline()),
                    Footprint.thickness(assembly),
                    assembly.isEmpty(),
                    traits(parapet ? Facet.Mark.PARAPET : Facet.Mark.NONE)));
        }
        return gables.toImmutable().newWithAll(FacetNames.apart(slopes, cold ? "top ceiling" : "roof", centre));
    }

    private Facet gable(RoofShape.Plane plane) {
        Body.Storey storey = body.storeys().getLast();
        int side = 0;
        while (shape.side(middle(storey, side)) != plane.wall()) {
            side++;
        }
        Body.Wall wall = storey.walls().get(side);
        Optional<String> own = body.roof().gableAssembly();
        Optional<Assembly> assembly = (own.isPresent() ? own : wall.assembly()).map(house.assemblies()::get);
        return new Facet(
                "gable over " + wall.name(),
                Body.Use.WALL,
                assembly,
                wall.exposure(),
                alongWalls(plane.outline()),
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(Facet.Mark.UNDER_GABLE));
    }

    private Facet.Traits traits(Facet.Mark mark) {
        int top = body.storeys().size() - 1;
        return new Facet.Traits(
                body.storeys().get(top).name(),
                top,
                Vertex.metres(levels.floors().get(top)),
                mark);
    }

    /** The outline with every corner the walls have on their way under it. */
    private ImmutableList<Vertex> alongWalls(ImmutableList<Vertex> outline) {
        MutableList<Vertex> whole = Lists.mutable.empty();
        for (int i = 0; i < outline.size(); i++) {
            Vertex a = outline.get(i);
            int from = corners.indexOf(a.at(0));
            int to = corners.indexOf(outline.get((i + 1) % outline.size()).at(0));
            whole.add(a);
            if (from >= 0 && to == (from + 1) % corners.size()) {
                for (int n = walk.indexOf(a.at(0)) + 1;
                        !walk.get(n % walk.size()).equals(corners.get(to));
                        n++) {
                    Vertex node = walk.get(n % walk.size());
                    whole.add(node.at(shape.wallTop(node)));
                }
            }
        }
        return whole.toImmutable();
    }
}
