package coldseam.report.pages;

import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Table;
import coldseam.report.words.InputWords;

/** Every value that went in, with its source. */
public final class InputPages {

    private InputPages() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        flow.section("Inputs and their sources");
        Table table = Table.of(
                Table.Column.share("what", 1), Table.Column.share("value", 0.6), Table.Column.share("source", 1.2));
        for (var row : InputWords.of(page.audit(), page.print().units())) {
            table = table.row(row.what(), row.value(), row.source());
        }
        flow.add(table);
    }
}
