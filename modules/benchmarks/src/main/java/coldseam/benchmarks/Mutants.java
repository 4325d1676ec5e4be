package coldseam.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.CodeSigner;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.logging.LogManager;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.TagFilter;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.pitest.bytecode.analysis.ClassTree;
import org.pitest.classinfo.ClassName;
import org.pitest.classpath.ClassloaderByteArraySource;
import org.pitest.mutationtest.EngineArguments;
import org.pitest.mutationtest.build.InterceptorParameters;
import org.pitest.mutationtest.build.InterceptorType;
import org.pitest.mutationtest.build.MutationInterceptor;
import org.pitest.mutationtest.build.MutationInterceptorFactory;
import org.pitest.mutationtest.config.ReportOptions;
import org.pitest.mutationtest.engine.Mutater;
import org.pitest.mutationtest.engine.MutationDetails;
import org.pitest.mutationtest.engine.gregor.config.GregorEngineFactory;
import org.pitest.plugin.FeatureSetting;
import org.pitest.plugin.ToggleStatus;
import org.pitest.reloc.asm.ClassReader;
import org.pitest.reloc.asm.ClassVisitor;
import org.pitest.reloc.asm.ClassWriter;
import org.pitest.reloc.asm.MethodVisitor;
import org.pitest.reloc.asm.Opcodes;

/**
 * Puts faults into a room one at a time and says which no test sees: pitest's default mutants and filters, but all in one
 * process. Each mutant has a class loader of its own and is met only by the tests that enter its method, those first that found
 * others of its class, then the quickest. Time is the processor's, so that no busy machine kills a mutant.
 *
 * <p>Run by {@code mvn -Pmutation}; DEVELOPERS.md says how. Tests tagged slow are left out.
 */
public final class Mutants {

    /** A test may take so many times as long as of the sound code, and the grace, ns of processor time. */
    private static final int PATIENCE = 4;

    private static final long GRACE = 1_000_000_000L;

    /** ns by the clock in which nothing at all is done: a mutant may wait without end. */
    private static final long WAITS = 120_000_000_000L;

    private static final int STACK = 64 << 20;
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    /** Which methods were entered, by number; written by the code under test. */
    private static volatile boolean[] entered = {};

    /** What a test of the sound code enters, and takes, its class's own values with it, ns. */
    private record Sound(boolean[] enters, long time) {}

    private final Launcher launcher = LauncherFactory.create();
    private final PrintStream console;
    private final List<Path> folders;
    private final Set<String> room = new HashSet<>();
    private final ClassloaderByteArraySource source;
    private final Mutater mutater;
    private final Map<String, Integer> methods = new HashMap<>();
    private final Map<String, Sound> tests = new HashMap<>();
    private final Map<String, List<String>> killers = new HashMap<>();

    private Mutants(List<Path> folders, PrintStream console) throws IOException {
        this.console = console;
        this.folders = folders;
        for (Path folder : folders) {
            room.addAll(names(folder));
        }
        this.source = new ClassloaderByteArraySource(loader(Map.of()));
        this.mutater = new GregorEngineFactory()
                .createEngine(EngineArguments.arguments())
                .createMutator(source);
    }

    /** Called by the code under test. */
    public static void enter(int method) {
        entered[method] = true;
    }

    /**
     * Tries a sample, and adds a line for each to a file; a mutant that has its line there is not tried again.
     *
     * @param arguments the file; the folders of classes and of test classes; which classes (regular expressions, apart by a comma,
     *     those to leave out behind a !); which test classes likewise; the seed of the order; how many at most; the least share
     *     that must be killed, %
     */
    public static void main(String[] arguments) throws Exception {
        PrintStream console = System.out;
        // Tests may print what they like.
        System.setOut(new PrintStream(OutputStream.nullOutputStream()));
        LogManager.getLogManager().reset();
        Mutants mutants = new Mutants(List.of(Path.of(arguments[1]), Path.of(arguments[2])), console);
        double rate = mutants.run(
                Path.of(arguments[0]),
                arguments[3],
                arguments[4],
                Long.parseLong(arguments[5]),
                Integer.parseInt(arguments[6]));
        console.flush();
        // Daemon threads of mutants that never ended go with the process.
        System.exit(rate < Double.parseDouble(arguments[7]) ? 1 : 0);
    }

