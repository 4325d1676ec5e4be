package coldseam.conduction.solve;

/** A symmetric positive definite system given element by element, over the unknowns of {@link Fronts}. */
interface ElementSystem {

    /**
     * (Output) The unknowns of a triangle, -1 for a prescribed value; an unknown may come more than once.
     *
     * @return how many, or -1 where they are the triangle's six nodes
     */
    int unknownsOf(int triangle, int[] out);

    /** (Output) The triangle's symmetric matrix over these unknowns, row by row without gaps. */
    void matrix(int triangle, double[] out);
}
