package coldseam.report.pages;

import coldseam.audit.Audit;
import coldseam.report.pdf.Flow;
import coldseam.report.words.FindingWords;
import coldseam.report.words.Print;

/**
 * What a section needs.
 *
 * @param audit what is shown
 * @param flow where it is set
 * @param print how numbers are printed
 */
public record Page(Audit audit, Flow flow, Print print) {

    /** What is said of findings. */
    FindingWords words() {
        return new FindingWords(print.units());
    }
}
