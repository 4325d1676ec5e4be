package coldseam.assemblies.ground;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Body.CrawlSpace;

/**
 * A suspended floor over a crawl space whose ground lies up to 0.5 m below the ground outside: 1/U = 1/Uf + 1/(Ug + Ux).
 *
 * <p>Ug = 2λ/(πB' + dg)·ln(πB'/dg + 1); Ux = 2·h·Uw/B' + 1450·ε·v·fw/B'. Source: ISO 13370:2017 clause 7.3 (from memory).
 *
 * @param floor area, perimeter, walls and ground
 * @param space under it
 * @param floorTransmittance Uf, W/(m²·K), between the room and the crawl space, with Rsi on both faces
 * @param equivalentThickness dg, m, of the ground in the crawl space
 * @param groundTransmittance Ug, W/(m²·K)
 * @param wallPart 2·h·Uw/B', W/(m²·K)
 * @param ventilationPart 1450·ε·v·fw/B', W/(m²·K)
 */
public record SuspendedFloor(
        GroundFloor floor,
        CrawlSpace space,
        double floorTransmittance,
        double equivalentThickness,
        double groundTransmittance,
        double wallPart,
        double ventilationPart)
        implements FloorOnGround {

    /**
     * The heat loss of a suspended floor.
     *
     * @param floorTransmittance Uf, W/(m²·K), with Rsi on both faces
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static SuspendedFloor of(GroundFloor floor, double floorTransmittance, CrawlSpace space) {
        Arguments.positive("the transmittance of a suspended floor", floorTransmittance, "W/(m²·K)");
        Arguments.notNegative("the height of a floor over the ground", space.height(), "m");
        Arguments.notNegative("the transmittance of a crawl space's walls", space.wallTransmittance(), "W/(m²·K)");
        Arguments.notNegative("the vents of a crawl space", space.vents(), "m²/m");
        Arguments.notNegative("the wind speed", space.windSpeed(), "m/s");
        Arguments.within("the wind shielding factor", space.windShielding(), 0, 1, "");
        Arguments.notNegative("the insulation on a crawl space's ground", space.groundResistance(), "m²·K/W");
        double b = floor.characteristicDimension();
        double dg = floor.equivalentThickness(space.groundResistance());
        double ground = 2 * floor.groundConductivity() / (Math.PI * b + dg) * Math.log(Math.PI * b / dg + 1);
        double walls = 2 * space.height() * space.wallTransmittance() / b;
        double air = 1450 * space.vents() * space.windSpeed() * space.windShielding() / b;
        return new SuspendedFloor(floor, space, floorTransmittance, dg, ground, walls, air);
    }

    /** Ux, W/(m²·K): the crawl space to outdoors through its walls and vents. */
    public double edgeTransmittance() {
        return wallPart + ventilationPart;
    }

    @Override
    public double transmittance() {
        return 1 / (1 / floorTransmittance + 1 / (groundTransmittance + edgeTransmittance()));
    }

    /** The crawl space's share of the temperature difference, 0 to 1: its temperature factor b. */
    public double temperatureFactor() {
        return transmittance() / floorTransmittance;
    }
}
