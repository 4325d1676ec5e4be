package coldseam.report.pages;

import coldseam.audit.BridgeSheet;
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
                "What the owner looks after, by the layers in sight and by the details that are chosen; what is not named lies"
                        + " covered and asks for nothing while nobody opens it. Of seams without a chosen detail nothing is said. "
                        + UpkeepWords.SOURCE);
        flow.space(4);
        flow.body(UpkeepWords.CAUTION);
        flow.space(6);
        Table table = Table.of(Table.Column.share("what", 0.66), Table.Column.share("where", 0.34));
        String often = "";
        for (UpkeepItem item : items) {
            if (!item.upkeep().often().equals(often)) {
                often = item.upkeep().often();
                table = table.row(Table.Kind.GROUP, Table.Cell.of(Phrases.capital(often)));
            }
            table = table.row(
                    page.print().units().told(item.upkeep().look()),
                    item.assemblies()
                            .newWithAll(item.sheets().collect(BridgeSheet::id))
                            .makeString(", "));
        }
        flow.add(table);
    }
}
