package coldseam.report;

import coldseam.envelope.Site;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.report.pages.DetailSheet;
import coldseam.report.pages.MarkedTemperatures;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** One option of the catalogue as a PDF sheet. */
public final class DetailPdf {

    private DetailPdf() {}

    /**
     * Writes the sheet whole or not at all.
     *
     * @param origin where its layers come from, in words
     * @param site whose indoor air gives the dew point and the mould limit; empty without a house
     * @param tool name and version
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(
            BridgeResult result,
            String origin,
            Optional<Site> site,
            Path path,
            UnitSystem units,
            Paper paper,
            String tool)
            throws IOException {
        AtomicFiles.write(path, bytes(result, origin, site, units, paper, tool));
    }

    /** The sheet's bytes; the same result gives the same ones. */
    public static byte[] bytes(
            BridgeResult result, String origin, Optional<Site> site, UnitSystem units, Paper paper, String tool) {
        String title = result.detail().kind().label() + ": " + result.detail().name();
        String layers = DetailSheet.layers(result.setup()) + " (" + origin + ")";
        DocumentInfo info =
                new DocumentInfo(title, layers, tool, "thermal bridge, detail", (title + layers + units).hashCode());
        try (Flow flow = new Flow(paper, info)) {
            DetailSheet.write(flow, result, layers, MarkedTemperatures.of(site), units);
            return flow.finish(result.detail().id(), tool);
        }
    }
}
