package coldseam.conduction.arrange;

import coldseam.conduction.Boundary;
import coldseam.conduction.Figures;
import coldseam.conduction.Point;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The integer lattice a drawing is snapped to, chosen by the drawing alone, whatever unit it was written in.
 *
 * <p>The step is the smallest power of ten of a metre that fits the drawing's size into {@link #STEPS}; the origin is the
 * drawing's middle (the axis, where it has one), so that a drawing far away is solved like one at (0, 0). Points and lines
 * closer than {@code close} are one: a share {@link #SHARE} of the size, at least {@link #LEAST}, since coordinates of a
 * turned drawing carry their own rounding, and at most {@link #MOST}; but never more than a share {@link #OF_GAP} of the
 * smallest gap inside a region's outline, nor than {@link #OF_SIZE} of the size, so that thin layers stay as they are.
 *
 * @param size of the drawing, metres: the longer of its width (the largest radius, where it has an axis) and its height
 * @param step metres
 * @param originX steps from the drawing's x = 0
 * @param originY steps from the drawing's y = 0
 * @param close steps; points and lines no farther apart are one
 */
public record Lattice(double size, double step, long originX, long originY, double close) {

    /** Halves of it less 24 halvings leave a bit to spare of a double's 53. */
    private static final double STEPS = 0x1p28;

    private static final double SHARE = 5e-6;
    /** m */
    static final double LEAST = 2e-6;
    /** m */
    private static final double MOST = 5e-6;

    /** m; half of the thousandth of a millimetre that is the last digit of a drawing. */
    private static final double ROUNDING = 0.5e-6;

    /** m; what is smaller is no drawing. */
    static final double SMALLEST = 1e-6;

    /** m; the farthest coordinate whose double still tells hundredths of a micrometre apart. */
    static final double FARTHEST = 1e6;

    private static final double OF_SIZE = 5e-5;
    private static final double OF_GAP = 0.05;

    /** Two places that belong together may each be rounded by up to 1/√2 step. */
    private static final double CLOSEST = 2;

    /** A half must not be rounded up here and down there for the last bit of a conversion of units. */
    private static final double HALF = 0.5 + 1e-6;

    /** The lattice of a section whose coordinates are numbers. */
    public static Lattice of(Section section) {
        ImmutableList<Point> all = section.regions()
                .flatCollect(region -> region.outline().corners())
                .newWithAll(section.boundaries().flatCollect(Boundary::path));
        double left = all.collectDouble(Point::x).minIfEmpty(0);
        double right = all.collectDouble(Point::x).maxIfEmpty(0);
        double low = all.collectDouble(Point::y).minIfEmpty(0);
        double high = all.collectDouble(Point::y).maxIfEmpty(0);
        boolean planar = section.symmetry() == Symmetry.PLANAR;
        double size = Math.max(planar ? right - left : right, high - low);
        double step = Math.pow(10, Math.ceil(Math.log10(Math.max(size, SMALLEST) / STEPS)));
        double noise = Math.min(Math.min(Math.max(SHARE * size, LEAST), MOST), OF_SIZE * size);
        double close = Math.min(noise, OF_GAP * smallestGap(section, Math.min(LEAST, OF_SIZE * size)));
        return new Lattice(
                size,
                step,
                planar ? Math.round((left + right) / 2 / step) : 0,
                Math.round((low + high) / 2 / step),
                Math.max(CLOSEST, close / step));
    }

    /** The smallest distance greater than a least one from a corner of a region to a side of the same that does not end there. */
    private static double smallestGap(Section section, double least) {
        double smallest = Double.POSITIVE_INFINITY;
        for (Region region : section.regions()) {
            ImmutableList<Point> corners = region.outline().corners();
            int n = corners.size();
            for (int i = 0; i < n; i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % n);
                for (int j = 0; j < n; j++) {
                    double gap = j == i || j == (i + 1) % n ? 0 : corners.get(j).distance(a, b);
                    smallest = gap > least ? Math.min(smallest, gap) : smallest;
                }
            }
        }
        return smallest;
    }

    /** Where a place lies on the lattice, not rounded. */
    public double stepsX(double metres) {
        return metres / step - originX;
    }

    /** Where a place lies on the lattice, not rounded. */
    public double stepsY(double metres) {
        return metres / step - originY;
    }

    long x(double metres) {
        return (long) Math.floor(stepsX(metres) + HALF);
    }

    long y(double metres) {
        return (long) Math.floor(stepsY(metres) + HALF);
    }

    public double metresX(double steps) {
        return metres(steps + originX);
    }

    public double metresY(double steps) {
        return metres(steps + originY);
    }

    /** By division where the step is a whole part of a metre, so that 1.1 m stays 1.1. */
    private double metres(double steps) {
        double whole = Math.rint(1 / step);
        return Math.abs(whole * step - 1) < 1e-12 ? steps / whole : steps * step;
    }

    /** A place on the lattice, in words. */
    public String place(double x, double y) {
        return SectionCheck.place(metresX(x), metresY(y));
    }

    /** A length on the lattice, in words. */
    public String millimetres(double steps) {
        return Figures.number(1e3 * steps * step) + " mm";
    }

    /** Of what was moved, all but what is the rounding of numbers written to a thousandth of a millimetre. */
    public ImmutableList<LineArrangement.Move> told(ImmutableList<LineArrangement.Move> moves) {
        return moves.select(move -> move.distance() * step > ROUNDING);
    }

    /** What was moved onto something else, for a note: the first few places with their distances. */
    public String moved(ImmutableList<LineArrangement.Move> moves) {
        String places = moves.take(NAMED)
                .collect(move -> place(move.x(), move.y()) + " by " + millimetres(move.distance()))
                .makeString(", ");
        return moves.size() + (moves.size() == 1 ? " point was" : " points were")
                + " moved onto a point or line closer than " + millimetres(close) + ": " + places
                + (moves.size() > NAMED ? ", and " + (moves.size() - NAMED) + " more" : "");
    }

    private static final int NAMED = 5;
}
