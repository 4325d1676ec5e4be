package coldseam.report.compare;

import coldseam.options.Comparison.Asked;
import coldseam.options.Standing;
import coldseam.report.compare.HouseData.ChangesData;
import coldseam.report.data.BoundsData;
import coldseam.report.data.Says;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** The file of a house compared with its alternatives. */
record ComparisonData(
        @Says("always \"coldseam comparison\"") String format,

        @Says("raised when a key changes its meaning or goes; new keys may come without")
        int formatVersion,

        @Says("of the tool") String version,
        @Says("SHA-256 of the house file, hexadecimal") String inputDigest,
        @Says("name of the house") String house,
        HouseData described,

        @Says("as it was found; without it where the house file does not say")
        Optional<BeforeData> asFound,

        @Says("of every cost; empty where there is none") String currency,

        @Says("each option alone, all else as described, in the file's order")
        ImmutableList<AlternativeData> alternatives,

        @Says("that were needed") int sections,

        @Says("of build-ups and openings, that can be built")
        int combinations,

        @Says("others, since a detail does not fit or the shape leaves no room")
        int unbuildable,

        @Says("whether every option has a cost; else the front is of heat alone")
        boolean priced,

        @Says("whether every set that cannot be told apart from these is among them; else only bounds are exact")
        boolean allKept,

        @Says("sets that are worth knowing, by cost, without corners")
        ImmutableList<SetData> front,

        @Says("what was asked first, then what is always asked")
        ImmutableList<AnswerData> answers,

        @Says("the answer that is shown first, with its corners")
        Optional<HouseData> chosen,

        @Says("the set that surely loses less than the chosen one and opens no gap, for the least money a W/K")
        Optional<SetData> next,

        @Says("of each decision of the chosen set: what the house loses more without it, the most first")
        ImmutableList<WorthData> worth,

        @Says("what the sums leave out") String corners,
        ImmutableList<String> argument,
        ImmutableList<String> cautions) {

    record BeforeData(
            @Says("than as described: surfaces, windows and the seams that are known as found")
            BoundsData more_W_per_K,

            @Says("of seams of which the house file does not say what was found")
            double unknown_m) {}

    record AlternativeData(
            String decision,

            @Says("junctions, build-up, windows and doors or points")
            String about,

            String option,
            @Says("left out where it does not fit") Optional<BuiltData> built,

            @Says("why it does not fit; empty where it does")
            ImmutableList<String> misfits,

            boolean onFront,
            @Says("may be empty") String remark,
            Optional<String> costSource) {}

    record BuiltData(
            @Says("in words, with its unit") String size,

            @Says("that the house loses more than as described, without corners")
            BoundsData more_W_per_K,

            Standing stands,

            @Says("other options of the decision that the intervals cannot tell from it")
            ImmutableList<String> asGoodAs,

            Optional<WorstData> worst,
            Optional<BoundsData> saved_kWh_per_year,
            Optional<BoundsData> savedMoneyPerYear,
            OptionalDouble costMore,
            Optional<BoundsData> paidBack_years,

            @Says("than what is described; zero of anything but a build-up")
            double thicker_m,

            @Says("steps of building of a detail; empty of anything else")
            ImmutableList<String> order,

            ChangesData findings) {}

    record WorstData(
            int different,
            @Says("external dimensions; left out of points") Optional<BoundsData> psi_W_per_mK,
            Optional<BoundsData> chi_W_per_K,
            @Says("an estimate") double temperatureFactor,

            @Says("indoors, relative, 0 to 1, at the design temperatures")
            double mouldFromHumidity,

            @Says("zero where the insulation is broken") OptionalDouble neck_m,

            @Says("share of the resistance beside it, 0 to 1")
            OptionalDouble weakestPath) {}

    record SetData(double costMore, BoundsData H_W_per_K, ImmutableList<String> options) {}

    record AnswerData(
            Asked asked,
            @Says("in words") String question,

            @Says("budget, W/K, kWh or years; left out where there is none")
            OptionalDouble limit,

            @Says("left out where none is proven to do it") Optional<SetData> set,
            @Says("without corners") Optional<BoundsData> more_W_per_K,
            Optional<HouseData> house,
            Optional<ChangesData> findings,

            @Says("other sets that the intervals cannot tell from it in this")
            OptionalDouble asGood) {}

    record WorthData(String decision, String option, BoundsData more_W_per_K) {}
}
