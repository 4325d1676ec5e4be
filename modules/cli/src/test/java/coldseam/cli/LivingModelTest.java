package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.store.KeptFolder;
import coldseam.report.AuditJson;
import coldseam.report.PdfReport;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house that is changed again and again beside one workshop has, each time, the audit of a cold run, to the byte. */
@Tag("slow")
class LivingModelTest {

    private static final String HOUSE = """
            house: Edited
            site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C}
            assemblies:
              wall:
                layers:
                - {material: old solid brick, thickness: 240 mm, role: structure, controls: [air, vapour]}
                - {material: mineral wool board, thickness: THICKNESS, role: insulation, controls: [heat, water]}
            body:
              footprint-line: outer face
              storeys:
              - {name: ground floor, height: 3 m, footprint: {rectangle: [8 m, DEPTH]}, walls: {all: wall}}
              base: {kind: slab on ground, assembly: wall}
              roof: {form: flat, assembly: wall}
            CHOICE
            own-psi:
            - {kinds: [slab edge], psi: PSI, source: a test}
            - {kinds: [flat roof edge], psi: 0.1 W/(m·K), source: a test}
            """;

    /** Whose deck's edge is drawn, so that there are corners, and which something goes through, both round and square. */
    private static final String DRAWN =
            HOUSE.replace("- {kinds: [flat roof edge], psi: 0.1 W/(m·K), source: a test}\n", "") + """
            points:
              canopy: {surface: ground floor north wall, detail: bracket-stainless-on-pad, number: NUMBER}
              sleeve: {surface: ground floor west wall, detail: pipe-in-insulated-collar, number: 1}
            """;

    private static final List<List<String>> EDITS = List.of(
            List.of("THICKNESS", "160 mm", "200 mm"),
            List.of("DEPTH", "6 m", "7 m"),
            List.of("PSI", "0.1 W/(m·K)", "0.2 W/(m·K)"),
            List.of("NUMBER", "1", "2"),
            // What is chosen here is only compared there, and the other way round.
            List.of(
                    "CHOICE",
                    "junctions: [{kinds: [outside corner], detail: outside-corner-unbroken}]",
                    "junctions: [{kinds: [outside corner], detail: outside-corner-solid-post}]",
                    ""));

    private static final int STEPS = 8;
    private static final int DRAWN_STEPS = 5;

    @TempDir
    Path folder;

    /** What a cold run makes of a house's file. */
    private interface Cold<B> {
        B of(Path file);
    }

    /** What is made of a house after each of some random edits, to be what a cold run makes of it. */
    private interface Edited<B> {
        String audited(Path file, B cold) throws IOException;
    }

    @Test
    void randomEditsGiveTheBytesOfAColdRun() throws IOException {
        Workshop living = new BuiltInWorkshop();
        edited(HOUSE, STEPS, file -> json(file, new BuiltInWorkshop()), (file, cold) -> {
            String audit = json(file, living);
            assertEquals(cold, audit);
            return audit;
        });
    }

    /** Each run knows of the others only what lies on disk: sections, whole results, drawings. */
    @Test
    void whatEarlierRunsKeptGivesTheBytesOfAColdRun() throws IOException {
        edited(DRAWN, DRAWN_STEPS, file -> pdf(file, new BuiltInWorkshop()), (file, cold) -> {
            byte[] kept = pdf(
                    file,
                    new BuiltInWorkshop(() -> Optional.of("build")).keepingIn(KeptFolder.in(folder.resolve("store"))));
            assertArrayEquals(cold, kept);
            return new String(kept, StandardCharsets.ISO_8859_1);
        });
    }

    private static String json(Path file, Workshop workshop) {
        return AuditJson.text(HouseAudit.of(file, workshop).compute());
    }

    private static byte[] pdf(Path file, Workshop workshop) {
        Audit audit = HouseAudit.of(file, workshop).compute();
        assertTrue(audit.vertexSheets().notEmpty() && audit.pointSheets().size() == 2);
        return PdfReport.bytes(audit, UnitSystem.SI, Paper.A4, workshop.results());
    }

    /** @param cold asked once of each house: edited back, it is the house that it was */
    private <B> void edited(String house, int steps, Cold<B> cold, Edited<B> auditing) throws IOException {
        Random random = new Random(15);
        int[] state = new int[EDITS.size()];
        Set<String> different = new HashSet<>();
        Map<String, B> known = new HashMap<>();
        for (int step = 0; step < steps; step++) {
            String text = house;
            for (int i = 0; i < state.length; i++) {
                text = text.replace(EDITS.get(i).get(0), EDITS.get(i).get(1 + state[i]));
            }
            Path file = Files.writeString(folder.resolve("house.yaml"), text);
            different.add(auditing.audited(file, known.computeIfAbsent(text, asked -> cold.of(file))));
            // What is chosen, and back; then what every section is of; then anything.
            int edited = step < 3 ? state.length - 1 : step == 3 ? 0 : random.nextInt(state.length);
            state[edited] = (state[edited] + 1) % (EDITS.get(edited).size() - 1);
        }
        assertTrue(different.size() > steps / 2, "the edits change too little: " + different.size());
    }
}
