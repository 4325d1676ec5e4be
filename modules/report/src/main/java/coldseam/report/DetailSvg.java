package coldseam.report;

import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.PointResult;
import coldseam.report.section.SectionPicture;
import coldseam.report.solid.BodyPicture;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A computed detail, of a junction or of a point, as an SVG picture: the drawing of its sheet. */
public final class DetailSvg {

    private DetailSvg() {}

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
