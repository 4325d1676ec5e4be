package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSource;
import coldseam.audit.HeatLoss;
import coldseam.audit.HeatLoss.Group;
import coldseam.audit.HeatLoss.Line;
import coldseam.audit.JunctionRow;
import coldseam.audit.SideSummary;
import coldseam.audit.engine.Sample.Made;
import coldseam.conduction.Interval;
import coldseam.conduction.solid.Place;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.vertex.Sloped;
import coldseam.junctions.vertex.VertexResult;
import coldseam.junctions.vertex.VertexSetup;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

class HeatLossTableTest {

    /** Round-off of sums of some dozen products near 100 W/K. */
    private static final double ROUND_OFF = 1e-9;

    private final Audit audit = Sample.audit(Sample.yaml(), Sample.good());
    private final HeatLoss loss = audit.heatLoss();

    @Test
    void surfacesAreTransmittanceTimesOuterArea() {
        double height = audit.shell().externalVolume() / (BoxByHand.LENGTH * BoxByHand.WIDTH);
        double walls = 2 * (BoxByHand.LENGTH + BoxByHand.WIDTH) * height * BoxByHand.transmittance("wall");
        double roof = BoxByHand.LENGTH * BoxByHand.WIDTH * BoxByHand.transmittance("roof");
        // Five lines, each rounded to 0.001 W/K.
        assertEquals(walls + roof, loss.surfaces(), 5 * 0.0005);
    }

    @Test
    void theSlabGoesByIso13370() {
        double slab = BoxByHand.LENGTH * BoxByHand.WIDTH * BoxByHand.transmittance("slab");
        assertEquals(slab, loss.ground(), 0.0005);
    }

    @Test
    void thePrintedLinesAddUpExactly() {
        assertEquals(printed(loss.total().lower()), column(Interval::lower));
        assertEquals(printed(loss.total().upper()), column(Interval::upper));
        assertTrue(loss.lines().size() >= 9, () -> loss.lines().size() + " lines");
    }

    private BigDecimal column(java.util.function.ToDoubleFunction<Interval> bound) {
        return loss.lines()
                .collect(line -> printed(bound.applyAsDouble(line.loss())))
                .injectInto(BigDecimal.ZERO.setScale(HeatLoss.DECIMALS), BigDecimal::add);
    }

    private static BigDecimal printed(double value) {
        return new BigDecimal(Double.toString(value)).setScale(HeatLoss.DECIMALS, RoundingMode.HALF_EVEN);
    }

    @Test
    void everyJunctionLineHoldsPsiTimesLength() {
        for (Line line : loss.lines().select(each -> each.group() == Group.JUNCTIONS)) {
            Interval exact = line.transmittance().times(line.size());
            assertTrue(
                    line.loss().lower() <= exact.lower()
                            && exact.upper() <= line.loss().upper(),
                    line::toString);
            // Outwards by less than a thousandth on either side.
            assertTrue(line.loss().width() <= exact.width() + 0.002, line::toString);
        }
    }

    @Test
    void junctionsBelowZeroStandApart() {
        assertEquals(0, loss.positiveJunctions().upper());
        double length = audit.junctions().sumOfDouble(JunctionRow::length);
        // Three lines, rounded outwards by at most 0.001 W/K; psi is made 0.0001 wide.
        assertEquals(-0.05 * length, loss.negativeJunctions().middle(), 0.003);
    }

    @Test
    void theOtherDimensionSystemDiffersByTheVerticesAlone() {
        double exactTotal = exact(DimensionSystem.EXTERNAL);
        double other = loss.otherSystemTotal().middle();
        assertEquals(exactTotal - other, loss.vertexRemainder().middle(), ROUND_OFF);
        assertEquals(verticesByGeometry(), loss.vertexRemainder().middle(), 1e-6 * exactTotal);
        assertTrue(Math.abs(loss.vertexRemainder().middle()) > 0.1, "a remainder worth testing");
    }

