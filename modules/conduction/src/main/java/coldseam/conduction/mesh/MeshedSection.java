package coldseam.conduction.mesh;

import coldseam.conduction.Boundary;
import coldseam.conduction.DrawingFault;
import coldseam.conduction.DrawingFault.About;
import coldseam.conduction.DrawingFaults;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Probe;
import coldseam.conduction.Section;
import coldseam.conduction.SectionException;
import coldseam.conduction.Symmetry;
import coldseam.conduction.arrange.Lattice;
import coldseam.conduction.arrange.LineArrangement;
import coldseam.conduction.arrange.SectionCheck;
import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A section as it is solved: snapped, cut into faces of one region each, triangulated as coarsely as its edges allow.
 *
 * <ol>
 *   <li>All outlines and boundary paths go into one {@link LineArrangement}.
 *   <li>A first triangulation tells on which side of each edge which region lies on top: crossing an edge changes the
 *       set of regions one is in by exactly the rings that run along it.
 *   <li>Edges with one region on both sides and corners that do not turn are dropped; what is left is triangulated anew.
 *   <li>Edges with a region on one side only are the outline; a boundary may only run along these.
 * </ol>
 */
public final class MeshedSection {

    private final Section section;
    private final MutableList<DrawingFault> faults;
    public final MutableList<String> notes = Lists.mutable.empty();

    private LineArrangement cutLines;
    /** The region to the left and right of each arrangement edge, from its first to its second vertex; -1 is none. */
    private int[] left;

    private int[] right;

    public final Lattice lattice;
    public Mesh mesh;
    private Topology topology;
    private final boolean axisymmetric;
    /** Conductivity of each region, W/(m·K). */
    public final double[] conductivity;
    /** Environment of each boundary. */
    public final int[] environment;
    /** Surface resistance of each boundary, m²·K/W. */
    public final double[] resistance;

    /** Every fault of a section; one that has none can be solved. */
    public static ImmutableList<DrawingFault> faults(Section section) {
        MutableList<DrawingFault> faults = Lists.mutable.empty();
        try {
            new MeshedSection(section, faults);
        } catch (SectionException faulty) {
            return faults.toImmutable();
        }
        return Lists.immutable.empty();
    }

    /** @throws SectionException with every fault */
    public MeshedSection(Section section) {
        this(section, Lists.mutable.empty());
    }

    private MeshedSection(Section section, MutableList<DrawingFault> faults) {
        this.section = section;
        this.faults = faults;
        axisymmetric = section.symmetry() == Symmetry.AXISYMMETRIC;
        int regions = section.regions().size();
        int boundaries = section.boundaries().size();
        conductivity = new double[regions];
        environment = new int[boundaries];
        resistance = new double[boundaries];
        new SectionCheck(section, new DrawingFaults(faults)).run();
        stopIfFaulty();
        lattice = Lattice.of(section);
        for (int r = 0; r < regions; r++) {
            conductivity[r] = section.regions().get(r).conductivity();
        }
        ImmutableList<Environment> all = section.environments();
        for (int b = 0; b < boundaries; b++) {
            Boundary boundary = section.boundaries().get(b);
            environment[b] = all.detectIndex(e -> e.name().equals(boundary.environment()));
            resistance[b] =
                    boundary.surfaceResistance().orElse(all.get(environment[b]).surfaceResistance());
        }
        arrange();
        label();
        checkBoundaries(faults.notEmpty());
        triangulate();
        checkProbes();
        // What faces nothing may follow from a boundary that is drawn beside it.
        stopIfFaulty();
        topology = new Topology(mesh, axisymmetric, faults);
        topology.findArcs();
        topology.findParts(lattice);
        stopIfFaulty();
        for (int tries = 0; !topology.findCuts(); tries++) {
            mesh.refineAll();
            if (tries == 12) {
                throw new IllegalStateException("internal error, please report: no way between two rims");
            }
        }
        stopIfFaulty();
    }

    private void checkProbes() {
        if (section.probes().isEmpty()) {
            return;
        }
        TriangleIndex index = new TriangleIndex(mesh, lattice.close());
        double[] l = new double[3];
        for (int i = 0; i < section.probes().size(); i++) {
            Probe probe = section.probes().get(i);
            if (index.find(
                            lattice.stepsX(probe.at().x()),
                            lattice.stepsY(probe.at().y()),
                            l)
                    < 0) {
                add(
                        About.PROBE,
                        i,
                        "probe " + probe.name() + " at " + SectionCheck.place(probe.at())
                                + " is outside the section; put it on or inside a painted region");
            }
        }
    }

    public Topology topology() {
        return topology;
    }

    /** Gaps narrower than this many times what is closed up are taken for drawing errors. */
    private static final double THIN = 4;

