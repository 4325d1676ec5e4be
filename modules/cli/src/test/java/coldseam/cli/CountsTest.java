package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Work;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Few letters that ask for much: rows, a round plan, courts. What is to be solved is said before anything is. */
@Tag("slow")
class CountsTest {

    private static final int MOST_LETTERS = 700;

    /** Three times what the round plan needs, 0.7 million, the dearest of these: twelve corners and as many hips, each with its options. */
    private static final double MOST_UNKNOWNS = 2e6;

    /** Many times what it takes, and 200 openings once took 38 s and 2 GB. */
    private static final double MOST_SECONDS = 5;

    private static final String HEAD = """
            house: S
            site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C}
            assemblies: {w: {layers: [{material: mineral wool board, thickness: 200 mm, role: insulation}]}}
            """;

    @TempDir
    Path folder;

    private Path house(String rest) throws Exception {
        return Files.writeString(folder.resolve("house.yaml"), HEAD + rest);
    }

    /** None fits: all are told at once, and soon. */
    @Test
    @Tag("slow")
    void openingsThatDoNotFitAreRefusedSoon() throws Exception {
        StringBuilder openings = new StringBuilder("openings:\n");
        for (int i = 0; i < 200; i++) {
            openings.append(
                    "  o%d: {kind: window, surface: g south wall, left: %d mm, width: 9 m, height: 1 m, transmittance: 1 W/(m²·K)}\n"
                            .formatted(i, i));
        }
        Path file = house("""
                body:
                  footprint-line: outer face
                  storeys: [{name: g, height: 3 m, footprint: {rectangle: [8 m, 6 m]}, walls: {all: w}}]
                  base: {kind: slab on ground, assembly: w}
                  roof: {form: flat, assembly: w}
                """ + openings);
        Spent.On<Optional<String>> refused = Spent.on(() -> Probe.HOUSE.refusal(file));
        String told = refused.result().orElseThrow();
        assertEquals(200, told.split("does not fit in", -1).length - 1, told);
        assertTrue(refused.spent().seconds() < MOST_SECONDS, refused.spent()::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"""
                body:
                  footprint-line: outer face
                  storeys: [{name: g, height: 3 m, footprint: {rectangle: [80 m, 9 m]}, walls: {all: w}}]
                  base: {kind: slab on ground, assembly: w}
                  roof:
                    form: gable
                    pitch: 45 °
                    low-side: south
                    assembly: w
                    dormers: {d: {form: gabled, side: south, width: 2 m, height: 1 m, pitch: 30 °, walls: w, count: 20, spacing: 3.5 m}}
                """, """
                body:
                  footprint-line: outer face
                  storeys: [{name: g, height: 3 m, footprint: [[9 m,0 m],[10 m,5 m],[9 m,9 m],[5 m,12 m],[0 m,13 m],[-5 m,12 m],[-8 m,9 m],[-9 m,5 m],[-8 m,0 m],[-5 m,-3 m],[0 m,-4 m],[5 m,-3 m]], walls: {all: w}}]
                  base: {kind: slab on ground, assembly: w}
                  roof: {form: hip, pitch: 40 °, assembly: w}
                """, """
                body:
                  footprint-line: outer face
                  storeys: [{name: g, height: 3 m, footprint: {rectangle: [40 m, 9 m]}, walls: {all: w}, courts: {a: {rectangle: [2 m, 2 m], at: [3 m, 3 m]}, b: {rectangle: [2 m, 3 m], at: [8 m, 3 m]}, c: {rectangle: [3 m, 2 m], at: [13 m, 3 m]}, d: {rectangle: [2 m, 2 m], at: [19 m, 3 m]}}}]
                  base: {kind: slab on ground, assembly: w}
                  roof: {form: hip, pitch: 40 °, assembly: w}
                """, """
                body:
                  footprint-line: outer face
                  storeys: [{name: g, height: 3 m, footprint: {rectangle: [80 m, 9 m]}, walls: {all: w}}]
                  base: {kind: slab on ground, assembly: w}
                  roof: {form: flat, assembly: w}
                openings:
                  a: {kind: window, surface: g south wall, left: 1 m, width: 1 m, height: 1 m, transmittance: 1 W/(m²·K), count: 50, spacing: 0.5 m}
                  b: {kind: window, surface: g north wall, left: 1 m, width: 1 m, height: 1 m, transmittance: 1 W/(m²·K), count: 50, spacing: 0.5 m}
                """})
    void fewLettersAskForLittle(String rest) throws Exception {
        Path file = house(rest);
        assertTrue(Files.readString(file).replaceAll("\\s", "").length() <= MOST_LETTERS);
        List<Work> said = new ArrayList<>();
        HouseAudit audit = HouseAudit.of(file, Run.REAL);
        assertThrows(
                CancellationException.class,
                () -> audit.compute(new Progress() {
                    @Override
                    public void begins(Work work) {
                        said.add(work);
                        throw new CancellationException();
                    }

                    @Override
                    public void at(String step, int count, int of) {
                        throw new AssertionError("solved before it is said: " + step);
                    }
                }));
        assertTrue(said.get(0).unknowns() > 0 && said.get(0).unknowns() < MOST_UNKNOWNS, said::toString);
    }
}
