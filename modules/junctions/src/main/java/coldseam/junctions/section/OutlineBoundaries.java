package coldseam.junctions.section;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.envelope.KindForm;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.kind.Chart;
import coldseam.junctions.kind.Vector;
import coldseam.junctions.language.Statement;
import coldseam.junctions.plan.SectionEnd;
import java.util.Map;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Says of each part of a section's outline what it faces.
 *
 * <p>The outline is walked anticlockwise. Edges on a cut are adiabatic; between two cuts the outline faces one space, known
 * from the side of the cut on which it begins. Surface resistances follow ISO 6946: a face in the plane of a band has that
 * band's, every other indoor face 0.13 and every other outdoor face 0.04 m²·K/W.
 */
final class OutlineBoundaries {

    private static final double SLACK = 1e-6;

    /** m; a face this near to a band's outer face is that face. */
    private static final double SAME_FACE = 1e-4;

    /** m; a thing that reaches this far out of two surfaces divides the spaces beside it. */
    private static final double STANDS_OUT = 0.2;

    /** m²; less is a sliver between parts of a drawing. */
    private static final double HOLE = 1e-4;

    /** The cosine of 30°, within which a face counts as parallel to a band. */
    private static final double PARALLEL = Math.sqrt(0.75);

    private final Scene scene;
    private final Chart chart;
    private final Surroundings surroundings;
    private final MutableList<Plane> planes = Lists.mutable.empty();
    private final MutableList<String> notes;

    /** An adiabatic plane: n·p = at; what lies on the two sides of the body there, inner side first. */
    private record Plane(Vector out, double at, Vector across, String inner, String outer) {}

    OutlineBoundaries(Scene scene, Surroundings surroundings, Map<Chart.Cut, Double> cuts, MutableList<String> notes) {
        this.scene = scene;
        this.chart = scene.chart();
        this.surroundings = surroundings;
        this.notes = notes;
        cuts.forEach((cut, at) -> planes.add(new Plane(
                chart.run(cut.ofFirst()).times(cut.sign()), at, chart.normal(cut.ofFirst()), inner(cut), outer(cut))));
        if (scene.form().second() == KindForm.Second.FRAME) {
            planes.add(new Plane(
                    chart.secondNormal(),
                    Composer.FRAME_WIDTH,
                    chart.firstNormal(),
                    Surroundings.INDOOR,
                    surroundings.second().name()));
        }
        if (scene.form().second() == KindForm.Second.THING) {
            return;
        }
        scene.drawing()
                .statements()
                .selectInstancesOf(Statement.Ground.class)
                .forEach(ground -> ground(scene.value(ground.level())));
    }

    private void ground(double level) {
        double width = scene.setup().ground().orElseThrow().floorWidth();
        planes.add(new Plane(
                chart.firstNormal(),
                level + GroundPieces.REACH * width,
                chart.secondNormal(),
                Surroundings.OUTDOOR,
                Surroundings.OUTDOOR));
        planes.add(new Plane(
                chart.secondNormal(),
                scene.secondOutside() + GroundPieces.REACH * width,
                chart.firstNormal(),
                Surroundings.OUTDOOR,
                Surroundings.OUTDOOR));
    }

    private String inner(Chart.Cut cut) {
        boolean surfaces = scene.form().second() != KindForm.Second.THING;
        return switch (cut) {
            case FIRST_AWAY, SECOND_AWAY -> Surroundings.INDOOR;
            case FIRST_BEYOND ->
                surfaces && chart.convex() ? surroundings.second().name() : Surroundings.INDOOR;
            case SECOND_BEYOND -> {
                if (surfaces) {
                    yield chart.convex() ? surroundings.first().name() : Surroundings.INDOOR;
                }
                yield surroundings.first().name();
            }
        };
    }

    private String outer(Chart.Cut cut) {
        boolean thing = scene.form().second() == KindForm.Second.THING;
        // What goes on into the room behind a frame, as a floor does, has the room above and below.
        boolean frame = scene.form().second() == KindForm.Second.FRAME;
        return switch (cut) {
            case FIRST_AWAY -> surroundings.first().name();
            case SECOND_AWAY ->
                thing || frame ? Surroundings.INDOOR : surroundings.second().name();
            case FIRST_BEYOND -> thing || chart.convex() ? surroundings.first().name() : Surroundings.INDOOR;
            case SECOND_BEYOND -> {
                if (thing) {
                    yield surroundings.first().name();
                }
                yield chart.convex() ? surroundings.second().name() : Surroundings.INDOOR;
            }
        };
    }

