package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Digests;
import coldseam.audit.JunctionRow;
import coldseam.audit.PairSheet;
import coldseam.audit.Touching;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.Keeping;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.pair.PairAnswer;
import coldseam.junctions.pair.PairComputer;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.pair.PairObstacle;
import coldseam.junctions.section.Composer;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The jambs of two windows with a pier between them, each computed alone as an audit does, against both in one section drawn here
 * and solved as one: what the house says of them holds the truth.
 */
class TwoJambsTest {

    private static final Accuracy ACCURACY = new Accuracy(5e-4, 200_000);

    private static final BridgeComputer IN_EARNEST = BridgeComputers.computer(ACCURACY);
    private static final double FRAME_U = 0.9;
    private static final double HEIGHT = 1.5;

    /** m, of the walls but for their boards. */
    private static final double THICKNESS = 0.265;

    /** m, of masonry with boards of 200 mm outside; shorter with thinner ones. */
    private static final double DECAY = 0.23;

    /** A frame in the boards, and one in a bare reveal, whose wall carries heat past the boards. */
    @ParameterizedTest
    @CsvSource({
        "jamb-middle-lapped, 60, 100",
        "jamb-middle-lapped, 60, 200",
        "jamb-middle-lapped, 60, 400",
        "jamb-middle-lapped, 200, 100",
        "jamb-middle-lapped, 200, 200",
        "jamb-middle-lapped, 200, 400",
        "jamb-inner-bare-reveal, 60, 100",
        "jamb-inner-bare-reveal, 60, 200",
        "jamb-inner-bare-reveal, 60, 400",
        "jamb-inner-bare-reveal, 200, 100",
        "jamb-inner-bare-reveal, 200, 200",
        "jamb-inner-bare-reveal, 200, 400"
    })
    void theTrueLossLiesInWhatIsSaid(String detail, int board, int apart) {
        double distance = apart / 1000.0;
        Audit audit = audit(detail, board, distance, none -> PairAnswer.not(PairObstacle.REACHES));
        JunctionRow jamb = audit.junctions().detect(row -> row.edge().kind() == JunctionKind.JAMB);
        JunctionResult alone = jamb.sheet().orElseThrow().result();
        double wall = alone.legs().getFirst().transmittance();
        assertEquals(1 / (0.13 + 0.015 / 0.8 + 0.24 / 0.81 + board / 35.0 + 0.01 / 0.7 + 0.04), wall, 1e-9);
        Interval said = jamb.psi().times(2).plus(wall * distance + 2 * FRAME_U * Composer.FRAME_WIDTH);
        Interval truth = whole(alone.solution().section(), distance);
        Unknown unknown = Unknown.of(audit);
        boolean bare = detail.contains("bare");
        if (unknown.touching().isEmpty()) {
            assertTrue(!bare, "a bare reveal reaches " + distance + " m");
            assertTrue(truth.upper() > said.lower() - Touching.LIMIT / 10, said + " against " + truth);
        } else {
            assertEquals(1, unknown.touching().sumOfInt(each -> each.pairs().size()));
            double below = unknown.together() / HEIGHT;
            assertTrue(truth.lower() > said.lower() - below, said + " less " + below + " against " + truth);
        }
        assertTrue(truth.lower() < said.upper(), "of two alike the pier takes something away");
        solvedTogether(detail, board, distance, truth);
        // Without the bound it would not be: this is what the test is about.
        assertTrue(!bare || truth.upper() < said.lower() - 0.1, said + " against " + truth);
    }

    /** Where they touch, the audit solves both in one section, and has the truth. */
    private static void solvedTogether(String detail, int board, double distance, Interval truth) {
        Audit audit = audit(detail, board, distance, new PairComputer(ACCURACY, Conduction::solve, Keeping.NOTHING));
        assertTrue(Unknown.of(audit).touching().isEmpty(), "all that touches is solved together");
        for (PairSheet sheet : audit.pairSheets()) {
            Interval coupling = sheet.result().coupling();
            assertTrue(coupling.lower() <= truth.upper() && truth.lower() <= coupling.upper(), coupling + " " + truth);
            double wall = sheet.one().result().legs().getFirst().transmittance();
            Interval said =
                    sheet.psi(DimensionSystem.EXTERNAL).plus(wall * distance + 2 * FRAME_U * Composer.FRAME_WIDTH);
            assertTrue(said.lower() <= truth.upper() && truth.lower() <= said.upper(), said + " " + truth);
            assertEquals(HEIGHT, sheet.length(), 1e-9);
            // Of what each loses over the least that it can, as the bound has it.
            double least = -(wall * THICKNESS / 2 + FRAME_U * Composer.FRAME_WIDTH);
            double over = sheet.one().result().psiExternal().upper() - least;
            double share = Touching.share(distance - THICKNESS - board / 1000.0, DECAY) * 2 * over;
            assertTrue(-sheet.interaction().lower() < share + truth.width(), "no more than the bound: " + share);
        }
    }

