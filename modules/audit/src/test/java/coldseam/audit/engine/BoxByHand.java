package coldseam.audit.engine;

/**
 * The box house computed apart from the code under test, from the layers of box.yaml with the built-in conductivities:
 * 8 m × 6 m × 3.32 m outside. Formulas: ISO 6946:2017 6.7.1 and ISO 13370:2017 7.2 (both from memory).
 */
final class BoxByHand {

    static final double LENGTH = 8;
    static final double WIDTH = 6;

    /** m, thicknesses. */
    static final double WALL = 0.015 + 0.24 + 0.2 + 0.01;

    static final double SLAB = 0.15 + 0.16;
    static final double ROOF = 0.16 + 0.16 + 0.008;

    private BoxByHand() {}

    /** W/(m²·K), by the assembly's name. */
    static double transmittance(String assembly) {
        return switch (assembly) {
            case "wall" -> 1 / (0.13 + 0.015 / 0.8 + 0.24 / 0.81 + 0.2 / 0.035 + 0.01 / 0.7 + 0.04);
            case "bare wall" -> 1 / (0.13 + 0.24 / 0.81 + 0.04);
            case "roof" -> 1 / (0.10 + 0.16 / 2.3 + 0.16 / 0.025 + 0.04); // the membrane's resistance is neglected
            case "slab" -> slab();
            default -> throw new IllegalArgumentException(assembly);
        };
    }

    private static double slab() {
        double b = LENGTH * WIDTH / (0.5 * 2 * (LENGTH + WIDTH));
        double dt = WALL + 1.5 * (0.17 + 0.15 / 2.3 + 0.16 / 0.035 + 0.04);
        if (dt < b) {
            throw new IllegalStateException("the box's slab is meant to be well insulated");
        }
        return 1.5 / (0.457 * b + dt);
    }
}
