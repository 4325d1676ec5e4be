package coldseam.report.pages;

import coldseam.audit.UpkeepItem;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Table;
import coldseam.report.words.Phrases;
import coldseam.report.words.UpkeepWords;
import org.eclipse.collections.api.list.ImmutableList;

/** What the owner looks after once the house stands. */
public final class UpkeepPages {

    private UpkeepPages() {}

    public static void write(Page page) {
        ImmutableList<UpkeepItem> items = page.audit().upkeep();
        Flow flow = page.flow();
        flow.section("Upkeep");
        flow.body(
                items.isEmpty()
                        ? "No detail that is chosen asks for any."
                        : "What the owner looks after, by the details that are chosen; what is not named lies covered and asks for"
                                + " nothing while nobody opens it. "
                                + UpkeepWords.SOURCE);
        if (items.isEmpty()) {
            return;
        }
        flow.space(6);
        Table table = Table.of(
                Table.Column.share("when", 0.26), Table.Column.share("what", 0.8), Table.Column.share("sheets", 0.3));
        for (UpkeepItem item : items) {
            table = table.row(
                    Phrases.capital(item.upkeep().often()),
                    item.upkeep().look(),
                    item.sheets().makeString(", "));
        }
        flow.add(table);
    }
}
