package coldseam.report.compare;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Changes;
import coldseam.report.data.BoundsData;
import coldseam.report.data.Says;
import coldseam.report.words.FindingWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.VerdictWords;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** One house of a comparison as data. */
record HouseData(
        @Says("heat-loss coefficient by transmission; with corners, where these are given")
        BoundsData HT_W_per_K,

        @Says("of it in corners where edges meet; left out where it is without them")
        Optional<BoundsData> corners_W_per_K,

        @Says("of it in seams that touch, more than each loses alone; left out likewise")
        Optional<BoundsData> pairs_W_per_K,

        @Says("what has no value, so that it is a least value only; left out where nothing has none")
        Optional<String> notKnown,

        @Says("by degree days, without gains") OptionalDouble annualLoss_kWh,

        boolean unbroken,
        int gaps,
        int weakSpots,
        String sentence,

        @Says("what the verdict takes on somebody's word; left out where nothing")
        Optional<String> assumed,

        String measuredBy) {

    /** With its corners. */
    static HouseData whole(Audit audit) {
        return of(
                audit,
                Optional.of(BoundsData.of(audit.heatLoss().vertices())),
                Optional.of(BoundsData.of(audit.heatLoss().pairs())));
    }

    /** Of surfaces, seams and points. */
    static HouseData withoutCorners(Audit audit) {
        return of(audit, Optional.empty(), Optional.empty());
    }

    private static HouseData of(Audit audit, Optional<BoundsData> corners, Optional<BoundsData> pairs) {
        HonestWords honest = new HonestWords(audit, UnitSystem.SI);
        return new HouseData(
                BoundsData.of(audit.heatLoss().total()),
                corners,
                pairs,
                honest.unknown(),
                audit.heatLoss().annualLoss(),
                audit.verdict().unbroken(),
                audit.verdict().gaps(),
                audit.verdict().weakSpots(),
                VerdictWords.sentence(audit.verdict()),
                honest.assumed(),
                honest.measuredBy());
    }

    /** Findings by which two houses differ. */
    record ChangesData(
            @Says("found in the second and not in the first")
            ImmutableList<FoundData> appear,

            @Says("found in the first and not in the second")
            ImmutableList<FoundData> vanish) {

        static ChangesData of(Changes changes) {
            return new ChangesData(
                    changes.appear().collect(FoundData::of), changes.vanish().collect(FoundData::of));
        }
    }

    /** A finding. */
    record FoundData(@Says("the leading one") String rule, String title, String place) {

        private static FoundData of(Finding finding) {
            FindingWords words = new FindingWords(UnitSystem.SI);
            return new FoundData(finding.rule(), words.title(finding), words.place(finding));
        }
    }
}
