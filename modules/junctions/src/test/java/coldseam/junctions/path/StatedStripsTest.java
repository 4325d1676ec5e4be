package coldseam.junctions.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import coldseam.files.FileFaultException;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.ControlLine;
import coldseam.junctions.ControlLine.ChangesSide;
import coldseam.junctions.ControlLine.Continuous;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.PenLine;
import coldseam.junctions.Samples;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** A sheet that a detail draws from one surface's layer to the other's, through the insulation of a corner. */
class StatedStripsTest {

    private static final String THROUGH =
            "[wall.inside + 7 mm, other wall.inside - 100 mm], [wall.inside + 7 mm, other wall.air.inside]";

    private static Assembly wall(Layer inner, Layer outer) {
        return Samples.assembly(
                "wall",
                inner,
                Samples.layer("clay brick", 240, Role.STRUCTURE),
                Samples.layer("mineral wool board", 200, Role.INSULATION, Control.HEAT),
                outer);
    }

    private static final JunctionSetup CORNER = Samples.setup(JunctionKind.OUTSIDE_CORNER)
            .between(
                    wall(
                            Samples.layer("gypsum plaster", 15, Role.FINISH, Control.AIR),
                            Samples.layer("softwood", 20, Role.CLADDING)),
                    Optional.of(wall(
                            Samples.layer("gypsum plaster", 15, Role.FINISH),
                            Samples.layer("thin-coat render", 20, Role.CLADDING, Control.AIR))));

    private static Detail detail(String statements) {
        return DetailFile.read(
                "corner.yaml",
                "detail: corner\nkind: outside corner\nname: n\nrank: best\nlooks-like: l\norder: []\n"
                        + "connections: {air: taped}\nfailures: []\nphotographs: []\ndrawing:\n- band: wall\n- band: other wall\n"
                        + statements);
    }

    private static String strip(String carries, String material, String corners) {
        return "- strip: sheet in the joint\n  carries: [" + carries + "]\n  material: " + material + "\n  corners: ["
                + corners + "]\n";
    }

    private static Composition composition(String statements) {
        return Composer.compose(detail(statements), CORNER);
    }

    private static PenLine pen(Composition composition) {
        return PenLines.of(
                composition.insulation(),
                composition.ends().getFirst(),
                composition.ends().getLast(),
                0.2);
    }

    private static ControlLine air(String statements) {
        Composition composition = composition(statements);
        return ControlLines.of(composition, detail(statements), pen(composition))
                .getFirst();
    }

    @Test
    void aSheetFromLayerToLayerCarriesTheControlToTheOtherSide() {
        assertInstanceOf(ChangesSide.class, air(""));
        Continuous air = assertInstanceOf(Continuous.class, air(strip("air", "airtight membrane", THROUGH)));
        assertEquals(Lists.immutable.of("sheet in the joint"), air.sheets());
        assertTrue(air.strips().isEmpty(), "no tape is needed where the sheet touches both");
    }

    @Test
    void theSheetTakesNothingFromHeatAndPenLine() {
        Composition with = composition(strip("air", "airtight membrane", THROUGH));
        Composition without = composition("");
        assertEquals(without.heatFlow(), with.heatFlow());
        assertTrue(pen(with).unbroken());
        assertEquals(pen(without).path(), pen(with).path());
    }

    @Test
    void aSheetThatStopsShortCarriesNothing() {
        assertInstanceOf(
                ChangesSide.class,
                air(strip("air", "airtight membrane", THROUGH.replace("air.inside]", "air.inside - 50 mm]"))));
    }

    @Test
    void aSheetCarriesOnlyWhatItIsJoinedUpFor() {
        assertInstanceOf(ChangesSide.class, air(strip("vapour", "airtight membrane", THROUGH)));
    }

    @Test
    void whatIsPaintedOverASheetCutsIt() {
        assertInstanceOf(
                ChangesSide.class,
                air(
                        strip("air", "airtight membrane", THROUGH)
                                + "- block: board pushed through\n  material: mineral wool board\n"
                                + "  wall: [wall.inside, wall.inside + 50 mm]\n"
                                + "  other wall: [other wall.insulation.inside + 50 mm, other wall.insulation.inside + 100 mm]\n"));
    }

    /** Out through the wall, round the corner in the open air and back: nothing holds it, and wind goes behind it. */
    @Test
    void aSheetInTheAirCarriesNothing() {
        String round =
                "[wall.inside + 7 mm, other wall.inside - 300 mm], [wall.outside + H, other wall.inside - 300 mm],"
                        + " [wall.outside + H, other wall.outside + H], [wall.inside, other wall.outside + H],"
                        + " [wall.inside, other wall.air.inside]";
        assertInstanceOf(ChangesSide.class, air(strip("air", "airtight membrane", round.replace("H", "100 mm"))));
        assertInstanceOf(Continuous.class, air(strip("air", "airtight membrane", round.replace("H", "0 mm"))));
    }

    @Test
    void aSheetIsOfWhatCanControlAndHardlyConducts() {
        assertEquals(
                "\"sheet in the joint\" is a strip of \"mineral wool board\", which no source says to control air. Name"
                        + " another material.",
                refused(strip("air", "mineral wool board", THROUGH)));
        assertEquals(
                "\"sheet in the joint\" is a strip of \"airtight membrane\", which no source says to control water. Name"
                        + " another material.",
                refused(strip("air, water", "airtight membrane", THROUGH)));
        assertEquals(
                "\"sheet in the joint\" is a strip of \"steel\", which conducts 50.0 W/(m·K); a strip has no part in the"
                        + " heat flow and may conduct 1 W/(m·K) at most. Draw it as a shape, so that its heat counts.",
                refused(strip("air", "steel", THROUGH)));
        assertEquals(
                "\"sheet in the joint\" is a strip of \"straw\", which is neither in the house's assemblies beside the"
                        + " junction, nor in the detail, nor built in. Name another material.",
                refused(strip("air", "straw", THROUGH)));
    }

    private static String refused(String statements) {
        return assertThrows(DetailDoesNotFit.class, () -> composition(statements))
                .reasons()
                .collect(Phrase::toString)
                .getOnly();
    }

    @Test
    void everyFaultOfAStripIsTold() {
        FileFaultException told = assertThrows(
                FileFaultException.class,
                () -> detail(strip("heat", "same as wall.structure", "[wall.inside, other wall.inside]")
                        + "- strip: none\n  material: bitumen sheet\n  corners: [" + THROUGH + "]\n"));
        assertEquals(
                Lists.immutable.of(
                        "a control layer is needed",
                        "a strip is a sheet of its own",
                        "corners has too few items",
                        "a strip statement needs the key carries"),
                told.faults().collect(fault -> fault.asked()));
    }
}
