package coldseam.junctions.point;

import coldseam.conduction.Point;
import coldseam.conduction.TemperatureField;
import coldseam.conduction.solid.BodyCut;
import coldseam.conduction.solid.BodyField;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The temperatures of a body in the plane across its second direction through the origin, as far as a picture asks for them. */
final class PlaneField implements TemperatureField {

    /** Ends of pieces closer than a tenth of a micrometre are one. */
    private static final double PER_METRE = 1e7;

    private final BodyField body;
    private BodyCut cut;

    PlaneField(BodyField body) {
        this.body = body;
    }

    /** Made when a picture asks: a kept body's field stays packed until then. */
    private synchronized BodyCut cut() {
        if (cut == null) {
            cut = body.cut(1, 0);
        }
        return cut;
    }

    private static UnsupportedOperationException isothermsOnly() {
        return new UnsupportedOperationException("a plane through a body has isotherms only");
    }

    @Override
    public double temperatureAt(double x, double y) {
        throw isothermsOnly();
    }

    @Override
    public ImmutableList<ImmutableList<Point>> isotherm(double temperature) {
        return new Chains(Lists.immutable.withAll(cut().isotherm(temperature)).collect(each ->
                        new Point[] {new Point(each.x0(), each.y0()), new Point(each.x1(), each.y1())}))
                .all();
    }

    @Override
    public ImmutableList<Cell> cells() {
        throw isothermsOnly();
    }

    /** Pieces of lines, joined end to end. */
    private static final class Chains {
        private final ImmutableList<Point[]> pieces;
        private final boolean[] used;
        private final Map<Long, MutableList<Integer>> at = new HashMap<>();

        Chains(ImmutableList<Point[]> pieces) {
            this.pieces = pieces;
            this.used = new boolean[pieces.size()];
            pieces.forEachWithIndex((piece, i) -> {
                for (Point end : piece) {
                    at.computeIfAbsent(key(end), none -> Lists.mutable.empty()).add(i);
                }
            });
        }

        private static long key(Point end) {
            return Math.round(end.x() * PER_METRE) * 4_000_000_007L + Math.round(end.y() * PER_METRE);
        }

        ImmutableList<ImmutableList<Point>> all() {
            MutableList<ImmutableList<Point>> chains = Lists.mutable.empty();
            for (int i = 0; i < used.length; i++) {
                if (!used[i]) {
                    used[i] = true;
                    ArrayDeque<Point> chain = new ArrayDeque<>();
                    chain.add(pieces.get(i)[0]);
                    chain.add(pieces.get(i)[1]);
                    for (Point next = next(chain.getLast()); next != null; next = next(next)) {
                        chain.addLast(next);
                    }
                    for (Point next = next(chain.getFirst()); next != null; next = next(next)) {
                        chain.addFirst(next);
                    }
                    chains.add(Lists.immutable.withAll(chain));
                }
            }
            return chains.toImmutable();
        }

        /** The far end of an unused piece that starts at a place; null where none does. */
        private Point next(Point from) {
            for (int i : at.get(key(from))) {
                if (!used[i]) {
                    used[i] = true;
                    Point[] piece = pieces.get(i);
                    return key(piece[0]) == key(from) ? piece[1] : piece[0];
                }
            }
            return null;
        }
    }
}
