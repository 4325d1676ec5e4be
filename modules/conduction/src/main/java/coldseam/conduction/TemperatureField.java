package coldseam.conduction;

import java.io.DataOutput;
import java.io.IOException;
import org.eclipse.collections.api.list.ImmutableList;

/** A temperature field on the section's last mesh, and what can be asked of it. */
public interface TemperatureField {

    /** The temperature at a point, °C; NaN outside the section. */
    double temperatureAt(double x, double y);

    /**
     * The lines of one temperature, as polylines fit to draw.
     *
     * @param temperature °C
     */
    ImmutableList<ImmutableList<Point>> isotherm(double temperature);

    /**
     * The snapped arrangement that was solved: faces of one conductivity, not overlapping, holes cut out by the
     * triangulation; each is a triangle of the last mesh.
     */
    ImmutableList<Cell> cells();

    /**
     * Writes every bit of a solution's field; {@code Conduction.readField} reads it back.
     *
     * @throws UnsupportedOperationException where the field is made for a drawing and was not solved
     */
    default void write(DataOutput out) throws IOException {
        throw new UnsupportedOperationException("only the field of a solution is kept");
    }

    /**
     * One triangle of the last mesh.
     *
     * @param region index into the section's regions
     * @param a first corner
     * @param b second corner
     * @param c third corner
     * @param error its share of the squared gap, W/(m·K) or W/K
     */
    record Cell(int region, Point a, Point b, Point c, double error) {}
}
