package coldseam.audit.rules;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Every rule, once, by its id. */
public final class Rules {

    private static final ImmutableList<Rule> ALL = Lists.immutable.of(
            new CondensationInsideRule(),
            new ControlLayerMisplacedRule(),
            new ControlLayerUnableRule(),
            new ControlLineBrokenRule(),
            new CornerOutOfRangeRule(),
            new CornerUnderLimitRule(),
            new DetailNotChosenRule(),
            new DetailOutOfRangeRule(),
            new FramesApartRule(),
            new HumidityOverLimitRule(),
            new InsulationUnfitRule(),
            new LayerBrokenRule(),
            new LayerNotShownRule(),
            new LightWellFloodsRule(),
            new MouldByMonthRule(),
            new NeckPinchedRule(),
            new OpenEdgeRule(),
            new OpeningOverLimitRule(),
            new OwnPsiBelowComputedRule(),
            new PairUnderLimitRule(),
            new RainNotCountedRule(),
            new SeamsTouchRule(),
            new SurfacePiercedRule(),
            new SurfacePoorlyInsulatedRule(),
            new SurfaceWithoutAirLayerRule(),
            new SurfaceWithoutHeatLayerRule(),
            new SurfaceWithoutVapourLayerRule(),
            new SurfaceWithoutWaterLayerRule(),
            new TemperatureFactorUnderLimitRule(),
            new TerraceBelowDewPointRule(),
            new TransmittanceOverLimitRule(),
            new WeakestPathRule());

    private Rules() {}

    /** All rules, alphabetically. */
    public static ImmutableList<Rule> all() {
        return ALL;
    }
}
