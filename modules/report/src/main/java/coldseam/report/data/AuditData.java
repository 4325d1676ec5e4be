package coldseam.report.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** The audit file. */
record AuditData(
        @Says("always \"coldseam audit\"") String format,

        @Says("raised when a key changes its meaning or goes; new keys may come without. 3: a junction and a point"
                + " break the same rules, under one id (detail-not-chosen, transmittance-over-limit, and"
                + " layer-broken, layer-not-shown, detail-out-of-range and temperature-factor-under-limit for"
                + " both); junctionSheet of an edge and of a finding is sheet, which may be a point's; source is a"
                + " word, with sourceSays beside it; every sentence is in SI units")
        int formatVersion,

        @Says("of the tool") String version,
        @Says("SHA-256 of the house file, hexadecimal") String inputDigest,
        @Says("name of the house") String house,

        @Says("what it is handed in with, in the house file's words")
        Submittal submittal,

        @Says("to which faces areas and lengths are measured: external or internal")
        String dimensions,

        Site site,
        Limits limits,
        Verdict verdict,

        @Says("what was to be solved, as it was known before")
        Work work,

        Shell shell,
        @Says("the six sides") ImmutableList<Side> sides,
        ImmutableList<Surface> surfaces,

        @Says("edges that are not shared by exactly two surfaces")
        ImmutableList<OpenEdge> openEdges,

        ImmutableList<AssemblyData> assemblies,
        @Says("one for each different junction") ImmutableList<SheetData> junctionSheets,
        @Says("one for each edge of the shell") ImmutableList<EdgeData> edges,

        @Says("one for each different two seams that touch and are computed in one section")
        ImmutableList<PairSheetData> pairSheets,

        @Says("one for each two seams that touch") ImmutableList<PairData> pairs,

        @Says("one for each different point") ImmutableList<PointSheetData> pointSheets,

        @Says("one for each set of points of the house file")
        ImmutableList<PointData> points,

        @Says("one for each different corner that is computed")
        ImmutableList<VertexSheetData> vertexSheets,

        @Says("one for each corner where three or more edges meet")
        ImmutableList<VertexData> vertices,

        HeatLossData heatLoss,
        @Says("by weight, the heaviest first") ImmutableList<FindingData> findings,
        MouldData mould,
        ImmutableList<Terrace> terraces,
        @Says("in order of building") ImmutableList<HoldPoint> holdPoints,
        ImmutableList<Input> inputs,
        ImmutableList<String> method,
        ImmutableList<String> cautions) {

    record Submittal(
            Optional<String> address,
            Optional<String> client,
            Optional<String> preparedBy,
            @Says("year-month-day") Optional<String> date,
            Optional<String> revision) {}

    record Site(
            double indoorTemperature_degC,
            double outdoorTemperature_degC,
            @Says("relative, 0 to 1") double indoorHumidity,
            OptionalDouble heatingDegreeDays_Kd,
            String ground,
            double groundConductivity_W_per_mK) {}

    record Limits(
            @Says("least neck over the thinner neighbour's insulation")
            double neckShare,

            @Says("least ratio of the weakest path") double pathShare,
            double psi_W_per_mK,
            double temperatureFactor,
            @Says("largest of one point") double chi_W_per_K) {}

    record Verdict(
            boolean unbroken,
            int gaps,
            int weakSpots,
            String sentence,

            @Says("what rests on the house file's word alone")
            Optional<String> assumed,

            @Says("what it was held to") String measuredBy,

            @Says("what is known less well than it would be with more memory")
            Optional<String> heldByMemory) {}

    record Work(
            @Says("different details of seams, those they are compared with counted in")
            int junctions,

            @Says("likewise of seams as they were found") int found,

            @Says("likewise of points") int points,

            @Says("different corners in three dimensions, at most")
            int corners,

            @Says("expected in all, within some three times")
            double unknowns) {}

    record Shell(
            boolean closed,
            double externalVolume_m3,
            double internalVolume_m3,
            double floorArea_m2,
            double groundFloorArea_m2,
            double exposedPerimeter_m) {}

    record Side(
            String side,
            double area_m2,
            double openings_m2,

            @Says("of holes, where nothing closes the envelope")
            double missing_m2,

            @Says("of the opaque area, what is missing counted in, 0 to 1")
            double insulatedShare,

            @Says("openings counted in") double meanTransmittance_W_per_m2K) {}

    record Surface(
            String name,
            String side,
            String use,
            Optional<String> assembly,
            String exposure,
            double temperatureFactor,
            double externalArea_m2,
            double internalArea_m2,
            double openingArea_m2,
            String storey,

            @Says("corners on the outer plane, counterclockwise seen from outdoors: east, north, up")
            ImmutableList<ImmutableList<Double>> outline_m) {}

    record OpenEdge(
            String place,
            double length_m,
            ImmutableList<String> surfaces,
            ImmutableList<Double> from_m,
            ImmutableList<Double> to_m) {}

    record Terrace(String surface, double underside_degC, double dewPoint_degC, boolean safe, String sentence) {}

    record HoldPoint(
            String name,
            String before,
            ImmutableList<String> lookAt,

            @Says("the same, one by one: each is signed and photographed for itself")
            ImmutableList<HoldPointItem> items,

            @Says("and point sheets") ImmutableList<String> junctionSheets) {}

    record HoldPointItem(
            @Says("as printed beside its line to sign, such as 3.2")
            String number,

            String lookAt,

            @Says("and point sheets, whose details ask for it; none where the stop itself does")
            ImmutableList<String> junctionSheets) {}

    record Input(String what, String value, String source) {}
}
