package coldseam.report.pages;

import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.JunctionRow;
import coldseam.audit.Mould;
import coldseam.audit.PairSheet;
import coldseam.audit.PointRow;
import coldseam.conduction.Interval;
import coldseam.envelope.Exposure;
import coldseam.envelope.Site;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionSetup;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** One sheet for each computed junction; then one for each computed point, after a register of all of them. */
public final class BridgeSheets {

    /** W/K: half of the last digit that H_T is printed with. */
    private static final double SEEN = 0.05;

    private final Page page;
    private final BridgeSheet<?> sheet;
    private final Print print;
    private final boolean point;

    /** Those of its places that the audit counts. */
    private final ImmutableList<BridgeRow> rows;

    private BridgeSheets(Page page, BridgeSheet<?> sheet) {
        this.page = page;
        this.sheet = sheet;
        this.print = page.print();
        this.point = sheet.junction().isEmpty();
        this.rows = Lists.immutable
                .<BridgeRow>ofAll(page.audit().junctions())
                .newWithAll(page.audit().points())
                .select(row -> row.isOn(sheet));
    }

    public static void write(Page page) {
        page.audit().sheets().forEach(sheet -> new BridgeSheets(page, sheet).write());
        if (page.audit().points().notEmpty()) {
            Register.points(page);
            page.audit().pointSheets().forEach(sheet -> new BridgeSheets(page, sheet).write());
        }
        PairPages.write(page);
        VertexPages.write(page);
    }

    private void write() {
        Flow flow = page.flow();
        String name = sheet.result().detail().name();
        String heading = sheet.id() + " · " + Phrases.capital(sheet.kind());
        flow.section(heading, heading + ": " + name, point ? "Points" : "Junctions");
        flow.add(Blocks.text(Rich.strong(name), Style.LEAD));
        flow.add(Blocks.text(
                extent()
                        + (sheet.chosen()
                                ? " · chosen by the house file"
                                : " · not chosen: this option stands in for it"),
                Style.BODY.with(sheet.chosen() ? Palette.SLATE : Palette.EMBER)));
        Finds.write(page, finding -> rows.anySatisfy(row -> finding.subject().isAbout(row)));
        flow.space(6);
        new DetailSheet(flow, print, sheet.result())
                .write(
                        MarkedTemperatures.of(page.audit().house().site()),
                        Blocks.panel(said(), Palette.FROST, Palette.DEEP));
        places();
        FoundSeamsBlock.write(page, sheet);
        OptionList.write(page, sheet);
        sheet.best().filter(this::drawn).ifPresent(best -> new BestOption(page, best).write());
    }

    /** Whether the best option gets a page: where this one is a finding's or nobody's choice, or what it saves is seen in H_T. */
    private boolean drawn(BridgeResult best) {
        return !sheet.chosen()
                || BestOption.saved(page, sheet, best).upper() >= SEEN
                || page.audit()
                        .findings()
                        .anySatisfy(finding ->
                                rows.anySatisfy(row -> finding.subject().isAbout(row)));
    }

    /** How much of the house it stands for. */
    private String extent() {
        return point
                ? (int) sheet.size() + " " + DetailSheet.layers(sheet.result().setup())
                : print.length(sheet.size()) + " in "
                        + Phrases.count(sheet.places().size(), "edge", "edges")
                        + sheet.junction()
                                .map(junction -> facing(junction.setup()))
                                .orElse("");
    }

    /** What the surfaces face, where that is not open air alone: a corner in the ground is drawn as one above it. */
    private static String facing(JunctionSetup setup) {
        ImmutableList<Exposure> faced = Lists.immutable
                .of(setup.firstExposure(), setup.secondExposure())
                .distinct();
        return faced.allSatisfy(each -> each.kind() == Exposure.Kind.OUTDOORS)
                ? ""
                : " · faces "
                        + faced.collect(each -> switch (each.kind()) {
                                    case OUTDOORS -> "open air";
                                    case GROUND -> "the ground";
                                    case CRAWL_SPACE -> "the crawl space";
                                    case UNHEATED, PARTY -> "\"" + each.neighbour() + "\"";
                                })
                                .makeString(" and ");
    }

