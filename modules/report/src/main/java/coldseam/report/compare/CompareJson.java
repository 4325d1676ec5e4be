package coldseam.report.compare;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;
import static coldseam.report.data.Types.TEXTS;

import coldseam.audit.BridgeSheet;
import coldseam.conduction.Interval;
import coldseam.files.JsonForm;
import coldseam.files.JsonType;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Alternative.Built.Elsewhere;
import coldseam.options.Before;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Answer;
import coldseam.options.Comparison.Asked;
import coldseam.options.Comparison.Best;
import coldseam.options.Standing;
import coldseam.options.UpkeepChange;
import coldseam.options.Worst;
import coldseam.options.front.Choice;
import coldseam.report.words.CompareWords;
import coldseam.report.words.FrontWords;
import coldseam.report.words.UpkeepWords;
import java.util.Optional;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/** The comparison as data, in SI units; keys carry their unit and intervals both bounds. */
public final class CompareJson {

    private static final CompareWords WORDS = new CompareWords(UnitSystem.SI);

    private static final JsonForm<Before> BEFORE = JsonForm.<Before>of("BeforeData")
            .with("more_W_per_K", BOUNDS, Before::more)
            .says("than as described: surfaces, windows and the seams that are known as found")
            .with("unknown_m", NUMBER, Before::unknown)
            .says("of seams of which the house file does not say what was found");

    private static final JsonForm<Worst> WORST = JsonForm.<Worst>of("WorstData")
            .with("different", WHOLE, Worst::sheets)
            .with("leakiest", TEXT, worst -> worst.leakiest().kind())
            .says("kind of the one that psi or chi is of")
            .maybe("psi_W_per_mK", BOUNDS, worst -> leakiest(worst, true))
            .says("external dimensions; left out of points")
            .maybe("chi_W_per_K", BOUNDS, worst -> leakiest(worst, false))
            .with("coldest", TEXT, worst -> worst.coldest().kind())
            .says("kind of the one that the temperature factor and the humidity are of")
            .with("temperatureFactor", NUMBER, worst -> worst.coldest().temperatureFactor())
            .says("an estimate")
            .with("mouldFromHumidity", NUMBER, worst -> worst.coldest().mouldHumidity())
            .says("indoors, relative, 0 to 1, at the design temperatures")
            .maybe("narrowest", TEXT, worst -> worst.narrowest().map(BridgeSheet::kind))
            .says("kind of the one that the neck is of; left out of points")
            .maybe("neck_m", NUMBER, Worst::neck)
            .says("zero where the insulation is broken")
            .maybe("shortest", TEXT, worst -> worst.shortest().map(BridgeSheet::kind))
            .says("kind of the one that the weakest path is of; left out of points")
            .maybe("weakestPath", NUMBER, Worst::path)
            .says("share of the resistance beside it, 0 to 1");

    private static final JsonForm<UpkeepChange> UPKEEP = JsonForm.<UpkeepChange>of("UpkeepChangeData")
            .with("besides", TEXTS, change -> change.besides().collect(UpkeepWords::says))
            .says("what is to be looked after at some place where it is not as described")
            .with("noLonger", TEXTS, change -> change.noLonger().collect(UpkeepWords::says))
            .says("what is to be looked after as described at some place where it is not with this");

    private static final JsonForm<Elsewhere> ELSEWHERE = JsonForm.<Elsewhere>of("ElsewhereData")
            .with("decision", TEXT, Elsewhere::decision)
            .says("whose described part changes its size with it")
            .with("costMore", NUMBER, Elsewhere::cost);

    /** What came of an alternative. */
    private record Built(Alternative of, Alternative.Built built) {}

