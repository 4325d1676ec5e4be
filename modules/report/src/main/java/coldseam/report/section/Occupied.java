package coldseam.report.section;

import coldseam.report.drawing.Box;
import java.util.ArrayList;
import java.util.List;

/** What labels already cover, so that no two lie on one another. */
final class Occupied {

    private final List<Box> boxes = new ArrayList<>();

    boolean free(Box box) {
        return boxes.stream().noneMatch(box::overlaps);
    }

    void take(Box box) {
        boxes.add(box);
    }

    /** Takes the box where it is free. */
    boolean tryTake(Box box) {
        if (free(box)) {
            take(box);
            return true;
        }
        return false;
    }
}
