package coldseam.report;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.DeckTemperature;
import coldseam.assemblies.moisture.IndoorAir;
import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.assemblies.moisture.VapourStack;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.Digests;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.HoldPoint;
import coldseam.audit.JunctionRow;
import coldseam.audit.MoistureCheck;
import coldseam.audit.Mould;
import coldseam.audit.Note;
import coldseam.audit.PointRow;
import coldseam.audit.SideSummary;
import coldseam.audit.Subject;
import coldseam.audit.TerraceLine;
import coldseam.audit.Verdict;
import coldseam.audit.Work;
import coldseam.audit.rules.DetailNotChosenRule;
import coldseam.audit.rules.LayerBrokenRule;
import coldseam.audit.rules.TemperatureFactorUnderLimitRule;
import coldseam.audit.rules.TransmittanceOverLimitRule;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Climate;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.PointBridges;
import coldseam.envelope.PointKind;
import coldseam.envelope.Prices;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import coldseam.envelope.Site;
import coldseam.envelope.Submittal;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Side;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionResult;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.eclipse.collections.impl.factory.Sets;

/** An invented audit, put together by hand: for the looks of documents, and so that their tests need no other room. */
final class SampleAudit {

    static final Material BOARD = material("mineral wool board", 0.036, true);
    static final Material FOAM = material("extruded polystyrene board", 0.034, true);
    static final Material BRICK = material("solid brick masonry", 0.77, false);
    static final Material CONCRETE = material("reinforced concrete", 2.3, false);
    static final Material SCREED = material("cement screed", 1.4, false);
    static final Material PLASTER = material("gypsum plaster", 0.57, false);
    static final Material RENDER = material("lime render", 0.87, false);
    static final Material TIMBER = material("softwood", 0.13, false);
    static final Material GROUND = material("ground: clay or silt", 1.5, false);
    static final Material SHEET = material("bitumen sheet", 0.23, false);

    static final Assembly WALL = assembly(
            "brick wall with mineral wool outside",
            layer(PLASTER, 0.015, Role.FINISH),
            layer(BRICK, 0.24, Role.STRUCTURE),
            layer(BOARD, 0.16, Role.INSULATION),
            layer(RENDER, 0.02, Role.CLADDING));
    static final Assembly ROOF = assembly(
            "warm flat roof",
            layer(PLASTER, 0.015, Role.FINISH),
            layer(CONCRETE, 0.18, Role.STRUCTURE),
            layer(BOARD, 0.24, Role.INSULATION),
            layer(SHEET, 0.01, Role.MEMBRANE));
    static final Assembly SLAB = assembly(
            "slab on foam",
            layer(SCREED, 0.06, Role.FINISH),
            layer(CONCRETE, 0.2, Role.STRUCTURE),
            layer(FOAM, 0.12, Role.INSULATION));

    private SampleAudit() {}

    private static Material material(String name, double conductivity, boolean insulates) {
        return new Material(
                name,
                conductivity,
                OptionalDouble.of(insulates ? 1 : 20),
                OptionalDouble.of(insulates ? 120 : 1800),
                OptionalDouble.empty(),
                insulates,
                new Provenance("invented for this sample", Provenance.Sureness.DECLARED));
    }

    private static Layer layer(Material material, double thickness, Role role) {
        return new Layer(
                material,
                thickness,
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                role == Role.INSULATION ? Sets.immutable.of(Control.HEAT) : Sets.immutable.of(Control.AIR));
    }

    private static Assembly assembly(String name, Layer... layers) {
        return new Assembly(
                name, Lists.immutable.of(layers), Optional.empty(), Assembly.AirGaps.NONE, Optional.empty());
    }

    /** Of a detail's file that the house brings along. */
    static final String OWN_DIGEST = "7d793037a0760186574b0282f2f435e77d793037a0760186574b0282f2f435e7";

    /** The sample with its usual name. */
    static Audit create() {
        return create("Linnet Yard 4");
    }

    /** The sample under another name, to see how documents bear it. */
    static Audit create(String name) {
        return create(
                name,
                new Submittal(
                        Optional.of("Linnet Lane, plot 4"),
                        Optional.empty(),
                        Optional.of("the rater"),
                        Optional.of(LocalDate.of(2026, 10, 3)),
                        Optional.of("B")));
    }

