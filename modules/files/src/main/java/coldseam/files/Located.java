package coldseam.files;

/**
 * A value that keeps its place.
 *
 * @param value bound as if it stood alone
 * @param place where it stands
 * @param <T> its type
 */
public record Located<T>(T value, Position place) {}
