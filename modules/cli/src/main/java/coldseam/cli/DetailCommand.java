package coldseam.cli;

import coldseam.audit.house.ToolVersion;
import coldseam.audit.house.Workshop;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.CornerKind;
import coldseam.envelope.PointKind;
import coldseam.files.AtomicFiles;
import coldseam.files.Nearest;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexResult;
import coldseam.report.DetailPdf;
import java.io.IOException;
import java.nio.file.Path;
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
    private final Workshop workshop;

    @Parameters(
            paramLabel = "ID",
            description = "The option's id, of a junction, a point or a corner, as \"coldseam catalogue\" lists it.")
    String id;

    @Mixin
    LayerOptions between;

    @Option(names = "--svg", paramLabel = "OUT", description = "The drawing as a picture.")
    Optional<Path> svg;

    @Option(names = "--pdf", paramLabel = "OUT", description = "The drawing with its words as a sheet.")
    Optional<Path> pdf;

    @Mixin
    PaperOption pages;

    @Mixin
    UnitsOption printed;

    DetailCommand(Terminal terminal, Workshop workshop) {
        this.terminal = terminal;
        this.workshop = workshop;
    }

    @Override
    public Integer call() throws IOException {
        MutableList<Path> written = Lists.mutable.empty();
        svg.ifPresent(written::add);
        pdf.ifPresent(written::add);
        Outputs.refuse(between.house.orElse(Path.of("")), written.toImmutable());
        Layers layers = between.layers(workshop);
        Detail detail = layers.catalogue().find(id).orElseThrow(() -> unknown(layers));
        DetailPdf.Sheet sheet = detail.kind() instanceof CornerKind ? corner(detail, layers) : bridge(detail, layers);
        if (svg.isPresent()) {
            AtomicFiles.write(svg.get(), sheet.svg(layers.site(), units()));
        }
        if (pdf.isPresent()) {
            AtomicFiles.write(
                    pdf.get(),
                    DetailPdf.bytes(
                            sheet, layers.site(), units(), pages.of(units()), "coldseam " + ToolVersion.read()));
        }
        terminal.written(written);
        return Exit.UNBROKEN.code();
    }

    /** Tells of a junction's or a point's, at the first place there is of one of its kinds. */
    private DetailPdf.Sheet bridge(Detail found, Layers layers) {
        Detail detail = found.kinds()
                .collect(found::lookedAtFor)
                .detectOptional(each -> layers.places(each).notEmpty())
                .orElse(found);
        ImmutableList<? extends Layers.Place<?>> places = layers.places(detail);
        if (places.isEmpty()) {
            throw new RefusedException("--house: it has no "
                    + detail.kinds().collect(BridgeKind::label).makeString(" and no ")
                    + (detail.kind() instanceof PointKind ? " under points" : "") + ", which \"" + id
                    + "\" is for; name build-ups by --first and --second, or leave --house out");
        }
        Layers.Place<?> place = places.getFirst();
        BridgeResult result = workshop.computer().compute(place.laid(detail), place.setup());
        words(result, place, places.size());
        return new DetailPdf.BridgeSheet(result, place.origin());
    }

    /** Tells of a corner's. */
    private DetailPdf.Sheet corner(Detail detail, Layers layers) {
        if (!between.notNamed()) {
            throw new RefusedException("\"" + id + "\" is a corner's detail: it is computed between"
                    + " typical build-ups; leave out --house, --first and --second, and run \"coldseam audit\" for a"
                    + " house's own corners");
        }
        CornerLines lines = new CornerLines(
                new DetailLines(terminal, units()),
                layers.catalogue(),
                between.build,
                workshop.vertices().orElseThrow());
        VertexResult result = lines.compute(detail);
        lines.words(detail, result);
        return CornerLines.sheet(result);
    }

    private RefusedException unknown(Layers layers) {
        ImmutableList<String> all = layers.catalogue().ids();
        return new RefusedException("ID: got \"" + id + "\"; "
                + Nearest.meant(id, all)
                        .orElse("one of " + Nearest.among(id, all) + "; \"coldseam catalogue\" lists them"));
    }

    private UnitSystem units() {
        return printed.of(between.house);
    }

    private void words(BridgeResult result, Layers.Place<?> place, int places) {
        Detail detail = result.detail();
        DetailLines lines = new DetailLines(terminal, units());
        lines.head(detail, place.words() + " (" + place.origin() + ").");
        if (places > 1) {
            lines.fold("The house has this kind of "
                    + (detail.kind() instanceof PointKind
                            ? "point in " + places + " sets"
                            : "junction between " + places + " different sets of layers, angles or steps")
                    + "; this is the first. \"coldseam catalogue --house … --kind …\" lists them all.");
        }
        lines.numbers(result);
        lines.parameters(detail.parameters());
        lines.told(detail);
        lines.list("Simplified", result.notes(), false);
        detail.cost().ifPresent(cost -> lines.row("cost", cost.sourced(units())));
    }
}