    /**
     * The boundaries of a body.
     *
     * @throws DetailDoesNotFit where the drawing joins rooms and outdoors
     */
    ImmutableList<Boundary> of(Geometry body) {
        Polygon polygon = (Polygon) body;
        if (polygon.getNumInteriorRing() > 0) {
            notes.add("A hole in the drawing that faces neither rooms nor outdoors is adiabatic.");
        }
        Coordinate[] ring = anticlockwise(polygon);
        int count = ring.length - 1;
        Plane[] on = new Plane[count];
        int start = -1;
        for (int i = 0; i < count; i++) {
            on[i] = plane(ring[i], ring[i + 1]);
            if (on[i] != null) {
                start = i;
            }
        }
        if (start < 0) {
            throw DetailDoesNotFit.of(
                    "the drawing has no band that reaches the end of the section; paint the bands first");
        }
        MutableList<Boundary> boundaries = Lists.mutable.empty();
        int i = 0;
        while (i < count) {
            int at = (start + i) % count;
            if (on[at] != null) {
                i++;
                continue;
            }
            MutableList<Point> arc = Lists.mutable.of(Shapes.point(ring[at]));
            Plane before = on[(at + count - 1) % count];
            while (on[(start + i) % count] == null) {
                arc.add(Shapes.point(ring[(start + i) % count + 1]));
                i++;
            }
            face(arc, before, on[(start + i) % count], boundaries);
        }
        return boundaries.toImmutable();
    }

    /** No air that something encloses is adiabatic: what is cleared or drawn only must lie open to a room or outdoors. */
    static void refuseHoles(Polygon body) {
        double area = 0;
        for (int i = 0; i < body.getNumInteriorRing(); i++) {
            area += Shapes.FACTORY
                    .createPolygon(body.getInteriorRingN(i).getCoordinateSequence())
                    .getArea();
        }
        if (area > HOLE) {
            throw DetailDoesNotFit.of(Phrase.of("the drawing encloses ")
                    .and(Format.of("%.0f cm²", 1e4 * area), area, Dimension.AREA)
                    .and(
                            " of nothing, through which no heat would pass. Draw what is there, or the space as a block with a"
                                    + " material of its own: width over its resistance (ISO 6946)."));
        }
    }

    /** Where a body is cut off: the straight pieces of its outline that lie in a plane. */
    ImmutableList<SectionEnd> ends(Geometry body) {
        Coordinate[] ring = anticlockwise((Polygon) body);
        MutableList<SectionEnd> ends = Lists.mutable.empty();
        for (int i = 0; i + 1 < ring.length; i++) {
            if (plane(ring[i], ring[i + 1]) != null) {
                ends.add(new SectionEnd(Shapes.point(ring[i]), Shapes.point(ring[i + 1])));
            }
        }
        return ends.toImmutable();
    }

    private static Coordinate[] anticlockwise(Polygon body) {
        Coordinate[] ring = body.getExteriorRing().getCoordinates();
        return Orientation.isCCW(ring) ? ring : body.getExteriorRing().reverse().getCoordinates();
    }

    private Plane plane(Coordinate from, Coordinate to) {
        return planes.detect(plane -> Math.abs(plane.out().dot(Shapes.point(from)) - plane.at()) < SLACK
                && Math.abs(plane.out().dot(Shapes.point(to)) - plane.at()) < SLACK);
    }

    /** What the outline faces just after a plane (walking anticlockwise), or just before one. */
    private static String beside(Plane plane, boolean after) {
        // Anticlockwise, the body lies to the left and the plane's outside to the right: the walk goes along `ahead`.
        Vector ahead = plane.out().left();
        boolean outwards = ahead.dot(plane.across()) > 0;
        return outwards == after ? plane.outer() : plane.inner();
    }

    private void face(MutableList<Point> arc, Plane before, Plane after, MutableList<Boundary> boundaries) {
        String begins = beside(before, true);
        String ends = beside(after, false);
        if (begins.equals(ends)) {
            split(arc, begins, boundaries);
            return;
        }
        if (begins.equals(Surroundings.INDOOR) || ends.equals(Surroundings.INDOOR)) {
            throw DetailDoesNotFit.of("with these layers the drawing leaves a way from " + begins + " to " + ends
                    + "; nothing closes it. Correct the lines where the bands end.");
        }
        if (divided(arc, begins, ends, boundaries)) {
            return;
        }
        // Two spaces outdoors that nothing divides: they meet at the outer corner.
        Point corner = chart.corner(scene.first().outside(), scene.secondOutside());
        int nearest = 0;
        for (int i = 1; i < arc.size(); i++) {
            if (arc.get(i).distance(corner) < arc.get(nearest).distance(corner)) {
                nearest = i;
            }
        }
        int tip = tip(arc);
        if (tip >= 0) {
            notes.add("What stands out divides " + begins + " from " + ends + " at its end.");
            split(arc.subList(0, tip + 1), begins, boundaries);
            split(arc.subList(tip, arc.size()), ends, boundaries);
            return;
        }
        notes.add("Nothing divides " + begins + " from " + ends + ": they are taken to meet at the outer corner.");
        split(arc.subList(0, nearest + 1), begins, boundaries);
        split(arc.subList(nearest, arc.size()), ends, boundaries);
    }

