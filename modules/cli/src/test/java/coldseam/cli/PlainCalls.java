package coldseam.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Writes into the jar, once and for all, what each JVM would make of its own code at every start: a class for each lambda, and
 * the equality, hash and words of each record.
 *
 * <p>A JVM makes them when they are first called, at a quarter of a millisecond each, and a run calls some 3,000. Here the lambdas
 * of a class that are of one interface share a class, which is loaded like any other, and a record compares its components by code
 * of its own, with the same hashes. Nothing else about a class changes; no lambda is ever written to a stream, so what javac adds
 * for that is left out.
 *
 * <p>Classes of libraries stay as they are, but for the version of those that are older than JDK 6, which no archive of classes
 * takes ({@link ClassArchive}): they are called as old as JDK 6 lets a class be that has no frames for its verifier.
 */
final class PlainCalls {

    private static final String OURS = "coldseam/";
    private static final String SUFFIX = ".class";
    private static final String OBJECT = "java/lang/Object";
    private static final String LAMBDAS = "java/lang/invoke/LambdaMetafactory";
    private static final String RECORDS = "java/lang/runtime/ObjectMethods";
    private static final String NUMBER = "java/lang/Number";
    private static final String BUILDER = "java/lang/StringBuilder";

    /** The field that tells the lambdas of a class apart; those of captured values are counted from one. */
    private static final String WHICH = "I0";

    /** Flags of {@code LambdaMetafactory.altMetafactory}. */
    private static final int IS_SERIALIZABLE = 1;

    private static final int HAS_MARKERS = 2;

    private static final int HAS_BRIDGES = 4;

    /** A method of more than 8,000 bytes is never compiled, and a call takes some 20. */
    private static final int MOST_OF_A_CLASS = 200;

    /** As in JDK 17's {@code ObjectMethods}: with other hash codes sets would be gone through in another order. */
    private static final int HASH_FACTOR = 31;

    private final Map<String, byte[]> made = new TreeMap<>();
    private final Map<String, List<String>> nests = new TreeMap<>();

    private PlainCalls() {}

