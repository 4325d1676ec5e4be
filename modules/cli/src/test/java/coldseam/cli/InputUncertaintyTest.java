package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.engine.InputUncertainty;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An input's effect, against the same house computed with that input changed. */
@Tag("slow")
class InputUncertaintyTest {

    private static final Path BOX = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");

    private static final double STEP = 0.02;

    /** W/K: some ten lines rounded to thousandths over a difference of 0.04 in ln k, and the middles of intervals. */
    private static final double ROUNDING = 0.03;

    @TempDir
    Path folder;

    private Workshop workshop = Bench.OF_HEAT;

    private Audit audit(Path house, String material, double conductivity, double factor) throws IOException {
        Path file = folder.resolve("house" + factor + material.replace(' ', '-') + ".yaml");
        Files.writeString(
                file,
                Files.readString(house)
                        .replace(
                                "assemblies:\n",
                                "materials:\n  " + material + ": {conductivity: " + conductivity * factor
                                        + " W/(m·K), within: 20 %, source: made up}\nassemblies:\n"));
        return HouseAudit.of(file, workshop).compute();
    }

    private void follows(Path house, String material, double conductivity, double most) throws IOException {
        double more = audit(house, material, conductivity, 1 + STEP)
                .heatLoss()
                .total()
                .middle();
        double less = audit(house, material, conductivity, 1 - STEP)
                .heatLoss()
                .total()
                .middle();
        InputUncertainty inputs = InputUncertainty.of(audit(house, material, conductivity, 1));
        InputUncertainty.Input input =
                inputs.inputs().detect(each -> each.material().equals(material));
        assertTrue(input.given());
        assertEquals(0.2, input.within());
        // Lines rounded to thousandths of a W/K over a difference of 0.04 in ln k, some ten of them; and the middles of
        // intervals.
        assertEquals((more - less) / (2 * STEP), input.effect() / input.within(), most);
    }

    /** Under a bare parapet, a corner's chi follows the concrete by a tenth of a W/K and more. */
    @Test
    void cornersTakePart() throws IOException {
        Path house = folder.resolve("bare.yaml");
        Files.writeString(house, Files.readString(BOX).replace("parapet-on-break-blocks", "parapet-bare"));
        follows(house, "reinforced concrete", 2.3, ROUNDING);
    }

    @Test
    void anEffectIsWhatChangingTheInputDoes() throws IOException {
        follows(BOX, "mineral wool board", 0.035, ROUNDING);
    }

    /** The floor's U by ISO 13370 and its edges' sections share the ground's flow. */
    @Test
    void soItIsInTheGround() throws IOException {
        follows(BOX, "extruded polystyrene board", 0.035, ROUNDING);
    }

    /**
     * Sections beside a garage: psi has its factor once, the fields' energies twice, and where open air is beside it the excess of
     * the seam keeps that of the field: 0.4 % of the whole.
     */
    @Test
    void soItIsBesideUnheatedSpaces() throws IOException {
        follows(
                CommittedReport.ROOT.resolve("fixtures/houses/shapes/over-the-garage.yaml"),
                "mineral wool board",
                0.035,
                0.15);
    }

    private double total(String name, String yaml) throws IOException {
        Path file = folder.resolve(name + ".yaml");
        Files.writeString(file, yaml);
        return HouseAudit.of(file, workshop).compute().heatLoss().total().middle();
    }

    private double slope(String name, String yaml) throws IOException {
        Path file = folder.resolve("as-it-is.yaml");
        Files.writeString(file, yaml);
        InputUncertainty.Input input = InputUncertainty.of(
                        HouseAudit.of(file, workshop).compute())
                .inputs()
                .detect(each -> each.material().equals(name));
        return input.effect() / input.within();
    }

    @Test
    void theGroundsConductivityIsAnInput() throws IOException {
        String box = Files.readString(BOX);
        double moved = (total("wet", ground(box, 1 + STEP)) - total("dry", ground(box, 1 - STEP))) / (2 * STEP);
        // Corners on the ground, which are left out, follow by less than a tenth of this.
        assertEquals(moved, slope("the ground", box), 0.1 * Math.abs(moved));
        assertTrue(Math.abs(moved) > 0.5, "it is one that somebody sees: " + moved);
    }