    private double run(Path file, String classes, String testClasses, long seed, int most) throws Exception {
        List<MutationDetails> all = new ArrayList<>();
        Map<String, byte[]> telling = new HashMap<>();
        for (String name : chosen(names(folders.get(0)), classes)) {
            byte[] bytes = source.getBytes(name).orElseThrow();
            all.addAll(mutants(name, bytes));
            telling.put(name, telling(name, bytes));
        }
        Collections.shuffle(all, new Random(seed));
        for (String name : chosen(names(folders.get(1)), testClasses)) {
            cover(name, telling);
        }
        Map<String, String> known = new HashMap<>();
        if (Files.exists(file)) {
            Files.readAllLines(file).forEach(line -> known.put(line.split("\t")[0], line));
        }
        Files.createDirectories(file.toAbsolutePath().getParent());
        List<MutationDetails> sample = all.subList(0, Math.min(most, all.size()));
        int killed = 0;
        for (MutationDetails each : sample) {
            String place = place(each);
            String line = known.get(place);
            if (line == null) {
                line = place + "\t" + end(each);
                Files.writeString(file, line + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            }
            boolean dead = line.contains("\tKILLED") || line.contains("\tTIMED_OUT");
            killed += dead ? 1 : 0;
            if (!dead) {
                console.println(line);
            }
        }
        // With -am a room below may have none of the classes asked for.
        double rate = sample.isEmpty() ? 100 : 100.0 * killed / sample.size();
        console.printf("%d mutants, %d tried, %d killed: %.1f %%%n", all.size(), sample.size(), killed, rate);
        return rate;
    }

    private static List<String> chosen(List<String> names, String patterns) {
        Map<Boolean, List<String>> without =
                Stream.of(patterns.split(",")).collect(Collectors.partitioningBy(each -> each.startsWith("!")));
        return names.stream()
                .filter(name -> without.get(false).stream().anyMatch(name::matches)
                        && without.get(true).stream().noneMatch(each -> name.matches(each.substring(1))))
                .toList();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(each -> folder.relativize(each).toString())
                    .filter(each -> each.endsWith(".class"))
                    .map(each -> each.replaceAll("\\.class$", "").replaceAll("[/\\\\]", "."))
                    .sorted()
                    .toList();
        }
    }

    private static String place(MutationDetails mutant) {
        return String.join(
                "|",
                mutant.getClassName().asJavaName(),
                mutant.getMethod(),
                mutant.getId().getLocation().getMethodDesc(),
                "" + mutant.getLineNumber(),
                mutant.getMutator().replaceAll(".*\\.", ""),
                "" + mutant.getFirstIndex(),
                mutant.getDescription());
    }

    private Collection<MutationDetails> mutants(String name, byte[] bytes) {
        Collection<MutationDetails> mutants = mutater.findMutations(ClassName.fromString(name));
        for (MutationInterceptor filter : filters()) {
            filter.begin(ClassTree.fromBytes(bytes));
            mutants = filter.intercept(mutants, mutater);
            filter.end();
        }
        return mutants;
    }

    /** Those that are on where nobody says; one that needs more than classes is left out. */
    @SuppressWarnings("deprecation")
    private List<MutationInterceptor> filters() {
        List<MutationInterceptor> filters = new ArrayList<>();
        for (MutationInterceptorFactory factory : ServiceLoader.load(MutationInterceptorFactory.class)) {
            if (factory.provides().isOnByDefault()) {
                FeatureSetting on = new FeatureSetting(factory.provides().name(), ToggleStatus.ACTIVATE, Map.of());
                try {
                    filters.add(factory.createInterceptor(
                            new InterceptorParameters(on, new ReportOptions(), null, source, null, null)));
                } catch (RuntimeException needsMore) {
                    continue;
                }
            }
        }
        filters.removeIf(each -> each.type() == InterceptorType.REPORT);
        filters.sort(Comparator.comparing(MutationInterceptor::type));
        return filters;
    }

