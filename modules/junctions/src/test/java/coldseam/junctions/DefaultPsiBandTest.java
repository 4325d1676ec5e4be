package coldseam.junctions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.ground.GroundFloor;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.DefaultPsi;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The default psi table of ISO 14683 (2007 table A.2, 2017 annex C; from memory, rounded to 0.05 in the table itself)
 * against its simplified geometries, rebuilt.
 *
 * <p>The standard's drawings were not at hand, so this is a band and no proof: an independent reproduction found table minus
 * computed between -0.01 and +0.16 W/(m·K), since the table is rounded and on the safe side. C3 stays out (as remembered it
 * lies below its own computed value). Floors on ground are not reproduced: their drawing is not known well enough.
 *
 * <p>Walls of 300 mm (100 mm of 0.04 W/(m·K), 200 mm of 0.8163; or 0.1201 throughout), slabs and inner walls 200 mm of
 * 2.0 W/(m·K), roofs with 100 mm of 0.04 on a slab: the table's parameters, from memory. That inner walls conduct like
 * slabs is an assumption of ours.
 */
@Tag("slow")
class DefaultPsiBandTest {

    /** W/(m·K): how far the table may lie above what is computed, and below. */
    private static final double ABOVE = 0.16;

    private static final double BELOW = 0.01;

    /** W/(m·K): the table's own step. */
    private static final double STEP = 0.05;

    /** W/(m·K): what an independent reproduction of corners and floors hits, in DefaultPsiTableTest. */
    private static final double REPRODUCED = 0.002;

    private static final BridgeComputer COMPUTER = Samples.ofHeat(new Accuracy(1e-3, 100_000));

    private static final String HEAD =
            "name: n\nrank: best\nlooks-like: l\norder: []\nconnections: {}\nfailures: []\nphotographs: []\n"
                    + "materials: {slab: {conductivity: 2 W/(m·K), source: table}}\n";

    private static final Assembly ROOF = Samples.assembly(
            "roof",
            Samples.layer("slab", 2.0, 200, Role.STRUCTURE),
            Samples.layer("board", 0.04, 100, Role.INSULATION));

    private static Assembly wall(DefaultPsi.WallType type) {
        return switch (type) {
            case OUTSIDE ->
                Samples.assembly(
                        "outside",
                        Samples.layer("masonry", 0.8163, 200, Role.STRUCTURE),
                        Samples.layer("board", 0.04, 100, Role.INSULATION));
            case MIDDLE ->
                Samples.assembly(
                        "middle",
                        Samples.layer("masonry", 0.8163, 100, Role.STRUCTURE),
                        Samples.layer("board", 0.04, 100, Role.INSULATION),
                        Samples.layer("outer masonry", 0.8163, 100, Role.CLADDING));
            case INSIDE ->
                Samples.assembly(
                        "inside",
                        Samples.layer("board", 0.04, 100, Role.INSULATION),
                        Samples.layer("masonry", 0.8163, 200, Role.STRUCTURE));
            case LIGHT -> Samples.assembly("light", Samples.layer("light block", 0.1201, 300, Role.STRUCTURE));
        };
    }

    private static Detail detail(DefaultPsi row, String drawing) {
        return DetailFile.read(
                row.code() + ".yaml",
                "detail: " + row.code().toLowerCase(java.util.Locale.ROOT) + "\nkind: "
                        + row.kind().label() + "\n" + HEAD + "drawing:\n" + drawing);
    }

    private static String drawing(DefaultPsi row) {
        String end = row.wall() == DefaultPsi.WallType.OUTSIDE ? "wall.structure.outside" : "wall.outside";
        return switch (row.kind().label()) {
            case "outside corner", "inside corner" -> "- band: wall\n- band: other wall\n";
            case "intermediate floor" ->
                "- band: wall\n- block: slab\n  material: slab\n  wall: [away, " + end
                        + "]\n  storey floor: [storey floor.near, storey floor.far]\n";
            case "partition" ->
                "- band: wall\n- block: inner wall\n  material: slab\n  wall: [away, " + end
                        + "]\n  partition: [partition.near, partition.far]\n";
            default ->
                row.passes()
                        ? "- band: roof\n  ends: {structure: wall.structure.outside, insulation: wall.outside}\n"
                                + "- band: wall\n  to: roof.structure.inside\n"
                                + "  ends: {insulation: roof.insulation.inside}\n"
                        : "- band: roof\n  ends: {structure: wall.outside, insulation: wall.outside}\n"
                                + "- band: wall\n  to: roof.structure.inside\n";
        };
    }

    private static JunctionResult compute(DefaultPsi row) {
        return compute(row, drawing(row));
    }

    private static JunctionResult compute(DefaultPsi row, String drawing) {
        JunctionSetup sample = Samples.setup(row.kind());
        boolean roof = row.kind() == JunctionKind.FLAT_ROOF_EDGE;
        return COMPUTER.compute(
                detail(row, drawing),
                new JunctionSetup(
                        row.kind(),
                        roof ? ROOF : wall(row.wall()),
                        sample.second().isPresent() ? Optional.of(wall(row.wall())) : Optional.empty(),
                        sample.angle(),
                        sample.firstExposure(),
                        sample.secondExposure(),
                        Optional.empty(),
                        0.2,
                        0,
                        Optional.empty(),
                        20,
                        0));
    }

