package coldseam.conduction.solid;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Supplier;

/** The field of a kept solution, packed until it is asked for. */
public final class KeptBodyField extends LaterBodyField {

    private Supplier<BodyField> unpacking;
    private BodyField unpacked;

    /** @param unpacking asked once */
    public KeptBodyField(Supplier<BodyField> unpacking) {
        this.unpacking = unpacking;
    }

    /** The bytes of a solution's field. */
    public static byte[] packed(BodySolution solution) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream to = new DataOutputStream(bytes)) {
            solution.field().write(to);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** What was packed of a body. */
    public static BodyField unpacked(byte[] packed, SolidBody body) {
        return new PackedBodyField(packed, body);
    }

    @Override
    synchronized BodyField field() {
        if (unpacked == null) {
            unpacked = unpacking.get();
            unpacking = null;
        }
        return unpacked;
    }
}
