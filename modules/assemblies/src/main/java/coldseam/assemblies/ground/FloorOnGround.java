package coldseam.assemblies.ground;

/** A floor by one of the three methods of ISO 13370. */
public sealed interface FloorOnGround permits SlabOnGround, Basement, SuspendedFloor {

    /** Area, perimeter, walls and ground. */
    GroundFloor floor();

    /** m: dt of the floor, or dg of the ground under a suspended one. */
    double equivalentThickness();

    /** U of the floor, W/(m²·K). */
    double transmittance();
}
