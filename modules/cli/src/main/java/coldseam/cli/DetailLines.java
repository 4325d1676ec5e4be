package coldseam.cli;

import coldseam.envelope.Control;
import coldseam.junctions.detail.Connection;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/** The lines in which a detail, of a junction or of a point, is told in a terminal. */
record DetailLines(Terminal terminal) {

    void say(String line) {
        terminal.out().println(line);
    }

    void fold(String text) {
        Columns.fold(text, "", "  ").forEach(terminal.out()::println);
    }

    void row(String label, String text) {
        Columns.fold(text, String.format(Locale.ROOT, "  %-14s ", label), " ".repeat(17))
                .forEach(terminal.out()::println);
    }

    /** A titled list; nothing where it is empty. */
    void list(String title, ImmutableList<String> lines, boolean numbered) {
        if (lines.isEmpty()) {
            return;
        }
        say("");
        say(title);
        for (int i = 0; i < lines.size(); i++) {
            String mark = numbered ? String.format(Locale.ROOT, "%3d. ", i + 1) : "  -  ";
            Columns.fold(lines.get(i), mark, "     ").forEach(terminal.out()::println);
        }
    }

    /** How each control layer a detail speaks of passes. */
    void connections(ImmutableMap<Control, Connection> connections) {
        say("");
        say("How the control layers connect");
        for (Control control : Control.values()) {
            if (connections.containsKey(control)) {
                row(control.name().toLowerCase(Locale.ROOT), word(connections.get(control)));
            }
        }
    }

    private static String word(Connection connection) {
        return connection == Connection.NOT_SHOWN
                ? "not shown; counts as unknown"
                : connection.name().toLowerCase(Locale.ROOT);
    }
}
