package coldseam.cli;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.GapPlaces;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.hand.SectionFile;
import coldseam.junctions.hand.SectionJson;
import coldseam.report.SectionSvg;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Solves a section drawn by hand. */
@Command(
        name = "section",
        description = "Solves a section drawn by hand: proven intervals of its heat flows, and its coldest points.",
        mixinStandardHelpOptions = true)
final class SectionCommand implements Callable<Integer> {

    /** Significant digits of an interval, at least. */
    private static final int DIGITS = 6;

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "Section file, YAML or JSON.")
    Path file;

    @Option(names = "--json", paramLabel = "OUT", description = "The results as data.")
    Optional<Path> json;

    @Option(
            names = "--svg",
            paramLabel = "OUT",
            description = "The section with its isotherms, and where the intervals' width comes from, as a picture.")
    Optional<Path> svg;

    @Option(
            names = "--width",
            paramLabel = "SHARE",
            defaultValue = "1e-4",
            description = "Widest interval allowed, as a share of the coupling (default: ${DEFAULT-VALUE}).")
    double width;

    SectionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (!(width > 0 && width < 1)) {
            throw new RefusedException(Lists.immutable.of(
                    "--width: got " + width + "; allowed: more than 0 and less than 1, such as 1e-4"));
        }
        MutableList<Path> written = Lists.mutable.empty();
        json.ifPresent(written::add);
        svg.ifPresent(written::add);
        Outputs.refuse(file, written.toImmutable());
        SectionFile loaded = SectionFile.load(file);
        Solution solution = Conduction.solve(
                loaded.section(), new Accuracy(width, Accuracy.standard().maximumUnknowns()));
        if (json.isPresent()) {
            AtomicFiles.write(json.get(), SectionJson.write(solution, loaded.unit()));
        }
        if (svg.isPresent()) {
            SectionSvg.write(solution, svg.get(), UnitSystem.SI);
        }
        print(loaded, solution);
        written.forEach(path -> terminal.out().println("Written: " + path));
        return Exit.UNBROKEN.code();
    }

    private void print(SectionFile loaded, Solution solution) {
        boolean planar = loaded.section().symmetry() == Symmetry.PLANAR;
        Columns.fold(loaded.section().name(), "", "").forEach(terminal.out()::println);
        ImmutableList<Coupling> wide = solution.widerThanAsked();
        solution.couplings()
                .forEach(coupling -> say(
                        "L %s - %s: %s%s",
                        coupling.first(),
                        coupling.second(),
                        amount(coupling.value(), planar ? "W/(m·K)" : "W/K"),
                        Double.isFinite(coupling.relativeWidth()) && wide.contains(coupling)
                                ? width(coupling, solution)
                                : ""));
        solution.heatFlows()
                .forEach(flow ->
                        say("heat flow from %s: %s", flow.environment(), amount(flow.value(), planar ? "W/m" : "W")));
        solution.surfaces()
                .forEach(surface -> say(
                        "lowest temperature facing %s: %.2f °C at (%.4g, %.4g)",
                        surface.environment(),
                        surface.lowest(),
                        surface.at().x() / loaded.unit(),
                        surface.at().y() / loaded.unit()));
        solution.probes().forEach(probe -> say("at %s: %.3f °C", probe.name(), probe.temperature()));
        double moved = Math.max(
                solution.surfaces()
                        .collectDouble(each -> Math.abs(each.change()))
                        .maxIfEmpty(0),
                solution.probes().collectDouble(each -> Math.abs(each.change())).maxIfEmpty(0));
        say("Temperatures are estimates; the last refinement moved them by up to %.2g K.", moved);
        say(
                "%d unknowns, %.2f s%s",
                solution.unknowns(), solution.seconds(), solution.met() ? "" : "; the interval is wider than asked");
        ImmutableList<GapPlaces.Place> places = GapPlaces.of(solution, 3);
        if (places.notEmpty()) {
            say(
                    "Most of the intervals' width comes from around %s.",
                    places.collect(place -> String.format(
                                    Locale.ROOT,
                                    "(%.4g, %.4g): %.0f %%",
                                    place.at().x() / loaded.unit(),
                                    place.at().y() / loaded.unit(),
                                    100 * place.share()))
                            .makeString(", "));
        }
        solution.notes().forEach(note -> Columns.fold(note, "  ", "  ").forEach(terminal.out()::println));
    }

    /** What is said of a coupling whose own interval is wider than asked. */
    private static String width(Coupling coupling, Solution solution) {
        return String.format(
                Locale.ROOT,
                "; %.2g of its middle wide, %.2g was asked%s",
                coupling.relativeWidth(),
                solution.accuracy().relativeWidth(),
                solution.met() ? " and holds for the total: give a smaller --width" : "");
    }

    private static String amount(Interval value, String unit) {
        return Double.isFinite(value.lower()) && Double.isFinite(value.upper())
                ? UnitSystem.significant(value.lower(), value.upper(), DIGITS) + " " + unit
                : "infinite";
    }

    private void say(String format, Object... values) {
        Columns.fold(String.format(Locale.ROOT, format, values), "  ", "      ").forEach(terminal.out()::println);
    }
}
