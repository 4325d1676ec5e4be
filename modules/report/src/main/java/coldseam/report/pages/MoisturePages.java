package coldseam.report.pages;

import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.Mould;
import coldseam.envelope.Site;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import java.util.function.ToDoubleFunction;

/** Mould on inner surfaces, condensation inside assemblies, and the terraces' undersides. */
public final class MoisturePages {

    private final Page page;
    private final Flow flow;
    private final Print print;
    private final Audit audit;
    private final Site site;

    private MoisturePages(Page page) {
        this.page = page;
        this.flow = page.flow();
        this.print = page.print();
        this.audit = page.audit();
        this.site = audit.house().site();
    }

    public static void write(Page page) {
        new MoisturePages(page).write();
    }

    private void write() {
        flow.section("Moisture");
        flow.heading("Mould on inner surfaces");
        mould(audit.mould());
        flow.heading("Water inside assemblies, by diffusion");
        inside();
        TerracePanels.write(page);
    }

    private void mould(Mould mould) {
        flow.body(Rich.marked(
                "The colder a surface, the more humid the air at it; from 80 % on, for days, mould may grow. The limit"
                        + " for f_{Rsi} is " + Print.factor(mould.limit())
                        + " whatever the climate. The house's own indoor"
                        + " humidity of " + print.of(site.indoorHumidity(), Dimension.SHARE) + " at "
                        + print.of(site.indoorTemperature(), Dimension.TEMPERATURE) + " would ask for f_{Rsi} "
                        + Print.factor(mould.designNeed())
                        + " if the outdoor air stayed at the design temperature of "
                        + print.of(site.outdoorTemperature(), Dimension.TEMPERATURE)
                        + ". ISO 13788 means monthly means, since mould takes days to grow and a design temperature is a cold"
                        + " spell; what misses this alone is pointed out and not held against the house."));
        flow.space(5);
        flow.add(monthly(mould));
        flow.space(6);
        flow.add(surfaces(mould));
    }

    private Table surfaces(Mould mould) {
        Listing<Mould.Surface> listing = Listing.<Mould.Surface>empty()
                .fixed("sheet", 34, surface -> surface.sheet().id())
                .share("junction or corner", 1, surface -> surface.sheet().kind())
                .number("f_{Rsi}", 34, surface -> Print.factor(surface.temperatureFactor()))
                .number(
                        "mould from, at " + print.of(site.outdoorTemperature(), Dimension.TEMPERATURE),
                        66,
                        surface -> Print.percent(surface.humidityAtDesign()));
        if (mould.monthly().isPresent()) {
            listing = listing.number(
                    "mould from, in " + critical(mould),
                    66,
                    surface -> Print.percent(surface.humidityInCriticalMonth().orElse(1)));
        }
        return listing.rich(Table.Column.share("says", 0.62), surface -> says(mould, surface))
                .of(mould.surfaces());
    }

    private Block monthly(Mould mould) {
        if (mould.monthly().isEmpty()) {
            String why = site.climate().isPresent()
                    ? "No month of the climate is cold enough to be judged."
                    : "Not judged by months: the house file gives no monthly climate (site: climate).";
            return Blocks.text(Rich.strong(why), Style.BODY.with(Palette.EMBER));
        }
        MonthlyTemperatureFactor.Need need = mould.monthly().get().critical();
        boolean good = mould.wetByMonth().isEmpty();
        return Blocks.panel(
                Blocks.text(
                        Rich.marked(critical(mould) + " asks for most: with "
                                + print.of(need.indoorHumidity(), Dimension.SHARE)
                                + " indoors no surface may be colder than "
                                + print.of(need.leastTemperature(), Dimension.TEMPERATURE) + ", so f_{Rsi} must be "
                                + Format.of("%.2f", Math.ceil(need.temperatureFactor() * 100) / 100)
                                + (good
                                        ? ". Every junction and corner that was computed has it."
                                        : ". Not every junction and corner has it; see the table.")
                                + " Climate: " + site.climate().orElseThrow().source() + "."),
                        Style.BODY),
                Palette.FROST,
                good ? Palette.MOSS : Palette.EMBER);
    }

    private static String critical(Mould mould) {
        return Phrases.month(mould.monthly().orElseThrow().critical().month());
    }

    private Rich says(Mould mould, Mould.Surface surface) {
        if (surface.temperatureFactor() < mould.limit()) {
            return Rich.of("below the limit").with(Palette.EMBER);
        }
        if (mould.wetByMonth().contains(surface)) {
            return Rich.of("mould possible by months").with(Palette.EMBER);
        }
        if (mould.wetAtDesign().contains(surface)) {
            return Rich.of("mould possible in a cold spell at " + print.of(site.indoorHumidity(), Dimension.SHARE)
                            + " indoors")
                    .with(Palette.EMBER);
        }
        return Rich.of("no mould expected");
    }

    private void inside() {
        if (site.climate().isEmpty()) {
            flow.add(Blocks.text(
                    Rich.strong("Not checked: the house file gives no monthly climate (site: climate)."),
                    Style.BODY.with(Palette.EMBER)));
            return;
        }
        flow.body(
                "Month by month, what condenses between layers and what dries again (ISO 13788, Glaser's method), between"
                        + " framing where there is some. " + Condensation.CAUTION);
        flow.space(5);
        flow.add(Listing.<AssemblyRow>empty()
                .share(
                        "assembly",
                        0.8,
                        row -> row.assembly().name() + ", "
                                + Words.word(row.build().direction()))
                .rich(
                        Table.Column.share("verdict", 0.8),
                        row -> row.moisture().year().map(MoisturePages::verdict).orElse(Rich.of("not checked")))
                .number(print.head("most", Dimension.MASS_PER_AREA), 60, row -> mass(row, Condensation::most))
                .share(
                        "when and where",
                        1,
                        row -> row.moisture()
                                .year()
                                .map(MoisturePages::wettest)
                                .orElse(row.moisture().unchecked()))
                .number(
                        print.head("left after a year", Dimension.MASS_PER_AREA),
                        74,
                        row -> mass(row, Condensation::left))
                .of(audit.assemblies()));
    }

    private String mass(AssemblyRow row, ToDoubleFunction<Condensation> of) {
        return row.moisture()
                .year()
                .map(year -> print.number(of.applyAsDouble(year), Dimension.MASS_PER_AREA))
                .orElse("–");
    }

    private static String wettest(Condensation year) {
        return year.verdict() == Condensation.Verdict.STAYS_DRY
                ? "–"
                : "end of " + Phrases.month(year.wettest().month()) + ", " + year.wettestPlane();
    }

    private static Rich verdict(Condensation year) {
        return switch (year.verdict()) {
            case STAYS_DRY -> Rich.of("nothing condenses");
            case DRIES_OUT -> Rich.of("condenses, dries within the year");
            case ACCUMULATES -> Rich.of("water is left").with(Palette.EMBER);
        };
    }
}
