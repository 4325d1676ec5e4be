package coldseam.cli;

import coldseam.report.pdf.Paper;
import picocli.CommandLine.Option;

/** On which paper a PDF is set. */
final class PaperOption {

    @Option(
            names = "--paper",
            paramLabel = "letter|a4",
            defaultValue = "a4",
            description = "Paper of the PDF: letter or a4 (default: ${DEFAULT-VALUE}).")
    Paper paper;
}
