package coldseam.cli;

import coldseam.audit.house.ToolVersion;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Accuracy;
import coldseam.envelope.PointKind;
import coldseam.files.Nearest;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.DefaultPsi;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.DetailPdf;
import coldseam.report.JunctionSvg;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws one option and says how it is built. */
@Command(
        name = "detail",
        description =
                "Draws one option of the catalogue between given layers, and says how it is built, how it fails and"
                        + " what to photograph.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class DetailCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final DetailLines lines;
    private final Workshop workshop;

    @Parameters(
            paramLabel = "ID",
            description = "The option's id, of a junction or a point, as \"coldseam catalogue\" lists it.")
    String id;

    @Mixin
    LayerOptions between;

    @Option(names = "--svg", paramLabel = "OUT", description = "The drawing as a picture.")
    Optional<Path> svg;

    @Option(names = "--pdf", paramLabel = "OUT", description = "The drawing with its words as a sheet.")
    Optional<Path> pdf;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "Paper of the sheet (default: ${DEFAULT-VALUE}).")
    Paper paper;

    @Option(
            names = "--units",
            paramLabel = "us|si",
            defaultValue = "si",
            description = "Units to print: us or si (default: ${DEFAULT-VALUE}).")
    UnitSystem units;

    DetailCommand(Terminal terminal, Workshop workshop) {
        this.terminal = terminal;
        this.lines = new DetailLines(terminal);
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws IOException {
        MutableList<Path> written = Lists.mutable.empty();
        svg.ifPresent(written::add);
        pdf.ifPresent(written::add);
        Outputs.refuse(between.house.orElse(Path.of("")), written.toImmutable());
        PointLayers pointLayers = PointLayers.of(between, workshop);
        Optional<Detail> point = pointLayers.catalogue().find(id).filter(each -> each.kind() instanceof PointKind);
        if (point.isPresent()) {
            new PointWords(terminal, units).write(point.get(), pointLayers, workshop.computer(), svg, pdf, paper);
            written.forEach(path -> terminal.out().println("Written: " + path));
            return Exit.UNBROKEN.code();
        }
        Layers layers = between.layers(workshop);
        Detail detail = layers.catalogue().find(id).orElseThrow(() -> unknown(layers));
        ImmutableList<Layers.Place> places = layers.places(detail.junction());
        if (places.isEmpty()) {
            throw new RefusedException(
                    Lists.immutable.of("--house: it has no " + detail.kind().label() + ", which \"" + id
                            + "\" is for; name build-ups by --first and --second, or leave --house out"));
        }
        JunctionResult result = BridgeComputers.computer(Accuracy.standard())
                .compute(detail, places.getFirst().setup());
        words(result, places.getFirst(), places.size());
        if (svg.isPresent()) {
            if (layers.site().isPresent()) {
                JunctionSvg.write(result, layers.site().get(), svg.get(), units);
            } else {
                JunctionSvg.write(result, svg.get(), units);
            }
        }
        if (pdf.isPresent()) {
            DetailPdf.write(
                    result,
                    places.getFirst().origin(),
                    layers.site(),
                    pdf.get(),
                    units,
                    paper,
                    "coldseam " + ToolVersion.read());
        }
        written.forEach(path -> terminal.out().println("Written: " + path));
        return Exit.UNBROKEN.code();
    }

    private RefusedException unknown(Layers layers) {
        return new RefusedException(Lists.immutable.of("ID: got \"" + id + "\"; "
                + Nearest.to(id, layers.catalogue().details().collect(Detail::id))
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("run \"coldseam catalogue\" for the options there are")));
    }

    private void words(JunctionResult result, Layers.Place place, int places) {
        Detail detail = result.detail();
        lines.fold(detail.kind().label() + ": " + detail.name() + " ("
                + detail.rank().name().toLowerCase(Locale.ROOT) + " option)");
        lines.fold("Between " + Layers.words(place.setup()) + " (" + place.origin() + ").");
        if (places > 1) {
            lines.fold("The house has this kind of junction between " + places
                    + " different sets of layers or angles; this is the"
                    + " first. \"coldseam catalogue --house … --kind …\" lists them all.");
        }
        lines.say("");
        lines.row(
                "psi external",
                psi(result.psiExternal().lower(), result.psiExternal().upper()));
        lines.row(
                "psi internal",
                psi(result.psiInternal().lower(), result.psiInternal().upper()));
        DefaultPsi.beside(result)
                .ifPresent(tabulated -> lines.row(
                        "ISO 14683 " + tabulated.code(),
                        units.format(tabulated.external(), Dimension.LINEAR_TRANSMITTANCE) + " external, "
                                + units.number(tabulated.internal(), Dimension.LINEAR_TRANSMITTANCE) + " internal; "
                                + DefaultPsi.CAUTION));
        lines.row(
                "fRsi",
                String.format(Locale.ROOT, "%.2f, with Rsi 0.25 m²·K/W, an estimate", result.temperatureFactor()));
        lines.row(
                "pen line",
                result.penLine().unbroken()
                        ? "unbroken; neck "
                                + units.format(
                                        Math.floor(result.penLine().neck() * 1000 + 1e-3) / 1000, Dimension.THICKNESS)
                                + String.format(
                                        Locale.ROOT,
                                        ", %.0f %% of the thinner insulation",
                                        100 * result.penLine().share())
                        : "broken");
        lines.row(
                "weakest path",
                String.format(
                        Locale.ROOT,
                        "%s, %.0f %% of what the surface beside it has",
                        units.format(result.weakestPath().resistance(), Dimension.RESISTANCE),
                        100 * result.weakestPath().ratio()));
        lines.say("");
        lines.fold("Looks like: " + detail.looksLike());
        lines.list("Order of building", detail.order(), true);
        lines.connections(detail.connections());
        lines.list("How it fails", detail.failures(), false);
        lines.list("Photograph before it is covered", detail.photographs(), false);
        lines.list("Cautions", detail.cautions(), false);
        lines.list("Simplified", result.notes(), false);
        detail.cost().ifPresent(cost -> lines.row("cost", cost.sourced(units)));
        lines.list("Parameters", detail.parameters().collect(this::parameter), false);
    }

    private String parameter(DetailParameter parameter) {
        return parameter.name() + " " + units.format(parameter.value(), Dimension.LENGTH) + ", from "
                + units.format(parameter.least(), Dimension.LENGTH) + " to "
                + units.format(parameter.most(), Dimension.LENGTH) + ": " + parameter.says();
    }

    private String psi(double lower, double upper) {
        return units.interval(lower, upper, Dimension.LINEAR_TRANSMITTANCE);
    }
}
