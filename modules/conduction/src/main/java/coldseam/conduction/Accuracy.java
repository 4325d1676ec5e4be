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

    /** @throws IllegalArgumentException where a value is out of its range; returns this otherwise */
    public Accuracy checked() {
        if (!(relativeWidth > 0)) {
            throw new IllegalArgumentException("the relative width must be greater than 0, got " + relativeWidth + "; "
                    + standard().relativeWidth + " is standard");
        }
        if (maximumUnknowns < 100) {
            throw new IllegalArgumentException("the maximum of unknowns must be at least 100, got " + maximumUnknowns);
        }
        return this;
    }
}
