package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.engine.InputUncertainty;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Accuracy;
import coldseam.junctions.plan.HeatInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.tuple.Tuples;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** An input's effect, against the same house computed with that input changed. */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class InputUncertaintyTest {

    private static final Path BOX = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");

    private static final double STEP = 0.02;

    /** W/K: some ten lines rounded to thousandths over a difference of 0.04 in ln k, and the middles of intervals. */
    private static final double ROUNDING = 0.03;

    /** W/K: likewise of houses with 30 to 50 lines, each of which scatters by 0.01, so that their sum does by 0.06 to 0.07. */
    private static final double MORE_LINES = 0.15;

    /** W/K: twice what a dozen lines scatter by, each by 0.007 in the difference over 0.04. */
    private static final double TWICE = 0.05;

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
        return Bench.ofChosen(file, workshop);
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
                inputs.inputs().detect(each -> each.of().equals(new HeatInput.OfMaterial(material, conductivity)));
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

    /** Studs and what lies between them are two inputs; the boards outside are worth more than they are beside an even layer. */
    @Test
    void membersAndFastenersAreInputsOfTheirOwn() throws IOException {
        Path house = folder.resolve("framed.yaml");
        Files.writeString(
                house,
                Files.readString(BOX)
                        .replace(
                                "clay brick, thickness: 240 mm, role: structure}",
                                "mineral wool batt, thickness: 200 mm, role: structure,"
                                        + " framing: {material: softwood, share: 20 %}}")
                        .replace(
                                "board, thickness: 200 mm, role: insulation, controls: [heat]}\n    - {material: thin-coat",
                                "board, thickness: 80 mm, role: insulation, controls: [heat]}\n    - {material: thin-coat")
                        .replace(
                                "controls: [water]}\n\n  slab:",
                                "controls: [water]}\n    fasteners: {material: stainless steel, diameter: 8 mm,"
                                        + " number: 8 per m², recess: 0 mm}\n\n  slab:"));
        follows(house, "mineral wool batt", 0.035, ROUNDING);
        follows(house, "softwood", 0.13, TWICE);
        follows(house, "mineral wool board", 0.035, ROUNDING);
        follows(house, "stainless steel", 17, ROUNDING);
    }

    /** What the house's file says of a material goes also where no layer is of it: in sections, through points and at corners. */
    @Test
    void soAreThoseThatOnlyDetailsDraw() throws IOException {
        Path house = folder.resolve("pierced.yaml");
        Files.writeString(
                house,
                Files.readString(BOX)
                        + "\npoints:\n  brackets: {surface: room south wall, detail: bracket-steel, number: 20}\n");
        follows(house, "structural foam block", 0.06, ROUNDING);
        follows(house, "steel", 50, ROUNDING);
    }

    /** The floor's U by ISO 13370 and its edges' sections share the ground's flow. */
    @Test
    void soItIsInTheGround() throws IOException {
        follows(BOX, "extruded polystyrene board", 0.035, ROUNDING);
    }

    /** Sections beside a garage, some of which lose heat to open air as well. */
    @Test
    void soItIsBesideUnheatedSpaces() throws IOException {
        follows(
                CommittedReport.ROOT.resolve("fixtures/houses/shapes/over-the-garage.yaml"),
                "mineral wool board",
                0.035,
                MORE_LINES);
    }

    /** Beside a garage with half the factor, lines of the table lose half as much: the input's slope is what these lose. */
    @Test
    void unheatedSpacesAreInputsOfTheirOwn() throws IOException {
        Path house = CommittedReport.ROOT.resolve("fixtures/houses/shapes/over-the-garage.yaml");
        Path file = Files.writeString(
                folder.resolve("half.yaml"),
                Files.readString(house).replace("temperature-factor: 0.8", "temperature-factor: 0.4"));
        Audit whole = Bench.ofChosen(house, workshop);
        Audit half = Bench.ofChosen(file, workshop);
        double halved = 0;
        for (int i = 0; i < whole.heatLoss().lines().size(); i++) {
            double now = whole.heatLoss().lines().get(i).loss().middle();
            double then = half.heatLoss().lines().get(i).loss().middle();
            // Lines are rounded to thousandths, intervals outwards.
            if (now != then && Math.abs(now - 2 * then) <= 0.0035) {
                halved += now;
            }
        }
        InputUncertainty.Input garage =
                InputUncertainty.of(whole).inputs().detect(each -> each.of().equals(new HeatInput.OfSpace("garage")));
        assertEquals(InputUncertainty.USUAL, garage.within());
        assertTrue(halved > 5, () -> "beside the garage");
        // Some six lines, each rounded to a thousandth.
        assertEquals(halved, garage.effect() / garage.within(), 0.006);
    }

    /** What a neighbour loses through the wall that he shares, and through his own front, is his. */
    @Test
    void soItIsBesideNeighbours() throws IOException {
        follows(
                CommittedReport.ROOT.resolve("fixtures/houses/old/front-kept.yaml"),
                "old solid brick",
                0.81,
                MORE_LINES);
    }

    private double total(String name, String yaml) throws IOException {
        Path file = folder.resolve(name + ".yaml");
        Files.writeString(file, yaml);
        return Bench.ofChosen(file, workshop).heatLoss().total().middle();
    }

    private double slope(HeatInput of, String yaml) throws IOException {
        Path file = folder.resolve("as-it-is.yaml");
        Files.writeString(file, yaml);
        InputUncertainty.Input input = InputUncertainty.of(Bench.ofChosen(file, workshop))
                .inputs()
                .detect(each -> each.of().equals(of));
        return input.effect() / input.within();
    }

    @Test
    void theGroundsConductivityIsAnInput() throws IOException {
        String box = Files.readString(BOX);
        double moved = (total("wet", ground(box, 1 + STEP)) - total("dry", ground(box, 1 - STEP))) / (2 * STEP);
        // Corners on the ground, which are left out, follow by less than a tenth of this.
        assertEquals(moved, slope(HeatInput.Other.GROUND, box), 0.1 * Math.abs(moved));
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
        assertEquals(moved, slope(HeatInput.Other.GROUND, house), 0.1 * Math.abs(moved));
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
        Audit audit = Bench.ofChosen(file, workshop);
        ImmutableMap<HeatInput, Double> slopes = InputUncertainty.of(audit)
                .inputs()
                .toImmutableMap(InputUncertainty.Input::of, input -> input.effect() / input.within());
        double chi = audit.points()
                .detect(row -> row.name().equals("screws"))
                .transmittance()
                .upper();
        double screws = slopes.getOrDefault(new HeatInput.OfMaterial("stainless steel", 17), 0.0);
        assertTrue(screws > 0.1 * 400 * chi && screws <= 1.002 * 400 * chi, screws + " of " + 400 * chi);
        assertTrue(slopes.getOrDefault(new HeatInput.OfMaterial("steel", 50), 0.0) > 0.01, slopes::toString);
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
        assertEquals(windows, slope(HeatInput.Other.OPENINGS, window(0.9, 1)), 1e-3);
        double frames = (total("warm", window(0.9, 1 + STEP)) - total("cold", window(0.9, 1 - STEP))) / (2 * STEP);
        // The table rounds three lines of seams to thousandths of a W/K, over a difference of 0.04 in ln U.
        assertEquals(frames, slope(HeatInput.Other.FRAMES, window(0.9, 1)), 1.5e-3 / (2 * STEP));
    }

    /**
     * Names are for people: whatever materials and blocks are called, each slope is as large. Two boards bear the names of inputs
     * that are no materials, one that of the soil in points' sections, and two blocks that of a wall's layer.
     */
    @Test
    void whatThingsAreCalledMovesNoSlope() throws IOException {
        // Both are solved alike, however widely.
        workshop = new Bench(new Accuracy(0.03, 100_000), new Accuracy(0.1, 100_000), 100);
        ImmutableMap<HeatInput, Double> plain = effects("wall board", "roof board", "slab board", "row", "upstand");
        ImmutableMap<HeatInput, Double> alike =
                effects("the ground", "ground", "edges of glass", "wall: thin-coat render", "wall: thin-coat render");
        Map<HeatInput, HeatInput> renamed = Map.of(
                new HeatInput.OfMaterial("wall board", 0.035), new HeatInput.OfMaterial("the ground", 0.035),
                new HeatInput.OfMaterial("roof board", 0.026), new HeatInput.OfMaterial("ground", 0.026),
                new HeatInput.OfMaterial("slab board", 0.034), new HeatInput.OfMaterial("edges of glass", 0.034));
        assertEquals(plain.collect((of, effect) -> Tuples.pair(renamed.getOrDefault(of, of), effect)), alike);
    }

    private ImmutableMap<HeatInput, Double> effects(String wall, String roof, String slab, String one, String other)
            throws IOException {
        Files.writeString(
                folder.resolve("parapet-of-ones-own.yaml"),
                Files.readString(BOX.resolveSibling("parapet-of-ones-own.yaml"))
                        .replace("block: insulating blocks", "block: '" + one + "'")
                        .replace("block: parapet", "block: '" + other + "'"));
        Path file = folder.resolve("named.yaml");
        Files.writeString(
                file,
                window(0.9, 1)
                        .replace(
                                "transmittance: 0.9 W/(m²·K), frame-transmittance: 1.0 W/(m²·K)",
                                "glazing: {glass: 0.6 W/(m²·K), frame: 1 W/(m²·K), frame-width: 110 mm, spacer: improved}")
                        .replace("detail: parapet-on-break-blocks", "detail: parapet-of-ones-own.yaml")
                        .replace("mineral wool board", wall)
                        .replace("polyisocyanurate board", roof)
                        .replace("extruded polystyrene board", slab)
                        .replace(
                                "assemblies:\n",
                                "materials:\n"
                                        + "  " + wall
                                        + ": {conductivity: 0.035 W/(m·K), within: 11 %, source: made up}\n"
                                        + "  " + roof
                                        + ": {conductivity: 0.026 W/(m·K), within: 12 %, source: made up}\n"
                                        + "  " + slab + ": {conductivity: 0.034 W/(m·K), within: 13 %,"
                                        + " bears: {ground: made up}, source: made up}\n"
                                        + "points:\n  posts: {surface: roof, detail: steel-post-through, number: 40}\n"
                                        + "assemblies:\n"));
        return InputUncertainty.of(Bench.ofChosen(file, workshop))
                .inputs()
                .toImmutableMap(InputUncertainty.Input::of, InputUncertainty.Input::effect);
    }
}
