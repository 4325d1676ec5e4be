package coldseam.junctions.language;

import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.QuantityParser;
import coldseam.files.quantity.UnreadableException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MapIterable;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Reads expressions such as {@code wall.insulation.outside - 50 mm} or {@code halfway(deck.inside, deck.outside)}.
 *
 * <p>Names may hold spaces and hyphens; at each place the longest known name is meant, so a minus sign between names
 * wants spaces around it.
 */
public final class ExpressionParser {

    private static final String AMOUNT = "\\d+\\s+\\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?|\\.\\d+";
    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(?:" + AMOUNT + ")\\s*ft\\s+(?:" + AMOUNT + ")\\s*in\\b");
    private static final Pattern LENGTH = Pattern.compile("(?:" + AMOUNT + ")\\s*(?:mm|cm|m|in|ft)\\b");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?|\\.\\d+");
    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}\\d.\\- ]*[\\p{L}\\d]|\\p{L}");

    /** Longest expression, characters; brackets are followed inwards one by one. */
    private static final int LONGEST = 300;

    private final String text;
    private final MapIterable<String, Measured> names;
    private int at;

    private ExpressionParser(String text, MapIterable<String, Measured> names) {
        this.text = text;
        this.names = names;
    }

    /**
     * Reads one expression.
     *
     * @param names every name that may stand in it
     * @throws UnreadableException where it cannot be read
     */
    public static Expression parse(String text, MapIterable<String, Measured> names) {
        if (text.length() > LONGEST) {
            throw new UnreadableException(
                    "an expression is too long",
                    text.length() + " characters",
                    "up to " + LONGEST + " characters",
                    "give its parts names of their own under lines");
        }
        ExpressionParser parser = new ExpressionParser(text, names);
        Expression result = parser.sum();
        parser.skipSpaces();
        if (parser.at < text.length()) {
            throw parser.refused("an operator", "+, -, *, / between lines, lengths and numbers");
        }
        return result;
    }

    private Expression sum() {
        Expression left = product();
        for (char operator = operator("+-"); operator != 0; operator = operator("+-")) {
            Expression right = product();
            left = new Expression.Binary(sumOf(left, operator, right), operator, left, right);
        }
        return left;
    }

    private Measured sumOf(Expression left, char operator, Expression right) {
        Measured a = left.measures();
        Measured b = right.measures();
        if (a == b && !a.isLine()) {
            return a;
        }
        if (a.isLine() && b == Measured.LENGTH) {
            return a;
        }
        if (operator == '+' && a == Measured.LENGTH && b.isLine()) {
            return b;
        }
        if (operator == '-' && a == b) {
            return Measured.LENGTH;
        }
        throw mixed(a, operator, b);
    }

    private Expression product() {
        Expression left = factor();
        for (char operator = operator("*/"); operator != 0; operator = operator("*/")) {
            Expression right = factor();
            left = new Expression.Binary(productOf(left, operator, right), operator, left, right);
        }
        return left;
    }

    private Measured productOf(Expression left, char operator, Expression right) {
        Measured a = left.measures();
        Measured b = right.measures();
        if (!a.isLine() && b == Measured.NUMBER) {
            return a;
        }
        if (operator == '*' && a == Measured.NUMBER && !b.isLine()) {
            return b;
        }
        if (operator == '/' && a == Measured.LENGTH && b == Measured.LENGTH) {
            return Measured.NUMBER;
        }
        throw mixed(a, operator, b);
    }

    private Expression factor() {
        skipSpaces();
        if (taken('-')) {
            Expression of = factor();
            if (of.measures().isLine()) {
                throw mixed(Measured.NUMBER, '-', of.measures());
            }
            return new Expression.Binary(of.measures(), '-', new Expression.Constant(of.measures(), 0), of);
        }
        if (taken('(')) {
            Expression inside = sum();
            wanted(')');
            return inside;
        }
        for (Expression.Function function : Expression.Function.values()) {
            String word = Words.word(function);
            if (text.startsWith(word, at) && text.startsWith("(", at + word.length())) {
                at += word.length() + 1;
                return pick(function);
            }
        }
        return name();
    }

    private Expression pick(Expression.Function function) {
        MutableList<Expression> operands = Lists.mutable.empty();
        do {
            operands.add(sum());
            skipSpaces();
        } while (taken(','));
        wanted(')');
        if (operands.size() < 2 || function == Expression.Function.HALFWAY && operands.size() > 2) {
            throw refused("two operands, after a comma each", "min(a, b), max(a, b) or halfway(a, b)");
        }
        Measured kind = operands.getFirst().measures();
        for (Expression other : operands) {
            if (other.measures() != kind) {
                throw mixed(kind, ',', other.measures());
            }
        }
        return new Expression.Pick(kind, function, operands.toImmutable());
    }

    private Expression name() {
        String longest = "";
        for (String name : names.keysView()) {
            if (name.length() > longest.length() && text.startsWith(name, at) && endsAt(at + name.length())) {
                longest = name;
            }
        }
        if (!longest.isEmpty()) {
            at += longest.length();
            return new Expression.Name(names.get(longest), longest);
        }
        String length = matched(FEET_AND_INCHES, LENGTH);
        if (length != null) {
            return new Expression.Constant(Measured.LENGTH, length(length));
        }
        String number = matched(NUMBER);
        if (number != null) {
            return new Expression.Constant(Measured.NUMBER, Double.parseDouble(number));
        }
        int from = at;
        String word = matched(WORD);
        throw new UnreadableException(
                "a line or a length is needed",
                '"' + (word == null ? text : word) + '"',
                likely(text.substring(from)).makeString(", ") + ", or a length such as 50 mm or 2 in",
                "use one of them, or name your own under lines or parameters");
    }

    private static double length(String written) {
        try {
            return QuantityParser.parse(written, Dimension.LENGTH);
        } catch (UnreadableException bad) {
            throw new UnreadableException(bad.asked(), bad.got(), bad.allowed(), bad.next());
        }
    }

    /** The names that begin with the same word; all where none does. */
    private ImmutableList<String> likely(String wrong) {
        ImmutableList<String> all = names.keysView().toImmutableSortedList();
        int dot = wrong.indexOf('.');
        ImmutableList<String> alike = all.select(name -> dot > 0 && name.startsWith(wrong.substring(0, dot + 1)));
        return alike.isEmpty() ? all : alike;
    }

    private boolean endsAt(int end) {
        return end >= text.length() || !Character.isLetterOrDigit(text.charAt(end)) && text.charAt(end) != '.';
    }

    private String matched(Pattern... patterns) {
        for (Pattern pattern : patterns) {
            Matcher matcher = pattern.matcher(text).region(at, text.length());
            if (matcher.lookingAt()) {
                at = matcher.end();
                return matcher.group();
            }
        }
        return null;
    }

    private char operator(String among) {
        skipSpaces();
        if (at < text.length() && among.indexOf(text.charAt(at)) >= 0) {
            return text.charAt(at++);
        }
        return 0;
    }

    private void wanted(char bracket) {
        skipSpaces();
        if (!taken(bracket)) {
            throw refused("a closing bracket", ")");
        }
    }

    private boolean taken(char wanted) {
        if (at < text.length() && text.charAt(at) == wanted) {
            at++;
            return true;
        }
        return false;
    }

    private void skipSpaces() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private UnreadableException refused(String what, String allowed) {
        return new UnreadableException(
                what + " is needed at character " + (at + 1), '"' + text + '"', allowed, "correct the expression");
    }

    private UnreadableException mixed(Measured a, char operator, Measured b) {
        return new UnreadableException(
                "a line, a length or a number is needed",
                '"' + text + "\", in which " + a.noun() + " and " + b.noun() + " stand around \"" + operator + '"',
                "line ± length, line - line of the same band, number * length, length / number",
                "lines of two bands cannot be mixed: name a length instead");
    }
}
