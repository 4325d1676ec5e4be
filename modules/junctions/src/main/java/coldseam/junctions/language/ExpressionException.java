package coldseam.junctions.language;

/** An expression of a detail file that cannot be read; the reader of the file adds the place. */
public final class ExpressionException extends RuntimeException {

    private final String asked;
    private final String got;
    private final String allowed;
    private final String next;

    ExpressionException(String asked, String got, String allowed, String next) {
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

    /** What was found instead. */
    public String got() {
        return got;
    }

    /** What is allowed. */
    public String allowed() {
        return allowed;
    }

    /** The next step. */
    public String next() {
        return next;
    }
}
