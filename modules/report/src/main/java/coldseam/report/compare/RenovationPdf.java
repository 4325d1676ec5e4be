package coldseam.report.compare;

import coldseam.conduction.Interval;
import coldseam.files.AtomicFiles;
import coldseam.files.Csv;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Renovation;
import coldseam.options.Yearly;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Paper;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import coldseam.report.words.CompareWords;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;

/** Two houses compared, as a PDF and as a table for a spreadsheet. */
public final class RenovationPdf {

    private RenovationPdf() {}

    /**
     * Writes the document whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(Renovation renovation, Path path, UnitSystem units, Paper paper) throws IOException {
        AtomicFiles.write(path, bytes(renovation, units, paper));
    }

    /** The document's bytes. */
    public static byte[] bytes(Renovation renovation, UnitSystem units, Paper paper) {
        String tool = "coldseam " + renovation.after().version();
        String name = renovation.after().house().name();
        ImmutableList<RenovationLines.Part> parts = RenovationLines.of(renovation, units);
        DocumentInfo info = new DocumentInfo(
                "Before and after: " + name,
                "What changes, and in which order it is built",
                tool,
                "insulation continuity, retrofit, stages",
                (parts.makeString() + units + paper).hashCode());
        try (Flow flow = new Flow(paper, info)) {
            flow.add(Blocks.text(name + ": before and after", Style.TITLE.sized(22, 26)));
            flow.space(6);
            parts.forEach(part -> {
                flow.sectionHere(part.heading(), 80);
                part.lines().forEach(line -> flow.add(Blocks.item("–", Rich.trade(line), Style.BODY)));
            });
            flow.sectionHere("Cautions", 80);
            CompareWords.cautions().forEach(text -> flow.add(Blocks.item("–", Rich.of(text), Style.BODY)));
            return flow.finish(name + ": before and after", tool);
        }
    }

    /** What loses another amount than before, a line each; numbers are not rounded. */
    public static String csv(Renovation renovation, UnitSystem units) {
        Csv<Renovation.Part> csv = Csv.<Renovation.Part>in(units).with("part", Renovation.Part::name);
        csv = interval(csv, "before", Renovation.Part::before);
        csv = interval(csv, "after", Renovation.Part::after);
        csv = interval(csv, "more", part -> Optional.of(part.more()));
        return csv.with(
                        "saved in a year " + renovation.after().house().prices().currency(),
                        part -> Yearly.money(
                                        part.more().times(-1),
                                        renovation.after().house())
                                .map(saved -> Csv.plain(saved.middle()))
                                .orElse(""))
                .text(renovation.parts());
    }

    private static Csv<Renovation.Part> interval(
            Csv<Renovation.Part> csv, String name, Function<Renovation.Part, Optional<Interval>> value) {
        Dimension dimension = Dimension.HEAT_LOSS_COEFFICIENT;
        return csv.with(
                        csv.head(name + " lower", dimension),
                        part -> value.apply(part)
                                .map(interval -> csv.number(interval.lower(), dimension))
                                .orElse(""))
                .with(
                        csv.head(name + " upper", dimension),
                        part -> value.apply(part)
                                .map(interval -> csv.number(interval.upper(), dimension))
                                .orElse(""));
    }
}
