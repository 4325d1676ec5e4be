package coldseam.cli;

import coldseam.audit.house.ToolVersion;
import coldseam.envelope.JunctionKind;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.detail.Detail;
import coldseam.report.DetailPdf;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Every option of the kinds asked for on a sheet of its own, from worst to best. */
final class CatalogueSheets {

    private final Terminal terminal;
    private final Layers layers;
    private final BridgeComputer computer;
    private final UnitSystem units;

    CatalogueSheets(Terminal terminal, Layers layers, BridgeComputer computer, UnitSystem units) {
        this.terminal = terminal;
        this.layers = layers;
        this.computer = computer;
        this.units = units;
    }

    /** An option between some layers. */
    private record Laid(Layers.Place<?> place, Detail detail) {}

    /**
     * Writes the sheets of the options that fit.
     *
     * @throws RefusedException where the file cannot be written, or no option fits
     * @throws IOException where writing fails on the way
     */
    void write(ImmutableList<JunctionKind> kinds, Path pdf, Paper paper) throws IOException {
        Outputs.refuse(Path.of(""), Lists.immutable.of(pdf));
        MutableList<Laid> all = Lists.mutable.empty();
        for (JunctionKind kind : kinds) {
            for (Layers.Place<?> place : layers.places(kind)) {
                layers.catalogue().options(kind).forEach(detail -> all.add(new Laid(place, detail)));
            }
        }
        ImmutableList<DetailPdf.Sheet> sheets =
                Lists.immutable.fromStream(all.parallelStream().map(this::sheet).flatMap(Optional::stream));
        if (sheets.isEmpty()) {
            throw new RefusedException(Lists.immutable.of(
                    "--pdf: no option of the kinds asked for fits those layers; name other kinds or build-ups"));
        }
        AtomicFiles.write(
                pdf,
                DetailPdf.bytes(
                        sheets,
                        "Catalogue of junction details",
                        "catalogue",
                        layers.site(),
                        units,
                        paper,
                        "coldseam " + ToolVersion.read()));
        terminal.out()
                .println(sheets.size() + " sheets"
                        + (sheets.size() < all.size()
                                ? "; " + (all.size() - sheets.size()) + " options do not fit those layers"
                                : ""));
        terminal.out().println("Written: " + pdf);
    }

    private Optional<DetailPdf.Sheet> sheet(Laid laid) {
        try {
            BridgeResult result = computer.compute(
                    laid.place().laid(laid.detail()), laid.place().setup());
            return Optional.of(new DetailPdf.Sheet(result, laid.place().origin()));
        } catch (DetailDoesNotFit misfit) {
            return Optional.empty();
        }
    }
}
