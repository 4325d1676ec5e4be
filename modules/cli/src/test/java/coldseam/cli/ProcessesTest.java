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
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    static final String HOUSE = """
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

    /** In a JVM with these options; with none, in the one that it starts for itself. */
    private Process start(Path in, List<String> java, Path input, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(JAVA.toString(), home()));
        command.addAll(java);
        command.addAll(List.of("-cp", CLASSES, Main.class.getName()));
        command.addAll(arguments("", input, more));
        return start(in, command);
    }

    /** In the JVM that a command is given whose user gives it properties alone. */
    private static List<String> asUsual(List<String> properties, Path input) {
        return new ArrayList<>(
                Restart.line(JAVA, properties, CLASSES, arguments("", input)).orElseThrow());
    }

    private static String home() {
        return "-Duser.home=" + shared;
    }

    private Process start(Path in, List<String> command) throws IOException {
        ProcessBuilder process = new ProcessBuilder(command)
                .directory(in.toFile())
                .redirectErrorStream(true)
                .redirectOutput(in.resolve(SAID).toFile());
        // Whatever the platform calls the user's folder for caches, it is not the one of whoever runs the tests.
        String usual = folder.resolve("usual").toString();
        process.environment().putAll(Map.of("XDG_CACHE_HOME", usual, "LOCALAPPDATA", usual));
        process.environment().keySet().removeAll(Set.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS"));
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

    /**
     * Processors, compilers, heap, collector, locale, time zone, charset and working folder change no byte. What is solved is
     * solved here; another country's words are those of the run that is left to its end among {@link #runsAtOnceDoNotMix}.
     */
    @Test
    void sameBytesOnAnotherMachine() throws Exception {
        Files.copy(house, folder.resolve("house.yaml"));
        List<String> turkish = List.of(
                "-XX:ActiveProcessorCount=8",
                // As few as there can be, and loops that run long alone: else more is compiled that is not run again.
                "-XX:CICompilerCount=2",
                "-XX:Tier4InvocationThreshold=50000",
                "-XX:Tier4MinInvocationThreshold=6000",
                "-XX:Tier4CompileThreshold=150000",
                "-XX:Tier4BackEdgeThreshold=400000",
                "-XX:+UseG1GC",
                "-XX:ParallelGCThreads=2",
                "-Xmx300m",
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Pacific/Kiritimati",
                "-Dfile.encoding=ISO-8859-9");
        assertEquals(Exit.FOUND.code(), ended(start(folder, turkish, Path.of("house.yaml"), "--no-store")));
        assertWanted(folder);
    }

    /** Little memory makes intervals wider, in sections and in bodies, and ends no run. */
    @Test
    void littleMemoryWidensIntervalsAndSaysSo() throws Exception {
        String box = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml"));
        String parapet = "- {kinds: [parapet], detail: parapet-on-break-blocks}\n";
        assertTrue(box.contains(parapet), "the box has another parapet");
        Path input = Files.writeString(
                folder.resolve("box.yaml"),
                box.replace(parapet, "own-psi: [{kinds: [parapet], psi: 0.1 W/(m·K), source: a test}]\n"));
        Run most =
                Run.of(arguments(folder + "/", input, "--no-store", "--timings").toArray(String[]::new));
        assertEquals(Exit.FOUND.code(), most.code(), most::err);
        JsonNode plenty = data(folder);
        assertTrue(plenty.at("/verdict/heldByMemory").isMissingNode(), "nothing holds it back");
        assertEquals(
                1,
                most.err()
                        .lines()
                        .filter(line -> line.startsWith("To solve: 6 junctions, 0 points and 1 corners"))
                        .count(),
                most::err);
        List<String> least = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx52m");
        Path tight = Files.createDirectory(folder.resolve("tight"));
        assertEquals(Exit.FOUND.code(), ended(start(tight, least, input, "--no-store")));
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
     * Runs at once that keep what they solve in the user's folder: one in another country; one that is killed while it solves,
     * with nothing working on behind the back of who killed the process that was started; one here. It is said in one line and
     * changes no byte, and the next run finds all. That no write is torn, `AtomicFilesTest` shows.
     */
    @Test
    void runsAtOnceDoNotMix() throws Exception {
        List<String> german = List.of(
                home(),
                "-Duser.language=de",
                "-Duser.country=DE",
                "-Duser.timezone=America/St_Johns",
                "-Dfile.encoding=US-ASCII");
        List<String> alone = asUsual(german, house);
        alone.add(1, "-XX:ActiveProcessorCount=1");
        Path stopped = Files.createDirectory(folder.resolve("stopped"));
        for (String name : OUTPUTS) {
            Files.writeString(stopped.resolve(name), "old");
        }
        Optional<Path> usual = UsualFolder.of(
                System.getProperty("os.name"),
                folder.resolve("home").toString(),
                any -> folder.resolve("usual").toString());
        Path beside = Files.createDirectory(folder.resolve("beside"));
        Process one = start(folder, alone);
        Process other = start(stopped, List.of(), house);
        try {
            ProcessHandle child = solving(other, stopped.resolve(SAID));
            other.destroyForcibly();
            Run here = here(beside, usual);
            assertEquals(Exit.FOUND.code(), here.code(), here::err);
            assertTrue(here.err().contains("Kept results: "), here::err);
            child.onExit().get(HANGS_SECONDS, TimeUnit.SECONDS);
        } finally {
            other.descendants().forEach(ProcessHandle::destroyForcibly);
            other.destroyForcibly();
        }
        for (String name : OUTPUTS) {
            assertArrayEquals(
                    Told.bytes("old"),
                    Files.readAllBytes(stopped.resolve(name)),
                    name + ": it was left to end its work");
        }
        assertWanted(beside);
        assertEquals(Exit.FOUND.code(), ended(one), Files.readString(folder.resolve(SAID)));
        assertWanted(folder);
        assertEquals(List.of(), left(folder));
        String kept = Files.readAllLines(folder.resolve(SAID)).stream()
                .filter(line -> line.startsWith("Kept results: "))
                .findFirst()
                .orElse("nothing is said of what is kept");
        assertTrue(kept.contains(" added in " + usual.orElseThrow()), kept);
        Run again = here(folder, usual);
        assertEquals(Exit.FOUND.code(), again.code(), again::err);
        assertWanted(folder);
        // All that any of the three has kept.
        assertTrue(
                again.err().contains("Kept results: " + entries(usual.orElseThrow()) + " found, 0 added in "),
                again::err);
        Run without = here(folder, usual, "--no-store");
        assertEquals(Exit.FOUND.code(), without.code(), without::err);
        assertFalse(without.err().contains("Kept"), without::err);
        assertEquals(
                Exit.REFUSED.code(),
                here(folder, usual, "--no-store", "--store", "here").code());
    }

    private static long entries(Path store) throws IOException {
        try (Stream<Path> files = Files.walk(store)) {
            return files.filter(each ->
                            Files.isRegularFile(each) && !each.toString().endsWith(".tmp"))
                    .count();
        }
    }

    /** The JVM that a run's own one has started, as soon as it solves. */
    private static ProcessHandle solving(Process process, Path said) throws Exception {
        for (long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(HANGS_SECONDS);
                process.isAlive() && System.nanoTime() < end;
                Thread.sleep(5)) {
            if (Files.readString(said).contains("junctions: ")) {
                return process.children()
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no JVM was started for it"));
            }
        }
        throw new AssertionError("it ended before it solved, or hangs: " + Files.readString(said));
    }

    /** A folder that cannot be written costs nothing but time. */
    @Test
    void whereNothingCanBeKeptTheRunIsTheSame() throws Exception {
        Path file = Files.writeString(folder.resolve("usual"), "no folder").resolve("coldseam");
        Run nowhere = here(folder, Optional.of(file));
        assertEquals(Exit.FOUND.code(), nowhere.code(), nowhere::err);
        assertWanted(folder);
        assertTrue(nowhere.err().contains("Nothing is kept for the next run: "), nowhere::err);
    }

    @Test
    void whatIsPrintedOnToAFullDiskIsNotSaidToBeDone() throws Exception {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.isWritable(full), "no place that is always full");
        for (Path out : List.of(full, folder.resolve("out"))) {
            Process process = new ProcessBuilder(
                            JAVA.toString(), "-XX:TieredStopAtLevel=1", "-cp", CLASSES, Main.class.getName(), "schema")
                    .redirectOutput(out.toFile())
                    .redirectError(folder.resolve(SAID).toFile())
                    .start();
            int code = ended(process);
            String said = Files.readString(folder.resolve(SAID));
            assertEquals(out.equals(full) ? Exit.REFUSED.code() : Exit.UNBROKEN.code(), code, said);
            assertEquals(out.equals(full), said.startsWith("What was printed could not be written: "), said);
        }
    }

    /** One that somebody signed and locked. */
    @Test
    void aDocumentThatIsLockedStays() throws Exception {
        Path signed = Files.writeString(folder.resolve("signed.pdf"), "signed");
        assumeTrue(signed.toFile().setWritable(false) && !Files.isWritable(signed));
        Run refused = Run.of("audit", house.toString(), "-o", signed.toString());
        assertEquals(Exit.REFUSED.code(), refused.code(), refused::err);
        assertEquals(
                signed + ": is there and may not be written over; name another file, or let it be written\n",
                refused.err());
    }

    /**
     * A limit on the size of files stands for a disk that is full: a write ends in the middle. A section is written as all else
     * is (`ArchitectureTest`), and needs no catalogue.
     */
    @Test
    void fullDiskLeavesTheOldFile() throws Exception {
        Path shell = Path.of("/bin/sh");
        assumeTrue(Files.isExecutable(shell), "no shell that could limit the size of files");
        Path picture = Files.writeString(folder.resolve("section.svg"), "old");
        List<String> limited = new ArrayList<>(List.of(shell.toString(), "-c", "ulimit -f 4 && exec \"$@\"", "run"));
        // What the JVM writes of itself is a file, too.
        limited.addAll(List.of(JAVA.toString(), "-XX:-UsePerfData", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        limited.addAll(List.of(home(), "-cp", CLASSES, Main.class.getName(), "section", "--width", "0.1"));
        limited.add(CommittedReport.ROOT
                .resolve("fixtures/sections/strip-on-slab.yaml")
                .toAbsolutePath()
                .toString());
        limited.addAll(List.of("--svg", picture.toString()));
        int code = ended(start(folder, limited));
        String said = Files.readString(folder.resolve(SAID));
        assertEquals(Exit.REFUSED.code(), code, said);
        assertTrue(said.contains("could not be read or written"), said);
        assertEquals("old", Files.readString(picture));
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
