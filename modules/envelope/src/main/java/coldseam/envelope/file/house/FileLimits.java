package coldseam.envelope.file.house;

import coldseam.envelope.Limits;
import coldseam.envelope.Site;
import coldseam.envelope.SurfaceLimits;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.QuantityParser;
import coldseam.files.quantity.UnreadableException;
import java.util.Optional;
import java.util.OptionalDouble;

@Noun("limits")
@Doc("What the audit holds junctions and points to.")
record FileLimits(
        @Doc("Least neck over the thinner neighbour's insulation thickness.")
        @Default("50 %")
        @Unit(Dimension.SHARE)
        @Bounds(atLeast = "10 %", atMost = "100 %", usual = "50 to 80 %")
        double neckShare,

        @Doc("Least ratio of the weakest path.")
        @Default("50 %")
        @Unit(Dimension.SHARE)
        @Bounds(atLeast = "10 %", atMost = "100 %", usual = "50 to 80 %")
        double pathShare,

        @Doc("Largest psi in the site's dimension system; 0.01 W/(m·K) where it is missing.")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-1 W/(m·K)", atMost = "1 W/(m·K)", usual = "0.01 to 0.1 W/(m·K)")
        OptionalDouble psi,

        @Doc("Least temperature factor fRsi.")
        @Default("0.70")
        @Unit(Dimension.RATIO)
        @Bounds(atLeast = "0.5", atMost = "1", usual = "0.65 to 0.80")
        double temperatureFactor,

        @Doc("Largest psi around windows, doors and rooflights.")
        @Default("0.05 W/(m·K)")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-1 W/(m·K)", atMost = "1 W/(m·K)", usual = "0.01 to 0.1 W/(m·K)")
        double openingPsi,

        @Doc("Largest chi of one point, such as a post or a bracket.")
        @Default("0.05 W/K")
        @Unit(Dimension.POINT_TRANSMITTANCE)
        @Bounds(atLeast = "0 W/K", atMost = "1 W/K", usual = "0.01 to 0.1 W/K")
        double chi,

        @Doc(
                "Largest psi where geometry makes it the larger of the two systems': external at more than 180° between the"
                        + " surfaces, internal at less. As psi where that is given; 0.10 W/(m·K) where neither is.")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-1 W/(m·K)", atMost = "1 W/(m·K)", usual = "0.01 to 0.1 W/(m·K)")
        OptionalDouble geometryPsi,

        @Doc(
                "Least R of a surface over what it would have in proportion to the house's other surfaces, each against a minimum code for its use.")
        @Default("50 %")
        @Unit(Dimension.SHARE)
        @Bounds(atLeast = "10 %", atMost = "100 %", usual = "50 to 80 %")
        double meanShare,

        @Doc("Largest U of walls, or their least R; by the degree days where left out.")
        Optional<String> walls,

        @Doc("Largest U of roofs, terraces and ceilings, or their least R; by the degree days where left out.")
        Optional<String> roofs,

        @Doc("Largest U of floors over air, or their least R; by the degree days where left out.")
        Optional<String> floors,

        @Doc("Largest U of what meets the ground, without the ground's own resistance, or its least R; by the"
                + " degree days where left out.")
        Optional<String> ground,

        @Doc("Largest U of windows, or their least R; by the degree days where left out.")
        Optional<String> windows,

        @Doc("Largest U of doors, or their least R; by the degree days where left out.")
        Optional<String> doors) {

    FileLimits {
        most("walls", walls, MOST);
        most("roofs", roofs, MOST);
        most("floors", floors, MOST);
        most("ground", ground, MOST);
        most("windows", windows, MOST_OF_OPENINGS);
        most("doors", doors, MOST_OF_OPENINGS);
    }

    /** The largest U that a U or an R as the file writes it allows. */
    private static Optional<SurfaceLimits.Most> most(String key, Optional<String> given, double largest) {
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> most = parsed(given.get(), Dimension.TRANSMITTANCE)
                .or(() -> parsed(given.get(), Dimension.RESISTANCE).map(resistance -> 1 / resistance));
        if (most.filter(u -> u > 0 && u <= largest).isEmpty()) {
            throw new BadValueException(
                    key,
                    key + " is a thermal transmittance or a thermal resistance",
                    Phrase.of(given.get()),
                    Phrase.of("more than 0 and at most ")
                            .and(largest, Dimension.TRANSMITTANCE)
                            .and(", or the R of it; usual: ")
                            .and("0.1", 0.1, Dimension.TRANSMITTANCE)
                            .and(" to ")
                            .and("0.35", 0.35, Dimension.TRANSMITTANCE)
                            .and(", of windows and doors ")
                            .and("0.8", 0.8, Dimension.TRANSMITTANCE)
                            .and(" to ")
                            .and("1.8", 1.8, Dimension.TRANSMITTANCE),
                    "write 0.15 W/(m²·K), or R-38");
        }
        return most.map(transmittance -> new SurfaceLimits.Most(transmittance, Optional.empty()));
    }

    private static Optional<Double> parsed(String text, Dimension dimension) {
        try {
            return Optional.of(QuantityParser.parse(text, dimension));
        } catch (UnreadableException other) {
            return Optional.empty();
        }
    }

    Limits limits(Site site) {
        SurfaceLimits usual = SurfaceLimits.usual(site);
        return new Limits(
                neckShare,
                pathShare,
                psi.orElse(Limits.PSI),
                temperatureFactor,
                openingPsi,
                chi,
                geometryPsi.orElse(psi.orElse(Limits.GEOMETRY_PSI)),
                meanShare,
                new SurfaceLimits(
                        most("walls", walls, MOST).orElse(usual.wall()),
                        most("roofs", roofs, MOST).orElse(usual.roof()),
                        most("floors", floors, MOST).orElse(usual.floor()),
                        most("ground", ground, MOST).orElse(usual.ground()),
                        most("windows", windows, MOST_OF_OPENINGS).orElse(usual.window()),
                        most("doors", doors, MOST_OF_OPENINGS).orElse(usual.door())));
    }

    /** W/(m²·K); no insulation at all is hardly worse, and a limit that nothing misses is none (judgement). */
    private static final double MOST = 1.5;

    /** W/(m²·K); nothing that keeps weather out lets more heat through. */
    private static final double MOST_OF_OPENINGS = 7;
}