    /** Fasteners of the walls by hand: ISO 6946:2017 annex F (from memory), 0.8·λ·A·n/d0·(R1/RT)². */
    @Test
    void fastenersStandApartFromTheVertices() {
        String line = "role: cladding, controls: [water]}\n";
        HeatLoss fastened = Sample.audit(
                        Sample.yaml()
                                .replace(
                                        line,
                                        line
                                                + "    fasteners: {material: stainless steel, diameter: 5 mm, number: 6 per m²}\n"),
                        Sample.good())
                .heatLoss();
        double u = BoxByHand.transmittance("wall");
        double share = 0.2 / 0.035 * u;
        double more = 0.8 * 17 * Math.PI * 0.0025 * 0.0025 * 6 / 0.2 * share * share;
        assertTrue(more > 0.03 * u, "a correction that applies");
        double height = audit.shell().externalVolume() / (BoxByHand.LENGTH * BoxByHand.WIDTH);
        double innerLength = BoxByHand.LENGTH - 2 * BoxByHand.WALL;
        double innerWidth = BoxByHand.WIDTH - 2 * BoxByHand.WALL;
        double innerHeight = height - BoxByHand.SLAB - BoxByHand.ROOF;
        // The strips of wall outside the inner shell, each edge with its inner length.
        double strips = 4 * 2 * BoxByHand.WALL * innerHeight
                + 2 * (innerLength + innerWidth) * (BoxByHand.SLAB + BoxByHand.ROOF);
        // The shell lies on a lattice of 0.1 mm.
        assertEquals(more * strips, fastened.correctionRemainder(), 1e-4 * more * strips + 1e-4 * more * 100);
        double corners = 0;
        for (Surface surface : audit.shell().surfaces()) {
            boolean wall = surface.assembly().orElseThrow().name().equals("wall");
            corners += wall ? more * cornerAreas(surface) : 0;
        }
        assertEquals(
                loss.vertexRemainder().middle() + corners,
                fastened.vertexRemainder().middle(),
                1e-4);
        assertEquals(0, loss.correctionRemainder(), 2e-4, "no fasteners, nothing but the lattice");
    }

    /** Without the rounding of lines. */
    private double exact(DimensionSystem system) {
        double planes = audit.shell()
                .surfaces()
                .sumOfDouble(surface -> BoxByHand.transmittance(
                                surface.assembly().orElseThrow().name())
                        * (system == DimensionSystem.EXTERNAL ? surface.externalArea() : surface.internalArea()));
        return planes + audit.junctions().sumOfDouble(row -> row.psi().middle() * row.length());
    }

    /**
     * The vertices' part by geometry alone: where an outer corner and its inner corner lie apart by d, an edge that runs
     * there in direction u is longer outside by |d·u|, and a surface keeps ½·(s1·e1 + s2·e2) of area that no edge counts,
     * with s the set-backs of its two edges there and e their extra lengths.
     */
    private double verticesByGeometry() {
        double sum = 0;
        for (JunctionRow row : audit.junctions()) {
            sum += row.psi().middle()
                    * (row.edge().externalLength() - row.edge().internalLength());
        }
        for (Surface surface : audit.shell().surfaces()) {
            double transmittance =
                    BoxByHand.transmittance(surface.assembly().orElseThrow().name());
            sum += transmittance * cornerAreas(surface);
        }
        return sum;
    }

