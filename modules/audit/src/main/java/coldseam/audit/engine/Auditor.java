package coldseam.audit.engine;

import coldseam.assemblies.Transmittance;
import coldseam.assemblies.moisture.DeckTemperature;
import coldseam.audit.AsFound;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Digests;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.Mould;
import coldseam.audit.Note;
import coldseam.audit.Sheet;
import coldseam.audit.TerraceLine;
import coldseam.audit.Verdict;
import coldseam.audit.Work;
import coldseam.audit.rules.Facts;
import coldseam.audit.rules.Findings;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.KindForm;
import coldseam.envelope.Site;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.corners.Corner;
import coldseam.envelope.shell.corners.Corners;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.PointSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.vertex.VertexComputing;
import coldseam.junctions.vertex.VertexSetup;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Audits houses: computes everything once into one record. */
public final class Auditor {

    private final Catalogue catalogue;
    private final Function<Work, Solving> within;
    private final boolean withVertices;
    private final String version;

    /**
     * What computes.
     *
     * @param computer of details; asked from several threads at once
     * @param vertices computes vertices, likewise; empty where they are only named
     * @param pairs computes seams that touch, two in one section, likewise; empty where nobody asks for it
     */
    public record Solving(BridgeComputer computer, Optional<VertexComputing> vertices, Optional<PairComputing> pairs) {}

    /** An auditor that names vertices and computes none; see the other. */
    public Auditor(Catalogue catalogue, BridgeComputer computer, String version) {
        this(catalogue, work -> new Solving(computer, Optional.empty(), Optional.empty()), false, version);
    }

    /**
     * An auditor.
     *
     * @param catalogue of details, own ones of the house included
     * @param within what computes, once it is known how much
     * @param withVertices whether vertices are to be computed
     * @param version of the tool, for the record
     */
    public Auditor(Catalogue catalogue, Function<Work, Solving> within, boolean withVertices, String version) {
        this.catalogue = catalogue;
        this.within = within;
        this.withVertices = withVertices;
        this.version = version;
    }

    /** A house before anything of it is solved: what there is to ask. */
    private record Asked(
            House house,
            Shell shell,
            ImmutableList<Corner> corners,
            ImmutableList<PlannedEdge> edges,
            Optional<FoundSeams> found,
            ImmutableList<PlannedBridge<PointSetup>> points) {}

    /** What was solved, in the order in which the one needs the other. */
    private record Solved(
            ComputedJunctions junctions,
            Optional<AsFound> before,
            SurfaceHeats surfaces,
            ImmutableList<SurfaceHeat> heats,
            ComputedPoints points,
            ComputedVertices corners,
            ComputedPairs pairs) {}

    private Work work(Asked asked) {
        return new Work(
                ComputedBridges.questions(asked.edges.collect(PlannedEdge::bridge))
                        .size(),
                asked.found.map(FoundSeams::count).orElse(0),
                ComputedBridges.questions(asked.points).size(),
                withVertices ? corners(asked, false).size() : 0);
    }

    private ImmutableList<VertexSetup> corners(Asked asked, boolean chosen) {
        return ComputedVertices.expected(asked.house, asked.corners, asked.edges, catalogue, chosen);
    }

    /**
     * Begins what does not wait for the junctions, as far as it is known before them: corners, which take longest, and points.
     * While the last junctions are computed no core is idle. Points go from the last on, since whoever asks them in their turn
     * begins with the first.
     */
    private void begin(Ahead ahead, Asked asked, Solving solving, VertexComputing vertices) {
        corners(asked, true).forEach(setup -> ahead.begin(() -> vertices.compute(setup)));
        ComputedBridges.questions(asked.points)
                .toReversed()
                .forEach(question -> ahead.begin(() -> ComputedPoints.first(question, solving.computer())));
    }

    private Solved solve(Asked asked, Solving solving, Progress progress) {
        House house = asked.house;
        Shell shell = asked.shell;
        BridgeComputer computer = solving.computer();
        try (Ahead ahead = new Ahead(ForkJoinPool.commonPool())) {
            solving.vertices().ifPresent(vertices -> begin(ahead, asked, solving, vertices));
            ComputedJunctions junctions = ComputedJunctions.of("junctions", house, asked.edges, computer, progress);
            Optional<AsFound> before = asked.found.map(each -> each.compute(junctions, computer, progress));
            SurfaceHeats surfaces = new SurfaceHeats(house, shell, rimsComputed(junctions.rows()));
            ImmutableList<SurfaceHeat> heats = surfaces.compute();
            ComputedPoints points = ComputedPoints.of(
                    house, HousePoints.of(house, shell, surfaces, heats), catalogue, computer, progress);
            ComputedVertices corners = solving.vertices()
                    .map(computing ->
                            ComputedVertices.of(house, asked.corners, junctions.rows(), catalogue, computing, progress))
                    .orElseGet(() -> ComputedVertices.notAsked(asked.corners));
            ComputedPairs pairs = ComputedPairs.of(house, shell, junctions.rows(), solving.pairs(), progress);
            return new Solved(junctions, before, surfaces, heats, points, corners, pairs);
        }
    }

    /** The audit of a house without its seams as they were found; see the other. */
    public Audit audit(House house, Shell shell, Digests digests, Progress progress) {
        return audit(house, shell, Optional.empty(), digests, progress);
    }