    /** The sample as it is handed in by somebody else, or by nobody. */
    static Audit create(String name, Submittal submittal) {
        Shell shell = shell();
        ImmutableList<BridgeSheet<JunctionResult>> sheets = Lists.immutable.of(
                new BridgeSheet<>(
                        "J1",
                        SampleJunctions.slabEdge(false),
                        Optional.of(SampleJunctions.slabEdge(true)),
                        Lists.immutable.of(SampleJunctions.slabEdge(false), SampleJunctions.slabEdge(true)),
                        Lists.immutable.empty(),
                        shell.edges()
                                .select(e -> e.kind() == JunctionKind.SLAB_EDGE)
                                .collect(Edge::name),
                        36,
                        false,
                        new SurfaceHumidity(10, 0.52, 0.41),
                        OptionalDouble.empty()),
                new BridgeSheet<>(
                        "J2",
                        SampleJunctions.roofEdge(),
                        // As good as itself: what saves nothing gets no page.
                        Optional.of(SampleJunctions.roofEdge()),
                        Lists.immutable.of(SampleJunctions.roofEdge()),
                        Lists.immutable.empty(),
                        shell.edges()
                                .select(e -> e.kind() == JunctionKind.FLAT_ROOF_EDGE)
                                .collect(Edge::name),
                        28,
                        true,
                        new SurfaceHumidity(17, 0.83, 0.66),
                        OptionalDouble.empty()));
        ImmutableList<JunctionRow> rows = shell.edges().collect(edge -> row(edge, sheets));
        ImmutableList<Finding> findings = findings(shell, rows);
        return new Audit(
                house(name, submittal),
                new Digests(
                        "5d41402abc4b2a76b9719d911017c5925d41402abc4b2a76b9719d911017c592",
                        Lists.immutable.of(new Digests.OfDetail("details/own-edge.yaml", OWN_DIGEST))),
                "0.1.0",
                shell,
                Verdict.of(findings),
                sides(),
                Lists.immutable.of(
                        row(WALL, HeatFlow.HORIZONTAL, OuterSurface.OUTDOORS, 170),
                        row(ROOF, HeatFlow.UPWARDS, OuterSurface.OUTDOORS, 80),
                        row(SLAB, HeatFlow.DOWNWARDS, OuterSurface.GROUND, 80)),
                sheets,
                rows,
                Optional.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                heatLoss(shell, rows),
                findings,
                mould(sheets),
                Lists.immutable.of(new TerraceLine(
                        surface(shell, "terrace"), SITE, new DeckTemperature("reinforced concrete", 18.6, 9.3))),
                Lists.immutable.of(
                        new HoldPoint(
                                "Slab edge before backfill",
                                "the backfill",
                                Lists.immutable.of(
                                        new HoldPoint.Item(
                                                "the board stands tight on the footing", Lists.immutable.empty()),
                                        new HoldPoint.Item(
                                                "its top edge is under the wall board",
                                                Lists.immutable.of(sheets.get(0)))),
                                Lists.immutable.of(sheets.get(0))),
                        new HoldPoint(
                                "Roof edge before the metal cap",
                                "the cap",
                                Lists.immutable.of(new HoldPoint.Item(
                                        "wall board and roof board meet without a gap",
                                        Lists.immutable.of(sheets.get(1)))),
                                Lists.immutable.of(sheets.get(1)))),
                Lists.immutable.of(new Note.EdgeInsulationInSection()),
                new Work(3, 0, 1, 0));
    }

    private static Surface surface(Shell shell, String name) {
        return shell.surfaces().detect(each -> each.name().equals(name));
    }

