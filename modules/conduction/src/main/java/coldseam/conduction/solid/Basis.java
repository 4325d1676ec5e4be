package coldseam.conduction.solid;

/**
 * The one-dimensional tables on [0, 1] of which all three-dimensional ones are products.
 *
 * <p>Nodal functions ℓ_a of degree 2 at 0, ½, 1: of the temperature, and of a flux along its direction. Edge functions
 * ê_b = −Σ_{a≤b} ℓ_a′ of degree 1, which integrate to 1 over half b and to 0 over the other (M. Gerritsma, Edge functions
 * for spectral element methods, 2011): of a flux across its direction. So ℓ_0′ = −ê_0, ℓ_1′ = ê_0 − ê_1, ℓ_2′ = ê_1, and
 * the divergence of a flux is the ±1 incidence of sub-cells and sub-faces, exactly.
 */
final class Basis {

    /** Nodes of a cell in one direction. */
    static final int NODES = 3;
    /** Halves of a cell in one direction. */
    static final int HALVES = 2;

    /** Gauss points on [0, 1], exact for degree 5, so for the squares of all that is integrated here. */
    static final double[] POINT = {0.5 - 0.5 * Math.sqrt(0.6), 0.5, 0.5 + 0.5 * Math.sqrt(0.6)};

    static final double[] WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};

    /** ℓ_a at Gauss point g: [g][a]. */
    static final double[][] VALUE = new double[3][NODES];
    /** ℓ_a′ at Gauss point g. */
    static final double[][] SLOPE = new double[3][NODES];
    /** ê_b at Gauss point g: [g][b]. */
    static final double[][] EDGE = new double[3][HALVES];
    /** ∫ ê_b ℓ_a: [b][a]. */
    static final double[][] PROJECTION = new double[HALVES][NODES];
    /** The Legendre polynomial of degree 2 at Gauss point g, of norm 1 on [0, 1]. */
    static final double[] LEGENDRE = new double[3];

    /** The largest ∫ |ê_b|. */
    static final double MOST_OF_EDGE = 1.25;

    /** Gauss–Lobatto weights of the three nodes. */
    static final double[] LUMPED = {1.0 / 6, 4.0 / 6, 1.0 / 6};

    static {
        for (int g = 0; g < 3; g++) {
            double x = POINT[g];
            VALUE[g] = nodal(x);
            SLOPE[g] = new double[] {4 * x - 3, 4 - 8 * x, 4 * x - 1};
            EDGE[g] = new double[] {3 - 4 * x, 4 * x - 1};
            double t = 2 * x - 1;
            LEGENDRE[g] = Math.sqrt(5) * 0.5 * (3 * t * t - 1);
            for (int b = 0; b < HALVES; b++) {
                for (int a = 0; a < NODES; a++) {
                    PROJECTION[b][a] += WEIGHT[g] * EDGE[g][b] * VALUE[g][a];
                }
            }
        }
    }

    private Basis() {}

    /** ℓ_0, ℓ_1, ℓ_2 at a place in [0, 1]. */
    static double[] nodal(double x) {
        return new double[] {(1 - x) * (1 - 2 * x), 4 * x * (1 - x), x * (2 * x - 1)};
    }
}