    /** A foundation wall's head and a stepped footing are drawn in outdoor air: the ground moves the floors alone. */
    @Test
    void theGroundMovesNoSeamThatIsDrawnWithoutIt() throws IOException {
        workshop = Bench.SHARED;
        String house = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/shapes/part-cellar.yaml"));
        String wet = house.replace("clay or silt", "{name: clay, conductivity: " + 1.5 * (1 + STEP) + " W/(m·K)}");
        String dry = house.replace("clay or silt", "{name: clay, conductivity: " + 1.5 * (1 - STEP) + " W/(m·K)}");
        double moved = (total("wet", wet) - total("dry", dry)) / (2 * STEP);
        assertEquals(moved, slope("the ground", house), 0.1 * Math.abs(moved));
    }

    /**
     * A screw's chi is a concave function of its conductivity that vanishes at the board's, so its slope by the logarithm is at
     * most chi itself, and a five-hundredth for the board's share. Posts are bodies of boxes, and their steel counts, too.
     */
    @Test
    void pointsCountTheirSteel() throws IOException {
        Path file = folder.resolve("points.yaml");
        Files.writeString(
                file,
                Files.readString(BOX)
                        .replace(
                                "junctions:\n",
                                "points:\n  posts: {surface: roof, detail: steel-post-through, number: 40}\n"
                                        + "  screws: {surface: room south wall, detail: fastener-stainless-steel, number: 400}\n"
                                        + "junctions:\n"));
        Audit audit = HouseAudit.of(file, workshop).compute();
        ImmutableMap<String, Double> slopes = InputUncertainty.of(audit)
                .inputs()
                .toImmutableMap(InputUncertainty.Input::material, input -> input.effect() / input.within());
        double chi = audit.points()
                .detect(row -> row.name().equals("screws"))
                .transmittance()
                .upper();
        double screws = slopes.getOrDefault("stainless steel", 0.0);
        assertTrue(screws > 0.1 * 400 * chi && screws <= 1.002 * 400 * chi, screws + " of " + 400 * chi);
        assertTrue(slopes.getOrDefault("steel", 0.0) > 0.01, slopes::toString);
    }

    private static String ground(String box, double factor) {
        return box.replace(
                "ground: sand or gravel", "ground: {name: clay, conductivity: " + 2.0 * factor + " W/(m·K)}");
    }

    private static String window(double whole, double frame) throws IOException {
        return Files.readString(BOX)
                .replace(
                        "junctions:\n",
                        "openings:\n  one: {kind: window, surface: room south wall, width: 2 m, height: 1.5 m, sill: 0.9 m,"
                                + " left: 1 m, transmittance: " + whole + " W/(m²·K), frame-transmittance: " + frame
                                + " W/(m²·K)}\n"
                                + "junctions:\n- {kinds: [head], detail: head-middle-lapped}\n"
                                + "- {kinds: [jamb], detail: jamb-middle-lapped}\n"
                                + "- {kinds: [sill], detail: sill-middle-on-board}\n");
    }

    @Test
    void windowsAndTheirFramesAreInputs() throws IOException {
        double windows =
                (total("more", window(0.9 * (1 + STEP), 1)) - total("less", window(0.9 * (1 - STEP), 1))) / (2 * STEP);
        assertEquals(windows, slope("windows and doors, their declared U", window(0.9, 1)), 1e-3);
        double frames = (total("warm", window(0.9, 1 + STEP)) - total("cold", window(0.9, 1 - STEP))) / (2 * STEP);
        // The table rounds three lines of seams to thousandths of a W/K, over a difference of 0.04 in ln U.
        assertEquals(frames, slope("frames and doors' leaves", window(0.9, 1)), 1.5e-3 / (2 * STEP));
    }
}
