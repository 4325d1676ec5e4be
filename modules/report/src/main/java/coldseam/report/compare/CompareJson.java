package coldseam.report.compare;

import coldseam.conduction.Interval;
import coldseam.files.JsonText;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Comparison;
import coldseam.options.front.Choice;
import coldseam.report.words.CompareWords;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/** A comparison as data, in SI units; keys carry their unit and intervals both bounds. */
public final class CompareJson {

    private CompareJson() {}

    private record Bounds(double lower, double upper) {
        static Bounds of(Interval interval) {
            return new Bounds(interval.lower(), interval.upper());
        }
    }

    private record Data(
            String house,
            String houseSha256,
            String tool,
            Bounds described_W_per_K,
            String currency,
            int sections,
            int combinations,
            int unbuildable,
            boolean priced,
            boolean allKept,
            ImmutableList<AlternativeData> alternatives,
            ImmutableList<SetData> front,
            ImmutableList<AnswerData> answers) {}

    private record AlternativeData(
            String decision,
            String option,
            Optional<String> stands,
            OptionalDouble size,
            Optional<Bounds> more_W_per_K,
            Optional<Bounds> saved_kWh_per_year,
            Optional<Bounds> savedMoneyPerYear,
            OptionalDouble costMore,
            Optional<Bounds> paidBackYears,
            OptionalDouble thicker_m,
            boolean onFront,
            Optional<String> findings,
            String remark,
            ImmutableList<String> misfits) {}

    private record SetData(double costMore, Bounds H_W_per_K, ImmutableList<String> options) {}

    private record AnswerData(
            String asked,
            OptionalDouble limit,
            Optional<SetData> set,
            Optional<Bounds> more_W_per_K,
            OptionalDouble findings,
            OptionalDouble asGood) {}

    /** The file's text; the same comparison gives the same text. */
    public static String text(Comparison comparison) {
        return JsonText.write(new Data(
                comparison.described().house().name(),
                comparison.described().inputDigest(),
                "coldseam " + comparison.described().version(),
                Bounds.of(comparison.described().heatLoss().total()),
                comparison.described().house().prices().currency(),
                comparison.sections(),
                comparison.combinations(),
                comparison.unbuildable(),
                comparison.priced(),
                comparison.front().allKept(),
                comparison.alternatives().collect(CompareJson::alternative),
                comparison
                        .front()
                        .choices()
                        .collect(choice ->
                                set(comparison, choice, comparison.sets().get(choice))),
                comparison.answers().collect(answer -> answer(comparison, answer))));
    }

    private static AlternativeData alternative(Alternative each) {
        Optional<Alternative.Built> built = each.built();
        return new AlternativeData(
                each.decision().name(),
                each.option().name(),
                built.map(it -> CompareWords.standing(it.standing())),
                number(built.map(Alternative.Built::size)),
                built.map(it -> Bounds.of(it.more())),
                built.flatMap(Alternative.Built::saves).map(Bounds::of),
                built.flatMap(Alternative.Built::savesMoney).map(Bounds::of),
                built.map(Alternative.Built::cost).orElse(OptionalDouble.empty()),
                built.flatMap(Alternative.Built::payback).map(Bounds::of),
                number(built.map(Alternative.Built::thicker)),
                each.onFront(),
                built.flatMap(it -> new CompareWords(UnitSystem.SI).changes(it.changes())),
                each.option().remark(),
                each.misfits());
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static SetData set(Comparison comparison, Choice choice, ImmutableIntList set) {
        return new SetData(
                choice.cost(),
                new Bounds(choice.lower() / 1e6, choice.upper() / 1e6),
                comparison
                        .options(set)
                        .collect(each ->
                                each.decision().name() + ": " + each.option().name()));
    }

    private static AnswerData answer(Comparison comparison, Comparison.Answer answer) {
        return new AnswerData(
                answer.asked().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                answer.limit(),
                answer.best().map(best -> set(comparison, best.choice(), best.set())),
                answer.best().map(best -> Bounds.of(best.more())),
                number(answer.best()
                        .map(best -> (double) best.audit().findings().size())),
                number(answer.best().map(best -> (double) best.asGood())));
    }
}
