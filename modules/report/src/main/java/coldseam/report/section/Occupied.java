package coldseam.report.section;

import coldseam.report.drawing.Box;
import coldseam.report.drawing.Spot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.collections.impl.factory.Lists;

/** What labels already cover, so that no two lie on one another. */
final class Occupied {

    /** Side of the squares in which boxes are looked up, points. */
    private static final double SQUARE = 24;

    private final Map<Long, List<Taken>> squares = new HashMap<>();

    /** Something that labels keep off. */
    private interface Taken {
        boolean meets(Box box);
    }

    boolean free(Box box) {
        for (long i = index(box.x0()); i <= index(box.x1()); i++) {
            for (long j = index(box.y0()); j <= index(box.y1()); j++) {
                for (Taken other : squares.getOrDefault(key(i, j), List.of())) {
                    if (other.meets(box)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    void take(Box box) {
        take(box, box::overlaps);
    }

    /** Takes a straight line and what lies within half its width beside it. */
    void take(Spot from, Spot to, double half) {
        take(
                Box.around(Lists.immutable.of(from, to)).grown(half),
                box -> box.grown(half).clipped(from, to).notEmpty());
    }

    private void take(Box box, Taken taken) {
        for (long i = index(box.x0()); i <= index(box.x1()); i++) {
            for (long j = index(box.y0()); j <= index(box.y1()); j++) {
                squares.computeIfAbsent(key(i, j), k -> new ArrayList<>()).add(taken);
            }
        }
    }

    /** Takes the box where it is free. */
    boolean tryTake(Box box) {
        if (free(box)) {
            take(box);
            return true;
        }
        return false;
    }

    private static long index(double value) {
        return (long) Math.floor(value / SQUARE);
    }

    private static long key(long i, long j) {
        return i * 1_000_003 + j;
    }
}
