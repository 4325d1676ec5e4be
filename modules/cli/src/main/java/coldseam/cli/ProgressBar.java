package coldseam.cli;

import coldseam.files.quantity.Format;

/**
 * A bar on standard error, with the time that is left: written over on a terminal, a plain line now and then elsewhere.
 */
final class ProgressBar {

    private static final long SECOND = 1_000_000_000L;
    private static final int CELLS = 30;

    private final Terminal terminal;
    private final String what;
    private final long start;
    private final long between;
    private long last;
    private boolean open;

    ProgressBar(Terminal terminal, String what) {
        this.terminal = terminal;
        this.what = what;
        this.start = System.nanoTime();
        this.between = terminal.interactive() ? SECOND / 10 : 10 * SECOND;
        this.last = start;
    }

    /** So many of so many are done. */
    synchronized void at(int done, int of) {
        long now = System.nanoTime();
        if (now - last < between && done < of) {
            return;
        }
        last = now;
        String line = line(done, of, now - start);
        if (terminal.interactive()) {
            terminal.err().print("\r" + line);
            open = true;
        } else {
            terminal.err().println(line.stripTrailing());
        }
        terminal.err().flush();
    }

    private String line(int done, int of, long elapsed) {
        int filled = of == 0 ? CELLS : (int) ((long) CELLS * done / of);
        String left = done == 0 || done == of ? "" : time((long) ((double) elapsed / done * (of - done))) + " left";
        return Format.of(
                "[%s%s] %d of %d %s  %-12s", "#".repeat(filled), ".".repeat(CELLS - filled), done, of, what, left);
    }

    private static String time(long nanoseconds) {
        long seconds = Math.round((double) nanoseconds / SECOND);
        return Format.of("%d:%02d", seconds / 60, seconds % 60);
    }

    /** Ends a bar that was written over. */
    synchronized void close() {
        if (open) {
            terminal.err().println();
            terminal.err().flush();
            open = false;
        }
    }
}
