package coldseam.report.data;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** A computed point. */
record PointSheetData(
        String id,
        @Says("of thing that goes through") String kind,
        @Says("id in the catalogue") String detail,
        String detailName,
        @Says("whether the house file chose the detail") boolean chosen,
        @Says("names of sets of points") ImmutableList<String> points,
        @Says("of all of them") int number,
        @Says("it goes through") String assembly,
        @Says("of the surface as drawn") double transmittance_W_per_m2K,
        @Says("of the disc or square that was computed") double discArea_m2,

        @Says("thermal coupling coefficient L3D of it") BoundsData coupling_W_per_K,

        BoundsData chi_W_per_K,

        @Says("with a surface resistance of 0.25 m2K/W; an estimate")
        double temperatureFactor,

        @Says("relative indoor humidity at which the coldest point reaches the dew point")
        double dewPointHumidity,

        @Says("relative indoor humidity from which mould may grow there")
        double mouldHumidity,

        @Says("how air, water and vapour control pass") ImmutableMap<String, String> connections,

        @Says("the best option of the catalogue; left out where it is this one")
        Optional<BestPoint> best,

        @Says("all of the catalogue that fit the surface, from worst to best")
        ImmutableList<OptionPoint> options,

        @Says("lengths of the detail that the house file sets, m")
        ImmutableMap<String, Double> parameters,

        @Says("of both solved systems") int unknowns,
        @Says("whether the interval is as narrow as asked") boolean accuracyMet,
        ImmutableList<String> notes) {

    record OptionPoint(
            String detail,
            String detailName,
            String rank,
            BoundsData chi_W_per_K,
            double temperatureFactor,
            Optional<CostOfPoint> cost) {}

    record CostOfPoint(double amount_each, String currency, String source) {}

    record BestPoint(String detail, String detailName, BoundsData chi_W_per_K, double temperatureFactor) {}
}
