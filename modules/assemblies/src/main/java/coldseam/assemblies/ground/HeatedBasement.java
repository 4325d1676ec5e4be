package coldseam.assemblies.ground;

/**
 * A heated basement: its floor and its walls below ground. Walls above ground count as outer walls elsewhere.
 *
 * @param below the part in the ground
 */
public record HeatedBasement(Basement below) implements GroundHeat {

    @Override
    public double characteristicDimension() {
        return below.floor().characteristicDimension();
    }

    /** U' = H/(A + z·P), W/(m²·K), the mean of floor and walls. */
    @Override
    public double transmittance() {
        return coupling() / (below.floor().area() + below.wallArea());
    }

    @Override
    public double coupling() {
        return below.coupling();
    }
}
