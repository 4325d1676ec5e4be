package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solved;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.solid.BodyField;
import coldseam.conduction.solid.KeptBodyField;
import coldseam.files.OneOf;
import coldseam.files.RecordParts;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.collection.ImmutableCollection;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.eclipse.collections.impl.factory.Sets;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKBWriter;

/**
 * Trees of records as bytes, and read again: equal trees have equal bytes on every run, and every part of a tree counts, also
 * one that is added to a record later.
 *
 * <p>A record that occurs again is written as the number of the first; so are those that the reader has already, which are
 * therefore not kept. A solution's field is left out, and a section's plan stays packed until somebody asks for it.
 */
final class RecordBytes {

    private static final String OURS = "coldseam.";

    private enum Tag {
        DOUBLE,
        INTEGER,
        BOOLEAN,
        TEXT,
        CONSTANT,
        RECORD,
        AGAIN,
        LIST,
        SET,
        MAP,
        NONE,
        SOME,
        NO_NUMBER,
        NUMBER,
        ONE_OF,
        NUMBERS,
        SHAPE,
        FIELD,
        PLAN;

        private static final Tag[] ALL = values();
    }

    private RecordBytes() {}

    /** The bytes of a tree that a name is made of: every record in full, so that nothing hangs on which of two equals it is. */
    static byte[] inFull(Object tree) {
        return written(tree, false, Lists.immutable.empty());
    }

    /**
     * The bytes of a tree.
     *
     * @param known what whoever reads them has already
     */
    static byte[] write(Object tree, ImmutableList<?> known) {
        return written(tree, true, known);
    }

    private static byte[] written(Object tree, boolean numbered, ImmutableList<?> known) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            new Writer(out, numbered, known).value(tree);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** Where the fields of solutions are, which no tree holds. */
    interface Fields {

        /** For trees without solutions. */
        Fields NONE = (question, accuracy) -> {
            throw new IllegalStateException("no solution was to be read");
        };

        /**
         * The field of what was solved.
         *
         * @param question a section or a body
         * @return of a section a {@link TemperatureField}, of a body a {@link BodyField}
         */
        Object of(Record question, Accuracy accuracy);
    }

