package coldseam.junctions.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.Keeping;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.kind.Chart.Cut;
import coldseam.junctions.section.SeamRun;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two seams in one section, against what is known of their sum apart. */
class PairComputerTest {

    private static final Accuracy ACCURACY = new Accuracy(5e-4, 200_000);
    private static final PairComputer PAIRS =
            new PairComputer(ACCURACY, Conduction::solve, Keeping.NOTHING, MaterialLibrary::named);
    private static final BridgeComputer ALONE = BridgeComputers.computer(ACCURACY);

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
        SeamRun run = SeamRun.of(end.detail(), end.setup(), end.cut(), MaterialLibrary::named);
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
                        .collect(each -> new coldseam.conduction.Region(
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

    /** A lintel 200 mm high and a floor 250 mm thick need their sum; a lap over the frame lies in another layer, and does not. */
    @Test
    void whatReachesIntoTheOtherIsTold() {
        PairSetup.End head = end(TypicalBuild.MASONRY, "head-middle-lapped", Cut.FIRST_AWAY);
        PairSetup.End floor = end(TypicalBuild.MASONRY, "intermediate-floor-board-passes", Cut.FIRST_AWAY);
        PairAnswer near = PAIRS.compute(new PairSetup(head, floor, 0.40));
        assertEquals(PairObstacle.REACHES, near.obstacle().orElseThrow());
        assertEquals(0.05, near.lacking(), 1e-4);
        assertTrue(PAIRS.compute(new PairSetup(head, floor, 0.45)).result().isPresent());
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
