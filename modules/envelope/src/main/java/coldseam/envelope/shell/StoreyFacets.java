package coldseam.envelope.shell;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Facets of a body by storeys.
 *
 * <p>1. The storeys are laid over one another, and what lies open above one or hangs over the one below is found
 * ({@link StoreyPlan}). 2. Each cell of the plan gets its heated heights. 3. Level faces close them below and above, upright
 * faces beside; the roof closes the top storey. 4. The whole is compared with the footprints ({@link StoreySections}).
 */
final class StoreyFacets {

    /** Name of the facet under the lowest storey. */
    static final String FLOOR = "lowest floor";

    private final House house;
    private final Body.Storeys body;
    private final int count;
    private final ShellFaults faults;
    private final MutableList<Facet> facets = Lists.mutable.empty();
    private final MutableList<Facet> gables = Lists.mutable.empty();

    private PlanRegions regions;
    private Plan plan;
    private StoreyLevels levels;
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
    static Optional<BodyFacets> of(House house, Body.Storeys body, ShellFaults faults) {
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
        levels = StoreyLevels.of(body, find(body.base().assembly()), lookup());
        field = new RoofField(plan, count, this::formOver);
        roof = new StoreyRoof(house, body, plan, levels, forms.getLast().orElseThrow(), field);
        ImmutableList<ImmutableList<WallPieces.Span>> spans = spans();
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        addBase();
        addWalls(spans);
        addLevelFaces();
        facets.addAllIterable(gables);
        facets.addAllIterable(roof.slopes(house(count - 1)));
        new StoreySections(laid.get().moved(), regions, levels, facets.toImmutable(), tops()).check(forms.getLast());
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
                laid.get().widestStep()));
    }

    private Optional<Assembly> find(Optional<String> name) {
        return name.map(house.assemblies()::get);
    }

    private Optional<Assembly> assembly(PlanRegions.Region open) {
        Body.Storey storey = body.storeys().get(open.lower());
        return find(open.lowerRoof() ? storey.lowerRoof().map(Body.LowerRoof::assembly) : storey.terrace());
    }

    /** What lies flat and open above a storey. */
    private ImmutableList<PlanRegions.Region> flat(int storey) {
        return regions.beside(storey, true, false)
                .reject(region -> region.lowerRoof() && forms.get(storey).isPresent());
    }

    private Optional<PlanRegions.Region> open(int storey, int cell) {
        return regions.beside(storey, true, false)
                .detectOptional(region -> region.cells().contains(cell));
    }

    private Optional<RoofForm> formOver(int cell, int storey) {
        boolean covered = storey + 1 == count
                || open(storey, cell).map(PlanRegions.Region::lowerRoof).orElse(false);
        return covered ? forms.get(storey) : Optional.empty();
    }

    private StoreyLevels.Lookup lookup() {
        return new StoreyLevels.Lookup() {
            @Override
            public Optional<Assembly> terrace(int storey) {
                return flat(storey)
                        .collect(region -> assembly(region))
                        .maxByOptional(Footprint::thickness)
                        .orElse(Optional.empty());
            }

            @Override
            public Optional<Assembly> overhang(int storey) {
                return find(body.storeys().get(storey).overhang());
            }

            @Override
            public boolean hasTerrace(int storey) {
                return flat(storey).notEmpty();
            }

            @Override
            public boolean hasOverhang(int storey) {
                return regions.beside(storey, false, false).notEmpty();
            }
        };
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
                long bottom = first == 0 ? levels.underside() : faceLevel(first - 1, false, c);
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
        return open
                ? open(storey, cell)
                        .map(region -> formOver(cell, storey).isPresent()
                                ? WallPieces.ROOF
                                : levels.flat(storey, assembly(region)))
                        .orElseThrow()
                : levels.overhangs().get(storey);
    }

    /** z of the lowest corner of what slopes over a storey in a cell. */
    private long lowest(int cell, int storey) {
        return plan.beside(cell)
                .flatCollect(bound -> Lists.immutable.of(bound.from(), bound.to()))
                .collectLong(node -> field.at(cell, storey, node))
                .min();
    }

    private void addBase() {
        Body.Base base = body.base();
        Optional<Assembly> assembly = find(base.assembly());
        boolean cellar = base.kind() == Body.Base.Kind.HEATED_CELLAR;
        ImmutableList<Vertex> outline =
                PlanRings.of(plan, plan.cellsOf(0)).only().collect(v -> v.at(levels.underside()));
        facets.add(new Facet(
                FLOOR,
                Body.Use.FLOOR,
                assembly,
                base.exposure(),
                outline.toReversed(),
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(0, cellar ? Facet.Mark.CELLAR : Facet.Mark.NONE)));
    }

    private Facet.Traits traits(int storey, Facet.Mark mark) {
        return new Facet.Traits(
                body.storeys().get(storey).name(),
                storey,
                Vertex.metres(levels.floors().get(storey)),
                mark);
    }

    private void addWalls(ImmutableList<ImmutableList<WallPieces.Span>> spans) {
        boolean cellar = body.base().kind() == Body.Base.Kind.HEATED_CELLAR;
        WallPieces pieces = new WallPieces(plan, count, levels, spans, field, forms);
        Map<WallPieces.Owner, ImmutableList<ImmutableList<Vertex>>> outlines = pieces.outlines(owner -> cellar
                && owner.storey() == 0
                && owner.isWall()
                && wall(owner).exposure().kind() == Exposure.Kind.OUTDOORS);
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
            boolean buried = owner.part() == WallPieces.Part.BELOW_GROUND;
            String ground = buried && split ? ", below ground" : "";
            walls.forEachWithIndex((outline, i) -> {
                String name = wall(owner).name() + ground;
                facets.add(wallFacet(owner, walls.size() == 1 ? name : name + " (" + (i + 1) + ")", outline));
            });
            String step =
                    "step of the walls, " + body.storeys().get(owner.storey()).name();
            list.reject(walls::contains).forEach(outline -> steps.add(step(step, owner.storey(), outline, 0)));
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

    private static boolean hair(ImmutableList<Vertex> outline) {
        return outline.allSatisfy(
                a -> outline.getFirst().at(0).minus(a.at(0)).length() <= StepZones.HAIR * Vertex.PER_METRE);
    }

    private Body.Wall wall(WallPieces.Owner owner) {
        return body.storeys().get(owner.storey()).walls().get(owner.line().number());
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
                owner.part() == WallPieces.Part.BELOW_GROUND ? Exposure.ground() : wall.exposure(),
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

    private Facet step(String name, int storey, ImmutableList<Vertex> outline, double inset) {
        return new Facet(
                name,
                Body.Use.WALL,
                Optional.empty(),
                Exposure.outdoors(),
                outline,
                inset,
                false,
                traits(storey, Facet.Mark.STEP));
    }

    /** Terraces, lower roofs, overhangs and level steps. */
    private void addLevelFaces() {
        for (int k = 0; k + 1 < count; k++) {
            Body.Storey below = body.storeys().get(k);
            Body.Storey above = body.storeys().get(k + 1);
            double rise = Vertex.metres(
                    levels.takeOver().get(k) - levels.takeOverInside().get(k));
            MutableList<Facet> open = Lists.mutable.empty();
            MutableList<Facet> roofed = Lists.mutable.empty();
            for (PlanRegions.Region region : regions.beside(k, true, false)) {
                (region.lowerRoof() ? roofed : open).add(openFace(region));
            }
            MutableList<Facet> over = Lists.mutable.empty();
            for (PlanRegions.Region region : regions.beside(k, false, false)) {
                over.add(overhang(
                        k + 1, outline(region, levels.overhangs().get(k)).toReversed()));
            }
            MutableList<Facet> steps = Lists.mutable.empty();
            for (PlanRegions.Region region : regions.beside(k, true, true)) {
                steps.add(step("", k, outline(region, levels.takeOver().get(k)), rise));
            }
            for (PlanRegions.Region region : regions.beside(k, false, true)) {
                steps.add(step(
                        "", k + 1, outline(region, levels.takeOver().get(k)).toReversed(), -rise));
            }
            String deck = below.terraceIsWalkedOn() ? "terrace over " : "lower roof over ";
            facets.addAllIterable(FacetNames.apart(open, deck + below.name(), house(k + 1)));
            facets.addAllIterable(FacetNames.apart(roofed, "lower roof over " + below.name(), house(k + 1)));
            facets.addAllIterable(FacetNames.apart(over, "overhang under " + above.name(), house(k)));
            facets.addAllIterable(
                    FacetNames.apart(steps, "step between " + below.name() + " and " + above.name(), house(k)));
        }
    }

    private ImmutableList<Vertex> outline(PlanRegions.Region region, long height) {
        return PlanRings.of(plan, region.cells()).only().collect(v -> v.at(height));
    }

    /** The middle of a storey in plan. */
    private Vertex house(int storey) {
        ImmutableList<Vertex> outline = Facet.straight(plan.walk(storey));
        return Plan.vertex(Plan.polygon(outline).getCentroid().getCoordinate());
    }

    /** A terrace or a lower roof. */
    private Facet openFace(PlanRegions.Region region) {
        int storey = region.lower();
        Optional<Assembly> assembly = assembly(region);
        boolean walked = !region.lowerRoof() && body.storeys().get(storey).terraceIsWalkedOn();
        int first = region.cells().getFirst();
        boolean slopes = formOver(first, storey).isPresent();
        boolean parapet = !walked && !slopes && body.roof().parapetHeight() > 0;
        ImmutableList<Vertex> outline = slopes
                ? PlanRings.everyNode(plan, region.cells())
                        .only()
                        .collect(node -> node.at(field.at(first, storey, node)))
                : outline(region, levels.flat(storey, assembly));
        return new Facet(
                "",
                walked ? Body.Use.TERRACE : Body.Use.ROOF,
                assembly,
                Exposure.outdoors(),
                outline,
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(storey, parapet ? Facet.Mark.PARAPET : Facet.Mark.NONE));
    }

    private Facet overhang(int storey, ImmutableList<Vertex> outline) {
        Optional<Assembly> assembly = find(body.storeys().get(storey).overhang());
        return new Facet(
                "",
                Body.Use.OVERHANG,
                assembly,
                Exposure.outdoors(),
                outline,
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(storey, Facet.Mark.NONE));
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

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
