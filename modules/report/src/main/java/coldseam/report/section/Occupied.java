package coldseam.report.section;

import coldseam.report.drawing.Box;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What labels already cover, so that no two lie on one another. */
final class Occupied {

    /** Side of the squares in which boxes are looked up, points. */
    private static final double SQUARE = 24;

    private final Map<Long, List<Box>> squares = new HashMap<>();

    boolean free(Box box) {
        for (long i = index(box.x0()); i <= index(box.x1()); i++) {
            for (long j = index(box.y0()); j <= index(box.y1()); j++) {
                for (Box other : squares.getOrDefault(key(i, j), List.of())) {
                    if (box.overlaps(other)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    void take(Box box) {
        for (long i = index(box.x0()); i <= index(box.x1()); i++) {
            for (long j = index(box.y0()); j <= index(box.y1()); j++) {
                squares.computeIfAbsent(key(i, j), k -> new ArrayList<>()).add(box);
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
