package coldseam.cli;

import coldseam.files.AtomicFiles;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Runs a command in a JVM whose options suit it, which neither a jar nor a program can ask for from within.
 *
 * <p>An audit ends before the optimising compiler has earned its keep: with the first compiler alone, and one thread that
 * collects garbage, the demo house takes half the processor time and half the memory (reports/performance.md). Whoever gives
 * options to the JVM keeps them, and the command then runs where it was started.
 *
 * <p>A sweep lasts longer, and its time goes into the solver's loops, which the optimising compiler makes two to three times as
 * fast. More than eight tenths of what that compiler did were for all else, and it took a third of the whole sweep's processor
 * time: so it is left the solver, and of all else two short loops that pay for it: the ways over points, and the platform's
 * root of two squares, which most of what is drawn asks for.
 *
 * <p>What is young in a short run gets a size of its own, and what lives on little more than it needs: left to themselves both
 * grow with the house, to a fifth more memory in all, in no less time.
 *
 * <p>The tool's own jars are appended to the platform's: the same classes are then loaded without the detour over a class loader
 * written in Java, and not verified, which guards against foreign code and took a twelfth of a run.
 *
 * <p>JDK 17 makes a class for each method or constructor that is called by reflection for the 16th time, some 340 of them; here
 * for those alone that are called often. Later JDKs do not know the property.
 *
 * <p>Where the build has left an archive of the classes beside the jar, they are taken from there, linked already. It is taken only
 * with the time stamp that the build gives it when it is whole: of one that was cut short the JVM dies. Whatever else the JVM
 * finds wrong with it, it says nothing and reads the jar. It is mapped where it was written, as is the platform's own: elsewhere
 * every pointer in them is written anew at each start, a tenth of a kept run, and no page of them is left on disk.
 *
 * <p>It loads as little as it can, since what it loads is loaded twice: hence the collections of the platform.
 */
final class Restart {

    /** Set in the JVM that was started, which starts no other and ends with the one that did. */
    static final String MARK = "coldseam.restarted";

    private static final String ATLAS = "--atlas";

    private static final Set<String> SHORT = Set.of("audit", "check", "compare");

    private static final List<String> OPTIONS = List.of(
            "-XX:+IgnoreUnrecognizedVMOptions",
            "-XX:+UnlockDiagnosticVMOptions",
            "-XX:ArchiveRelocationMode=0",
            "-XX:+UseSerialGC",
            "-Dsun.reflect.inflationThreshold=1000",
            "-D" + MARK + "=true");

    private static final List<String> OF_SHORT =
            List.of("-XX:TieredStopAtLevel=1", "-Xms25m", "-Xmn24m", "-XX:MinHeapFreeRatio=20");

    /** What the optimising compiler is to leave to the first one: all but what is named. */
    private static final String DIRECTIVES = """
            [
              {
                match: [
                  "coldseam/conduction/*.*",
                  "coldseam/junctions/path/LeastWays.*",
                  "java/lang/FdLibm$Hypot.*"
                ],
                c2: { Exclude: false }
              },
              { match: "*.*", c2: { Exclude: true } }
            ]
            """;

    private Restart() {}

    /** Where the archive of a jar's classes lies. */
    static Path archive(Path jar) {
        return jar.resolveSibling(jar.getFileName() + ".jsa");
    }

    /** What this JVM was given: options and properties. */
    static List<String> given(List<String> arguments) {
        boolean unseen = System.getenv("JDK_JAVA_OPTIONS") != null
                || System.getenv("JAVA_TOOL_OPTIONS") != null
                || System.getenv("_JAVA_OPTIONS") != null;
        Optional<String[]> words = ProcessHandle.current().info().arguments();
        return (unseen || words.isEmpty() ? Optional.<List<String>>empty() : plainly(List.of(words.get()), arguments))
                .orElseGet(() -> ManagementFactory.getRuntimeMXBean().getInputArguments());
    }