    /** The same house with six sets of brackets; one finding is about the first five, more than a sentence names. */
    static Audit withPoints() {
        Audit plain = create();
        Surface wall = plain.shell().surfaces().get(1);
        ImmutableList<PointRow> rows = Lists.immutable
                .of("first", "second", "third", "fourth", "fifth", "sixth")
                .collect(name -> brackets(wall, name, 2));
        Finding finding = new Finding(
                1,
                Finding.Severity.WEAK,
                Lists.immutable.of(new Breach(
                        "detail-not-chosen",
                        new DetailNotChosenRule.Found(Lists.immutable.ofAll(rows.take(5)), Optional.empty()))),
                new Subject.Bridges(rows.take(5)),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());

        return new Audit(
                plain.house(),
                plain.digests(),
                plain.version(),
                plain.shell(),
                plain.verdict(),
                plain.sides(),
                plain.assemblies(),
                plain.sheets(),
                plain.junctions(),
                plain.found(),
                plain.pairSheets(),
                plain.pairs(),
                plain.pointSheets(),
                rows,
                plain.vertexSheets(),
                plain.vertices(),
                plain.heatLoss(),
                Lists.immutable.of(finding),
                plain.mould(),
                plain.terraces(),
                plain.holdPoints(),
                plain.notes(),
                plain.work());
    }

    private static AssemblyRow row(Assembly assembly, HeatFlow direction, OuterSurface outer, double area) {
        return new AssemblyRow(
                assembly,
                Transmittance.of(assembly, direction, outer),
                area,
                outer == OuterSurface.GROUND
                        ? MoistureCheck.none("it meets the ground, for which the method does not hold")
                        : year(assembly, direction, outer));
    }

    /** Indoors at 50 %; the months are made up. */
    private static final Climate CLIMATE = new Climate(
            "made up",
            Climate.Indoors.DWELLING,
            Lists.immutable
                    .of(-1.0, 0.0, 4.0, 9.0, 14.0, 18.0, 19.0, 18.5, 14.3, 9.1, 4.7, 1.3)
                    .collectWithIndex((t, i) -> new Climate.Mean(Month.of(i + 1), t, 0.8)));

    private static MoistureCheck year(Assembly assembly, HeatFlow direction, OuterSurface outer) {
        ImmutableList<String> missing = VapourStack.missing(assembly);
        return missing.notEmpty()
                ? MoistureCheck.none(missing.makeString("; "))
                : MoistureCheck.of(Condensation.of(
                        VapourStack.of(assembly, direction, outer, direction.interiorSurfaceResistance()),
                        CLIMATE,
                        IndoorAir.of(Climate.Indoors.DWELLING, Double.NaN),
                        20));
    }

    private static Mould mould(ImmutableList<BridgeSheet<JunctionResult>> sheets) {
        return new Mould(
                0.7,
                0.75,
                MonthlyTemperatureFactor.ofHeated(CLIMATE, IndoorAir.of(Climate.Indoors.DWELLING, Double.NaN), 20),
                Optional.empty(),
                Lists.immutable.of(
                        new Mould.Surface(sheets.get(0), 0.66, 0.41, OptionalDouble.of(0.52)),
                        new Mould.Surface(sheets.get(1), 0.88, 0.66, OptionalDouble.of(0.72))));
    }

    private static final Opening WINDOW = new Opening(
            "kitchen window",
            Opening.Kind.WINDOW,
            "south wall, ground floor",
            1.8,
            1.3,
            OptionalDouble.empty(),
            0.9,
            new Opening.Declared(0.85, 0.9),
            0.09,
            OptionalDouble.empty());

    private static final Site SITE = new Site(
            20,
            -10,
            0.5,
            OptionalDouble.of(3400),
            "clay or silt",
            1.5,
            DimensionSystem.EXTERNAL,
            OptionalDouble.empty(),
            Optional.of("the weather service's tables, invented"),
            Optional.of(CLIMATE),
            Sets.immutable.empty());

    private static House house(String name, Submittal submittal) {
        return new House(
                name,
                submittal,
                SITE,
                Optional.empty(),
                Maps.immutable.empty(),
                Maps.immutable.empty(),
                new Body.Explicit(
                        Maps.immutable.empty(),
                        Lists.immutable.empty(),
                        0,
                        Lists.immutable.empty(),
                        Lists.immutable.empty()),
                Lists.immutable.of(WINDOW),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Limits.defaults(SITE),
                new Prices(OptionalDouble.of(0.14), "EUR", 30, Maps.immutable.empty()));
    }

