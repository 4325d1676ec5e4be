package coldseam.conduction.solid;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** The temperature of a body on its last grid; estimates, not proven. */
public interface BodyField {

    /** The temperature at a point, °C; NaN where nothing is solid. */
    double temperatureAt(Place at);

    /** The painted boxes that are seen somewhere, by their index. */
    ImmutableList<Integer> pieces();

    /** m, ascending: where in a direction a painted box begins or ends. */
    double[] drawnPlanes(int direction);

    /** What lies on a plane; of a plane between two slabs, on the side where less is solid. */
    BodyCut cut(int direction, double at);

    /** All solid cells, x fastest. */
    ImmutableList<Cell> cells();

    /** The outside of the body. */
    ImmutableList<Face> faces();

    /** Writes the grid's planes and its temperatures. */
    void write(DataOutputStream to) throws IOException;

    /** What it writes. */
    default byte[] packed() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream to = new DataOutputStream(bytes)) {
            write(to);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /**
     * A face of a cell that faces an environment or a cut plane.
     *
     * @param side which way it faces
     * @param environment which it faces; empty where it is adiabatic
     * @param piece index of the painted box
     * @param cell whose side it is
     * @param temperatures °C at its corners: b + 2 c, b along the direction after the side's own, c along the one after
     * @param rims whether the surface or the material ends at its low and high end along the direction after the side's
     *     own, then along the one after
     */
    record Face(
            BoxSide side,
            Optional<String> environment,
            int piece,
            Cuboid cell,
            ImmutableList<Double> temperatures,
            ImmutableList<Boolean> rims) {}

    /**
     * A solid cell of the last grid.
     *
     * @param piece index of the painted box
     */
    record Cell(int piece, Cuboid box) {}
}
