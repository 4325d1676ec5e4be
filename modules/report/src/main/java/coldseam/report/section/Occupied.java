package coldseam.report.section;

import coldseam.report.drawing.Box;
import coldseam.report.drawing.Spot;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.primitive.MutableLongObjectMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.LongObjectMaps;

/** What labels already cover, so that no two lie on one another. */
final class Occupied {

    /** Side of the squares in which boxes are looked up, points. */
    private static final double SQUARE = 24;

    private final MutableLongObjectMap<MutableList<Taken>> squares = LongObjectMaps.mutable.empty();

    /** Something that labels keep off. */
    private interface Taken {
        boolean meets(Box box);
    }

    boolean free(Box box) {
        for (long i = index(box.x0()); i <= index(box.x1()); i++) {
            for (long j = index(box.y0()); j <= index(box.y1()); j++) {
                MutableList<Taken> square = squares.get(key(i, j));
                for (int k = 0; square != null && k < square.size(); k++) {
                    if (square.get(k).meets(box)) {
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
        take(Box.around(Lists.immutable.of(from, to)).grown(half), box -> box.reaches(from, to, half));
    }

    private void take(Box box, Taken taken) {
        for (long i = index(box.x0()); i <= index(box.x1()); i++) {
            for (long j = index(box.y0()); j <= index(box.y1()); j++) {
                squares.getIfAbsentPut(key(i, j), Lists.mutable::empty).add(taken);
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
