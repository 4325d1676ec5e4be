package coldseam.audit.engine;

import coldseam.audit.Audit;
import coldseam.conduction.Interval;
import coldseam.junctions.plan.HeatInput;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What the uncertainty of the inputs does to the heat-loss coefficient: to first order, each within its class. The solver's interval
 * says how well the model of the house is computed; this how well the model is known.
 *
 * <p>{@link InputSlopes} says how each slope is worked out. Left out is what nobody can call an input of known class, such as
 * lengths and workmanship.
 *
 * @param inputs in their order
 */
public record InputUncertainty(ImmutableList<Input> inputs) {

    /**
     * One input.
     *
     * @param of what it is
     * @param within share of the value, by which it may be off to either side
     * @param given whether the material says so itself
     * @param effect W/K, that H_T moves when it is off by that
     */
    public record Input(HeatInput of, double within, boolean given, double effect) {}

    /** Share of a value where nothing says more (common practice, no source). */
    public static final double USUAL = 0.1;

    /** Share of the ground's conductivity: it hangs on how wet it is (judgement). */
    static final double OF_THE_GROUND = 0.3;

    public static InputUncertainty of(Audit audit) {
        Map<HeatInput, OptionalDouble> materials = new HashMap<>();
        audit.house().materials().forEachValue(material -> materials.put(HeatInput.of(material), material.within()));
        MutableList<Input> inputs = Lists.mutable.empty();
        new InputSlopes(audit).sum().forEach((of, slope) -> {
            OptionalDouble given = materials.getOrDefault(of, OptionalDouble.empty());
            double within = given.orElse(of == HeatInput.Other.GROUND ? OF_THE_GROUND : USUAL);
            inputs.add(new Input(of, within, given.isPresent(), within * slope));
        });
        return new InputUncertainty(inputs.toImmutable());
    }

    /** W/K to either side, where the inputs are off independently of one another: the root of the sum of squares. */
    public double independent() {
        return Math.sqrt(inputs.sumOfDouble(each -> each.effect() * each.effect()));
    }

    /** W/K to either side, where all are off at once to the worse. */
    public double together() {
        return inputs.sumOfDouble(each -> Math.abs(each.effect()));
    }

    /** H_T with the inputs off independently, W/K: the solver's interval, widened. */
    public Interval range(Interval total) {
        return new Interval(total.lower() - independent(), total.upper() + independent());
    }

    /** An input's share of the variance, 0 to 1. */
    public double share(Input input) {
        double all = independent();
        return all > 0 ? input.effect() * input.effect() / (all * all) : 0;
    }

    /** Share by which the ground's conductivity may be off; empty where no part of the house meets it. */
    public Optional<Double> ofTheGround() {
        return inputs.detectOptional(each -> each.of() == HeatInput.Other.GROUND)
                .map(Input::within);
    }

    /** Those with the largest shares first; of equal ones in their order. */
    public ImmutableList<Input> largestFirst() {
        return inputs.toImmutableSortedListBy(each -> -Math.abs(each.effect()));
    }
}