    /** What a builder takes from the numbers. */
    private Block said() {
        Site site = page.audit().house().site();
        MutableList<Block> out = Lists.mutable.empty();
        out.add(Blocks.text(
                "At " + print.of(site.indoorTemperature(), Dimension.TEMPERATURE) + " indoors and "
                        + print.of(site.outdoorTemperature(), Dimension.TEMPERATURE)
                        + " outdoors the coldest point gets wet when the indoor air holds "
                        + humidity(sheet.dewPointHumidity()) + "; mould may grow on it from "
                        + humidity(sheet.mouldHumidity())
                        + ".",
                Style.BODY));
        own(out);
        page.audit()
                .pairSheets()
                .select(pair -> pair.isOf(sheet))
                .forEach(pair -> out.add(Blocks.text(beside(pair), Style.BODY)));
        sheet.best()
                .ifPresent(best -> out.add(Blocks.text(
                        Rich.marked("The best option of the catalogue for " + (point ? "this surface" : "these layers")
                                + " is “"
                                + best.detail().name() + "”" + new Phrases(print.units()).given(best.detail())
                                + ": it would " + saved(best)
                                + " over " + (point ? extent() + ", with χ " : print.length(sheet.size()) + ", with ψ ")
                                + print.of(best.psiOrChi(page.audit().heatLoss().system()), best.dimension())
                                + (point ? " each" : "")
                                + new Phrases(print.units()).dearer(sheet, best)
                                + (drawn(best)
                                        ? ". It is drawn at the end of this sheet."
                                        : ". H_{T} does not show as much, so it is not drawn.")),
                        Style.BODY)));
        return Blocks.stack(out.toImmutable(), 4);
    }

    private String saved(BridgeResult best) {
        Interval saved = BestOption.saved(page, sheet, best);
        return saved.upper() < 0
                ? "lose " + print.of(saved.times(-1), Dimension.HEAT_LOSS_COEFFICIENT) + " more"
                : "save " + print.of(saved, Dimension.HEAT_LOSS_COEFFICIENT);
    }

    /** That another seam runs beside it, and what both come to. */
    private String beside(PairSheet pair) {
        BridgeSheet<?> other = pair.one().id().equals(sheet.id()) ? pair.other() : pair.one();
        return "Over " + print.length(pair.length()) + " " + (other == sheet ? "another one of it" : other.id())
                + " runs beside it, "
                + print.length(pair.result().setup().distance())
                + " away: solved in one section (" + pair.id() + ") both together have ψ "
                + print.of(pair.psi(page.audit().heatLoss().system()), Dimension.LINEAR_TRANSMITTANCE)
                + " and fRsi " + Print.factor(pair.temperatureFactor()) + ".";
    }

    /** What the house's own humidity means for it. */
    private void own(MutableList<Block> out) {
        Mould mould = page.audit().mould();
        if (!Mould.among(mould.wetAtDesign(), sheet)) {
            return;
        }
        String own = print.of(page.audit().house().site().indoorHumidity(), Dimension.SHARE);
        boolean byMonth = Mould.among(mould.wetByMonth(), sheet);
        String months = mould.monthly().isEmpty()
                ? " It was not judged by months, since the house file gives no monthly climate."
                : byMonth
                        ? " By monthly means, too, it is too cold; see Moisture."
                        : " By monthly means, which ISO 13788 asks for, none is expected.";
        out.add(Blocks.text(
                Rich.of("The house's own " + own + " is enough for that: in a cold spell mould is possible here."
                        + months),
                Style.BODY.with(Palette.EMBER)));
    }

    private static String humidity(double humidity) {
        return humidity >= 1
                ? "100 % relative humidity (never, at these temperatures)"
                : Print.percent(humidity) + " relative humidity";
    }

    private void places() {
        page.flow().heading("Where it is");
        Table table = Table.of(Table.Column.share("place", 1), Table.Column.number(point ? "number" : "length", 74));
        for (BridgeRow row : rows) {
            table = row instanceof JunctionRow junction
                    ? table.row(junction.edge().place(), print.length(row.size()))
                    : table.row(
                            Phrases.capital(row.name()) + ", "
                                    + ((PointRow) row).surface().name(),
                            Integer.toString((int) row.size()));
        }
        page.flow().add(table);
    }
}
