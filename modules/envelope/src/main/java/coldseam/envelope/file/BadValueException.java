package coldseam.envelope.file;

/**
 * Thrown by a file record's constructor for what its annotations cannot say; the binder reports it at the place of the
 * component named.
 */
public final class BadValueException extends RuntimeException {
    private final String component;
    private final String asked;
    private final String got;
    private final String allowed;
    private final String next;

    /**
     * The parts of a {@link Fault}.
     *
     * @param component of the record, at whose value the fault lies; empty for the whole record
     */
    public BadValueException(String component, String asked, String got, String allowed, String next) {
        super(asked + "; got " + got + "; allowed: " + allowed + "; " + next);
        this.component = component;
        this.asked = asked;
        this.got = got;
        this.allowed = allowed;
        this.next = next;
    }

    String component() {
        return component;
    }

    Fault at(Position place) {
        return new Fault(place, asked, got, allowed, next);
    }
}
