package coldseam.report;

import coldseam.envelope.Site;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.PointResult;
import coldseam.report.pages.MarkedTemperatures;
import coldseam.report.pages.PointDetailSheet;
import coldseam.report.pdf.DocumentInfo;
import coldseam.report.pdf.Flow;
import coldseam.report.pdf.Paper;
import coldseam.report.section.PointPictures;
import coldseam.report.section.SectionPicture;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A point detail as a PDF sheet and as an SVG picture. */
public final class PointDocuments {

    private PointDocuments() {}

    /**
     * Writes the sheet whole or not at all.
     *
     * @param origin where its layers come from, in words
     * @param site whose indoor air gives the dew point and the mould limit; empty without a house
     * @param tool name and version
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void writePdf(
            PointResult result,
            String origin,
            Optional<Site> site,
            Path path,
            UnitSystem units,
            Paper paper,
            String tool)
            throws IOException {
        AtomicFiles.write(path, pdf(result, origin, site, units, paper, tool));
    }

    /** The sheet's bytes; the same result gives the same ones. */
    public static byte[] pdf(
            PointResult result, String origin, Optional<Site> site, UnitSystem units, Paper paper, String tool) {
        String title = title(result);
        String through = result.setup().host().name() + " (" + origin + ")";
        DocumentInfo info =
                new DocumentInfo(title, through, tool, "thermal bridge, point", (title + through + units).hashCode());
        try (Flow flow = new Flow(paper, info)) {
            PointDetailSheet.write(flow, result, through, limits(site), units);
            return flow.finish(result.detail().id(), tool);
        }
    }

    /**
     * Writes the picture whole or not at all.
     *
     * @param site whose indoor air gives the dew point and the mould limit; empty without a house
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void writeSvg(PointResult result, Optional<Site> site, Path path, UnitSystem units)
            throws IOException {
        AtomicFiles.write(path, svg(result, site, units));
    }

    /** The picture's text. */
    public static String svg(PointResult result, Optional<Site> site, UnitSystem units) {
        return SectionSvg.picture(PointPictures.of(result, limits(site), units), title(result), Optional.empty());
    }

    private static String title(PointResult result) {
        return result.detail().kind().label() + ": " + result.detail().name();
    }

    private static ImmutableList<SectionPicture.Limit> limits(Optional<Site> site) {
        return site.map(MarkedTemperatures::of).orElse(Lists.immutable.empty());
    }
}
