package tarewright.term;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * A few milliseconds of work that an ordinary end of the program (Ctrl-C, a closed window, a logout, a polite kill) waits for. A kill that the system does not tell of, or a
 * power cut, waits for nothing.
 */
final class Unbroken {
    private static final long LONGEST_SECONDS = 10;

    private Unbroken() {
    }

    /** Work on files. */
    interface Work {
        void run() throws IOException;
    }

    /** @throws IOException if the work cannot be done, or if the end has begun already, so that the work is not */
    static void run(Work work) throws IOException {
        CountDownLatch done = new CountDownLatch(1);
        Thread end = new Thread(() -> await(done));
        try {
            Runtime.getRuntime().addShutdownHook(end);
        } catch (IllegalStateException e) {
            throw new IOException("the program is ending", e);
        }
        try {
            work.run();
        } finally {
            done.countDown();
            release(end);
        }
    }

    private static void await(CountDownLatch done) {
        try {
            done.await(LONGEST_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void release(Thread end) {
        try {
            Runtime.getRuntime().removeShutdownHook(end);
        } catch (IllegalStateException e) {
            // The end has begun and has waited for this.
            return;
        }
    }
}
