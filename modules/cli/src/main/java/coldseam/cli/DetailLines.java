package coldseam.cli;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.Control;
import coldseam.envelope.DefaultPsi;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.NearestDefaultPsi;
import coldseam.junctions.PointResult;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Photograph;
import coldseam.junctions.detail.Upkeep;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.words.Phrases;
import coldseam.report.words.Print;
import coldseam.report.words.UpkeepWords;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** The lines in which a detail, of a junction, a point or a corner, is told in a terminal. */
record DetailLines(Terminal terminal, UnitSystem units) {

    /** Before what is said of one option. */
    static final String UNDER = "          ";

    void say(String line) {
        terminal.out().println(line.stripTrailing());
    }

    void fold(String text) {
        fold("", text, "  ");
    }

    /** Text folded to the terminal's width, after a mark on the first line and another on each further one. */
    void fold(String first, String text, String further) {
        terminal.fold(text, first, further);
    }

    void row(String label, String text) {
        fold(Format.of("  %-14s ", label), text, " ".repeat(17));
    }

    /** Folded under an option. */
    void under(String text) {
        fold(UNDER, text, UNDER);
    }

    /** One option of its kind, at the head of what is said of it. */
    void option(Detail detail) {
        fold(Format.of("  %-7s %s: ", Words.word(detail.rank()), detail.id()), detail.name(), UNDER);
    }

    /** A detail at the head of its sheet, and what it is between. */
    void head(Detail detail, String where) {
        fold(detail.kinds().collect(BridgeKind::label).makeString(", ") + ": " + detail.name() + " ("
                + Words.word(detail.rank()) + " option)");
        fold(Phrases.capital(where));
    }

    /** A titled list; nothing where it is empty. */
    void list(String title, ImmutableList<String> lines, boolean numbered) {
        if (lines.isEmpty()) {
            return;
        }
        say("");
        say(title);
        for (int i = 0; i < lines.size(); i++) {
            String mark = numbered ? Format.of("%3d. ", i + 1) : "  -  ";
            fold(mark, units.told(lines.get(i)), "     ");
        }
    }

    /** psi or chi, and what a carpenter or a rater asks of it next. */
    void numbers(BridgeResult result) {
        say("");
        Print print = new Print(units);
        if (result instanceof JunctionResult junction) {
            row("psi external", print.bounds(junction.psiExternal(), junction.dimension()));
            row("psi internal", print.bounds(junction.psiInternal(), junction.dimension()));
            NearestDefaultPsi.of(junction).ifPresent(this::tabulated);
        } else {
            PointResult point = (PointResult) result;
            row("chi, each", print.bounds(point.chi(), point.dimension()) + ", proven for the shape as drawn");
            row("U beside it", units.format(point.transmittance(), Dimension.TRANSMITTANCE));
        }
        factor(result.temperatureFactor());
        if (result instanceof JunctionResult junction) {
            ways(junction);
        }
    }

    private void tabulated(DefaultPsi tabulated) {
        row(
                "ISO 14683 " + tabulated.code(),
                units.format(tabulated.external(), Dimension.LINEAR_TRANSMITTANCE) + " external, "
                        + units.number(tabulated.internal(), Dimension.LINEAR_TRANSMITTANCE) + " internal; "
                        + DefaultPsi.CAUTION);
    }

    private void ways(JunctionResult junction) {
        row(
                "pen line",
                junction.penLine().unbroken()
                        ? "unbroken; neck " + new Print(units).neck(junction.penLine())
                                + Format.of(
                                        ", %.0f %% of the thinner insulation",
                                        100 * junction.penLine().share())
                        : "broken");
        row(
                "weakest path",
                Format.of(
                        "%s, %.0f %% of what the surface beside it has",
                        units.format(junction.weakestPath().resistance(), Dimension.RESISTANCE),
                        100 * junction.weakestPath().ratio()));
    }

    void factor(double temperatureFactor) {
        row("fRsi", units.told(Format.of("%.2f, with Rsi 0.25 m²·K/W, an estimate", temperatureFactor)));
    }

    /** The lengths a house may change, with their ranges. */
    void parameters(ImmutableList<DetailParameter> parameters) {
        if (parameters.isEmpty()) {
            return;
        }
        say("");
        say("Lengths a house may change");
        parameters.forEach(each -> row(
                each.name(),
                length(each.value()) + ", from " + length(each.least()) + " to " + length(each.most()) + ": "
                        + units.told(each.says())));
    }

    private String length(double metres) {
        boolean fine = units == UnitSystem.SI && Math.abs(metres * 1000 - Math.rint(metres * 1000)) > 1e-6;
        return fine ? Format.of("%.1f mm", 1000 * metres) : units.format(metres, Dimension.THICKNESS);
    }

    /** What a detail says of itself, whatever it is for. */
    void told(Detail detail) {
        say("");
        fold("Looks like: " + units.told(detail.looksLike()));
        fold("Suits: " + detail.suits().words() + ".");
        list("Order of building", detail.order(), true);
        connections(detail.connections());
        list("How it fails", detail.failures(), false);
        list("Photograph before it is covered", detail.photographs().collect(Photograph::shows), false);
        list(UpkeepWords.HEADING, UpkeepWords.of(detail, Upkeep.of(detail)), false);
        list("Cautions", detail.cautions(), false);
    }

    /** How each control layer a detail speaks of passes. */
    private void connections(ImmutableMap<Control, Connection> connections) {
        say("");
        say("How the control layers connect");
        for (Control control : Control.values()) {
            if (connections.containsKey(control)) {
                row(Words.word(control), word(connections.get(control)));
            }
        }
    }

    private static String word(Connection connection) {
        return connection == Connection.NOT_SHOWN ? "not shown; counts as unknown" : Words.word(connection);
    }
}
