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
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Options of the catalogue as PDF sheets: one, or many to leaf through. */
public final class DetailPdf {

    private DetailPdf() {}

    /**
     * A sheet.
     *
     * @param origin where its layers come from, in words
     */
    public record Sheet(BridgeResult result, String origin) {

        private String title() {
            return result.detail().kind().label() + ": " + result.detail().name();
        }

        private String layers() {
            return DetailSheet.layers(result.setup()) + " (" + origin + ")";
        }
    }

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
        Sheet sheet = new Sheet(result, origin);
        return bytes(Lists.immutable.of(sheet), sheet.title(), result.detail().id(), site, units, paper, tool);
    }

    /**
     * The bytes of several sheets, each on a page of its own; the same results give the same ones.
     *
     * @param title of the document
     * @param head at the top of each page
     */
    public static byte[] bytes(
            ImmutableList<Sheet> sheets,
            String title,
            String head,
            Optional<Site> site,
            UnitSystem units,
            Paper paper,
            String tool) {
        String about = sheets.collect(Sheet::layers).distinct().makeString("; ");
        DocumentInfo info =
                new DocumentInfo(title, about, tool, "thermal bridge, detail", (title + about + units).hashCode());
        try (Flow flow = new Flow(paper, info)) {
            for (Sheet sheet : sheets) {
                DetailSheet.write(flow, sheet.result(), sheet.layers(), MarkedTemperatures.of(site), units);
            }
            return flow.finish(head, tool);
        }
    }
}
