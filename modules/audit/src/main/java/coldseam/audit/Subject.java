package coldseam.audit;

import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.OpenEdge;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What a finding is about; at least one of whatever it is. */
public sealed interface Subject {

    /**
     * Edges of the shell.
     *
     * @param rows those of the worst sheet first
     */
    record Edges(ImmutableList<JunctionRow> rows) implements Subject {

        /** Names of the edges, the longest first. */
        public ImmutableList<String> longestFirst() {
            return rows.toSortedListBy(row -> -row.length())
                    .collect(row -> row.edge().name())
                    .toImmutable();
        }
    }

    /**
     * Sets of points.
     *
     * @param rows those of the worst sheet first
     */
    record Points(ImmutableList<PointRow> rows) implements Subject {}

    /** Plane surfaces. */
    record Surfaces(ImmutableList<Surface> all) implements Subject {}

    /**
     * A hole in the shell.
     *
     * @param edges that surround it, as far as they are there
     */
    record Hole(ImmutableList<OpenEdge> edges) implements Subject {}

    /** What its alternative makes of it. */
    default <T> T match(
            Function<Edges, T> edges,
            Function<Points, T> points,
            Function<Surfaces, T> surfaces,
            Function<Hole, T> hole) {
        if (this instanceof Edges it) {
            return edges.apply(it);
        }
        if (this instanceof Points it) {
            return points.apply(it);
        }
        return this instanceof Surfaces it ? surfaces.apply(it) : hole.apply((Hole) this);
    }

    /** m; zero where it has none. */
    default double length() {
        return match(
                edges -> edges.rows().sumOfDouble(JunctionRow::length),
                points -> 0.0,
                surfaces -> 0.0,
                hole -> hole.edges().sumOfDouble(OpenEdge::length));
    }

    /** A point of it for the drawing, on the outer shell. */
    default Point3 at() {
        return match(
                edges -> {
                    Edge longest = edges.rows().maxBy(JunctionRow::length).edge();
                    return middle(Lists.immutable.of(longest.from(), longest.to()));
                },
                points -> middle(surface().orElseThrow().outline()),
                surfaces -> middle(surface().orElseThrow().outline()),
                hole -> middle(hole.edges().flatCollect(edge -> Lists.immutable.of(edge.from(), edge.to()))));
    }

    /** The largest surface, or that of the largest set of points; empty for edges and holes. */
    default Optional<Surface> surface() {
        return match(
                edges -> Optional.empty(),
                points -> Optional.of(points.rows().maxBy(PointRow::number).surface()),
                surfaces -> Optional.of(surfaces.all().maxBy(Surface::externalArea)),
                hole -> Optional.empty());
    }

    /** Whether it is about an edge. */
    default boolean isAbout(Edge edge) {
        return this instanceof Edges it
                && it.rows().anySatisfy(row -> row.edge().name().equals(edge.name()));
    }

    /** Whether it is about a set of points. */
    default boolean isAbout(PointRow set) {
        return this instanceof Points it
                && it.rows()
                        .anySatisfy(
                                row -> row.points().name().equals(set.points().name()));
    }

    private static Point3 middle(ImmutableList<Point3> of) {
        double n = of.size();
        return new Point3(of.sumOfDouble(Point3::x) / n, of.sumOfDouble(Point3::y) / n, of.sumOfDouble(Point3::z) / n);
    }
}
