package coldseam.report.pdf;

import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.RichIterable;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A table with a row for each of some things: a column is a head and what it shows of a thing, so that neither stands without
 * the other.
 *
 * @param columns left to right
 * @param <R> what a row shows
 */
public record Listing<R>(ImmutableList<Shown<R>> columns) {

    /** A column, and its cell in a row. */
    public record Shown<R>(Table.Column column, Function<R, Table.Cell> cell) {}

    /** A table without columns yet. */
    public static <R> Listing<R> empty() {
        return new Listing<>(Lists.immutable.empty());
    }

    /** With a column of text whose width is a share of what fixed ones leave. */
    public Listing<R> share(String head, double share, Function<R, String> text) {
        return with(Table.Column.share(head, share), text);
    }

    /** With a column of text, points wide. */
    public Listing<R> fixed(String head, double points, Function<R, String> text) {
        return with(Table.Column.fixed(head, points), text);
    }

    /** With a column of numbers, points wide. */
    public Listing<R> number(String head, double points, Function<R, String> text) {
        return with(Table.Column.number(head, points), text);
    }

    /** With a column of text as it stands at the right. */
    public Listing<R> with(Table.Column column, Function<R, String> text) {
        return cell(column, row -> Table.Cell.of(text.apply(row)));
    }

    /** With a column of text with its runs. */
    public Listing<R> rich(Table.Column column, Function<R, Rich> text) {
        return cell(column, row -> Table.Cell.of(text.apply(row)));
    }

    /** With a column of any cells. */
    public Listing<R> cell(Table.Column column, Function<R, Table.Cell> cell) {
        return new Listing<>(columns.newWith(new Shown<>(column, cell)));
    }

    /** A cell's text; a dash where there is none. */
    public static <R> Function<R, String> perhaps(Function<R, Optional<String>> text) {
        return row -> text.apply(row).orElse("–");
    }

    public Table of(RichIterable<? extends R> rows) {
        return new Table(
                columns.collect(Shown::column),
                rows.<Table.Row>collect(row -> new Table.Row(
                                Table.Kind.PLAIN,
                                columns.collect(shown -> shown.cell().apply(row))))
                        .toImmutableList());
    }
}
