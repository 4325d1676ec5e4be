package coldseam.cli;

import coldseam.files.quantity.UnitSystem;
import coldseam.report.pdf.Paper;
import picocli.CommandLine.Option;

/** On which paper a PDF is set. */
final class PaperOption {

    @Option(
            names = "--paper",
            paramLabel = "letter|a4",
            description = "Paper of the PDF: letter or a4 (default: letter where units are us, else a4).")
    Paper paper;

    /** What was asked for, else what lies in the printer where these units are used. */
    Paper of(UnitSystem units) {
        return paper != null ? paper : units == UnitSystem.US ? Paper.LETTER : Paper.A4;
    }
}
