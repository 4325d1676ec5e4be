package coldseam.report.compare;

import coldseam.conduction.Interval;
import coldseam.files.JsonText;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Answer;
import coldseam.options.Comparison.Best;
import coldseam.options.Worst;
import coldseam.options.front.Choice;
import coldseam.report.compare.ComparisonData.AlternativeData;
import coldseam.report.compare.ComparisonData.AnswerData;
import coldseam.report.compare.ComparisonData.BuiltData;
import coldseam.report.compare.ComparisonData.SetData;
import coldseam.report.compare.ComparisonData.WorstData;
import coldseam.report.compare.ComparisonData.WorthData;
import coldseam.report.compare.HouseData.ChangesData;
import coldseam.report.data.BoundsData;
import coldseam.report.data.DataSchema;
import coldseam.report.words.CompareWords;
import coldseam.report.words.FrontWords;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/** A comparison as data, in SI units; keys carry their unit and intervals both bounds. */
public final class CompareJson {

    private final Comparison comparison;
    private final FrontWords words;

    private CompareJson(Comparison comparison) {
        this.comparison = comparison;
        this.words = new FrontWords(comparison, UnitSystem.SI);
    }

    /** The file's text; the same comparison gives the same text. */
    public static String text(Comparison comparison) {
        return JsonText.write(new CompareJson(comparison).data());
    }

    /** Its JSON Schema (draft 2020-12), shipped as {@code coldseam/report/comparison.schema.json} too. */
    public static String schema() {
        return DataSchema.text(ComparisonData.class, "A house compared with its alternatives, written by coldseam");
    }

    private ComparisonData data() {
        Comparison all = comparison;
        return new ComparisonData(
                "coldseam comparison",
                1,
                all.described().version(),
                all.described().inputDigest(),
                all.described().house().name(),
                HouseData.whole(all.corners().described()),
                all.before().map(each -> new ComparisonData.BeforeData(BoundsData.of(each.more()), each.unknown())),
                all.described().house().prices().currency(),
                all.alternatives().collect(CompareJson::alternative),
                all.sections(),
                all.combinations(),
                all.unbuildable(),
                all.priced(),
                all.front().allKept(),
                all.front().choices().collect(this::set),
                all.answers().collect(this::answer),
                all.corners().chosen().map(HouseData::whole),
                all.next().map(next -> set(next.choice())),
                all.worth().collect(each -> {
                    Alternative option =
                            all.option(each.decision(), each.option()).orElseThrow();
                    return new WorthData(
                            option.decision().name(), option.option().name(), BoundsData.of(each.less()));
                }),
                words.corners(),
                words.argument(),
                CompareWords.cautions());
    }

    private static AlternativeData alternative(Alternative each) {
        return new AlternativeData(
                each.decision().name(),
                CompareWords.about(each.decision().about()),
                each.option().name(),
                each.built().map(built -> built(each, built)),
                each.misfits().collect(Phrase::toString),
                each.onFront(),
                each.option().remark(),
                each.option().cost().map(price -> price.source()));
    }

    private static BuiltData built(Alternative each, Alternative.Built built) {
        return new BuiltData(
                new CompareWords(UnitSystem.SI).size(each),
                BoundsData.of(built.more()),
                built.standing(),
                each.asGood(),
                built.worst().map(CompareJson::worst),
                built.saves().map(BoundsData::of),
                built.savesMoney().map(BoundsData::of),
                built.cost(),
                built.payback().map(BoundsData::of),
                built.thicker(),
                each.order(),
                ChangesData.of(built.changes()));
    }

    private static WorstData worst(Worst worst) {
        Interval transmittance = worst.leakiest().external();
        boolean junction = worst.leakiest().junction().isPresent();
        Optional<BoundsData> bounds = Optional.of(BoundsData.of(transmittance));
        return new WorstData(
                worst.sheets(),
                junction ? bounds : Optional.empty(),
                junction ? Optional.empty() : bounds,
                worst.coldest().temperatureFactor(),
                worst.coldest().mouldHumidity(),
                number(worst.neck()),
                number(worst.path()));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private SetData set(Choice choice) {
        return set(choice, comparison.sets().get(choice));
    }

    private SetData set(Choice choice, ImmutableIntList set) {
        return new SetData(
                choice.cost(),
                BoundsData.of(Comparison.loss(choice)),
                comparison.options(set).collect(words::name));
    }

    private AnswerData answer(Answer answer) {
        Optional<Best> best = answer.best();
        return new AnswerData(
                answer.asked(),
                words.question(answer),
                answer.limit(),
                best.map(each -> set(each.choice(), each.set())),
                best.map(each -> BoundsData.of(each.more())),
                best.map(each -> HouseData.withoutCorners(each.audit())),
                best.map(each -> ChangesData.of(each.changes())),
                number(best.map(each -> (double) each.asGood())));
    }
}
