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
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Facets of a body by storeys.
 *
 * <p>1. Each footprint is moved to the outside of its finished walls. 2. All are laid over one another ({@link Plan}), and
 * what lies open above a storey or hangs over the one below is found. 3. Each cell of the plan gets its heated heights.
 * 4. Level faces close them below and above, upright faces beside; the roof closes the top storey.
 */
final class StoreyFacets {

    /** Name of the facet under the lowest storey. */
    static final String FLOOR = "lowest floor";

    private final House house;
    private final Body.Storeys body;
    private final int count;
    private final MutableList<String> faults;
    private final MutableList<Facet> facets = Lists.mutable.empty();

    private Plan plan;
    private StoreyLevels levels;
    private RoofShape roof;
    private final Map<String, ImmutableList<ImmutableList<Integer>>> wide = new java.util.TreeMap<>();
    private final Map<String, ImmutableList<ImmutableList<Integer>>> strips = new java.util.TreeMap<>();

    private StoreyFacets(House house, Body.Storeys body, MutableList<String> faults) {
        this.house = house;
        this.body = body;
        this.count = body.storeys().size();
        this.faults = faults;
    }

    /** The facets, or none where faults were added. */
    static Optional<BodyFacets> of(House house, Body.Storeys body, MutableList<String> faults) {
        return new StoreyFacets(house, body, faults).build();
    }

    private Optional<BodyFacets> build() {
        if (!new StoreyChecks(house, body, faults).pass()) {
            return Optional.empty();
        }
        double floorArea = 0;
        MutableList<Polygon> polygons = Lists.mutable.empty();
        MutableList<Plan.Line> lines = Lists.mutable.empty();
        for (int k = 0; k < count; k++) {
            Footprint outer = footprint(k, true);
            Footprint inner = footprint(k, false);
            ImmutableList<Vertex> corners =
                    outer.corners().collect(p -> new Vertex(Vertex.units(p.x()), Vertex.units(p.y()), 0));
            Polygon polygon = Plan.polygon(corners);
            if (!polygon.isValid() || outer.area() <= 0) {
                faults.add(say(
                        "Storey \"%s\": its footprint crosses itself once its walls are moved to the outside of the finished"
                                + " envelope. Check the corners and the walls' thicknesses.",
                        body.storeys().get(k).name()));
            } else if (inner.turnsBack(body.storeys().get(k).footprint())) {
                faults.add(say(
                        "Storey \"%s\": its walls leave no room between their inner faces somewhere. Check the footprint's line (%s)"
                                + " and the walls' thicknesses.",
                        body.storeys().get(k).name(), body.line()));
            }
            floorArea += inner.area();
            polygons.add(polygon);
            for (int i = 0; i < corners.size(); i++) {
                lines.add(new Plan.Line(
                        corners.get(i),
                        corners.get((i + 1) % corners.size()),
                        new Plan.Tag(k, outer.sides().get(i))));
            }
        }
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        plan = PlanCuts.cut(polygons.toImmutable(), lines.toImmutable());
        for (int k = 0; k + 1 < count; k++) {
            if (cellsOf(k).noneSatisfy(cellsOf(k + 1)::contains)) {
                faults.add(say(
                        "Storey \"%s\" does not stand on \"%s\": their footprints nowhere overlap. Check the footprints'"
                                + " corners; all storeys are measured from one origin.",
                        body.storeys().get(k + 1).name(), body.storeys().get(k).name()));
            }
        }
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        sortRegions();
        levels = StoreyLevels.of(body, find(body.base().assembly()), lookup());
        roof = roofShape(polygons.getLast());
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        ImmutableList<ImmutableList<WallPieces.Span>> spans = spans();
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        addBase();
        addWalls(spans);
        addLevelFaces();
        addRoof();
        MutableList<BodyFacets.Above> storeys = Lists.mutable.empty();
        for (int k = 0; k < count; k++) {
            double takeOver = k + 1 < count
                    ? Vertex.metres(
                            levels.takeOverInside().get(k) - levels.takeOver().get(k))
                    : 0;
            storeys.add(new BodyFacets.Above(
                    body.storeys().get(k).name(), body.storeys().get(k).floorThickness(), takeOver));
        }
        return Optional.of(new BodyFacets(facets.toImmutable(), storeys.toImmutable(), floorArea));
    }