    /**
     * The properties among the words that started a JVM, where there are but them and what it runs; empty where other words may be
     * options of its own. To ask the JVM itself takes longer than all else that is done here.
     *
     * @param words behind the program's name
     */
    static Optional<List<String>> plainly(List<String> words, List<String> arguments) {
        List<String> given = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            String word = words.get(at++);
            if (word.startsWith("-D")) {
                given.add(word);
            } else if (word.equals("-cp")) {
                at++;
            } else {
                boolean main = word.equals("-jar") ? at++ < words.size() : word.equals(Main.class.getName());
                return main
                                && words.subList(Math.min(at, words.size()), words.size())
                                        .equals(arguments)
                        ? Optional.of(given)
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /**
     * The command line of a JVM that suits a command; empty where this one does.
     *
     * @param java the program that starts a JVM
     * @param given what this JVM was given: options and properties
     */
    static Optional<List<String>> line(Path java, List<String> given, String classPath, List<String> arguments) {
        for (String option : given) {
            if (!option.startsWith("-D") || option.startsWith("-D" + MARK)) {
                return Optional.empty();
            }
        }
        if (arguments.stream().anyMatch(Restart::isForThisAlone)) {
            return Optional.empty();
        }
        Optional<List<String>> suiting = suiting(arguments);
        if (suiting.isEmpty()) {
            return Optional.empty();
        }
        Optional<Path> archived = archived(classPath);
        // The JVM compares the jar's name, as it is written, with the one in the archive.
        String jars = archived.map(Path::toString).orElse(classPath);
        List<String> line = new ArrayList<>(List.of(java.toString()));
        line.addAll(OPTIONS);
        line.addAll(suiting.get());
        if (archived.isPresent()) {
            line.addAll(List.of("-Xlog:cds*=off", "-XX:SharedArchiveFile=" + archive(archived.get())));
        }
        line.add("-Xbootclasspath/a:" + jars);
        line.addAll(given);
        line.addAll(List.of("-cp", jars, Main.class.getName()));
        line.addAll(arguments);
        return Optional.of(line);
    }

    /**
     * A name with a letter that this JVM could not read would be another one in the next, and what the shell opened for this
     * process the next has not.
     */
    private static boolean isForThisAlone(String argument) {
        return argument.indexOf('\ufffd') >= 0 || argument.startsWith("/dev/fd/");
    }

    /** The options for what a command does; empty where it runs as well where it is. */
    private static Optional<List<String>> suiting(List<String> arguments) {
        if (arguments.isEmpty()) {
            return Optional.empty();
        }
        if (SHORT.contains(arguments.get(0))) {
            return Optional.of(OF_SHORT);
        }
        return arguments.get(0).equals("catalogue")
                        && arguments.stream().anyMatch(each -> each.equals(ATLAS) || each.startsWith(ATLAS + "="))
                ? directives().map(file -> List.of("-XX:-DisplayVMOutput", "-XX:CompilerDirectivesFile=" + file))
                : Optional.empty();
    }

    /** A file of the compilers' directives, which the JVM reads from nowhere else, and would tell of; gone when this process ends. */
    private static Optional<Path> directives() {
        try {
            Path file = Files.createTempFile("coldseam", ".directives");
            file.toFile().deleteOnExit();
            AtomicFiles.write(file, DIRECTIVES);
            return Optional.of(file);
        } catch (IOException notHere) {
            return Optional.empty();
        }
    }

    /** The jar that is the whole class path, by its real name, where an archive of its classes lies beside it. */
    private static Optional<Path> archived(String classPath) {
        try {
            Path jar = Path.of(classPath).toRealPath();
            return Files.getLastModifiedTime(archive(jar)).equals(Files.getLastModifiedTime(jar))
                    ? Optional.of(jar)
                    : Optional.empty();
        } catch (IOException | InvalidPathException none) {
            return Optional.empty();
        }
    }

    /**
     * A command line as a process, whose C library (glibc; others do not know the word) keeps one pool of memory for all threads: the
     * compiler's and the deflater's pieces would lie about in as many as there are threads.
     */
    static ProcessBuilder process(List<String> line) {
        ProcessBuilder process = new ProcessBuilder(line);
        process.environment().putIfAbsent("MALLOC_ARENA_MAX", "1");
        return process;
    }

    /**
     * Runs a command line to its end, on this process's streams.
     *
     * @return its exit code; empty where no process can be started, so that the command runs here
     */
    static OptionalInt run(List<String> line) {
        try {
            Process process = process(line).inheritIO().start();
            Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
            return OptionalInt.of(process.waitFor());
        } catch (IOException notHere) {
            return OptionalInt.empty();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(Exit.FAULT.code());
        }
    }

    /** Ends this process as soon as the one that started it is gone: who kills that one means both. */
    static void endWithParent() {
        if (Boolean.getBoolean(MARK)) {
            ProcessHandle.current()
                    .parent()
                    .ifPresent(parent ->
                            parent.onExit().thenRun(() -> Runtime.getRuntime().halt(Exit.FAULT.code())));
        }
    }
}
