package coldseam.conduction.arrange;

import coldseam.conduction.Boundary;
import coldseam.conduction.DrawingFault;
import coldseam.conduction.DrawingFault.About;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Probe;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** The faults of a section that show before anything is drawn: numbers out of range, names that do not fit. */
public final class SectionCheck {

    /** Their sets are bits of a long. */
    private static final int MOST_ENVIRONMENTS = 64;

    private final Section section;
    private final MutableList<DrawingFault> faults;

    public SectionCheck(Section section, MutableList<DrawingFault> faults) {
        this.section = section;
        this.faults = faults;
    }

    private void add(About about, int index, String text) {
        faults.add(new DrawingFault(about, index, text));
    }

    public void run() {
        if (section.environments().size() > MOST_ENVIRONMENTS) {
            add(
                    About.WHOLE,
                    0,
                    "the section has " + section.environments().size() + " environments; at most " + MOST_ENVIRONMENTS
                            + " are told apart: join those of one temperature, or split the section");
        }
        if (section.symmetry() == null) {
            add(About.WHOLE, 0, "the symmetry is missing; give planar or axisymmetric");
        }
        regions();
        environments();
        boundaries();
        Set<String> names = new HashSet<>();
        for (int i = 0; i < section.probes().size(); i++) {
            Probe probe = section.probes().get(i);
            if (!names.add(probe.name())) {
                add(About.PROBE, i, "probe " + probe.name() + " is there twice; give each probe a name of its own");
            }
            finite(About.PROBE, i, "probe " + probe.name(), probe.at());
        }
        if (faults.isEmpty()) {
            shapes();
        }
    }

    private void regions() {
        if (section.regions().isEmpty()) {
            add(About.WHOLE, 0, "the section has no region; paint at least one");
        }
        for (int r = 0; r < section.regions().size(); r++) {
            Region region = section.regions().get(r);
            String what = region(section, r);
            if (!(region.conductivity() > 0 && region.conductivity() < Double.POSITIVE_INFINITY)) {
                add(
                        About.PAINTED,
                        r,
                        what + " has conductivity " + region.conductivity()
                                + " W/(m·K); it must be a number greater than 0");
            }
            ImmutableList<Point> corners = region.outline().corners();
            if (corners.size() < 3) {
                add(About.PAINTED, r, what + " has " + corners.size() + " corners; an outline needs at least 3");
            }
            for (Point corner : corners) {
                finite(About.PAINTED, r, what, corner);
            }
        }
    }

    /** What can only be said of a drawing whose coordinates are numbers. */
    private void shapes() {
        Lattice lattice = Lattice.of(section);
        if (lattice.size() < Lattice.SMALLEST) {
            add(
                    About.WHOLE,
                    0,
                    "the drawing is " + lattice.size() + " m large; it must be at least " + Lattice.SMALLEST
                            + " m: look at its unit");
            return;
        }
        double touch = lattice.close() * lattice.step();
        for (int r = 0; r < section.regions().size(); r++) {
            selfCrossing(r, section.regions().get(r).outline().corners(), touch);
        }
    }

