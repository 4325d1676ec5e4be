package coldseam.conduction;

import java.util.Locale;

/** Lengths in messages. */
public final class Figures {

    private Figures() {}

    /** At most six decimals, no zeros at the end. */
    public static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        if (text.charAt(end - 1) == '.') {
            end--;
        }
        text = text.substring(0, end);
        return text.equals("-0") ? "0" : text;
    }
}
