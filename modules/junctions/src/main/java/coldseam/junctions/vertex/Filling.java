package coldseam.junctions.vertex;

/**
 * What fills a place.
 *
 * @param material that fills it
 * @param conductivity W/(m·K); 0 for air
 * @param axis of the surface whose layer it is; -1 for something of a detail's own
 * @param layer of that surface, from the inside, those above a change in its plane counted on; -1 for something of a detail's own
 */
record Filling(String material, double conductivity, int axis, int layer) {

    private static final double ROUNDING = 1e-9;

    static final Filling AIR = new Filling("air", 0, -1, -1);

    boolean air() {
        return conductivity == 0;
    }

    /** Whether it is something of a detail's own: a block, a kerb, a floor that bears in. */
    boolean block() {
        return !air() && axis < 0;
    }

    /** Whether two sections mean the same thing: a layer of one surface, or blocks that conduct alike. */
    boolean same(Filling other) {
        return axis == other.axis && layer == other.layer && conductsLike(other);
    }

    /** Whether it does not matter for the heat which of the two is there. */
    boolean conductsLike(Filling other) {
        return Math.abs(conductivity - other.conductivity) <= ROUNDING * conductivity;
    }
}
