package coldseam.conduction;

import java.util.Optional;

/**
 * What is asked of a solution.
 *
 * @param relativeWidth the largest width of the total coupling's interval over its middle that is accepted, greater than
 *     zero
 * @param maximumUnknowns where refinement ends even if the width is not met, at least 100
 * @param aim what besides the coupling is to be known well, if anything; the last levels are then solved for their temperature
 *     alone, so that a section's coupling gets no narrower, and a body's may stay ten times as wide
 * @param temperatures whether temperatures are read from it; where none are, a body's are left as they prove the coupling
 */
public record Accuracy(double relativeWidth, int maximumUnknowns, Optional<Aim> aim, boolean temperatures) {

    /**
     * The lowest surface temperature that faces an environment.
     *
     * @param environment its name; nothing is aimed at where no boundary faces it
     * @param kelvin what its estimated error may be, greater than zero
     */
    public record Aim(String environment, double kelvin) {}

    /** Nothing but the coupling is aimed at; temperatures may be read. */
    public Accuracy(double relativeWidth, int maximumUnknowns) {
        this(relativeWidth, maximumUnknowns, Optional.empty(), true);
    }

    /** The same, and the lowest surface temperature that faces an environment to within a temperature. */
    public Accuracy aimedAt(String environment, double kelvin) {
        return new Accuracy(relativeWidth, maximumUnknowns, Optional.of(new Aim(environment, kelvin)), true);
    }

    /** The coupling to the same width, and no temperature, neither aimed at nor read. */
    public Accuracy ofHeatAlone() {
        return new Accuracy(relativeWidth, maximumUnknowns, Optional.empty(), false);
    }

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
        if (aim.isPresent() && !(aim.get().kelvin() > 0)) {
            throw new IllegalArgumentException("the error of a surface temperature must be greater than 0 K, got "
                    + aim.get().kelvin() + "; a thousandth of the difference is common");
        }
        return this;
    }
}
