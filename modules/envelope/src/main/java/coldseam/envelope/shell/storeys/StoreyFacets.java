package coldseam.envelope.shell.storeys;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.OnGround;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.PlanRegions;
import coldseam.envelope.shell.roof.RoofField;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Sets;
import org.eclipse.collections.impl.tuple.Tuples;

/**
 * Facets of a body by storeys.
 *
 * <p>1. The storeys of all stacks are laid over one another, and what lies open above one or hangs over the one below is found
 * ({@link StoreyPlan}). 2. Each cell of the plan gets its heated heights. 3. Level faces close them below and above, upright
 * faces beside; the roof closes the top storey. 4. The whole is compared with the footprints ({@link StoreySections}).
 */
public final class StoreyFacets {

    /** Rounds of cuts after which no surface has a hole left; a house that needs more has a fault of ours. */
    private static final int ROUNDS = 100;

    private final House house;
    private final Body.Storeys body;
    private final Stacks stacks;
    private final int count;
    private final ShellFaults faults;
    private final MutableList<Facet> facets = Lists.mutable.empty();

    private StoreyPlan laid;
    private PlanRegions regions;
    private Plan plan;
    private StoreyLevels levels;
    private StoreyParts parts;
    private StoreyGround ground;
    private ImmutableList<Optional<RoofForm>> forms;
    private RoofField field;
    private Heated heated;
    private LevelFaces faces;
    private ImmutableMap<Integer, StoreyRoof> roofs;

    StoreyFacets(House house, Body.Storeys body, ShellFaults faults) {
        this.house = house;
        this.body = body;
        this.stacks = Stacks.of(body);
        this.count = stacks.count();
        this.faults = faults;
    }

    /** The facets, or none where faults were added. */
    public static Optional<BodyFacets> of(House house, Body.Storeys body, ShellFaults faults) {
        return new StoreyFacets(house, body, faults).build();
    }

    /** The facets, or none where faults were added. */
    Optional<BodyFacets> build() {
        if (!new BodyChecks(body.stacks(), faults).pass()) {
            return Optional.empty();
        }
        Optional<StoreyPlan> found = StoreyPlan.of(house, body.line(), stacks, faults);
        if (found.isEmpty()) {
            return Optional.empty();
        }
        laid = found.get();
        forms = laid.forms();
        lay();
        new WallFacings(stacks, laid.moved(), levels, ground::at, faults).check();
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        if (stacks.all().size() > 1) {
            laid.part(crossings().lines());
            lay();
            apart();
        }
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        cutOpen();
        facets.addAllIterable(faces.base());
        StoreyWalls walls =
                new StoreyWalls(house, plan, stacks, laid.given(), levels, heated, forms, roofs, ground, this::base);
        facets.addAllIterable(walls.facets());
        facets.addAllIterable(faces.between());
        facets.addAllIterable(walls.gables());
        roofs.keysView().toSortedList().forEach(k -> {
            StoreyRoof roof = roofs.get(k);
            facets.addAllIterable(roof.slopes(roof.parts(cell -> heated.shown(cell, k, true)), faces.middle(k)));
        });
        facets.forEach(this::onGround);
        swallowed();
        if (faults.notEmpty()) {
            return Optional.empty();
        }
        check(facets.toImmutable());
        return Optional.of(new BodyFacets(
                facets.toImmutable(),
                above(),
                laid.floorArea(),
                Math.max(laid.widestStep(), Math.max(faces.widestJog(), walls.widestJog())),
                false));
    }

    private void onGround(Facet facet) {
        OnGround.fault(facet, corner -> Vertex.metres(ground.at(corner)))
                .ifPresent(what -> faults.add(
                        ShellFault.Part.BASE,
                        body.stackOf(facet.traits().storey()).name(),
                        "Floor \"%s\": %s",
                        facet.name(),
                        what));
    }

    /** All that follows from the plan as it is parted so far. */
    private void lay() {
        regions = laid.regions();
        plan = regions.plan();
        parts = new StoreyParts(house, stacks, regions, forms);
        levels = StoreyLevels.of(stacks, parts);
        ground = new StoreyGround(stacks, laid.moved(), levels, faults);
        field = new RoofField(plan, count, parts::form, crossings().flats());
        heated = new Heated(plan, spans(), field);
        faces = new LevelFaces(stacks, regions, heated, levels, parts, field);
        roofs = stacks.tops()
                .toImmutableMap(
                        k -> k,
                        k -> new StoreyRoof(
                                house, stacks, k, plan, levels, forms.get(k).orElseThrow(), field));
    }

