package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.files.ClassFiles;
import coldseam.report.AuditJson;
import java.io.File;
import java.io.IOException;
import java.io.Serializable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntToLongFunction;
import java.util.function.IntUnaryOperator;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** What the jar's classes do is what those do that all other tests are of. */
class PlainCallsTest {

    /** Loads classes from memory, each name of theirs before anybody else's. */
    private static final class Memory extends ClassLoader {

        private final Map<String, byte[]> classes;

        Memory(Map<String, byte[]> classes) {
            super(PlainCallsTest.class.getClassLoader());
            this.classes = classes;
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                byte[] content = classes.get(name.replace('.', '/') + ".class");
                Class<?> known = findLoadedClass(name);
                return known != null || content == null
                        ? known != null ? known : super.loadClass(name, resolve)
                        : defineClass(name, content, 0, content.length);
            }
        }

        Object call(Class<?> in, String method) throws ReflectiveOperationException {
            try {
                var found = loadClass(in.getName()).getDeclaredMethod(method);
                found.setAccessible(true);
                return found.invoke(null);
            } catch (InvocationTargetException thrown) {
                throw new AssertionError(thrown.getCause());
            }
        }
    }

    /** An interface whose method a caller may know in two forms. */
    private interface Narrow extends Function<String, Integer> {
        @Override
        Integer apply(String text);
    }

    private interface Marker {}

    private interface WithBody {
        String name();

        private String twice() {
            return name() + name();
        }

        default Supplier<String> later() {
            return this::twice;
        }
    }

    private record Plain(boolean a, char b, byte c, short d, int e, long f, float g, double h, String i, int[] j) {}

    private record Empty() {}

    private record Pair<A, B>(A first, B second) {}

    /** Every form of a lambda and of a method's name, each in turn with others of its interface. */
    private static final class Samples {

        private final int own;

        private Samples(int own) {
            this.own = own;
        }

        private int plus(int more) {
            return own + more;
        }

        private static String all(Object... each) {
            return List.of(each).toString();
        }

        private static int few(byte given) {
            return given;
        }

        private Stream<Object> bound() {
            IntUnaryOperator here = this::plus;
            IntUnaryOperator there = more -> plus(more) + own;
            Supplier<Samples> next = () -> new Samples(own + 1);
            return Stream.of(here.applyAsInt(3), there.applyAsInt(4), next.get().own);
        }

        @SuppressWarnings("unused")
        private static List<String> results() {
            boolean a = true;
            char b = 'x';
            byte c = -3;
            short d = 300;
            int e = 70_000;
            long f = 1L << 40;
            float g = 0.5f;
            double h = -0.25;
            String i = "text";
            int[] j = {1, 2};
            Supplier<Object> captured = () -> a + "" + b + c + d + e + f + g + h + i + j.length;
            Supplier<Object> others = () -> h + f + "" + e + h;
            Function<Integer, Integer> unboxed = Math::abs;
            Function<Integer, Long> widened = Integer::longValue;
            Function<Object, String> any = String::valueOf;
            Function<String, Object> length = String::length;
            ToDoubleFunction<Integer> asDouble = Integer::intValue;
            ToLongFunction<Character> ofChar = each -> each;
            ToIntFunction<Byte> ofByte = Samples::few;
            IntToLongFunction toLong = Math::abs;
            DoubleBinaryOperator larger = Math::max;
            LongSupplier longs = i::length;
            DoubleSupplier doubles = new Samples(5)::own;
            BiFunction<String, String, Boolean> both = String::equals;
            BiFunction<Integer, Double, Pair<Integer, Double>> made = Pair::new;
            IntFunction<int[]> arrays = int[]::new;
            Function<Object[], String> many = Samples::all;
            Narrow narrow = String::length;
            Function<String, Integer> wide = narrow;
            Runnable marked = (Runnable & Marker & Serializable) () -> new Samples(1).plus(1);
            Predicate<String> empty = String::isEmpty;
            Map<String, Integer> counts = Map.of("a", 3);
            ToDoubleFunction<String> boxWidened = counts::get;
            ToLongFunction<Supplier<Integer>> gotWidened = Supplier::get;
            ToIntFunction<Supplier<Integer>> gotAsIs = Supplier::get;
            List<Object> heard = new ArrayList<>();
            Consumer<Object> hearing = heard::add;
            hearing.accept("heard");
            WithBody named = () -> "name";
            Plain one = new Plain(a, b, c, d, e, f, g, h, i, j);
            Plain nothing = new Plain(false, 'x', c, d, e, f, Float.NaN, -0.0, null, null);
            Stream<Object> all = Stream.of(
                    captured.get(),
                    others.get(),
                    unboxed.andThen(widened).apply(-7),
                    any.apply(null),
                    length.apply(i),
                    asDouble.applyAsDouble(9),
                    ofChar.applyAsLong('c'),
                    ofByte.applyAsInt(c),
                    toLong.applyAsLong(-8),
                    larger.applyAsDouble(1, 2),
                    longs.getAsLong(),
                    doubles.getAsDouble(),
                    both.apply("a", "a"),
                    made.apply(1, 2.5),
                    arrays.apply(4).length,
                    many.apply(new Object[] {1, 2}),
                    narrow.apply("abc"),
                    wide.apply("abcd"),
                    marked instanceof Marker,
                    empty.negate().or(empty).test(""),
                    heard,
                    boxWidened.applyAsDouble("a"),
                    gotWidened.applyAsLong(() -> 8),
                    gotAsIs.applyAsInt(() -> 9),
                    named.later().get(),
                    one.equals(new Plain(a, b, c, d, e, f, g, h, i, j)),
                    one.equals(new Plain(a, b, c, d, e, f, g, h, i, new int[] {1, 2})),
                    Stream.of(
                                    new Plain(!a, b, c, d, e, f, g, h, i, j),
                                    new Plain(a, 'z', c, d, e, f, g, h, i, j),
                                    new Plain(a, b, (byte) 0, d, e, f, g, h, i, j),
                                    new Plain(a, b, c, (short) 0, e, f, g, h, i, j),
                                    new Plain(a, b, c, d, 0, f, g, h, i, j),
                                    new Plain(a, b, c, d, e, 0, g, h, i, j),
                                    new Plain(a, b, c, d, e, f, 0, h, i, j),
                                    new Plain(a, b, c, d, e, f, g, 0, i, j),
                                    new Plain(a, b, c, d, e, f, g, h, "other", j))
                            .anyMatch(one::equals),
                    one.equals(null),
                    nothing.equals(new Plain(false, 'x', c, d, e, f, Float.NaN, -0.0, null, null)),
                    nothing.equals(new Plain(false, 'x', c, d, e, f, Float.NaN, 0.0, null, null)),
                    nothing.hashCode(),
                    nothing,
                    new Plain(true, 'y', c, d, e, f, 1e-3f, h, i, null).hashCode(),
                    new Empty().equals(new Empty()),
                    new Empty().hashCode(),
                    new Empty(),
                    new Pair<>(new Plain(a, b, c, d, e, f, g, h, i, null), new Pair<>(List.of(1), null)),
                    new Pair<>("a", new Pair<>(1, null)).hashCode());
            return Stream.concat(all, new Samples(6).bound())
                    .map(String::valueOf)
                    .toList();
        }

        private double own() {
            return own;
        }
    }

    private static Path folder(Class<?> in) {
        return Path.of(in.getProtectionDomain().getCodeSource().getLocation().getPath());
    }

    private static Map<String, byte[]> samples() {
        Map<String, byte[]> all = ClassFiles.of(folder(PlainCallsTest.class));
        all.keySet().removeIf(name -> !name.contains("/PlainCallsTest"));
        return PlainCalls.of(all);
    }

    @Test
    void eachFormOfALambdaDoesWhatItDid() throws ReflectiveOperationException {
        Memory plain = new Memory(samples());
        assertNotSame(Samples.class, plain.loadClass(Samples.class.getName()));
        assertEquals(Samples.results(), plain.call(Samples.class, "results"));
    }

    @Test
    void nothingIsLeftToBeMadeAtEachStart() {
        Map<String, byte[]> all = samples();
        List<String> left = new ArrayList<>();
        all.forEach((name, content) -> new ClassReader(content)
                .accept(
                        new ClassVisitor(Opcodes.ASM9) {
                            @Override
                            public MethodVisitor visitMethod(
                                    int access, String in, String form, String sort, String[] thrown) {
                                return new MethodVisitor(Opcodes.ASM9) {
                                    @Override
                                    public void visitInvokeDynamicInsn(
                                            String called, String makes, Handle linked, Object... with) {
                                        left.add(called);
                                    }
                                };
                            }
                        },
                        0));
        assertEquals(List.of(), left);
    }

    /** An archive of classes takes none that is older; what is younger stays as it is. */
    @Test
    void anOldClassIsCalledAsOldAsAnArchiveTakes() throws ReflectiveOperationException {
        ClassWriter old = new ClassWriter(0);
        old.visit(Opcodes.V1_5, Opcodes.ACC_PUBLIC, "Old", null, "java/lang/Object", null);
        MethodVisitor code = old.visitMethod(Opcodes.ACC_STATIC, "absolute", "()Ljava/lang/Object;", null, null);
        Label end = new Label();
        code.visitCode();
        code.visitLdcInsn("whole");
        code.visitInsn(Opcodes.ICONST_1);
        code.visitJumpInsn(Opcodes.IFNE, end);
        code.visitInsn(Opcodes.POP);
        code.visitLdcInsn("nothing");
        code.visitLabel(end);
        code.visitInsn(Opcodes.ARETURN);
        code.visitMaxs(2, 0);
        code.visitEnd();
        old.visitEnd();
        byte[] older = old.toByteArray();
        byte[] raised = PlainCalls.ofJdk6(older);
        assertEquals(Opcodes.V1_5, new ClassReader(older).readShort(6));
        assertEquals(Opcodes.V1_6, new ClassReader(raised).readShort(6));
        Method method = new Memory(Map.of("Old.class", raised)).loadClass("Old").getDeclaredMethod("absolute");
        method.setAccessible(true);
        assertEquals("whole", method.invoke(null), "without the frames that its new version may have");
        assertSame(raised, PlainCalls.ofJdk6(raised));
    }

    /** Everything that the tool has, as the JVM's own verifier sees it, and what one audit says. */
    @Test
    @Tag("slow")
    void aWholeAuditSaysTheSame(@TempDir Path folder) throws ReflectiveOperationException, IOException {
        Map<String, byte[]> all = new TreeMap<>();
        for (String each : System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                .split(File.pathSeparator)) {
            if (each.startsWith(System.getProperty("coldseam.root"))
                    && !each.endsWith("test-classes")
                    && !each.endsWith("-tests.jar")) {
                all.putAll(ClassFiles.of(Path.of(each)));
            }
        }
        assertTrue(all.containsKey("coldseam/files/Range.class"), "of all modules");
        Map<String, byte[]> plain = PlainCalls.of(all);
        assertTrue(plain.size() > all.size());
        Memory memory = new Memory(plain);
        for (String each : plain.keySet()) {
            memory.loadClass(
                            each.substring(0, each.length() - ".class".length()).replace('/', '.'))
                    .getDeclaredMethods();
        }
        Path house = Files.writeString(folder.resolve("house.yaml"), ProcessesTest.HOUSE);
        Class<?> ready = memory.loadClass(HouseAudit.class.getName());
        Class<?> shop = memory.loadClass("coldseam.audit.house.Workshop");
        Object other = ready.getMethod("of", Path.class, shop)
                .invoke(
                        null,
                        house,
                        memory.loadClass(BuiltInWorkshop.class.getName())
                                .getConstructor()
                                .newInstance());
        Object audit = ready.getMethod("compute").invoke(other);
        Object text = memory.loadClass(AuditJson.class.getName())
                .getMethod("text", audit.getClass())
                .invoke(null, audit);
        assertEquals(AuditJson.text(HouseAudit.of(house, new BuiltInWorkshop()).compute()), text);
    }
}
