package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Digests;
import coldseam.audit.PairRow;
import coldseam.audit.Touching;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.KindForm;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.Keeping;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.pair.PairAnswer;
import coldseam.junctions.pair.PairComputer;
import coldseam.junctions.pair.PairComputing;
import coldseam.junctions.pair.PairObstacle;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A window beside the corner of its house, under its roof, flat or sloping, or its ceiling, or over its slab, each seam computed alone as an audit does,
 * against both in one section drawn here and solved as one: where the house says nothing of them, they are out by less than what
 * may go untold; where it says that they touch, by less than what it says.
 */
@Tag("slow")
class OpeningBesideEdgeTest {

    private static final Accuracy ACCURACY = new Accuracy(5e-4, 200_000);
    private static final BridgeComputer IN_EARNEST = BridgeComputers.computer(ACCURACY);

    /** m, of the walls but for their boards. */
    private static final double THICKNESS = 0.265;

    /** m, from the floor to the flat roof's concrete, and to the ceiling under the upper floor. */
    private static final double UNDER_ROOF = 2.84;

    private static final double UNDER_FLOOR = 2.7;

    /** m, as heads draw it. */
    private static final double LINTEL = 0.2;

    /** m; what lies on a cut is cut off. */
    private static final double HAIR = 1e-4;

    private static final String WALLS = "    walls: {all: wall}\n";

    private static final String UPPER_FLOOR = WALLS
            + "  - name: upper floor\n    footprint: {rectangle: [8 m, 6 m]}\n    height: 3 m\n"
            + "    floor-thickness: 300 mm\n" + WALLS;

    private static final String FLAT = "  roof: {form: flat, assembly: roof}\n";

    private static final String GABLE = "  roof: {form: gable, assembly: pitched, pitch: 40 °, low-side: south}\n";

    private static final String PITCHED = """
              pitched:
                layers:
                - {material: gypsum plasterboard, thickness: 20 mm, role: finish}
                - {material: airtight membrane, thickness: 0.2 mm, role: membrane, controls: [air, vapour]}
                - {material: mineral wool batt, thickness: 180 mm, role: structure, framing: {material: softwood, share: 12 %}}
                - {material: wood fibre insulation board, thickness: 140 mm, role: insulation, controls: [heat]}
                - {material: breather membrane, thickness: 0.5 mm, role: membrane, controls: [water]}
                - {material: air, thickness: 40 mm, role: air layer, air: {ventilation: well ventilated}}
                - {material: clay roof tile, thickness: 20 mm, role: cladding}
            body:
            """;

    /** How wide or high the window is along the seam. */
    private static final double LENGTH = 1.5;