    private Crossings crossings() {
        return new Crossings(stacks, laid.moved(), levels, parts, forms);
    }

    /** Cuts surfaces open until none has a hole. */
    private void cutOpen() {
        for (int round = 0; round < ROUNDS; round++) {
            ImmutableList<Plan.Line> cuts = regions.cuts(outlines());
            if (cuts.isEmpty()) {
                return;
            }
            laid.part(cuts);
            lay();
        }
        throw new IllegalStateException("the plan's holes could not be cut open");
    }

    /** Cells of everything that ends heated rooms above and below, as far as it lies outdoors. */
    private ImmutableList<PlanRegions.Region> outlines() {
        MutableList<PlanRegions.Region> all = Lists.mutable.empty();
        for (int k = 0; k < count; k++) {
            int storey = k;
            for (boolean step : new boolean[] {false, true}) {
                all.addAllIterable(faces.beside(k - 1, false, step));
                all.addAllIterable(
                        stacks.top(k)
                                ? roofs.get(k)
                                        .parts(cell -> heated.shown(cell, storey, true))
                                        .collect(cells -> new PlanRegions.Region(storey, true, false, 0, cells))
                                : faces.beside(k, true, step));
            }
        }
        return all.toImmutable();
    }

    /** Refuses wings that touch nothing of the rest of the house. */
    private void apart() {
        MutableSet<Integer> reached = Sets.mutable.of(0);
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int k : stacks.lowests().castToList()) {
                int stack = stacks.owners().get(k);
                grown |= !reached.contains(stack) && touches(stack, reached) && reached.add(stack);
            }
        }
        for (int s = 0; s < stacks.all().size(); s++) {
            Body.Stack wing = stacks.all().get(s);
            if (!reached.contains(s)) {
                Point2 corner = wing.storeys().getFirst().footprint().getFirst();
                faults.add(
                        ShellFault.Part.BODY,
                        wing.name(),
                        "Wing \"%s\": it touches nothing of the rest of the house, neither beside it nor above or below; its"
                                + " lowest footprint begins at [%.3f m, %.3f m], its floor lies at %.3f m. Check its corners and its"
                                + " base's level; all footprints are measured from one origin.",
                        wing.name(),
                        corner.x(),
                        corner.y(),
                        StoreyLevels.floor(wing, 0));
            }
        }
    }

    /** Refuses a wing all of which lies in the rest of the house: nothing of it would be built. */
    private void swallowed() {
        for (Body.Stack stack : stacks.all()) {
            ImmutableList<String> storeys = stack.storeys().collect(Body.Storey::name);
            if (facets.noneSatisfy(facet -> storeys.contains(facet.traits().storey()))) {
                faults.add(
                        ShellFault.Part.BODY,
                        stack.name(),
                        "%s: all of it lies within the other parts of the house, so that it adds nothing to it; its floor lies at"
                                + " %.3f m. Check its corners, its heights and its base's level, or remove it.",
                        stack.name().isEmpty() ? "The house without its wings" : "Wing \"" + stack.name() + "\"",
                        StoreyLevels.floor(stack, 0));
            }
        }
    }

    /** Whether a wing has more than a line in common with stacks: stands on them or under them, or beside them. */
    private boolean touches(int stack, MutableSet<Integer> others) {
        return heated.spans().anySatisfy(here -> common(here, stack, others) >= 0)
                || plan.bounds().anySatisfy(bound -> common(spans(bound), stack, others) > 0);
    }

    /** Lattice units of height that a wing has in common with stacks; negative where they lie apart. */
    private long common(ImmutableList<Heated.Span> spans, int stack, MutableSet<Integer> others) {
        ImmutableList<Heated.Span> own = spans.select(span -> stacks.owners().get(span.first()) == stack);
        return spans.select(span -> others.contains(stacks.owners().get(span.first())))
                .flatCollect(other ->
                        own.collect(span -> Math.min(top(span), top(other)) - Math.max(span.bottom(), other.bottom())))
                .collectLong(each -> each)
                .maxIfEmpty(Long.MIN_VALUE);
    }

    private long top(Heated.Span span) {
        return span.top() == Heated.ROOF ? forms.get(span.last()).orElseThrow().eaves() : span.top();
    }

    private ImmutableList<Heated.Span> spans(Plan.Bound bound) {
        return Lists.immutable
                .of(bound.left(), bound.right())
                .select(cell -> cell >= 0)
                .flatCollect(cell -> heated.spans().get(cell));
    }

    /**
     * Compares facets with the footprints that they were built from.
     *
     * @throws IllegalStateException where they differ
     */
    void check(ImmutableList<Facet> found) {
        ImmutableList<StoreySections> sections = stacks.tops()
                .collect(k -> new StoreySections(stacks, k, laid.moved(), regions, levels, found, tops(), unders()));
        if (sections.size() == 1) {
            sections.getOnly().check(forms.getLast());
        } else {
            new StackSections(sections, stacks.tops().collect(k -> forms.get(k).orElseThrow()), found).check();
        }
    }

    private ImmutableList<BodyFacets.Above> above() {
        MutableList<BodyFacets.Above> storeys = Lists.mutable.empty();
        for (int k = 0; k < count; k++) {
            if (k > 0 && stacks.lowest(k)) {
                storeys.add(new BodyFacets.Above("", Double.NaN, 0, 0));
            }
            double takeOver = Vertex.metres(
                    levels.takeOverInside().get(k) - levels.takeOver().get(k));
            storeys.add(new BodyFacets.Above(
                    stacks.storey(k).name(),
                    Vertex.metres(levels.floors().get(k)),
                    stacks.storey(k).floorThickness(),
                    takeOver));
        }
        return storeys.toImmutable();
    }

    /** What a storey stands on in a cell where it is the lowest. */
    private Optional<Body.Base> base(int storey, int cell) {
        return parts.base(storey, regions.under(storey, cell));
    }

    private ImmutableList<ImmutableList<Heated.Span>> spans() {
        MutableList<ImmutableList<Heated.Span>> all = Lists.mutable.empty();
        for (int c = 0; c < plan.cells().size(); c++) {
            MutableList<Heated.Span> spans = Lists.mutable.empty();
            for (int k = 0; k < count; k++) {
                if (!plan.in(c, k)) {
                    continue;
                }
                int first = k;
                while (stacks.carries(k) && plan.in(c, k + 1)) {
                    k++;
                }
                long bottom = stacks.lowest(first)
                        ? levels.soffit(first, parts.underside(first, regions.under(first, c)))
                        : faceLevel(first - 1, false, c);
                long top = stacks.top(k) ? Heated.ROOF : faceLevel(k, true, c);
                long lowest = top == Heated.ROOF ? lowest(c, k) : top;
                if (bottom >= lowest) {
                    faults.storey(
                            stacks.storey(first).name(),
                            ": nothing is left between its floor and what lies above it: the outer faces would lie"
                                    + " at %.4f m and %.4f m. Check its height and the assemblies below and above.",
                            Vertex.metres(bottom),
                            Vertex.metres(lowest));
                }
                spans.add(new Heated.Span(bottom, top, first, k));
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
        return parts.form(cell, storey).isPresent() ? Heated.ROOF : levels.flat(storey, parts.assembly(region));
    }

    /** z of the lowest corner of what slopes over a storey in a cell. */
    private long lowest(int cell, int storey) {
        return plan.beside(cell)
                .flatCollect(bound -> Lists.immutable.of(bound.from(), bound.to()))
                .collectLong(node -> field.at(cell, storey, node))
                .min();
    }

    /** What lies open above each storey but the top one, as its file says: for the second reckoning. */
    private ImmutableList<StoreySections.Lower> tops() {
        return stacks.storeys().collectWithIndex((storey, k) -> {
            Optional<Assembly> roof = house.assembly(storey.lowerRoof().map(Body.LowerRoof::assembly));
            return new StoreySections.Lower(
                    levels.flat(k, house.assembly(storey.terrace())),
                    levels.flat(k, roof),
                    storey.lowerRoof().isPresent(),
                    laid.roofArea(k),
                    forms.get(k));
        });
    }

    /** What lies under each storey where none is below it, likewise. */
    private ImmutableList<StoreySections.Under> unders() {
        return stacks.storeys()
                .collectWithIndex((storey, k) -> new StoreySections.Under(
                        levels.soffit(k, parts.underside(k, 0)),
                        laid.baseAreas(k)
                                .collectWithIndex((area, i) ->
                                        Tuples.pair(area, levels.soffit(k, parts.underside(k, i + 1))))));
    }
}
