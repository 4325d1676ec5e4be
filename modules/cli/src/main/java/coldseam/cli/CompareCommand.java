package coldseam.cli;

import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.files.AtomicFiles;
import coldseam.options.Comparer;
import coldseam.options.Comparison;
import coldseam.options.Wish;
import coldseam.report.compare.CompareCsv;
import coldseam.report.compare.CompareJson;
import coldseam.report.compare.ComparePdf;
import coldseam.report.compare.CompareSvg;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.MutableList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Compares a house with the alternatives of its file. */
@Command(
        name = "compare",
        description = "Compares what a house file lists as alternatives: each alone, and the best sets of all.",
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Workshop workshop;

    @Mixin
    final HouseOptions options;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "PDF to write.")
    Optional<Path> output;

    @Option(names = "--svg", paramLabel = "FILE", description = "The front of cost against heat loss, as a picture.")
    Optional<Path> svg;

    @Option(names = "--csv", paramLabel = "FILE", description = "Each option alone, for a spreadsheet.")
    Optional<Path> csv;

    @Option(names = "--json", paramLabel = "FILE", description = "The comparison as data.")
    Optional<Path> json;

    @Option(
            names = "--budget",
            paramLabel = "AMOUNT",
            description = "Asks for the least loss that costs no more than this above what is described.")
    Double budget;

    @Option(
            names = "--heat-loss",
            paramLabel = "W/K",
            description = "Asks for the least cost that keeps H_T to this many W/K.")
    Double heatLoss;

    @Option(
            names = "--energy",
            paramLabel = "KWH",
            description = "Asks for the least cost that keeps the loss of a year to this many kWh, by degree days.")
    Double energy;

    @Option(
            names = "--paper",
            paramLabel = "letter|a4",
            defaultValue = "a4",
            description = "Paper of the PDF: letter or a4 (default: ${DEFAULT-VALUE}).")
    Paper paper;

    CompareCommand(Terminal terminal, Workshop workshop, Optional<Path> usual) {
        this.terminal = terminal;
        this.options = new HouseOptions(usual);
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws IOException {
        MutableList<Path> written = Lists.mutable.empty();
        Lists.immutable.of(output, svg, csv, json).forEach(each -> each.ifPresent(written::add));
        Outputs.refuse(options.house, written.toImmutable());
        Wish wish = new Wish(number(budget), number(heatLoss), number(energy));
        Comparison comparison = options.working(workshop, terminal, (shop, progress) -> {
            HouseAudit ready = HouseAudit.of(options.house, shop);
            refuse(ready);
            return Comparer.compare(ready, wish, progress, () -> false);
        });
        if (output.isPresent()) {
            ComparePdf.write(comparison, output.get(), options.units, paper);
        }
        if (svg.isPresent()) {
            CompareSvg.write(comparison, svg.get(), options.units);
        }
        if (csv.isPresent()) {
            AtomicFiles.write(csv.get(), CompareCsv.text(comparison, options.units));
        }
        if (json.isPresent()) {
            AtomicFiles.write(json.get(), CompareJson.text(comparison));
        }
        CompareText.of(comparison, options.units).forEach(terminal.out()::println);
        if (written.notEmpty()) {
            terminal.out().println();
        }
        written.forEach(path -> terminal.out().println("Written: " + path));
        return Exit.of(comparison.described()).code();
    }

    private static OptionalDouble number(Double given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given);
    }

    private void refuse(HouseAudit ready) {
        MutableList<String> faults = Lists.mutable.empty();
        if (ready.alternatives().decisions().isEmpty()) {
            faults.add(options.house
                    + ": the house file lists no alternatives; add the key alternatives, or name the house"
                    + " file of what it is to become as a second one");
        }
        positive(heatLoss, "--heat-loss", "W/K", faults);
        positive(energy, "--energy", "kWh", faults);
        if (budget != null && !(Double.isFinite(budget) && Math.abs(budget) < 1e12)) {
            faults.add("--budget: an amount is needed; got " + budget + "; write a number in the house's currency");
        }
        if (energy != null && ready.house().site().heatingDegreeDays().isEmpty()) {
            faults.add("--energy: a year's loss needs degree days; add heating-degree-days under site");
        }
        if (faults.notEmpty()) {
            throw new RefusedException(faults.toImmutable());
        }
    }

    private static void positive(Double given, String name, String unit, MutableList<String> faults) {
        if (given != null && !(given > 0 && Double.isFinite(given))) {
            faults.add(name + ": a number above 0 " + unit + " is needed; got " + given + "; correct it");
        }
    }
}
