package coldseam.report;

import coldseam.envelope.Site;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.PointResult;
import coldseam.report.pages.MarkedTemperatures;
import coldseam.report.section.SectionPicture;
import coldseam.report.solid.BodyPicture;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A computed detail, of a junction or of a point, as an SVG picture: the drawing of its sheet. */
public final class DetailSvg {

    private DetailSvg() {}

    /**
     * Writes the picture whole or not at all.
     *
     * @param site whose indoor air gives the dew point and the mould limit; empty without a house
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(BridgeResult result, Optional<Site> site, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, text(result, MarkedTemperatures.of(site), units));
    }

    /** The picture's text: the section, or of a point of boxes its three cuts. */
    public static String text(BridgeResult result, ImmutableList<SectionPicture.Limit> limits, UnitSystem units) {
        if (result instanceof PointResult point && point.body().isPresent()) {
            return BodySvg.text(
                    BodyPicture.through(point.body().get(), units),
                    result.detail().kind().label() + ": " + result.detail().name());
        }
        return SectionSvg.picture(
                SectionPicture.of(result, limits, units),
                result.detail().kind().label() + ": " + result.detail().name(),
                Optional.empty());
    }
}