    private static double cornerAreas(Surface surface) {
        ImmutableList<Point3> outer = surface.outline();
        ImmutableList<Point3> inner = surface.innerOutline();
        int n = outer.size();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            Point3 apart = minus(outer.get(i), inner.get(i));
            Point3 before = unit(minus(outer.get(i), outer.get((i + n - 1) % n)));
            Point3 after = unit(minus(outer.get((i + 1) % n), outer.get(i)));
            double longerBefore = dot(apart, before);
            double longerAfter = -dot(apart, after);
            double setBackBefore = dot(apart, cross(before, surface.normal()));
            double setBackAfter = dot(apart, cross(after, surface.normal()));
            sum += 0.5 * (setBackBefore * longerBefore + setBackAfter * longerAfter);
        }
        return sum;
    }

    @Test
    void psiOfTheSystemsDiffersByTransmittanceTimesSetBack() {
        for (JunctionRow row : audit.junctions()) {
            Edge edge = row.edge();
            double expected = transmittance(edge.first()) * edge.firstSetBack()
                    + transmittance(edge.second().orElseThrow()) * edge.secondSetBack();
            var result = row.sheet().orElseThrow().result();
            // The shell lies on a lattice of 0.1 mm: set-backs are true to that, U at most 0.17 W/(m²·K) each.
            assertEquals(
                    expected,
                    result.psiInternal().lower() - result.psiExternal().lower(),
                    2 * 0.17 * 1e-4);
        }
    }

    private static double transmittance(Surface surface) {
        return BoxByHand.transmittance(surface.assembly().orElseThrow().name());
    }

    @Test
    void designLoadAndYearFollowFromTheTotal() {
        assertEquals(loss.total().lower() * 30, loss.designLoad().lower(), ROUND_OFF);
        assertEquals(loss.total().middle() * 3000 * 24 / 1000, loss.annualLoss().orElseThrow(), 1e-6);
    }

    /** ISO 13789: what ventilation loses counts in the load and in the year as well as what the shell loses. */
    @Test
    void ventilationCountsInLoadAndYear() {
        HeatLoss with = Sample.audit(
                        Sample.yaml().replace("  dimensions:", "  ventilation-heat-loss: 25 W/K\n  dimensions:"),
                        Sample.good())
                .heatLoss();
        assertEquals(loss.total(), with.total(), "H_T is by transmission alone");
        assertEquals(25, with.ventilation().orElseThrow());
        assertEquals(
                loss.annualLoss().orElseThrow() + 25 * 3000 * 24 / 1000.0,
                with.annualLoss().orElseThrow(),
                1e-6);
        assertEquals(loss.designLoad().lower() + 25 * 30, with.designLoad().lower(), ROUND_OFF);
    }

    /** The least and the greatest quotient of what the junctions and the house may lose. */
    @Test
    void theJunctionsShareIsBoundedByItsQuotients() {
        for (double psi : new double[] {-0.05, 0, 0.05}) {
            ImmutableList<Made> details = Sample.good().collect(made -> made.psi(psi));
            HeatLoss one = Sample.audit(Sample.yaml(), details).heatLoss();
            Interval part = one.positiveJunctions().plus(one.negativeJunctions());
            double[] quotients = {
                part.lower() / one.total().lower(),
                part.lower() / one.total().upper(),
                part.upper() / one.total().lower(),
                part.upper() / one.total().upper()
            };
            Arrays.sort(quotients);
            assertEquals(quotients[0], one.junctionShare().lower(), 1e-15);
            assertEquals(quotients[3], one.junctionShare().upper(), 1e-15);
        }
    }

    /** Openings, a neighbour's factor and own psi are in both totals: what differs is the remainders alone. */
    @Test
    void theTotalsOfAGarageWithAHatchDifferByTheRemainders() {
        HeatLoss garage = Sample.audit(GARAGE + "own-psi:\n- {kinds: [jamb, head, sill], " + PSI, Sample.good())
                .heatLoss();
        double lines = 0.001 * garage.lines().size();
        assertEquals(
                garage.vertexRemainder().middle() + garage.correctionRemainder(),
                garage.total().middle() - garage.otherSystemTotal().middle(),
                lines);
    }

    private static final String GARAGE = Sample.yaml()
                    .replace(
                            "    walls: {all: wall}\n",
                            "    walls: {all: wall, east: {assembly: wall, faces: garage}}\n")
            + "neighbours: {garage: {temperature-factor: 0.7}}\n"
            + "openings:\n  hatch: {kind: window, surface: ground floor east wall, width: 1 m, height: 2 m, sill: 0.2 m, "
            + "left: 2 m, transmittance: 1.5 W/(m²·K)}\n";

    private static final String PSI = "psi: 0.2 W/(m·K), source: our own computation}\n";

    @Test
    void anOpeningLosesByTheFactorOfTheSurfaceItIsIn() {
        Line hatch = Sample.audit(GARAGE, Sample.good())
                .heatLoss()
                .lines()
                .select(line -> line.group() == Group.OPENINGS)
                .getOnly();
        assertEquals(0.7, hatch.factor());
        assertEquals(1 * 2 * 1.5 * 0.7, hatch.loss().middle(), 0.0005);
    }

    /** A window that names the gable lies in the wall that is one with it. */
    @Test
    void anOpeningIsCountedWhateverItsSurfaceIsCalled() {
        String gable = Sample.yaml().replace("form: flat,", "form: gable, pitch: 45 °, low-side: south,")
                + "openings:\n  window: {kind: window, surface: SURFACE, width: 1 m, height: 2 m, sill: 2 m, transmittance: 2"
                + " W/(m²·K)}\n";
        for (String surface : Lists.immutable.of("ground floor east wall", "gable over ground floor east wall")) {
            Audit audit = Sample.audit(gable.replace("SURFACE", surface), Sample.good());
            Line window = audit.heatLoss()
                    .lines()
                    .select(line -> line.group() == Group.OPENINGS)
                    .getOnly();
            assertEquals(1 * 2 * 2, window.loss().middle(), 0.0005, surface);
            assertEquals(2, audit.sides().sumOfDouble(SideSummary::openings), ROUND_OFF, surface);
            assertTrue(
                    audit.findings()
                            .anySatisfy(found -> found.breaches()
                                    .anySatisfy(breach -> breach.rule().equals("opening-over-limit"))),
                    surface);
        }
    }

    /** The colder side decides: 0.7 around a hatch into the garage, 1 at the corner of garage wall and outer wall. */
    @Test
    void anOwnPsiIsWeighedByTheColderSide() {
        Audit garage = Sample.audit(
                GARAGE + "own-psi:\n- {kinds: [jamb, head, sill], " + PSI + "- {kinds: [outside corner], " + PSI,
                Sample.good());
        ImmutableList<JunctionRow> own = garage.junctions().select(row -> row.source() instanceof BridgeSource.Own);
        ImmutableList<JunctionRow> hatch =
                own.select(row -> row.edge().opening().isPresent());
        assertEquals(4, hatch.size());
        for (JunctionRow row : hatch) {
            assertEquals(0.7, row.factor());
            assertEquals(0.2 * row.length() * 0.7, row.loss().middle(), ROUND_OFF);
        }
        ImmutableList<JunctionRow> corners = own.select(row -> row.edge().kind() == JunctionKind.OUTSIDE_CORNER);
        assertEquals(4, corners.size());
        assertTrue(corners.allSatisfy(row -> row.factor() == 1), corners::toString);
    }

    /** What either dimension system calls the other's total is what a house in that system has. */
    @Test
    void aHouseInTheOtherDimensionsHasTheOtherTotal() {
        HeatLoss external = Sample.audit(GARAGE, Sample.good()).heatLoss();
        HeatLoss internal = Sample.audit(GARAGE.replace("dimensions: external", "dimensions: internal"), Sample.good())
                .heatLoss();
        double lines = 0.001 * external.lines().size();
        assertEquals(internal.total().middle(), external.otherSystemTotal().middle(), lines);
        assertEquals(external.total().middle(), internal.otherSystemTotal().middle(), lines);
        HeatLoss box = Sample.audit(
                        Sample.yaml().replace("dimensions: external", "dimensions: internal"), Sample.good())
                .heatLoss();
        assertEquals(-loss.vertexRemainder().middle(), box.vertexRemainder().middle(), ROUND_OFF);
    }

    @Test
    void everyGroupsSumIsOfItsLines() {
        HeatLoss garage = Sample.audit(GARAGE, Sample.good()).heatLoss();
        for (Group group : Group.values()) {
            double sum = garage.lines()
                    .select(line -> line.group() == group)
                    .sumOfDouble(line -> line.loss().middle());
            double told = switch (group) {
                case SURFACES -> garage.surfaces() - sum(garage, Group.OPENINGS);
                case OPENINGS -> garage.surfaces() - sum(garage, Group.SURFACES);
                case GROUND -> garage.ground();
                case UNHEATED -> garage.unheated();
                case JUNCTIONS ->
                    garage.positiveJunctions().plus(garage.negativeJunctions()).middle();
                case PAIRS -> garage.pairs().middle();
                case POINTS -> garage.points().middle();
                case VERTICES -> garage.vertices().middle();
            };
            assertEquals(sum, told, ROUND_OFF, group::name);
        }
        assertTrue(garage.unheated() > 1, "a neighbour worth testing");
    }

    private static double sum(HeatLoss loss, Group group) {
        return loss.lines()
                .select(line -> line.group() == group)
                .sumOfDouble(line -> line.loss().middle());
    }

    @Test
    void aGroupsLinesHaveItsDimensions() {
        assertEquals(
                "[m², m², m², m², m, m, -, -]",
                Lists.immutable
                        .with(Group.values())
                        .collect(group -> group.size()
                                .map(size -> size == Dimension.AREA ? "m²" : size == Dimension.LENGTH ? "m" : "?")
                                .orElse("-"))
                        .toString());
        assertEquals(
                Lists.immutable.of(
                        Dimension.TRANSMITTANCE,
                        Dimension.TRANSMITTANCE,
                        Dimension.TRANSMITTANCE,
                        Dimension.TRANSMITTANCE,
                        Dimension.LINEAR_TRANSMITTANCE,
                        Dimension.LINEAR_TRANSMITTANCE,
                        Dimension.POINT_TRANSMITTANCE,
                        Dimension.POINT_TRANSMITTANCE),
                Lists.immutable.with(Group.values()).collect(Group::transmittance));
    }

    @Test
    void everyPartIsMatchedAsWhatItIs() {
        ImmutableList<HeatLoss.Part> parts = Lists.immutable.of(
                new HeatLoss.Part.OfSurface(null),
                new HeatLoss.Part.OfOpening(null),
                new HeatLoss.Part.OfJunction(Lists.immutable.empty()),
                new HeatLoss.Part.OfPairs(null),
                new HeatLoss.Part.OfPoints(null),
                new HeatLoss.Part.OfVertices(null));
        assertEquals(
                Lists.immutable.of("surface", "opening", "junction", "pairs", "points", "vertices"),
                parts.collect(part -> part.match(
                        plane -> "surface",
                        window -> "opening",
                        junction -> "junction",
                        pairs -> "pairs",
                        points -> "points",
                        vertices -> "vertices")));
    }

    /** What made-up corners add, W/K, in external and in internal dimensions. */
    private static VertexResult corner(VertexSetup setup, boolean heat) {
        return new VertexResult(
                setup,
                Optional.empty(),
                heat
                        ? Optional.of(new VertexResult.Heat(null, Interval.of(1), chi(0.02), chi(-0.3)))
                        : Optional.empty(),
                null,
                0.9,
                new Place(0, 0, 0),
                Lists.immutable.empty(),
                Lists.immutable.empty());
    }

    private static Sloped chi(double value) {
        return new Sloped(Interval.of(value), Maps.immutable.empty());
    }

    /** Eight corners of 0.02 W/K outside and −0.3 W/K inside: they count in the total of either system, and in their difference. */
    @Test
    void cornersCountWithTheirHeatInTheirSystem() {
        HeatLoss with = Sample.audit(Sample.yaml(), Sample.good(), setup -> corner(setup, true))
                .heatLoss();
        ImmutableList<Line> lines = with.lines().select(line -> line.group() == Group.VERTICES);
        assertEquals(8, lines.sumOfDouble(Line::size));
        for (Line line : lines) {
            assertEquals(Interval.of(0.02), line.transmittance());
            assertEquals(1, line.factor());
            assertEquals(0.02 * line.size(), line.loss().middle(), ROUND_OFF);
        }
        assertEquals(8 * 0.02, with.vertices().middle(), ROUND_OFF);
        assertEquals(loss.total().middle() + 8 * 0.02, with.total().middle(), ROUND_OFF);
        assertEquals(
                loss.otherSystemTotal().middle() - 8 * 0.3,
                with.otherSystemTotal().middle(),
                ROUND_OFF);
        assertEquals(
                loss.vertexRemainder().middle() + 8 * 0.32,
                with.vertexRemainder().middle(),
                ROUND_OFF);
    }

    /** Whose temperature alone is computed has no line: what it adds is counted elsewhere, and is not nothing. */
    @Test
    void cornersWithoutHeatHaveNoLine() {
        HeatLoss without = Sample.audit(Sample.yaml(), Sample.good(), setup -> corner(setup, false))
                .heatLoss();
        assertEquals(0, without.lines().count(line -> line.group() == Group.VERTICES));
        assertEquals(loss.total(), without.total());
        assertEquals(loss.otherSystemTotal(), without.otherSystemTotal());
        assertEquals(loss.vertexRemainder(), without.vertexRemainder());
    }

    /** Sections that differ are a line each, though their psi be the same; an own psi is one whatever they show. */
    @Test
    void aLineIsOfOneSheetOrOfOneOwnPsi() {
        assertEquals(Lists.immutable.of(2, 2), edges(GARAGE));
        assertEquals(Lists.immutable.of(4), edges(GARAGE + "own-psi:\n- {kinds: [outside corner], " + PSI));
    }

    private static ImmutableList<Integer> edges(String yaml) {
        return Sample.audit(yaml, Sample.good())
                .heatLoss()
                .lines()
                .collect(Line::part)
                .selectInstancesOf(HeatLoss.Part.OfJunction.class)
                .collect(HeatLoss.Part.OfJunction::edges)
                .select(rows -> rows.getFirst().edge().kind() == JunctionKind.OUTSIDE_CORNER)
                .collect(ImmutableList::size);
    }

    /** Where a stated psi makes the whole house gain there is nothing to have a share of. */
    @Test
    void ofNoLossNothingHasAShare() {
        HeatLoss gains = Sample.audit(
                        Sample.yaml()
                                + "own-psi:\n- {kinds: [slab edge], psi: -5 W/(m·K), source: our own computation}\n",
                        Sample.good())
                .heatLoss();
        assertTrue(gains.total().upper() < 0, gains.total()::toString);
        assertEquals(Interval.of(0), gains.junctionShare());
    }

    private static Point3 minus(Point3 a, Point3 b) {
        return new Point3(a.x() - b.x(), a.y() - b.y(), a.z() - b.z());
    }

    private static double dot(Point3 a, Point3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static Point3 cross(Point3 a, Point3 b) {
        return new Point3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }

    private static Point3 unit(Point3 a) {
        double length = Math.sqrt(dot(a, a));
        return new Point3(a.x() / length, a.y() / length, a.z() / length);
    }
}