    private static final JsonForm<Built> BUILT = JsonForm.<Built>of("BuiltData")
            .with("size", TEXT, each -> WORDS.size(each.of()))
            .says("in words, with its unit")
            .with("more_W_per_K", BOUNDS, each -> each.built().more())
            .says("that the house loses more than as described, without corners")
            .with("stands", JsonType.words(Standing.class), each -> each.built().standing())
            .with("asGoodAs", TEXTS, each -> each.of().asGood())
            .says("other options of the decision that the intervals cannot tell from it")
            .maybe("worst", WORST, each -> each.built().worst())
            .maybe("saved_kWh_per_year", BOUNDS, each -> each.built().saves())
            .maybe("savedMoneyPerYear", BOUNDS, each -> each.built().savesMoney())
            .maybeNumber("costMore", each -> each.built().cost())
            .with("ofItElsewhere", ELSEWHERE.list(), each -> each.built().elsewhere())
            .says("how much of that cost is other decisions'; empty where none of them changes its size")
            .maybe("paidBack_years", BOUNDS, each -> each.built().payback())
            .with("thicker_m", NUMBER, each -> each.built().thicker())
            .says("than what is described; zero of anything but a build-up")
            .with("floor_m2", NUMBER, each -> each.built().floor())
            .says("that the rooms have more than as described; below zero where thicker walls stand in them")
            .with("order", TEXTS, each -> each.of().order())
            .says("steps of building of a detail; empty of anything else")
            .with("upkeep", UPKEEP, each -> each.built().upkeep())
            .with("findings", HouseForms.CHANGES, each -> each.built().changes());

    private static final JsonForm<Alternative> ALTERNATIVE = JsonForm.<Alternative>of("AlternativeData")
            .with("decision", TEXT, each -> each.decision().name())
            .with("about", TEXT, each -> CompareWords.about(each.decision().about()))
            .says("junctions, build-up, windows and doors or points")
            .with("option", TEXT, each -> each.option().name())
            .says("as the house file has it")
            .with("name", TEXT, WORDS::name)
            .says("as pages and sets print it")
            .with("described", FLAG, Alternative::described)
            .says("whether it is what the house file describes")
            .maybe("built", BUILT, each -> each.built().map(built -> new Built(each, built)))
            .says("left out where it does not fit")
            .with("misfits", TEXTS, each -> each.misfits().collect(Phrase::toString))
            .says("why it does not fit; empty where it does")
            .with("onFront", FLAG, Alternative::onFront)
            .with("remark", TEXT, each -> each.option().remark())
            .says("may be empty")
            .maybe("costSource", TEXT, each -> each.option().cost().map(price -> price.source()));

    /** A set of options, one of each decision. */
    private record Chosen(Comparison all, Choice choice, ImmutableIntList options) {

        static Chosen of(Comparison all, Choice choice) {
            return new Chosen(all, choice, all.sets().get(choice));
        }
    }

    private static final JsonForm<Chosen> SET = JsonForm.<Chosen>of("SetData")
            .with("costMore", NUMBER, set -> (double) set.choice().cost())
            .with("H_W_per_K", BOUNDS, set -> Comparison.loss(set.choice()))
            .with("options", TEXTS, set -> set.all().options(set.options()).collect(words(set.all())::name));

    /** What was asked, and what answers it. */
    private record In(Comparison all, Answer answer) {

        Optional<Best> best() {
            return answer.best();
        }
    }

    private static final JsonForm<In> ANSWER = JsonForm.<In>of("AnswerData")
            .with("asked", JsonType.words(Asked.class), in -> in.answer().asked())
            .with("question", TEXT, in -> words(in.all()).question(in.answer()))
            .says("in words")
            .maybeNumber("limit", in -> in.answer().limit())
            .says("budget, W/K, kWh or years; left out where there is none")
            .maybe("set", SET, in -> in.best().map(best -> new Chosen(in.all(), best.choice(), best.set())))
            .says("left out where none is proven to do it")
            .maybe("more_W_per_K", BOUNDS, in -> in.best().map(Best::more))
            .says("without corners")
            .maybe("house", HouseForms.WITHOUT_CORNERS, in -> in.best().map(Best::audit))
            .maybe("findings", HouseForms.CHANGES, in -> in.best().map(Best::changes))
            .maybe("asGood", NUMBER, in -> in.best().map(best -> (double) best.asGood()))
            .says("other sets that the intervals cannot tell from it in this");