    /** Refuses a drawing that divides the spaces outdoors somewhere along a surface: what lies between would face the wrong one. */
    void refuseFarDivide(String who) {
        double most =
                scene.first().thickness() + scene.second().map(Band::thickness).orElse(0.0);
        Point corner = chart.corner(scene.first().outside(), scene.secondOutside());
        if (surroundings.spaces().size() < 2 || scene.form().second() != KindForm.Second.SURFACE) {
            return;
        }
        divides()
                .collect(divide -> chart.at(scene.value(divide.across()), scene.value(divide.along())))
                .collect(place -> place.distance(corner))
                .select(away -> away > most)
                .take(1)
                .forEach(away -> {
                    throw DetailDoesNotFit.of(Phrase.of(who + " divides \""
                                    + surroundings.first().name() + "\" from \""
                                    + surroundings.second().name() + "\" ")
                            .andMillimetres(away)
                            .and(" from where the outer faces meet; allowed is up to ")
                            .andMillimetres(most)
                            .and(", both thicknesses. Put divide where the two surfaces meet."));
                });
    }

    private ImmutableList<Statement.Divide> divides() {
        return scene.drawing().statements().selectInstancesOf(Statement.Divide.class);
    }

    /** Divides an arc where the drawing says so: at the place of the outline that is nearest to the one it names. */
    private boolean divided(MutableList<Point> arc, String begins, String ends, MutableList<Boundary> boundaries) {
        Statement.Divide divide = divides().getFirst();
        if (divide == null) {
            return false;
        }
        Point wanted = chart.at(scene.value(divide.across()), scene.value(divide.along()));
        int segment = 0;
        Point nearest = arc.getFirst();
        for (int i = 0; i + 1 < arc.size(); i++) {
            Point foot = foot(wanted, arc.get(i), arc.get(i + 1));
            if (foot.distance(wanted) < nearest.distance(wanted)) {
                nearest = foot;
                segment = i;
            }
        }
        MutableList<Point> first =
                Lists.mutable.withAll(arc.subList(0, segment + 1)).with(nearest);
        MutableList<Point> last = Lists.mutable.of(nearest).withAll(arc.subList(segment + 1, arc.size()));
        split(without(first), begins, boundaries);
        split(without(last), ends, boundaries);
        return true;
    }

    /** The point of a segment nearest to another; on a side aslant to the lattice the nearer end, which lies on it. */
    private static Point foot(Point of, Point from, Point to) {
        double x = to.x() - from.x();
        double y = to.y() - from.y();
        double share = ((of.x() - from.x()) * x + (of.y() - from.y()) * y) / (x * x + y * y);
        if (!(share > 0)) {
            return from;
        }
        if (Math.abs(x) > SLACK && Math.abs(y) > SLACK) {
            return share < 0.5 ? from : to;
        }
        return share < 1 ? Shapes.point(Shapes.coordinate(new Point(from.x() + share * x, from.y() + share * y))) : to;
    }

    /** Without places that stand twice in a row. */
    private static MutableList<Point> without(MutableList<Point> arc) {
        MutableList<Point> out = Lists.mutable.of(arc.getFirst());
        arc.forEach(each -> {
            if (each.distance(out.getLast()) > SLACK) {
                out.add(each);
            }
        });
        return out;
    }

    /** The farthest corner of what stands out of two surfaces that go on from one another; -1 where nothing does. */
    private int tip(MutableList<Point> arc) {
        if (chart.crossing()) {
            return -1;
        }
        int far = -1;
        double most = Math.max(scene.first().outside(), scene.secondOutside()) + STANDS_OUT;
        for (int i = 0; i < arc.size(); i++) {
            double out = Math.min(chart.across(true, arc.get(i)), chart.across(false, arc.get(i)));
            if (out > most + SLACK) {
                most = out;
                far = i;
            }
        }
        return far;
    }

    /** Splits an arc where its surface resistance changes. */
    private void split(MutableList<Point> arc, String space, MutableList<Boundary> boundaries) {
        int from = 0;
        while (from < arc.size() - 1) {
            double resistance = resistance(arc.get(from), arc.get(from + 1), space);
            int to = from + 1;
            while (to < arc.size() - 1 && resistance(arc.get(to), arc.get(to + 1), space) == resistance) {
                to++;
            }
            boundaries.add(new Boundary(
                    space, Lists.immutable.withAll(arc.subList(from, to + 1)), OptionalDouble.of(resistance)));
            from = to;
        }
    }

    private double resistance(Point from, Point to, String space) {
        double length = from.distance(to);
        Vector outward = new Vector((to.y() - from.y()) / length, (from.x() - to.x()) / length);
        boolean indoor = space.equals(Surroundings.INDOOR);
        Band nearest = null;
        double most = PARALLEL;
        for (boolean first : new boolean[] {true, false}) {
            Band band = scene.band(first).orElse(null);
            if (band == null) {
                continue;
            }
            double alike = outward.dot(chart.normal(first)) * (indoor ? -1 : 1);
            boolean itsFace = indoor || Math.abs(chart.across(first, from) - band.solvedOutside()) < SAME_FACE;
            if (alike >= most - 1e-12 && itsFace) {
                most = alike;
                nearest = band;
            }
        }
        if (nearest != null) {
            return indoor ? nearest.rsi() : nearest.rse();
        }
        if (indoor) {
            return Surroundings.STILL_AIR;
        }
        return surroundings
                .spaces()
                .detectOptional(each -> each.name().equals(space))
                .map(Surroundings.Space::surfaceResistance)
                .orElse(Surroundings.OPEN_AIR);
    }
}
