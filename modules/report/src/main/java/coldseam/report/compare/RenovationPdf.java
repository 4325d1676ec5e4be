package coldseam.report.compare;

import coldseam.files.Csv;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Renovation;
import coldseam.options.Yearly;
import coldseam.report.Intervals;
import coldseam.report.drawing.Palette;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.pdf.Paper;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.pdf.Table;
import coldseam.report.words.CompareWords;
import coldseam.report.words.DifferenceWords;
import coldseam.report.words.RenovationWords;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Two houses compared, as a PDF and as a table for a spreadsheet. */
public final class RenovationPdf {

    private RenovationPdf() {}

    /** The document's bytes. */
    public static byte[] bytes(Renovation renovation, UnitSystem units, Paper paper) {
        String tool = "coldseam " + renovation.after().version();
        String title = renovation.after().house().name() + ": before and after";
        String data = RenovationJson.text(renovation);
        RenovationWords lines = new RenovationWords(renovation, units);
        StagesDrawing stages = new StagesDrawing(renovation, units);
        DocumentInfo info = new DocumentInfo(
                "Before and after: " + renovation.after().house().name(),
                "What changes, and in which order it is built",
                tool,
                "insulation continuity, retrofit, stages",
                (data + units + paper).hashCode());
        try (Flow flow = new Flow(paper, info)) {
            flow.add(Blocks.text(title, Style.TITLE.sized(22, 26)));
            flow.space(6);
            flow.add(Blocks.panel(
                    Blocks.stack(
                            lines.verdicts().lines().collect(line -> Blocks.text(Rich.trade(line), Style.BODY)), 3),
                    Palette.FROST,
                    Palette.DEEP));
            flow.space(8);
            flow.add(Blocks.drawing(
                    stages.height(),
                    "The loss of heat as found and at each stage; the text below has its numbers.",
                    stages::draw));
            Lists.mutable.withAll(lines.stages()).with(lines.findings()).forEach(part -> part(flow, part));
            if (lines.differences().notEmpty()) {
                flow.sectionHere(lines.differencesHeading(), 120);
                flow.add(Listing.<DifferenceWords.Difference>empty()
                        .share("what", 0.7, DifferenceWords.Difference::what)
                        .share("before", 1, each -> each.before().orElse("–"))
                        .share("after", 1, each -> each.after().orElse("–"))
                        .of(lines.differences()));
            }
            flow.sectionHere(lines.tableHeading(), 120);
            flow.add(table(lines));
            part(flow, new RenovationWords.Part("Cautions", CompareWords.stageCautions()));
            flow.attach("renovation.json", "The comparison as data", data);
            return flow.finish(title, tool);
        }
    }

    private static void part(Flow flow, RenovationWords.Part part) {
        flow.sectionHere(part.heading(), 80);
        part.lines().forEach(line -> flow.add(Blocks.item("–", Rich.trade(line), Style.BODY)));
    }

    private static Table table(RenovationWords lines) {
        ImmutableList<String> heads = lines.heads();
        Table table = Table.of(
                Table.Column.share("part", 1),
                Table.Column.number(heads.get(0), 84),
                Table.Column.number(heads.get(1), 84),
                Table.Column.number(heads.get(2), 76),
                Table.Column.number(heads.get(3), 70));
        for (RenovationWords.Row row : lines.rows()) {
            if (!row.group().isEmpty()) {
                table = table.row(Table.Kind.GROUP, Table.Cell.of(row.group()));
            }
            table = table.row(
                    Lists.mutable.of(row.name()).withAll(row.numbers()).toArray(new String[0]));
        }
        return table;
    }

    /** What loses another amount than before, a line each; numbers are not rounded. */
    public static String csv(Renovation renovation, UnitSystem units) {
        return Csv.<Renovation.Part>in(units)
                .with("group", part -> Words.word(part.group()))
                .with("part", Renovation.Part::name)
                .and(Intervals.of("before", Dimension.HEAT_LOSS_COEFFICIENT, Renovation.Part::before))
                .and(Intervals.of("after", Dimension.HEAT_LOSS_COEFFICIENT, Renovation.Part::after))
                .and(Intervals.of("more", Dimension.HEAT_LOSS_COEFFICIENT, part -> Optional.of(part.more())))
                .some(
                        "saved in a year " + renovation.after().house().prices().currency(),
                        part -> Yearly.money(
                                part.more().times(-1), renovation.after().house()),
                        saved -> Csv.plain(saved.middle()))
                .text(renovation.parts());
    }
}
