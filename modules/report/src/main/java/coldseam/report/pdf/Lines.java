package coldseam.report.pdf;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Text broken into lines of a given width. */
final class Lines {

    /** Size of sub- and superscripts to the line's. */
    private static final double SCRIPT = 0.72;

    private static final double DOWN = -0.18;
    private static final double UP = 0.36;

    /** Units that stay on the line of their number, and the fraction of a mixed one. */
    private static final Pattern UNIT = Pattern.compile(
            "(\\d+/\\d+|W|W/.*|mm|m|m²|m³|K|K·d|°C|°F|°F·d|°|%|ft|ft²|ft³|in|Btu.*|kWh|kBtu|h·ft.*|m²·K/W|kPa|lbf/in²)[.,;:)]*");

    private Lines() {}

    /**
     * A piece of a line.
     *
     * @param text as set
     * @param type how
     * @param rise points above the baseline
     * @param width points
     */
    record Fragment(String text, Type type, double rise, double width) {}

    record Line(ImmutableList<Fragment> fragments) {
        double width() {
            return fragments.sumOfDouble(Fragment::width);
        }

        /**
         * Draws it.
         *
         * @param more whether a line follows: a blank keeps its words apart for those who hear or search the text
         */
        void draw(Canvas canvas, double left, double right, double baseline, Align align, boolean more) {
            double x =
                    align == Align.LEFT ? left : align == Align.RIGHT ? right - width() : (left + right - width()) / 2;
            for (Fragment fragment : fragments) {
                boolean apart = more
                        && fragment == fragments.getLast()
                        && !fragment.text.endsWith("-")
                        && !fragment.text.endsWith("/");
                canvas.text(
                        apart ? fragment.text + " " : fragment.text,
                        x,
                        baseline + fragment.rise,
                        fragment.type,
                        Align.LEFT);
                x += fragment.width;
            }
        }
    }

    /**
     * Breaks at spaces, after hyphens and slashes, and inside words that are wider than a line.
     *
     * @param width points, of a line
     */
    static ImmutableList<Line> wrap(Rich rich, Style style, double width) {
        List<Line> lines = new ArrayList<>();
        List<Fragment> line = new ArrayList<>();
        double used = 0;
        for (ImmutableList<Fragment> word : words(rich, style)) {
            if (word.getFirst().text.equals(Rich.NEW_LINE)) {
                lines.add(closed(line));
                line = new ArrayList<>();
                used = 0;
                continue;
            }
            double wordWidth = word.sumOfDouble(Fragment::width);
            boolean blank = word.allSatisfy(f -> f.text.isBlank());
            if (used + wordWidth > width + 1e-6 && !blank) {
                if (used > 0) {
                    lines.add(closed(line));
                    line = new ArrayList<>();
                    used = 0;
                }
                for (Fragment fragment : word) {
                    for (Fragment part : parts(fragment, width)) {
                        if (used > 0 && used + part.width > width + 1e-6) {
                            lines.add(closed(line));
                            line = new ArrayList<>();
                            used = 0;
                            if (part.text.isBlank()) {
                                continue;
                            }
                        }
                        line.add(part);
                        used += part.width;
                    }
                }
            } else if (!blank || used > 0) {
                line.addAll(word.castToList());
                used += wordWidth;
            }
        }
        if (!line.isEmpty() || lines.isEmpty()) {
            lines.add(closed(line));
        }
        return Lists.immutable.ofAll(lines);
    }

    /** The line without blanks at its end, neighbours of one look joined. */
    private static Line closed(List<Fragment> fragments) {
        List<Fragment> out = new ArrayList<>();
        int end = fragments.size();
        while (end > 0 && fragments.get(end - 1).text.isBlank()) {
            end--;
        }
        int from = 0;
        while (from < end) {
            Fragment first = fragments.get(from);
            StringBuilder text = new StringBuilder(first.text);
            int to = from + 1;
            while (to < end && fragments.get(to).type.equals(first.type) && fragments.get(to).rise == first.rise) {
                text.append(fragments.get(to).text);
                to++;
            }
            out.add(to == from + 1 ? first : fragment(text.toString(), first.type, first.rise));
            from = to;
        }
        return new Line(Lists.immutable.ofAll(out));
    }

