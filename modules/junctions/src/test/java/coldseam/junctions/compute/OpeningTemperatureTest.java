package coldseam.junctions.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Probe;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Role;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The coldest place at an opening is one of the wall, not the frame: ISO 13788:2012 clause 4.4.1 (from memory). */
class OpeningTemperatureTest {

    private static final BridgeComputer COMPUTER = BridgeComputers.computer(new Accuracy(1e-4, 400_000));
    private static final double DEPTH = 0.08;

    private static final Assembly WALL = Samples.assembly(
            "wall",
            Samples.layer("brick", 0.8, 240, Role.STRUCTURE),
            Samples.layer("board", 0.035, 160, Role.INSULATION));

    private static final Detail PLAIN = DetailFile.read(
            "plain.yaml",
            "detail: plain\nkind: jamb\nname: n\nrank: best\nlooks-like: l\norder: []\nconnections: {}\nfailures: []\n"
                    + "photographs: []\ndrawing:\n- band: wall\n- frame: wall.structure.outside\n");

    private static JunctionSetup jamb(double frameTransmittance) {
        JunctionSetup sample = Samples.setup(JunctionKind.JAMB);
        return new JunctionSetup(
                sample.kind(),
                WALL,
                Optional.empty(),
                90,
                sample.firstExposure(),
                sample.secondExposure(),
                Optional.of(new Opening(
                        "window",
                        Opening.Kind.WINDOW,
                        "wall",
                        1,
                        1,
                        OptionalDouble.empty(),
                        1,
                        new Opening.Declared(frameTransmittance, frameTransmittance),
                        DEPTH,
                        OptionalDouble.empty())),
                0,
                0,
                Optional.empty(),
                20,
                0);
    }

    /** A frame flush with the brick's outer face, drawn from coordinates: x along the wall, y outwards; probed at the joint. */
    @ParameterizedTest
    @ValueSource(doubles = {0.8, 1.6, 2.6})
    void theJointOfWallAndFrameIsReadWithTheResistancesOfBoth(double frameTransmittance) {
        JunctionResult result = COMPUTER.compute(PLAIN, jamb(frameTransmittance));
        double joint = byHand(frameTransmittance) / 20;
        // Two solutions, each aimed at or refined to some hundredth of a kelvin of 20 K.
        assertEquals(joint, result.temperatureFactor(), 0.002);
    }

    private static double byHand(double frameTransmittance) {
        double conductivity = DEPTH / (1 / frameTransmittance - 0.13 - 0.04);
        double in = 0.24 - DEPTH;
        Section section = new Section(
                "jamb",
                Symmetry.PLANAR,
                Lists.immutable.of(
                        region("brick", 0.8, -1.5, 0, 0, 0.24),
                        region("board", 0.035, -1.5, 0.24, 0, 0.4),
                        region("frame", conductivity, 0, in, 0.12, 0.24)),
                Lists.immutable.of(new Environment("indoor", 20, 0.13), new Environment("outdoor", 0, 0.04)),
                Lists.immutable.of(
                        boundary("indoor", 0.25, new Point(-1.5, 0), new Point(0, 0), new Point(0, in)),
                        boundary("indoor", 0.13, new Point(0, in), new Point(0.12, in)),
                        boundary(
                                "outdoor",
                                0.04,
                                new Point(-1.5, 0.4),
                                new Point(0, 0.4),
                                new Point(0, 0.24),
                                new Point(0.12, 0.24))),
                Lists.immutable.of(new Probe("joint", new Point(0, in))));
        return Conduction.solve(section, new Accuracy(1e-5, 400_000))
                .probes()
                .getFirst()
                .temperature();
    }

    private static Boundary boundary(String environment, double resistance, Point... path) {
        return new Boundary(environment, Lists.immutable.with(path), OptionalDouble.of(resistance));
    }

    private static Region region(String name, double k, double x0, double y0, double x1, double y1) {
        return new Region(
                name,
                k,
                new Polygon(Lists.immutable.of(
                        new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1))));
    }

    /** With a frame as poor as single glass, whose own face would be at 1 − 0.13·5 = 0.35. */
    @Test
    void thePoorestFrameIsNotTheWallsColdestPlace() {
        JunctionResult result = COMPUTER.compute(PLAIN, jamb(5));
        assertTrue(result.temperatureFactor() > 0.45, () -> "fRsi " + result.temperatureFactor());
    }

    @Test
    void optionsOfOneWindowDiffer() {
        JunctionSetup sample = Samples.setup(JunctionKind.JAMB);
        double worst = factor("jamb-inner-bare-reveal", sample);
        double best = factor("jamb-middle-lapped", sample);
        assertTrue(best > worst + 0.03, worst + " and " + best);
    }

    private static double factor(String id, JunctionSetup setup) {
        return COMPUTER.compute(CatalogueFile.builtIn().find(id).orElseThrow(), setup)
                .temperatureFactor();
    }
}