    /** Rewrites a jar in its place. */
    public static void main(String... arguments) throws IOException {
        Path jar = Path.of(arguments[0]);
        Map<String, byte[]> files = new LinkedHashMap<>();
        long time;
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            time = zip.entries().nextElement().getTime();
            for (ZipEntry each : zip.stream().toList()) {
                files.put(each.getName(), zip.getInputStream(each).readAllBytes());
            }
        }
        Map<String, byte[]> classes = new LinkedHashMap<>(files);
        classes.keySet().removeIf(name -> !name.startsWith(OURS) || !name.endsWith(SUFFIX));
        files.putAll(of(classes));
        files.replaceAll((name, content) -> name.endsWith(SUFFIX) ? ofJdk6(content) : content);
        Path whole = jar.resolveSibling(jar.getFileName() + ".plain");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(whole))) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                ZipEntry entry = new ZipEntry(each.getKey());
                entry.setTime(time);
                zip.putNextEntry(entry);
                zip.write(each.getValue());
                zip.closeEntry();
            }
        }
        Files.move(whole, jar, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    /** Where a class file tells its version, high byte first. */
    private static final int VERSION = 6;

    /** A class that is at least of the version of JDK 6. */
    static byte[] ofJdk6(byte[] content) {
        boolean older = (content[VERSION] << Byte.SIZE | content[VERSION + 1]) < Opcodes.V1_6;
        byte[] same = older ? content.clone() : content;
        if (older) {
            same[VERSION + 1] = Opcodes.V1_6;
        }
        return same;
    }

    /**
     * The same classes with those that they need beside them.
     *
     * @param classes content by the name of the file, all of each nest
     */
    static Map<String, byte[]> of(Map<String, byte[]> classes) {
        PlainCalls all = new PlainCalls();
        // A nest's host lists its members, so it comes after them: its name is what theirs begin with.
        classes.keySet().stream()
                .map(file -> file.substring(0, file.length() - SUFFIX.length()))
                .sorted(Comparator.reverseOrder())
                .map(name -> name + SUFFIX)
                .forEach(file -> all.made.put(file, all.rewritten(classes.get(file))));
        return all.made;
    }

    private byte[] rewritten(byte[] content) {
        ClassReader reader = new ClassReader(content);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(new Host(writer), 0);
        return writer.toByteArray();
    }

    /**
     * A lambda.
     *
     * @param makes the descriptor of what makes it: what it captures, and its interface
     * @param does the method that it calls
     * @param sees types that its interface's method has here, where that knows but their erasures
     */
    private record Site(String makes, Handle does, Type sees) {

        Type[] captured() {
            return Type.getArgumentTypes(makes);
        }
    }

    /**
     * What lambdas must have in common to share a class.
     *
     * @param interfaces the internal names of its own first
     * @param method the interface's, by name
     * @param forms its descriptor, and those that a caller may know it by beside
     */
    private record Sort(List<String> interfaces, String method, List<String> forms) {}

    /** A class of lambdas of one sort. */
    private record Shared(String name, String nest, Sort sort, List<Site> sites) {

        boolean several() {
            return sites.size() > 1;
        }
    }

    /** Copies a class, with plain calls in place of those that are linked when they are first made. */
    private final class Host extends ClassVisitor {

        private final Map<Sort, List<Shared>> shared = new LinkedHashMap<>();
        private final List<Runnable> methods = new ArrayList<>();
        private String name;
        private String nest;
        private int count;

        Host(ClassVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visit(int version, int access, String own, String generic, String parent, String[] interfaces) {
            name = own;
            nest = own;
            super.visit(version, access, own, generic, parent, interfaces);
        }

        @Override
        public void visitNestHost(String host) {
            nest = host;
            super.visitNestHost(host);
        }

        @Override
        public MethodVisitor visitMethod(int access, String method, String form, String generic, String[] thrown) {
            return method.equals("$deserializeLambda$")
                    ? null
                    : new MethodVisitor(Opcodes.ASM9, super.visitMethod(access, method, form, generic, thrown)) {
                        @Override
                        public void visitInvokeDynamicInsn(String called, String makes, Handle linked, Object... with) {
                            if (linked.getOwner().equals(LAMBDAS)) {
                                lambda(called, makes, linked, with, this);
                            } else if (linked.getOwner().equals(RECORDS)) {
                                String plain = called + "$plain";
                                methods.add(() -> ofRecord(plain, called, makes, with));
                                super.visitMethodInsn(Opcodes.INVOKESTATIC, name, plain, makes, false);
                            } else {
                                super.visitInvokeDynamicInsn(called, makes, linked, with);
                            }
                        }
                    };
        }

        private void lambda(String called, String makes, Handle linked, Object[] with, MethodVisitor here) {
            List<String> interfaces =
                    new ArrayList<>(List.of(Type.getReturnType(makes).getInternalName()));
            List<String> forms = new ArrayList<>(List.of(with[0].toString()));
            if (linked.getName().equals("altMetafactory")) {
                int flags = (Integer) with[3];
                int at = 4;
                if ((flags & IS_SERIALIZABLE) != 0) {
                    interfaces.add("java/io/Serializable");
                }
                for (int flag : new int[] {HAS_MARKERS, HAS_BRIDGES}) {
                    if ((flags & flag) != 0) {
                        int many = (Integer) with[at++];
                        for (; many > 0; many--) {
                            Type more = (Type) with[at++];
                            (flag == HAS_MARKERS ? interfaces : forms)
                                    .add(flag == HAS_MARKERS ? more.getInternalName() : more.getDescriptor());
                        }
                    }
                }
            }
            Sort sort = new Sort(interfaces, called, forms);
            List<Shared> of = shared.computeIfAbsent(sort, none -> new ArrayList<>());
            if (of.isEmpty() || of.get(of.size() - 1).sites().size() == MOST_OF_A_CLASS) {
                of.add(new Shared(name + "$$" + count++, nest, sort, new ArrayList<>()));
            }
            Shared last = of.get(of.size() - 1);
            here.visitMethodInsn(
                    Opcodes.INVOKESTATIC, last.name(), maker(last.sites().size()), makes, false);
            last.sites().add(new Site(makes, (Handle) with[1], (Type) with[2]));
        }

        private void ofRecord(String plain, String called, String form, Object... with) {
            MethodVisitor code = super.visitMethod(
                    Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC, plain, form, null, null);
            code.visitCode();
            List<Handle> components = new ArrayList<>();
            for (int i = 2; i < with.length; i++) {
                components.add((Handle) with[i]);
            }
            int stack = switch (called) {
                case "equals" -> equality(code, components);
                case "hashCode" -> hash(code, components);
                default -> words(code, components);
            };
            code.visitMaxs(stack, Type.getArgumentTypes(form).length);
            code.visitEnd();
        }

        private int equality(MethodVisitor code, List<Handle> components) {
            Label other = new Label();
            Label different = new Label();
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitVarInsn(Opcodes.ALOAD, 1);
            code.visitJumpInsn(Opcodes.IF_ACMPNE, other);
            code.visitInsn(Opcodes.ICONST_1);
            code.visitInsn(Opcodes.IRETURN);
            code.visitLabel(other);
            code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
            code.visitVarInsn(Opcodes.ALOAD, 1);
            code.visitTypeInsn(Opcodes.INSTANCEOF, name);
            code.visitJumpInsn(Opcodes.IFEQ, different);
            for (Handle each : components) {
                code.visitVarInsn(Opcodes.ALOAD, 0);
                code.visitFieldInsn(Opcodes.GETFIELD, name, each.getName(), each.getDesc());
                code.visitVarInsn(Opcodes.ALOAD, 1);
                code.visitTypeInsn(Opcodes.CHECKCAST, name);
                code.visitFieldInsn(Opcodes.GETFIELD, name, each.getName(), each.getDesc());
                switch (Type.getType(each.getDesc()).getSort()) {
                    case Type.LONG -> {
                        code.visitInsn(Opcodes.LCMP);
                        code.visitJumpInsn(Opcodes.IFNE, different);
                    }
                    case Type.FLOAT, Type.DOUBLE -> {
                        String both = '(' + each.getDesc() + each.getDesc() + ")I";
                        call(code, Opcodes.INVOKESTATIC, wrapper(Type.getType(each.getDesc())), "compare", both);
                        code.visitJumpInsn(Opcodes.IFNE, different);
                    }
                    case Type.OBJECT, Type.ARRAY -> {
                        String both = "(Ljava/lang/Object;Ljava/lang/Object;)Z";
                        call(code, Opcodes.INVOKESTATIC, "java/util/Objects", "equals", both);
                        code.visitJumpInsn(Opcodes.IFEQ, different);
                    }
                    default -> code.visitJumpInsn(Opcodes.IF_ICMPNE, different);
                }
            }
            code.visitInsn(Opcodes.ICONST_1);
            code.visitInsn(Opcodes.IRETURN);
            code.visitLabel(different);
            code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
            code.visitInsn(Opcodes.ICONST_0);
            code.visitInsn(Opcodes.IRETURN);
            return 4;
        }

        private int hash(MethodVisitor code, List<Handle> components) {
            code.visitInsn(Opcodes.ICONST_0);
            for (Handle each : components) {
                code.visitIntInsn(Opcodes.BIPUSH, HASH_FACTOR);
                code.visitInsn(Opcodes.IMUL);
                code.visitVarInsn(Opcodes.ALOAD, 0);
                code.visitFieldInsn(Opcodes.GETFIELD, name, each.getName(), each.getDesc());
                Type type = Type.getType(each.getDesc());
                boolean plain = isPrimitive(type);
                String owner = plain ? wrapper(type) : "java/util/Objects";
                call(
                        code,
                        Opcodes.INVOKESTATIC,
                        owner,
                        "hashCode",
                        '(' + (plain ? each.getDesc() : "Ljava/lang/Object;") + ")I");
                code.visitInsn(Opcodes.IADD);
            }
            code.visitInsn(Opcodes.IRETURN);
            return 3;
        }

        private int words(MethodVisitor code, List<Handle> components) {
            code.visitTypeInsn(Opcodes.NEW, BUILDER);
            code.visitInsn(Opcodes.DUP);
            call(code, Opcodes.INVOKESPECIAL, BUILDER, "<init>", "()V");
            code.visitLdcInsn(Type.getObjectType(name));
            call(code, Opcodes.INVOKEVIRTUAL, "java/lang/Class", "getSimpleName", "()Ljava/lang/String;");
            append(code, "Ljava/lang/String;");
            String before = "[";
            for (Handle each : components) {
                code.visitLdcInsn(before + each.getName() + "=");
                append(code, "Ljava/lang/String;");
                code.visitVarInsn(Opcodes.ALOAD, 0);
                code.visitFieldInsn(Opcodes.GETFIELD, name, each.getName(), each.getDesc());
                Type type = Type.getType(each.getDesc());
                boolean small = type == Type.BYTE_TYPE || type == Type.SHORT_TYPE;
                append(code, !isPrimitive(type) ? "Ljava/lang/Object;" : small ? "I" : each.getDesc());
                before = ", ";
            }
            code.visitLdcInsn(components.isEmpty() ? "[]" : "]");
            append(code, "Ljava/lang/String;");
            call(code, Opcodes.INVOKEVIRTUAL, BUILDER, "toString", "()Ljava/lang/String;");
            code.visitInsn(Opcodes.ARETURN);
            return 3;
        }

        private static void append(MethodVisitor code, String form) {
            call(code, Opcodes.INVOKEVIRTUAL, BUILDER, "append", '(' + form + ")L" + BUILDER + ';');
        }

        @Override
        public void visitEnd() {
            methods.forEach(Runnable::run);
            for (List<Shared> each : shared.values()) {
                for (Shared one : each) {
                    made.put(one.name() + SUFFIX, content(one));
                    nests.computeIfAbsent(nest, none -> new ArrayList<>()).add(one.name());
                }
            }
            nests.getOrDefault(name, List.of()).forEach(super::visitNestMember);
            super.visitEnd();
        }
    }

    private static String maker(int site) {
        return "make" + site;
    }

    private static byte[] content(Shared shared) {
        ClassWriter type = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        String[] interfaces = shared.sort().interfaces().stream().distinct().toArray(String[]::new);
        int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
        type.visit(Opcodes.V17, access, shared.name(), null, OBJECT, interfaces);
        type.visitNestHost(shared.nest());
        Set<List<String>> kept = new LinkedHashSet<>();
        shared.sites().forEach(site -> kept.add(kept(shared, site)));
        // Final, so that a lambda is whole in whatever thread it is met, as one that the JVM makes.
        kept.stream()
                .flatMap(List::stream)
                .distinct()
                .sorted()
                .forEach(field ->
                        type.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field, held(field), null, null));
        kept.forEach(fields -> constructor(type, shared, fields));
        for (int i = 0; i < shared.sites().size(); i++) {
            maker(type, shared, i);
        }
        shared.sort().forms().stream().distinct().forEach(form -> method(type, shared, form));
        type.visitEnd();
        return type.toByteArray();
    }

    /** Where a lambda's captured values are held: each sort has its fields, which all lambdas of the class use. */
    private static List<String> fields(Site site) {
        Map<Character, Integer> counts = new TreeMap<>();
        List<String> fields = new ArrayList<>();
        for (Type each : site.captured()) {
            char sort = switch (each.getSort()) {
                case Type.LONG, Type.FLOAT, Type.DOUBLE -> each.getDescriptor().charAt(0);
                case Type.OBJECT, Type.ARRAY -> 'L';
                default -> 'I';
            };
            fields.add("" + sort + counts.merge(sort, 1, Integer::sum));
        }
        return fields;
    }

    /** The fields that a lambda sets: what it captures, and which of its class it is. */
    private static List<String> kept(Shared shared, Site site) {
        List<String> fields = fields(site);
        if (shared.several()) {
            fields.add(WHICH);
        }
        return fields;
    }

    private static String held(String field) {
        return field.startsWith("L") ? "Ljava/lang/Object;" : field.substring(0, 1);
    }

    private static String setting(List<String> fields) {
        return fields.stream().map(PlainCalls::held).collect(Collectors.joining("", "(", ")V"));
    }

    private static void constructor(ClassVisitor type, Shared shared, List<String> fields) {
        MethodVisitor code = begun(type, Opcodes.ACC_PRIVATE, "<init>", setting(fields));
        code.visitVarInsn(Opcodes.ALOAD, 0);
        call(code, Opcodes.INVOKESPECIAL, OBJECT, "<init>", "()V");
        int local = 1;
        for (String field : fields) {
            Type held = Type.getType(held(field));
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitVarInsn(held.getOpcode(Opcodes.ILOAD), local);
            code.visitFieldInsn(Opcodes.PUTFIELD, shared.name(), field, held(field));
            local += held.getSize();
        }
        ended(code, Opcodes.RETURN);
    }

    private static void maker(ClassVisitor type, Shared shared, int number) {
        Site site = shared.sites().get(number);
        MethodVisitor code = begun(type, Opcodes.ACC_STATIC, maker(number), site.makes());
        code.visitTypeInsn(Opcodes.NEW, shared.name());
        code.visitInsn(Opcodes.DUP);
        int local = 0;
        for (Type captured : site.captured()) {
            code.visitVarInsn(captured.getOpcode(Opcodes.ILOAD), local);
            local += captured.getSize();
        }
        if (shared.several()) {
            code.visitIntInsn(Opcodes.SIPUSH, number);
        }
        call(code, Opcodes.INVOKESPECIAL, shared.name(), "<init>", setting(kept(shared, site)));
        ended(code, Opcodes.ARETURN);
    }

    private static void method(ClassVisitor type, Shared shared, String form) {
        MethodVisitor code = begun(type, Opcodes.ACC_PUBLIC, shared.sort().method(), form);
        if (shared.several()) {
            Label[] cases = shared.sites().stream().map(site -> new Label()).toArray(Label[]::new);
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitFieldInsn(Opcodes.GETFIELD, shared.name(), WHICH, "I");
            code.visitTableSwitchInsn(0, cases.length - 1, cases[0], cases);
            for (int i = 0; i < cases.length; i++) {
                code.visitLabel(cases[i]);
                code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
                body(code, shared.name(), shared.sites().get(i), form);
            }
        } else {
            body(code, shared.name(), shared.sites().get(0), form);
        }
        code.visitMaxs(0, 0);
        code.visitEnd();
    }

    private static void body(MethodVisitor code, String owner, Site site, String form) {
        Handle does = site.does();
        boolean making = does.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        Type object = Type.getObjectType(does.getOwner());
        List<Type> wanted = new ArrayList<>(List.of(Type.getArgumentTypes(does.getDesc())));
        if (making) {
            code.visitTypeInsn(Opcodes.NEW, does.getOwner());
            code.visitInsn(Opcodes.DUP);
        } else if (does.getTag() != Opcodes.H_INVOKESTATIC) {
            wanted.add(0, object);
        }
        int at = 0;
        for (String field : fields(site)) {
            code.visitVarInsn(Opcodes.ALOAD, 0);
            code.visitFieldInsn(Opcodes.GETFIELD, owner, field, held(field));
            Type is = isPrimitive(site.captured()[at]) ? site.captured()[at] : Type.getObjectType(OBJECT);
            convert(code, is, site.captured()[at], wanted.get(at));
            at++;
        }
        Type[] given = Type.getArgumentTypes(form);
        Type[] seen = site.sees().getArgumentTypes();
        int local = 1;
        for (int i = 0; i < given.length; i++) {
            code.visitVarInsn(given[i].getOpcode(Opcodes.ILOAD), local);
            local += given[i].getSize();
            convert(code, given[i], seen[i], wanted.get(at++));
        }
        int how = switch (does.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> does.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
        code.visitMethodInsn(how, does.getOwner(), does.getName(), does.getDesc(), does.isInterface());
        Type got = making ? object : Type.getReturnType(does.getDesc());
        Type back = Type.getReturnType(form);
        if (back == Type.VOID_TYPE) {
            if (got.getSize() > 0) {
                code.visitInsn(got.getSize() > 1 ? Opcodes.POP2 : Opcodes.POP);
            }
        } else {
            convert(code, got, site.sees().getReturnType(), back);
        }
        code.visitInsn(back.getOpcode(Opcodes.IRETURN));
    }

    /**
     * As {@code LambdaMetafactory} tells it: boxes, unboxes, widens or casts.
     *
     * @param from the type of what is on the stack
     * @param seen the type that it has, where its own is but an erasure
     * @param to the type that is wanted
     */
    private static void convert(MethodVisitor code, Type from, Type seen, Type to) {
        if (isPrimitive(from) && isPrimitive(to)) {
            widen(code, from, to);
        } else if (isPrimitive(from)) {
            String box = wrapper(from);
            call(code, Opcodes.INVOKESTATIC, box, "valueOf", '(' + from.getDescriptor() + ")L" + box + ';');
        } else if (isPrimitive(to)) {
            Optional<Type> held = unwrapped(isPrimitive(seen) ? from : seen);
            Type plain = held.orElse(to);
            // An erased box may hold whatever widens: an Integer, where a double is wanted.
            boolean any = held.isEmpty() && !to.equals(Type.BOOLEAN_TYPE) && !to.equals(Type.CHAR_TYPE);
            String box = any ? NUMBER : wrapper(plain);
            code.visitTypeInsn(Opcodes.CHECKCAST, box);
            call(code, Opcodes.INVOKEVIRTUAL, box, plain.getClassName() + "Value", "()" + plain.getDescriptor());
            widen(code, plain, to);
        } else if (!to.equals(from) && !to.getInternalName().equals(OBJECT)) {
            code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
        }
    }

    private static void widen(MethodVisitor code, Type from, Type to) {
        if (from.equals(to) || from.getSort() <= Type.INT && to.getSort() <= Type.INT) {
            return;
        }
        String step = (from.getSort() <= Type.INT ? "I" : from.getDescriptor()) + to.getDescriptor();
        code.visitInsn(
                switch (step) {
                    case "IJ" -> Opcodes.I2L;
                    case "IF" -> Opcodes.I2F;
                    case "ID" -> Opcodes.I2D;
                    case "JF" -> Opcodes.L2F;
                    case "JD" -> Opcodes.L2D;
                    case "FD" -> Opcodes.F2D;
                    default -> throw new IllegalStateException("no widening: " + from + " to " + to);
                });
    }

    private static boolean isPrimitive(Type type) {
        return type.getSort() < Type.ARRAY;
    }

    private static final List<Type> PRIMITIVES = List.of(
            Type.BOOLEAN_TYPE,
            Type.CHAR_TYPE,
            Type.BYTE_TYPE,
            Type.SHORT_TYPE,
            Type.INT_TYPE,
            Type.FLOAT_TYPE,
            Type.LONG_TYPE,
            Type.DOUBLE_TYPE);

    private static String wrapper(Type primitive) {
        String name = primitive.getClassName();
        return "java/lang/"
                + (primitive == Type.INT_TYPE
                        ? "Integer"
                        : primitive == Type.CHAR_TYPE
                                ? "Character"
                                : Character.toUpperCase(name.charAt(0)) + name.substring(1));
    }

    /** What a box holds; empty where its type does not tell. */
    private static Optional<Type> unwrapped(Type box) {
        return PRIMITIVES.stream()
                .filter(each -> wrapper(each).equals(box.getInternalName()))
                .findFirst();
    }

    private static MethodVisitor begun(ClassVisitor type, int access, String name, String form) {
        MethodVisitor code = type.visitMethod(access, name, form, null, null);
        code.visitCode();
        return code;
    }

    private static void ended(MethodVisitor code, int leaving) {
        code.visitInsn(leaving);
        code.visitMaxs(0, 0);
        code.visitEnd();
    }

    private static void call(MethodVisitor code, int how, String owner, String name, String form) {
        code.visitMethodInsn(how, owner, name, form, false);
    }
}
