package coldseam.conduction.solid;

/** A point in space, m; z points up. */
public record Place(double x, double y, double z) {

    /** The coordinate in a direction: 0, 1 or 2 for x, y or z. */
    public double along(int direction) {
        return direction == 0 ? x : direction == 1 ? y : z;
    }
}
