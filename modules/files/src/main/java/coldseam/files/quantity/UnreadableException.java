package coldseam.files.quantity;

/**
 * A quantity, or an expression of quantities, that cannot be read: what was asked, what was got, what is allowed, and the next
 * step. The reader of the file adds the place.
 */
public final class UnreadableException extends RuntimeException {
    private final String asked;
    private final String got;
    private final String allowed;
    private final String next;

    /** What its accessors say, in their order. */
    public UnreadableException(String asked, String got, String allowed, String next) {
        super(asked + "; got " + got + "; allowed: " + allowed + "; " + next);
        this.asked = asked;
        this.got = got;
        this.allowed = allowed;
        this.next = next;
    }

    /** What was asked. */
    public String asked() {
        return asked;
    }

    /** The offending words. */
    public String got() {
        return got;
    }

    /** What is allowed. */
    public String allowed() {
        return allowed;
    }

    /** What to do about it. */
    public String next() {
        return next;
    }
}
