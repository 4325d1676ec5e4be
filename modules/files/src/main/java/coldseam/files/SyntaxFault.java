package coldseam.files;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.primitive.IntLists;
import org.eclipse.collections.api.list.primitive.IntList;
import org.eclipse.collections.api.list.primitive.MutableIntList;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * What is told of a file whose lines are no YAML or JSON: the line that is wrong, which may stand before the one at which the reader
 * gave up, and how to mend it, for people who have never written either.
 */
final class SyntaxFault {

    /** What the reader was in when it met the end of something else: a bracket or a quote that was opened before. */
    private static final String OPENED = "while (parsing a flow|scanning a quoted).*";

    private static final String ELSE = "check the indentation, colons, brackets and quotes here and just above";

    private static final Pattern GLUED_DASH = Pattern.compile("-[\\[{\\p{L}\"'].*");
    private static final Pattern GLUED_COLON = Pattern.compile("(- )?[^:,\"'\\[{]+:[^\\s:/].*");
    private static final Pattern OPEN = Pattern.compile("[\\[{].*");
    private static final Pattern TWO_COLONS = Pattern.compile("(- )?[^:\"'\\[{]+: [^\"'\\[{]*:( .*|$)");

    private final String file;
    private final List<String> lines;

    private SyntaxFault(String file, String text) {
        this.file = file;
        this.lines = text.lines().toList();
    }

    /** The fault that a reader's exception tells of. */
    static Fault of(String file, String text, JsonProcessingException broken) {
        SyntaxFault told = new SyntaxFault(file, text);
        if (broken.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            // The exception's own location may lie a little before what its text says.
            return told.of(marked);
        }
        JsonLocation at = broken.getLocation();
        String said = broken.getOriginalMessage().lines().findFirst().orElse("");
        return said.contains("comment")
                ? told.fault(line(at), column(at), "JSON has no comments", "remove it, or write YAML")
                : told.fault(line(at), column(at), said.replaceFirst("\\.$", ""), ELSE);
    }

    private static int line(JsonLocation at) {
        return at == null ? 1 : Math.max(1, at.getLineNr());
    }

    private static int column(JsonLocation at) {
        return at == null ? 1 : Math.max(1, at.getColumnNr());
    }

    private Fault of(MarkedYAMLException broken) {
        int line = broken.getProblemMark().getLine() + 1;
        int column = broken.getProblemMark().getColumn() + 1;
        Mark begun = broken.getContextMark();
        String context = String.valueOf(broken.getContext());
        if (begun != null && begun.getLine() + 1 < line && context.matches(OPENED)) {
            return fault(
                    begun.getLine() + 1,
                    begun.getColumn() + 1,
                    "what is opened here is not closed, or has a comma too few, before line " + line,
                    "close the bracket or the quote");
        }
        String said = broken.getProblem()
                .replaceFirst(" \\(Do not use.*", "")
                .replaceFirst("\\.$", "")
                .replace("<stream end>", "the end of the file");
        if (said.contains("TAB")) {
            return column <= indent(line) + 1
                    ? fault(line, column, "a tab sets the line in", "set it in with spaces")
                    : fault(line, column, "a tab stands where a value begins", "write a space in its place");
        }
        if (said.startsWith("found character")) {
            return fault(line, column, "no value begins with this character", "put the text in quotes");
        }
        if (said.startsWith("expected ',' or")) {
            return fault(line, column, "a comma or a closing bracket is missing before this", "write it");
        }
        if (said.startsWith("expected <block end>")) {
            return misplaced(line, column);
        }
        if (said.startsWith("mapping values")) {
            return colon(line, column, said);
        }
        if (said.contains("expected ':'")) {
            return begun == null ? fault(line, column, said, ELSE) : noKey(begun.getLine() + 1);
        }
        return fault(line, column, said, ELSE);
    }

