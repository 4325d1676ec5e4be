package coldseam.report.pdf;

import coldseam.report.drawing.Face;
import coldseam.report.drawing.Ink;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Text with its runs.
 *
 * @param runs in reading order
 */
public record Rich(ImmutableList<Run> runs) {

    /**
     * A run of one look.
     *
     * @param text as written
     * @param face cut; the style's own where empty
     * @param ink colour; the style's own where empty
     * @param level 0 on the line, -1 subscript, 1 superscript
     */
    record Run(String text, Optional<Face> face, Optional<Ink> ink, int level) {}

    private static final Pattern SIGNS = Pattern.compile("\\bfRsi\\b|\\bH_T\\b|\\bL2D\\b");

    /** The run that ends a line. */
    static final String NEW_LINE = "\n";

    /** The end of a line. */
    public static Rich newLine() {
        return of(NEW_LINE);
    }

    /** Text as it stands; nothing in it is markup, so names of the house file go here. */
    public static Rich of(String text) {
        return new Rich(Lists.immutable.of(new Run(text, Optional.empty(), Optional.empty(), 0)));
    }

    /** Semibold text as it stands. */
    public static Rich strong(String text) {
        return of(text).with(Face.SEMIBOLD);
    }

    /** Text of our own with {@code _{…}} for subscripts and {@code *…*} for semibold. */
    public static Rich marked(String text) {
        Rich out = new Rich(Lists.immutable.empty());
        boolean strong = false;
        int at = 0;
        while (at < text.length()) {
            if (text.startsWith("_{", at)) {
                int end = text.indexOf('}', at);
                out = out.plus(run(text.substring(at + 2, end), strong, -1));
                at = end + 1;
            } else if (text.charAt(at) == '*') {
                strong = !strong;
                at++;
            } else {
                int end = at;
                while (end < text.length() && text.charAt(end) != '*' && !text.startsWith("_{", end)) {
                    end++;
                }
                out = out.plus(run(text.substring(at, end), strong, 0));
                at = end;
            }
        }
        return out;
    }

    /** Text as it stands, the trade's signs in it set as signs: fRsi, H_T, L2D. */
    public static Rich trade(String text) {
        Rich out = new Rich(Lists.immutable.empty());
        Matcher sign = SIGNS.matcher(text);
        int at = 0;
        while (sign.find()) {
            String whole = sign.group();
            String low = whole.startsWith("H_") ? whole.substring(2) : whole.substring(1);
            out = out.plus(text.substring(at, sign.start()))
                    .plus(run(whole.substring(0, 1), false, 0))
                    .plus(run(low, false, -1));
            at = sign.end();
        }
        return out.plus(text.substring(at));
    }

    private static Rich run(String text, boolean strong, int level) {
        return new Rich(Lists.immutable.of(
                new Run(text, strong ? Optional.of(Face.SEMIBOLD) : Optional.empty(), Optional.empty(), level)));
    }

    /** This, then the other. */
    public Rich plus(Rich other) {
        return new Rich(runs.newWithAll(other.runs));
    }

    /** This, then plain text. */
    public Rich plus(String text) {
        return plus(of(text));
    }

    /** All of it in one cut. */
    public Rich with(Face face) {
        return new Rich(runs.collect(r -> new Run(r.text, Optional.of(face), r.ink, r.level)));
    }

    /** All of it in one colour. */
    public Rich with(Ink ink) {
        return new Rich(runs.collect(r -> new Run(r.text, r.face, Optional.of(ink), r.level)));
    }

    /** The bare text. */
    public String plain() {
        return runs.collect(Run::text).makeString("");
    }
}