    private static ImmutableList<ImmutableList<Fragment>> words(Rich rich, Style style) {
        List<ImmutableList<Fragment>> words = new ArrayList<>();
        List<Fragment> word = new ArrayList<>();
        for (Rich.Run run : rich.runs()) {
            Type type = new Type(
                    run.face().orElse(style.type().face()),
                    run.level() == 0 ? style.type().size() : style.type().size() * SCRIPT,
                    run.ink().orElse(style.type().ink()));
            double rise = style.type().size() * (run.level() == 0 ? 0 : run.level() < 0 ? DOWN : UP);
            if (run.text().equals(Rich.NEW_LINE)) {
                finish(word, words);
                words.add(Lists.immutable.of(new Fragment(Rich.NEW_LINE, type, 0, 0)));
                continue;
            }
            String set = FontMetrics.shared().settable(run.text());
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < set.length(); i++) {
                char c = set.charAt(i);
                boolean breaks = c == ' ' && !glues(set, i);
                if (breaks) {
                    flush(text, type, rise, word);
                    finish(word, words);
                }
                text.append(c);
                if (breaks || hyphenBreaks(set, i)) {
                    flush(text, type, rise, word);
                    finish(word, words);
                }
            }
            flush(text, type, rise, word);
        }
        finish(word, words);
        return Lists.immutable.ofAll(words);
    }

    /** Whether the space at i stands between a number and its unit or its fraction. */
    private static boolean glues(String text, int i) {
        if (i == 0 || !Character.isDigit(text.charAt(i - 1))) {
            return false;
        }
        int end = text.indexOf(' ', i + 1);
        return UNIT.matcher(text.substring(i + 1, end < 0 ? text.length() : end))
                .matches();
    }

    private static boolean hyphenBreaks(String text, int i) {
        return (text.charAt(i) == '-' || text.charAt(i) == '–')
                && i > 0
                && i + 1 < text.length()
                && Character.isLetter(text.charAt(i - 1))
                && Character.isLetter(text.charAt(i + 1));
    }

    private static void flush(StringBuilder text, Type type, double rise, List<Fragment> word) {
        if (text.length() > 0) {
            word.add(fragment(text.toString(), type, rise));
            text.setLength(0);
        }
    }

    private static void finish(List<Fragment> word, List<ImmutableList<Fragment>> words) {
        if (!word.isEmpty()) {
            words.add(Lists.immutable.ofAll(word));
            word.clear();
        }
    }

    private static Fragment fragment(String text, Type type, double rise) {
        return new Fragment(text, type, rise, FontMetrics.shared().width(text, type));
    }

    /** A word wider than a line in pieces: a number before its unit, else wherever the line is full. */
    private static ImmutableList<Fragment> parts(Fragment fragment, double width) {
        if (fragment.width <= width) {
            return Lists.immutable.of(fragment);
        }
        int unit = fragment.text.lastIndexOf(' ');
        if (unit > 0) {
            return Lists.immutable
                    .of(fragment.text.substring(0, unit), " ", fragment.text.substring(unit + 1))
                    .flatCollect(text -> parts(fragment(text, fragment.type, fragment.rise), width));
        }
        List<Fragment> parts = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (int c : fragment.text.codePoints().toArray()) {
            String longer = text + Character.toString(c);
            if (text.length() > 0 && FontMetrics.shared().width(longer, fragment.type) > width) {
                parts.add(fragment(text.toString(), fragment.type, fragment.rise));
                text.setLength(0);
            }
            text.appendCodePoint(c);
        }
        parts.add(fragment(text.toString(), fragment.type, fragment.rise));
        return Lists.immutable.ofAll(parts);
    }
}
