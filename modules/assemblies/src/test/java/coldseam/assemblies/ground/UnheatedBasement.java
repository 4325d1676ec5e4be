package coldseam.assemblies.ground;

import coldseam.assemblies.internal.Arguments;

/**
 * A floor over an unheated basement: 1/U = 1/Uf + A/(A·Ubf + z·P·Ubw + h·P·Uw + 0.33·n·V). Source: ISO 13370:2017 clause 7.5
 * (from memory). It waits in the tests: a house file gives the temperature factor of a cellar that is not heated.
 *
 * @param below the part in the ground
 * @param floorTransmittance Uf, W/(m²·K), of the floor between room and basement, with Rsi on both faces
 * @param heightAboveGround h, m, of the basement's walls above ground
 * @param wallTransmittance Uw, W/(m²·K), of these walls
 * @param airChange n, 1/h; 0.3 where nothing is known (from memory)
 * @param volume V, m³
 */
public record UnheatedBasement(
        Basement below,
        double floorTransmittance,
        double heightAboveGround,
        double wallTransmittance,
        double airChange,
        double volume) {

    /** Heat capacity of air, W·h/(m³·K). */
    private static final double AIR = 0.33;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException where one is outside its range
     */
    public UnheatedBasement {
        Arguments.positive("the transmittance of a floor over a basement", floorTransmittance, "W/(m²·K)");
        Arguments.notNegative("the height of a basement's walls above ground", heightAboveGround, "m");
        Arguments.notNegative("the transmittance of a basement's walls above ground", wallTransmittance, "W/(m²·K)");
        Arguments.notNegative("the air change of a basement", airChange, "1/h");
        Arguments.notNegative("the volume of a basement", volume, "m³");
    }

    /** A·Ubf + z·P·Ubw, W/K. */
    public static double coupling(Basement of) {
        return of.floor().area() * of.transmittance() + wallArea(of) * of.wallTransmittance();
    }

    /** z·P, m². */
    public static double wallArea(Basement of) {
        return of.depth() * of.floor().perimeter();
    }

    /** From the basement to outdoors: ground, walls above ground and air, W/K. */
    public double outwardCoupling() {
        return coupling(below)
                + heightAboveGround * below.floor().perimeter() * wallTransmittance
                + AIR * airChange * volume;
    }

    /** U, W/(m²·K), of the floor. */
    public double transmittance() {
        return 1 / (1 / floorTransmittance + below.floor().area() / outwardCoupling());
    }

    /** The basement's share of the temperature difference, 0 to 1: its temperature factor b. */
    public double temperatureFactor() {
        return transmittance() / floorTransmittance;
    }
}
