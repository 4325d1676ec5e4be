package coldseam.conduction.solid;

/**
 * What the surfaces of a body face. A surface's resistance depends on the way heat takes through it: up into a ceiling
 * or out of a roof, down into a floor.
 *
 * @param name unique in its body
 * @param temperature °C
 * @param up surface resistance for heat that flows up, m²·K/W, zero or more; zero prescribes the temperature
 * @param horizontal the same for heat that flows sideways
 * @param down the same for heat that flows down
 */
public record BodyEnvironment(String name, double temperature, double up, double horizontal, double down) {

    /** An environment with one resistance for all surfaces. */
    public static BodyEnvironment of(String name, double temperature, double surfaceResistance) {
        return new BodyEnvironment(name, temperature, surfaceResistance, surfaceResistance, surfaceResistance);
    }

    /**
     * The resistance of a surface.
     *
     * @param outward where the air lies, seen from the body
     * @param receives whether heat flows from the body into this environment: so in the coldest one
     */
    double resistance(BoxSide outward, boolean receives) {
        if (outward.direction() < 2) {
            return horizontal;
        }
        return outward.high() == receives ? up : down;
    }
}
