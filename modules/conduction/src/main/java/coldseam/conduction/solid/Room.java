package coldseam.conduction.solid;

import java.lang.ref.WeakReference;

/**
 * Room that the linear solvers of bodies are made in, for one system after another: it holds nothing that is read. Fresh memory of that
 * size would cost more than some of the sums, and outlives what is collected cheaply. One system at a time has it.
 */
final class Room {

    /** One for each thread's bodies, for as long as they follow one another: whoever collects all of the heap may have it back. */
    private static final ThreadLocal<WeakReference<Room>> OF_THREAD = new ThreadLocal<>();

    /** Rows of a matrix. */
    static final class Rows {
        int[] column = new int[0];
        double[] weight = new double[0];

        void reserve(int size) {
            if (column.length < size) {
                column = new int[size];
                weight = new double[size];
            }
        }
    }

    final Rows finest = new Rows();
    final Rows halves = new Rows();
    final Rows groups = new Rows();
    private final double[][] values = new double[5][0];
    private final int[][] numbers = new int[7][0];

    /** This thread's. */
    static Room ofThisThread() {
        WeakReference<Room> last = OF_THREAD.get();
        Room room = last == null ? null : last.get();
        if (room == null) {
            room = new Room();
            OF_THREAD.set(new WeakReference<>(room));
        }
        return room;
    }

    /** Lets this thread's go: that of a large body is more than each thread may have. */
    static void giveUp() {
        OF_THREAD.remove();
    }

    /** The i-th array of values, at least as long as asked. */
    double[] values(int i, int size) {
        if (values[i].length < size) {
            values[i] = new double[size];
        }
        return values[i];
    }

    /** The i-th array of numbers, at least as long as asked. */
    int[] numbers(int i, int size) {
        if (numbers[i].length < size) {
            numbers[i] = new int[size];
        }
        return numbers[i];
    }
}
