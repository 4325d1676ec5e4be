package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
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
import coldseam.envelope.shell.ShellBuilder;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A window's jamb beside the corner of its house, each computed alone as an audit does, against both in one section drawn here and
 * solved as one: where the house says nothing of them, they are out by less than what may go untold; where it says that they touch,
 * by less than what it says.
 */
class JambBesideCornerTest {

    private static final Accuracy ACCURACY = new Accuracy(5e-4, 200_000);
    /** m, of the walls but for their boards. */
    private static final double THICKNESS = 0.265;

    private static final double HEIGHT = 1.5;

    @ParameterizedTest
    @CsvSource({
        "jamb-middle-lapped, outside-corner-unbroken, 60, 100",
        "jamb-middle-lapped, outside-corner-unbroken, 200, 100",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 50",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 150",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 400",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 60, 800",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 50",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 150",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 400",
        "jamb-inner-bare-reveal, outside-corner-unbroken, 200, 800"
    })
    void theTrueLossIsWhatIsSaid(String jambDetail, String cornerDetail, int board, int inside) {
        double clear = inside / 1000.0;
        Audit audit = audit(jambDetail, cornerDetail, board, clear + THICKNESS + board / 1000.0);
        JunctionResult jamb = alone(audit, JunctionKind.JAMB);
        JunctionResult corner = alone(audit, JunctionKind.OUTSIDE_CORNER);
        double wall = jamb.legs().getFirst().transmittance();
        Section left = corner.solution().section();
        Section right = jamb.solution().section();
        double cut = clear / 2;
        Interval truth = Conduction.solve(joined(left, right, cut), ACCURACY).coupling("indoor", "outdoor");
        double said = corner.coupling().middle()
                + jamb.coupling().middle()
                - wall * (-lowest(left) - cut - lowest(right) - cut);
        double off = truth.middle() - said;
        Unknown unknown = Unknown.of(audit);
        double width =
                truth.width() + corner.coupling().width() + jamb.coupling().width();
        if (unknown.touching().isEmpty()) {
            assertTrue(Math.abs(off) < Touching.LIMIT + width, off + " untold");
        } else {
            assertTrue(-off < unknown.below() / HEIGHT + width, off + " of " + unknown.below() / HEIGHT);
        }
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

    /** @param distance m, from the outer corner to the window */
    private static Audit audit(String jambDetail, String cornerDetail, int board, double distance) {
        Detail jamb = CatalogueFile.builtIn().find(jambDetail).orElseThrow();
        Detail corner = CatalogueFile.builtIn().find(cornerDetail).orElseThrow();
        String yaml = Sample.yaml()
                .replace("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: " + board + " mm")
                .replace("corner-good", cornerDetail)
                .replace(
                        "junctions:\n",
                        "openings:\n  one: {kind: window, surface: ground floor south wall, width: 1 m, height: 1.5 m, left: "
                                + distance + " m, sill: 1 m, transmittance: 0.9 W/(m²·K)}\n"
                                + "junctions:\n- {kinds: [jamb], detail: " + jambDetail + "}\n");
        House house = Sample.house(yaml);
        BridgeComputer inEarnest = BridgeComputers.computer(ACCURACY);
        BridgeComputer made = Sample.computer();
        BridgeComputer computer = Sample.computer(
                (each, setup) -> each.kind() == JunctionKind.JAMB || each.kind() == JunctionKind.OUTSIDE_CORNER
                        ? inEarnest.compute(each, setup)
                        : made.compute(each, setup));
        return new Auditor(
                        new Catalogue(Sample.good()
                                .reject(each -> each.id().equals("corner-good"))
                                .collect(Sample.Made::detail)
                                .newWith(jamb)
                                .newWith(corner)),
                        work -> new Auditor.Solving(computer, Optional.empty()),
                        false,
                        "test")
                .audit(house, ShellBuilder.build(house), "digest", Progress.SILENT);
    }

    /**
     * The corner's section with one of its walls running to the left, turned over so that it runs to the right, and the jamb's,
     * whose wall runs to the left, joined where both walls are cut.
     */
    private static Section joined(Section corner, Section jamb, double cut) {
        MutableList<Region> regions = Lists.mutable.empty();
        MutableList<Boundary> boundaries = Lists.mutable.empty();
        for (Section each : new Section[] {corner, jamb}) {
            UnaryOperator<Point> place = each == jamb ? at -> at : at -> new Point(-at.x() - 2 * cut, at.y());
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
                            boundary.environment(), kept.collect(place::apply), boundary.surfaceResistance()));
                }
            }
        }
        return new Section(
                "a jamb beside a corner",
                jamb.symmetry(),
                regions.toImmutable(),
                jamb.environments(),
                boundaries.toImmutable(),
                Lists.immutable.empty());
    }
}
