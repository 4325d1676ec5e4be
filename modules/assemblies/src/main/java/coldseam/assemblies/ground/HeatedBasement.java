package coldseam.assemblies.ground;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

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

    @Override
    public ImmutableList<GroundValue> values() {
        MutableList<GroundValue> values = Lists.mutable.empty();
        below.into(values);
        values.add(new GroundValue("U'", "mean of floor and walls below ground", transmittance(), "W/(m²·K)"));
        values.add(new GroundValue("H", "coupling without the junction of wall and floor", coupling(), "W/K"));
        return values.toImmutable();
    }

    @Override
    public String method() {
        return "Heated basement by ISO 13370, steady state, one depth all around; the junction of wall and floor is"
                + " counted apart.";
    }
}
