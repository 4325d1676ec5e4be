package coldseam.envelope.file.house;

import coldseam.envelope.Limits;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.OptionalDouble;

@Noun("limits")
@Doc("What the audit holds junctions and points to.")
record FileLimits(
        @Doc("Least neck over the thinner neighbour's insulation thickness.")
        @Default("50 %")
        @Unit(Dimension.SHARE)
        @Bounds(atLeast = "0 %", atMost = "100 %")
        double neckShare,

        @Doc("Least ratio of the weakest path.")
        @Default("50 %")
        @Unit(Dimension.SHARE)
        @Bounds(atLeast = "0 %", atMost = "100 %")
        double pathShare,

        @Doc("Largest psi in the site's dimension system; 0.01 W/(m·K) where it is missing.")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-1 W/(m·K)", atMost = "2 W/(m·K)")
        OptionalDouble psi,

        @Doc("Least temperature factor fRsi.")
        @Default("0.70")
        @Unit(Dimension.RATIO)
        @Bounds(atLeast = "0", atMost = "1")
        double temperatureFactor,

        @Doc("Largest psi around windows, doors and rooflights.")
        @Default("0.05 W/(m·K)")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-1 W/(m·K)", atMost = "2 W/(m·K)")
        double openingPsi,

        @Doc("Largest chi of one point, such as a post or a bracket.")
        @Default("0.05 W/K")
        @Unit(Dimension.POINT_TRANSMITTANCE)
        @Bounds(atLeast = "0 W/K", atMost = "5 W/K")
        double chi,

        @Doc(
                "Largest psi where geometry makes it the larger of the two systems': external at more than 180° between the"
                        + " surfaces, internal at less. As psi where that is given; 0.10 W/(m·K) where neither is.")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-1 W/(m·K)", atMost = "2 W/(m·K)")
        OptionalDouble geometryPsi) {

    Limits limits() {
        return new Limits(
                neckShare,
                pathShare,
                psi.orElse(Limits.PSI),
                temperatureFactor,
                openingPsi,
                chi,
                geometryPsi.orElse(psi.orElse(Limits.GEOMETRY_PSI)));
    }
}
