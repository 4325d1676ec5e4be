package coldseam.conduction.solid;

import java.util.function.Supplier;

/** The field of a kept solution, packed until it is asked for. */
public final class KeptBodyField extends LaterBodyField {

    private Supplier<BodyField> unpacking;
    private BodyField unpacked;

    /** @param unpacking asked once */
    public KeptBodyField(Supplier<BodyField> unpacking) {
        this.unpacking = unpacking;
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
