package coldseam.envelope.shell.storeys;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetNames;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.PlanRegions;
import coldseam.envelope.shell.plan.StepZones;
import coldseam.envelope.shell.roof.RoofField;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.tuple.Tuples;

/**
 * Facets of a body by storeys.
 *
 * <p>1. The storeys are laid over one another, and what lies open above one or hangs over the one below is found
 * ({@link StoreyPlan}). 2. Each cell of the plan gets its heated heights. 3. Level faces close them below and above, upright
 * faces beside; the roof closes the top storey. 4. The whole is compared with the footprints ({@link StoreySections}).
 */
public final class StoreyFacets {

    private final House house;
    private final Body.Storeys body;
    private final int count;
    private final ShellFaults faults;
    private final MutableList<Facet> facets = Lists.mutable.empty();
    private final MutableList<Facet> gables = Lists.mutable.empty();

    private PlanRegions regions;
    private Plan plan;
    private StoreyLevels levels;
    private StoreyParts parts;
    private StoreyGround ground;
    private ImmutableList<Optional<RoofForm>> forms;
    private RoofField field;
    private StoreyRoof roof;

    private StoreyFacets(House house, Body.Storeys body, ShellFaults faults) {
        this.house = house;
        this.body = body;
        this.count = body.storeys().size();
        this.faults = faults;
    }

    /** The facets, or none where faults were added. */
    public static Optional<BodyFacets> of(House house, Body.Storeys body, ShellFaults faults) {
        return new StoreyFacets(house, body, faults).build();
    }

    private Optional<BodyFacets> build() {
        if (!new BodyChecks(house, body, faults).pass()) {
            return Optional.empty();
        }
        Optional<StoreyPlan> laid = StoreyPlan.of(house, body, faults);
        if (laid.isEmpty()) {
            return Optional.empty();
        }
        forms = laid.get().forms();
        regions = laid.get().regions();
        plan = regions.plan();
        parts = new StoreyParts(house, body, regions, forms);
        levels = StoreyLevels.of(body, find(body.base().assembly()), parts);
        ground = new StoreyGround(
                body, laid.get().moved().getFirst(), levels.floors().getFirst());
        field = new RoofField(plan, count, parts::form);
        roof = new StoreyRoof(house, body, plan, levels, forms.getLast().orElseThrow(), field);
        ImmutableList<ImmutableList<WallPieces.Span>> spans = spans();
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        LevelFaces faces = new LevelFaces(body, regions, levels, parts, field);
        facets.addAllIterable(faces.base());
        addWalls(spans);
        facets.addAllIterable(faces.between());
        facets.addAllIterable(gables);
        facets.addAllIterable(roof.slopes(faces.middle(count - 1)));
        new StoreySections(laid.get().moved(), regions, levels, facets.toImmutable(), tops(), unders())
                .check(forms.getLast());
        MutableList<BodyFacets.Above> storeys = Lists.mutable.empty();
        for (int k = 0; k < count; k++) {
            double takeOver = k + 1 < count
                    ? Vertex.metres(
                            levels.takeOverInside().get(k) - levels.takeOver().get(k))
                    : 0;
            storeys.add(new BodyFacets.Above(
                    body.storeys().get(k).name(), body.storeys().get(k).floorThickness(), takeOver));
        }
        return Optional.of(new BodyFacets(
                facets.toImmutable(),
                storeys.toImmutable(),
                laid.get().floorArea(),
                Math.max(laid.get().widestStep(), faces.widestJog())));
    }

    private Optional<Assembly> find(Optional<String> name) {
        return name.map(house.assemblies()::get);
    }

