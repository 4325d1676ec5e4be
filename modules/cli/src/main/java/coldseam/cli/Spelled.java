package coldseam.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.text.Normalizer;
import java.util.Map;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Writes to a console in the letters that it has, such as those of a code page of Windows: what it has not is spelled by what it
 * has, since a unit with a question mark in it is no unit.
 */
final class Spelled extends FilterWriter {

    /** What does not come apart into plain letters by itself. */
    private static final ImmutableMap<Integer, String> SPELLED = Maps.immutable.ofMap(Map.ofEntries(
            spelled('·', "*"),
            spelled('⋅', "*"),
            spelled('×', "x"),
            spelled('−', "-"),
            spelled('–', "-"),
            spelled('±', "+-"),
            spelled('≤', "<="),
            spelled('≥', ">="),
            spelled('√', "sqrt "),
            spelled('°', "deg "),
            spelled('λ', "lambda"),
            spelled('ψ', "psi"),
            spelled('χ', "chi"),
            spelled('θ', "theta"),
            spelled('ρ', "rho"),
            spelled('μ', "mu"),
            spelled('Σ', "sum"),
            spelled('⁄', "/"),
            spelled('∞', "infinite"),
            spelled('′', "'"),
            spelled('″', "\""),
            spelled('“', "\""),
            spelled('”', "\""),
            spelled('‘', "'"),
            spelled('’', "'"),
            spelled('●', "*"),
            spelled('€', "EUR"),
            spelled('£', "GBP"),
            spelled('ß', "ss"),
            spelled('ø', "o"),
            spelled('Ø', "O"),
            spelled('æ', "ae"),
            spelled('ı', "i"),
            spelled('ł', "l")));

    private final CharsetEncoder letters;

    /** @param console takes bytes in its own letters */
    Spelled(OutputStream console, Charset letters) {
        super(new OutputStreamWriter(console, letters));
        this.letters = letters.newEncoder();
    }

    private static Map.Entry<Integer, String> spelled(char letter, String as) {
        return Map.entry((int) letter, as);
    }

    @Override
    public void write(int character) throws IOException {
        write(Character.toString((char) character));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        write(new String(text, from, length), 0, length);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        String part = text.substring(from, from + length);
        out.write(letters.canEncode(part) ? part : inLetters(part));
    }

    private String inLetters(String text) {
        StringBuilder all = new StringBuilder();
        text.codePoints().forEach(each -> {
            String letter = Character.toString(each);
            all.append(letters.canEncode(letter) ? letter : SPELLED.getIfAbsent(each, () -> plain(letter)));
        });
        return all.toString();
    }

    /**
     * A letter without its accents, a number without its place: é as e, ² as 2, ½ as 1/2, apart from the number before it; one of
     * another script stays unknown.
     */
    private String plain(String letter) {
        String apart = Normalizer.normalize(letter, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
        String fraction = apart.indexOf('⁄') > 0 ? " " : "";
        return letters.canEncode(apart) ? apart : apart.equals(letter) ? "?" : fraction + inLetters(apart);
    }
}