    /**
     * The tree that was written.
     *
     * @param known equal to what the writer was given
     * @param fields asked when somebody asks for one
     */
    static Object read(byte[] content, ImmutableList<?> known, Fields fields) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(content))) {
            return new Reader(in, known, fields).value();
        } catch (IOException torn) {
            throw new UncheckedIOException(torn);
        }
    }

    /**
     * All records of trees, each before its parts; those in sets and maps, which have no order, are left out, and a detail's,
     * which no result is made of.
     */
    static MutableList<Object> records(ImmutableList<?> trees) {
        MutableList<Object> all = Lists.mutable.empty();
        trees.forEach(each -> records(each, all));
        return all;
    }

    private static void records(Object value, Collection<Object> all) {
        if (value instanceof Record) {
            all.add(value);
            if (value instanceof Detail) {
                return;
            }
            RecordParts parts = RecordParts.of(value.getClass());
            parts.components().forEachWithIndex((component, i) -> {
                if (!component.getType().isPrimitive()) {
                    records(parts.part(value, i), all);
                }
            });
        } else if (value instanceof ImmutableList<?> list) {
            list.forEach(each -> records(each, all));
        } else if (value instanceof Optional<?> some) {
            some.ifPresent(each -> records(each, all));
        }
    }

    private static final class Writer {

        private final DataOutputStream out;
        private final boolean numbered;
        private final ImmutableList<?> known;
        private final Map<Object, Integer> numbers = new IdentityHashMap<>();
        private final Map<Class<?>, Integer> classes = new HashMap<>();
        private int written;

        Writer(DataOutputStream out, boolean numbered, ImmutableList<?> known) {
            this.out = out;
            this.numbered = numbered;
            this.known = known;
            // The same record may lie in them twice, or once and its equal: what counts is where it is met.
            for (Object each : records(known)) {
                numbers.putIfAbsent(each, written++);
            }
        }

        void value(Object value) throws IOException {
            if (value instanceof Double number) {
                tag(Tag.DOUBLE);
                out.writeDouble(number);
            } else if (value instanceof Integer number) {
                tag(Tag.INTEGER);
                out.writeInt(number);
            } else if (value instanceof Boolean is) {
                tag(Tag.BOOLEAN);
                out.writeBoolean(is);
            } else if (value instanceof String text) {
                tag(Tag.TEXT);
                text(text);
            } else if (value instanceof Enum<?> constant) {
                tag(Tag.CONSTANT);
                type(constant.getDeclaringClass());
                out.writeInt(constant.ordinal());
            } else if (value instanceof OneOf one) {
                tag(Tag.ONE_OF);
                type(one.getClass());
                text(one.label());
            } else if (value instanceof Optional<?> optional) {
                tag(optional.isPresent() ? Tag.SOME : Tag.NONE);
                if (optional.isPresent()) {
                    value(optional.get());
                }
            } else if (value instanceof OptionalDouble optional) {
                tag(optional.isPresent() ? Tag.NUMBER : Tag.NO_NUMBER);
                if (optional.isPresent()) {
                    out.writeDouble(optional.getAsDouble());
                }
            } else if (value instanceof ImmutableDoubleList numbers) {
                tag(Tag.NUMBERS);
                numbers(numbers.toArray());
            } else if (value instanceof Geometry shape) {
                tag(Tag.SHAPE);
                bytes(new WKBWriter().write(shape));
            } else if (value instanceof TemperatureField || value instanceof BodyField) {
                tag(Tag.FIELD);
            } else if (value instanceof ImmutableCollection<?> collection) {
                collection(collection);
            } else if (value instanceof ImmutableMap<?, ?> map) {
                tag(Tag.MAP);
                map(map.keyValuesView()
                        .collect(pair -> Lists.immutable.of(pair.getOne(), pair.getTwo()))
                        .toImmutableList());
            } else if (value instanceof SectionPlan plan) {
                tag(Tag.PLAN);
                bytes(write(plan.drawn(), known));
            } else if (value instanceof Record record) {
                record(record);
            } else {
                throw new IllegalArgumentException("no bytes for a value of " + value.getClass());
            }
        }

        private void tag(Tag tag) throws IOException {
            out.writeByte(tag.ordinal());
        }

        private void numbers(double[] numbers) throws IOException {
            out.writeInt(numbers.length);
            for (double each : numbers) {
                out.writeDouble(each);
            }
        }

        private void text(String text) throws IOException {
            bytes(text.getBytes(StandardCharsets.UTF_8));
        }

        private void bytes(byte[] content) throws IOException {
            out.writeInt(content.length);
            out.write(content);
        }

        private void type(Class<?> type) throws IOException {
            Integer number = classes.get(type);
            if (number == null) {
                out.writeShort(classes.size());
                text(type.getName());
                classes.put(type, classes.size());
            } else {
                out.writeShort(number);
            }
        }

        private void collection(ImmutableCollection<?> collection) throws IOException {
            if (collection instanceof ImmutableList<?> list) {
                tag(Tag.LIST);
                out.writeInt(list.size());
                for (Object each : list) {
                    value(each);
                }
            } else {
                tag(Tag.SET);
                sorted(collection);
            }
        }

        /** In its own order where it is read again: sums over it come out the same to the last digit. */
        private void map(ImmutableList<?> pairs) throws IOException {
            if (numbered) {
                value(pairs);
            } else {
                sorted(pairs);
            }
        }

        /** What has no order of its own, in that of its bytes. */
        private void sorted(ImmutableCollection<?> all) throws IOException {
            ImmutableList<byte[]> sorted =
                    Lists.immutable.ofAll(all.collect(RecordBytes::inFull).toSortedList(Arrays::compare));
            out.writeInt(sorted.size());
            for (byte[] each : sorted) {
                bytes(each);
            }
        }

        private void record(Record record) throws IOException {
            Integer number = numbers.get(record);
            if (number != null) {
                tag(Tag.AGAIN);
                out.writeInt(number);
                return;
            }
            tag(Tag.RECORD);
            type(record.getClass());
            RecordParts parts = RecordParts.of(record.getClass());
            for (int i = 0; i < parts.components().size(); i++) {
                Object part = parts.part(record, i);
                Class<?> of = parts.components().get(i).getType();
                if (of == double.class) {
                    out.writeDouble((double) part);
                } else if (of == int.class) {
                    out.writeInt((int) part);
                } else if (of == boolean.class) {
                    out.writeBoolean((boolean) part);
                } else if (of == char.class) {
                    out.writeChar((char) part);
                } else {
                    value(part);
                }
            }
            if (numbered) {
                numbers.put(record, written++);
            }
        }
    }

    private static final class Reader {

        private final DataInputStream in;
        private final ImmutableList<?> known;
        private final Fields fields;
        private final MutableList<Object> records;
        private final List<Class<?>> classes = new ArrayList<>();

        Reader(DataInputStream in, ImmutableList<?> known, Fields fields) {
            this.in = in;
            this.known = known;
            this.fields = fields;
            this.records = records(known);
        }

        Object value() throws IOException {
            return switch (Tag.ALL[in.readByte()]) {
                case DOUBLE -> in.readDouble();
                case INTEGER -> in.readInt();
                case BOOLEAN -> in.readBoolean();
                case TEXT -> text();
                case CONSTANT -> type().getEnumConstants()[in.readInt()];
                case RECORD -> record();
                case AGAIN -> records.get(in.readInt());
                case LIST -> list();
                case SET -> set();
                case MAP -> map();
                case NONE -> Optional.empty();
                case SOME -> Optional.of(value());
                case NO_NUMBER -> OptionalDouble.empty();
                case NUMBER -> OptionalDouble.of(in.readDouble());
                case ONE_OF -> throw new IOException("an answer holds no " + type());
                case SHAPE -> throw new IOException("an answer holds no shape");
                case NUMBERS -> DoubleLists.immutable.of(numbers());
                case FIELD -> Tag.FIELD;
                case PLAN -> {
                    byte[] packed = bytes();
                    yield SectionPlan.later(() -> (SectionPlan.Drawn) read(packed, known, fields));
                }
            };
        }

        private double[] numbers() throws IOException {
            double[] numbers = new double[in.readInt()];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = in.readDouble();
            }
            return numbers;
        }

        private String text() throws IOException {
            return new String(bytes(), StandardCharsets.UTF_8);
        }

        private byte[] bytes() throws IOException {
            byte[] content = new byte[in.readInt()];
            in.readFully(content);
            return content;
        }

        private Class<?> type() throws IOException {
            int number = in.readShort();
            if (number == classes.size()) {
                String name = text();
                if (!name.startsWith(OURS)) {
                    throw new IOException("no class of ours: " + name);
                }
                try {
                    classes.add(Class.forName(name));
                } catch (ClassNotFoundException foreign) {
                    throw new IOException(foreign);
                }
            }
            return classes.get(number);
        }

        private ImmutableList<?> list() throws IOException {
            Object[] all = new Object[in.readInt()];
            for (int i = 0; i < all.length; i++) {
                all[i] = value();
            }
            return Lists.immutable.of(all);
        }

        private ImmutableSet<?> set() throws IOException {
            Object[] all = new Object[in.readInt()];
            for (int i = 0; i < all.length; i++) {
                all[i] = read(bytes(), Lists.immutable.empty(), fields);
            }
            return Sets.immutable.of(all);
        }

        private ImmutableMap<?, ?> map() throws IOException {
            Map<Object, Object> map = new LinkedHashMap<>();
            for (Object each : (ImmutableList<?>) value()) {
                ImmutableList<?> pair = (ImmutableList<?>) each;
                map.put(pair.getFirst(), pair.getLast());
            }
            return Maps.immutable.ofAll(map);
        }

        private Object record() throws IOException {
            Class<?> type = type();
            RecordParts parts = RecordParts.of(type);
            Object[] values = new Object[parts.components().size()];
            for (int i = 0; i < values.length; i++) {
                Class<?> of = parts.components().get(i).getType();
                values[i] = of == double.class
                        ? (Object) in.readDouble()
                        : of == int.class
                                ? (Object) in.readInt()
                                : of == boolean.class
                                        ? (Object) in.readBoolean()
                                        : of == char.class ? (Object) in.readChar() : value();
            }
            if (Solved.class.isAssignableFrom(type)) {
                giveField(values);
            }
            Object record = parts.whole(values);
            records.add(record);
            return record;
        }

        /** A solution's field is found by its question, which stands beside it. */
        private void giveField(Object[] solution) {
            Accuracy accuracy = (Accuracy) Lists.mutable.with(solution).detect(Accuracy.class::isInstance);
            for (int i = 0; i < solution.length; i++) {
                if (solution[i] == Tag.FIELD) {
                    Record question = (Record) solution[0];
                    solution[i] = question instanceof Section
                            ? new KeptField(() -> (TemperatureField) fields.of(question, accuracy))
                            : new KeptBodyField(() -> (BodyField) fields.of(question, accuracy));
                }
            }
        }
    }
}
