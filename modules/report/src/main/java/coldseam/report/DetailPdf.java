package coldseam.report;

import coldseam.envelope.Site;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexResult;
import coldseam.report.pages.CornerSheet;
import coldseam.report.pages.DetailSheet;
import coldseam.report.pages.MarkedTemperatures;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Paper;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Options of the catalogue as PDF sheets: one, or many to leaf through. */
public final class DetailPdf {

    private DetailPdf() {}

    public sealed interface Sheet {

        /** The option. */
        Detail detail();

        /** What it lies on, in words. */
        String layers();

        /** Sets it on pages of its own. */
        void write(Flow flow, Optional<Site> site, UnitSystem units);

        /** Its drawing alone, as a picture. */
        String svg(Optional<Site> site, UnitSystem units);

        private String title() {
            return detail().kind().label() + ": " + detail().name();
        }
    }

    /**
     * Of a junction or a point.
     *
     * @param origin where its layers come from, in words
     */
    public record BridgeSheet(BridgeResult result, String origin) implements Sheet {

        @Override
        public Detail detail() {
            return result.detail();
        }

        @Override
        public String layers() {
            return DetailSheet.layers(result.setup()) + " (" + origin + ")";
        }

        @Override
        public void write(Flow flow, Optional<Site> site, UnitSystem units) {
            DetailSheet.write(flow, result, layers(), MarkedTemperatures.of(site), units);
        }

        @Override
        public String svg(Optional<Site> site, UnitSystem units) {
            return DetailSvg.text(result, MarkedTemperatures.of(site), units);
        }
    }

    /**
     * Of a corner's own detail.
     *
     * @param layers in words
     */
    public record CornersSheet(VertexResult result, String layers) implements Sheet {

        @Override
        public Detail detail() {
            return result.corner().orElseThrow().detail();
        }

        @Override
        public void write(Flow flow, Optional<Site> site, UnitSystem units) {
            CornerSheet.write(flow, result, layers, units);
        }

        @Override
        public String svg(Optional<Site> site, UnitSystem units) {
            return BodySvg.text(result.surface(), units);
        }
    }

    /**
     * The bytes of one sheet; the same result gives the same ones.
     *
     * @param site whose indoor air gives the dew point and the mould limit; empty without a house
     * @param tool name and version
     */
    public static byte[] bytes(Sheet sheet, Optional<Site> site, UnitSystem units, Paper paper, String tool) {
        return bytes(Lists.immutable.of(sheet), sheet.title(), sheet.detail().id(), site, units, paper, tool);
    }

    /**
     * The bytes of several sheets, each on a page of its own; the same results give the same ones.
     *
     * @param head at the top of each page
     */
    public static byte[] bytes(
            ImmutableList<? extends Sheet> sheets,
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
                sheet.write(flow, site, units);
            }
            return flow.finish(head, tool);
        }
    }
}
