package coldseam.conduction.arrange;

import coldseam.conduction.Boundary;
import coldseam.conduction.DrawingFault.About;
import coldseam.conduction.DrawingFaults;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Probe;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import java.util.Locale;
import java.util.Set;
import org.eclipse.collections.api.list.ImmutableList;

/** The faults of a section that show before anything is drawn: numbers out of range, names that do not fit. */
public record SectionCheck(Section section, DrawingFaults faults) {

    /** Their sets are bits of a long. */
    private static final int MOST_ENVIRONMENTS = 64;

    public void run() {
        if (section.environments().size() > MOST_ENVIRONMENTS) {
            faults.add("the section has " + section.environments().size() + " environments; at most "
                    + MOST_ENVIRONMENTS
                    + " are told apart: join those of one temperature, or split the section");
        }
        if (section.symmetry() == null) {
            faults.add("the symmetry is missing; give planar or axisymmetric");
        }
        regions();
        environments();
        boundaries();
        faults.each(About.PROBE, "probe", section.probes(), Probe::name, (what, probe) -> finite(what, probe.at()));
        if (faults.none()) {
            shapes();
        }
    }

    private void regions() {
        if (section.regions().isEmpty()) {
            faults.add("the section has no region; paint at least one");
        }
        for (int r = 0; r < section.regions().size(); r++) {
            Region region = section.regions().get(r);
            String what = region(section, r);
            faults.look(About.PAINTED, r);
            faults.conductivity(what, region.conductivity());
            ImmutableList<Point> corners = region.outline().corners();
            if (corners.size() < 3) {
                faults.add(what + " has " + corners.size() + " corners; an outline needs at least 3");
            }
            corners.forEach(corner -> finite(what, corner));
        }
    }

    /** What can only be said of a drawing whose coordinates are numbers. */
    private void shapes() {
        Lattice lattice = Lattice.of(section);
        if (lattice.size() < Lattice.SMALLEST) {
            faults.look(About.WHOLE, 0);
            faults.add("the drawing is " + lattice.size() + " m large; it must be at least " + Lattice.SMALLEST
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
                        faults.look(About.PAINTED, r);
                        faults.add(region(section, r) + " crosses itself at " + place(at)
                                + "; draw its outline without crossings, or as two regions");
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
        faults.look(About.WHOLE, 0);
        if (section.environments().isEmpty()) {
            faults.add("the section has no environment; give at least one with its temperature");
        }
        faults.each(
                About.ENVIRONMENT, "environment", section.environments(), Environment::name, (what, environment) -> {
                    faults.temperature(what, environment.temperature());
                    faults.resistance(what, environment.surfaceResistance());
                });
    }

    private void boundaries() {
        Set<String> names = section.environments().collect(Environment::name).toSet();
        faults.look(About.WHOLE, 0);
        if (section.boundaries().isEmpty()) {
            faults.add("no part of the outline faces an environment; give at least one boundary");
        }
        for (int b = 0; b < section.boundaries().size(); b++) {
            Boundary boundary = section.boundaries().get(b);
            String what = boundary(section, b);
            faults.look(About.BOUNDARY, b);
            if (!names.contains(boundary.environment())) {
                faults.add(what + " faces an environment that is not defined; there are "
                        + section.environments().collect(Environment::name).makeString(", "));
            }
            if (boundary.path().size() < 2) {
                faults.add(what + " has " + boundary.path().size() + " points; a path needs at least 2");
            }
            boundary.path().forEach(point -> finite(what, point));
            boundary.surfaceResistance().ifPresent(own -> faults.resistance(what, own));
        }
    }

    private void finite(String what, Point point) {
        if (!(Double.isFinite(point.x()) && Double.isFinite(point.y()))) {
            faults.add(what + " has a point (" + point.x() + ", " + point.y() + ") m; coordinates must be numbers");
        } else if (section.symmetry() == Symmetry.AXISYMMETRIC && point.x() < -Lattice.LEAST) {
            faults.add(what + " has a point at " + place(point)
                    + "; in an axisymmetric section x is the radius and must be 0 m or greater");
        } else if (Math.abs(point.x()) > Lattice.FARTHEST || Math.abs(point.y()) > Lattice.FARTHEST) {
            faults.add(String.format(
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
