package coldseam.conduction.solid;

import java.io.DataOutputStream;
import java.io.IOException;
import org.eclipse.collections.api.list.ImmutableList;

/** A field that is put together when it is asked for: most are not. */
abstract class LaterBodyField implements BodyField {

    /** The field itself. */
    abstract BodyField field();

    @Override
    public double temperatureAt(Place at) {
        return field().temperatureAt(at);
    }

    @Override
    public ImmutableList<Integer> pieces() {
        return field().pieces();
    }

    @Override
    public double[] drawnPlanes(int direction) {
        return field().drawnPlanes(direction);
    }

    @Override
    public BodyCut cut(int direction, double at) {
        return field().cut(direction, at);
    }

    @Override
    public ImmutableList<Cell> cells() {
        return field().cells();
    }

    @Override
    public ImmutableList<Face> faces() {
        return field().faces();
    }

    @Override
    public void write(DataOutputStream to) throws IOException {
        field().write(to);
    }
}