    /** The angle of a gap that nobody draws, radians. */
    private static final double NEEDLE = 0.005;

    private void add(About about, int index, String text) {
        faults.add(new DrawingFault(about, index, text));
    }

    private void stopIfFaulty() {
        if (faults.notEmpty()) {
            throw new SectionException(faults.collect(DrawingFault::text).toImmutable());
        }
    }

    private void arrange() {
        cutLines = new LineArrangement(lattice, section.regions().size());
        for (int r = 0; r < section.regions().size(); r++) {
            ImmutableList<Point> corners = section.regions().get(r).outline().corners();
            int first = vertex(corners.get(0));
            int previous = first;
            for (int i = 1; i < corners.size(); i++) {
                int next = vertex(corners.get(i));
                cutLines.addRingSide(previous, next, r);
                previous = next;
            }
            cutLines.addRingSide(previous, first, r);
        }
        for (int b = 0; b < section.boundaries().size(); b++) {
            ImmutableList<Point> path = section.boundaries().get(b).path();
            int previous = vertex(path.get(0));
            for (int i = 1; i < path.size(); i++) {
                int next = vertex(path.get(i));
                cutLines.addPathSide(previous, next, b);
                previous = next;
            }
        }
        if (!cutLines.cut()) {
            add(
                    About.WHOLE,
                    0,
                    "the drawing has more lines closer than " + lattice.millimetres(lattice.close())
                            + " than can be told apart; draw fewer lines");
            stopIfFaulty();
        }
        for (int r = 0; r < section.regions().size(); r++) {
            if (!cutLines.has(r)) {
                add(
                        About.PAINTED,
                        r,
                        SectionCheck.region(section, r) + " at "
                                + SectionCheck.place(section.regions()
                                        .get(r)
                                        .outline()
                                        .corners()
                                        .get(0))
                                + " is so thin that nothing of it is left: what is closer than "
                                + lattice.millimetres(lattice.close()) + " is one; draw it thicker, or leave it out");
            }
        }
        if (faults.size() == section.regions().size()) {
            stopIfFaulty();
        }
        ImmutableList<LineArrangement.Move> told = lattice.told(cutLines.moves.toImmutable());
        if (told.notEmpty()) {
            notes.add(lattice.moved(told));
        }
    }

    private int vertex(Point at) {
        // What is close to the axis is on it.
        boolean axis = axisymmetric && Math.abs(lattice.stepsX(at.x())) <= lattice.close();
        return cutLines.vertex(axis ? 0 : at.x(), at.y());
    }

    /** Finds the region on top on both sides of every edge. */
    private void label() {
        LineArrangement lines = cutLines;
        ConstrainedTriangulation all =
                new ConstrainedTriangulation(lines.vertices, lines.x, lines.y, lines.edges, lines.from, lines.to);
        int words = lines.ringWords();
        long[] in = new long[all.triangles * words];
        boolean[] seen = new boolean[all.triangles];
        int[] queue = new int[all.triangles];
        int size = 0;
        int outside = all.triangleAtBox();
        queue[size++] = outside;
        seen[outside] = true;
        for (int head = 0; head < size; head++) {
            int t = queue[head];
            for (int i = 0; i < 3; i++) {
                int u = all.neighbour[3 * t + i];
                if (u < 0 || seen[u]) {
                    continue;
                }
                int e = all.constraint[3 * t + i];
                for (int w = 0; w < words; w++) {
                    in[u * words + w] = in[t * words + w] ^ (e < 0 ? 0 : lines.rings[e * words + w]);
                }
                seen[u] = true;
                queue[size++] = u;
            }
        }
        left = new int[lines.edges];
        right = new int[lines.edges];
        Arrays.fill(left, -1);
        Arrays.fill(right, -1);
        int[] tops = new int[all.triangles];
        for (int t = 0; t < all.triangles; t++) {
            int top = -1;
            for (int w = words - 1; w >= 0 && top < 0; w--) {
                long bits = in[t * words + w];
                top = bits == 0 ? -1 : 64 * w + 63 - Long.numberOfLeadingZeros(bits);
            }
            tops[t] = top;
            for (int i = 0; i < 3; i++) {
                int e = all.constraint[3 * t + i];
                if (e >= 0) {
                    (all.corner[3 * t + (i + 1) % 3] == lines.from[e] ? left : right)[e] = top;
                }
            }
        }
        checkThin(all, tops);
        checkNeedles(all, tops);
    }

