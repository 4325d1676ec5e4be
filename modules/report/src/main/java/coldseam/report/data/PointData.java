package coldseam.report.data;

/** A set of like points. */
record PointData(
        @Says("in the house file") String name,
        @Says("of thing that goes through") String kind,
        String surface,
        int number,

        @Says("id of its point sheet; left out where nothing could be computed")
        java.util.Optional<String> sheet,

        @Says("of one, for the whole difference to the far side")
        BoundsData chi_W_per_K,

        @Says("that weighs it") double temperatureFactor,
        @Says("number times chi times temperature factor") BoundsData loss_W_per_K,
        @Says("of chi: computed, stand-in or none") String source,
        @Says("the same in words") String sourceSays,
        @Says("whether its chi is a stand-in") boolean unknown) {}
