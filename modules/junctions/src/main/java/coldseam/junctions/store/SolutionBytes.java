package coldseam.junctions.store;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.KeptBodyField;
import coldseam.conduction.solid.SolidBody;
import java.nio.ByteBuffer;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Answers of the solvers as bytes: as all records are written, but for the question, then the field as it packs itself. */
final class SolutionBytes {

    private SolutionBytes() {}

    static byte[] write(Solution solution) {
        return joined(
                solution, Lists.immutable.of(solution.section(), solution.accuracy()), KeptField.packed(solution));
    }

    /** An answer without its field. */
    static byte[] numbers(Solution solution) {
        return joined(solution, Lists.immutable.of(solution.section(), solution.accuracy()), new byte[0]);
    }

    static byte[] write(BodySolution solution) {
        return joined(
                solution,
                Lists.immutable.of(solution.body(), solution.accuracy()),
                solution.field().packed());
    }

    private static byte[] joined(Record solution, ImmutableList<?> question, byte[] field) {
        byte[] numbers = RecordBytes.write(solution, question);
        return ByteBuffer.allocate(Integer.BYTES + numbers.length + field.length)
                .putInt(numbers.length)
                .put(numbers)
                .put(field)
                .array();
    }

    /**
     * The answer to a question.
     *
     * @param field of what follows the numbers
     */
    static Solution read(byte[] content, Section section, Accuracy accuracy, Function<byte[], TemperatureField> field) {
        byte[][] parts = parts(content);
        return (Solution) RecordBytes.read(
                parts[0], Lists.immutable.of(section, accuracy), (none, neither) -> field.apply(parts[1]));
    }

    /** The answer to a question. */
    static BodySolution read(byte[] content, SolidBody body, Accuracy accuracy) {
        byte[][] parts = parts(content);
        return (BodySolution) RecordBytes.read(
                parts[0],
                Lists.immutable.of(body, accuracy),
                (none, neither) -> KeptBodyField.unpacked(parts[1], body));
    }

    private static byte[][] parts(byte[] content) {
        ByteBuffer from = ByteBuffer.wrap(content);
        byte[] numbers = new byte[from.getInt()];
        byte[] field = new byte[content.length - Integer.BYTES - numbers.length];
        from.get(numbers).get(field);
        return new byte[][] {numbers, field};
    }
}