    /**
     * Refuses gaps that narrow to nothing under less than {@link #NEEDLE}: where a corner was rounded off the line it stands
     * on, and by more than is closed up.
     */
    private void checkNeedles(ConstrainedTriangulation all, int[] tops) {
        LineArrangement lines = cutLines;
        int needles = 0;
        for (int t = 0; t < all.triangles && needles < 5; t++) {
            for (int i = 0; i < 3 && tops[t] < 0; i++) {
                int tip = all.corner[3 * t + i];
                int a = all.corner[3 * t + (i + 1) % 3];
                int b = all.corner[3 * t + (i + 2) % 3];
                if (!drawn(all, t, (i + 1) % 3) || !drawn(all, t, (i + 2) % 3)) {
                    continue;
                }
                double ux = lines.x[a] - lines.x[tip];
                double uy = lines.y[a] - lines.y[tip];
                double vx = lines.x[b] - lines.x[tip];
                double vy = lines.y[b] - lines.y[tip];
                double twice = ux * vy - uy * vx;
                if (twice < NEEDLE * (ux * vx + uy * vy)) {
                    boolean toA = Math.hypot(ux, uy) <= Math.hypot(vx, vy);
                    double width = twice / Math.hypot(toA ? vx : ux, toA ? vy : uy);
                    needles++;
                    int e = all.constraint[3 * t + (i + 1) % 3];
                    add(
                            About.PAINTED,
                            Math.max(left[e], right[e]),
                            "a gap that narrows to nothing is left at " + lattice.place(lines.x[tip], lines.y[tip])
                                    + ", " + lattice.millimetres(width) + " wide at "
                                    + lattice.place(lines.x[toA ? a : b], lines.y[toA ? a : b])
                                    + "; close it, or write the coordinates with more digits");
                    break;
                }
            }
        }
    }

