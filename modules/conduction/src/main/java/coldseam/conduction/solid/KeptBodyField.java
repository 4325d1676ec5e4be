package coldseam.conduction.solid;

import java.io.DataOutputStream;
import java.io.IOException;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;

/** The field of a kept solution, put together when it is asked for: of most nobody asks more than the energies. */
final class KeptBodyField implements BodyField {

    private final double[] energies;
    private final Function<byte[], BodyField> unpacking;
    private byte[] packed;
    private BodyField unpacked;

    /**
     * @param energies of the painted boxes
     * @param packed what the field wrote, or nothing where it is kept elsewhere
     * @param unpacking makes the field of it
     */
    KeptBodyField(double[] energies, byte[] packed, Function<byte[], BodyField> unpacking) {
        this.energies = energies;
        this.packed = packed;
        this.unpacking = unpacking;
    }

    private synchronized BodyField field() {
        if (unpacked == null) {
            unpacked = unpacking.apply(packed);
            packed = null;
        }
        return unpacked;
    }

    @Override
    public double temperatureAt(Place at) {
        return field().temperatureAt(at);
    }

    @Override
    public double[] energies() {
        return energies.clone();
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
