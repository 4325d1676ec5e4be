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
     * Edges of the shell, or sets of points.
     *
     * @param rows those of the worst sheet first
     */
    record Bridges(ImmutableList<? extends BridgeRow> rows) implements Subject {

        /** Names of the edges, the longest first; empty for points. */
        public ImmutableList<String> edges() {
            return rows.selectInstancesOf(JunctionRow.class)
                    .toSortedListBy(row -> -row.length())
                    .collect(JunctionRow::name)
                    .toImmutable();
        }

        private ImmutableList<BridgeRow> largestFirst() {
            return Lists.immutable.<BridgeRow>ofAll(rows.toSortedListBy(row -> -row.size()));
        }
    }

    /** Plane surfaces. */
    record Surfaces(ImmutableList<Surface> all) implements Subject {

        private ImmutableList<Surface> largestFirst() {
            return all.toImmutableSortedListBy(surface -> -surface.externalArea());
        }
    }

    /**
     * A hole in the shell.
     *
     * @param edges that surround it, as far as they are there
     */
    record Hole(ImmutableList<OpenEdge> edges) implements Subject {}

    /**
     * Corners where three or more edges meet.
     *
     * @param rows those of the coldest sheet first
     */
    record Corners(ImmutableList<VertexRow> rows) implements Subject {}

    /** What its alternative makes of it. */
    default <T> T match(
            Function<Bridges, T> bridges,
            Function<Surfaces, T> surfaces,
            Function<Hole, T> hole,
            Function<Corners, T> corners) {
        if (this instanceof Bridges it) {
            return bridges.apply(it);
        }
        if (this instanceof Corners it) {
            return corners.apply(it);
        }
        return this instanceof Surfaces it ? surfaces.apply(it) : hole.apply((Hole) this);
    }

    /** m; zero where it has none. */
    default double length() {
        return match(
                bridges -> bridges.rows().selectInstancesOf(JunctionRow.class).sumOfDouble(JunctionRow::length),
                surfaces -> 0.0,
                hole -> hole.edges().sumOfDouble(OpenEdge::length),
                corners -> 0.0);
    }

    /** A point of it for the drawing, on the outer shell. */
    default Point3 at() {
        return places().getFirst();
    }

    /** A point of each of its parts, on the outer shell; the largest part first, the worst of corners. */
    default ImmutableList<Point3> places() {
        return match(
                bridges -> bridges.largestFirst().collect(Subject::middle),
                surfaces -> surfaces.largestFirst().collect(surface -> middle(surface.outline())),
                hole -> Lists.immutable.of(
                        middle(hole.edges().flatCollect(edge -> Lists.immutable.of(edge.from(), edge.to())))),
                corners -> corners.rows().collect(row -> row.corner().at()));
    }

    /** The largest surface, or that of the largest set of points; empty for edges, holes and corners. */
    default Optional<Surface> surface() {
        return match(
                bridges -> bridges.largestFirst().getFirst() instanceof PointRow row
                        ? Optional.of(row.surface())
                        : Optional.empty(),
                surfaces -> Optional.of(surfaces.largestFirst().getFirst()),
                hole -> Optional.empty(),
                corners -> Optional.empty());
    }

    /** Whether it is about an edge. */
    default boolean isAbout(Edge edge) {
        return this instanceof Bridges it
                && it.rows()
                        .anySatisfy(row -> row instanceof JunctionRow junction
                                && junction.edge().name().equals(edge.name()));
    }

    /** Whether it is about an edge's row or a set of points. */
    default boolean isAbout(BridgeRow row) {
        return this instanceof Bridges it
                && it.rows()
                        .anySatisfy(each ->
                                each.getClass() == row.getClass() && each.name().equals(row.name()));
    }

    /** Whether it is about a corner of a sheet. */
    default boolean isAbout(VertexSheet sheet) {
        return this instanceof Corners it
                && it.rows().anySatisfy(row -> row.sheet().filter(sheet::equals).isPresent());
    }

    private static Point3 middle(BridgeRow row) {
        return row instanceof JunctionRow junction
                ? middle(Lists.immutable.of(
                        junction.edge().from(), junction.edge().to()))
                : middle(((PointRow) row).surface().outline());
    }

    private static Point3 middle(ImmutableList<Point3> of) {
        double n = of.size();
        return new Point3(of.sumOfDouble(Point3::x) / n, of.sumOfDouble(Point3::y) / n, of.sumOfDouble(Point3::z) / n);
    }
}