    private static ImmutableList<SideSummary> sides() {
        return Lists.immutable.of(
                new SideSummary(Side.BELOW, 80, 80, 0, 0, 1, 0.24),
                new SideSummary(Side.NORTH, 50.4, 50.4, 3.2, 0, 1, 0.24),
                new SideSummary(Side.EAST, 44.8, 44.8, 2.1, 0, 1, 0.23),
                new SideSummary(Side.SOUTH, 50.4, 50.4, 9.4, 0, 1, 0.32),
                new SideSummary(Side.WEST, 44.8, 44.8, 4.2, 0, 0.91, 0.34),
                new SideSummary(Side.ABOVE, 80, 80, 0, 0, 1, 0.145));
    }

    private static JunctionRow row(Edge edge, ImmutableList<BridgeSheet<JunctionResult>> sheets) {
        Optional<BridgeSheet<JunctionResult>> sheet =
                sheets.detectOptional(s -> s.places().contains(edge.name()));
        Interval psi = sheet.map(s -> s.result().psiExternal()).orElse(Interval.of(-0.062));
        return new JunctionRow(
                edge,
                sheet,
                psi,
                edge.externalLength(),
                1,
                sheet.isPresent() ? new BridgeSource.Computed() : new BridgeSource.Own("from a handbook"),
                Lists.immutable.empty());
    }

    private static HeatLoss heatLoss(Shell shell, ImmutableList<JunctionRow> rows) {
        List<HeatLoss.Line> lines = new ArrayList<>();
        ImmutableList<Surface> surfaces = shell.surfaces();
        lines.add(line(HeatLoss.Group.SURFACES, new HeatLoss.Part.OfSurface(surfaces.get(1)), 171.5, 0.2013));
        lines.add(line(HeatLoss.Group.SURFACES, new HeatLoss.Part.OfSurface(surfaces.getLast()), 80, 0.1447));
        lines.add(line(HeatLoss.Group.OPENINGS, new HeatLoss.Part.OfOpening(WINDOW), 2.34, 0.85));
        lines.add(line(HeatLoss.Group.OPENINGS, new HeatLoss.Part.OfOpening(WINDOW), 16.56, 0.85));
        lines.add(line(HeatLoss.Group.GROUND, new HeatLoss.Part.OfSurface(surfaces.get(0)), 80, 0.1871));
        for (JunctionKind kind :
                new JunctionKind[] {JunctionKind.SLAB_EDGE, JunctionKind.OUTSIDE_CORNER, JunctionKind.FLAT_ROOF_EDGE}) {
            ImmutableList<JunctionRow> of = rows.select(r -> r.edge().kind() == kind);
            double length = of.sumOfDouble(JunctionRow::length);
            lines.add(new HeatLoss.Line(
                    HeatLoss.Group.JUNCTIONS,
                    new HeatLoss.Part.OfJunction(of),
                    length,
                    of.getFirst().psi(),
                    1,
                    of.getFirst().psi().times(length)));
        }
        lines.add(line(
                HeatLoss.Group.POINTS,
                new HeatLoss.Part.OfPoints(brackets(surfaces.get(1), "brackets of the awning", 6)),
                6,
                0.05));
        Interval total = Lists.immutable.ofAll(lines).injectInto(Interval.of(0), (sum, line) -> sum.plus(line.loss()));
        Interval junctions = Lists.immutable
                .ofAll(lines)
                .select(l -> l.group() == HeatLoss.Group.JUNCTIONS)
                .injectInto(Interval.of(0), (sum, line) -> sum.plus(line.loss()));
        return new HeatLoss(
                DimensionSystem.EXTERNAL,
                Lists.immutable.ofAll(lines),
                total,
                62.2,
                14.97,
                0,
                new Interval(24.31, 24.33),
                new Interval(-3.0, -2.99),
                Interval.of(0),
                Interval.of(0.3),
                Interval.of(0),
                new Interval(junctions.lower() / total.upper(), junctions.upper() / total.lower()),
                total.plus(-0.42),
                Interval.of(0.40),
                0.02,
                OptionalDouble.empty(),
                total.times(30),
                OptionalDouble.of(total.middle() * 3400 * 24 / 1000));
    }

