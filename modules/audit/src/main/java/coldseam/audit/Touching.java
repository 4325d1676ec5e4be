package coldseam.audit;

import coldseam.envelope.Assembly;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Computed seams of one surface that run beside each other so near that each disturbs the other's heat flow: each is computed as
 * if it were alone, so the sum of their psi is not what they lose.
 *
 * <p>Between two faces t apart a disturbance dies away with the distance d as exp(−π d / t) (the slowest term of the Fourier
 * series across a layer; worked out apart). At {@link #REACH} of the thickness a seventh of it is left, which is where we draw the
 * line (judgement). The two sides of one window or door are one thing and not held to it, nor is a threshold to the seam it stands
 * on.
 *
 * @param surface that both are on
 * @param reach m, within which seams of it touch
 * @param pairs of them, at least one
 */
public record Touching(Surface surface, double reach, ImmutableList<Pair> pairs) {

    /** Of the surface's thickness. */
    public static final double REACH = 0.6;

    /** m; seams that run beside each other for less only meet at their ends. */
    private static final double BESIDE = 0.05;

    private static final double PARALLEL = 1e-3;

    /**
     * Two seams.
     *
     * @param one a seam
     * @param other a seam beside it
     * @param distance m between them, on the outer face
     * @param length m, for which they run beside each other
     */
    public record Pair(JunctionRow one, JunctionRow other, double distance, double length) {}

    /** One for each surface that has some. */
    public static ImmutableList<Touching> of(Shell shell, ImmutableList<JunctionRow> rows) {
        ImmutableList<JunctionRow> computed = rows.select(row -> row.source().computed());
        return shell.surfaces().flatCollect(surface -> {
            double reach = REACH * surface.assembly().map(Assembly::thickness).orElse(0.0);
            ImmutableList<Pair> pairs = pairs(computed.select(row -> isOn(row.edge(), surface)), reach);
            return pairs.isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(new Touching(surface, reach, pairs));
        });
    }

    private static boolean isOn(Edge edge, Surface surface) {
        return edge.first().name().equals(surface.name())
                || edge.second()
                        .filter(each -> each.name().equals(surface.name()))
                        .isPresent();
    }

    private static ImmutableList<Pair> pairs(ImmutableList<JunctionRow> rows, double reach) {
        MutableList<Pair> pairs = Lists.mutable.empty();
        for (int i = 0; i < rows.size(); i++) {
            for (int j = i + 1; j < rows.size(); j++) {
                pair(rows.get(i), rows.get(j))
                        .filter(pair -> pair.distance() < reach && pair.length() > BESIDE)
                        .ifPresent(pairs::add);
            }
        }
        return pairs.toImmutable();
    }

    /** Empty where the two are not parallel, or sides of one opening. */
    private static Optional<Pair> pair(JunctionRow one, JunctionRow other) {
        Edge a = one.edge();
        Edge b = other.edge();
        boolean ofOneOpening = a.opening().isPresent() && a.opening().equals(b.opening());
        Point3 along = minus(a.to(), a.from());
        double length = length(along);
        Point3 second = minus(b.to(), b.from());
        // A threshold's section shows the seam that its door stands on, whose length is less by the door's.
        if (ofOneOpening
                || a.kind().threshold()
                || b.kind().threshold()
                || length(cross(along, second)) > PARALLEL * length * length(second)) {
            return Optional.empty();
        }
        Point3 between = minus(b.from(), a.from());
        double distance = length(cross(along, between)) / length;
        double start = dot(along, between) / length;
        double end = dot(along, minus(b.to(), a.from())) / length;
        double beside = Math.min(length, Math.max(start, end)) - Math.max(0, Math.min(start, end));
        return Optional.of(new Pair(one, other, distance, beside));
    }

    private static Point3 minus(Point3 a, Point3 b) {
        return new Point3(a.x() - b.x(), a.y() - b.y(), a.z() - b.z());
    }

    private static Point3 cross(Point3 a, Point3 b) {
        return new Point3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }

    private static double dot(Point3 a, Point3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static double length(Point3 a) {
        return Math.sqrt(dot(a, a));
    }
}
