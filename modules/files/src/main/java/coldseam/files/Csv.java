package coldseam.files;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.eclipse.collections.api.RichIterable;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A table as comma-separated values (RFC 4180, lines end with CR LF): a column is a head and how a row's cell is made, so
 * that neither stands without the other.
 *
 * @param units of the numbers; the head of a column of numbers names its unit
 * @param columns left to right
 * @param <R> what a row shows
 */
public record Csv<R>(UnitSystem units, ImmutableList<Column<R>> columns) {

    /** Beyond it a double may stand between two whole numbers. */
    private static final double LARGEST_WHOLE = 1e15;

    private static final int DIGITS = 14;

    private static final Pattern QUOTED = Pattern.compile("[,\"\r\n]");

    /** What a spreadsheet would run as a formula; a number with its sign is none. */
    private static final Pattern FORMULA = Pattern.compile("[=@\t\r].*|[+-](?![0-9.]+(E-?[0-9]+)?$).+", Pattern.DOTALL);

    /**
     * A column.
     *
     * @param head its name, with the unit where there is one
     * @param cell the text in a row, empty where there is none
     */
    public record Column<R>(String head, Function<R, String> cell) {}

    /** A table without columns yet. */
    public static <R> Csv<R> in(UnitSystem units) {
        return new Csv<>(units, Lists.immutable.empty());
    }

    /** With a column of text at the right. */
    public Csv<R> with(String head, Function<R, String> cell) {
        return new Csv<>(units, columns.newWith(new Column<>(head, cell)));
    }

    /** With a column of numbers; values in the dimension's inside unit. */
    public Csv<R> with(String head, Dimension dimension, ToDoubleFunction<R> value) {
        return with(head(head, dimension), row -> number(value.applyAsDouble(row), dimension));
    }

    /** With a column of what some rows have; empty in the others. */
    public <T> Csv<R> some(
            String head, Function<R, ? extends Optional<? extends T>> part, Function<? super T, String> cell) {
        return with(head, row -> part.apply(row).<String>map(cell::apply).orElse(""));
    }

    /** With a column of numbers, in some rows; values in the dimension's inside unit. */
    public Csv<R> some(String head, Dimension dimension, Function<R, Optional<Double>> value) {
        return some(head(head, dimension), value, number -> number(number, dimension));
    }

    /** With columns that are made together. */
    public Csv<R> and(UnaryOperator<Csv<R>> columns) {
        return columns.apply(this);
    }

    /** The head of a column in the unit of a dimension. */
    public String head(String name, Dimension dimension) {
        return (name + " " + units.label(dimension)).strip();
    }

    /** A cell with a number; the value in the dimension's inside unit. */
    public String number(double value, Dimension dimension) {
        return plain(units.value(value, dimension));
    }

    /**
     * A number to {@value #DIGITS} significant digits, whole where it is whole: no computation knows it better, and the dust
     * of binary fractions (52.62499999999999) would hide that a converted length is a plain one.
     */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        double clean = new BigDecimal(value)
                .round(new MathContext(DIGITS, RoundingMode.HALF_EVEN))
                .doubleValue();
        return clean == Math.rint(clean) && Math.abs(clean) < LARGEST_WHOLE
                ? Long.toString((long) clean)
                : Double.toString(clean);
    }

    /** The head and a line for each row. */
    public String text(RichIterable<? extends R> rows) {
        StringBuilder out = new StringBuilder();
        line(out, columns.collect(Column::head));
        rows.forEach(row -> line(out, columns.collect(column -> column.cell().apply(row))));
        return out.toString();
    }

    private static void line(StringBuilder out, ImmutableList<String> cells) {
        out.append(cells.collect(Csv::cell).makeString(",")).append("\r\n");
    }

    /** Quoted where it must be; a text that a spreadsheet would run as a formula is kept from it by a quote mark. */
    private static String cell(String text) {
        String safe = FORMULA.matcher(text).matches() ? "'" + text : text;
        return QUOTED.matcher(safe).find() ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
