package coldseam.junctions.store;

import coldseam.conduction.Point;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Joins short pieces of a line into polylines. */
final class IsothermChains {

    /** m; ends this near are one. */
    private static final double NEAR = 1e-8;

    private IsothermChains() {}

    static ImmutableList<ImmutableList<Point>> joined(MutableList<Point[]> pieces) {
        Map<String, MutableList<Integer>> ends = new LinkedHashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            for (Point end : pieces.get(i)) {
                ends.computeIfAbsent(key(end), none -> Lists.mutable.empty()).add(i);
            }
        }
        boolean[] used = new boolean[pieces.size()];
        MutableList<ImmutableList<Point>> lines = Lists.mutable.empty();
        for (int i = 0; i < pieces.size(); i++) {
            if (used[i]) {
                continue;
            }
            used[i] = true;
            Deque<Point> line = new ArrayDeque<>();
            line.add(pieces.get(i)[0]);
            line.add(pieces.get(i)[1]);
            while (extend(line, true, pieces, ends, used)) {
                continue;
            }
            while (extend(line, false, pieces, ends, used)) {
                continue;
            }
            lines.add(Lists.immutable.withAll(line));
        }
        return lines.toImmutable();
    }

    private static boolean extend(
            Deque<Point> line,
            boolean atEnd,
            MutableList<Point[]> pieces,
            Map<String, MutableList<Integer>> ends,
            boolean[] used) {
        Point end = atEnd ? line.getLast() : line.getFirst();
        for (int next : ends.getOrDefault(key(end), Lists.mutable.empty())) {
            if (used[next]) {
                continue;
            }
            used[next] = true;
            Point[] piece = pieces.get(next);
            Point far = key(piece[0]).equals(key(end)) ? piece[1] : piece[0];
            if (atEnd) {
                line.addLast(far);
            } else {
                line.addFirst(far);
            }
            return true;
        }
        return false;
    }

    private static String key(Point point) {
        return Math.round(point.x() / NEAR) + " " + Math.round(point.y() / NEAR);
    }
}