    @ParameterizedTest
    @CsvSource({
        "jamb-middle-lapped, outside-corner-unbroken, 60, 5",
        "jamb-middle-lapped, outside-corner-unbroken, 60, 100",
        "jamb-middle-lapped, outside-corner-unbroken, 200, 5",
        "jamb-middle-lapped, outside-corner-unbroken, 200, 100",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 5",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 50",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 150",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 400",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 800",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 5",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 50",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 150",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 400",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 800",
        "head-middle-lapped, flat-roof-edge-wall-boards-past, 200, 5",
        "head-middle-lapped, flat-roof-edge-wall-boards-past, 200, 100",
        "head-inner-bare, flat-roof-edge-wall-boards-past, 200, 5",
        "head-inner-bare, flat-roof-edge-wall-boards-past, 200, 200",
        "head-middle-lapped, flat-roof-edge-timber-through, 200, 5",
        "head-middle-lapped, flat-roof-edge-timber-through, 200, 100",
        "head-inner-bare, flat-roof-edge-timber-through, 200, 5",
        "head-inner-bare, flat-roof-edge-timber-through, 200, 200",
        "head-inner-bare, flat-roof-edge-timber-through, 200, 800",
        "sill-middle-on-board, slab-edge-raft, 200, 30",
        "sill-middle-on-board, slab-edge-bare, 200, 30",
        "sill-inner-bare, slab-edge-raft, 200, 30",
        "sill-inner-bare, slab-edge-bare, 200, 30",
        "sill-inner-bare, slab-edge-bare, 200, 300",
        "sill-inner-bare, slab-edge-bare, 200, 900",
        "head-middle-lapped, intermediate-floor-board-passes, 200, 5",
        "head-inner-bare, intermediate-floor-board-passes, 200, 5",
        "head-middle-lapped, intermediate-floor-slab-through, 200, 5",
        "head-inner-bare, intermediate-floor-slab-through, 200, 5",
        "head-inner-bare, intermediate-floor-slab-through, 200, 300",
        "head-middle-lapped, eaves-boards-meet, 200, 5",
        "head-middle-lapped, eaves-boards-meet, 200, 100",
        "head-inner-bare, eaves-boards-meet, 200, 5",
        "head-inner-bare, eaves-boards-meet, 200, 200",
        "head-middle-lapped, eaves-rafters-through, 200, 5",
        "head-middle-lapped, eaves-rafters-through, 200, 100",
        "head-inner-bare, eaves-rafters-through, 200, 5",
        "head-inner-bare, eaves-rafters-through, 200, 200",
        "head-inner-bare, eaves-rafters-through, 200, 600"
    })
    void theTrueLossIsWhatIsSaid(String openingDetail, String edgeDetail, int board, int inside) {
        double clear = inside / 1000.0;
        Audit audit = audit(
                detail(openingDetail),
                detail(edgeDetail),
                board / 1000.0,
                clear,
                none -> PairAnswer.not(PairObstacle.REACHES));
        JunctionResult opening = alone(audit, detail(openingDetail).junction());
        JunctionResult edge = alone(audit, detail(edgeDetail).junction());
        double wall = opening.legs().getFirst().transmittance();
        Section left = alongTheWall(edge);
        Section right = alongTheWall(opening);
        // The wall's layers are cut where both show them: over a head past its lintel, where there is room for that.
        double cut = detail(openingDetail).junction() == JunctionKind.HEAD && clear >= LINTEL
                ? Math.max(clear / 2, Math.min(LINTEL, clear - HAIR))
                : clear / 2;
        double ofEdge = clear - cut;
        Interval truth =
                Conduction.solve(joined(left, right, ofEdge, cut), ACCURACY).coupling("indoor", "outdoor");
        double said = edge.coupling().middle()
                + opening.coupling().middle()
                - wall * (-lowest(left) - ofEdge - lowest(right) - cut);
        double off = truth.middle() - said;
        Unknown unknown = Unknown.of(audit);
        double width =
                truth.width() + edge.coupling().width() + opening.coupling().width();
        if (unknown.touching().isEmpty()) {
            assertTrue(clear >= Touching.CLOSE, "nobody can build both");
            assertTrue(Math.abs(off) < Touching.LIMIT + width, off + " untold");
        } else {
            assertEquals(1, unknown.touching().sumOfInt(each -> each.pairs().size()));
            assertTrue(-off < unknown.together() / LENGTH + width, off + " of " + unknown.together() / LENGTH);
            solvedTogether(
                    audit(
                            detail(openingDetail),
                            detail(edgeDetail),
                            board / 1000.0,
                            clear,
                            new PairComputer(ACCURACY, Conduction::solve, Keeping.NOTHING)),
                    off,
                    width);
        }
    }

    /** The audit solves both in one section, and has what was drawn here; or one reaches into the other. */
    private static void solvedTogether(Audit audit, double off, double width) {
        PairRow row = audit.pairs().getOnly();
        row.sheet().ifPresent(sheet -> {
            double middle = sheet.interaction().middle();
            assertTrue(Math.abs(middle - off) < width + sheet.interaction().width(), middle + ", drawn here " + off);
        });
        assertEquals(row.sheet().isPresent(), Unknown.of(audit).touching().isEmpty());
        assertTrue(
                row.sheet().isPresent() || row.lacking() > 0 || row.obstacle().orElseThrow() == PairObstacle.NARROW);
    }

