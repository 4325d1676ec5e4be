package coldseam.conduction.solid;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ref.WeakReference;

/** The field of a body on its own boxes, of the solution that it has in common with others. */
final class ImageField extends LaterBodyField {

    private final BodyField solved;
    private final SolidBody body;
    private final boolean swapped;
    private WeakReference<GridField> unpacked = new WeakReference<>(null);

    /**
     * @param solved of the form in common
     * @param body whose field it is to be
     * @param swapped whether the form in common is its image in the plane x = y
     */
    ImageField(BodyField solved, SolidBody body, boolean swapped) {
        this.solved = solved;
        this.body = body;
        this.swapped = swapped;
    }

    @Override
    synchronized BodyField field() {
        GridField field = unpacked.get();
        if (field == null) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (DataOutputStream to = new DataOutputStream(bytes)) {
                solved.write(to);
            } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
            }
            field = GridField.unpacked(bytes.toByteArray(), body, swapped);
            unpacked = new WeakReference<>(field);
        }
        return field;
    }
}
