package coldseam.report.data;

import org.eclipse.collections.api.list.ImmutableList;

/** Two seams that touch, computed in one section. */
record PairSheetData(
        String id,

        @Says("of each of them alone, the first as it lies in the section")
        ImmutableList<String> junctionSheets,

        @Says("ids, in the same order") ImmutableList<String> details,
        @Says("whether the house file chose both details") boolean chosen,
        @Says("between them, on the outer face") double distance_m,
        @Says("of all places") double length_m,
        ImmutableList<String> places,
        BoundsData coupling_W_per_mK,
        @Says("of both, with external dimensions") BoundsData psiExternal_W_per_mK,
        @Says("of both, with internal dimensions") BoundsData psiInternal_W_per_mK,

        @Says("that both lose more than the sum of their psi, which is the same in either dimensions")
        BoundsData moreThanApart_W_per_mK,

        @Says("fRsi, an estimate") double temperatureFactor,

        @Says("in the section: from the first seam's line along the surface, and out of its inner face")
        ImmutableList<Double> coldest_m,

        @Says("indoors, at which the coldest point reaches the dew point")
        double dewPointHumidity,

        @Says("indoors, from which mould may grow") double mouldHumidity,
        int unknowns,
        @Says("whether the interval is as narrow as asked") boolean met,
        ImmutableList<String> notes) {}
