package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Short commands run in a JVM whose options suit them, and nobody notices but by the time; {@link ProcessesTest} kills one. */
class RestartTest {

    /** A guard against hanging; no speed is asserted. */
    private static final long HANGS_SECONDS = 120;

    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

    private static final String CLASSES =
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));

    @TempDir
    Path folder;

    private static Optional<List<String>> line(List<String> given, String... arguments) {
        return Restart.line(Path.of("java"), given, "some.jar", List.of(arguments));
    }

    @Test
    void propertiesAndArgumentsGoAlong() {
        List<String> line =
                line(List.of("-Duser.language=tr"), "check", "a house.yaml").orElseThrow();
        assertEquals("java", line.get(0));
        assertTrue(line.contains("-XX:TieredStopAtLevel=1"), line.toString());
        assertTrue(line.containsAll(List.of("-Xms25m", "-Xmn24m", "-XX:MinHeapFreeRatio=20")), line.toString());
        assertTrue(line.contains("-Xbootclasspath/a:some.jar"), line.toString());
        assertEquals(
                List.of("-Duser.language=tr", "-cp", "some.jar", "coldseam.cli.Main", "check", "a house.yaml"),
                line.subList(line.size() - 6, line.size()));
    }

    /** What it finds wrong with an option it would say on each run. */
    @Test
    void theMachineFindsNothingWrongWithTheOptionsOfAShortRun() throws Exception {
        List<String> line = line(List.of(), "check").orElseThrow();
        assertTrue(line.contains("-XX:ArchiveRelocationMode=0"), line.toString());
        String said = said(line);
        assertFalse(said.toLowerCase(Locale.ROOT).contains("warning"), said);
    }

    @Test
    void memoryOfTheCLibraryIsOnePoolUnlessSaidOtherwise() {
        assertEquals(
                System.getenv().getOrDefault("MALLOC_ARENA_MAX", "1"),
                Restart.process(List.of("java")).environment().get("MALLOC_ARENA_MAX"));
    }

    private static Optional<List<String>> plainly(String words, String arguments) {
        return Restart.plainly(List.of(words.split(" ")), List.of(arguments.split(" ")));
    }

    @Test
    void theWordsThatStartedItTellThePropertiesOnlyWhereTheyAreAllThereIs() {
        assertEquals(Optional.of(List.of()), plainly("-jar some.jar check a.yaml", "check a.yaml"));
        assertEquals(
                Optional.of(List.of("-Da=b", "-Dc")),
                plainly("-Da=b -cp some.jar -Dc coldseam.cli.Main check -Xmx", "check -Xmx"));
        for (String more : List.of("-Xmx300m", "@options", "-ea", "-XX:Flags=some.txt", "-javaagent:a.jar")) {
            assertEquals(Optional.empty(), plainly(more + " -jar some.jar check", "check"));
            assertEquals(Optional.empty(), plainly("-cp some.jar " + more + " coldseam.cli.Main check", "check"));
        }
        assertEquals(Optional.empty(), plainly("-jar some.jar @arguments", "check a.yaml"), "arguments of a file");
        assertEquals(Optional.empty(), plainly("-jar some.jar check", "check a.yaml"));
        assertEquals(Optional.empty(), plainly("-jar", "check"));
        assertEquals(Optional.empty(), plainly("-cp some.jar another.Main check", "check"));
        assertEquals(Optional.empty(), plainly("-cp", "check"));
    }

    /** However this JVM was started: by words that tell all, or by others, so that it must be asked. */
    @Test
    void whatThisOneWasGivenIsWhatItSays() {
        assertEquals(
                java.lang.management.ManagementFactory.getRuntimeMXBean().getInputArguments(),
                Restart.given(List.of("check")));
    }

    @Test
    void whoeverGivesTheMachineOptionsKeepsThem() {
        assertTrue(line(List.of("-Xmx300m"), "audit").isEmpty());
        assertTrue(line(List.of("-Da=b", "-agentlib:jdwp"), "audit").isEmpty());
    }

    /** What a JVM with a line's options, and more, says of itself. */
    private static String said(List<String> line, String... more) throws Exception {
        List<String> command = Stream.of(
                        Stream.of(JAVA.toString()),
                        line.stream()
                                .filter(each ->
                                        each.startsWith("-XX") && !each.equals("-XX:+IgnoreUnrecognizedVMOptions")),
                        Stream.of(more),
                        Stream.of("-version"))
                .flatMap(each -> each)
                .toList();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return said;
    }

    @Test
    void sweepLeavesTheOptimisingCompilerFewLoopsAndSaysNothingOfIt() throws Exception {
        for (String[] words :
                new String[][] {{"catalogue", "--atlas", "a"}, {"catalogue", "--kind=sill", "--atlas=a"}}) {
            List<String> line = line(List.of(), words).orElseThrow();
            assertFalse(line.contains("-XX:TieredStopAtLevel=1"), line.toString());
            assertEquals(said(List.of()), said(line));
            String all = said(line, "-XX:+DisplayVMOutput", "-XX:+CompilerDirectivesPrint");
            assertTrue(all.contains("coldseam/conduction/*.*"), all);
            assertTrue(all.contains("Exclude:true"), all);
            // A class that was renamed would be left to the first compiler, and nothing would tell.
            List<String> own = Pattern.compile("coldseam(?:/[\\w$]+)+(?=\\.\\*)")
                    .matcher(all)
                    .results()
                    .map(each -> each.group().replace('/', '.'))
                    .toList();
            assertFalse(own.isEmpty(), all);
            for (String each : own) {
                assertEquals(each, Class.forName(each).getName());
            }
        }
    }

    @Test
    void whatEndsAtOnceRunsWhereItIs() {
        assertTrue(line(List.of(), "audit").isPresent());
        assertTrue(line(List.of(), "catalogue", "--kind=sill").isEmpty());
        assertTrue(line(List.of(), "--version").isEmpty());
        assertTrue(line(List.of()).isEmpty());
    }

    @Test
    void whatNoOtherProcessCouldOpenRunsWhereItIs() {
        assertTrue(line(List.of(), "check", "Stra\ufffd\ufffde.yaml").isEmpty());
        assertTrue(line(List.of(), "check", "/dev/fd/63").isEmpty());
        assertTrue(line(List.of(), "check", "Straße.yaml").isPresent());
    }

    @Test
    void whatWasStartedStartsNoOther() {
        List<String> line = line(List.of(), "audit").orElseThrow();
        List<String> given = line.stream().filter(each -> each.startsWith("-D")).toList();
        assertFalse(given.isEmpty());
        assertTrue(line(given, "audit").isEmpty());
    }

    /** A jar of one's own with something in the archive's place: how a line begins its class path tells whether it is taken. */
    private List<String> beside(byte[] archive, boolean stamped) throws Exception {
        Path jar = Files.writeString(folder.resolve("some.jar"), "a jar").toRealPath();
        Path file = Files.write(Restart.archive(jar), archive);
        Files.setLastModifiedTime(jar, FileTime.fromMillis(1_000_000));
        Files.setLastModifiedTime(file, FileTime.fromMillis(stamped ? 1_000_000 : 1_000_001));
        return Restart.line(JAVA, List.of(), jar.toString(), List.of("check", "missing.yaml"))
                .orElseThrow();
    }

    @Test
    void archiveIsTakenWithItsJarsTimeAlone() throws Exception {
        String taken = "-XX:SharedArchiveFile=" + folder.toRealPath().resolve("some.jar.jsa");
        assertTrue(beside(new byte[1], true).contains(taken));
        assertFalse(beside(new byte[1], false).contains(taken));
        Files.delete(folder.resolve("some.jar.jsa"));
        assertFalse(Restart.line(JAVA, List.of(), folder.resolve("some.jar").toString(), List.of("check"))
                .orElseThrow()
                .contains(taken));
        String two = folder.resolve("some.jar") + File.pathSeparator + folder.resolve("some.jar");
        assertTrue(Restart.line(JAVA, List.of(), two, List.of("check"))
                .orElseThrow()
                .contains(two));
    }

    private Process started(String... arguments) throws Exception {
        return startedFrom(CLASSES, arguments);
    }

    private Process startedFrom(String classPath, String... arguments) throws Exception {
        ProcessBuilder process = new ProcessBuilder(JAVA.toString(), "-cp", classPath, Main.class.getName())
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile());
        process.command().addAll(List.of(arguments));
        process.environment().remove("JDK_JAVA_OPTIONS");
        process.environment().remove("JAVA_TOOL_OPTIONS");
        return process.start();
    }

    @Test
    @Tag("slow")
    void exitCodeAndWordsAreThoseOfTheCommand() throws Exception {
        Process process = started("check", "missing.yaml");
        assertTrue(process.waitFor(HANGS_SECONDS, TimeUnit.SECONDS), "the run hangs");
        String said = Files.readString(folder.resolve("said.txt"));
        assertEquals(Exit.REFUSED.code(), process.exitValue(), said);
        assertTrue(said.contains("missing.yaml"), said);
        assertFalse(said.contains("[warning]"), "the JVM finds fault with its options: " + said);
    }

    /** What is asked for by a name would be looked for, and written, in a folder that is none. */
    @Test
    @Tag("slow")
    void fromAFolderWhoseNameCannotBeReadNothingIsDone() throws Exception {
        Process process = new ProcessBuilder(
                        JAVA.toString(),
                        "-Duser.dir=" + folder.resolve("Stra??e"),
                        "-cp",
                        CLASSES,
                        Main.class.getName(),
                        "start",
                        "house.yaml")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        assertTrue(process.waitFor(HANGS_SECONDS, TimeUnit.SECONDS), "the run hangs");
        String said = Files.readString(folder.resolve("said.txt"));
        assertEquals(Exit.REFUSED.code(), process.exitValue(), said);
        assertTrue(said.startsWith("The folder that this runs in "), said);
        assertFalse(Files.exists(folder.resolve("Stra??e")), "it was made");
    }

    /** What the command says from a jar that names the class path, with this beside it in the archive's place. */
    private String saidBeside(Path archive) throws Exception {
        Path jar = folder.resolve("named.jar");
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes()
                .put(
                        Attributes.Name.CLASS_PATH,
                        Stream.of(CLASSES.split(File.pathSeparator))
                                .map(each -> Path.of(each).toUri().toString())
                                .collect(Collectors.joining(" ")));
        new JarOutputStream(Files.newOutputStream(jar), manifest).close();
        if (Files.exists(archive)) {
            Path beside = Restart.archive(jar);
            Files.copy(archive, beside, StandardCopyOption.REPLACE_EXISTING);
            Files.setLastModifiedTime(beside, Files.getLastModifiedTime(jar));
        }
        assertEquals(
                Files.exists(archive),
                Restart.line(JAVA, List.of(), jar.toString(), List.of("check")).orElseThrow().stream()
                        .anyMatch(each -> each.startsWith("-XX:SharedArchiveFile=")));
        Process process = startedFrom(jar.toString(), "check", "missing.yaml");
        assertTrue(process.waitFor(HANGS_SECONDS, TimeUnit.SECONDS), "the run hangs");
        String said = Files.readString(folder.resolve("said.txt"));
        assertEquals(Exit.REFUSED.code(), process.exitValue(), said);
        return said;
    }

    @Test
    @Tag("slow")
    void archiveThatDoesNotFitChangesNoWord() throws Exception {
        String without = saidBeside(folder.resolve("none.jsa"));
        assertTrue(without.contains("missing.yaml"), without);
        assertEquals(without, saidBeside(Files.writeString(folder.resolve("broken.jsa"), "no archive")));
        // One of another program: the JVM reads it, and finds other jars named in it.
        Path other = folder.resolve("other.jsa");
        Process making = new ProcessBuilder(
                        JAVA.toString(),
                        "-Xlog:disable",
                        "-XX:ArchiveClassesAtExit=" + other,
                        "-cp",
                        jar(),
                        "picocli.CommandLine")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("making.txt").toFile())
                .start();
        assertTrue(making.waitFor(HANGS_SECONDS, TimeUnit.SECONDS), "the run hangs");
        assertTrue(Files.size(other) > 0, "this JVM makes no archive");
        assertEquals(without, saidBeside(other));
    }

    /** Some jar of the class path. */
    private static String jar() {
        return Stream.of(CLASSES.split(File.pathSeparator))
                .filter(each -> each.contains("picocli"))
                .findFirst()
                .orElseThrow();
    }
}
