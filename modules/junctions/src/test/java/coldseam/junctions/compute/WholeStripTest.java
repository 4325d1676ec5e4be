package coldseam.junctions.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.ground.GroundFloor;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body.EdgeInsulation;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A slab on the ground that is long against its width: floor and two edges, each with its psi, lose what the house's whole cross-section
 * loses, which is drawn here from coordinates and solved as one.
 *
 * <p>That U·A + psi·P is to be the whole's coupling is ISO 10211:2017 clause 12.4 (from memory); the numbers are worked out apart.
 */
@Tag("slow")
class WholeStripTest {

    private static final Accuracy ACCURACY = new Accuracy(5e-5, 400_000);

    private static final BridgeComputer COMPUTER = Samples.ofHeat(ACCURACY);
    private static final double GROUND = 2.0;
    private static final double HEIGHT = 2;
    private static final double PLINTH = 0.15;

    /** m above the floor's top: the board made for the ground stands 300 mm above that. */
    private static final double SPLASH = 0.3 - PLINTH;

    /** m, that the board's coat reaches into the ground, where no edge insulation stands in its place. */
    private static final double COAT = 0.05;

    /** m: plaster, brick, board, render. */
    private static final double WALL = 0.015 + 0.24 + 0.2 + 0.01;

    /** m: concrete, board. */
    private static final double FLOOR = 0.15 + 0.16;

    private static final Assembly WALL_BUILD = Samples.assembly(
            "wall",
            Samples.layer("plaster", 0.57, 15, Role.FINISH),
            Samples.layer("brick", 0.8, 240, Role.STRUCTURE),
            Samples.layer("wall board", 0.035, 200, Role.INSULATION),
            Samples.layer("render", 1.0, 10, Role.CLADDING));

    // Its conductivity is that of the board that stands at the edge, where rain splashes up.
    private static final Assembly FLOOR_BUILD = Samples.assembly(
            "floor",
            Samples.layer("concrete", 2.3, 150, Role.STRUCTURE),
            Samples.layer("floor board", 0.035, 160, Role.INSULATION));

    private static final EdgeInsulation DOWN =
            new EdgeInsulation(true, 0.6, 0.1, Samples.material("edge board", 0.035));
    private static final EdgeInsulation FLAT =
            new EdgeInsulation(false, 1, 0.08, Samples.material("edge board", 0.035));

    @ParameterizedTest
    @CsvSource({
        "5.6, none",
        "5.6, down",
        "5.6, flat",
        "8, none",
        "8, down",
        "8, flat",
        "14, none",
        "14, down",
        "14, flat"
    })
    void floorAndEdgesLoseWhatTheWholeDoes(double width, String insulated) {
        Optional<EdgeInsulation> edge = edge(insulated);
        JunctionResult result = half(width, edge);
        double floor = SlabOnGround.of(
                        new GroundFloor(width, 2, WALL, GROUND), 0.15 / 2.3 + 0.16 / 0.035, Lists.immutable.empty())
                .transmittance();
        double wall = 1 / (0.13 + 0.015 / 0.57 + 0.24 / 0.8 + 0.2 / 0.035 + 0.01 / 1.0 + 0.04);
        Interval whole = whole(width, edge);
        Interval external = result.psiExternal().times(2).plus(floor * width + 2 * wall * (HEIGHT + FLOOR));
        Interval internal = result.psiInternal().times(2).plus(floor * (width - 2 * WALL) + 2 * wall * HEIGHT);
        // Two intervals of one number overlap; the least width asked for is some 1e-4 W/(m·K).
        assertOverlap(whole, external);
        assertOverlap(whole, internal);
        assertEquals(width / 2, result.legs().getFirst().externalLength(), 1e-9);
        assertTrue(whole.width() < 3e-4 && external.width() < 3e-4, whole + " " + external);
    }

    @ParameterizedTest
    @CsvSource({"down, 0.010", "flat, 0.002"})
    void edgeInsulationIsDrawnAndSaves(String insulated, double least) {
        double bare = half(8, Optional.empty()).psiExternal().lower();
        assertTrue(half(8, edge(insulated)).psiExternal().upper() < bare - least);
    }

    private static Optional<EdgeInsulation> edge(String insulated) {
        return switch (insulated) {
            case "down" -> Optional.of(DOWN);
            case "flat" -> Optional.of(FLAT);
            default -> Optional.empty();
        };
    }

