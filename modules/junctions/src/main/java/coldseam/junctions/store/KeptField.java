package coldseam.junctions.store;

import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.TemperatureField;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A temperature field as it is kept on disk: in every triangle of the last mesh the temperatures of its three corners and of
 * the middles of its three sides, which make a quadratic.
 *
 * <p>{@code values} holds, for triangle i, from 6·i on, the temperatures, °C, at a, b, c and in the middles of bc, ca, ab.
 */
final class KeptField implements TemperatureField {

    private static final int PER_TRIANGLE = 6;

    /** Share of a triangle by which a place on its side may lie outside through rounding. */
    private static final double SLACK = 1e-9;

    private final ImmutableList<Cell> cells;
    private final double[] values;
    private final double[] conductivity;

    private KeptField(ImmutableList<Cell> cells, double[] values, double[] conductivity) {
        this.cells = cells;
        this.values = values;
        this.conductivity = conductivity;
    }

    static KeptField of(TemperatureField field) {
        if (field instanceof KeptField kept) {
            return kept;
        }
        ImmutableList<Cell> cells = field.cells();
        double[] values = new double[PER_TRIANGLE * cells.size()];
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            int at = PER_TRIANGLE * i;
            values[at] = at(field, cell, cell.a(), cell.a());
            values[at + 1] = at(field, cell, cell.b(), cell.b());
            values[at + 2] = at(field, cell, cell.c(), cell.c());
            values[at + 3] = at(field, cell, cell.b(), cell.c());
            values[at + 4] = at(field, cell, cell.c(), cell.a());
            values[at + 5] = at(field, cell, cell.a(), cell.b());
        }
        return new KeptField(cells, values, new double[0]);
    }

    /** The temperature halfway between two corners; from a hair inside where rounding puts the place outside. */
    private static double at(TemperatureField field, Cell cell, Point p, Point q) {
        double x = (p.x() + q.x()) / 2;
        double y = (p.y() + q.y()) / 2;
        double value = field.temperatureAt(x, y);
        for (double inwards = 1e-9; Double.isNaN(value) && inwards < 1e-2; inwards *= 10) {
            double cx = (cell.a().x() + cell.b().x() + cell.c().x()) / 3;
            double cy = (cell.a().y() + cell.b().y() + cell.c().y()) / 3;
            value = field.temperatureAt(x + inwards * (cx - x), y + inwards * (cy - y));
        }
        return value;
    }

    void write(DataOutputStream out) throws IOException {
        out.writeInt(cells.size());
        for (Cell cell : cells) {
            out.writeInt(cell.region());
            for (Point point : new Point[] {cell.a(), cell.b(), cell.c()}) {
                out.writeDouble(point.x());
                out.writeDouble(point.y());
            }
            out.writeDouble(cell.error());
        }
        for (double value : values) {
            out.writeDouble(value);
        }
    }

    static KeptField read(DataInputStream in, Section section) throws IOException {
        int count = in.readInt();
        MutableList<Cell> cells = Lists.mutable.withInitialCapacity(count);
        double[] conductivity = new double[count];
        for (int i = 0; i < count; i++) {
            int region = in.readInt();
            Point a = new Point(in.readDouble(), in.readDouble());
            Point b = new Point(in.readDouble(), in.readDouble());
            Point c = new Point(in.readDouble(), in.readDouble());
            cells.add(new Cell(region, a, b, c, in.readDouble()));
            conductivity[i] = section.regions().get(region).conductivity();
        }
        double[] values = new double[PER_TRIANGLE * count];
        for (int i = 0; i < values.length; i++) {
            values[i] = in.readDouble();
        }
        return new KeptField(cells.toImmutable(), values, conductivity);
    }

    @Override
    public ImmutableList<Cell> cells() {
        return cells;
    }

    @Override
    public double temperatureAt(double x, double y) {
        double[] share = new double[3];
        int i = find(x, y, share);
        if (i < 0) {
            return Double.NaN;
        }
        int at = PER_TRIANGLE * i;
        double a = share[0];
        double b = share[1];
        double c = share[2];
        return values[at] * a * (2 * a - 1)
                + values[at + 1] * b * (2 * b - 1)
                + values[at + 2] * c * (2 * c - 1)
                + 4 * (values[at + 3] * b * c + values[at + 4] * c * a + values[at + 5] * a * b);
    }

    @Override
    public double[] fluxAt(double x, double y) {
        double[] share = new double[3];
        int i = find(x, y, share);
        if (i < 0) {
            return new double[] {Double.NaN, Double.NaN};
        }
        int at = PER_TRIANGLE * i;
        // dT/d(share), then the shares' constant gradients: q = −k ∇T.
        double da = values[at] * (4 * share[0] - 1) + 4 * (values[at + 4] * share[2] + values[at + 5] * share[1]);
        double db = values[at + 1] * (4 * share[1] - 1) + 4 * (values[at + 3] * share[2] + values[at + 5] * share[0]);
        double dc = values[at + 2] * (4 * share[2] - 1) + 4 * (values[at + 3] * share[1] + values[at + 4] * share[0]);
        Cell cell = cells.get(i);
        double twice = twiceArea(cell.a(), cell.b(), cell.c());
        double gx = (da * (cell.b().y() - cell.c().y())
                        + db * (cell.c().y() - cell.a().y())
                        + dc * (cell.a().y() - cell.b().y()))
                / twice;
        double gy = (da * (cell.c().x() - cell.b().x())
                        + db * (cell.a().x() - cell.c().x())
                        + dc * (cell.b().x() - cell.a().x()))
                / twice;
        return new double[] {-conductivity[i] * gx, -conductivity[i] * gy};
    }

    private int find(double x, double y, double[] share) {
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            Point p = new Point(x, y);
            double twice = twiceArea(cell.a(), cell.b(), cell.c());
            share[0] = twiceArea(p, cell.b(), cell.c()) / twice;
            share[1] = twiceArea(cell.a(), p, cell.c()) / twice;
            share[2] = 1 - share[0] - share[1];
            if (share[0] >= -SLACK && share[1] >= -SLACK && share[2] >= -SLACK) {
                return i;
            }
        }
        return -1;
    }

    private static double twiceArea(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    @Override
    public ImmutableList<ImmutableList<Point>> isotherm(double temperature) {
        MutableList<Point[]> pieces = Lists.mutable.empty();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            Point[] place = {
                cell.a(),
                cell.b(),
                cell.c(),
                middle(cell.b(), cell.c()),
                middle(cell.c(), cell.a()),
                middle(cell.a(), cell.b())
            };
            // Four smaller triangles, in each of which the temperature is nearly linear.
            for (int[] small : new int[][] {{0, 5, 4}, {5, 1, 3}, {4, 3, 2}, {3, 4, 5}}) {
                crossing(i, place, small, temperature, pieces);
            }
        }
        return IsothermChains.joined(pieces);
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }

    private void crossing(int triangle, Point[] place, int[] small, double temperature, MutableList<Point[]> into) {
        Point first = null;
        for (int side = 0; side < 3; side++) {
            int p = small[side];
            int q = small[(side + 1) % 3];
            double tp = values[PER_TRIANGLE * triangle + p] - temperature;
            double tq = values[PER_TRIANGLE * triangle + q] - temperature;
            if (tp < 0 == tq < 0) {
                continue;
            }
            double share = tp / (tp - tq);
            Point at = new Point(
                    place[p].x() + share * (place[q].x() - place[p].x()),
                    place[p].y() + share * (place[q].y() - place[p].y()));
            if (first == null) {
                first = at;
            } else {
                into.add(new Point[] {first, at});
            }
        }
    }
}
