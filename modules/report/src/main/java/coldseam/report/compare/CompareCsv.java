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
import coldseam.report.Intervals;
import coldseam.report.words.CompareWords;
import coldseam.report.words.UpkeepWords;
import java.util.Optional;

/** Every option alone, a line each, for a spreadsheet; numbers are not rounded. */
public final class CompareCsv {

    private CompareCsv() {}

    /** The file's text. */
    public static String text(Comparison comparison, UnitSystem units) {
        CompareWords words = new CompareWords(units);
        String currency = comparison.described().house().prices().currency();
        return Csv.<Alternative>in(units)
                .with("decision", each -> each.decision().name())
                .with("about", each -> CompareWords.about(each.decision().about()))
                .with("option", each -> each.option().name())
                .with("built", words::name)
                .with("size", words::size)
                .and(Intervals.of(
                        "worst psi external", Dimension.LINEAR_TRANSMITTANCE, each -> transmittance(each, false)))
                .and(Intervals.of("worst chi", Dimension.POINT_TRANSMITTANCE, each -> transmittance(each, true)))
                .some(
                        "least fRsi",
                        CompareCsv::worst,
                        worst -> Csv.plain(worst.coldest().temperatureFactor()))
                .some(
                        "mould from indoor humidity",
                        CompareCsv::worst,
                        worst -> Csv.plain(worst.coldest().mouldHumidity()))
                .some("least neck", Dimension.THICKNESS, each -> worst(each).flatMap(Worst::neck))
                .some("weakest path", each -> worst(each).flatMap(Worst::path), Csv::plain)
                .and(Intervals.of(
                        "H more",
                        Dimension.HEAT_LOSS_COEFFICIENT,
                        each -> each.built().map(Built::more)))
                .with(
                        "stands",
                        each -> each.built()
                                .map(built -> CompareWords.standing(built.standing()))
                                .orElse("does not fit"))
                .and(Intervals.of(
                        "saved in a year",
                        Dimension.ENERGY,
                        each -> each.built().flatMap(Built::saves)))
                .some(
                        "saved in a year " + currency,
                        each -> each.built().flatMap(Built::savesMoney),
                        saved -> Csv.plain(saved.middle()))
                .some(
                        "cost more " + currency,
                        each -> each.built().filter(built -> built.cost().isPresent()),
                        built -> Csv.plain(built.cost().getAsDouble()))
                .some(
                        "paid back in years, at most",
                        each -> each.built().flatMap(Built::payback),
                        years -> Csv.plain(years.upper()))
                .some("thicker mm", CompareCsv::thicker, built -> thicker(built, 1e-3))
                .some("thicker in", CompareCsv::thicker, built -> thicker(built, 0.0254))
                .some("findings", each -> each.built().flatMap(built -> words.changes(built.changes())), says -> says)
                .with("as good as", each -> each.asGood().makeString("; "))
                .with("order", each -> each.order().makeString(" "))
                .some("upkeep", Alternative::built, built -> units.told(UpkeepWords.of(built.upkeep())))
                .with("on the front", each -> each.onFront() ? "yes" : "no")
                .some("source of cost", each -> each.option().cost(), price -> price.source())
                .with("remark", each -> each.option().remark())
                .with(
                        "does not fit",
                        each -> each.misfits()
                                .collect(reason -> reason.in(units))
                                .makeString(" "))
                .text(comparison.alternatives());
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

    private static Optional<Built> thicker(Alternative each) {
        return each.built().filter(built -> built.thicker() != 0);
    }

    private static String thicker(Built built, double unit) {
        return Csv.plain(Math.rint(built.thicker() / unit * 1e6) / 1e6);
    }
}
