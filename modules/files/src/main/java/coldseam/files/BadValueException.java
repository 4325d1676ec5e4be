package coldseam.files;

import coldseam.files.quantity.Phrase;
import java.util.Optional;

/**
 * Thrown by a file record's constructor for what its annotations cannot say; the binder reports it at the place of the
 * component named.
 */
public final class BadValueException extends RuntimeException {
    private final String component;
    private final transient Optional<Position> place;
    private final String asked;
    private final transient Phrase got;
    private final transient Phrase allowed;
    private final String next;

    /**
     * The parts of a {@link Fault}.
     *
     * @param component of the record, at whose value the fault lies; empty for the whole record
     */
    public BadValueException(String component, String asked, String got, String allowed, String next) {
        this(component, asked, Phrase.of(got), Phrase.of(allowed), next);
    }

    /** As above, with values among its words. */
    public BadValueException(String component, String asked, Phrase got, Phrase allowed, String next) {
        this(component, Optional.empty(), asked, got, allowed, next);
    }

    /** As above, where the next step says what is allowed. */
    public BadValueException(String component, String asked, String got, String next) {
        this(component, asked, got, "", next);
    }

    /** As above, with values among its words. */
    public BadValueException(String component, String asked, Phrase got, String next) {
        this(component, asked, got, Phrase.of(""), next);
    }

    /** As above, at a place of its own. */
    public BadValueException(Position place, String asked, Phrase got, Phrase allowed, String next) {
        this("", Optional.of(place), asked, got, allowed, next);
    }

    private BadValueException(
            String component, Optional<Position> place, String asked, Phrase got, Phrase allowed, String next) {
        super(asked + "; got " + got + "; allowed: " + allowed + "; " + next);
        this.component = component;
        this.place = place;
        this.asked = asked;
        this.got = got;
        this.allowed = allowed;
        this.next = next;
    }

    String component() {
        return component;
    }

    /** The fault, at this place unless it brings one along. */
    public Fault at(Position otherwise) {
        return new Fault(place.orElse(otherwise), asked, got, allowed, next);
    }
}