    /**
     * Audits a house.
     *
     * @param house checked
     * @param shell built from it
     * @param found shell of the house as found; empty where its file does not say or nobody asks
     * @param digests of the files it is read from
     * @param progress hears how far it has come
     */
    public Audit audit(House house, Shell shell, Optional<Shell> found, Digests digests, Progress progress) {
        ImmutableList<PlannedEdge> edges = new JunctionPlan(house, shell, catalogue).plan();
        Asked asked = new Asked(
                house,
                shell,
                Corners.of(shell),
                edges,
                found.map(before -> new FoundSeams(house, edges, before, catalogue)),
                ComputedPoints.planned(
                        house,
                        house.points().isEmpty() ? Lists.immutable.empty() : HousePoints.of(house, shell),
                        catalogue));
        Work work = work(asked);
        progress.begins(work);
        Solving solving = within.apply(work);
        Solved solved = solve(asked, solving, progress);
        ComputedJunctions junctions = solved.junctions;
        ImmutableList<SurfaceHeat> heats = solved.heats;
        ComputedPoints points = solved.points;
        ComputedVertices corners = solved.corners;
        ComputedPairs pairs = solved.pairs;
        HeatLoss loss = new HeatLossTable(house, heats, junctions.rows(), pairs.sheets(), points.rows(), corners.rows())
                .compute();
        ImmutableList<TerraceLine> terraces = terraces(house.site(), heats);
        Moisture moisture = new Moisture(house);
        ImmutableList<AssemblyRow> assemblies = assemblies(house, heats, moisture);
        Mould mould = moisture.mould(Lists.immutable
                .<Sheet>withAll(junctions.sheets())
                .newWithAll(pairs.sheets())
                .newWithAll(corners.sheets()));
        ImmutableList<BridgeSheet<?>> sheets =
                Lists.immutable.<BridgeSheet<?>>ofAll(junctions.sheets()).newWithAll(points.sheets());
        ImmutableList<Finding> findings = Findings.of(new Facts(
                house,
                shell,
                heats.toImmutableMap(heat -> heat.surface().name(), SurfaceHeat::transmittance),
                sheets,
                Lists.immutable.<BridgeRow>ofAll(junctions.rows()).newWithAll(points.rows()),
                pairs.rows(),
                corners.rows(),
                assemblies,
                mould,
                terraces));
        return new Audit(
                house,
                digests,
                version,
                shell,
                Verdict.of(findings),
                Sides.of(house, shell, heats),
                assemblies,
                junctions.sheets(),
                junctions.rows(),
                solved.before,
                pairs.sheets(),
                pairs.rows(),
                points.sheets(),
                points.rows(),
                corners.sheets(),
                corners.rows(),
                loss,
                findings,
                mould,
                terraces,
                HoldPoints.of(sheets, corners.ownDetails(), house.retrofit().isPresent()),
                solved.surfaces
                        .notes()
                        .newWithAll(warnings(heats))
                        .newWithAll(solving.vertices().isPresent() ? nowhere(house, corners) : Lists.immutable.empty()),
                work);
    }

    /** Whether the floors' edges are computed as sections with their ground, which then hold what insulates them. */
    static boolean rimsComputed(ImmutableList<JunctionRow> rows) {
        return rows.anySatisfy(row -> row.source().computed()
                && row.edge().kind().form().second() != KindForm.Second.THING
                && row.sheet().flatMap(sheet -> sheet.result().setup().ground()).isPresent());
    }

    /** Corners' details that the house names in vain. */
    private static ImmutableList<Note> nowhere(House house, ComputedVertices corners) {
        return house.corners()
                .reject(corners.ownDetails().collect(Detail::id)::contains)
                .collect(Note.CornerNowhere::new);
    }

    private static ImmutableList<Note> warnings(ImmutableList<SurfaceHeat> heats) {
        return heats.flatCollect(heat -> heat.build()
                        .map(Transmittance::warnings)
                        .orElse(Lists.immutable.empty())
                        .distinct())
                .distinct()
                .collect(Note.OfTransmittance::new);
    }

    /** One line for each terrace with an assembly, in the shell's order. */
    private static ImmutableList<TerraceLine> terraces(Site site, ImmutableList<SurfaceHeat> heats) {
        return heats.select(heat ->
                        heat.surface().use() == Body.Use.TERRACE && heat.build().isPresent())
                .collect(heat -> new TerraceLine(
                        heat.surface(),
                        site,
                        DeckTemperature.of(
                                heat.build().orElseThrow(),
                                site.indoorTemperature(),
                                site.outdoorTemperature(),
                                site.indoorHumidity())));
    }

    /** One row for each assembly, direction of heat flow and outer surface, in the surfaces' order. */
    private static ImmutableList<AssemblyRow> assemblies(
            House house, ImmutableList<SurfaceHeat> heats, Moisture moisture) {
        return heats.select(heat -> heat.build().isPresent())
                .collect(heat -> heat.build().get())
                .distinct()
                .collect(build -> new AssemblyRow(
                        house.assemblies().get(build.assembly()),
                        build,
                        heats.select(heat -> heat.build().filter(build::equals).isPresent())
                                .sumOfDouble(
                                        heat -> heat.opaqueArea(house.site().dimensions())),
                        moisture.check(build)));
    }
}
