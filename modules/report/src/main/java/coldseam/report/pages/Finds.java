package coldseam.report.pages;

import coldseam.audit.Finding;
import coldseam.report.house.FindingMark;
import coldseam.report.pdf.Blocks;
import coldseam.report.pdf.Rich;
import coldseam.report.pdf.Style;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.list.ImmutableList;

/** On a sheet, which findings are about it: by the numbers that they bear in the list and in the drawing of the house. */
final class Finds {

    private Finds() {}

    /** Adds a line where something was found. */
    static void write(Page page, Predicate<Finding> about) {
        ImmutableList<Finding> found = page.audit().findings().select(about);
        if (found.notEmpty()) {
            page.flow()
                    .add(Blocks.text(
                            Rich.strong("Found here: " + FindingMark.named(found)),
                            Style.BODY.with(FindingMark.ink(found.getFirst().severity()))));
        }
    }
}
