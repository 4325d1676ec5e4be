package coldseam.files;

/**
 * A place in a file.
 *
 * @param file as the reader was given it
 * @param line from 1
 * @param column from 1, in characters
 */
public record Position(String file, int line, int column) implements Comparable<Position> {

    @Override
    public int compareTo(Position other) {
        int byFile = file.compareTo(other.file);
        int byLine = byFile != 0 ? byFile : Integer.compare(line, other.line);
        return byLine != 0 ? byLine : Integer.compare(column, other.column);
    }

    /** As editors and terminals link it: {@code file:line:column}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
