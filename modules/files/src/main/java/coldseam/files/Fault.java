package coldseam.files;

import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.UnitSystem;

/**
 * What is wrong at one place of a file.
 *
 * @param place where
 * @param asked what was asked
 * @param got the offending value, with its unit; empty where nothing was given
 * @param allowed what is allowed; empty where {@code next} says it all
 * @param next what to do about it; may be empty
 */
public record Fault(Position place, String asked, Phrase got, Phrase allowed, Phrase next)
        implements Comparable<Fault> {

    /** With no value but those that were written. */
    public Fault(Position place, String asked, String got, String allowed, String next) {
        this(place, asked, Phrase.of(got), Phrase.of(allowed), next);
    }

    /** Whose next step says what is allowed. */
    public Fault(Position place, String asked, String got, String next) {
        this(place, asked, got, "", next);
    }

    /** With a next step that says what to write. */
    public Fault(Position place, String asked, Phrase got, Phrase allowed, String next) {
        this(place, asked, got, allowed, Phrase.quoted(next));
    }

    /** One line: {@code file:line:column: what was asked; got …; allowed: …; next step}. */
    public String message() {
        return message(UnitSystem.SI);
    }

    /** The same with its values in a unit system. */
    public String message(UnitSystem units) {
        Phrase out = Phrase.of(": " + asked);
        if (!got.isEmpty()) {
            out = out.and("; got ").and(got);
        }
        if (!allowed.isEmpty()) {
            out = out.and("; allowed: ").and(allowed);
        }
        if (!next.isEmpty()) {
            out = out.and("; ").and(next);
        }
        return place + out.in(units);
    }

    @Override
    public int compareTo(Fault other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : message().compareTo(other.message());
    }
}
