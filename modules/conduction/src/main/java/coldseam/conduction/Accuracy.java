package coldseam.conduction;

/**
 * What is asked of a solution.
 *
 * @param relativeWidth the largest width of the total coupling's interval over its middle that is accepted, greater than
 *     zero
 * @param maximumUnknowns where refinement ends even if the width is not met, at least 100
 */
public record Accuracy(double relativeWidth, int maximumUnknowns) {

    /** 1e-4 of the coupling, at most 400,000 unknowns: finer than any input a house gives. */
    public static Accuracy standard() {
        return new Accuracy(1e-4, 400_000);
    }
}
