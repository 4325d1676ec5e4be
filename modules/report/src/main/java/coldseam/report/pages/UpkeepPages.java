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
        if (items.isEmpty()) {
            flow.body(
                    "Nothing that is drawn lies in the open and asks to be looked after while nobody opens it. Of seams without"
                            + " a chosen detail nothing is said. " + UpkeepWords.SOURCE);
            return;
        }
        flow.body(
                "What the owner looks after, by the layers in sight and by the details that are chosen; what is not named lies"
                        + " covered and asks for nothing while nobody opens it. Of seams without a chosen detail nothing is said. "
                        + UpkeepWords.SOURCE);
        flow.space(4);
        flow.body(UpkeepWords.CAUTION);
        flow.space(6);
        Table table = Table.of(Table.Column.share("what", 0.62), Table.Column.share("where", 0.38));
        String often = "";
        for (UpkeepItem item : items) {
            if (!item.upkeep().often().equals(often)) {
                often = item.upkeep().often();
                table = table.row(Table.Kind.GROUP, Table.Cell.of(Phrases.capital(often)));
            }
            table = table.row(page.print().units().told(item.upkeep().look()), where(item));
        }
        flow.add(table);
    }

    /** "flat roof; parapet J7, J8": an owner knows no sheet by its number. */
    private static String where(UpkeepItem item) {
        return item.assemblies()
                .newWithAll(item.sheets()
                        .collect(BridgeSheet::kind)
                        .distinct()
                        .collect(kind -> kind + " "
                                + item.sheets()
                                        .select(sheet -> sheet.kind().equals(kind))
                                        .collect(BridgeSheet::id)
                                        .makeString(", ")))
                .makeString("; ");
    }
}
