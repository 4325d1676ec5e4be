package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Short commands run in a JVM whose options suit them, and nobody notices but by the time; {@link ProcessesTest} kills one. */
class RestartTest {

    /** A guard against hanging; no speed is asserted. */
    private static final long HANGS_SECONDS = 120;

    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

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

    @Test
    void whoeverGivesTheMachineOptionsKeepsThem() {
        assertTrue(line(List.of("-Xmx300m"), "audit").isEmpty());
        assertTrue(line(List.of("-Da=b", "-agentlib:jdwp"), "audit").isEmpty());
    }

    @Test
    void whatRunsLongOrAtOnceRunsWhereItIs() {
        assertTrue(line(List.of(), "audit").isPresent());
        assertTrue(line(List.of(), "catalogue", "--atlas", "atlas").isEmpty());
        assertTrue(line(List.of(), "--version").isEmpty());
        assertTrue(line(List.of()).isEmpty());
    }

    @Test
    void whatWasStartedStartsNoOther() {
        List<String> line = line(List.of(), "audit").orElseThrow();
        List<String> given = line.stream().filter(each -> each.startsWith("-D")).toList();
        assertFalse(given.isEmpty());
        assertTrue(line(given, "audit").isEmpty());
    }

    private Process started(String... arguments) throws Exception {
        ProcessBuilder process = new ProcessBuilder(
                        JAVA.toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Main.class.getName())
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
}
