package coldseam.report.data;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** A computed junction. */
record SheetData(
        String id,
        @Says("of junction") String kind,
        @Says("id in the catalogue") String detail,
        String detailName,
        @Says("whether the house file chose the detail") boolean chosen,
        double length_m,
        @Says("names of edges") ImmutableList<String> edges,
        @Says("thermal coupling coefficient L2D") BoundsData coupling_W_per_mK,
        BoundsData psiExternal_W_per_mK,
        BoundsData psiInternal_W_per_mK,

        @Says("with a surface resistance of 0.25 m2K/W; an estimate")
        double temperatureFactor,

        @Says("in the section") ImmutableList<Double> coldest_m,

        @Says("relative indoor humidity at which the coldest point reaches the dew point")
        double dewPointHumidity,

        @Says("relative indoor humidity from which mould may grow there")
        double mouldHumidity,

        PenLineData penLine,
        PathData weakestPath,
        ImmutableList<LegData> legs,
        @Says("how air, water and vapour control pass") ImmutableMap<String, String> connections,

        @Says(
                "the lines of air, water and vapour control as they run in the section; empty of a drawing without layers")
        ImmutableList<ControlLineData> controlLines,

        @Says("the best option of the catalogue; left out where it is this one")
        Optional<BestData> best,

        @Says("what was found in its places before anything is built; empty where the house file does not say")
        ImmutableList<FoundData> asFound,

        @Says("of the catalogue that fit the same layers, from worst to best as it ranks them")
        ImmutableList<OptionData> options,

        @Says("of the detail that the house file set, m by name")
        ImmutableMap<String, Double> parameters,

        @Says("of both solved systems") int unknowns,
        @Says("whether the interval is as narrow as asked") boolean accuracyMet,
        ImmutableList<String> notes) {

    record PenLineData(
            boolean unbroken,
            @Says("zero where broken") double neck_m,

            @Says("of the thinner surface's insulation, 0 to 1")
            double share,

            ImmutableList<ImmutableList<Double>> path_m) {}

    record ControlLineData(
            @Says("air, water or vapour") String control,

            @Says("continuous, broken, changes side, or not shown")
            String state,

            @Says("over what cannot control, on tapes and laps that are not drawn")
            double strips_m,

            @Says("sheets of the detail that it runs in") ImmutableList<String> sheets,
            @Says("as far as it comes") ImmutableList<ImmutableList<Double>> path_m) {}

    record PathData(
            double resistance_m2K_per_W,
            double neighbour_m2K_per_W,
            double ratio,
            ImmutableList<ImmutableList<Double>> path_m) {}

    record LegData(
            String name,
            double transmittance_W_per_m2K,
            double externalLength_m,
            double internalLength_m,
            double insulationThickness_m) {}

    record OptionData(
            String detail,
            String detailName,
            String rank,
            BoundsData psiExternal_W_per_mK,
            BoundsData psiInternal_W_per_mK,
            double temperatureFactor,
            boolean unbroken,
            @Says("zero where broken") double neck_m,
            Optional<CostData> cost) {}

    record FoundData(
            @Says("names of edges") ImmutableList<String> edges,
            double length_m,

            @Says("in words: the detail that was found, or why it is not known")
            String state,

            Optional<FoundResultData> result) {}

    record FoundResultData(
            String detail,

            @Says("whether the house file says that it was found; else the worst of its kind stands in")
            boolean said,

            BoundsData psiExternal_W_per_mK,
            BoundsData psiInternal_W_per_mK,
            double temperatureFactor,
            @Says("in the section") ImmutableList<Double> coldest_m,
            @Says("in words: on what it lies") String coldestOn,
            double dewPointHumidity,
            double mouldHumidity,
            boolean unbroken,
            @Says("zero where broken") double neck_m) {}

    record CostData(double amount_per_m, String currency, String source) {}

    record BestData(
            String detail,
            String detailName,
            BoundsData psiExternal_W_per_mK,
            BoundsData psiInternal_W_per_mK,
            double temperatureFactor) {}
}
