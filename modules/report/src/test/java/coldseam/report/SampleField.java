package coldseam.report;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.TemperatureField;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A rough field by finite differences, good enough to look at; no value of it is ever tested. */
final class SampleField implements TemperatureField {

    private final double x0;
    private final double y0;
    private final double step;
    private final int columns;
    private final int rows;
    private final double[] conductivity;
    private final double[] temperature;

    SampleField(Section section, double x0, double y0, double x1, double y1, double step) {
        this.x0 = x0;
        this.y0 = y0;
        this.step = step;
        this.columns = (int) Math.round((x1 - x0) / step);
        this.rows = (int) Math.round((y1 - y0) / step);
        this.conductivity = new double[columns * rows];
        this.temperature = new double[columns * rows];
        section.regions().forEach(region -> {
            for (int r = 0; r < rows; r++) {
                for (int c = 0; c < columns; c++) {
                    if (inside(region.outline().corners(), x(c), y(r))) {
                        conductivity[r * columns + c] = region.conductivity();
                    }
                }
            }
        });
        double[] air = new double[columns * rows];
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                if (conductivity[r * columns + c] == 0) {
                    air[r * columns + c] = nearest(section, x(c), y(r));
                }
            }
        }
        for (int i = 0; i < temperature.length; i++) {
            temperature[i] = conductivity[i] == 0 ? air[i] : 10;
        }
        for (int sweep = 0; sweep < 1500; sweep++) {
            relax();
        }
    }

    private void relax() {
        int[][] next = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                int i = r * columns + c;
                if (conductivity[i] == 0) {
                    continue;
                }
                double sum = 0;
                double weight = 0;
                for (int[] n : next) {
                    int cc = c + n[0];
                    int rr = r + n[1];
                    if (cc < 0 || rr < 0 || cc >= columns || rr >= rows) {
                        continue;
                    }
                    int j = rr * columns + cc;
                    double g = conductivity[j] == 0
                            ? 1 / (step / 2 / conductivity[i] + 0.1) * step
                            : 2 / (1 / conductivity[i] + 1 / conductivity[j]);
                    sum += g * temperature[j];
                    weight += g;
                }
                temperature[i] += 1.8 * (sum / weight - temperature[i]);
            }
        }
    }

    private static double nearest(Section section, double x, double y) {
        double best = Double.POSITIVE_INFINITY;
        String name = "";
        for (Boundary boundary : section.boundaries()) {
            for (int i = 1; i < boundary.path().size(); i++) {
                Point a = boundary.path().get(i - 1);
                Point b = boundary.path().get(i);
                double dx = b.x() - a.x();
                double dy = b.y() - a.y();
                double t = Math.max(0, Math.min(1, ((x - a.x()) * dx + (y - a.y()) * dy) / (dx * dx + dy * dy)));
                double d = Math.hypot(x - a.x() - t * dx, y - a.y() - t * dy);
                if (d < best) {
                    best = d;
                    name = boundary.environment();
                }
            }
        }
        String found = name;
        return section.environments().detect(e -> e.name().equals(found)).temperature();
    }

    private static boolean inside(ImmutableList<Point> corners, double x, double y) {
        boolean in = false;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            Point a = corners.get(i);
            Point b = corners.get(j);
            if (a.y() > y != b.y() > y && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
        }
        return in;
    }

    private double x(int column) {
        return x0 + (column + 0.5) * step;
    }

    private double y(int row) {
        return y0 + (row + 0.5) * step;
    }

    @Override
    public double temperatureAt(double x, double y) {
        int c = (int) ((x - x0) / step);
        int r = (int) ((y - y0) / step);
        boolean out = c < 0 || r < 0 || c >= columns || r >= rows || conductivity[r * columns + c] == 0;
        return out ? Double.NaN : temperature[r * columns + c];
    }

    @Override
    public ImmutableList<ImmutableList<Point>> isotherm(double level) {
        List<ImmutableList<Point>> out = new ArrayList<>();
        for (int r = 0; r + 1 < rows; r++) {
            for (int c = 0; c + 1 < columns; c++) {
                int[] at = {r * columns + c, r * columns + c + 1, (r + 1) * columns + c + 1, (r + 1) * columns + c};
                Point[] corner = {
                    new Point(x(c), y(r)),
                    new Point(x(c + 1), y(r)),
                    new Point(x(c + 1), y(r + 1)),
                    new Point(x(c), y(r + 1))
                };
                boolean solid = conductivity[at[0]] > 0
                        && conductivity[at[1]] > 0
                        && conductivity[at[2]] > 0
                        && conductivity[at[3]] > 0;
                List<Point> hits = new ArrayList<>();
                for (int k = 0; k < 4 && solid; k++) {
                    double a = temperature[at[k]] - level;
                    double b = temperature[at[(k + 1) % 4]] - level;
                    if (a > 0 != b > 0) {
                        double t = a / (a - b);
                        Point p = corner[k];
                        Point q = corner[(k + 1) % 4];
                        hits.add(new Point(p.x() + t * (q.x() - p.x()), p.y() + t * (q.y() - p.y())));
                    }
                }
                if (hits.size() == 2) {
                    out.add(Lists.immutable.ofAll(hits));
                }
            }
        }
        return joined(out);
    }

    private static ImmutableList<ImmutableList<Point>> joined(List<ImmutableList<Point>> pieces) {
        List<ImmutableList<Point>> rest = new ArrayList<>(pieces);
        List<ImmutableList<Point>> out = new ArrayList<>();
        while (!rest.isEmpty()) {
            ImmutableList<Point> line = rest.remove(rest.size() - 1);
            boolean grew = true;
            while (grew) {
                grew = false;
                for (int i = 0; i < rest.size() && !grew; i++) {
                    ImmutableList<Point> other = rest.get(i);
                    if (same(line.getLast(), other.getFirst())) {
                        line = line.newWith(other.getLast());
                        grew = true;
                    } else if (same(line.getLast(), other.getLast())) {
                        line = line.newWith(other.getFirst());
                        grew = true;
                    } else if (same(line.getFirst(), other.getFirst())) {
                        line = Lists.immutable.of(other.getLast()).newWithAll(line);
                        grew = true;
                    } else if (same(line.getFirst(), other.getLast())) {
                        line = Lists.immutable.of(other.getFirst()).newWithAll(line);
                        grew = true;
                    }
                    if (grew) {
                        rest.remove(i);
                    }
                }
            }
            out.add(line);
        }
        return Lists.immutable.ofAll(out);
    }

    private static boolean same(Point a, Point b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y()) < 1e-9;
    }

    @Override
    public ImmutableList<Cell> cells() {
        return Lists.immutable.empty();
    }
}
