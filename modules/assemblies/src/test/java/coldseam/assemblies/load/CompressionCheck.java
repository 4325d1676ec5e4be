package coldseam.assemblies.load;

import coldseam.assemblies.internal.Arguments;

/**
 * The stress in a board under a terrace or slab against what it bears.
 *
 * <p>Permanent load alone against the permanent share of CS(10); permanent and live load together against a third of CS(10), a
 * producer's rule for live loads on extruded board (read), cautious for the others.
 *
 * @param strength Pa, CS(10), the stress at 10 % strain
 * @param share permanent share of it
 * @param permanent Pa, of lasting loads
 * @param live Pa, of passing loads
 */
public record CompressionCheck(double strength, PermanentShare share, double permanent, double live) {

    /** What goes wherever a result goes. */
    public static final String CAUTION =
            "A first check, no structural design. The strength at 10 % strain is a test value"
                    + " and no long-term rating; use the producer's declared creep value. Point loads, edges, water, snow and wind"
                    + " are not in it. Let an engineer check anything that carries people.";

    private static final double ALL_LOADS_SHARE = 1.0 / 3;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException where one is outside its range
     */
    public CompressionCheck {
        Arguments.positive("the strength of a board at 10 % strain", strength, "Pa");
        Arguments.notNegative("the permanent load on a board", permanent, "Pa");
        Arguments.notNegative("the live load on a board", live, "Pa");
    }

    /** Pa, what the board bears for good. */
    public double permanentResistance() {
        return share.share() * strength;
    }

    /** Pa, what the board bears with live load. */
    public double resistance() {
        return Math.max(permanentResistance(), ALL_LOADS_SHARE * strength);
    }

    /** The greater of both ratios of stress to what the board bears; up to 1 passes. */
    public double utilisation() {
        return Math.max(permanent / permanentResistance(), (permanent + live) / resistance());
    }

    /** Whether both loads stay within what the board bears. */
    public boolean passes() {
        return utilisation() <= 1;
    }
}
