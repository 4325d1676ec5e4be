package coldseam.junctions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The simplified corners and floors behind the default psi table of ISO 14683, rebuilt as details.
 *
 * <p>Walls of 300 mm with 100 mm of insulation of 0.04 W/(m·K) and 200 mm of masonry of 0.8163 W/(m·K), or of 300 mm of
 * 0.1201 W/(m·K); slab 200 mm of 2.0 W/(m·K); Rsi 0.13, Rse 0.04 m²·K/W (parameters of the table from memory). The
 * reference values are an independent finite element model's, to 0.001 W/(m·K), with 1.5 m arms.
 */
class DefaultPsiTableTest {

    /** The reference's own accuracy and its shorter or longer arms. */
    private static final double TOLERANCE = 0.002;

    private static final BridgeComputer COMPUTER = Samples.ofHeat(new Accuracy(2e-4, 200_000));

    private static Assembly wall(String type) {
        return switch (type) {
            case "outside" ->
                Samples.assembly(
                        type,
                        Samples.layer("masonry", 0.8163, 200, Role.STRUCTURE),
                        Samples.layer("board", 0.04, 100, Role.INSULATION));
            case "middle" ->
                Samples.assembly(
                        type,
                        Samples.layer("masonry", 0.8163, 100, Role.STRUCTURE),
                        Samples.layer("board", 0.04, 100, Role.INSULATION),
                        Samples.layer("outer masonry", 0.8163, 100, Role.CLADDING));
            case "inside" ->
                Samples.assembly(
                        type,
                        Samples.layer("board", 0.04, 100, Role.INSULATION),
                        Samples.layer("masonry", 0.8163, 200, Role.STRUCTURE));
            default -> Samples.assembly(type, Samples.layer("light block", 0.1201, 300, Role.STRUCTURE));
        };
    }

    private static final String HEAD =
            "name: n\nrank: best\nlooks-like: l\norder: []\nconnections: {}\nfailures: []\nphotographs: []\n";

    private static final Detail CORNER = DetailFile.read(
            "corner.yaml",
            "detail: corner\nkind: outside corner\n" + HEAD + "drawing:\n- band: wall\n- band: other wall\n");

    private static Detail floor(String end) {
        return DetailFile.read(
                "floor.yaml",
                "detail: floor\nkind: intermediate floor\n" + HEAD
                        + "materials: {slab: {conductivity: 2 W/(m·K), source: table}}\n"
                        + "drawing:\n- band: wall\n- block: slab\n  material: slab\n  wall: [away, " + end
                        + "]\n  storey floor: [storey floor.near, storey floor.far]\n");
    }

    private static JunctionResult compute(Detail detail, JunctionKind kind, Assembly wall) {
        JunctionSetup sample = Samples.setup(kind);
        return COMPUTER.compute(
                detail,
                new JunctionSetup(
                        kind,
                        wall,
                        kind == JunctionKind.OUTSIDE_CORNER ? Optional.of(wall) : Optional.empty(),
                        90,
                        sample.firstExposure(),
                        sample.secondExposure(),
                        Optional.empty(),
                        kind == JunctionKind.INTERMEDIATE_FLOOR ? 0.2 : 0,
                        0,
                        Optional.empty(),
                        20,
                        0));
    }

    @ParameterizedTest
    @CsvSource({
        "outside, 0.1236, -0.0822",
        "middle, 0.0756, -0.1302",
        "inside, 0.0221, -0.1837",
        "light, 0.0583, -0.1667",
    })
    void cornersHitTheIndependentValues(String type, double internal, double external) {
        JunctionResult result = compute(CORNER, JunctionKind.OUTSIDE_CORNER, wall(type));
        assertEquals(internal, result.psiInternal().middle(), TOLERANCE);
        assertEquals(external, result.psiExternal().middle(), TOLERANCE);
        assertTrue(result.solution().met());
    }

    @ParameterizedTest
    @CsvSource({
        "outside, wall.structure.outside, 0.0064",
        "middle, wall.outside, 0.8583",
        "inside, wall.outside, 0.7934",
        "light, wall.outside, 0.6794",
    })
    void floorsHitTheIndependentValues(String type, String end, double external) {
        JunctionResult result = compute(floor(end), JunctionKind.INTERMEDIATE_FLOOR, wall(type));
        assertEquals(external, result.psiExternal().middle(), TOLERANCE);
        // Internal floors count in both dimension systems here (overall internal dimensions).
        assertEquals(result.psiExternal(), result.psiInternal());
    }
}