    private Footprint footprint(int storey, boolean outer) {
        Body.Storey s = body.storeys().get(storey);
        return Footprint.moved(s.footprint(), s.walls().collect(wall -> {
            double outward = Footprint.outward(body.line(), find(wall.assembly()));
            return outer ? outward : outward - Footprint.thickness(find(wall.assembly()));
        }));
    }

    private Optional<Assembly> find(Optional<String> name) {
        return name.map(house.assemblies()::get);
    }

    private Optional<Assembly> terraceAssembly(int storey) {
        Optional<String> own = body.storeys().get(storey).terrace();
        return find(own.isPresent() ? own : body.roof().assembly());
    }

    private StoreyLevels.Lookup lookup() {
        return new StoreyLevels.Lookup() {
            @Override
            public Optional<Assembly> terrace(int storey) {
                return terraceAssembly(storey);
            }

            @Override
            public Optional<Assembly> overhang(int storey) {
                return find(body.storeys().get(storey).overhang());
            }

            @Override
            public boolean hasTerrace(int storey) {
                return wide.get(key(storey, true)).notEmpty();
            }

            @Override
            public boolean hasOverhang(int storey) {
                return wide.get(key(storey, false)).notEmpty();
            }
        };
    }

    private static String key(int storey, boolean open) {
        return storey + (open ? " open" : " over");
    }

    private void sortRegions() {
        for (int k = 0; k + 1 < count; k++) {
            for (boolean open : new boolean[] {true, false}) {
                ImmutableList<ImmutableList<Integer>> regions = plan.regions(k, open);
                wide.put(key(k, open), regions.reject(region -> PlanCuts.strip(plan.union(region))));
                strips.put(key(k, open), regions.select(region -> PlanCuts.strip(plan.union(region))));
            }
        }
    }

    private RoofShape roofShape(Polygon top) {
        ImmutableList<Vertex> outline = Plan.outline(top, 0);
        Body.Roof r = body.roof();
        boolean flat = RoofShape.flatTop(r);
        boolean square = RoofShape.rectangle(outline);
        Body.Storey storey = body.storeys().getLast();
        if (!flat && !square) {
            faults.add(say(
                    "Roof: a %s roof needs a rectangular top storey, but the outer faces of \"%s\" have %d corners (steps between"
                            + " walls of different thickness count). Use a flat roof, or describe the body by explicit surfaces.",
                    r.form().name().toLowerCase(Locale.ROOT).replace('_', '-'), storey.name(), outline.size()));
            return null;
        }
        boolean sided = r.form() == Body.Roof.Form.MONO_PITCH || r.form() == Body.Roof.Form.GABLE;
        Vertex low = outline.get(0);
        if (sided && square) {
            low = middle(storey, r.lowSide());
        }
        RoofShape rectangle = RoofShape.of(outline, r, find(r.assembly()), low, 0, levels.top());
        double wall = 0;
        for (int i = 0; i < storey.walls().size(); i++) {
            if (!square || !rectangle.gableSide(rectangle.side(middle(storey, i)))) {
                wall = Math.max(
                        wall, Footprint.thickness(find(storey.walls().get(i).assembly())));
            }
        }
        return RoofShape.of(outline, r, find(r.assembly()), low, wall, levels.top());
    }

