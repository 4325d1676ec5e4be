package coldseam.assemblies.ground;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.internal.Arguments;

/**
 * What every method of ISO 13370 starts from.
 *
 * @param area A, m², of the floor
 * @param perimeter P, m, exposed; walls to heated rooms do not count
 * @param wallThickness w, m, of the walls at ground level
 * @param groundConductivity λ, W/(m·K): clay or silt 1.5, sand or gravel 2.0, homogeneous rock 3.5 (ISO 13370:2017 table 7, from
 *     memory)
 */
public record GroundFloor(double area, double perimeter, double wallThickness, double groundConductivity) {

    private static final double RSI = HeatFlow.DOWNWARDS.interiorSurfaceResistance();
    private static final double RSE = OuterSurface.GROUND.resistance(HeatFlow.DOWNWARDS);

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException where one is outside its range
     */
    public GroundFloor {
        Arguments.positive("the area of a floor on ground", area, "m²");
        Arguments.positive("the exposed perimeter of a floor on ground", perimeter, "m");
        Arguments.notNegative("the wall thickness at a floor on ground", wallThickness, "m");
        Arguments.positive("the conductivity of the ground", groundConductivity, "W/(m·K)");
    }

    /** B' = A/(P/2), m. */
    public double characteristicDimension() {
        return area / (0.5 * perimeter);
    }

    /** dt = w + λ·(Rsi + R + Rse), m, of a floor of resistance R, m²·K/W; also of the ground under a suspended floor. */
    double equivalentThickness(double resistance) {
        return wallThickness + groundConductivity * (RSI + resistance + RSE);
    }

    /** U of a floor of equivalent thickness dt, both branches, W/(m²·K). */
    double transmittance(double dt) {
        double b = characteristicDimension();
        return wellInsulated(dt)
                ? groundConductivity / (0.457 * b + dt)
                : 2 * groundConductivity / (Math.PI * b + dt) * Math.log(Math.PI * b / dt + 1);
    }

    boolean wellInsulated(double dt) {
        return dt >= characteristicDimension();
    }
}
