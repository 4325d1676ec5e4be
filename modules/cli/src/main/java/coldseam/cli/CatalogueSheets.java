package coldseam.cli;

import coldseam.audit.house.ToolVersion;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.CornerKind;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexComputing;
import coldseam.report.DetailPdf;
import coldseam.report.pdf.Paper;
import coldseam.report.words.Phrases;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Every option of the kinds asked for on a sheet of its own, from worst to best.
 *
 * @param computer of junctions and points
 * @param corners computes corners, between typical build-ups whatever the layers
 */
record CatalogueSheets(
        Terminal terminal, Layers layers, BridgeComputer computer, VertexComputing corners, UnitSystem units) {

    /**
     * Writes the sheets of the options that fit.
     *
     * @param kinds of junctions, of points or of corners
     * @throws RefusedException where the file cannot be written, or no option fits
     * @throws IOException where writing fails on the way
     */
    void write(ImmutableList<? extends BridgeKind> kinds, String title, Path pdf, Paper paper) throws IOException {
        Outputs.refuse(Path.of(""), Lists.immutable.of(pdf));
        MutableList<Supplier<DetailPdf.Sheet>> all = Lists.mutable.empty();
        kinds.forEach(
                kind -> layers.catalogue().options(kind).forEach(detail -> all.addAllIterable(sheets(kind, detail))));
        ImmutableList<DetailPdf.Sheet> sheets = Lists.immutable.fromStream(
                all.parallelStream().map(CatalogueSheets::fitting).flatMap(Optional::stream));
        if (sheets.isEmpty()) {
            throw new RefusedException(
                    "--pdf: no option of the kinds asked for fits those layers; name other kinds or build-ups");
        }
        AtomicFiles.write(
                pdf,
                DetailPdf.bytes(
                        sheets, title, "catalogue", layers.site(), units, paper, "coldseam " + ToolVersion.read()));
        terminal.out()
                .println(Phrases.count(sheets.size(), "sheet", "sheets")
                        + (sheets.size() < all.size()
                                ? "; " + (all.size() - sheets.size()) + " options do not fit those layers"
                                : ""));
        terminal.written(Lists.immutable.of(pdf));
    }

    /** An option's sheets, one for each place there is of its kind; each is computed when it is asked. */
    private ImmutableList<Supplier<DetailPdf.Sheet>> sheets(BridgeKind kind, Detail detail) {
        if (kind instanceof CornerKind) {
            TypicalBuild build = layers.build();
            return Lists.immutable.of(
                    () -> CornerLines.sheet(CornerLines.compute(detail, build, layers.catalogue(), corners)));
        }
        return layers.places(detail)
                .collect(place -> () ->
                        new DetailPdf.BridgeSheet(computer.compute(place.laid(detail), place.setup()), place.origin()));
    }

    private static Optional<DetailPdf.Sheet> fitting(Supplier<DetailPdf.Sheet> sheet) {
        try {
            return Optional.of(sheet.get());
        } catch (DetailDoesNotFit misfit) {
            return Optional.empty();
        }
    }
}
