package coldseam.files;

import coldseam.files.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** In which units whoever wrote a file measures: whoever writes feet is to be answered in feet. */
public final class WrittenIn {

    private static final Pattern COMMENT = Pattern.compile("(?m)(?:^|\\s)#.*$");

    // No area, no volume and nothing per length. A quotation mark behind a number may end a text, but not one before
    // another number.
    private static final Pattern FEET =
            Pattern.compile("\\d(?:\\s*(?:ft|feet|foot|in|inch|inches)\\b(?![²³^/])|'\\s?\\d)");
    private static final Pattern METRES = Pattern.compile("\\d\\s*(?:mm|cm|m)\\b(?![²³^/])");

    private WrittenIn() {}

    /**
     * US where more lengths of the file are in feet and inches than in metres, else SI; SI where it cannot be read, too. It is not
     * parsed: a run that has its answer kept takes less time than that.
     */
    public static UnitSystem of(Path path) {
        try {
            String text = COMMENT.matcher(Files.readString(path)).replaceAll("");
            return FEET.matcher(text).results().count()
                            > METRES.matcher(text).results().count()
                    ? UnitSystem.US
                    : UnitSystem.SI;
        } catch (IOException unreadable) {
            return UnitSystem.SI;
        }
    }
}
