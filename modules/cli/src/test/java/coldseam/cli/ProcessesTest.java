package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the world does to a run: other machines' settings, a kill at any moment, a full disk, a store that is spoilt, two runs at
 * once. Nothing is torn, nothing is lost, and the exit codes are those that are documented. What hangs on the process runs in
 * processes of its own, the rest in this one: each process reads the catalogue with cold code.
 */
@Tag("slow")
class ProcessesTest {

    /** A box of which one kind of junction is computed: enough to compute, quick to compute. */
    private static final String HOUSE = """
            house: Çatı evi, İzmir
            site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C}
            assemblies:
              wall:
                layers:
                - {material: old solid brick, thickness: 240 mm, role: structure, controls: [air, vapour]}
                - {material: mineral wool board, thickness: 160 mm, role: insulation, controls: [heat, water]}
            body:
              footprint-line: outer face
              storeys:
              - {name: ground floor, height: 3 m, footprint: {rectangle: [8 m, 6 m]}, walls: {all: wall}}
              base: {kind: slab on ground, assembly: wall}
              roof: {form: flat, assembly: wall}
            junctions:
            - {kinds: [outside corner], detail: outside-corner-unbroken}
            own-psi:
            - {kinds: [slab edge], psi: 0.1 W/(m·K), source: a test}
            - {kinds: [flat roof edge], psi: 0.1 W/(m·K), source: a test}
            """;

    private static final List<String> OUTPUTS = List.of("audit.pdf", "audit.json", "audit.csv", "audit-heat-loss.csv");

    /** What the process in a folder says on both streams. */
    private static final String SAID = "said.txt";

    /** A guard against hanging; no speed is asserted. */
    private static final long HANGS_SECONDS = 300;

    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