    private ImmutableList<ImmutableList<WallPieces.Span>> spans() {
        MutableList<ImmutableList<WallPieces.Span>> all = Lists.mutable.empty();
        for (int c = 0; c < plan.cells().size(); c++) {
            MutableList<WallPieces.Span> spans = Lists.mutable.empty();
            for (int k = 0; k < count; k++) {
                if (!plan.in(c, k)) {
                    continue;
                }
                int first = k;
                while (plan.in(c, k + 1) && k + 1 < count) {
                    k++;
                }
                long bottom = first == 0
                        ? levels.soffit(0, parts.underside(0, regions.under(c)))
                        : faceLevel(first - 1, false, c);
                long top = k + 1 == count ? WallPieces.ROOF : faceLevel(k, true, c);
                long lowest = top == WallPieces.ROOF ? lowest(c, k) : top;
                if (bottom >= lowest) {
                    faults.add(
                            ShellFault.Part.STOREY,
                            body.storeys().get(first).name(),
                            "Storey \"%s\": nothing is left between its floor and what lies above it: the outer faces would lie"
                                    + " at %.4f m and %.4f m. Check its height and the assemblies below and above.",
                            body.storeys().get(first).name(),
                            Vertex.metres(bottom),
                            Vertex.metres(lowest));
                }
                spans.add(new WallPieces.Span(bottom, top, first, k));
            }
            all.add(spans.toImmutable());
        }
        return all.toImmutable();
    }

    private long faceLevel(int storey, boolean open, int cell) {
        boolean step = regions.beside(storey, open, true)
                .anySatisfy(region -> region.cells().contains(cell));
        if (step) {
            return levels.takeOver().get(storey);
        }
        PlanRegions.Region region = parts.beside(storey, open, cell).orElseThrow();
        if (!open) {
            return levels.soffit(storey + 1, parts.assembly(region));
        }
        return parts.form(cell, storey).isPresent() ? WallPieces.ROOF : levels.flat(storey, parts.assembly(region));
    }

    /** z of the lowest corner of what slopes over a storey in a cell. */
    private long lowest(int cell, int storey) {
        return plan.beside(cell)
                .flatCollect(bound -> Lists.immutable.of(bound.from(), bound.to()))
                .collectLong(node -> field.at(cell, storey, node))
                .min();
    }

    private Facet.Traits traits(int storey, Facet.Mark mark) {
        return new Facet.Traits(
                body.storeys().get(storey).name(),
                storey,
                Vertex.metres(levels.floors().get(storey)),
                mark);
    }

    private void addWalls(ImmutableList<ImmutableList<WallPieces.Span>> spans) {
        WallPieces pieces = new WallPieces(plan, count, levels, spans, field, forms, beside());
        Map<WallPieces.Owner, ImmutableList<ImmutableList<Vertex>>> outlines = pieces.outlines();
        MutableList<Facet> steps = Lists.mutable.empty();
        outlines.forEach((owner, list) -> {
            if (owner.part() == WallPieces.Part.GABLE) {
                list.forEach(outline -> gables.add(
                        owner.storey() + 1 == count ? roof.gable(owner, outline) : besideRoof(owner, outline)));
                return;
            }
            // Beside walls a hair out of line a strip may be left that hangs together with nothing.
            ImmutableList<ImmutableList<Vertex>> walls = owner.isWall()
                    ? list.size() == 1 ? list : list.reject(StoreyFacets::hair)
                    : Lists.immutable.empty();
            boolean split =
                    outlines.containsKey(new WallPieces.Owner(owner.storey(), owner.line(), WallPieces.Part.WALL));
            String part = switch (owner.part()) {
                case BELOW_GROUND -> split ? ", below ground" : "";
                case UNDER_FLOOR -> ", under the floor beside it";
                case WALL, GABLE -> "";
            };
            walls.forEachWithIndex((outline, i) -> {
                String name = wall(owner).name() + part;
                facets.add(wallFacet(owner, walls.size() == 1 ? name : name + " (" + (i + 1) + ")", outline));
            });
            String step =
                    "step of the walls, " + body.storeys().get(owner.storey()).name();
            list.reject(walls::contains)
                    .forEach(outline ->
                            steps.add(LevelFaces.step(step, traits(owner.storey(), Facet.Mark.STEP), outline, 0)));
        });
        ImmutableList<String> names =
                FacetNames.numbered(steps.collect(Facet::name).toImmutable());
        steps.forEachWithIndex((step, i) -> facets.add(step.withName(names.get(i))));
        ImmutableList<String> over =
                FacetNames.numbered(gables.collect(Facet::name).toImmutable());
        for (int i = 0; i < gables.size(); i++) {
            gables.set(i, gables.get(i).withName(over.get(i)));
        }
    }

