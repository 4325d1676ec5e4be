package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.Mould;
import coldseam.audit.Sheet;
import coldseam.envelope.House;
import coldseam.envelope.Submittal;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Tag;
import coldseam.report.house.FindingMark;
import coldseam.report.pdf.Block;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Cut;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.FindingWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.OwnerWords;
import coldseam.report.words.PairWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.TakeOff;
import coldseam.report.words.VerdictWords;
import coldseam.report.words.VertexWords;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The first page: the verdict and the few numbers that matter. */
public final class Cover {

    /** Entries of the list of contents that every report has beside its sheets. */
    private static final int OTHERS = 12;

    /** Rows of the list of contents that leave room for its heading on any paper; more entries are set in more columns. */
    private static final int MOST_ROWS = 44;

    private static final double ROW = 13;
    private static final double BETWEEN = 24;

    private double contentsTop;
    private int contentsPage;
    private int columns;

    /** Sets the page; the list of contents is filled in last. */
    public void write(Page page) {
        Audit audit = page.audit();
        Flow flow = page.flow();
        flow.mark("Verdict");
        flow.add(Blocks.drawing(
                5,
                (canvas, box) -> canvas.fill(
                        new Box(box.x0(), box.y0() + 1, box.x0() + 64, box.y1()).corners(), Palette.EMBER)));
        flow.add(Blocks.space(10));
        flow.add(Blocks.text("Continuous insulation audit", Style.LEAD.with(Palette.SLATE)));
        flow.add(Blocks.space(2));
        flow.add(Blocks.text(audit.house().name(), Style.TITLE));
        flow.add(Blocks.space(2));
        submittal(audit.house()).forEach(line -> flow.add(Blocks.text(line, Style.BODY.with(Palette.SLATE))));
        flow.add(Blocks.space(10));
        flow.add(verdict(page));
        flow.add(Blocks.space(7));
        flow.add(Blocks.text(OwnerWords.of(audit, page.print()), Style.BODY));
        flow.add(Blocks.space(9));
        flow.add(figures(page));
        flow.add(Blocks.space(6));
        flow.add(Blocks.text(sizes(page), Style.SMALL));
        flow.add(Blocks.text(
                "House file SHA-256 " + audit.inputDigest() + ", coldseam " + audit.version(), Style.SMALL));
        heaviest(page);
        int entries = audit.sheets().size()
                + audit.pointSheets().size()
                + OTHERS
                + (audit.points().isEmpty() ? 0 : 1)
                + (audit.pairs().isEmpty() ? 0 : 1)
                + (audit.vertices().isEmpty() ? 0 : 1);
        columns = Math.max(2, rows(entries, MOST_ROWS));
        flow.need(rows(entries, columns) * ROW + 34);
        flow.add(Blocks.space(9));
        flow.add(Blocks.text("In this report", Style.SUBSECTION));
        flow.add(Blocks.space(2));
        contentsTop = flow.top();
        contentsPage = flow.page();
        flow.reserveContents();
    }

    /**
     * The address, and for whom, by whom and when; and which of these nobody said, since who reviews it sends back what bears no
     * name and no date.
     */
    private static ImmutableList<String> submittal(House house) {
        Submittal submittal = house.submittal();
        ImmutableList<String> facts = Lists.immutable.withAll(Stream.of(
                        submittal.client().map("for "::concat),
                        submittal.preparedBy().map("prepared by "::concat),
                        submittal.date().map(LocalDate::toString),
                        submittal.revision().map("revision "::concat))
                .flatMap(Optional::stream)
                .toList());
        return Lists.immutable
                .withAll(submittal.address().filter(address -> !isIn(address, house.name())).stream()
                        .toList())
                .newWithAll(facts.isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(facts.makeString(" · ")))
                .newWithAll(missing(submittal).stream().toList());
    }

    /** Many a house is called by its address, which stands over it as the title. */
    private static boolean isIn(String address, String title) {
        return title.toLowerCase(Locale.ROOT).contains(address.strip().toLowerCase(Locale.ROOT));
    }

    private static Optional<String> missing(Submittal submittal) {
        MutableList<String> without = Lists.mutable.empty();
        if (submittal.address().isEmpty()) {
            without.add("the address");
        }
        if (submittal.preparedBy().isEmpty()) {
            without.add("who prepared it");
        }
        if (submittal.date().isEmpty()) {
            without.add("its date");
        }
        return without.isEmpty()
                ? Optional.empty()
                : Optional.of("Not said in the house file (submittal): " + Phrases.listed(without.toImmutable()) + ".");
    }

    /** As many as hold so many entries in so many columns. */
    private static int rows(int entries, int columns) {
        return (entries + columns - 1) / columns;
    }