    private void selfCrossing(int r, ImmutableList<Point> corners, double touch) {
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % n);
            for (int j = i + 2; j < n; j++) {
                if (i == 0 && j == n - 1) {
                    continue;
                }
                Point c = corners.get(j);
                Point d = corners.get((j + 1) % n);
                double cSide = side(a, b, c);
                double dSide = side(a, b, d);
                double aSide = side(c, d, a);
                double bSide = side(c, d, b);
                if (cSide * dSide < 0 && aSide * bSide < 0) {
                    double t = cSide / (cSide - dSide);
                    Point at = new Point(c.x() + t * (d.x() - c.x()), c.y() + t * (d.y() - c.y()));
                    // A crossing of lines that are closed up is a touch.
                    double depth = Math.min(
                            Math.min(at.distance(a), at.distance(b)), Math.min(at.distance(c), at.distance(d)));
                    if (depth > touch) {
                        add(
                                About.PAINTED,
                                r,
                                region(section, r) + " crosses itself at " + place(at)
                                        + "; draw its outline without crossings," + " or as two regions");
                        return;
                    }
                }
            }
        }
    }

    private static double side(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    private void environments() {
        if (section.environments().isEmpty()) {
            add(About.WHOLE, 0, "the section has no environment; give at least one with its temperature");
        }
        Set<String> names = new HashSet<>();
        for (int i = 0; i < section.environments().size(); i++) {
            Environment environment = section.environments().get(i);
            if (!names.add(environment.name())) {
                add(
                        About.ENVIRONMENT,
                        i,
                        "environment " + environment.name() + " is there twice; give each a name of its own");
            }
            if (!Double.isFinite(environment.temperature())) {
                add(
                        About.ENVIRONMENT,
                        i,
                        "environment " + environment.name() + " has temperature " + environment.temperature()
                                + " °C; it must be a number");
            }
            resistance(About.ENVIRONMENT, i, "environment " + environment.name(), environment.surfaceResistance());
        }
    }

    private void resistance(About about, int index, String what, double resistance) {
        if (!(resistance >= 0 && resistance < Double.POSITIVE_INFINITY)) {
            add(
                    about,
                    index,
                    what + " has surface resistance " + resistance + " m²·K/W; it must be a number, 0 or greater");
        }
    }

    private void boundaries() {
        Set<String> names = section.environments().collect(Environment::name).toSet();
        if (section.boundaries().isEmpty()) {
            add(About.WHOLE, 0, "no part of the outline faces an environment; give at least one boundary");
        }
        for (int b = 0; b < section.boundaries().size(); b++) {
            Boundary boundary = section.boundaries().get(b);
            String what = boundary(section, b);
            if (!names.contains(boundary.environment())) {
                add(
                        About.BOUNDARY,
                        b,
                        what + " faces an environment that is not defined; there are "
                                + section.environments()
                                        .collect(Environment::name)
                                        .makeString(", "));
            }
            if (boundary.path().size() < 2) {
                add(About.BOUNDARY, b, what + " has " + boundary.path().size() + " points; a path needs at least 2");
            }
            for (Point point : boundary.path()) {
                finite(About.BOUNDARY, b, what, point);
            }
            if (boundary.surfaceResistance().isPresent()) {
                resistance(About.BOUNDARY, b, what, boundary.surfaceResistance().getAsDouble());
            }
        }
    }

    private void finite(About about, int index, String what, Point point) {
        if (!(Double.isFinite(point.x()) && Double.isFinite(point.y()))) {
            add(
                    about,
                    index,
                    what + " has a point (" + point.x() + ", " + point.y() + ") m; coordinates must be numbers");
        } else if (section.symmetry() == Symmetry.AXISYMMETRIC && point.x() < -Lattice.LEAST) {
            add(
                    about,
                    index,
                    what + " has a point at " + place(point)
                            + "; in an axisymmetric section x is the radius and must be 0 m or greater");
        } else if (Math.abs(point.x()) > Lattice.FARTHEST || Math.abs(point.y()) > Lattice.FARTHEST) {
            add(
                    about,
                    index,
                    String.format(
                            Locale.ROOT,
                            "%s has a point at %s; coordinates may be at most %.0f m, move the drawing towards the origin",
                            what,
                            place(point),
                            Lattice.FARTHEST));
        }
    }

    public static String region(Section section, int index) {
        return "region " + (index + 1) + " (" + section.regions().get(index).material() + ")";
    }

    public static String boundary(Section section, int index) {
        return "boundary " + (index + 1) + " ("
                + section.boundaries().get(index).environment() + ")";
    }

    /** A place in metres, to the micrometre. */
    public static String place(Point point) {
        return point.text();
    }

    public static String place(double x, double y) {
        return new Point(x, y).text();
    }
}
