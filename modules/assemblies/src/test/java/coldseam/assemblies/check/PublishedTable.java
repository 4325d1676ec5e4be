package coldseam.assemblies.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A block of a file of published values: a line of column names and rows, the fields separated by semicolons.
 *
 * <p>Lines that begin with # are for readers; a blank line ends a block. Rows that are checked have the columns published, unit,
 * tolerance, reason, sureness (read, from memory, common practice, computed) and source beside those of their case.
 *
 * @param columns names
 * @param rows in the file's order, at least one
 */
public record PublishedTable(ImmutableList<String> columns, ImmutableList<Row> rows) {

    /**
     * A row.
     *
     * @param place file and line
     * @param columns names
     * @param fields one for each column
     */
    public record Row(String place, ImmutableList<String> columns, ImmutableList<String> fields) {

        /**
         * The text in a column.
         *
         * @throws IllegalArgumentException where there is no such column
         */
        public String text(String column) {
            int index = columns.indexOf(column);
            if (index < 0) {
                throw new IllegalArgumentException(place + ": there is no column \"" + column + "\" beside "
                        + columns.makeString(", ") + ". Add it to the block's first line");
            }
            return fields.get(index);
        }

        /**
         * The number in a column.
         *
         * @throws IllegalArgumentException where there is no such column or no number in it
         */
        public double number(String column) {
            String text = text(column);
            try {
                return Double.parseDouble(text);
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(
                        place + ": " + column + " is \"" + text + "\"; a number is needed", e);
            }
        }

        /** The row's published value beside a computed one. */
        public CheckRow check(String area, String what, double computed) {
            return new CheckRow(
                    area,
                    what,
                    text("source"),
                    sureness(),
                    number("published"),
                    computed,
                    number("tolerance"),
                    text("reason"),
                    text("unit"));
        }

        private CheckRow.Sureness sureness() {
            String text = text("sureness");
            return switch (text) {
                case "read" -> CheckRow.Sureness.READ;
                case "from memory" -> CheckRow.Sureness.FROM_MEMORY;
                case "common practice" -> CheckRow.Sureness.COMMON_PRACTICE;
                case "computed" -> CheckRow.Sureness.COMPUTED;
                default ->
                    throw new IllegalArgumentException(place + ": sureness is \"" + text
                            + "\"; allowed are read, from memory, common practice, computed");
            };
        }
    }

    /**
     * The blocks of a file.
     *
     * @throws UncheckedIOException where it cannot be read
     * @throws IllegalArgumentException where a row has more or fewer fields than its block has columns
     */
    public static ImmutableList<PublishedTable> read(Path file) {
        MutableList<PublishedTable> tables = Lists.mutable.empty();
        ImmutableList<String> columns = null;
        MutableList<Row> rows = Lists.mutable.empty();
        int number = 0;
        // The blank line at the end closes the last block.
        for (String line : lines(file).newWith("")) {
            number++;
            if (line.startsWith("#")) {
                continue;
            }
            if (line.isBlank()) {
                if (columns != null) {
                    tables.add(new PublishedTable(columns, rows.toImmutable()));
                }
                columns = null;
                rows = Lists.mutable.empty();
            } else if (columns == null) {
                columns = fields(line);
            } else {
                String place = String.format(Locale.ROOT, "%s:%d", file.getFileName(), number);
                ImmutableList<String> fields = fields(line);
                if (fields.size() != columns.size()) {
                    throw new IllegalArgumentException(place + ": there are " + fields.size() + " fields for "
                            + columns.size() + " columns; separate fields with semicolons");
                }
                rows.add(new Row(place, columns, fields));
            }
        }
        return tables.toImmutable();
    }

    private static ImmutableList<String> lines(Path file) {
        try {
            return Lists.immutable.withAll(Files.readAllLines(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read published values from " + file.getFileName(), e);
        }
    }

    private static ImmutableList<String> fields(String line) {
        return Lists.immutable.with(line.split(";", -1)).collect(String::strip);
    }
}
