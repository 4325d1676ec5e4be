package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.audit.house.Workshop;
import coldseam.envelope.shell.Shell;
import coldseam.junctions.Keeping;
import coldseam.report.AuditCsv;
import coldseam.report.AuditJson;
import coldseam.report.PdfReport;
import coldseam.report.house.HouseDrawing;
import coldseam.report.pdf.Paper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Audits a house and writes its documents. */
@Command(
        name = "audit",
        description = "Audits a house and writes a PDF: each gap in its insulation, air, water and vapour control.",
        mixinStandardHelpOptions = true)
final class AuditCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    final HouseOptions options;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "PDF to write.")
    Path output;

    @Option(names = "--json", paramLabel = "FILE", description = "The same audit as data.")
    Optional<Path> json;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description =
                    "The seams, for a spreadsheet; surfaces, windows and doors, the heat-loss table, the points, seams that"
                            + " touch, the corners and the assemblies' moisture go beside it, into FILE-surfaces.csv,"
                            + " FILE-openings.csv, FILE-heat-loss.csv, FILE-points.csv, FILE-pairs.csv, FILE-vertices.csv"
                            + " and FILE-moisture.csv.")
    Optional<Path> csv;

    @Mixin
    PaperOption pages;

    AuditCommand(Terminal terminal, Workshop workshop, Optional<Path> usual) {
        this.terminal = terminal;
        this.options = new HouseOptions(terminal, workshop, usual);
    }

    @Override
    public Integer call() {
        MutableList<Path> written = Lists.mutable.of(output);
        json.ifPresent(written::add);
        csv.ifPresent(path -> {
            // A folder is refused by its own name; the top one has no name that others could stand beside.
            if (Files.isDirectory(path)) {
                written.add(path);
            } else {
                Lists.immutable.of(AuditCsv.values()).forEach(table -> written.add(beside(path, table)));
            }
        });
        Outputs.refuse(options.house, written.toImmutable());
        Timings timings = Timings.when(options.timed);
        ImmutableList<String> asked = Lists.immutable.of(
                "audit", options.units().name(), paper().name(), "" + json.isPresent(), "" + csv.isPresent());
        Told told = options.tell(timings, asked, PdfReport::prepare, this::telling);
        timings.begin("write");
        // First, so that what was found is told though a file cannot be written.
        terminal.lines(told.lines());
        terminal.out().println();
        Outputs.write(
                terminal,
                written.zip(told.documents()).collect(each -> new Outputs.Document(each.getOne(), each::getTwo)));
        options.say(timings);
        return told.code();
    }

    /** Begins the house's views at once: one core alone plans what is to be solved, and both are busy while it is. */
    private BiFunction<Audit, Keeping, Told> telling(Shell shell) {
        // Not forked: a caller that is itself one of a pool's few workers would wait for what it alone could do.
        CompletableFuture<HouseDrawing.Views> views = CompletableFuture.supplyAsync(() -> HouseDrawing.Views.of(shell));
        return (audit, drawn) -> told(audit, drawn, views::join);
    }

    /** With the documents in the order in which they are written. */
    private Told told(Audit audit, Keeping drawn, Supplier<HouseDrawing.Views> views) {
        MutableList<byte[]> documents =
                Lists.mutable.of(PdfReport.bytes(audit, options.units(), paper(), drawn, views));
        json.ifPresent(path -> documents.add(Told.bytes(AuditJson.text(audit))));
        csv.ifPresent(path -> {
            for (AuditCsv table : AuditCsv.values()) {
                documents.add(Told.bytes(table.text(audit, options.units())));
            }
        });
        return new Told(
                Exit.of(audit).code(), new VerdictText(audit, options.units()).brief(), documents.toImmutable());
    }

    private Paper paper() {
        return pages.of(options.units());
    }

    private static Path beside(Path csv, AuditCsv table) {
        String name = csv.getFileName().toString();
        return table.suffix().isEmpty()
                ? csv
                : csv.resolveSibling(name.replaceFirst("\\.[^.]*$", "") + table.suffix() + ".csv");
    }
}