    private static DefaultPsi row(String code) {
        return DefaultPsi.rows()
                .detectOptional(each -> each.code().equals(code))
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"R9", "C1", "C2", "C4", "C5", "IF1", "IF2", "IF3", "IF4", "IW1", "IW2", "IW3"})
    void computedLiesInTheTablesBand(String code) {
        DefaultPsi row = row(code);
        JunctionResult result = compute(row);
        inBand(code + " external", row.external(), result.psiExternal(), BELOW);
        inBand(code + " internal", row.internal(), result.psiInternal(), BELOW);
    }

    /**
     * R1 comes out 0.014 (external) and 0.026 W/(m·K) (internal) above the table, R4 0.017 above (external) and 0.011 below
     * (internal): outside the band, whose lower end was found on corners and floors alone, but what rounding to the nearest
     * 0.05 leaves, and no more. No drawing could hit both columns of a row: internal less external psi is the sum of U times
     * the difference of lengths whatever is drawn, 0.212 for R1, where the table has 0.20, and 0.222 for R4, where it has
     * 0.25.
     */
    @ParameterizedTest
    @CsvSource({"R1", "R4"})
    void roofsWithTheSlabRunOutComeWithinTheTablesRounding(String code) {
        DefaultPsi row = row(code);
        JunctionResult result = compute(row);
        double tolerance = STEP / 2 + REPRODUCED;
        assertEquals(row.external(), result.psiExternal().middle(), tolerance, code + " external");
        assertEquals(row.internal(), result.psiInternal().middle(), tolerance, code + " internal");
    }

    /**
     * That slab and boards reach the face is no fit but what is left over: of the ways in which a slab can break the wall's
     * boards every other one lies more than a step from the table.
     */
    @ParameterizedTest
    @CsvSource({
        "wall.outside, wall.structure.outside",
        "wall.outside, wall.inside",
        "wall.structure.outside, wall.structure.outside",
        "wall.structure.outside, wall.outside",
    })
    void otherReadingsOfTheRoofLieFarFromTheTable(String slab, String boards) {
        DefaultPsi row = row("R1");
        JunctionResult result = compute(
                row,
                "- band: roof\n  ends: {structure: " + slab + ", insulation: " + boards + "}\n"
                        + "- band: wall\n  to: roof.structure.inside\n");
        assertTrue(Math.abs(result.psiExternal().middle() - row.external()) > STEP, result.psiExternal()::toString);
        assertTrue(Math.abs(result.psiInternal().middle() - row.internal()) > STEP, result.psiInternal()::toString);
    }

    /**
     * What is known of the floors on ground (walls of 300 mm and U 0.343, slab 200 mm and ground of 2.0 W/(m·K)) says only this:
     * internal less external psi, 0.15 in GF1 and GF2 to within two roundings of 0.025, is U of the wall times the floor's
     * thickness and U of the floor times the wall's. So the floor is insulated (2.5 m²·K/W, as walls and roofs are). Where its
     * boards lie, where the ground ends and what the wall stands on is not known; psi runs from -0.17 to 0.59 with them, and
     * is not tested.
     */
    @Test
    void floorsOnGroundAreInsulatedInTheTable() {
        assertEquals(0.15, row("GF1").internal() - row("GF1").external(), 1e-12);
        assertEquals(0.15, row("GF2").internal() - row("GF2").external(), 1e-12);
        assertEquals(0.15, difference(0.1 / 0.04, 0.1), STEP);
        assertTrue(difference(0, 0) > 0.15 + STEP, "without boards");
    }

    /** Internal less external psi, W/(m·K), of a wall of 300 mm on a floor 8 m wide with so much insulation. */
    private static double difference(double insulation, double thickness) {
        double slab = 0.2;
        double wallTransmittance = 1 / (0.13 + 0.2 / 0.8163 + 0.1 / 0.04 + 0.04);
        GroundFloor strip = new GroundFloor(4, 1, 0.3, 2.0);
        double floorTransmittance = SlabOnGround.of(strip, slab / 2.0 + insulation, Lists.immutable.empty())
                .transmittance();
        return wallTransmittance * (slab + thickness) + floorTransmittance * 0.3;
    }

    private static void inBand(String what, double table, Interval computed, double below) {
        assertTrue(
                table - ABOVE <= computed.upper() && computed.lower() <= table + below,
                what + ": table " + table + ", computed " + computed);
    }

    /** The rows shown beside a computed junction are those of the same kind, wall and pen line. */
    @Test
    void rowsStandBesideTheirOwnGeometries() {
        for (String code : new String[] {"R1", "R9", "C1", "C2", "IF1", "IF2", "IF3"}) {
            assertEquals(Optional.of(row(code)), NearestDefaultPsi.of(compute(row(code))), code);
        }
    }
}