    private static HeatLoss.Line line(HeatLoss.Group group, HeatLoss.Part part, double size, double u) {
        return new HeatLoss.Line(group, part, size, Interval.of(u), 1, Interval.of(size * u));
    }

    /** A set of brackets that nobody computed. */
    static PointRow brackets(Surface surface, String name, int number) {
        return new PointRow(
                new PointBridges(
                        name,
                        surface.name(),
                        Optional.of(PointKind.of("bracket")),
                        Optional.empty(),
                        new PointBridges.Count.Number(number),
                        Maps.immutable.empty()),
                PointKind.of("bracket"),
                surface,
                number,
                Optional.empty(),
                Interval.of(0.05),
                1,
                new BridgeSource.Computed(),
                Lists.immutable.empty());
    }

    private static ImmutableList<Finding> findings(Shell shell, ImmutableList<JunctionRow> rows) {
        ImmutableList<JunctionRow> slab = rows.select(row -> row.edge().kind() == JunctionKind.SLAB_EDGE);
        BridgeSheet<JunctionResult> sheet = slab.getFirst().sheet().orElseThrow();
        ImmutableList<BridgeRow> corners =
                Lists.immutable.ofAll(rows.select(row -> row.edge().kind() == JunctionKind.OUTSIDE_CORNER));
        return Lists.immutable.of(
                new Finding(
                        1,
                        Finding.Severity.GAP,
                        Lists.immutable.of(
                                new Breach(
                                        "layer-broken",
                                        new LayerBrokenRule.Found(sheet, Lists.immutable.of(Control.HEAT))),
                                new Breach(
                                        "transmittance-over-limit",
                                        new TransmittanceOverLimitRule.Found(
                                                sheet, slab.getFirst().psi(), 0.01, DimensionSystem.EXTERNAL))),
                        new Subject.Bridges(slab),
                        Optional.of(sheet),
                        Optional.of(new Interval(19.81, 19.83)),
                        OptionalDouble.of(226)),
                new Finding(
                        2,
                        Finding.Severity.UNKNOWN,
                        Lists.immutable.of(new Breach(
                                "detail-not-chosen", new DetailNotChosenRule.Found(corners, Optional.empty()))),
                        new Subject.Bridges(corners),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty()),
                new Finding(
                        3,
                        Finding.Severity.WEAK,
                        Lists.immutable.of(new Breach(
                                "temperature-factor-under-limit",
                                new TemperatureFactorUnderLimitRule.Found(sheet, 0.7))),
                        new Subject.Surfaces(Lists.immutable.of(surface(shell, "north wall"))),
                        Optional.of(sheet),
                        Optional.of(new Interval(1.2, 1.21)),
                        OptionalDouble.of(14)));
    }

    private static Surface surface(
            String name, Side side, Body.Use use, Assembly assembly, Point3 normal, double area, Point3... corners) {
        return new Surface(
                name,
                name,
                side,
                use,
                Optional.of(assembly),
                use == Body.Use.FLOOR ? Exposure.ground() : Exposure.outdoors(),
                Lists.immutable.of(corners),
                Lists.immutable.of(corners),
                normal,
                area,
                area * 0.9,
                0,
                Lists.immutable.empty(),
                "ground floor");
    }

    private static Point3 p(double x, double y, double z) {
        return new Point3(x, y, z);
    }