    /** Of a wall 465 mm thick: at 400 mm all that a seam loses more, three quarters of a metre past its thickness hardly any. */
    @ParameterizedTest
    @CsvSource({"0.4, 1.0", "0.8, 0.4", "1.2, 0.06"})
    void theBoundDiesAway(double distance, double share) {
        assertEquals(share, Touching.share(distance - 0.465, 0.2219), 0.05);
    }

    private static Audit audit(String detail, int board, double distance, PairComputing pairs) {
        Detail jamb = CatalogueFile.builtIn().find(detail).orElseThrow();
        String yaml = Sample.yaml()
                .replace("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: " + board + " mm")
                .replace(
                        "junctions:\n",
                        "openings:\n" + window("one", 1) + window("other", 2 + distance)
                                + "junctions:\n- {kinds: [jamb], detail: " + detail + "}\n");
        House house = Sample.house(yaml);
        BridgeComputer made = Sample.computer();
        BridgeComputer computer = Sample.computer((each, setup) ->
                each.kind() == JunctionKind.JAMB ? IN_EARNEST.compute(each, setup) : made.compute(each, setup));
        return new Auditor(
                        new Catalogue(Sample.good().collect(Sample.Made::detail).newWith(jamb)),
                        work -> new Auditor.Solving(computer, Optional.empty(), Optional.of(pairs)),
                        false,
                        "test")
                .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT);
    }

    private static String window(String name, double left) {
        return "  " + name + ": {kind: window, surface: ground floor south wall, width: 1 m, height: " + HEIGHT
                + " m, left: " + left + " m, sill: 1 m, transmittance: 0.9 W/(m²·K)}\n";
    }

    /** A jamb's section, whose frame begins at x = 0 with the wall at its left, and its mirror image half the pier to the left. */
    private static Interval whole(Section alone, double distance) {
        double at = -distance / 2;
        MutableList<Region> regions = Lists.mutable.empty();
        for (Region region : alone.regions()) {
            ImmutableList<Point> kept = clip(region.outline().corners(), true, at);
            if (kept.size() > 2) {
                regions.add(new Region(region.material(), region.conductivity(), new Polygon(kept)));
                regions.add(new Region(region.material(), region.conductivity(), new Polygon(mirrored(kept, at))));
            }
        }
        MutableList<Boundary> boundaries = Lists.mutable.empty();
        for (Boundary each : alone.boundaries()) {
            ImmutableList<Point> kept = clip(each.path(), false, at);
            if (kept.size() > 1) {
                boundaries.add(new Boundary(each.environment(), kept, each.surfaceResistance()));
                boundaries.add(new Boundary(each.environment(), mirrored(kept, at), each.surfaceResistance()));
            }
        }
        Section whole = new Section(
                "two jambs",
                alone.symmetry(),
                regions.toImmutable(),
                alone.environments(),
                boundaries.toImmutable(),
                Lists.immutable.empty());
        return Conduction.solve(whole, ACCURACY).coupling("indoor", "outdoor");
    }

    private static ImmutableList<Point> mirrored(ImmutableList<Point> line, double at) {
        return line.collect(each -> new Point(2 * at - each.x(), each.y()));
    }

    /** What of a line, closed or not, lies to the right of x = at. */
    static ImmutableList<Point> clip(ImmutableList<Point> line, boolean closed, double at) {
        MutableList<Point> kept = Lists.mutable.empty();
        for (int i = 0; i < line.size(); i++) {
            Point here = line.get(i);
            if (i > 0 || closed) {
                Point before = line.get((i + line.size() - 1) % line.size());
                if (before.x() > at != here.x() > at) {
                    double share = (at - before.x()) / (here.x() - before.x());
                    kept.add(new Point(at, before.y() + share * (here.y() - before.y())));
                }
            }
            if (here.x() > at) {
                kept.add(here);
            }
        }
        return kept.toImmutable();
    }
}
