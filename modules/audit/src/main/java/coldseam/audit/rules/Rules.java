package coldseam.audit.rules;

import coldseam.envelope.Control;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Every rule, once, by its id. */
public final class Rules {

    /** By how much each weighs among those that find fault with one subject: the first leads the finding. */
    private static final ImmutableList<Rule> BY_WEIGHT = Lists.immutable.of(
            new OpenEdgeRule(),
            new DetailNotChosenRule(),
            new DetailOutOfRangeRule(),
            new CornerOutOfRangeRule(),
            new SurfacePoorlyInsulatedRule(),
            new LayerBrokenRule(),
            new ControlLineBrokenRule(),
            new SurfaceWithoutLayerRule(Control.HEAT),
            new InsulationUnfitRule(),
            new SurfaceWithoutLayerRule(Control.AIR),
            new ControlLayerUnableRule(),
            new SurfaceWithoutLayerRule(Control.WATER),
            new ControlLayerMisplacedRule(),
            new SurfaceWithoutLayerRule(Control.VAPOUR),
            new CondensationInsideRule(),
            new LayerNotShownRule(),
            new TerraceBelowDewPointRule(),
            new LightWellFloodsRule(),
            new NeckPinchedRule(),
            new WeakestPathRule(),
            new TemperatureFactorUnderLimitRule(),
            new HumidityOverLimitRule(),
            new MouldByMonthRule(),
            new CornerUnderLimitRule(),
            new PairUnderLimitRule(),
            new SurfacePiercedRule(),
            new OwnPsiBelowComputedRule(),
            new TransmittanceOverLimitRule(),
            new OpeningOverLimitRule(),
            new FramesApartRule(),
            new SeamsTouchRule(),
            new RainNotCountedRule());

    private static final ImmutableList<Rule> ALL = BY_WEIGHT.toImmutableSortedListBy(Rule::id);

    private Rules() {}

    /** All rules, alphabetically. */
    public static ImmutableList<Rule> all() {
        return ALL;
    }

    /** The place of a rule among all, the weightiest first. */
    static int place(Rule rule) {
        return BY_WEIGHT.indexOf(rule);
    }
}
