package coldseam.junctions;

import coldseam.conduction.Point;
import coldseam.envelope.Role;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** Draws compositions, to be looked at while details are written. */
final class Pictures {

    private Pictures() {}

    /** Writes one SVG with a picture of each named detail file, laid on the sample layers. */
    public static void main(String... arguments) throws IOException {
        StringBuilder page = new StringBuilder("<html><body style='margin:0;font:12px sans-serif;background:#fff'>");
        for (int i = 1; i < arguments.length; i++) {
            Path file = Path.of(arguments[i]);
            page.append(
                            "<div style='display:inline-block;width:390px;margin:2px;vertical-align:top;border:1px solid #ccc'><b>")
                    .append(file.getFileName())
                    .append("</b><br>");
            try {
                Detail detail = DetailFile.read(file.toString(), Files.readString(file));
                Composition composition = Composer.compose(
                        detail,
                        (Boolean.getBoolean("framed")
                                ? Samples.framedSetup(detail.junction())
                                : Samples.setup(detail.junction())));
                page.append(svg(composition));
                page.append("<br>")
                        .append(
                                composition.notes().makeString("; ").length() > 400
                                        ? ""
                                        : composition.notes().makeString("; "));
            } catch (RuntimeException failed) {
                page.append("<pre style='white-space:pre-wrap;color:red'>")
                        .append(failed)
                        .append("</pre>");
            }
            page.append("</div>");
        }
        Files.writeString(Path.of(arguments[0]), page.append("</body></html>"));
    }

    static String svg(Composition composition) {
        double size = 380;
        double reach = Double.parseDouble(System.getProperty("reach", "0.9"));
        double groundHalf = Double.parseDouble(System.getProperty("ground", "1.3"));
        boolean ground = composition.notes().anySatisfy(note -> note.startsWith("The ground"));
        double half = ground ? groundHalf : reach;
        double scale = size / (2 * half);
        StringBuilder out = new StringBuilder(
                String.format(Locale.ROOT, "<svg width='%.0f' height='%.0f' style='background:#eef6ff'>", size, size));
        for (SectionPlan.Piece piece : composition.plan().pieces()) {
            out.append(polygon(piece.outline().corners(), half, scale, colour(piece), piece.solved()));
        }
        for (var boundary : composition.heatFlow().boundaries()) {
            String colour = boundary.environment().equals("indoor")
                    ? "red"
                    : boundary.environment().equals("outdoor") ? "blue" : "green";
            out.append("<polyline fill='none' stroke-width='3' opacity='0.6' stroke='")
                    .append(colour)
                    .append("' points='");
            for (Point p : boundary.path()) {
                out.append(String.format(Locale.ROOT, "%.1f,%.1f ", (p.x() + half) * scale, (half - p.y()) * scale));
            }
            out.append("'/>");
        }
        return out.append("</svg>").toString();
    }

    private static String polygon(
            ImmutableList<Point> corners, double half, double scale, String colour, boolean solved) {
        StringBuilder out = new StringBuilder("<polygon stroke='#333' stroke-width='0.6' fill='" + colour + "'"
                + (solved ? "" : " fill-opacity='0.4' stroke-dasharray='3 2'") + " points='");
        for (Point p : corners) {
            out.append(String.format(Locale.ROOT, "%.1f,%.1f ", (p.x() + half) * scale, (half - p.y()) * scale));
        }
        return out + "'/>";
    }

    private static String colour(SectionPlan.Piece piece) {
        String name = piece.material().name();
        if (name.equals("ground")) {
            return "#c9b79a";
        }
        if (piece.material().insulates()) {
            return "#ffe27a";
        }
        if (name.contains("concrete")) {
            return "#a9a9a9";
        }
        if (name.contains("wood") || name.contains("timber")) {
            return "#d9a566";
        }
        if (name.contains("brick")) {
            return "#cf7a5a";
        }
        return piece.role() == Role.FINISH ? "#eeeeee" : piece.role() == Role.CLADDING ? "#8fa3ad" : "#bfd0c0";
    }
}
