package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.InputUncertainty;
import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An input's effect, against the same house computed with that input changed. */
@Tag("slow")
class InputUncertaintyTest {

    private static final Path BOX = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");

    private static final double STEP = 0.02;

    @TempDir
    Path folder;

    private Audit audit(String material, double conductivity, double factor) throws IOException {
        Path file = folder.resolve("box" + factor + material.replace(' ', '-') + ".yaml");
        Files.writeString(
                file,
                Files.readString(BOX)
                        .replace(
                                "assemblies:\n",
                                "materials:\n  " + material + ": {conductivity: " + conductivity * factor
                                        + " W/(m·K), within: 20 %, source: made up}\nassemblies:\n"));
        return HouseAudit.of(file, new BuiltInWorkshop()).compute();
    }

    private void follows(String material, double conductivity, double most) throws IOException {
        double more = audit(material, conductivity, 1 + STEP).heatLoss().total().middle();
        double less = audit(material, conductivity, 1 - STEP).heatLoss().total().middle();
        InputUncertainty inputs = InputUncertainty.of(audit(material, conductivity, 1));
        InputUncertainty.Input input =
                inputs.inputs().detect(each -> each.material().equals(material));
        assertTrue(input.given());
        assertEquals(0.2, input.within());
        assertEquals((more - less) / (2 * STEP), input.effect() / input.within(), most);
    }

    /** Corners, which are left out, are 0.06 W/K of the house: they follow by less than that. */
    @Test
    void anEffectIsWhatChangingTheInputDoes() throws IOException {
        follows("mineral wool board", 0.035, 0.1);
    }

    /** The floor's U by ISO 13370 and its edges' sections share the ground's flow. */
    @Test
    void soItIsInTheGround() throws IOException {
        follows("extruded polystyrene board", 0.035, 0.1);
    }
}