    /** Runs a class's tests on sound code that tells which methods are entered; twice, since the first time loads and compiles. */
    private void cover(String testClass, Map<String, byte[]> telling) throws Exception {
        for (int time = 0; time < 2; time++) {
            entered = new boolean[methods.size()];
            ClassLoader loader = loader(telling);
            long loading = CLOCK.getCurrentThreadCpuTime();
            Class.forName(testClass, true, loader);
            loading = CLOCK.getCurrentThreadCpuTime() - loading;
            boolean[] before = entered;
            for (String test : tests(testClass, loader)) {
                entered = before.clone();
                long start = CLOCK.getCurrentThreadCpuTime();
                String fault = fault(test, loader);
                if (fault == null) {
                    tests.put(test, new Sound(entered, CLOCK.getCurrentThreadCpuTime() - start + loading));
                } else {
                    console.println("left out, fails on sound code: " + test + ": " + fault);
                    tests.remove(test);
                }
            }
        }
    }

    /** A class that says which of its methods are entered. */
    private byte[] telling(String name, byte[] bytes) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        new ClassReader(bytes)
                .accept(
                        new ClassVisitor(Opcodes.ASM9, writer) {
                            @Override
                            public MethodVisitor visitMethod(
                                    int access, String method, String types, String generic, String[] thrown) {
                                int number = methods.computeIfAbsent(name + method + types, none -> methods.size());
                                return new Entering(super.visitMethod(access, method, types, generic, thrown), number);
                            }
                        },
                        0);
        return writer.toByteArray();
    }

    private static final class Entering extends MethodVisitor {
        private final int number;

        Entering(MethodVisitor to, int number) {
            super(Opcodes.ASM9, to);
            this.number = number;
        }

        @Override
        public void visitCode() {
            super.visitCode();
            visitLdcInsn(number);
            visitMethodInsn(Opcodes.INVOKESTATIC, Mutants.class.getName().replace('.', '/'), "enter", "(I)V", false);
        }
    }

    /** Loads the room's classes itself, some of them in another form; all else is shared. */
    private ClassLoader loader(Map<String, byte[]> others) throws IOException {
        URL[] places = {folders.get(0).toUri().toURL(), folders.get(1).toUri().toURL()};
        return new URLClassLoader(places, Mutants.class.getClassLoader()) {
            @Override
            protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
                synchronized (getClassLoadingLock(name)) {
                    Class<?> loaded = findLoadedClass(name);
                    return loaded != null
                            ? loaded
                            : room.contains(name) ? findClass(name) : super.loadClass(name, resolve);
                }
            }

            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                byte[] other = others.get(name);
                return other == null
                        ? super.findClass(name)
                        : defineClass(name, other, 0, other.length, new CodeSource(places[0], (CodeSigner[]) null));
            }
        };
    }

    private static LauncherDiscoveryRequestBuilder request() {
        return LauncherDiscoveryRequestBuilder.request()
                .filters(TagFilter.excludeTags("slow"))
                .configurationParameter("jqwik.database", System.getProperty("java.io.tmpdir") + "/jqwik-of-mutants");
    }

    /** A class's methods of tests; one with parameters counts once. */
    private List<String> tests(String testClass, ClassLoader loader) {
        Thread.currentThread().setContextClassLoader(loader);
        TestPlan plan = launcher.discover(
                request().selectors(DiscoverySelectors.selectClass(testClass)).build());
        List<String> tests = new ArrayList<>();
        List<TestIdentifier> open = new ArrayList<>(plan.getRoots());
        while (!open.isEmpty()) {
            TestIdentifier next = open.remove(open.size() - 1);
            Set<TestIdentifier> parts = plan.getChildren(next);
            if (parts.isEmpty() && next.getParentId().isPresent()) {
                tests.add(next.getUniqueId());
            }
            open.addAll(parts);
        }
        return tests;
    }

    /** Why a test fails; null where it passes. */
    private String fault(String test, ClassLoader loader) {
        Thread.currentThread().setContextClassLoader(loader);
        String[] fault = {null};
        int[] ran = {0};
        launcher.execute(
                request().selectors(DiscoverySelectors.selectUniqueId(test)).build(), new TestExecutionListener() {
                    @Override
                    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
                        ran[0] += test.isTest() ? 1 : 0;
                        if (result.getStatus() == TestExecutionResult.Status.FAILED && fault[0] == null) {
                            fault[0] = result.getThrowable()
                                    .map(Throwable::toString)
                                    .orElse("")
                                    .lines()
                                    .findFirst()
                                    .orElse("");
                        }
                    }
                });
        return fault[0] == null && ran[0] == 0 ? "nothing ran" : fault[0];
    }

    /** The tests that enter a mutant's method, those first that killed others of its class, then the quickest. */
    private List<String> entering(MutationDetails mutant, List<String> before) {
        int method = methods.get(mutant.getClassName().asJavaName()
                + mutant.getMethod()
                + mutant.getId().getLocation().getMethodDesc());
        List<String> entering = new ArrayList<>(tests.keySet());
        entering.removeIf(each -> !tests.get(each).enters()[method]);
        entering.sort(
                Comparator.comparingInt((String each) -> before.contains(each) ? before.indexOf(each) : before.size())
                        .thenComparingLong(each -> tests.get(each).time())
                        .thenComparing(each -> each));
        return entering;
    }

    /** What becomes of a mutant. */
    private String end(MutationDetails mutant) throws InterruptedException {
        List<String> first = killers.computeIfAbsent(mutant.getClassName().asJavaName(), none -> new ArrayList<>());
        List<String> entering = entering(mutant, first);
        if (entering.isEmpty()) {
            return "NOT_ENTERED\t";
        }
        Meeting meeting = new Meeting(mutant, entering);
        Thread thread = new Thread(null, meeting, "mutant", STACK);
        thread.setDaemon(true);
        thread.start();
        do {
            thread.join(50);
        } while (thread.isAlive() && meeting.patient(thread));
        if (thread.isAlive()) {
            stop(thread);
            return "TIMED_OUT\t" + shortly(entering.get(meeting.at()));
        }
        if (meeting.end().startsWith("KILLED")) {
            first.remove(entering.get(meeting.at()));
            first.add(0, entering.get(meeting.at()));
        }
        return meeting.end();
    }

    /** A mutant that loops cannot be asked to end. */
    @SuppressWarnings({"deprecation", "removal"})
    private static void stop(Thread thread) throws InterruptedException {
        try {
            thread.stop();
            thread.join(3000);
        } catch (UnsupportedOperationException newerJava) {
            thread.setPriority(Thread.MIN_PRIORITY);
        }
    }

    private static String shortly(String test) {
        return test.replaceAll(".*class:([^\\]]*)\\].*?:([^\\]]*)\\].*", "$1#$2")
                .replaceAll("\\(.*", "")
                .replaceAll("^.*\\.", "");
    }

    /** One mutant against tests, one after another until one fails. */
    private final class Meeting implements Runnable {
        private final MutationDetails mutant;
        private final List<String> entering;
        private int at;
        private long since = -1;
        private long spentLast = -1;
        private long movedLast = System.nanoTime();
        private String end = "KILLED\tthread died";

        Meeting(MutationDetails mutant, List<String> entering) {
            this.mutant = mutant;
            this.entering = entering;
        }

        @Override
        public void run() {
            try {
                ClassLoader loader = loader(Map.of(
                        mutant.getClassName().asJavaName(),
                        mutater.getMutation(mutant.getId()).getBytes()));
                for (int i = 0; i < entering.size(); i++) {
                    begin(i);
                    String fault = fault(entering.get(i), loader);
                    if (fault != null) {
                        end = "KILLED\t" + shortly(entering.get(i));
                        return;
                    }
                }
                end = "SURVIVED\t" + entering.size();
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }

        private synchronized void begin(int test) {
            at = test;
            since = CLOCK.getCurrentThreadCpuTime();
        }

        synchronized int at() {
            return at;
        }

        String end() {
            return end;
        }

        /** On a busy machine a test may take its time: what counts is the processor's, or that nothing is done. */
        synchronized boolean patient(Thread thread) {
            long spent = CLOCK.getThreadCpuTime(thread.getId());
            long now = System.nanoTime();
            if (spent != spentLast) {
                spentLast = spent;
                movedLast = now;
            }
            boolean quick = since < 0
                    || spent - since <= PATIENCE * tests.get(entering.get(at)).time() + GRACE;
            return quick && now - movedLast < WAITS;
        }
    }
}
