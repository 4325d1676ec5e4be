package coldseam.files;

/**
 * One of a closed list that data files make, bound and listed in schemas as the constants of an enum are.
 *
 * <p>Its class has a public static method {@code all()} that gives the list, a {@code ListIterable}, in its order.
 */
public interface OneOf {

    /** The word by which files name it. */
    String label();
}