    private static void assertOverlap(Interval a, Interval b) {
        assertTrue(a.lower() <= b.upper() && b.lower() <= a.upper(), a + " against " + b);
    }

    private static JunctionResult half(double width, Optional<EdgeInsulation> edge) {
        JunctionSetup sample = Samples.setup(JunctionKind.SLAB_EDGE);
        JunctionSetup setup = new JunctionSetup(
                sample.kind(),
                FLOOR_BUILD,
                Optional.of(WALL_BUILD),
                90,
                sample.firstExposure(),
                sample.secondExposure(),
                Optional.empty(),
                0,
                0,
                Optional.of(new JunctionSetup.GroundBlock(GROUND, width, WALL, OptionalDouble.empty(), edge)),
                20,
                -5);
        return COMPUTER.compute(CatalogueFile.builtIn().find("slab-edge-raft").orElseThrow(), setup);
    }

    /** Both edges and all between, from outer face (x = 0) to outer face (x = width); y is up from the floor's top. */
    private static Interval whole(double width, Optional<EdgeInsulation> edge) {
        double reach = 2.5 * width;
        double level = -PLINTH;
        MutableList<Region> regions = Lists.mutable.of(
                region("ground", GROUND, -reach, level - reach, width + reach, level),
                region("concrete", 2.3, 0.21, -0.15, width - 0.21, 0),
                region("floor board", 0.035, 0.01, -FLOOR, width - 0.01, -0.15));
        for (boolean right : new boolean[] {false, true}) {
            regions.add(side(width, right, "edge board", 0.035, 0.01, -0.15, 0.21, SPLASH));
            regions.add(side(width, right, "render", 1.0, 0, level - COAT, 0.01, HEIGHT));
            regions.add(side(width, right, "wall board", 0.035, 0.01, SPLASH, 0.21, HEIGHT));
            regions.add(side(width, right, "brick", 0.8, 0.21, 0, 0.45, HEIGHT));
            regions.add(side(width, right, "plaster", 0.57, 0.45, 0, WALL, HEIGHT));
            edge.ifPresent(board -> regions.add(
                    board.vertical()
                            ? side(
                                    width,
                                    right,
                                    "edge",
                                    0.035,
                                    0.01 - board.thickness(),
                                    level - board.extent(),
                                    0.01,
                                    level)
                            : side(
                                    width,
                                    right,
                                    "edge",
                                    0.035,
                                    WALL,
                                    -FLOOR - board.thickness(),
                                    WALL + board.extent(),
                                    -FLOOR)));
        }
        Section section = new Section(
                "whole",
                Symmetry.PLANAR,
                regions.toImmutable(),
                Lists.immutable.of(new Environment("indoor", 20, 0.13), new Environment("outdoor", -5, 0.04)),
                boundaries(width, reach, level),
                Lists.immutable.empty());
        return Conduction.solve(section, ACCURACY).coupling("indoor", "outdoor");
    }

    private static ImmutableList<Boundary> boundaries(double width, double reach, double level) {
        return Lists.immutable.of(
                boundary("indoor", 0.13, new Point(WALL, HEIGHT), new Point(WALL, 0)),
                boundary("indoor", 0.17, new Point(WALL, 0), new Point(width - WALL, 0)),
                boundary("indoor", 0.13, new Point(width - WALL, 0), new Point(width - WALL, HEIGHT)),
                boundary("outdoor", 0.04, new Point(0, HEIGHT), new Point(0, level), new Point(-reach, level)),
                boundary(
                        "outdoor",
                        0.04,
                        new Point(width, HEIGHT),
                        new Point(width, level),
                        new Point(width + reach, level)));
    }

    private static Boundary boundary(String environment, double resistance, Point... path) {
        return new Boundary(environment, Lists.immutable.with(path), OptionalDouble.of(resistance));
    }

    private static Region side(
            double width, boolean right, String name, double k, double x0, double y0, double x1, double y1) {
        return right ? region(name, k, width - x1, y0, width - x0, y1) : region(name, k, x0, y0, x1, y1);
    }

    private static Region region(String name, double k, double x0, double y0, double x1, double y1) {
        return new Region(
                name,
                k,
                new Polygon(Lists.immutable.of(
                        new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1))));
    }
}
