package coldseam.conduction.solid;

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
            field = GridField.unpacked(solved.packed(), body, swapped);
            unpacked = new WeakReference<>(field);
        }
        return field;
    }
}
