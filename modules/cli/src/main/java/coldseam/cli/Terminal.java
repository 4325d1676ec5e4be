package coldseam.cli;

import java.io.BufferedWriter;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * Where the command writes: UTF-8 whatever the locale says, but to a console that names letters of its own, and never failing
 * because a reader closed its end.
 *
 * @param out for results
 * @param err for progress and faults
 * @param interactive whether a person watches, so that a line may be written over
 */
record Terminal(PrintWriter out, PrintWriter err, boolean interactive) {

    /** Columns that every line keeps within. */
    static final int WIDTH = 80;

    /** The process's own streams. */
    static Terminal standard() {
        Console console = System.console();
        boolean watched = console != null && isTerminal(console);
        Charset letters = watched ? letters(console.charset()) : StandardCharsets.UTF_8;
        return new Terminal(writer(System.out, letters), writer(System.err, letters), watched);
    }

    /**
     * The letters that a console shows: those that it names, as each of Windows does. US-ASCII is what a locale without a
     * language names, and says nothing of the console: nearly all show UTF-8.
     */
    static Charset letters(Charset named) {
        return named.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : named;
    }

    /** From JDK 22 on there may be a console though nobody watches; it is asked by name, since JDK 17 does not know the question. */
    private static boolean isTerminal(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException thereIsOneOnlyWhereSomebodyWatches) {
            return true;
        } catch (ReflectiveOperationException unknown) {
            return false;
        }
    }

    /**
     * Why some of what was printed got lost, such as by a disk that is full. Whoever closes the end at which it is read, as {@code
     * head} does, wants no more of it.
     */
    static Optional<String> lost() {
        if (!System.out.checkError()) {
            return Optional.empty();
        }
        // A stream of Java's keeps no reason, so it is written to once more.
        try (FileOutputStream raw = new FileOutputStream(FileDescriptor.out)) {
            raw.write('\n');
            return Optional.of("Some of what was printed got lost; run it again");
        } catch (IOException why) {
            String reason = String.valueOf(why.getMessage());
            return reason.toLowerCase(Locale.ROOT).contains("pipe")
                    ? Optional.empty()
                    : Optional.of("What was printed could not be written: " + reason + "; choose another place");
        }
    }

    /** For tests: writers of one's own. */
    static Terminal of(Writer out, Writer err) {
        return new Terminal(new PrintWriter(out, true), new PrintWriter(err, true), false);
    }

    private static PrintWriter writer(PrintStream stream, Charset letters) {
        return new PrintWriter(
                new BufferedWriter(
                        letters.equals(StandardCharsets.UTF_8)
                                ? new OutputStreamWriter(stream, letters)
                                : new Spelled(stream, letters)),
                true);
    }

    /** Prints lines as they are. */
    void lines(Iterable<String> lines) {
        lines.forEach(out::println);
    }

    /** Prints a text folded at its spaces. */
    void fold(String text) {
        fold(text, "", "");
    }

    /**
     * Prints a text folded at its spaces.
     *
     * @param first what the first line begins with
     * @param next what the others begin with
     */
    void fold(String text, String first, String next) {
        lines(Columns.fold(text, first, next));
    }

    /** Says which files there are now. */
    void written(Iterable<Path> files) {
        files.forEach(file -> out.println("Written: " + file));
    }

    /** Pushes out what is still held back. */
    void flush() {
        out.flush();
        err.flush();
    }
}
