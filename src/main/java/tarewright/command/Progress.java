package tarewright.command;

import java.io.PrintWriter;

/** A line that says how far the work is, once it takes more than a second; silent where nobody watches. */
final class Progress {
    private static final long FIRST = 1_000_000_000L;
    private final PrintWriter err;
    private final boolean watched = System.console() != null;
    private final long start = System.nanoTime();
    private boolean shown;

    Progress(PrintWriter err) {
        this.err = err;
    }

    void at(int done, int all, String what) {
        if (watched && System.nanoTime() - start > FIRST) {
            err.print("\r\u001B[K" + done + " of " + all + ": " + what);
            err.flush();
            shown = true;
        }
    }

    void end() {
        if (shown) {
            err.print("\r\u001B[K");
            err.flush();
        }
    }
}
