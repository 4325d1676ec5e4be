package coldseam.assemblies.check;

import java.math.BigDecimal;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Computed against published, as Markdown. */
public final class ValidationTable {

    /** Decimals beyond those the tolerance asks for, so that the difference can be seen. */
    private static final int MORE_DECIMALS = 1;

    /** Sums that must be exact need no more to be seen. */
    private static final int MOST_DECIMALS = 7;

    private ValidationTable() {}

    /**
     * The table.
     *
     * @param rows rows of one area one after another; areas appear in the order in which they first occur
     * @return Markdown, lines ended by a newline; the same rows give the same text
     */
    public static String write(ImmutableList<CheckRow> rows) {
        StringBuilder text = new StringBuilder();
        text.append("# Computed against published\n\n");
        text.append(
                "Made by the build; a test compares this page with what the code computes and fails where a value is"
                        + " off by more than its tolerance.\n\n");
        summary(rows, text);
        for (String area : rows.collect(CheckRow::area).distinct()) {
            area(area, rows.select(row -> row.area().equals(area)), text);
        }
        return text.toString();
    }

    private static void summary(ImmutableList<CheckRow> rows, StringBuilder text) {
        text.append("| published values are | number | within tolerance |\n|---|---:|---:|\n");
        for (CheckRow.Sureness sureness : CheckRow.Sureness.values()) {
            ImmutableList<CheckRow> some = rows.select(row -> row.sureness() == sureness);
            if (some.notEmpty()) {
                summaryLine((sureness.fromOutside() ? "from outside: " : "") + sureness.words(), some, text);
            }
        }
        summaryLine("from outside, together", rows.select(row -> row.sureness().fromOutside()), text);
        text.append(
                "\n\"Worked out apart\" means worked out by ourselves from the stated inputs, without this code; it checks"
                        + " the arithmetic, not the standard, and is not from outside. \"From memory\" means remembered from the"
                        + " source named, not seen.\n");
    }

    private static void summaryLine(String name, ImmutableList<CheckRow> rows, StringBuilder text) {
        text.append(String.format(Locale.ROOT, "| %s | %d | %d |\n", name, rows.size(), rows.count(CheckRow::passes)));
    }

    private static void area(String area, ImmutableList<CheckRow> rows, StringBuilder text) {
        // Sources and reasons repeat; each is written once under the table and referred to by a number.
        MutableList<String> notes = Lists.mutable.empty();
        text.append("\n## ").append(area).append("\n\n");
        text.append("| what | published | computed | difference | tolerance | unit | source |\n");
        text.append("|---|---:|---:|---:|---:|---|---|\n");
        for (CheckRow row : rows) {
            int decimals = decimals(row.tolerance());
            text.append("| ").append(cell(row.what()));
            text.append(" | ").append(number(row.published(), decimals));
            text.append(" | ").append(number(row.computed(), decimals));
            text.append(" | ").append(row.passes() ? "" : "**OFF** ").append(number(row.difference(), decimals));
            text.append(" | ").append(plain(row.tolerance()));
            text.append(" | ").append(cell(row.unit()));
            text.append(" | ").append(note(row, notes)).append(" |\n");
        }
        text.append('\n');
        notes.forEachWithIndex(
                (note, i) -> text.append(i + 1).append(". ").append(note).append('\n'));
    }

    private static int note(CheckRow row, MutableList<String> notes) {
        String note = row.source() + " (" + row.sureness().words() + "). Tolerance: " + row.reason() + ".";
        if (!notes.contains(note)) {
            notes.add(note);
        }
        return notes.indexOf(note) + 1;
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }

    private static int decimals(double tolerance) {
        if (!(tolerance > 0)) {
            return MOST_DECIMALS;
        }
        int needed = (int) Math.ceil(-Math.log10(tolerance)) + MORE_DECIMALS;
        return Math.max(0, Math.min(MOST_DECIMALS, needed));
    }

    private static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        // A difference that rounds to nothing has no sign.
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
