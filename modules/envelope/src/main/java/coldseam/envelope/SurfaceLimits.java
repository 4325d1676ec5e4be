package coldseam.envelope;

import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;

/**
 * The largest U a part of the envelope may have.
 *
 * @param wall to outdoors or an unheated space
 * @param roof of roofs, terraces and ceilings
 * @param floor over outdoors, a crawl space or an unheated space
 * @param ground of floors and walls in contact with the ground, without what the ground itself resists
 * @param window of frame and glass together
 * @param door whole
 */
public record SurfaceLimits(Most wall, Most roof, Most floor, Most ground, Most window, Most door) {

    /**
     * One limit.
     *
     * @param transmittance W/(m²·K)
     * @param source of one that the house file leaves open; empty where it is the file's own
     */
    public record Most(double transmittance, Optional<String> source) {}

    /** W/(m²·K) of 1 Btu/(h·ft²·°F). */
    private static final double BTU = 5.678263341113487;

    private static final String CODE =
            "International Energy Conservation Code 2018, tables R402.1.4 and R402.1.2 and clause R402.2.2, from"
                    + " memory: ";

    private static final String OF_CELLARS = ", by the line for basement walls, slabs too";

    /**
     * What a minimum code asks for a climate: no aim, but what a surface under it falls short of. Ceilings are those without
     * attic space above; what meets the ground is held to the line for basement walls.
     *
     * @param site whose degree days are taken as those below 18 °C
     */
    public static SurfaceLimits usual(Site site) {
        double days = site.daysOfLimits();
        if (site.heatingDegreeDays().isPresent()) {
            return usual(days, "");
        }
        return usual(
                days,
                site.climate().isPresent()
                        ? "; degree days by the climate's months"
                        : "; degree days as such an outdoor temperature usually has (common practice, no source)");
    }

    private static SurfaceLimits usual(double days, String from) {
        // Climate zones by heating degree days below 18 °C: ASHRAE 169-2013 table A-3, from memory.
        if (days <= 2000) {
            return zone(0.060, 0.047, 0.091, 0.32, CODE + "climate zone 3, up to 2000 K·d (3600 °F·d)" + from);
        }
        if (days <= 3000) {
            return zone(
                    0.060, 0.047, 0.059, 0.32, CODE + "climate zone 4, 2000 to 3000 K·d (3600 to 5400 °F·d)" + from);
        }
        if (days <= 4000) {
            return zone(
                    0.060, 0.033, 0.050, 0.30, CODE + "climate zone 5, 3000 to 4000 K·d (5400 to 7200 °F·d)" + from);
        }
        return days <= 5000
                ? zone(0.045, 0.033, 0.050, 0.30, CODE + "climate zone 6, 4000 to 5000 K·d (7200 to 9000 °F·d)" + from)
                : zone(
                        0.045,
                        0.028,
                        0.050,
                        0.30,
                        CODE + "climate zones 7 and 8, more than 5000 K·d (9000 °F·d)" + from);
    }

    /** From Btu/(h·ft²·°F); a ceiling without attic space has R-30. */
    private static SurfaceLimits zone(double wall, double floor, double ground, double openings, String source) {
        Most opening = most(openings, source);
        return new SurfaceLimits(
                most(wall, source),
                most(1.0 / 30, source),
                most(floor, source),
                most(ground, source + OF_CELLARS),
                opening,
                opening);
    }

    private static Most most(double transmittance, String source) {
        return new Most(transmittance * BTU, Optional.of(source));
    }

    /** The largest U of a surface by its use and what it faces. */
    public Most of(Body.Use use, Exposure.Kind faces) {
        if (faces == Exposure.Kind.GROUND) {
            return ground;
        }
        return switch (use) {
            case WALL -> wall;
            case ROOF, CEILING, TERRACE -> roof;
            case FLOOR, OVERHANG -> floor;
        };
    }

    /** Whether the house file leaves one of them open. */
    public boolean leavesOneOpen() {
        return Lists.immutable
                .of(wall, roof, floor, ground, window, door)
                .anySatisfy(most -> most.source().isPresent());
    }

    /** The largest U of a window or a door. */
    public Most of(Opening.Kind kind) {
        return kind == Opening.Kind.DOOR ? door : window;
    }
}
