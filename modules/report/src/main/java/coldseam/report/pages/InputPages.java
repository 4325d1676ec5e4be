package coldseam.report.pages;

import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Listing;
import coldseam.report.words.InputRow;
import coldseam.report.words.InputWords;

/** Every value that went in, with its source. */
public final class InputPages {

    private InputPages() {}

    public static void write(Page page) {
        Flow flow = page.flow();
        flow.section("Inputs and their sources");
        flow.add(Listing.<InputRow>empty()
                .share("what", 1, InputRow::what)
                .share("value", 0.6, InputRow::value)
                .share("source", 1.2, InputRow::source)
                .of(InputWords.of(page.audit(), page.print().units())));
    }
}