    private static Detail detail(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    private static double lowest(Section section) {
        return section.regions()
                .flatCollect(region -> region.outline().corners())
                .collectDouble(Point::x)
                .min();
    }

    private static JunctionResult alone(Audit audit, JunctionKind kind) {
        return audit.junctions()
                .detect(row -> row.edge().kind() == kind && row.sheet().isPresent())
                .sheet()
                .orElseThrow()
                .result();
    }

    private static Audit audit(Detail opening, Detail edge, double board, double clear, PairComputing pairs) {
        JunctionKind at = opening.junction();
        double left = at == JunctionKind.JAMB ? clear + THICKNESS + board : 3;
        JunctionKind over = edge.junction();
        String body = Sample.yaml()
                .replace("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: " + board + " m")
                .replace(WALLS, over == JunctionKind.INTERMEDIATE_FLOOR ? UPPER_FLOOR : WALLS)
                .replace("body:\n", over == JunctionKind.EAVES ? PITCHED : "body:\n")
                .replace(FLAT, over == JunctionKind.EAVES ? GABLE : FLAT);
        double sill = 1;
        if (at == JunctionKind.SILL) {
            sill = clear;
        } else if (at == JunctionKind.HEAD) {
            double top = over == JunctionKind.EAVES ? underEaves(body) : UNDER_FLOOR;
            sill = (over == JunctionKind.FLAT_ROOF_EDGE ? UNDER_ROOF : top) - LENGTH - clear;
        }
        String yaml = body.replace(
                "junctions:\n",
                "openings:\n  one: {kind: window, surface: ground floor south wall, width: 1.5 m, height: 1.5 m, left: "
                        + left + " m, sill: " + sill + " m, transmittance: 0.9 W/(m²·K)}\n" + "junctions:\n"
                        + chosen(opening) + chosen(edge));
        House house = Sample.house(yaml);
        BridgeComputer made = Sample.computer();
        BridgeComputer computer = Sample.computer(
                (each, setup) -> each.id().equals(opening.id()) || each.id().equals(edge.id())
                        ? IN_EARNEST.compute(each, setup)
                        : made.compute(each, setup));
        return new Auditor(
                        new Catalogue(Sample.good()
                                .collect(Sample.Made::detail)
                                .newWith(opening)
                                .newWith(edge)),
                        work -> new Auditor.Solving(computer, Optional.empty(), Optional.of(pairs)),
                        false,
                        "test")
                .audit(house, ShellBuilder.build(house), Digests.of("digest"), Progress.SILENT);
    }

    /** m, from the floor to where the slope meets the wall indoors. */
    private static double underEaves(String yaml) {
        return ShellBuilder.build(Sample.house(yaml))
                .surfaces()
                .detect(surface -> surface.name().equals("ground floor south wall"))
                .innerOutline()
                .collectDouble(Point3::z)
                .max();
    }

    private static String chosen(Detail detail) {
        return "- {kinds: [" + detail.kind().label() + "], detail: " + detail.id() + "}\n";
    }

    /** A seam's section with the wall that both share running to the left from x = 0, its inner face at y = 0 and outdoors above. */
    private static Section alongTheWall(JunctionResult alone) {
        KindForm form = alone.setup().kind().form();
        Chart chart = Chart.of(form, alone.setup().angle());
        boolean first =
                form.second() != KindForm.Second.SURFACE || alone.setup().kind() == JunctionKind.OUTSIDE_CORNER;
        UnaryOperator<Point> turned = at -> new Point(-chart.along(first, at), chart.across(first, at));
        Section section = alone.solution().section();
        return new Section(
                section.name(),
                section.symmetry(),
                section.regions()
                        .collect(each -> new Region(
                                each.material(),
                                each.conductivity(),
                                new Polygon(each.outline().corners().collect(turned::apply)))),
                section.environments(),
                section.boundaries()
                        .collect(each -> new Boundary(
                                each.environment(), each.path().collect(turned::apply), each.surfaceResistance())),
                Lists.immutable.empty());
    }

    /** Both joined where the wall is cut, the edge turned over so that its wall runs to the right. */
    private static Section joined(Section edge, Section opening, double ofEdge, double ofOpening) {
        MutableList<Region> regions = Lists.mutable.empty();
        MutableList<Boundary> boundaries = Lists.mutable.empty();
        for (Section each : new Section[] {edge, opening}) {
            double cut = each == opening ? ofOpening : ofEdge;
            UnaryOperator<Point> place =
                    each == opening ? at -> at : at -> new Point(-at.x() - ofEdge - ofOpening, at.y());
            for (Region region : each.regions()) {
                ImmutableList<Point> kept = TwoJambsTest.clip(region.outline().corners(), true, -cut);
                if (kept.size() > 2) {
                    regions.add(new Region(
                            region.material(), region.conductivity(), new Polygon(kept.collect(place::apply))));
                }
            }
            for (Boundary boundary : each.boundaries()) {
                ImmutableList<Point> kept = TwoJambsTest.clip(boundary.path(), false, -cut);
                if (kept.size() > 1) {
                    boundaries.add(new Boundary(
                            boundary.environment(),
                            kept.collect(place::apply),
                            OptionalDouble.of(boundary.surfaceResistance()
                                    .orElseGet(() -> each.environments()
                                            .detect(one -> one.name().equals(boundary.environment()))
                                            .surfaceResistance()))));
                }
            }
        }
        return new Section(
                "a window beside an edge",
                opening.symmetry(),
                regions.toImmutable(),
                opening.environments(),
                boundaries.toImmutable(),
                Lists.immutable.empty());
    }
}
