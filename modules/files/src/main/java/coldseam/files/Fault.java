package coldseam.files;

/**
 * What is wrong at one place of a file.
 *
 * @param place where
 * @param asked what was asked
 * @param got the offending value, with its unit; empty where nothing was given
 * @param allowed what is allowed; empty where {@code next} says it all
 * @param next what to do about it; may be empty
 */
public record Fault(Position place, String asked, String got, String allowed, String next)
        implements Comparable<Fault> {

    /** One line: {@code file:line:column: what was asked; got …; allowed: …; next step}. */
    public String message() {
        StringBuilder out = new StringBuilder().append(place).append(": ").append(asked);
        if (!got.isEmpty()) {
            out.append("; got ").append(got);
        }
        if (!allowed.isEmpty()) {
            out.append("; allowed: ").append(allowed);
        }
        if (!next.isEmpty()) {
            out.append("; ").append(next);
        }
        return out.toString();
    }

    @Override
    public int compareTo(Fault other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : message().compareTo(other.message());
    }
}
