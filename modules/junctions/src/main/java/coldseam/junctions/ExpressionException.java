package coldseam.junctions;

/** An expression of a detail file that cannot be read; the reader of the file adds the place. */
final class ExpressionException extends RuntimeException {

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

    String asked() {
        return asked;
    }

    String got() {
        return got;
    }

    String allowed() {
        return allowed;
    }

    String next() {
        return next;
    }
}
