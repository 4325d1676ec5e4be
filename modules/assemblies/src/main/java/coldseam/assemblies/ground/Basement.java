package coldseam.assemblies.ground;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.internal.Arguments;

/**
 * The part of a basement in the ground.
 *
 * <p>Floor: dt + z/2 in place of dt in the slab's formulas. Walls: Ubw = 2λ/(πz)·(1 + 0.5·dt/(dt + z))·ln(z/dw + 1), with
 * dw = λ·(Rsi + Rw + Rse) and, where dw is less than dt, dw in place of dt. Source: ISO 13370:2017 clause 7.4 (from memory).
 *
 * @param floor area, perimeter, walls and ground
 * @param depth z, m, of the basement's floor below the ground outside
 * @param equivalentThickness dt, m, of the floor
 * @param wallThickness dw, m
 * @param transmittance Ubf, W/(m²·K), of the floor
 * @param wallTransmittance Ubw, W/(m²·K)
 */
public record Basement(
        GroundFloor floor,
        double depth,
        double equivalentThickness,
        double wallThickness,
        double transmittance,
        double wallTransmittance)
        implements FloorOnGround {

    /**
     * The floor and walls of a basement below ground.
     *
     * @param depth z, m, more than zero
     * @param floorResistance Rf, m²·K/W, without surfaces
     * @param wallResistance Rw, m²·K/W, without surfaces
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static Basement of(GroundFloor floor, double depth, double floorResistance, double wallResistance) {
        double z = Arguments.positive("the depth of a basement", depth, "m");
        Arguments.notNegative("the resistance of a basement's floor", floorResistance, "m²·K/W");
        Arguments.notNegative("the resistance of a basement's walls", wallResistance, "m²·K/W");
        double lambda = floor.groundConductivity();
        double dt = floor.equivalentThickness(floorResistance);
        double dw = lambda
                * (HeatFlow.HORIZONTAL.interiorSurfaceResistance()
                        + wallResistance
                        + OuterSurface.GROUND.resistance(HeatFlow.HORIZONTAL));
        double least = Math.min(dt, dw);
        double wall = 2 * lambda / (Math.PI * z) * (1 + 0.5 * least / (least + z)) * Math.log(z / dw + 1);
        return new Basement(floor, z, dt, dw, floor.transmittance(dt + z / 2), wall);
    }
}
