package coldseam.junctions.store;

import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
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
import java.util.function.Supplier;
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

    private Supplier<TemperatureField> unpacking;
    private TemperatureField unpacked;

    /** @param unpacking asked once */
    KeptField(Supplier<TemperatureField> unpacking) {
        this.unpacking = unpacking;
    }

    /** Packed as fast as can be: the last tenth of the size costs most of the time. */
    static byte[] packed(Solution solution) {
        ByteArrayOutputStream to = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(
                new BufferedOutputStream(new DeflaterOutputStream(to, new Deflater(Deflater.BEST_SPEED)), BUFFER))) {
            solution.field().write(out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return to.toByteArray();
    }

    /** What was packed of a section. */
    static TemperatureField unpacked(byte[] packed, Section section) {
        try (DataInputStream in = new DataInputStream(
                new BufferedInputStream(new InflaterInputStream(new ByteArrayInputStream(packed)), BUFFER))) {
            return Conduction.readField(in, section);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private synchronized TemperatureField field() {
        if (unpacked == null) {
            unpacked = unpacking.get();
            unpacking = null;
        }
        return unpacked;
    }

    @Override
    public double temperatureAt(double x, double y) {
        return field().temperatureAt(x, y);
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
    public void write(DataOutput out) throws IOException {
        field().write(out);
    }
}
