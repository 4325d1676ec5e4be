package coldseam.junctions.vertex;

import coldseam.envelope.Material;
import coldseam.junctions.plan.HeatInput;

/**
 * What fills a place.
 *
 * @param material that fills it, for drawings and messages
 * @param input what its conductivity follows
 * @param conductivity W/(m·K); 0 for air
 * @param axis of the surface whose layer it is; -1 for something of a detail's own
 * @param layer of that surface, from the inside, those above a change in its plane counted on; -1 for something of a detail's own
 * @param turned axis of the other surface into whose like layer it turns there, so that it is both's; -1 where it does not
 * @param turnedLayer of that surface; -1 likewise
 */
record Filling(
        String material, HeatInput input, double conductivity, int axis, int layer, int turned, int turnedLayer) {

    private static final double ROUNDING = 1e-9;

    static final Filling AIR = of("air", HeatInput.Other.AIR_LAYERS, 0);

    /** Something of a detail's own, or air. */
    static Filling of(String material, HeatInput input, double conductivity) {
        return new Filling(material, input, conductivity, -1, -1, -1, -1);
    }

    boolean air() {
        return conductivity == 0;
    }

    /** Whether it is a layer too good a conductor to be insulation: what carries, and what is joined up on it. */
    boolean carries() {
        return axis >= 0 && conductivity > Material.INSULATES_AT_MOST;
    }

    /** Whether it is something of a detail's own: a block, a kerb, a floor that bears in. */
    boolean block() {
        return !air() && axis < 0;
    }

    /** Whether two sections mean the same thing: a layer of one surface, or blocks that conduct alike. */
    boolean same(Filling other) {
        return conductsLike(other)
                && (axis == other.axis && layer == other.layer
                        || other.isOf(axis, layer)
                        || isOf(other.axis, other.layer)
                        || turned >= 0 && other.isOf(turned, turnedLayer));
    }

    private boolean isOf(int surface, int number) {
        return surface >= 0 && (axis == surface && layer == number || turned == surface && turnedLayer == number);
    }

    /** Whether it does not matter for the heat which of the two is there. */
    boolean conductsLike(Filling other) {
        return Math.abs(conductivity - other.conductivity) <= ROUNDING * conductivity;
    }
}
