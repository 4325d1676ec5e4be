package coldseam.report.drawing;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What is left of a line without the spots that it passes straight, to the digits that are written of them. */
public final class Bends {

    /** Points; both canvases write hundredths. */
    private static final double WRITTEN = 0.01;

    /** Spots passed at once, at most, so that a long straight line is not looked through again for each of its spots. */
    private static final int REACH = 64;

    private Bends() {}

    /** Both ends, and so many spots between them that no other is farther than a hundredth of a point from the line. */
    public static ImmutableList<Spot> of(ImmutableList<Spot> line) {
        MutableList<Spot> bends = Lists.mutable.withInitialCapacity(line.size());
        int at = 0;
        while (at < line.size()) {
            bends.add(line.get(at));
            int next = at + 1;
            while (next + 1 < line.size() && next - at < REACH && straight(line, at, next + 1)) {
                next++;
            }
            at = next;
        }
        return bends.toImmutable();
    }

    private static boolean straight(ImmutableList<Spot> line, int from, int to) {
        Spot start = line.get(from);
        double dx = line.get(to).x() - start.x();
        double dy = line.get(to).y() - start.y();
        double length = Math.hypot(dx, dy);
        for (int i = from + 1; i < to; i++) {
            double x = line.get(i).x() - start.x();
            double y = line.get(i).y() - start.y();
            double along = x * dx + y * dy;
            if (!(Math.abs(x * dy - y * dx) < WRITTEN * length && along >= 0 && along <= length * length)) {
                return false;
            }
        }
        return true;
    }
}
