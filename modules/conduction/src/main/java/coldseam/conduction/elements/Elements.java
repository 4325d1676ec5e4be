package coldseam.conduction.elements;

/**
 * The integrals over one triangle and its outline sides that both systems, both bounds and the gap are made of.
 *
 * <p>Local numbering: 0, 1, 2 the corners anticlockwise, 3, 4, 5 the middles of the sides opposite them. u is the
 * temperature field, s the stream function, q = curl s the flux.
 */
public interface Elements {

    /** What a bound per radian or per metre is multiplied by. */
    double form();

    /** (Output) 6 × 6, row by row: ∫ k ∇φᵢ·∇φⱼ plus ∫ φᵢφⱼ/R over the sides with R > 0. */
    void temperatureMatrix(int t, double[] out);

    /** (Output) 6: ∫ φᵢ/R over the sides with R > 0 that face an environment. */
    void temperatureLoad(int t, int environment, double[] out);

    /** (Output) 6 × 6: ∫ curl φᵢ·curl φⱼ/k plus ∫ R (∂φᵢ/∂t)(∂φⱼ/∂t) over the sides that face environments. */
    void streamMatrix(int t, double[] out);

    /**
     * The two energies of one triangle with its sides.
     *
     * @param u 6 temperatures
     * @param s 6 stream function values
     * @param ambient for each environment the temperature it has in this solution
     * @param out (Output) {@link #UPPER}, {@link #LOWER}, {@link #GAP} and the round-off allowances of the first two
     */
    void energies(int t, double[] u, double[] s, double[] ambient, double[] out);

    /** ∫ k|∇u|² + ∫ (u − T)²/R. */
    int UPPER = 0;
    /** ∫ |q|²/k + ∫ R (q·n)². */
    int LOWER = 1;
    /** ∫ |k∇u + q|²/k + ∫ R (q·n − (u − T)/R)². */
    int GAP = 2;
    /** How far the computed upper energy may be off. */
    int UPPER_ALLOWANCE = 3;
    /** How far the computed lower energy may be off. */
    int LOWER_ALLOWANCE = 4;
}
