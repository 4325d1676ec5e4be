package coldseam.conduction.solid;

import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.ref.WeakReference;

/**
 * A solution's field in a tenth of its room: its grid and its system are made again when somebody looks, and are held only while
 * somebody does.
 */
final class PackedBodyField extends LaterBodyField {

    private final SolidBody body;
    private final byte[] packed;
    private WeakReference<GridField> unpacked;

    /** @param field of a body that was solved */
    PackedBodyField(GridField field, SolidBody body) {
        this.body = body;
        this.packed = field.packed();
        this.unpacked = new WeakReference<>(field);
    }

    /** @param packed what a field wrote */
    PackedBodyField(byte[] packed, SolidBody body) {
        this.body = body;
        this.packed = packed;
        this.unpacked = new WeakReference<>(null);
    }

    @Override
    synchronized BodyField field() {
        GridField field = unpacked.get();
        if (field == null) {
            field = GridField.unpacked(packed, body, false);
            unpacked = new WeakReference<>(field);
        }
        return field;
    }

    @Override
    public void write(DataOutputStream to) throws IOException {
        to.write(packed);
    }
}
