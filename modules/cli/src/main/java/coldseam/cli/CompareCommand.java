package coldseam.cli;

import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.envelope.Retrofit;
import coldseam.options.Comparer;
import coldseam.options.Comparison;
import coldseam.options.Renovation;
import coldseam.options.Stages;
import coldseam.options.Wish;
import coldseam.report.compare.CompareCsv;
import coldseam.report.compare.CompareJson;
import coldseam.report.compare.ComparePdf;
import coldseam.report.compare.CompareSvg;
import coldseam.report.compare.RenovationJson;
import coldseam.report.compare.RenovationPdf;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares a house with the alternatives of its file, or with the house it is to become. */
@Command(
        name = "compare",
        description =
                "Compares what a house file lists as alternatives, each alone and the best sets of all; or two houses,"
                        + " such as a house as it was found and as it is to become, stage by stage.",
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Mixin
    final HouseOptions options;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "AFTER",
            description = "House file of what it is to become: the two are compared, in the order of building.")
    Optional<Path> after;

    @Option(
            names = "--order",
            paramLabel = "MEASURE",
            split = ",",
            description = "With AFTER: the order of building, measure by measure, such as"
                    + " \"windows and doors,brick wall\"; build-ups by their names. Without it that of AFTER's own"
                    + " retrofit: order.")
    List<String> order = List.of();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "PDF to write.")
    Optional<Path> output;

    @Option(
            names = "--svg",
            paramLabel = "FILE",
            description = "The front of cost against heat loss as a picture; with AFTER the stages.")
    Optional<Path> svg;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "Each option alone, for a spreadsheet; with AFTER each part that changes.")
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

    @Mixin
    PaperOption pages;

    CompareCommand(Terminal terminal, Workshop workshop, Optional<Path> usual) {
        this.terminal = terminal;
        this.options = new HouseOptions(terminal, workshop, usual);
    }

    @Override
    public Integer call() {
        MutableList<Path> written = Lists.mutable.empty();
        Lists.immutable.of(output, svg, csv, json).forEach(each -> each.ifPresent(written::add));
        Outputs.refuse(
                Lists.immutable.of(options.house).newWithAll(after.stream().toList()), written.toImmutable());
        if (after.isPresent()) {
            return becomes(after.get());
        }
        if (!order.isEmpty()) {
            throw new RefusedException(
                    "--order needs two houses; name the house file of what it is to become as a second one");
        }
        Wish wish = new Wish(number(budget), number(heatLoss), number(energy));
        Comparison comparison = options.working((shop, progress) -> {
            HouseAudit ready = HouseAudit.of(options.house, shop);
            refuse(ready);
            return Comparer.compare(ready, wish, progress);
        });
        terminal.lines(CompareText.of(comparison, options.units()));
        write(
                () -> ComparePdf.bytes(comparison, options.units(), pages.of(options.units())),
                () -> CompareSvg.text(comparison, options.units()),
                () -> CompareCsv.text(comparison, options.units()),
                () -> CompareJson.text(comparison));
        return Exit.of(comparison.described()).code();
    }

    private Integer becomes(Path second) {
        if (budget != null || heatLoss != null || energy != null) {
            throw new RefusedException(
                    "--budget, --heat-loss and --energy are about the alternatives of one house; leave them out, or the"
                            + " second house file");
        }
        Renovation renovation = options.working((shop, progress) -> {
            HouseAudit before = HouseAudit.of(options.house, shop);
            HouseAudit later = HouseAudit.of(second, shop);
            return Stages.compare(before, later, ordered(before, later), progress);
        });
        terminal.lines(RenovationText.of(renovation, options.units()));
        write(
                () -> RenovationPdf.bytes(renovation, options.units(), pages.of(options.units())),
                () -> CompareSvg.text(renovation, options.units()),
                () -> RenovationPdf.csv(renovation, options.units()),
                () -> RenovationJson.text(renovation));
        return Exit.of(renovation.after()).code();
    }

    /** Writes what was asked for. */
    private void write(Supplier<byte[]> pdf, Supplier<String> drawing, Supplier<String> table, Supplier<String> data) {
        MutableList<Outputs.Document> documents = Lists.mutable.empty();
        output.ifPresent(path -> documents.add(new Outputs.Document(path, pdf)));
        svg.ifPresent(path -> documents.add(new Outputs.Document(path, () -> Told.bytes(drawing.get()))));
        csv.ifPresent(path -> documents.add(new Outputs.Document(path, () -> Told.bytes(table.get()))));
        json.ifPresent(path -> documents.add(new Outputs.Document(path, () -> Told.bytes(data.get()))));
        if (documents.notEmpty()) {
            terminal.out().println();
        }
        Outputs.write(terminal, documents);
    }

    /** The order that was asked for, else that of the second file. */
    private ImmutableList<String> ordered(HouseAudit before, HouseAudit later) {
        if (order.isEmpty()) {
            return later.house().retrofit().map(Retrofit::order).orElse(Lists.immutable.empty());
        }
        ImmutableList<String> measures = Stages.measures(before, later);
        ImmutableList<String> asked = Lists.immutable.withAll(order).collect(String::strip);
        ImmutableList<String> unknown = asked.reject(measures::contains);
        if (unknown.notEmpty()) {
            throw new RefusedException(
                    unknown.collect(each -> "--order: a measure by which the houses differ is needed;"
                            + " got \"" + each + "\"; "
                            + (measures.isEmpty()
                                    ? "there is none, since the shapes differ or nothing does; leave --order out"
                                    : "one of " + measures.makeString(", ") + "; correct it")));
        }
        return asked;
    }

    private static OptionalDouble number(Double given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given);
    }

    private void refuse(HouseAudit ready) {
        MutableList<String> faults = Lists.mutable.empty();
        if (ready.alternatives().decisions().isEmpty()
                && ready.house().asFound().isEmpty()) {
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
        RefusedException.throwIfAny(faults);
    }

    private static void positive(Double given, String name, String unit, MutableList<String> faults) {
        if (given != null && !(given > 0 && Double.isFinite(given))) {
            faults.add(name + ": a number above 0 " + unit + " is needed; got " + given + "; correct it");
        }
    }
}
