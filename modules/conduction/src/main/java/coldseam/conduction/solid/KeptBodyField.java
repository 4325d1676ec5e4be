package coldseam.conduction.solid;

import java.util.function.Function;

/** The field of a kept solution. */
final class KeptBodyField extends LaterBodyField {

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

    @Override
    synchronized BodyField field() {
        if (unpacked == null) {
            unpacked = unpacking.apply(packed);
            packed = null;
        }
        return unpacked;
    }

    @Override
    public double[] energies() {
        return energies.clone();
    }
}
