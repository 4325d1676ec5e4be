package coldseam.assemblies.ground;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body.Base;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;

/** A floor's steady heat loss to outdoors through the ground. */
public sealed interface GroundHeat permits SlabOnGround, SuspendedFloor, HeatedBasement, UnheatedBasement {

    /** H, W/K, between indoors and outdoors, without the junction of wall and floor. */
    double coupling();

    /** U, W/(m²·K), of the floor (with a heated basement's walls: of both together). */
    double transmittance();

    /** B', m. */
    double characteristicDimension();

    /**
     * The heat loss of what lies under a house.
     *
     * @param base its kind, edge insulation, depth and crawl space
     * @param build the floor's assembly
     * @param wall assembly of the walls at ground level; of a heated cellar the walls in the ground
     * @param floor area, exposed perimeter, walls and ground
     * @return empty over unheated spaces, which count with their temperature factor instead
     * @throws IllegalArgumentException where a value is outside its range, or a suspended floor has no crawl space
     */
    static Optional<GroundHeat> of(Base base, Assembly build, Assembly wall, GroundFloor floor) {
        return switch (base.kind()) {
            case SLAB_ON_GROUND ->
                Optional.of(SlabOnGround.of(
                        floor,
                        toGround(build, HeatFlow.DOWNWARDS),
                        base.edge().map(Lists.immutable::of).orElse(Lists.immutable.empty())));
            case SUSPENDED ->
                Optional.of(SuspendedFloor.of(
                        floor,
                        Transmittance.of(build, HeatFlow.DOWNWARDS, OuterSurface.INDOORS)
                                .corrected(),
                        base.crawlSpace()
                                .orElseThrow(() -> new IllegalArgumentException("the suspended floor \"" + build.name()
                                        + "\" has no crawl space; give its" + " height, walls, vents and wind"))));
            case HEATED_CELLAR ->
                Optional.of(new HeatedBasement(Basement.of(
                        floor,
                        base.depth(),
                        toGround(build, HeatFlow.DOWNWARDS),
                        toGround(wall, HeatFlow.HORIZONTAL))));
            case OVER_UNHEATED -> Optional.empty();
        };
    }

    /** Rf or Rw: from surface to surface, m²·K/W. */
    private static double toGround(Assembly assembly, HeatFlow direction) {
        return Transmittance.of(assembly, direction, OuterSurface.GROUND).surfaceToSurface();
    }
}
