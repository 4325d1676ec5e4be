package coldseam.cli;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Coupling;
import coldseam.conduction.GapPlaces;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.conduction.Solved;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.hand.Drawn;
import coldseam.junctions.hand.DrawnBody;
import coldseam.junctions.hand.DrawnChi;
import coldseam.junctions.hand.DrawnSection;
import coldseam.junctions.hand.SectionJson;
import coldseam.report.BodySvg;
import coldseam.report.SectionSvg;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
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

    /** chi is a small difference of large numbers. */
    private static final double WIDTH_FOR_CHI = 1e-4;

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
            description = "Widest interval allowed, as a share of the coupling (default: 1e-4; of a drawing in three"
                    + " dimensions 3e-4, where chi is asked for 1e-4).")
    Optional<Double> width;

    SectionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (!width.map(share -> share > 0 && share < 1).orElse(true)) {
            throw new RefusedException(
                    "--width: got " + width.get() + "; allowed: more than 0 and less than 1, such as 1e-4");
        }
        MutableList<Path> written = Lists.mutable.empty();
        json.ifPresent(written::add);
        svg.ifPresent(written::add);
        Outputs.refuse(file, written.toImmutable());
        Drawn drawn = Drawn.load(file);
        if (drawn instanceof DrawnSection section) {
            section(section);
        } else {
            body((DrawnBody) drawn);
        }
        terminal.written(written);
        return Exit.UNBROKEN.code();
    }

    private void section(DrawnSection loaded) throws IOException {
        Solution solution = Conduction.solve(
                loaded.section(),
                new Accuracy(
                        width.orElse(Accuracy.standard().relativeWidth()),
                        Accuracy.standard().maximumUnknowns()));
        if (json.isPresent()) {
            AtomicFiles.write(json.get(), SectionJson.write(solution, loaded.unit()));
        }
        if (svg.isPresent()) {
            AtomicFiles.write(svg.get(), SectionSvg.text(solution, UnitSystem.SI));
        }
        print(loaded, solution);
    }

    private void body(DrawnBody loaded) throws IOException {
        Accuracy standard = BodySolver.STANDARD;
        double share = loaded.chi().isPresent() ? WIDTH_FOR_CHI : standard.relativeWidth();
        BodySolution solution =
                BodySolver.solve(loaded.body(), new Accuracy(width.orElse(share), standard.maximumUnknowns()));
        Optional<DrawnChi.Sum> chi = loaded.chi().map(each -> each.of(solution));
        if (json.isPresent()) {
            AtomicFiles.write(json.get(), SectionJson.write(solution, loaded.unit(), chi));
        }
        if (svg.isPresent()) {
            AtomicFiles.write(svg.get(), BodySvg.text(solution, UnitSystem.SI));
        }
        terminal.fold(solution.body().name());
        double unit = loaded.unit();
        numbers(solution, at -> Format.of("(%.4g, %.4g, %.4g)", at.x() / unit, at.y() / unit, at.z() / unit));
        solution.patches()
                .forEach(patch -> say(
                        "mean temperature of patch %s, proven: %s on %.4g m²",
                        patch.name(), amount(patch.mean(), "°C"), patch.area()));
        chi.ifPresent(this::chi);
        closing(solution);
        notes(solution);
    }

    private void chi(DrawnChi.Sum sum) {
        say("chi: %s, the sum of", amount(sum.chi(), "W/K"));
        sum.terms()
                .forEach(term -> terminal.fold(term.what() + ": " + amount(term.value(), "W/K"), "    ", "        "));
    }

    private void print(DrawnSection loaded, Solution solution) {
        terminal.fold(loaded.section().name());
        numbers(solution, at -> place(at, loaded));
        withoutAir(loaded);
        closing(solution);
        ImmutableList<GapPlaces.Place> places = GapPlaces.of(solution, 3);
        if (places.notEmpty()) {
            say(
                    "Most of the intervals' width comes from around %s.",
                    places.collect(each -> place(each.at(), loaded) + Format.of(": %.0f %%", 100 * each.share()))
                            .makeString(", "));
        }
        notes(solution);
    }

    /** Where no heat goes, though the drawing ends there: a cut, or a face that was forgotten. */
    private void withoutAir(DrawnSection loaded) {
        ImmutableList<ImmutableList<Point>> pieces = loaded.withoutAir();
        if (pieces.notEmpty()) {
            say(
                    "No environment, so that no heat goes through: %s.",
                    pieces.collect(piece -> place(piece.getFirst(), loaded) + " to " + place(piece.getLast(), loaded))
                            .makeString(", "));
        }
    }

    private static String place(Point at, DrawnSection loaded) {
        return Format.of("(%.4g, %.4g)", at.x() / loaded.unit(), at.y() / loaded.unit());
    }

    /** Couplings, flows and temperatures. */
    private <P> void numbers(Solved<P> solution, Function<P, String> place) {
        ImmutableList<Coupling> wide = solution.widerThanAsked();
        solution.couplings()
                .forEach(coupling -> say(
                        "L %s - %s: %s%s",
                        coupling.first(),
                        coupling.second(),
                        amount(coupling.value(), solution.couplingUnit()),
                        Double.isFinite(coupling.relativeWidth()) && wide.contains(coupling)
                                ? width(coupling, solution)
                                : ""));
        solution.heatFlows()
                .forEach(flow ->
                        say("heat flow from %s: %s", flow.environment(), amount(flow.value(), solution.flowUnit())));
        solution.surfaces()
                .forEach(surface -> say(
                        "lowest temperature facing %s: %.2f °C at %s",
                        surface.environment(), surface.lowest(), place.apply(surface.at())));
        solution.probes().forEach(probe -> say("at %s: %.3f °C", probe.name(), probe.temperature()));
    }

    private void closing(Solved<?> solution) {
        double moved = Math.max(
                solution.surfaces()
                        .collectDouble(each -> Math.abs(each.change()))
                        .maxIfEmpty(0),
                solution.probes().collectDouble(each -> Math.abs(each.change())).maxIfEmpty(0));
        say("Temperatures are estimates; the last refinement moved them by up to %.2g K.", moved);
        say(
                "%d unknowns, %.2f s%s",
                solution.unknowns(), solution.seconds(), solution.met() ? "" : "; the interval is wider than asked");
    }

    private void notes(Solved<?> solution) {
        solution.notes().forEach(note -> terminal.fold(note, "  ", "  "));
    }

    /** What is said of a coupling whose own interval is wider than asked. */
    private static String width(Coupling coupling, Solved<?> solution) {
        return Format.of(
                "; %.2g of its middle wide, %.2g was asked%s",
                coupling.relativeWidth(),
                solution.accuracy().relativeWidth(),
                solution.met() ? " and holds for the total: give a smaller --width" : "");
    }

    private static String amount(Interval value, String unit) {
        if (value.width() == 0) {
            return Format.of("%.6g %s", value.lower(), unit);
        }
        return Double.isFinite(value.lower()) && Double.isFinite(value.upper())
                ? UnitSystem.significant(value.lower(), value.upper(), DIGITS) + " " + unit
                : "infinite";
    }

    private void say(String format, Object... values) {
        terminal.fold(Format.of(format, values), "  ", "      ");
    }
}
