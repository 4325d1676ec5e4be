package coldseam.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What a campaign of mutants came to: how many, how fast, what the dearest took, and what was found. */
final class Tally {

    private static final Path FOLDER = Path.of("target", "fuzz");

    private final String what;
    private final long from;
    private final int between;
    private final long start = System.nanoTime();
    private final Map<String, String> finds = new TreeMap<>();
    private int count;
    private int accepted;
    private Spent slowest = new Spent(0, 0);
    private long slowestNumber;
    private Spent largest = new Spent(0, 0);
    private long largestNumber;

    /**
     * @param from the first mutant's number
     * @param between so many mutants a line is written, for whoever looks on
     */
    Tally(String what, long from, int between) {
        this.what = what;
        this.from = from;
        this.between = between;
    }

    /** One was accepted, or refused in words. */
    void read(long number, boolean asGood, Spent spent) throws IOException {
        accepted += asGood ? 1 : 0;
        if (spent.seconds() > slowest.seconds()) {
            slowest = spent;
            slowestNumber = number;
        }
        if (spent.megabytes() > largest.megabytes()) {
            largest = spent;
            largestNumber = number;
        }
        counted();
    }

    /** One went wrong; kept once for each place in our code, however many come there. */
    void found(long number, Throwable thrown, String text) throws IOException {
        found(number, signature(thrown), text);
    }

    void found(long number, String signature, String text) throws IOException {
        if (!finds.containsKey(signature)) {
            Files.createDirectories(FOLDER);
            finds.put(
                    signature,
                    Files.writeString(FOLDER.resolve(what.replace(' ', '-') + "-" + number + ".json"), text)
                            .toString());
        }
        counted();
    }

    /** Keeps something to be looked at. */
    void keep(String name, String text) throws IOException {
        Files.createDirectories(FOLDER);
        Files.writeString(FOLDER.resolve(name + ".txt"), text);
    }

    private void counted() throws IOException {
        if (++count % between == 0) {
            write();
        }
    }

    int count() {
        return count;
    }

    int accepted() {
        return accepted;
    }

    Map<String, String> finds() {
        return finds;
    }

    Spent slowest() {
        return slowest;
    }

    Spent largest() {
        return largest;
    }

    /** Adds a line to the folder's file: a campaign that is ended early is counted too. */
    void write() throws IOException {
        Files.createDirectories(FOLDER);
        Files.writeString(
                FOLDER.resolve("tally.txt"), this + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    @Override
    public String toString() {
        double seconds = 1e-9 * (System.nanoTime() - start);
        return String.format(
                Locale.ROOT,
                "%s: %d mutants from %d, %d accepted, %.0f a second; slowest %s (%d), largest %s (%d); finds %s",
                what,
                count,
                from,
                accepted,
                count / seconds,
                slowest,
                slowestNumber,
                largest,
                largestNumber,
                finds);
    }

    private static String signature(Throwable thrown) {
        String where = Stream.of(thrown.getStackTrace())
                .filter(each -> each.getClassName().startsWith("coldseam.")
                        && !each.getClassName().startsWith("coldseam.cli."))
                .findFirst()
                .map(StackTraceElement::toString)
                .orElse("in no code of ours");
        String said = String.valueOf(thrown).replaceAll("[0-9.E-]{4,}", "N");
        return where + ": " + said.substring(0, Math.min(160, said.length()));
    }
}
