package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.assumed.Carrying;
import coldseam.audit.assumed.Materials;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.Material;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.FindingWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Houses whose walls' blocks are all that insulates them. */
@Tag("slow")
class BlocksPlasteredTest {

    private static final Path HOUSE = CommittedReport.ROOT.resolve("fixtures/houses/old/blocks-plastered.yaml");

    private static final Path FLAT = CommittedReport.ROOT.resolve("fixtures/houses/old/blocks-flat-roof.yaml");

    @TempDir
    Path folder;

    private static ImmutableList<String> titles(Audit audit) {
        return audit.findings()
                .collect(new FindingWords(UnitSystem.SI)::title)
                .toSortedList()
                .toImmutable();
    }

    private Audit audit(String text) throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, text);
        return HouseAudit.of(file, Bench.SHARED).compute();
    }

    /** The old floor stays in the wall's depth: only a thinner band goes over its edge. */
    @Test
    void whatStaysInTheBlocksIsAllThatIsFound() {
        Audit old = HouseAudit.of(HOUSE, Bench.SHARED).compute();
        assertEquals(Lists.immutable.of("Insulation pinched at the intermediate floor"), titles(old));
        assertEquals(
                Lists.immutable.of("filled clay block"),
                Materials.INSULATES_BY_SOURCE.in(old).collect(Material::name));
    }

    /** Half of the wall bears the floor, so that psi stays over 0.010 W/(m·K), and is told. */
    @Test
    void builtNewTheFloorAloneLosesMuch() throws IOException {
        String slab = "    - {material: concrete, thickness: 150 mm, role: structure}\n";
        String screed = "    - {material: cement screed, thickness: 60 mm, role: finish}\n";
        String text = Files.readString(HOUSE)
                .replaceFirst("retrofit: .*\n", "")
                .replace(slab, "")
                .replace("    - {material: particleboard, thickness: 22 mm, role: finish}\n", screed)
                .replace("    - {material: extruded", slab + "    - {material: extruded")
                .replace(
                        "[existing slab edge], detail: existing-slab-edge-in-blocks-skirt",
                        "[slab edge], detail: slab-edge-in-blocks-edge-board")
                .replace("intermediate-floor-in-blocks-band-outside", "intermediate-floor-in-blocks-facing-block")
                .replace("eaves-on-blocks-beam-boarded-outside", "eaves-on-blocks-beam-behind-board");
        assertEquals(Lists.immutable.of("Much heat lost at the intermediate floor"), titles(audit(text)));
    }

    /** What nobody chose is drawn by the worst for such walls, and known. */
    @Test
    void whereNothingIsChosenTheWorstForSuchWallsStandsIn() throws IOException {
        String text = Files.readString(HOUSE);
        Audit bare = audit(text.substring(0, text.indexOf("junctions:")));
        assertEquals(
                Lists.immutable.of(
                        "canopy-cast-through",
                        "eaves-on-blocks-beam-bare",
                        "existing-slab-edge-in-blocks-bare",
                        "head-in-blocks-lintel-through",
                        "intermediate-floor-in-blocks-to-the-face",
                        "jamb-in-blocks-square",
                        "outside-corner-in-blocks-round-a-post",
                        "ridge-square-cut",
                        "sill-in-blocks-bare",
                        "slab-threshold-on-concrete",
                        "verge-on-blocks-beam-through"),
                bare.sheets()
                        .collect(sheet -> sheet.result().detail().id())
                        .distinct()
                        .toSortedList());
    }

    /** On a warm cellar and under a flat roof: what goes over the old slabs' edges closes all but the floor, which it leaves thin. */
    @ParameterizedTest
    @CsvSource({
        "'', ''",
        "balcony-in-blocks-slab-wrapped, balcony-in-blocks-standing-free",
        "', parapet-height: 500 mm', ''",
    })
    void underAFlatRoofTheFloorsAreFoundThin(String was, String becomes) throws IOException {
        String text = Files.readString(FLAT)
                .replace(was, becomes)
                .replace("retrofit: {}", "retrofit: {taken-down: [balcony]}")
                .replace(
                        "junctions:\n",
                        "junctions:\n- {kinds: [flat roof edge], detail: flat-roof-edge-in-blocks-band-outside}\n");
        assertEquals(
                Lists.immutable.of(
                        "Insulation broken at the cellar slab to wall",
                        "Insulation pinched at the balcony",
                        "Insulation pinched at the intermediate floor"),
                titles(audit(text)));
    }

    /** The board over the ring beam closes the high wall as it does the low. */
    @Test
    void underAMonoPitchTheFloorAloneIsFoundThin() throws IOException {
        String text = Files.readString(HOUSE)
                .replace("form: gable, assembly: roof, pitch: 40 °", "form: mono pitch, assembly: roof, pitch: 12 °")
                .replace(
                        "- {kinds: [ridge], detail: ridge-mitred}",
                        "- {kinds: [high eaves of a mono-pitch], detail: high-eaves-on-blocks-beam-boarded-outside}");
        assertEquals(Lists.immutable.of("Insulation pinched at the intermediate floor"), titles(audit(text)));
        assertEquals(
                Lists.immutable.of("eaves-on-blocks-beam-bare", "verge-on-blocks-beam-through"),
                standingIn(text, "eaves", "verge"));
    }

    @Test
    void underAFlatRoofTheWorstForSuchWallsStandsIn() throws IOException {
        String text = Files.readString(FLAT);
        ImmutableList<String> of = Lists.immutable.of(
                "balcony-in-blocks-slab-through", "foundation-top-in-blocks-floor-bare", "parapet-in-blocks-bare");
        assertEquals(of, standingIn(text, "balcony", "foundation", "parapet"));
        assertEquals(
                Lists.immutable.of("flat-roof-edge-in-blocks-slab-bare"),
                standingIn(text.replace(", parapet-height: 500 mm", ""), "flat-roof"));
    }

    /** The ids of what a house without choices is drawn by, of those that begin so. */
    private ImmutableList<String> standingIn(String text, String... beginnings) throws IOException {
        return audit(text.substring(0, text.indexOf("junctions:")))
                .sheets()
                .collect(sheet -> sheet.result().detail().id())
                .select(id -> Lists.immutable.of(beginnings).anySatisfy(id::startsWith))
                .distinct()
                .toSortedList()
                .toImmutable();
    }

    /** Blocks that conduct more than what counts as insulation have the same drawings, and the wall itself is a gap. */
    @Test
    void blocksThatDoNotInsulateAreTold() throws IOException {
        Audit aerated = audit(Files.readString(HOUSE).replace("filled clay block", "autoclaved aerated concrete"));
        assertTrue(titles(aerated).contains("Insulation of \"wall\" is a name only"), titles(aerated)::toString);
        assertEquals(Lists.immutable.empty(), Carrying.LEAF.in(aerated), "no leaf stands outside of no insulation");
    }
}