    /** A line that neither goes on with the lines above nor ends them. */
    private Fault misplaced(int line, int column) {
        if (GLUED_DASH.matcher(text(line)).matches()) {
            return glued(line);
        }
        int indent = indent(line);
        IntList above = indentsAbove(line);
        if (column == indent + 1 && above.size() > 1 && !above.contains(indent)) {
            return new Fault(
                    new Position(file, line, column),
                    "the syntax is broken: the line is set in as no line above it",
                    spaces(indent),
                    above.makeString(" or ") + " spaces",
                    "set it in like the lines that it stands beside");
        }
        return text(line).startsWith("- ") && column == indent + 1
                ? fault(line, column, "a list's line stands among keys", "remove its dash, or set it in under its key")
                : fault(
                        line,
                        column,
                        "what stands here does not go on with what stands before it",
                        "set what belongs together in alike; a text in quotes ends at its second quote, a bracket at the one"
                                + " that closes it");
    }

    /** A colon where a value had begun. */
    private Fault colon(int line, int column, String said) {
        String text = text(line);
        if (GLUED_DASH.matcher(text).matches()) {
            return glued(line);
        }
        int above = lineAbove(line);
        String before = text(above);
        if (above > 0 && GLUED_DASH.matcher(before).matches()) {
            return glued(above);
        }
        if (above > 0 && !before.contains(": ") && !before.endsWith(":") && indent(above) == indent(line)) {
            return noKey(above);
        }
        if (GLUED_COLON.matcher(text).matches()) {
            return noKey(line);
        }
        if (TWO_COLONS.matcher(text).matches()) {
            return fault(
                    line, column, "the line has a second colon", "put a text that holds a colon in quotes: \"a: b\"");
        }
        if (above > 0 && indent(above) < indent(line) && !before.endsWith(":")) {
            return fault(
                    line,
                    indent(line) + 1,
                    "the line is set in under line " + above + ", which has its value already",
                    "set it in by " + spaces(indent(above)) + " to stand beside that line");
        }
        return fault(line, column, said, ELSE);
    }

    /** A line that gives no key, or a list's without its dash. */
    private Fault noKey(int line) {
        String text = text(line);
        int column = indent(line) + 1;
        if (OPEN.matcher(text).matches()) {
            return fault(line, column, "the line has neither a key nor a dash", "begin an item of a list with \"- \"");
        }
        return GLUED_COLON.matcher(text).matches()
                ? fault(line, column, "no space stands after the colon", "write a space after it: key: value")
                : fault(line, column, "the line has no key, with a colon after it", "write it as key: value");
    }

    private Fault glued(int line) {
        return fault(line, indent(line) + 1, "no space stands after the dash", "write a space after it: - …");
    }

    /** By how many spaces the lines above are set in beside which this one may stand. */
    private IntList indentsAbove(int line) {
        MutableIntList open = IntLists.mutable.empty();
        for (int above = lineAbove(line); above > 0; above = lineAbove(above)) {
            if (open.isEmpty() || indent(above) < open.getLast()) {
                open.add(indent(above));
            }
        }
        return open.reverseThis();
    }

    /** The last line before this one that holds more than a remark; 0 where there is none. */
    private int lineAbove(int line) {
        int above = line - 1;
        while (above > 0 && (text(above).isEmpty() || text(above).startsWith("#"))) {
            above--;
        }
        return above;
    }

    private static String spaces(int count) {
        return count == 1 ? "1 space" : count + " spaces";
    }

    private int indent(int line) {
        String text = line < 1 || line > lines.size() ? "" : lines.get(line - 1);
        return text.length() - text.stripLeading().length();
    }

    /** Without what sets it in, and its remark. */
    private String text(int line) {
        return line < 1 || line > lines.size()
                ? ""
                : lines.get(line - 1).replaceFirst("\\s#.*", "").strip();
    }

    private Fault fault(int line, int column, String said, String next) {
        return new Fault(new Position(file, line, column), "the syntax is broken: " + said, "", next);
    }
}
