package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.assemblies.HeatFlow;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.junctions.Samples;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as a wall's insulation where members bridge some of it. */
final class BridgedInsulationTest {

    private static Layer framed(String name, double millimetres, Role role, double share) {
        Layer plain = Samples.layer(name, 0.040, millimetres, role);
        return new Layer(
                plain.material(),
                plain.thickness(),
                role,
                Optional.of(new Layer.Framing(
                        Samples.layer("timber", 0.13, 1, Role.STRUCTURE).material(), share)),
                plain.air(),
                plain.taper(),
                plain.controls());
    }

    /**
     * Studs' wool never beside boards. Wool between the webs of trusses under a thin board counts, since it holds more than that; wool
     * between furring over a thick board does not.
     *
     * @param bridged mm, of wool with the role insulation that members bridge
     * @param board mm, outside it
     * @param counts mm, of all that counts as insulation
     */
    @ParameterizedTest
    @CsvSource({"240, 16, 256", "60, 100, 100", "240, 0, 380", "0, 100, 100"})
    void whatHoldsMoreCounts(double bridged, double board, double counts) {
        MutableList<Layer> layers = Lists.mutable.of(
                Samples.layer("plasterboard", 0.25, 12, Role.FINISH), framed("studs' wool", 140, Role.STRUCTURE, 0.15));
        if (bridged > 0) {
            layers.add(framed("wool", bridged, Role.INSULATION, 0.03));
        }
        if (board > 0) {
            layers.add(Samples.layer("board", 0.045, board, Role.INSULATION));
        }
        layers.add(Samples.layer("render", 1.0, 10, Role.CLADDING));
        Band band = Band.of(
                "wall",
                Samples.assembly("wall", layers.toArray(new Layer[0])),
                Exposure.outdoors(),
                HeatFlow.HORIZONTAL);
        assertEquals(counts, 1000 * band.insulationThickness(), 1e-6);
    }
}