    /** Fills the list of contents, once it is known what stands where. */
    public void writeContents(Page page) {
        Flow flow = page.flow();
        ImmutableList<Flow.Mark> marks = flow.marks().drop(1);
        double column = (flow.width() - BETWEEN * (columns - 1)) / columns;
        int rows = rows(marks.size(), columns);
        ImmutableList<Spot> places = marks.collectWithIndex((mark, i) ->
                new Spot(flow.left() + (column + BETWEEN) * (i / rows), contentsTop - 12 - ROW * (i % rows)));
        marks.zip(places)
                .forEach(entry -> flow.link(
                        contentsPage,
                        new Box(
                                entry.getTwo().x(),
                                entry.getTwo().y() - 3,
                                entry.getTwo().x() + column,
                                entry.getTwo().y() + 9),
                        entry.getOne().page()));
        flow.contentsOnto(
                contentsPage,
                canvas -> marks.zip(places).forEach(entry -> {
                    Flow.Mark mark = entry.getOne();
                    double x = entry.getTwo().x();
                    double y = entry.getTwo().y();
                    String text = Cut.to(column - 34, mark.text(), Style.BODY.type());
                    canvas.tagged(Tag.PARAGRAPH, "", () -> {
                        canvas.text(text + " ", x, y, Style.BODY.type(), Align.LEFT);
                        canvas.text(
                                Integer.toString(mark.page()),
                                x + column,
                                y,
                                Style.BODY.type().with(Palette.SLATE),
                                Align.RIGHT);
                    });
                    double from = x + canvas.metrics().width(text, Style.BODY.type()) + 5;
                    canvas.line(
                            from,
                            y + 1,
                            x + column - 16,
                            y + 1,
                            Pen.of(0.5, Palette.RULE).dashed(0.6, 2.4).rounded());
                }));
    }

    private static Block verdict(Page page) {
        Audit audit = page.audit();
        HonestWords honest = new HonestWords(audit, page.print().units());
        boolean unbroken = audit.verdict().unbroken();
        Ink accent = unbroken ? Palette.MOSS : Palette.EMBER;
        return Blocks.panel(
                Blocks.stack(
                        3,
                        Blocks.text(
                                VerdictWords.word(audit.verdict()),
                                Style.SECTION.with(accent).sized(20, 25)),
                        Blocks.text(VerdictWords.below(audit.verdict()), Style.LEAD),
                        assumed(honest.assumptions()),
                        Blocks.text(Rich.trade(honest.measuredBy()), Style.SMALL)),
                Palette.FROST,
                accent);
    }

    /** A list to go through with whoever answers for the house, in two columns of about the same length. */
    private static Block assumed(ImmutableList<String> parts) {
        if (parts.isEmpty()) {
            return Blocks.space(0);
        }
        long letters = parts.sumOfInt(String::length);
        MutableList<Block> left = Lists.mutable.empty();
        MutableList<Block> right = Lists.mutable.empty();
        long told = 0;
        for (String part : parts) {
            told += part.length();
            (2 * told - part.length() <= letters ? left : right).add(Blocks.item("–", Rich.trade(part), Style.BODY));
        }
        return Blocks.stack(
                3,
                Blocks.text(HonestWords.ASSUMED, Style.BODY),
                Blocks.beside(
                        14,
                        Lists.immutable.of(0.5, 0.5),
                        Blocks.stack(left.toImmutable(), 1),
                        Blocks.stack(right.toImmutable(), 1)),
                Blocks.space(2));
    }

    private static Block figures(Page page) {
        Audit audit = page.audit();
        Print print = page.print();
        Optional<Sheet> coldest = audit.mould().surfaces().getFirstOptional().map(Mould.Surface::sheet);
        String system = Words.word(audit.heatLoss().system());
        Block first = Blocks.beside(
                14,
                Lists.immutable.of(0.4, 0.3, 0.3),
                figure(
                        new HonestWords(audit, print.units()).total(),
                        Rich.marked("heat-loss coefficient by transmission, H_{T}, " + system + " dimensions"
                                + new HonestWords(audit, print.units())
                                        .unknown()
                                        .map(why -> ": " + why)
                                        .orElse("")
                                + new HonestWords(audit, print.units())
                                        .inputs()
                                        .map(inputs -> "; " + inputs)
                                        .orElse(""))),
                figure(
                        Integer.toString(audit.verdict().gaps()),
                        Rich.of("gaps: a layer is open or broken, or nobody has said how it passes")),
                figure(
                        Integer.toString(audit.verdict().weakSpots()),
                        Rich.of("weak spots: a layer is pinched or a limit is missed")));
        Block second = Blocks.beside(
                14,
                Lists.immutable.of(0.4, 0.3, 0.3),
                figure(seams(audit, print), Rich.of(shareWords(audit, print))),
                figure(
                        coldest.map(s -> Print.factor(s.temperatureFactor())).orElse("none"),
                        Rich.marked("lowest temperature factor f_{Rsi}")
                                .plus(coldest.map(s -> ", at " + s.id()).orElse(", nothing computed"))
                                .plus("; limit "
                                        + Print.factor(audit.house().limits().temperatureFactor()))),
                figure(
                        coldest.map(s -> Print.percent(s.mouldHumidity())).orElse("none"),
                        coldest.map(s -> Rich.of("indoor humidity from which mould may grow, at " + s.id()
                                                + ", at the design temperatures; ")
                                        .plus(own(page)))
                                .orElse(Rich.of("nothing computed"))));
        MutableList<Block> blocks = Lists.mutable.of(first, second);
        if (audit.vertices().notEmpty()) {
            blocks.add(Blocks.text(Phrases.capital(VertexWords.count(audit)) + ".", Style.SMALL));
        }
        PairWords.count(audit, print.units())
                .ifPresent(count -> blocks.add(Blocks.text(Rich.trade(Phrases.capital(count) + "."), Style.SMALL)));
        return Blocks.stack(blocks.toImmutable(), 12);
    }

