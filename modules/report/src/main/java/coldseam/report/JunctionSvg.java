package coldseam.report;

import coldseam.envelope.Site;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.report.pages.MarkedTemperatures;
import coldseam.report.section.SectionPicture;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** A computed junction as an SVG picture: the drawing of its sheet. */
public final class JunctionSvg {

    private JunctionSvg() {}

    /**
     * Writes the picture whole or not at all.
     *
     * @param site whose indoor air gives the dew point and the mould limit
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(JunctionResult result, Site site, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, text(result, MarkedTemperatures.of(site), units));
    }

    /**
     * Writes the picture without the limits of an indoor air.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(JunctionResult result, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, text(result, Lists.immutable.empty(), units));
    }

    /** The picture's text. */
    public static String text(JunctionResult result, ImmutableList<SectionPicture.Limit> limits, UnitSystem units) {
        return SectionSvg.picture(
                SectionPicture.of(result, limits, units),
                result.detail().kind().label() + ": " + result.detail().name(),
                Optional.empty());
    }
}