    /** An option of the chosen set, and what it is worth there. */
    private record Worth(Alternative option, Interval less) {

        static Worth of(Comparison all, Comparison.Worth worth) {
            return new Worth(all.option(worth.decision(), worth.option()).orElseThrow(), worth.less());
        }
    }

    private static final JsonForm<Worth> WORTH = JsonForm.<Worth>of("WorthData")
            .with("decision", TEXT, worth -> worth.option().decision().name())
            .with("option", TEXT, worth -> worth.option().option().name())
            .with("more_W_per_K", BOUNDS, Worth::less);

    private static final JsonForm<Comparison> COMPARISON = JsonForm.<Comparison>of("Comparison")
            .with("format", TEXT, all -> "coldseam comparison")
            .says("always \"coldseam comparison\"")
            .with("formatVersion", WHOLE, all -> 1)
            .says("raised when a key changes its meaning or goes; new keys may come without")
            .with("version", TEXT, all -> all.described().version())
            .says("of the tool")
            .with("inputDigest", TEXT, all -> all.described().inputDigest())
            .says("SHA-256 of the house file, hexadecimal")
            .with("house", TEXT, all -> all.described().house().name())
            .says("name of the house")
            .with("described", HouseForms.WHOLE_HOUSE, all -> all.corners().described())
            .maybe("asFound", BEFORE, Comparison::before)
            .says("as it was found; without it where the house file does not say")
            .with("currency", TEXT, all -> all.described().house().prices().currency())
            .says("of every cost; empty where there is none")
            .with("alternatives", ALTERNATIVE.list(), Comparison::alternatives)
            .says("each option alone, all else as described, in the file's order")
            .with("sections", WHOLE, Comparison::sections)
            .says("that were needed")
            .with("combinations", WHOLE, Comparison::combinations)
            .says("of build-ups and openings, that can be built")
            .with("unbuildable", WHOLE, Comparison::unbuildable)
            .says("others, since a detail does not fit or the shape leaves no room")
            .with("priced", FLAG, Comparison::priced)
            .says("whether every option has a cost; else the front is of heat alone")
            .with("allKept", FLAG, all -> all.front().allKept())
            .says("whether every set that cannot be told apart from these is among them; else only bounds are exact")
            .with("front", SET.list(), all -> all.front().choices().collect(choice -> Chosen.of(all, choice)))
            .says("sets that are worth knowing, by cost, without corners")
            .with("answers", ANSWER.list(), all -> all.answers().collect(answer -> new In(all, answer)))
            .says("what was asked first, then what is always asked")
            .maybe("chosen", HouseForms.WHOLE_HOUSE, all -> all.corners().chosen())
            .says("the answer that is shown first, with its corners")
            .maybe("next", SET, all -> all.next().map(next -> Chosen.of(all, next.choice())))
            .says("the set that surely loses less than the chosen one and opens no gap, for the least money a W/K")
            .with("worth", WORTH.list(), all -> all.worth().collect(each -> Worth.of(all, each)))
            .says("of each decision of the chosen set: what the house loses more without it, the most first")
            .with("corners", TEXT, all -> words(all).corners())
            .says("what the sums leave out")
            .with("argument", TEXTS, all -> words(all).argument())
            .with("cautions", TEXTS, all -> CompareWords.cautions());

    private CompareJson() {}

    private static FrontWords words(Comparison comparison) {
        return new FrontWords(comparison, UnitSystem.SI);
    }

    private static Optional<Interval> leakiest(Worst worst, boolean junction) {
        return Optional.of(worst.leakiest())
                .filter(sheet -> sheet.junction().isPresent() == junction)
                .map(sheet -> sheet.external());
    }

    /** The file's text. */
    public static String text(Comparison comparison) {
        return COMPARISON.text(comparison);
    }

    /** Its JSON Schema (draft 2020-12), shipped as {@code coldseam/report/comparison.schema.json} too. */
    public static String schema() {
        return COMPARISON.schema("A house compared with its alternatives, written by coldseam");
    }
}
