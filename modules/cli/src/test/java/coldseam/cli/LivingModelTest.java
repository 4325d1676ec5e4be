package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.report.AuditJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
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

    private static final List<List<String>> EDITS = List.of(
            List.of("THICKNESS", "160 mm", "200 mm"),
            List.of("DEPTH", "6 m", "7 m"),
            List.of("PSI", "0.1 W/(m·K)", "0.2 W/(m·K)"),
            // What is chosen here is only compared there, and the other way round.
            List.of(
                    "CHOICE",
                    "junctions: [{kinds: [outside corner], detail: outside-corner-unbroken}]",
                    "junctions: [{kinds: [outside corner], detail: outside-corner-solid-post}]",
                    ""));

    private static final int STEPS = 8;

    @TempDir
    Path folder;

    @Test
    void randomEditsGiveTheBytesOfAColdRun() throws IOException {
        Random random = new Random(15);
        Workshop living = new BuiltInWorkshop();
        int[] state = new int[EDITS.size()];
        Set<String> different = new HashSet<>();
        for (int step = 0; step < STEPS; step++) {
            String text = HOUSE;
            for (int i = 0; i < state.length; i++) {
                text = text.replace(EDITS.get(i).get(0), EDITS.get(i).get(1 + state[i]));
            }
            Path file = Files.writeString(folder.resolve("house.yaml"), text);
            String audit = AuditJson.text(HouseAudit.of(file, living).compute());
            assertEquals(
                    AuditJson.text(HouseAudit.of(file, new BuiltInWorkshop()).compute()), audit, text);
            different.add(audit);
            int edited = step < 3 ? state.length - 1 : random.nextInt(state.length);
            state[edited] = (state[edited] + 1) % (EDITS.get(edited).size() - 1);
        }
        assertTrue(different.size() >= 5, "the edits change too little: " + different.size());
    }
}
