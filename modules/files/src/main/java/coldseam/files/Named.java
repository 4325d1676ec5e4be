package coldseam.files;

/**
 * One entry of a mapping from names to things, in a list that keeps the file's order.
 *
 * @param name the key
 * @param place of the name
 * @param <T> type of the things
 */
public record Named<T>(String name, T value, Position place) {}
