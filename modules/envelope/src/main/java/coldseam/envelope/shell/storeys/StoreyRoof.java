package coldseam.envelope.shell.storeys;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Compass;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Together;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetNames;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.PlanRings;
import coldseam.envelope.shell.roof.DormerForm;
import coldseam.envelope.shell.roof.RoofField;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;

/**
 * The facets of the roof over the top storey: its slopes, its gables, and its walls that stand in no outer face.
 *
 * @param top the storey under it
 */
record StoreyRoof(House house, Stacks stacks, int top, Plan plan, StoreyLevels levels, RoofForm form, RoofField field) {

    /**
     * The slopes.
     *
     * @param parts cells of one plane each
     * @param centre of the top storey
     */
    public ImmutableList<Facet> slopes(ImmutableList<ImmutableList<Integer>> parts, Vertex centre) {
        Body.Roof r = stacks.stack(top).roof();
        Optional<Assembly> assembly = house.assembly(r.assembly());
        boolean cold = r.insulatedAtCeiling();
        Exposure exposure = cold
                ? new Exposure(Exposure.Kind.UNHEATED, "loft", r.loftFactor().orElse(1))
                : Exposure.outdoors();
        boolean walked = r.form() == Body.Roof.Form.TERRACE;
        boolean parapet = !cold && r.form() == Body.Roof.Form.FLAT && r.parapetHeight() > 0;
        MutableList<Facet> slopes = Lists.mutable.empty();
        MutableList<Facet> collars = Lists.mutable.empty();
        MutableMap<Body.Dormer, MutableList<Facet>> dormers = Maps.mutable.empty();
        for (ImmutableList<Integer> cells : parts) {
            ImmutableList<Vertex> outline = PlanRings.everyNode(plan, cells)
                    .only()
                    .collect(node -> node.at(field.at(cells.getFirst(), top, node)));
            RoofForm.Plane plane = field.plane(cells.getFirst(), top).orElseThrow();
            if (plane.side() == RoofForm.COLLAR) {
                collars.add(collar(r.collar().orElseThrow(), outline));
                continue;
            }
            if (plane.side() <= RoofForm.DORMER) {
                Optional<Assembly> own = Optional.ofNullable(
                        house.assemblies().get(form.dormer(plane).roof()));
                dormers.getIfAbsentPut(form.dormer(plane), Lists.mutable::empty)
                        .add(new Facet("", Body.Use.ROOF, own, Exposure.outdoors(), outline, traits(Facet.Mark.NONE)));
                continue;
            }
            slopes.add(new Facet(
                    "",
                    cold ? Body.Use.CEILING : walked ? Body.Use.TERRACE : Body.Use.ROOF,
                    assembly,
                    exposure,
                    outline,
                    traits(parapet ? Facet.Mark.PARAPET : Facet.Mark.NONE)));
        }
        return FacetNames.apart(slopes, (cold ? "top ceiling" : walked ? "terrace" : "roof") + stacks.of(top), centre)
                .newWithAll(FacetNames.apart(collars, "collar ceiling" + stacks.of(top), centre))
                .newWithAll(r.dormers()
                        .flatCollect(dormer -> FacetNames.apart(dormers.get(dormer), dormer.name() + " roof", centre)));
    }

    private Facet collar(Body.Collar collar, ImmutableList<Vertex> outline) {
        Assembly assembly = house.assemblies().get(collar.assembly());
        return new Facet(
                "",
                Body.Use.CEILING,
                Optional.of(assembly),
                new Exposure(Exposure.Kind.UNHEATED, "loft", collar.loftFactor()),
                outline,
                // Level walls of the gables run on past it, up to the ridge, under the loft.
                traits(Facet.Mark.NONE));
    }

    /**
     * Cells of one plane that hang together, in the order of the storey's sides.
     *
     * @param shown whether the roof lies outdoors over a cell
     */
    public ImmutableList<ImmutableList<Integer>> parts(IntPredicate shown) {
        return Together.parts(
                        plan.cellsOf(top).select(shown::test),
                        (cell, other) -> plan.beside(cell)
                                .anySatisfy(bound -> bound.borders(other)
                                        && !parts(bound, cell)
                                        && !bound.cuts(top, true)
                                        && field.plane(other, top).equals(field.plane(cell, top))))
                .collect(ImmutableList::toImmutableSortedList)
                .toImmutableSortedListBy(
                        part -> field.plane(part.getFirst(), top).orElseThrow().side());
    }

    /** Whether a bound parts a slope around a dormer. */
    private boolean parts(Plan.Bound bound, int cell) {
        return field.plane(cell, top).orElseThrow().side() >= 0
                && bound.runs()
                        .collect(Plan.Run::tag)
                        .anySatisfy(tag ->
                                tag.kind() == Plan.Kind.ROOF && tag.storey() == top && form.merelyParts(tag.number()));
    }

    /** A dormer's front or one of its cheeks. */
    private Facet dormer(DormerForm placed, ImmutableList<Vertex> outline) {
        Body.Dormer dormer = placed.dormer();
        Assembly assembly = house.assemblies().get(dormer.wall());
        Facet bare = new Facet(
                dormer.name(),
                Body.Use.WALL,
                Optional.of(assembly),
                Exposure.outdoors(),
                outline,
                traits(Facet.Mark.DORMER));
        Point3 out = bare.normal();
        return bare.withName(dormer.name()
                + (placed.faces(out)
                        ? " front"
                        : " " + Compass.of(out.x(), out.y()).word() + " cheek"));
    }

    /** A gable over one of the top storey's sides, the upright part of a side over another's slope, or a dormer's wall. */
    public Facet gable(WallPieces.Owner owner, ImmutableList<Vertex> outline) {
        Point3 middle = Vectors.mean(outline.collect(Vertex::point));
        Optional<DormerForm> dormer = owner.isWall()
                ? form.dormer(owner.line().number(), Vertex.of(middle))
                : form.dormer(owner.line().number());
        if (dormer.isPresent()) {
            return dormer(dormer.get(), outline);
        }
        int side = owner.isWall()
                ? owner.line().number()
                : Math.max(0, form.upright(owner.line().number()));
        Body.Wall wall = stacks.storey(top).walls().get(side);
        Optional<String> own = stacks.stack(top).roof().gableAssembly();
        Optional<Assembly> assembly = house.assembly(own.isPresent() ? own : wall.assembly());
        return new Facet(
                Body.Wall.gableOver(wall.name()),
                Body.Use.WALL,
                assembly,
                owner.isWall() ? wall.exposure() : Exposure.outdoors(),
                outline,
                traits(Facet.Mark.UNDER_GABLE));
    }

    private Facet.Traits traits(Facet.Mark mark) {
        return levels.traits(stacks, top, mark);
    }
}