    private static Vertex middle(Body.Storey storey, int side) {
        var a = storey.footprint().get(side);
        var b = storey.footprint().get((side + 1) % storey.footprint().size());
        return new Vertex(Vertex.units((a.x() + b.x()) / 2), Vertex.units((a.y() + b.y()) / 2), 0);
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
                if (bottom >= top) {
                    faults.add(say(
                            "Storey \"%s\": nothing is left between its floor and what lies above it: the outer faces would lie"
                                    + " at %.4f m and %.4f m. Check its height and the assemblies below and above.",
                            body.storeys().get(first).name(), Vertex.metres(bottom), Vertex.metres(top)));
                }
                spans.add(new WallPieces.Span(bottom, top));
            }
            all.add(spans.toImmutable());
        }
        return all.toImmutable();
    }

    private long faceLevel(int storey, boolean open, int cell) {
        boolean step = strips.get(key(storey, open)).anySatisfy(region -> region.contains(cell));
        if (step) {
            return levels.takeOver().get(storey);
        }
        return (open ? levels.terraces() : levels.overhangs()).get(storey);
    }

    private void addBase() {
        ImmutableList<Integer> under = cellsOf(0);
        Body.Base base = body.base();
        Optional<Assembly> assembly = find(base.assembly());
        boolean cellar = base.kind() == Body.Base.Kind.HEATED_CELLAR;
        ImmutableList<Vertex> outline = Plan.outline((Polygon) plan.union(under), levels.underside());
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

    private ImmutableList<Integer> cellsOf(int storey) {
        MutableList<Integer> cells = Lists.mutable.empty();
        for (int c = 0; c < plan.cells().size(); c++) {
            if (plan.in(c, storey)) {
                cells.add(c);
            }
        }
        return cells.toImmutable();
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
        WallPieces pieces = new WallPieces(plan, count, levels, spans, roof::wallTop);
        Map<WallPieces.Owner, ImmutableList<ImmutableList<Vertex>>> outlines = pieces.outlines(owner -> cellar
                && owner.storey() == 0
                && owner.side() != Footprint.STEP
                && wall(owner).exposure().kind() == Exposure.Kind.OUTDOORS);
        outlines.forEach((owner, list) -> {
            boolean alone = list.size() == 1;
            boolean split = outlines.containsKey(new WallPieces.Owner(owner.storey(), owner.side(), false));
            for (int i = 0; i < list.size(); i++) {
                if (owner.side() == Footprint.STEP) {
                    String name = "step of the walls, "
                            + body.storeys().get(owner.storey()).name();
                    facets.add(step(alone ? name : name + " (" + (i + 1) + ")", owner.storey(), list.get(i), 0));
                } else {
                    String ground = owner.belowGround() && split ? ", below ground" : "";
                    String name = wall(owner).name() + ground;
                    facets.add(wallFacet(owner, alone ? name : name + " (" + (i + 1) + ")", list.get(i)));
                }
            }
        });
    }

    private Body.Wall wall(WallPieces.Owner owner) {
        return body.storeys().get(owner.storey()).walls().get(owner.side());
    }

    private Facet wallFacet(WallPieces.Owner owner, String name, ImmutableList<Vertex> outline) {
        Body.Wall wall = wall(owner);
        Optional<Assembly> assembly = find(wall.assembly());
        Facet.Mark mark = Facet.Mark.NONE;
        if (body.base().kind() == Body.Base.Kind.HEATED_CELLAR && owner.storey() == 0) {
            mark = Facet.Mark.CELLAR;
        }
        if (owner.storey() + 1 == count
                && RoofShape.rectangle(Plan.outline((Polygon) plan.union(cellsOf(count - 1)), 0))) {
            int side = roof.side(middle(body.storeys().get(owner.storey()), owner.side()));
            mark = roof.gableSide(side) ? Facet.Mark.UNDER_GABLE : mark;
        }
        return new Facet(
                name,
                Body.Use.WALL,
                assembly,
                owner.belowGround() ? Exposure.ground() : wall.exposure(),
                outline,
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(owner.storey(), mark));
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
            for (ImmutableList<Integer> region : wide.get(key(k, true))) {
                open.add(terrace(k, outline(region, levels.terraces().get(k))));
            }
            MutableList<Facet> over = Lists.mutable.empty();
            for (ImmutableList<Integer> region : wide.get(key(k, false))) {
                over.add(overhang(
                        k + 1, outline(region, levels.overhangs().get(k)).toReversed()));
            }
            MutableList<Facet> steps = Lists.mutable.empty();
            for (ImmutableList<Integer> region : strips.get(key(k, true))) {
                steps.add(step("", k, outline(region, levels.takeOver().get(k)), rise));
            }
            for (ImmutableList<Integer> region : strips.get(key(k, false))) {
                steps.add(step(
                        "", k + 1, outline(region, levels.takeOver().get(k)).toReversed(), -rise));
            }
            String deck = below.terraceIsWalkedOn() ? "terrace over " : "lower roof over ";
            facets.addAllIterable(Names.apart(open, deck + below.name(), house(k + 1)));
            facets.addAllIterable(Names.apart(over, "overhang under " + above.name(), house(k)));
            facets.addAllIterable(
                    Names.apart(steps, "step between " + below.name() + " and " + above.name(), house(k)));
        }
    }

    private ImmutableList<Vertex> outline(ImmutableList<Integer> region, long height) {
        Geometry union = plan.union(region);
        return Plan.outline((Polygon) union.getGeometryN(0), height);
    }

    private Vertex house(int storey) {
        return Plan.vertex(plan.union(cellsOf(storey)).getCentroid().getCoordinate());
    }

    private Facet terrace(int storey, ImmutableList<Vertex> outline) {
        Optional<Assembly> assembly = terraceAssembly(storey);
        boolean walked = body.storeys().get(storey).terraceIsWalkedOn();
        boolean parapet = !walked && body.roof().parapetHeight() > 0;
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

    private void addRoof() {
        Body.Roof r = body.roof();
        Optional<Assembly> assembly = find(r.assembly());
        boolean cold = r.insulatedAtCeiling();
        Exposure exposure = cold
                ? new Exposure(Exposure.Kind.UNHEATED, "loft", r.loftFactor().orElse(1))
                : Exposure.outdoors();
        boolean parapet = !cold && r.form() == Body.Roof.Form.FLAT && r.parapetHeight() > 0;
        MutableList<Facet> slopes = Lists.mutable.empty();
        MutableList<Facet> gables = Lists.mutable.empty();
        for (RoofShape.Plane plane : roof.planes()) {
            if (plane.wall() >= 0) {
                gables.add(gable(plane));
                continue;
            }
            slopes.add(new Facet(
                    "",
                    cold ? Body.Use.CEILING : Body.Use.ROOF,
                    assembly,
                    exposure,
                    plane.outline(),
                    Footprint.thickness(assembly),
                    assembly.isEmpty(),
                    traits(count - 1, parapet ? Facet.Mark.PARAPET : Facet.Mark.NONE)));
        }
        facets.addAllIterable(gables);
        facets.addAllIterable(Names.apart(slopes, cold ? "top ceiling" : "roof", house(count - 1)));
    }

    private Facet gable(RoofShape.Plane plane) {
        Body.Storey storey = body.storeys().getLast();
        int side = 0;
        while (roof.side(middle(storey, side)) != plane.wall()) {
            side++;
        }
        Body.Wall wall = storey.walls().get(side);
        Optional<String> own = body.roof().gableAssembly();
        Optional<Assembly> assembly = find(own.isPresent() ? own : wall.assembly());
        return new Facet(
                "gable over " + wall.name(),
                Body.Use.WALL,
                assembly,
                wall.exposure(),
                plane.outline(),
                Footprint.thickness(assembly),
                assembly.isEmpty(),
                traits(count - 1, Facet.Mark.UNDER_GABLE));
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
