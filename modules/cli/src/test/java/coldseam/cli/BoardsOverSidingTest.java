package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.AsFound;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.assumed.OldParts;
import coldseam.audit.house.HouseAudit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An old frame house whose sheathing and siding stay under two layers of board, held by screws through furring. */
@Tag("slow")
class BoardsOverSidingTest {

    /** W/(m²·K); the reckoning by hand is rounded to it. */
    private static final double BY_HAND = 1e-4;

    /**
     * Sill plate, rim, header and thresholds draw over it, and the screws count in U. ISO 6946:2017 annex F.3 (from memory),
     * worked out apart: 0.8·50·28.27 mm²·6.25/m² / 0.16 m · (4.571 / 7.606)² = 0.0160 W/(m²·K), the whole resistance without the studs
     * as bridges.
     */
    @Test
    void seamsDrawOverItAndScrewsCount() {
        Audit audit = HouseAudit.of(
                        CommittedReport.ROOT.resolve("fixtures/houses/old/boards-over-siding.yaml"), Bench.SHARED)
                .compute();
        assertEquals(Lists.immutable.empty(), audit.findings());
        // Old studs may run past the floor; the file does not say that they do.
        assertEquals(
                Lists.immutable.of("intermediate floor"),
                OldParts.PLATFORM.in(audit).collect(JunctionRow::kindLabel).distinct());
        AssemblyRow wall =
                audit.assemblies().detect(row -> row.assembly().name().equals("wall"));
        assertEquals(0.0160, wall.transmittance() - wall.build().uncorrected(), BY_HAND);
    }

    /** Where nobody says how a bare frame's corner was found, it was one of frames without boards. */
    @Test
    void whatIsFoundOfABareFrameIsOneOfFramesAlone(@TempDir Path folder) throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/old/boards-over-siding.yaml"));
        Path file = Files.writeString(
                folder.resolve("house.yaml"),
                text.replace(
                                "taken-down: [foot of the wall, roof]",
                                "taken-down: [foot of the wall, roof], found: {assemblies: {wall: bare frame}}")
                        .replace("  floor:\n", """
                          bare frame:
                            layers:
                            - {material: lime plaster, thickness: 15 mm, role: finish}
                            - {material: air, thickness: 90 mm, role: structure, framing: {material: softwood, share: 20 %}}
                            - {material: softwood, thickness: 20 mm, role: structure}
                            - {material: softwood, thickness: 18 mm, role: structure, controls: [air, water]}
                          floor:
                        """));
        Audit audit = HouseAudit.of(file, Bench.SHARED).compute();
        AsFound.Seam corner = audit.found()
                .orElseThrow()
                .of(audit.sheets().detect(sheet -> sheet.kind().equals("outside corner")))
                .getOnly();
        assertEquals(
                "outside-corner-in-frame-solid-post",
                corner.sheet().orElseThrow().result().detail().id());
    }
}
