package coldseam.junctions.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.solve.Conduction;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.Keeping;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.kind.Chart.Cut;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.SeamRun;
import coldseam.junctions.section.Shapes;
import java.util.function.Predicate;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;

/** Two seams in one section, against what is known of their sum apart. */
class PairComputerTest {

    private static final Accuracy ACCURACY = new Accuracy(5e-4, 200_000);
    private static final PairComputer PAIRS = new PairComputer(ACCURACY, Conduction::solve, Keeping.NOTHING);
    private static final BridgeComputer ALONE = Samples.ofHeat(ACCURACY);

    private static Detail detail(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    private static PairSetup.End end(TypicalBuild build, String id, Cut cut) {
        return new PairSetup.End(detail(id), build.setup(detail(id)), cut);
    }

    private static Interval interaction(PairSetup setup) {
        return PAIRS.compute(setup)
                .result()
                .orElseThrow()
                .interaction(
                        ALONE.compute(setup.one().detail(), setup.one().setup()),
                        ALONE.compute(setup.other().detail(), setup.other().setup()));
    }

    /** Two metres are nine of the lengths in which a disturbance of the masonry wall dies away to a third. */
    @ParameterizedTest
    @CsvSource({
        "MASONRY, head-inner-bare, FIRST_AWAY, intermediate-floor-slab-through, FIRST_AWAY, 0.002",
        "MASONRY, sill-inner-bare, FIRST_AWAY, intermediate-floor-slab-through, FIRST_BEYOND, 0.002",
        "MASONRY, sill-middle-on-board, FIRST_AWAY, slab-edge-raft, SECOND_AWAY, 0.0005",
        "MASONRY, head-middle-lapped, FIRST_AWAY, eaves-boards-meet, SECOND_AWAY, 0.0005",
        "FRAME, jamb-inner-bare-reveal, FIRST_AWAY, outside-corner-unbroken, FIRST_AWAY, 0.0005",
        "FRAME, head-middle-lapped, FIRST_AWAY, outside-corner-unbroken, SECOND_AWAY, 0.0005"
    })
    void farApartTheyDoNothingToEachOther(
            TypicalBuild build, String one, Cut first, String other, Cut second, double most) {
        Interval far = interaction(new PairSetup(end(build, one, first), end(build, other, second), 2));
        assertTrue(far.lower() < most && far.upper() > -most, far::toString);
        assertTrue(far.width() < 0.003, far::toString);
    }

    /** What one takes the other gives: a cut that no heat passes halfway between two mirror images changes nothing. */
    @ParameterizedTest
    @CsvSource({"MASONRY, jamb-inner-bare-reveal, 0.3", "FRAME, jamb-mid-depth, 0.2", "MASONRY, head-inner-bare, 0.5"})
    void twoAlikeLoseTwiceWhatOneDoesWithACutHalfway(TypicalBuild build, String id, double distance) {
        PairSetup.End end = end(build, id, Cut.FIRST_AWAY);
        PairResult both =
                PAIRS.compute(new PairSetup(end, end, distance)).result().orElseThrow();
        SeamRun run = SeamRun.of(end.detail(), end.setup(), end.cut());
        Interval half = Conduction.solve(cut(run.heatFlow(), distance / 2), ACCURACY)
                .coupling("indoor", "outdoor")
                .times(2);
        assertTrue(
                half.lower() <= both.coupling().upper() && both.coupling().lower() <= half.upper(),
                both.coupling() + ", of two halves " + half);
        Interval whole =
                ALONE.compute(end.detail(), end.setup()).coupling().times(2).plus(-both.common());
        assertTrue(both.coupling().upper() < whole.lower(), "the test sees what they do to each other");
    }

    /** Everything moved past the cut onto it: areas of no width are nothing, and what faces air there ends at it. */
    private static Section cut(Section section, double at) {
        return new Section(
                section.name(),
                section.symmetry(),
                section.regions()
                        .collect(each -> new Region(
                                each.material(),
                                each.conductivity(),
                                new coldseam.conduction.Polygon(
                                        each.outline().corners().collect(corner -> upTo(corner, at))))),
                section.environments(),
                section.boundaries()
                        .collect(each -> new Boundary(
                                each.environment(),
                                each.path().collect(corner -> upTo(corner, at)).distinct(),
                                each.surfaceResistance()))
                        .select(each -> each.path().size() > 1),
                Lists.immutable.empty());
    }

    private static Point upTo(Point corner, double at) {
        return new Point(Math.min(corner.x(), at), corner.y());
    }

    /** The eaves' plate of timber and the lintel of concrete below it need their sum; what hangs down before the window lies outside it. */
    @Test
    void whatReachesIntoTheOtherIsTold() {
        PairSetup.End head = end(TypicalBuild.MASONRY, "head-middle-lapped", Cut.FIRST_AWAY);
        PairSetup.End eaves = end(TypicalBuild.MASONRY, "eaves-boards-meet", Cut.SECOND_AWAY);
        PairAnswer near = PAIRS.compute(new PairSetup(head, eaves, 0.45));
        assertEquals(PairObstacle.REACHES, near.obstacle().orElseThrow());
        assertEquals(0.1358, near.lacking(), 1e-4);
        assertTrue(PAIRS.compute(new PairSetup(head, eaves, 0.586)).result().isPresent());
    }

    /** Drawn apart they are 450 mm high together; cast in one they need no more than the floor and the least lintel. */
    @Test
    void aLintelIsCastWithTheSlabOverIt() {
        PairSetup.End head = end(TypicalBuild.MASONRY, "head-middle-lapped", Cut.FIRST_AWAY);
        PairSetup.End floor = end(TypicalBuild.MASONRY, "intermediate-floor-board-passes", Cut.FIRST_AWAY);
        SeamRun one = SeamRun.of(head.detail(), head.setup(), head.cut());
        SeamRun other = SeamRun.of(floor.detail(), floor.setup(), floor.cut());
        double apart = concrete(new JoinedSections(one, other, 0.45).heatFlow());
        double cast = concrete(new JoinedSections(one, other, 0.3).heatFlow());
        assertEquals(apart - 0.15 * 0.24, cast, 1e-6, "150 mm of both are one, as thick as the wall carries");
    }

    private static double concrete(Section section) {
        return area(section, region -> region.conductivity() > 2).getArea();
    }

    /** What is seen of some regions: later ones lie over earlier ones. */
    private static Geometry area(Section section, Predicate<Region> which) {
        Geometry seen = Shapes.nothing();
        for (Region region : section.regions()) {
            Geometry area = Shapes.of(region.outline().corners());
            seen = which.test(region) ? Shapes.union(Lists.immutable.of(seen, area)) : Shapes.difference(seen, area);
        }
        return seen;
    }

    /** Whatever is a side of the whole faces air but for the ends of both sections. */
    @ParameterizedTest
    @CsvSource({
        "MASONRY, head-middle-lapped, FIRST_AWAY, intermediate-floor-board-passes, FIRST_AWAY, 0.3",
        "MASONRY, head-inner-bare, FIRST_AWAY, intermediate-floor-slab-through, FIRST_AWAY, 0.36",
        "FRAME, head-middle-lapped, FIRST_AWAY, intermediate-floor-board-passes, FIRST_AWAY, 0.3",
        "MASONRY, head-middle-lapped, FIRST_AWAY, eaves-boards-meet, SECOND_AWAY, 0.586",
        "FRAME, head-inner-bare, FIRST_AWAY, eaves-rafters-through, SECOND_AWAY, 0.6",
        "MASONRY, jamb-middle-lapped, FIRST_AWAY, jamb-inner-bare-reveal, FIRST_AWAY, 0.2"
    })
    void theWholeHasNoHole(TypicalBuild build, String one, Cut first, String other, Cut second, double distance) {
        PairSetup.End a = end(build, one, first);
        PairSetup.End b = end(build, other, second);
        SeamRun left = SeamRun.of(a.detail(), a.setup(), a.cut());
        SeamRun right = SeamRun.of(b.detail(), b.setup(), b.cut());
        JoinedSections joined = new JoinedSections(left, right, distance);
        assertEquals(0, joined.lacking());
        Section whole = joined.heatFlow();
        Geometry all = area(whole, region -> true);
        double facing = length(whole) + open(left) + open(right) - thickness(left) - thickness(right);
        assertEquals(all.getLength(), facing, 1e-4);
    }

    private static double length(Section section) {
        return section.boundaries().sumOfDouble(each -> length(each.path()));
    }

    private static double length(ImmutableList<Point> way) {
        return way.drop(1).zip(way).sumOfDouble(pair -> pair.getOne().distance(pair.getTwo()));
    }

    /** m of a section's outline that face nothing: its ends. */
    private static double open(SeamRun run) {
        Section section = run.heatFlow();
        return area(section, region -> true).getLength() - length(section);
    }

    /** m, of the surface's end that is cut off. */
    private static double thickness(SeamRun run) {
        return run.surface().strata().select(Band.Stratum::solved).getLast().solvedOutside();
    }

    /** Each is drawn a metre past its last corner. */
    @Test
    void whatNeitherDrawsIsNotMadeUp() {
        PairSetup.End jamb = end(TypicalBuild.FRAME, "jamb-middle-lapped", Cut.FIRST_AWAY);
        assertTrue(PAIRS.compute(new PairSetup(jamb, jamb, 1.99)).result().isPresent());
        assertEquals(
                PairObstacle.FAR,
                PAIRS.compute(new PairSetup(jamb, jamb, 2.5)).obstacle().orElseThrow());
    }

    @Test
    void otherLayersAreNotJoined() {
        PairAnswer answer = PAIRS.compute(new PairSetup(
                end(TypicalBuild.MASONRY, "head-middle-lapped", Cut.FIRST_AWAY),
                end(TypicalBuild.FRAME, "jamb-middle-lapped", Cut.FIRST_AWAY),
                1));
        assertEquals(PairObstacle.OTHER_LAYERS, answer.obstacle().orElseThrow());
        assertTrue(answer.result().isEmpty());
    }
}
