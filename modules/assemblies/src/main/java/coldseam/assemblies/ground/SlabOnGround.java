package coldseam.assemblies.ground;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Body.EdgeInsulation;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A slab on the ground: U = U0 + 2·ψg,e/B'.
 *
 * <p>U0 for dt &lt; B': 2λ/(πB' + dt)·ln(πB'/dt + 1); otherwise λ/(0.457B' + dt). Source: ISO 13370:2017 clause 7.2 (from memory).
 *
 * @param floor area, perimeter, walls and ground
 * @param floorResistance Rf, m²·K/W, of the build-up without surfaces
 * @param equivalentThickness dt, m
 * @param unedgedTransmittance U0, W/(m²·K), without edge insulation
 * @param edge insulation that counts: of several the one that saves most, as the standard asks
 */
public record SlabOnGround(
        GroundFloor floor,
        double floorResistance,
        double equivalentThickness,
        double unedgedTransmittance,
        Optional<EdgeEffect> edge)
        implements GroundHeat {

    /**
     * The heat loss of a slab.
     *
     * @param floor area, perimeter, walls and ground
     * @param floorResistance Rf, m²·K/W, zero or more; thin covers and dense concrete may be left out of it
     * @param edges insulation along the edge; may be empty
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static SlabOnGround of(GroundFloor floor, double floorResistance, ImmutableList<EdgeInsulation> edges) {
        Arguments.notNegative("the resistance of a floor on ground", floorResistance, "m²·K/W");
        double dt = floor.equivalentThickness(floorResistance);
        Optional<EdgeEffect> edge = edges.collect(each -> EdgeEffect.of(each, floor.groundConductivity(), dt))
                .minByOptional(EdgeEffect::psi);
        return new SlabOnGround(floor, floorResistance, dt, floor.transmittance(dt), edge);
    }

    /** Whether the slab counts as well insulated, dt at least B'. */
    public boolean wellInsulated() {
        return floor.wellInsulated(equivalentThickness);
    }

    @Override
    public double characteristicDimension() {
        return floor.characteristicDimension();
    }

    @Override
    public double transmittance() {
        return unedgedTransmittance + 2 * edge.map(EdgeEffect::psi).orElse(0.0) / characteristicDimension();
    }

    @Override
    public double coupling() {
        return floor.area() * transmittance();
    }

    @Override
    public ImmutableList<GroundValue> values() {
        MutableList<GroundValue> values = Lists.mutable.empty();
        floor.into(values);
        values.add(new GroundValue("Rf", "resistance of the floor", floorResistance, "m²·K/W"));
        values.add(new GroundValue("dt", "equivalent thickness of the floor", equivalentThickness, "m"));
        values.add(new GroundValue("U0", "transmittance without edge insulation", unedgedTransmittance, "W/(m²·K)"));
        edge.ifPresent(effect -> {
            String extent =
                    effect.insulation().vertical() ? "depth of the edge insulation" : "width of the edge insulation";
            values.add(new GroundValue("D", extent, effect.insulation().extent(), "m"));
            values.add(new GroundValue(
                    "R'", "additional resistance of the edge insulation", effect.additionalResistance(), "m²·K/W"));
            values.add(new GroundValue("d'", "additional equivalent thickness", effect.additionalThickness(), "m"));
            values.add(new GroundValue("ψg,e", "edge insulation", effect.psi(), "W/(m·K)"));
        });
        values.add(new GroundValue("U", "transmittance", transmittance(), "W/(m²·K)"));
        values.add(new GroundValue("H", "coupling without the junction of wall and floor", coupling(), "W/K"));
        return values.toImmutable();
    }

    @Override
    public String method() {
        return "Slab on ground by ISO 13370, steady state; the junction of wall and floor is counted apart.";
    }
}
