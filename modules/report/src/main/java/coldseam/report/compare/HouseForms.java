package coldseam.report.compare;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.conduction.Interval;
import coldseam.files.JsonForm;
import coldseam.files.JsonType;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Changes;
import coldseam.report.words.FindingWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.VerdictWords;
import java.util.Optional;

/** What is said of a house among others, and how two houses' findings differ. */
final class HouseForms {

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);

    /** A house with or without its corners and what touches. */
    private record In(Audit audit, boolean whole) {

        Optional<Interval> ofWhole(Interval loss) {
            return whole ? Optional.of(loss) : Optional.empty();
        }
    }

    private static final JsonForm<In> HOUSE = JsonForm.<In>of("HouseData")
            .with("HT_W_per_K", BOUNDS, in -> in.audit().heatLoss().total())
            .says(
                    "heat-loss coefficient by transmission; with corners, where these are given; where notKnown is given, the sum of"
                            + " what has a value, and no bound of it")
            .maybe(
                    "corners_W_per_K",
                    BOUNDS,
                    in -> in.ofWhole(in.audit().heatLoss().vertices()))
            .says("of it in corners where edges meet; left out where it is without them")
            .maybe(
                    "pairs_W_per_K",
                    BOUNDS,
                    in -> in.ofWhole(in.audit().heatLoss().pairs()))
            .says("of it in seams that touch, more than each loses alone; left out likewise")
            .maybe("notKnown", TEXT, in -> new HonestWords(in.audit(), UnitSystem.SI).unknown())
            .says("what has no value; left out where nothing has none")
            .maybeNumber("atLeast_W_per_K", in -> new HonestWords(in.audit(), UnitSystem.SI).least())
            .says("the coefficient at least, whatever is built there; given with notKnown")
            .maybeNumber("annualLoss_kWh", in -> in.audit().heatLoss().annualLoss())
            .says("by degree days, without gains, of what has a value")
            .with("unbroken", FLAG, in -> in.audit().verdict().unbroken())
            .with("gaps", WHOLE, in -> in.audit().verdict().gaps())
            .with("weakSpots", WHOLE, in -> in.audit().verdict().weakSpots())
            .with("sentence", TEXT, in -> VerdictWords.sentence(in.audit().verdict()))
            .maybe("assumed", TEXT, in -> new HonestWords(in.audit(), UnitSystem.SI).assumed())
            .says("what the verdict takes on somebody's word; left out where nothing")
            .with("measuredBy", TEXT, in -> new HonestWords(in.audit(), UnitSystem.SI).measuredBy());

    static final JsonType<Audit> WHOLE_HOUSE = HOUSE.from(audit -> new In(audit, true));
    static final JsonType<Audit> WITHOUT_CORNERS = HOUSE.from(audit -> new In(audit, false));

    private static final JsonForm<Finding> FOUND = JsonForm.<Finding>of("FoundData")
            .with("rule", TEXT, Finding::rule)
            .says("the leading one")
            .with("title", TEXT, WORDS::title)
            .with("place", TEXT, WORDS::place);

    static final JsonForm<Changes> CHANGES = JsonForm.<Changes>of("ChangesData")
            .with("appear", FOUND.list(), Changes::appear)
            .says("found in the second and not in the first")
            .with("vanish", FOUND.list(), Changes::vanish)
            .says("found in the first and not in the second");

    private HouseForms() {}
}