    /** Refuses hair-thin gaps between outlines and notes hair-thin slivers of a region. */
    private void checkThin(ConstrainedTriangulation all, int[] tops) {
        LineArrangement lines = cutLines;
        double thin = THIN * lattice.close();
        int gaps = 0;
        boolean[] told = new boolean[all.triangles];
        int slivers = 0;
        for (int t = 0; t < all.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int e = all.constraint[3 * t + i];
                int c = all.corner[3 * t + i];
                if (e < 0 || left[e] == right[e] || c >= lines.vertices) {
                    continue;
                }
                int a = all.corner[3 * t + (i + 1) % 3];
                int b = all.corner[3 * t + (i + 2) % 3];
                double ux = lines.x[b] - lines.x[a];
                double uy = lines.y[b] - lines.y[a];
                double vx = lines.x[c] - lines.x[a];
                double vy = lines.y[c] - lines.y[a];
                double length = Math.hypot(ux, uy);
                double along = (vx * ux + vy * uy) / length;
                double away = (ux * vy - uy * vx) / length;
                boolean inside = along > thin && along < length - thin;
                boolean across = length > 2 * thin
                        && (along <= thin && along >= -thin && !drawn(all, t, (i + 2) % 3)
                                || along >= length - thin && along <= length + thin && !drawn(all, t, (i + 1) % 3));
                if (away < thin && (inside || across)) {
                    String at = lattice.place(lines.x[c], lines.y[c]);
                    String width = lattice.millimetres(away);
                    String limit = lattice.millimetres(thin);
                    boolean known = told[t];
                    for (int j = 3 * t; j < 3 * t + 3; j++) {
                        known |= all.neighbour[j] >= 0 && told[all.neighbour[j]];
                    }
                    told[t] = true;
                    if (known) {
                        continue;
                    }
                    if (tops[t] < 0 && gaps++ < 5) {
                        add(
                                About.PAINTED,
                                Math.max(left[e], right[e]),
                                "a gap " + width + " wide is left at " + at + "; close it, or draw it at least " + limit
                                        + " wide");
                    } else if (tops[t] >= 0 && slivers++ < 5) {
                        notes.add(
                                "a sliver of " + section.regions().get(tops[t]).material() + " " + width
                                        + " thin is left at " + at + "; layers are meant to be at least " + limit);
                    }
                }
            }
        }
    }

    /** Whether a triangle's side is an edge with different regions on its two sides. */
    private boolean drawn(ConstrainedTriangulation all, int t, int i) {
        int e = all.constraint[3 * t + i];
        return e >= 0 && left[e] != right[e];
    }

    /** @param holed whether gaps or regions that vanish are told: what faces them has nothing painted beside it, which is no fault of its own */
    private void checkBoundaries(boolean holed) {
        LineArrangement lines = cutLines;
        boolean[] off = new boolean[section.boundaries().size()];
        boolean[] over = new boolean[section.boundaries().size()];
        for (int e = 0; e < lines.edges; e++) {
            int b = lines.path[e];
            if (b < 0) {
                continue;
            }
            String middle = lattice.place(
                    0.5 * (lines.x[lines.from[e]] + lines.x[lines.to[e]]),
                    0.5 * (lines.y[lines.from[e]] + lines.y[lines.to[e]]));
            if ((left[e] < 0) == (right[e] < 0) && !(holed && left[e] < 0) && !off[b]) {
                off[b] = true;
                add(
                        About.BOUNDARY,
                        b,
                        SectionCheck.boundary(section, b) + " is not on the outline at " + middle
                                + (left[e] < 0 ? " (nothing is painted there)" : " (both sides are painted)")
                                + "; a boundary runs along the outline or along a hole");
            }
            if (axisymmetric && lines.x[lines.from[e]] == 0 && lines.x[lines.to[e]] == 0 && !off[b]) {
                off[b] = true;
                add(
                        About.BOUNDARY,
                        b,
                        SectionCheck.boundary(section, b) + " runs along the axis at " + middle
                                + "; the axis x = 0 is inside the turned body, let the boundary end there");
            }
            if (lines.twice[e] && !over[b]) {
                over[b] = true;
                add(
                        About.BOUNDARY,
                        b,
                        SectionCheck.boundary(section, b) + " runs over another boundary, or over itself, at " + middle
                                + "; each part of the outline faces one environment");
            }
        }
    }

    private void triangulate() {
        LineArrangement lines = cutLines;
        int[] degree = new int[lines.vertices];
        int[] one = new int[lines.vertices];
        int[] two = new int[lines.vertices];
        boolean[] kept = new boolean[lines.edges];
        for (int e = 0; e < lines.edges; e++) {
            kept[e] = left[e] != right[e];
            if (kept[e]) {
                for (int v : new int[] {lines.from[e], lines.to[e]}) {
                    (degree[v]++ == 0 ? one : two)[v] = e;
                }
            }
        }
        // Walk each chain of edges through corners that do not turn and keep only its ends.
        int[] from = new int[lines.edges];
        int[] to = new int[lines.edges];
        int[] leftOf = new int[lines.edges];
        int[] rightOf = new int[lines.edges];
        int[] pathOf = new int[lines.edges];
        boolean[] done = new boolean[lines.edges];
        int count = 0;
        for (int e = 0; e < lines.edges; e++) {
            if (!kept[e] || done[e]) {
                continue;
            }
            boolean startsHere = !straight(lines.from[e], degree, one, two);
            boolean endsHere = !straight(lines.to[e], degree, one, two);
            if (!startsHere && !endsHere) {
                continue;
            }
            int start = startsHere ? lines.from[e] : lines.to[e];
            boolean forward = startsHere;
            int last = e;
            int v = forward ? lines.to[e] : lines.from[e];
            done[e] = true;
            while (straight(v, degree, one, two)) {
                last = one[v] == last ? two[v] : one[v];
                done[last] = true;
                v = lines.from[last] == v ? lines.to[last] : lines.from[last];
            }
            from[count] = start;
            to[count] = v;
            leftOf[count] = forward ? left[e] : right[e];
            rightOf[count] = forward ? right[e] : left[e];
            pathOf[count++] = lines.path[e];
        }
        int[] number = new int[lines.vertices];
        Arrays.fill(number, -1);
        long[] x = new long[lines.vertices];
        long[] y = new long[lines.vertices];
        int points = 0;
        for (int e = 0; e < count; e++) {
            for (int v : new int[] {from[e], to[e]}) {
                if (number[v] < 0) {
                    number[v] = points;
                    x[points] = lines.x[v];
                    y[points++] = lines.y[v];
                }
            }
            from[e] = number[from[e]];
            to[e] = number[to[e]];
        }
        ConstrainedTriangulation coarse = new ConstrainedTriangulation(points, x, y, count, from, to);
        mesh = new CoarseMesh(axisymmetric, coarse, from, leftOf, rightOf, pathOf).mesh();
    }

    /** Whether exactly two kept edges meet here, in one line, with the same regions and boundary. */
    private boolean straight(int v, int[] degree, int[] one, int[] two) {
        if (degree[v] != 2) {
            return false;
        }
        LineArrangement lines = cutLines;
        int e = one[v];
        int f = two[v];
        boolean outOfE = lines.to[e] == v;
        boolean intoF = lines.from[f] == v;
        int before = outOfE ? lines.from[e] : lines.to[e];
        int after = intoF ? lines.to[f] : lines.from[f];
        int leftBefore = outOfE ? left[e] : right[e];
        int rightBefore = outOfE ? right[e] : left[e];
        int leftAfter = intoF ? left[f] : right[f];
        int rightAfter = intoF ? right[f] : left[f];
        return leftBefore == leftAfter
                && rightBefore == rightAfter
                && lines.path[e] == lines.path[f]
                && LineArrangement.orientation(
                                lines.x[before],
                                lines.y[before],
                                lines.x[v],
                                lines.y[v],
                                lines.x[after],
                                lines.y[after])
                        == 0;
    }
}