    /** What was measured, so that the page can be filed alone. */
    private static Rich sizes(Page page) {
        Audit audit = page.audit();
        Print print = page.print();
        ImmutableList<TakeOff.OfSurface> surfaces = TakeOff.surfaces(audit);
        return Rich.of("Surfaces " + print.of(surfaces.sumOfDouble(TakeOff.OfSurface::gross), Dimension.AREA) + " in "
                + Words.word(audit.heatLoss().system()) + " dimensions, "
                + print.of(surfaces.sumOfDouble(each -> each.surface().openingArea()), Dimension.AREA)
                + " of it windows and doors; heated floor area "
                + print.of(audit.shell().floorArea(), Dimension.AREA) + " between inner faces; heated volume "
                + print.of(audit.shell().externalVolume(), Dimension.VOLUME) + " by outer faces.");
    }

    /** The house's own humidity, marked where it is enough for mould. */
    private static Rich own(Page page) {
        Rich own = Rich.of("the house has "
                + page.print().of(page.audit().house().site().indoorHumidity(), Dimension.SHARE) + ", see Moisture");
        return page.audit().mould().wetAtDesign().isEmpty() ? own : own.with(Palette.EMBER);
    }

    /** What seams lose, and what they take off again, each on its own: a sum of both hides the loss. */
    private static String seams(Audit audit, Print print) {
        HeatLoss loss = audit.heatLoss();
        Dimension d = Dimension.HEAT_LOSS_COEFFICIENT;
        String lost = print.of(loss.positiveJunctions(), d);
        return loss.negativeJunctions().lower() < 0 ? lost + ", " + print.of(loss.negativeJunctions(), d) : lost;
    }

    private static String shareWords(Audit audit, Print print) {
        HeatLoss loss = audit.heatLoss();
        return "of that lost at the seams, where one surface meets another"
                + (loss.negativeJunctions().lower() < 0
                        ? ", and taken off at corners that plane parts count twice; together "
                                + print.of(
                                        loss.positiveJunctions().plus(loss.negativeJunctions()),
                                        Dimension.HEAT_LOSS_COEFFICIENT)
                                + ", " + Print.percent(loss.junctionShare())
                        : ", " + Print.percent(loss.junctionShare()));
    }

    private static Block figure(String number, Rich words) {
        return Blocks.stack(2, Blocks.text(number, Style.FIGURE), Blocks.text(words, Style.SMALL));
    }

    private static void heaviest(Page page) {
        Audit audit = page.audit();
        ImmutableList<Finding> worst = audit.findings().take(3);
        if (worst.isEmpty()) {
            page.flow().space(9);
            page.flow().body("There are no findings.");
            return;
        }
        page.flow()
                .heading(
                        worst.size() == 1
                                ? "The one finding"
                                : "The heaviest " + (worst.size() == 2 ? "two" : "three"));
        FindingWords words = page.words();
        page.flow()
                .add(Listing.<Finding>empty()
                        .cell(Table.Column.fixed("", 26), Cover::badge)
                        .rich(
                                Table.Column.share("what and where", 1),
                                finding -> Rich.trade(words.title(finding))
                                        .with(Face.SEMIBOLD)
                                        .plus(Rich.newLine())
                                        .plus(words.firstPlace(finding)))
                        .rich(Table.Column.number("lost", 104), finding -> loss(finding, page.print()))
                        .of(worst));
    }

    static Table.Cell badge(Finding finding) {
        return Table.Cell.drawn(
                16,
                (canvas, box) -> FindingMark.draw(
                        canvas, new Spot(box.x0() + 8, box.y1() - 8), finding.severity(), finding.number(), 6.4));
    }

    static Rich loss(Finding finding, Print print) {
        return finding.loss()
                .map(interval -> Rich.of(print.lost(interval)))
                .orElse(Rich.of("not known").with(Face.ITALIC));
    }
}
