package coldseam.cli;

import coldseam.files.quantity.UnitSystem;
import coldseam.options.Renovation;
import coldseam.report.words.CompareWords;
import coldseam.report.words.DifferenceWords;
import coldseam.report.words.RenovationWords;
import coldseam.report.words.RenovationWords.Part;
import coldseam.report.words.RenovationWords.Row;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Two houses compared, in the columns of a terminal. */
final class RenovationText {

    private static final int NAME = 36;
    private static final int NUMBER = 11;

    private final MutableList<String> lines = Lists.mutable.empty();

    private RenovationText() {}

    static ImmutableList<String> of(Renovation renovation, UnitSystem units) {
        RenovationWords said = new RenovationWords(renovation, units);
        RenovationText text = new RenovationText();
        text.part(said.verdicts());
        text.part(said.findings());
        text.part(new Part(
                said.differencesHeading(),
                said.differences().isEmpty()
                        ? Lists.immutable.of("nothing")
                        : said.differences().collect(DifferenceWords.Difference::line)));
        said.stages().forEach(text::part);
        text.table(said);
        CompareWords.stageCautions().forEach(each -> text.lines.addAllIterable(Columns.fold(each, "", "  ")));
        return text.lines.toImmutable();
    }

    private void part(Part part) {
        lines.add(part.heading());
        part.lines().forEach(line -> lines.addAllIterable(Columns.fold(line, "  ", "    ")));
        lines.add("");
    }

    private void table(RenovationWords said) {
        lines.add(said.tableHeading());
        if (said.rows().isEmpty()) {
            lines.add("  nothing");
        } else {
            line("", said.heads());
        }
        for (Row row : said.rows()) {
            if (!row.group().isEmpty()) {
                lines.add("  " + row.group());
            }
            line("    " + row.name(), row.numbers());
        }
        lines.add("");
    }

    /** A name that is too long has a line of its own. */
    private void line(String name, ImmutableList<String> cells) {
        boolean fits = name.codePointCount(0, name.length()) <= NAME;
        if (!fits) {
            lines.add(name);
        }
        String shown = fits ? name : "";
        lines.add((shown
                        + " ".repeat(NAME - shown.codePointCount(0, shown.length()))
                        + cells.collect(RenovationText::right).makeString(""))
                .stripTrailing());
    }

    private static String right(String cell) {
        return " ".repeat(Math.max(1, NUMBER - cell.codePointCount(0, cell.length()))) + cell;
    }
}
