package coldseam.envelope.file.house;

import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Position;
import coldseam.files.SourceNode;
import java.text.Normalizer;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.set.ImmutableSet;

/** What of a house file, and of the details beside it, is printed beside the verdict: it does not speak in the verdict's place. */
public final class PageText {

    private static final int LONGEST = 120;

    /** Words alone: details have such ids, with hyphens, and files such names. */
    private static final Pattern VERDICT =
            Pattern.compile("(?<![\\w-])(un[- ]?broken|verdicts?)(?![\\w-])", Pattern.CASE_INSENSITIVE);

    /** Praise of the whole: only who may give it says so, over a name of his own (judgement). */
    private static final Pattern PRAISE = Pattern.compile(
            "\\b(certif(ied|icate|ication)|approved|compliant|(all|every) (seams?|layers?|limits?|rules?) (pass|passes|passed|keeps?|kept)"
                    + "|(no|zero|0|without( any)?|free (of|from)) ((thermal|cold)[ -])?(gap|bridge|finding|defect|fault)s?"
                    + "|((thermal|cold)[ -])?(gap|bridge|defect)[ -]?free)\\b|[\u2713\u2714\u2611\u2705]",
            Pattern.CASE_INSENSITIVE);

    /** Said of the whole, as the audit says it; boards run unbroken past a seam in many a detail. */
    private static final Pattern OF_THE_WHOLE = Pattern.compile(
            "(?<![\\w-])verdicts?(?![\\w-])|(?:^|[.:;,(!]) *(?:all |wholly )?un[- ]?broken *(?:[.:;,)!]|$)",
            Pattern.CASE_INSENSITIVE);

    /** What a detail's file, or a section drawn by hand, is called by and looks like. */
    private static final ImmutableSet<String> OF_DETAIL = Sets.immutable.of("section", "name", "looks-like");

    private static final Pattern LINE = Pattern.compile("[\\r\\n\\u2028\\u2029]");

    private static final Pattern MARKS = Pattern.compile("\\p{M}");

    private static final Pattern GAP = Pattern.compile("[\\s_]+");

    /** A letter that stands alone before another that does. */
    private static final Pattern SPACED = Pattern.compile("(?<!\\w)(\\w) (?=\\w(?!\\w))");

    private PageText() {}

    /** As who reads it takes it: without accents, with one gap for each, and words that are spaced out closed up. */
    private static String read(String text) {
        String plain =
                MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        return SPACED.matcher(GAP.matcher(plain).replaceAll(" ")).replaceAll("$1");
    }

    /** Adds a fault where a text that stands over the verdict has several lines, or is long. */
    static void line(Located<String> text, Faults faults) {
        boolean lines = LINE.matcher(text.value()).find();
        if (lines || text.value().length() > LONGEST) {
            faults.add(
                    text.place(),
                    "what stands over the verdict is one line",
                    lines ? "several lines" : text.value().length() + " characters",
                    "one line of up to " + LONGEST + " characters",
                    lines ? "write it on one line" : "shorten it");
        }
    }

    /** Adds a fault where a text that stands over the verdict says of the house what an audit or an authority would. */
    static void praise(Located<String> text, Faults faults) {
        String read = read(text.value());
        if (PRAISE.matcher(read).find()
                && !VERDICT.matcher(read).find()
                && !LINE.matcher(text.value()).find()) {
            faults.add(
                    text.place(),
                    "what stands over the verdict does not praise the house",
                    '"' + text.value() + '"',
                    "a name, a place, a person or a revision",
                    "take out that it is certified, approved, compliant or free of gaps: nothing here is a certificate");
        }
    }

    /** Adds a fault for each name, source or remark of a file that reads like a verdict, and for each name of several lines. */
    static void judging(SourceNode node, Faults faults) {
        if (node instanceof SourceNode.Scalar scalar) {
            judging(scalar.text(), scalar.place(), faults);
        } else if (node instanceof SourceNode.Sequence list) {
            list.items().forEach(item -> judging(item, faults));
        } else if (node instanceof SourceNode.Mapping mapping) {
            mapping.entries().forEach(entry -> {
                judging(entry.key(), entry.place(), faults);
                if (LINE.matcher(entry.key()).find()) {
                    faults.add(entry.place(), "a name is one line", "several lines", "write it on one line");
                }
                judging(entry.value(), faults);
                if (entry.key().equals("name") && entry.value() instanceof SourceNode.Scalar name) {
                    praising(name, "a name does not praise the house", faults);
                }
            });
        }
    }

    /** Adds a fault for each text of a house's own detail that reads like a verdict on the house, or praises it by its name. */
    public static void judgingDetail(SourceNode node, Faults faults) {
        if (node instanceof SourceNode.Scalar scalar) {
            if (OF_THE_WHOLE.matcher(read(scalar.text())).find()) {
                judged(scalar.text(), scalar.place(), faults);
            }
        } else if (node instanceof SourceNode.Sequence list) {
            list.items().forEach(item -> judgingDetail(item, faults));
        } else if (node instanceof SourceNode.Mapping mapping) {
            mapping.entries().forEach(entry -> {
                judgingDetail(entry.value(), faults);
                if (OF_DETAIL.contains(entry.key()) && entry.value() instanceof SourceNode.Scalar text) {
                    praising(text, "what a detail is called and looks like does not praise the house", faults);
                }
            });
        }
    }

    private static void praising(SourceNode.Scalar text, String asked, Faults faults) {
        if (PRAISE.matcher(read(text.text())).find()) {
            faults.add(
                    text.place(),
                    asked,
                    '"' + text.text() + '"',
                    "what it is and how it is built",
                    "take out that it is certified, approved, compliant or free of gaps: nothing here is a certificate");
        }
    }

    private static void judging(String text, Position place, Faults faults) {
        if (VERDICT.matcher(text).find() || VERDICT.matcher(read(text)).find()) {
            judged(text, place, faults);
        }
    }

    private static void judged(String text, Position place, Faults faults) {
        faults.add(
                place,
                "what stands beside the verdict says nothing of it",
                '"' + text.strip().replaceAll("\\s+", " ") + '"',
                "a name, a place, a person, a source or a remark",
                "take the words unbroken and verdict out: the audit says what it finds");
    }
}
