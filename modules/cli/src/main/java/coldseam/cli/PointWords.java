package coldseam.cli;

import coldseam.audit.house.ToolVersion;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.PointResult;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.PointDocuments;
import coldseam.report.pdf.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** One point detail in the columns of a terminal, and as a picture and a sheet. */
final class PointWords {

    private final Terminal terminal;
    private final DetailLines lines;
    private final UnitSystem units;

    PointWords(Terminal terminal, UnitSystem units) {
        this.terminal = terminal;
        this.lines = new DetailLines(terminal);
        this.units = units;
    }

    /**
     * Computes a detail, says what there is to say of it and draws it where that is asked for.
     *
     * @throws RefusedException where the house has no points of its kind
     */
    void write(
            Detail detail,
            PointLayers layers,
            BridgeComputer computer,
            Optional<Path> svg,
            Optional<Path> pdf,
            Paper paper)
            throws IOException {
        ImmutableList<PointLayers.Place> places = layers.places(detail.point());
        if (places.isEmpty()) {
            throw new RefusedException(
                    Lists.immutable.of("--house: it lists no " + detail.kind().label()
                            + " under points, which \"" + detail.id()
                            + "\" is for; name a build-up by --first, or leave --house out"));
        }
        PointLayers.Place place = places.getFirst();
        PointResult result = computer.compute(place.laid(detail), place.setup());
        words(result, place);
        if (svg.isPresent()) {
            PointDocuments.writeSvg(result, layers.site(), svg.get(), units);
        }
        if (pdf.isPresent()) {
            PointDocuments.writePdf(
                    result, place.origin(), layers.site(), pdf.get(), units, paper, "coldseam " + ToolVersion.read());
        }
    }

    private void words(PointResult result, PointLayers.Place place) {
        Detail detail = result.detail();
        lines.fold(detail.kind().label() + ": " + detail.name() + " ("
                + detail.rank().name().toLowerCase(Locale.ROOT) + " option)");
        lines.fold("Through " + place.setup().host().name() + " (" + place.origin() + ").");
        lines.say("");
        lines.row(
                "chi, each",
                units.interval(result.chi().lower(), result.chi().upper(), Dimension.POINT_TRANSMITTANCE)
                        + ", proven for the shape as drawn");
        lines.row("U beside it", units.format(result.transmittance(), Dimension.TRANSMITTANCE));
        lines.row(
                "fRsi",
                String.format(Locale.ROOT, "%.2f, with Rsi 0.25 m²·K/W, an estimate", result.temperatureFactor()));
        parameters(result);
        lines.say("");
        lines.fold("Looks like: " + detail.looksLike());
        lines.list("Order of building", detail.order(), true);
        lines.connections(detail.connections());
        lines.list("How it fails", detail.failures(), false);
        lines.list("Photograph before it is covered", detail.photographs(), false);
        lines.list("Cautions", detail.cautions(), false);
        lines.list("Simplified", result.notes(), false);
        detail.cost().ifPresent(cost -> lines.row("cost", cost.sourced(units)));
    }

    /** The lengths a house may change, with their ranges. */
    private void parameters(PointResult result) {
        if (result.detail().parameters().isEmpty()) {
            return;
        }
        lines.say("");
        lines.say("Lengths a house may change");
        for (DetailParameter each : result.detail().parameters()) {
            lines.row(
                    each.name(),
                    length(each.value()) + ", from " + length(each.least()) + " to " + length(each.most()) + ": "
                            + each.says());
        }
    }

    private String length(double metres) {
        boolean fine = units == UnitSystem.SI && Math.abs(metres * 1000 - Math.rint(metres * 1000)) > 1e-6;
        return fine ? String.format(Locale.ROOT, "%.1f mm", 1000 * metres) : units.format(metres, Dimension.THICKNESS);
    }
}
