package coldseam.envelope;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a house's audit is handed in with, in the file's own words; nothing is computed from it.
 *
 * @param client for whom
 * @param preparedBy by whom
 * @param date of the submittal, as the file says: no clock is read
 * @param revision such as "B"
 */
public record Submittal(
        Optional<String> address,
        Optional<String> client,
        Optional<String> preparedBy,
        Optional<LocalDate> date,
        Optional<String> revision) {

    /** Of a file that says nothing of it. */
    public static final Submittal NONE =
            new Submittal(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
