package tarewright.fuzz;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import tarewright.finding.Finding;
import tarewright.text.SourceText;

/** What must hold of any input: it is answered within two seconds of the processor, and what is told of it points into it. */
public final class Held {
    private static final long SECONDS = 2;
    private static final long NANOS = 1_000_000_000;

    private Held() {
    }

    /** Bytes as a text: what is no UTF-8 is told before any reader sees it, so it becomes replacement characters here. */
    public static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** Runs it, and where that is slow once more: the first input of all pays for the classes that it loads. @throws AssertionError if it took the processor for too long */
    public static void soon(Runnable work) {
        if (seconds(work) > SECONDS) {
            long again = seconds(work);
            if (again > SECONDS) {
                throw new AssertionError("took the processor for " + again + " s");
            }
        }
    }

    /** Whole seconds of processor time, rounded up. */
    private static long seconds(Runnable work) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.run();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before + NANOS - 1) / NANOS;
    }

    /** @throws AssertionError if the place is not within a text */
    public static void within(int from, int to, String text) {
        if (from < 0 || to < from || to > text.length()) {
            throw new AssertionError("told at " + from + ".." + to + " of " + text.length());
        }
    }

    /** A span cannot leave its text, so what is left to go wrong is the text. @throws AssertionError if a finding points into another one */
    public static void within(List<Finding> findings, SourceText text) {
        for (Finding finding : findings) {
            if (finding.at().source() != text || finding.at().line() < 1 || finding.at().column() < 1) {
                throw new AssertionError(finding.id() + " is told of another text");
            }
        }
    }
}
