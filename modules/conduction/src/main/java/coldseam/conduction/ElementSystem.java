package coldseam.conduction;

/** A symmetric positive definite system given element by element. */
interface ElementSystem {

    /** How many unknowns there are. */
    int unknowns();

    /**
     * (Output) The unknowns of a triangle, -1 for a prescribed value; an unknown may come more than once.
     *
     * @return how many
     */
    int unknownsOf(int triangle, int[] out);

    /** (Output) The triangle's symmetric matrix over these unknowns, row by row without gaps. */
    void matrix(int triangle, double[] out);
}
