package coldseam.report.compare;

import coldseam.audit.BridgeSheet;
import coldseam.conduction.Interval;
import coldseam.files.Csv;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Alternative.Built;
import coldseam.options.Comparison;
import coldseam.options.Worst;
import coldseam.report.words.CompareWords;
import java.util.Optional;
import java.util.function.Function;

/** Every option alone, a line each, for a spreadsheet; numbers are not rounded. */
public final class CompareCsv {

    private CompareCsv() {}

    /** The file's text. */
    public static String text(Comparison comparison, UnitSystem units) {
        CompareWords words = new CompareWords(units);
        String currency = comparison.described().house().prices().currency();
        Csv<Alternative> csv = Csv.<Alternative>in(units)
                .with("decision", each -> each.decision().name())
                .with("about", each -> CompareWords.about(each.decision().about()))
                .with("option", each -> each.option().name())
                .with("size", words::size);
        csv = interval(csv, "worst psi external", Dimension.LINEAR_TRANSMITTANCE, each -> transmittance(each, false));
        csv = interval(csv, "worst chi", Dimension.POINT_TRANSMITTANCE, each -> transmittance(each, true));
        csv = csv.with(
                        "least fRsi",
                        each -> number(worst(each).map(worst -> worst.coldest().temperatureFactor())))
                .with(
                        "mould from indoor humidity",
                        each -> number(worst(each).map(worst -> worst.coldest().mouldHumidity())))
                .with(
                        "least neck " + units.label(Dimension.THICKNESS),
                        each -> number(
                                worst(each).flatMap(Worst::neck).map(neck -> units.value(neck, Dimension.THICKNESS))))
                .with("weakest path", each -> number(worst(each).flatMap(Worst::path)));
        csv = interval(
                csv,
                "H more",
                Dimension.HEAT_LOSS_COEFFICIENT,
                each -> each.built().map(Built::more));
        csv = csv.with(
                "stands",
                each -> each.built()
                        .map(built -> CompareWords.standing(built.standing()))
                        .orElse("does not fit"));
        csv = interval(
                csv, "saved in a year", Dimension.ENERGY, each -> each.built().flatMap(Built::saves));
        return csv.with(
                        "saved in a year " + currency,
                        each -> each.built()
                                .flatMap(Built::savesMoney)
                                .map(saved -> Csv.plain(saved.middle()))
                                .orElse(""))
                .with(
                        "cost more " + currency,
                        each -> each.built()
                                .filter(built -> built.cost().isPresent())
                                .map(built -> Csv.plain(built.cost().getAsDouble()))
                                .orElse(""))
                .with(
                        "paid back in years, at most",
                        each -> each.built()
                                .flatMap(Built::payback)
                                .map(years -> Csv.plain(years.upper()))
                                .orElse(""))
                .with("thicker mm", each -> thicker(each, 1e-3))
                .with("thicker in", each -> thicker(each, 0.0254))
                .with(
                        "findings",
                        each -> each.built()
                                .flatMap(built -> words.changes(built.changes()))
                                .orElse(""))
                .with("as good as", each -> each.asGood().makeString("; "))
                .with("order", each -> each.order().makeString(" "))
                .with("on the front", each -> each.onFront() ? "yes" : "no")
                .with(
                        "source of cost",
                        each -> each.option()
                                .cost()
                                .map(price -> price.source())
                                .orElse(""))
                .with("remark", each -> each.option().remark())
                .with(
                        "does not fit",
                        each -> each.misfits()
                                .collect(reason -> reason.in(units))
                                .makeString(" "))
                .text(comparison.alternatives());
    }

    /** With two columns of what may have no value. */
    static <R> Csv<R> interval(Csv<R> csv, String name, Dimension dimension, Function<R, Optional<Interval>> value) {
        return csv.with(
                        csv.head(name + " lower", dimension),
                        each -> value.apply(each)
                                .map(interval -> csv.number(interval.lower(), dimension))
                                .orElse(""))
                .with(
                        csv.head(name + " upper", dimension),
                        each -> value.apply(each)
                                .map(interval -> csv.number(interval.upper(), dimension))
                                .orElse(""));
    }

    private static Optional<Worst> worst(Alternative each) {
        return each.built().flatMap(Built::worst);
    }

    private static Optional<Interval> transmittance(Alternative each, boolean point) {
        return worst(each)
                .map(Worst::leakiest)
                .filter(sheet -> sheet.junction().isPresent() != point)
                .map(BridgeSheet::external);
    }

    private static String number(Optional<Double> value) {
        return value.map(Csv::plain).orElse("");
    }

    private static String thicker(Alternative each, double unit) {
        return each.built()
                .filter(built -> built.thicker() != 0)
                .map(built -> Csv.plain(Math.rint(built.thicker() / unit * 1e6) / 1e6))
                .orElse("");
    }
}
