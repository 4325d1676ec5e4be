package coldseam.report.data;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A different corner, computed in three dimensions from its edges' details. */
record VertexSheetData(
        String id,
        @Says("of its edges") ImmutableList<String> junctionSheets,
        @Says("ids, in the same order") ImmutableList<String> details,

        @Says("id of the corner's own detail, by which it is built; left out where its edges' details say all of it")
        Optional<String> ownDetail,

        @Says("whether the house file chose all of its edges' details")
        boolean chosen,

        ImmutableList<String> places,

        @Says("of what is drawn; left out on the ground, where the floor's U holds its corners")
        Optional<BoundsData> coupling_W_per_K,

        @Says("with external dimensions; likewise") Optional<BoundsData> chiExternal_W_per_K,
        @Says("with internal dimensions; likewise") Optional<BoundsData> chiInternal_W_per_K,
        @Says("fRsi, an estimate") double temperatureFactor,

        @Says("from where the inner faces meet, along the three outward normals, the last upright")
        ImmutableList<Double> coldest_m,

        @Says("indoors, at which the coldest point reaches the dew point")
        double dewPointHumidity,

        @Says("indoors, from which mould may grow") double mouldHumidity,
        int unknowns,
        @Says("whether the interval is as narrow as asked") boolean met,
        ImmutableList<String> notes) {}