    private static final String CLASSES =
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));

    @TempDir
    static Path shared;

    private static Path house;
    private static List<byte[]> wanted;

    @TempDir
    Path folder;

    /** One run in this process, without a store: what every other run must give. */
    @BeforeAll
    static void compute() throws Exception {
        house = Files.writeString(shared.resolve("house.yaml"), HOUSE);
        Path first = Files.createDirectory(shared.resolve("first"));
        assertEquals(
                Exit.FOUND.code(), here(first, Optional.empty(), "--no-store").code());
        wanted = contents(first);
    }

    /** The run in this process, its outputs in a folder. */
    private static Run here(Path in, Optional<Path> usual, String... more) {
        return Run.with(Run.REAL, usual, arguments(in + "/", house, more).toArray(String[]::new));
    }

    private static List<byte[]> contents(Path folder) throws IOException {
        List<byte[]> contents = new ArrayList<>();
        for (String name : OUTPUTS) {
            contents.add(Files.readAllBytes(folder.resolve(name)));
        }
        return contents;
    }

    private static void assertWanted(Path folder) throws IOException {
        List<byte[]> got = contents(folder);
        for (int i = 0; i < OUTPUTS.size(); i++) {
            assertArrayEquals(wanted.get(i), got.get(i), OUTPUTS.get(i));
        }
    }

    private static List<String> arguments(String in, Path input, String... more) {
        List<String> arguments = new ArrayList<>(List.of("audit", input.toString()));
        arguments.addAll(
                List.of("-o", in + OUTPUTS.get(0), "--json", in + OUTPUTS.get(1), "--csv", in + OUTPUTS.get(2)));
        arguments.addAll(List.of(more));
        return arguments;
    }

    /** In a JVM with these options. */
    private static Process start(Path in, List<String> java, Path input, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(JAVA.toString(), home()));
        command.addAll(java);
        command.addAll(List.of("-cp", CLASSES, Main.class.getName()));
        command.addAll(arguments("", input, more));
        return start(in, command);
    }

    /** In the JVM that a command is given whose user gives none. */
    private static List<String> asUsual(Path input, String... more) {
        return Restart.line(JAVA, List.of(home()), CLASSES, arguments("", input, more))
                .orElseThrow();
    }

    private static String home() {
        return "-Duser.home=" + shared;
    }

    private static Process start(Path in, List<String> command) throws IOException {
        return start(in, command, in.resolve(SAID));
    }

    private static Process start(Path in, List<String> command, Path said) throws IOException {
        ProcessBuilder process = new ProcessBuilder(command)
                .directory(in.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        // Whatever the platform calls the user's folder for caches, it is not the one of whoever runs the tests.
        process.environment().put("XDG_CACHE_HOME", in.resolve("usual").toString());
        process.environment().put("LOCALAPPDATA", in.resolve("usual").toString());
        return process.start();
    }

    private static int ended(Process process) throws InterruptedException {
        boolean ended = process.waitFor(HANGS_SECONDS, TimeUnit.SECONDS);
        process.destroyForcibly();
        assertTrue(ended, "the run hangs");
        return process.exitValue();
    }

    private static List<String> left(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString())
                    .filter(each -> each.endsWith(".tmp"))
                    .toList();
        }
    }

    /** Processors, compilers, heap, collector, locale, time zone, charset and working folder change no byte. */
    @Test
    void sameBytesOnEveryMachine() throws Exception {
        Files.copy(house, folder.resolve("house.yaml"));
        List<String> turkish = List.of(
                "-XX:ActiveProcessorCount=1",
                "-XX:+UseSerialGC",
                "-Xmx300m",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Pacific/Kiritimati",
                "-Dfile.encoding=ISO-8859-9");
        assertEquals(Exit.FOUND.code(), ended(start(folder, turkish, Path.of("house.yaml"), "--no-store")));
        assertWanted(folder);
        List<String> german = List.of(
                "-XX:ActiveProcessorCount=8",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseG1GC",
                "-Xmx1g",
                "-Duser.language=de",
                "-Duser.country=DE",
                "-Duser.timezone=America/St_Johns",
                "-Dfile.encoding=US-ASCII");
        assertEquals(Exit.FOUND.code(), ended(start(folder, german, house, "--no-store")));
        assertWanted(folder);
    }

    /** Little memory makes intervals wider, in sections and in bodies, and ends no run. */
    @Test
    void littleMemoryWidensIntervalsAndSaysSo() throws Exception {
        Path input = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");
        Run most =
                Run.of(arguments(folder + "/", input, "--no-store", "--timings").toArray(String[]::new));
        assertEquals(Exit.UNBROKEN.code(), most.code(), most::err);
        JsonNode plenty = data(folder);
        assertTrue(plenty.at("/verdict/heldByMemory").isMissingNode(), "nothing holds it back");
        assertEquals(
                1,
                most.err()
                        .lines()
                        .filter(line -> line.startsWith("To solve: 9 junctions, 0 points and 2 corners"))
                        .count(),
                most::err);
        List<String> least = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx52m");
        Path tight = Files.createDirectory(folder.resolve("tight"));
        assertEquals(Exit.UNBROKEN.code(), ended(start(tight, least, input, "--no-store")));
        JsonNode little = data(tight);
        String held = little.at("/verdict/heldByMemory").asText();
        assertTrue(held.contains("J1") && held.contains("V1"), () -> "sections and bodies: " + held);
        assertTrue(Files.readString(tight.resolve(SAID)).contains("less narrowly"), "the terminal says so");
        JsonNode narrow = plenty.at("/heatLoss/total_W_per_K");
        JsonNode wide = little.at("/heatLoss/total_W_per_K");
        double lower =
                Math.max(narrow.get("lower").asDouble(), wide.get("lower").asDouble());
        double upper =
                Math.min(narrow.get("upper").asDouble(), wide.get("upper").asDouble());
        assertTrue(lower <= upper, () -> "both hold the same value: " + narrow + wide);
        assertTrue(
                wide.get("upper").asDouble() - wide.get("lower").asDouble()
                        > narrow.get("upper").asDouble() - narrow.get("lower").asDouble(),
                () -> "wider: " + narrow + wide);
    }

    private static JsonNode data(Path in) throws IOException {
        return new ObjectMapper().readTree(Files.readString(in.resolve("audit.json")));
    }

    /** Whenever it is killed, each output is the old one or a whole new one, and the next run is as if nothing had been. */
    @Test
    void killedAtAnyMomentNothingIsTorn() throws Exception {
        Path own = folder.resolve("store");
        for (long milliseconds : new long[] {600, 1800, 3000}) {
            for (String name : OUTPUTS) {
                Files.writeString(folder.resolve(name), "old");
            }
            Process process = start(folder, asUsual(house, "--store", own.toString()));
            process.waitFor(milliseconds, TimeUnit.MILLISECONDS);
            process.destroyForcibly().waitFor();
            List<byte[]> got = contents(folder);
            for (int i = 0; i < OUTPUTS.size(); i++) {
                byte[] bytes = got.get(i);
                if (!"old".equals(new String(bytes, StandardCharsets.UTF_8))) {
                    assertArrayEquals(wanted.get(i), bytes, OUTPUTS.get(i) + " after " + milliseconds + " ms");
                }
            }
        }
        assertEquals(
                Exit.FOUND.code(),
                here(folder, Optional.empty(), "--store", own.toString()).code());
        assertWanted(folder);
    }

    @Test
    void spoiltStoreIsComputedAnew() throws Exception {
        Path store = folder.resolve("store");
        Run first = here(folder, Optional.empty(), "--store", store.toString());
        assertEquals(Exit.FOUND.code(), first.code(), first::err);
        assertTrue(first.err().contains("Kept results: 0 found, "), first::err);
        int number = 0;
        try (Stream<Path> kept = Files.walk(store)) {
            for (Path file : kept.filter(Files::isRegularFile).sorted().toList()) {
                byte[] bytes = Files.readAllBytes(file);
                switch (number++ % 4) {
                    case 0 -> bytes = new byte[0];
                    case 1 -> bytes = java.util.Arrays.copyOf(bytes, bytes.length / 2);
                    case 2 -> bytes[bytes.length / 2] ^= 1;
                    default -> bytes = "no solution at all".getBytes(StandardCharsets.UTF_8);
                }
                Files.write(file, bytes);
            }
        }
        assertTrue(number >= 4, "the store holds too little to be spoilt in four ways: " + number);
        Run again = here(folder, Optional.empty(), "--store", store.toString());
        assertEquals(Exit.FOUND.code(), again.code(), again::err);
        assertTrue(again.err().contains("Kept results: 0 found, "), again::err);
        assertWanted(folder);
    }

    /**
     * Two runs at once that keep what they solve and write the same files. It is said in one line, changes no byte, and a folder
     * that cannot be written costs nothing but time.
     */
    @Test
    void twoRunsAtOnceKeepInTheUsersFolderAndDoNotMix() throws Exception {
        Path said = folder.resolve("other.txt");
        Process one = start(folder, asUsual(house));
        Process other = start(folder, asUsual(house), said);
        assertEquals(Exit.FOUND.code(), ended(one));
        assertEquals(Exit.FOUND.code(), ended(other));
        assertWanted(folder);
        assertEquals(List.of(), left(folder));
        for (Path each : List.of(folder.resolve(SAID), said)) {
            assertTrue(
                    Files.readAllLines(each).stream().anyMatch(line -> line.startsWith("Kept results: ")),
                    () -> each + " says nothing of what is kept");
        }
        Optional<Path> usual = UsualFolder.of(
                System.getProperty("os.name"),
                folder.resolve("home").toString(),
                any -> folder.resolve("usual").toString());
        Run again = here(folder, usual);
        assertEquals(Exit.FOUND.code(), again.code(), again::err);
        assertWanted(folder);
        assertTrue(again.err().contains(" found, 0 added in "), again::err);
        Run without = here(folder, usual, "--no-store");
        assertEquals(Exit.FOUND.code(), without.code(), without::err);
        assertFalse(without.err().contains("Kept"), without::err);
        Path none = Files.createDirectory(folder.resolve("none"));
        Optional<Path> file = Optional.of(
                Files.writeString(none.resolve("usual"), "no folder").resolve("coldseam"));
        Run nowhere = here(none, file);
        assertEquals(Exit.FOUND.code(), nowhere.code(), nowhere::err);
        assertWanted(none);
        assertTrue(nowhere.err().contains("Nothing is kept for the next run: "), nowhere::err);
        assertEquals(
                Exit.REFUSED.code(),
                here(none, usual, "--no-store", "--store", "here").code());
    }

    /** A limit on the size of files stands for a disk that is full: a write ends in the middle. */
    @Test
    void fullDiskLeavesTheOldFile() throws Exception {
        Path shell = Path.of("/bin/sh");
        assumeTrue(Files.isExecutable(shell), "no shell that could limit the size of files");
        Files.writeString(folder.resolve(OUTPUTS.get(0)), "old");
        List<String> limited = new ArrayList<>(List.of(shell.toString(), "-c", "ulimit -f 40 && exec \"$@\"", "run"));
        limited.addAll(asUsual(house, "--no-store"));
        // What the JVM writes of itself is a file, too.
        limited.add(limited.indexOf(JAVA.toString()) + 1, "-XX:-UsePerfData");
        int code = ended(start(folder, limited));
        String said = Files.readString(folder.resolve(SAID));
        assertEquals(Exit.REFUSED.code(), code, said);
        assertTrue(said.contains("could not be read or written"), said);
        assertEquals("old", Files.readString(folder.resolve(OUTPUTS.get(0))));
        assertEquals(List.of(), left(folder));
    }

    @Test
    void placeThatCannotBeWrittenIsRefusedBeforeTheWork() throws Exception {
        Path locked = Files.createDirectory(folder.resolve("locked"));
        Files.writeString(folder.resolve("file"), "no folder");
        List<String> arguments = arguments(folder + "/", house);
        arguments.set(arguments.indexOf(folder + "/" + OUTPUTS.get(0)), folder + "/file/audit.pdf");
        Run refused = Run.of(arguments.toArray(String[]::new));
        assertEquals(Exit.REFUSED.code(), refused.code(), refused::err);
        assertTrue(refused.err().contains("file is not a folder; choose another place"), refused::err);
        assertFalse(Files.exists(folder.resolve(OUTPUTS.get(1))));
        // Whoever may do everything may write here, too.
        assumeTrue(locked.toFile().setWritable(false) && !Files.isWritable(locked));
        arguments.set(arguments.indexOf(folder + "/file/audit.pdf"), locked + "/audit.pdf");
        refused = Run.of(arguments.toArray(String[]::new));
        assertEquals(Exit.REFUSED.code(), refused.code(), refused::err);
        assertTrue(refused.err().contains("may not be written; choose another place"), refused::err);
        assertEquals(List.of(), left(locked));
    }
}