    private WallPieces.Beside beside() {
        return new WallPieces.Beside() {
            @Override
            public boolean reachesGround(WallPieces.Owner owner, Vertex a, Vertex b) {
                return ground.reaches(wall(owner), owner.storey(), a, b);
            }

            @Override
            public long ground(Vertex point) {
                return ground.at(point);
            }

            @Override
            public boolean onGround(int storey, int cell) {
                return base(storey, cell).map(Body.Base::onGround).orElse(false);
            }
        };
    }

    /** What a storey stands on in a cell where it is the lowest. */
    private Optional<Body.Base> base(int storey, int cell) {
        return parts.base(storey, regions.under(cell));
    }

    private static boolean hair(ImmutableList<Vertex> outline) {
        return outline.allSatisfy(
                a -> outline.getFirst().at(0).minus(a.at(0)).length() <= StepZones.HAIR * Vertex.PER_METRE);
    }

    private Body.Wall wall(WallPieces.Owner owner) {
        return body.storeys().get(owner.storey()).walls().get(owner.line().number());
    }

    /** Under a floor beside it a wall faces what that floor does; where several kinds are, the ground. */
    private Exposure exposure(WallPieces.Owner owner, Body.Wall wall) {
        return switch (owner.part()) {
            case BELOW_GROUND -> Exposure.ground();
            case UNDER_FLOOR ->
                plan.bounds()
                        .select(bound ->
                                bound.runs().anySatisfy(run -> run.tag().equals(owner.line())))
                        .flatCollect(bound -> Lists.immutable.of(bound.left(), bound.right()))
                        .select(cell -> cell >= 0 && !plan.in(cell, owner.storey()))
                        .flatCollect(cell -> base(owner.storey() + 1, cell).map(Body.Base::exposure).stream()
                                .toList())
                        .minByOptional(each -> each.kind().ordinal())
                        .orElse(Exposure.ground());
            case WALL, GABLE -> wall.exposure();
        };
    }

    private Facet wallFacet(WallPieces.Owner owner, String name, ImmutableList<Vertex> outline) {
        Body.Wall wall = wall(owner);
        Optional<Assembly> assembly = find(wall.assembly());
        Facet.Mark mark = Facet.Mark.NONE;
        if (body.base().kind() == Body.Base.Kind.HEATED_CELLAR && owner.storey() == 0) {
            mark = Facet.Mark.CELLAR;
        }
        int side = owner.line().number();
        if (forms.get(owner.storey()).map(form -> form.gable(side)).orElse(false)) {
            mark = Facet.Mark.UNDER_GABLE;
        }
        return new Facet(
                name,
                Body.Use.WALL,
                assembly,
                exposure(owner, wall),
                outline,
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(owner.storey(), mark));
    }

    /** A wall that only a lower roof's own height leaves upright. */
    private Facet besideRoof(WallPieces.Owner owner, ImmutableList<Vertex> outline) {
        Body.Storey storey = body.storeys().get(owner.storey());
        Body.LowerRoof lower = storey.lowerRoof().orElseThrow();
        Optional<String> low = storey.walls().get(lower.lowSide()).assembly();
        Optional<Assembly> assembly = find(lower.wall().isPresent() ? lower.wall() : low);
        return new Facet(
                "wall beside the lower roof over " + storey.name(),
                Body.Use.WALL,
                assembly,
                Exposure.outdoors(),
                outline,
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(owner.storey(), Facet.Mark.NONE));
    }

    /** What lies open above each storey but the top one, as its file says: for the second reckoning. */
    private ImmutableList<StoreySections.Lower> tops() {
        return body.storeys().take(count - 1).collectWithIndex((storey, k) -> {
            Optional<Assembly> roof =
                    storey.lowerRoof().map(Body.LowerRoof::assembly).map(house.assemblies()::get);
            return new StoreySections.Lower(
                    levels.flat(k, find(storey.terrace())),
                    levels.flat(k, roof),
                    storey.lowerRoof().isPresent(),
                    storey.lowerRoof().flatMap(Body.LowerRoof::area),
                    forms.get(k));
        });
    }

    /** What lies under each storey where none is below it, likewise. */
    private ImmutableList<StoreySections.Under> unders() {
        return body.storeys()
                .collectWithIndex((storey, k) -> new StoreySections.Under(
                        levels.soffit(k, parts.underside(k, 0)),
                        body.otherBases()
                                .collectWithIndex((other, i) ->
                                        Tuples.pair(other.area(), levels.soffit(k, parts.underside(k, i + 1))))));
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