    /** Two storeys, the upper one shorter, so that there is a terrace. */
    static Shell shell() {
        Point3 south = p(0, -1, 0);
        Point3 north = p(0, 1, 0);
        Point3 east = p(1, 0, 0);
        Point3 west = p(-1, 0, 0);
        Point3 up = p(0, 0, 1);
        Surface floor = surface(
                "floor",
                Side.BELOW,
                Body.Use.FLOOR,
                SLAB,
                p(0, 0, -1),
                80,
                p(0, 0, 0),
                p(0, 8, 0),
                p(10, 8, 0),
                p(10, 0, 0));
        Surface southWall = surface(
                "south wall",
                Side.SOUTH,
                Body.Use.WALL,
                WALL,
                south,
                44.8,
                p(0, 0, 0),
                p(10, 0, 0),
                p(10, 0, 2.8),
                p(6, 0, 2.8),
                p(6, 0, 5.6),
                p(0, 0, 5.6));
        Surface eastLow = surface(
                "east wall, ground floor",
                Side.EAST,
                Body.Use.WALL,
                WALL,
                east,
                22.4,
                p(10, 0, 0),
                p(10, 8, 0),
                p(10, 8, 2.8),
                p(10, 0, 2.8));
        Surface eastHigh = surface(
                "east wall, first floor",
                Side.EAST,
                Body.Use.WALL,
                WALL,
                east,
                22.4,
                p(6, 0, 2.8),
                p(6, 8, 2.8),
                p(6, 8, 5.6),
                p(6, 0, 5.6));
        Surface northWall = surface(
                "north wall",
                Side.NORTH,
                Body.Use.WALL,
                WALL,
                north,
                44.8,
                p(10, 8, 0),
                p(0, 8, 0),
                p(0, 8, 5.6),
                p(6, 8, 5.6),
                p(6, 8, 2.8),
                p(10, 8, 2.8));
        Surface westWall = surface(
                "west wall",
                Side.WEST,
                Body.Use.WALL,
                WALL,
                west,
                44.8,
                p(0, 8, 0),
                p(0, 0, 0),
                p(0, 0, 5.6),
                p(0, 8, 5.6));
        Surface terrace = surface(
                "terrace",
                Side.ABOVE,
                Body.Use.TERRACE,
                ROOF,
                up,
                32,
                p(6, 0, 2.8),
                p(10, 0, 2.8),
                p(10, 8, 2.8),
                p(6, 8, 2.8));
        Surface roof = surface(
                "roof",
                Side.ABOVE,
                Body.Use.ROOF,
                ROOF,
                up,
                48,
                p(0, 0, 5.6),
                p(6, 0, 5.6),
                p(6, 8, 5.6),
                p(0, 8, 5.6));
        ImmutableList<Edge> edges = Lists.immutable.of(
                edge(JunctionKind.SLAB_EDGE, floor, southWall, p(0, 0, 0), p(10, 0, 0)),
                edge(JunctionKind.SLAB_EDGE, floor, eastLow, p(10, 0, 0), p(10, 8, 0)),
                edge(JunctionKind.SLAB_EDGE, floor, northWall, p(10, 8, 0), p(0, 8, 0)),
                edge(JunctionKind.SLAB_EDGE, floor, westWall, p(0, 8, 0), p(0, 0, 0)),
                edge(JunctionKind.OUTSIDE_CORNER, southWall, eastLow, p(10, 0, 0), p(10, 0, 2.8)),
                edge(JunctionKind.OUTSIDE_CORNER, southWall, westWall, p(0, 0, 0), p(0, 0, 5.6)),
                edge(JunctionKind.FLAT_ROOF_EDGE, roof, southWall, p(0, 0, 5.6), p(6, 0, 5.6)),
                edge(JunctionKind.FLAT_ROOF_EDGE, roof, eastHigh, p(6, 0, 5.6), p(6, 8, 5.6)),
                edge(JunctionKind.FLAT_ROOF_EDGE, roof, northWall, p(6, 8, 5.6), p(0, 8, 5.6)),
                edge(JunctionKind.FLAT_ROOF_EDGE, roof, westWall, p(0, 8, 5.6), p(0, 0, 5.6)));
        return new Shell(
                Lists.immutable.of(floor, southWall, eastLow, eastHigh, northWall, westWall, terrace, roof),
                edges,
                Lists.immutable.empty(),
                p(0, 0, 0),
                358.4,
                300,
                118,
                Lists.immutable.empty());
    }

    private static Edge edge(JunctionKind kind, Surface first, Surface second, Point3 from, Point3 to) {
        double length = Math.hypot(Math.hypot(to.x() - from.x(), to.y() - from.y()), to.z() - from.z());
        return new Edge(
                kind.label() + ": " + first.name() + ", " + second.name(),
                kind,
                first,
                Optional.of(second),
                Optional.empty(),
                from,
                to,
                length,
                length - 0.8,
                90,
                0.4,
                0.4,
                "",
                0,
                0,
                "where the " + first.name() + " meets the " + second.name());
    }
}
