package coldseam.report.compare;

import coldseam.options.Renovation.Group;
import coldseam.options.Renovation.Unlike;
import coldseam.report.compare.HouseData.ChangesData;
import coldseam.report.data.BoundsData;
import coldseam.report.data.Says;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** The file of two houses compared. */
record RenovationData(
        @Says("always \"coldseam renovation\"") String format,

        @Says("raised when a key changes its meaning or goes; new keys may come without")
        int formatVersion,

        @Says("of the tool") String version,
        SideData before,
        SideData after,

        @Says("of the second house; empty where it has no price")
        String currency,

        @Says("that the second loses more, without corners, and without what has no value")
        BoundsData more_W_per_K,

        Optional<BoundsData> savedMoneyPerYear,

        @Says("what else differs between the files, so that the difference is not of what is built alone")
        ImmutableList<Unlike> unlike,

        @Says("measures that the order names and by which the houses do not differ")
        ImmutableList<String> idle,

        ChangesData findings,

        @Says("parts that lose another amount than before, in the order of the heat-loss table")
        ImmutableList<PartData> parts,

        @Says("seams on which mould may grow as the house was found, the coldest first")
        ImmutableList<ColdData> cold,

        @Says("in the order of building; empty where the shapes differ")
        ImmutableList<StageData> stages,

        ImmutableList<String> cautions) {

    record SideData(
            @Says("its name") String house,
            @Says("SHA-256 of its file, hexadecimal") String inputDigest,
            HouseData said) {}

    record PartData(
            Group group,

            @Says("of a surface or opening, kind of the junctions, or name of a set of points")
            String name,

            @Says("left out where it is new or not computed")
            Optional<BoundsData> before_W_per_K,

            @Says("left out where it is gone or not computed")
            Optional<BoundsData> after_W_per_K,

            @Says("of both where both are there") BoundsData more_W_per_K,
            Optional<BoundsData> savedMoneyPerYear) {}

    record StageData(
            @Says("the measure that is built in it") String measure,
            @Says("without corners") HouseData house,
            @Says("than at the stage before") BoundsData more_W_per_K,
            @Says("of the whole change") OptionalDouble share,
            Optional<BoundsData> savedMoneyPerYear,
            ChangesData findings,

            @Says("names of seams whose detail cannot be built yet")
            ImmutableList<String> open,

            @Says("seams that are colder than they were found, or on which mould may grow, the coldest first")
            ImmutableList<ColdData> cold,

            @Says("names of seams of which no temperature is known")
            ImmutableList<String> notJudged) {}

    record ColdData(
            String seam,
            String kind,

            @Says("as found; left out where none is known") OptionalDouble temperatureFactorBefore,

            double temperatureFactor,
            @Says("that keeps mould away") double temperatureFactorNeeded,
            boolean mould,
            boolean colder) {}
}
