package coldseam.junctions.store;

import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.solve.Conduction;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The field of a kept solution, packed until it is asked for: of options that are only compared, and of solutions that only a
 * surface temperature is read from, nobody ever asks.
 */
final class KeptField implements TemperatureField {

    private static final int BUFFER = 1 << 16;

    private final Section section;
    private byte[] packed;
    private TemperatureField unpacked;

    /**
     * @param content what {@link #pack} wrote, from a place on
     * @param section the one that was solved
     */
    KeptField(byte[] content, int from, Section section) {
        this.section = section;
        this.packed = Arrays.copyOfRange(content, from, content.length);
    }

    /** Packed as fast as can be: the last tenth of the size costs most of the time. */
    static void pack(TemperatureField field, ByteArrayOutputStream to) throws IOException {
        try (DataOutputStream out = new DataOutputStream(
                new BufferedOutputStream(new DeflaterOutputStream(to, new Deflater(Deflater.BEST_SPEED)), BUFFER))) {
            field.write(out);
        }
    }

    private synchronized TemperatureField field() {
        if (unpacked == null) {
            try (DataInputStream in = new DataInputStream(
                    new BufferedInputStream(new InflaterInputStream(new ByteArrayInputStream(packed)), BUFFER))) {
                unpacked = Conduction.readField(in, section);
                packed = null;
            } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
            }
        }
        return unpacked;
    }

    @Override
    public double temperatureAt(double x, double y) {
        return field().temperatureAt(x, y);
    }

    @Override
    public double[] fluxAt(double x, double y) {
        return field().fluxAt(x, y);
    }

    @Override
    public ImmutableList<ImmutableList<Point>> isotherm(double temperature) {
        return field().isotherm(temperature);
    }

    @Override
    public ImmutableList<Cell> cells() {
        return field().cells();
    }

    @Override
    public double[] energies() {
        return field().energies();
    }

    @Override
    public void write(DataOutput out) throws IOException {
        field().write(out);
    }
}
