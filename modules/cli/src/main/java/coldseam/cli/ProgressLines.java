package coldseam.cli;

import coldseam.audit.Work;
import coldseam.audit.engine.Progress;
import coldseam.files.quantity.Format;
import java.util.function.LongSupplier;

/**
 * Progress on standard error, once work has taken over a second: one line written over on a terminal, a plain line now and
 * then elsewhere.
 */
final class ProgressLines implements Progress {

    private static final long SECOND = 1_000_000_000L;
    private static final long BETWEEN_PLAIN_LINES = 5 * SECOND;
    private static final long BETWEEN_UPDATES = SECOND / 10;

    /** From this many parts on it is said before the work begins how much it is. */
    private static final int MUCH = 100;

    private final Terminal terminal;
    private final LongSupplier clock;
    private final long start;
    private long last;
    private boolean open;

    ProgressLines(Terminal terminal) {
        this(terminal, System::nanoTime);
    }

    /** @param clock nanoseconds from any beginning */
    ProgressLines(Terminal terminal, LongSupplier clock) {
        this.terminal = terminal;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.last = start + SECOND - (terminal.interactive() ? BETWEEN_UPDATES : BETWEEN_PLAIN_LINES);
    }

    /** In one line: how many sections and bodies, and about how many unknowns. */
    static String text(Work work) {
        return Format.of(
                "To solve: %d junctions%s, %d points and %d corners with all they are compared with, some %.1f million"
                        + " unknowns",
                work.junctions(),
                work.found() > 0 ? " and " + work.found() + " as they were found" : "",
                work.points(),
                work.corners(),
                1e-6 * work.unknowns());
    }

    @Override
    public void begins(Work work) {
        if (work.details() + work.corners() >= MUCH) {
            Columns.fold(text(work), "", "  ").forEach(terminal.err()::println);
            terminal.err().flush();
        }
    }

    @Override
    public synchronized void at(String step, int done, int of) {
        if (done == 0 && of >= MUCH) {
            terminal.err().println(of + " " + step + " to compute: the first time this may take minutes");
            terminal.err().flush();
        }
        long now = clock.getAsLong();
        long between = terminal.interactive() ? BETWEEN_UPDATES : BETWEEN_PLAIN_LINES;
        if (now - start < SECOND || now - last < between) {
            return;
        }
        last = now;
        String text = Format.of("%s: %d of %d", step, done, of);
        if (terminal.interactive()) {
            terminal.err().print("\r" + text + "   ");
            open = true;
        } else {
            terminal.err().println(text);
        }
        terminal.err().flush();
    }

    /** Ends a line that was written over. */
    synchronized void close() {
        if (open) {
            terminal.err().print("\r" + " ".repeat(Terminal.WIDTH - 1) + "\r");
            terminal.err().flush();
            open = false;
        }
    }
}
