package coldseam.assemblies.ground;

import org.eclipse.collections.api.list.ImmutableList;

/** A floor's steady heat loss to outdoors through the ground: a result with every step that leads to it. */
public sealed interface GroundHeat permits SlabOnGround, SuspendedFloor, HeatedBasement, UnheatedBasement {

    /** H, W/K, between indoors and outdoors, without the junction of wall and floor. */
    double coupling();

    /** U, W/(m²·K), of the floor (with a heated basement's walls: of both together). */
    double transmittance();

    /** B', m. */
    double characteristicDimension();

    /** Every input and intermediate value in the order of computation. */
    ImmutableList<GroundValue> values();

    /** What the method is and what it leaves out, in one sentence. */
    String method();
}
