package coldseam.conduction.solid;

import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.ref.WeakReference;
import java.util.function.Supplier;

/**
 * A solution's field in a tenth of its room: its grid and its system are made again when somebody looks, and are held only while
 * somebody does.
 */
final class PackedBodyField extends LaterBodyField {

    private final Supplier<byte[]> packed;
    private final SolidBody body;
    private final boolean swapped;
    private WeakReference<GridField> unpacked = new WeakReference<>(null);

    /** @param field of a body that was solved */
    PackedBodyField(GridField field, SolidBody body) {
        this(field.packed(), body);
        this.unpacked = new WeakReference<>(field);
    }

    /** @param packed what a field wrote */
    PackedBodyField(byte[] packed, SolidBody body) {
        this(() -> packed, body, false);
    }

    /**
     * The field of a body on its own boxes, of the solution that it has in common with others.
     *
     * @param packed what the field of the form in common writes
     * @param body whose field it is to be
     * @param swapped whether the form in common is its image in the plane x = y
     */
    PackedBodyField(Supplier<byte[]> packed, SolidBody body, boolean swapped) {
        this.packed = packed;
        this.body = body;
        this.swapped = swapped;
    }

    @Override
    synchronized BodyField field() {
        GridField field = unpacked.get();
        if (field == null) {
            field = GridField.unpacked(packed.get(), body, swapped);
            unpacked = new WeakReference<>(field);
        }
        return field;
    }

    @Override
    public void write(DataOutputStream to) throws IOException {
        if (swapped) {
            super.write(to);
        } else {
            to.write(packed.get());
        }
    }
}
