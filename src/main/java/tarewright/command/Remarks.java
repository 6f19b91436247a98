package tarewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tarewright.print.BrokenTemplate;
import tarewright.print.Printed;
import tarewright.term.Lot;
import tarewright.term.LotDocument;
import tarewright.term.Printing;

/** What is said of documents once they are printed. */
final class Remarks {
    private Remarks() {
    }

    /** What a person must know before she copies a document. */
    static void tell(Lot lot, LotDocument document, PrintWriter err) {
        Printed printed = document.printed();
        printed.missing().forEach(c -> err.println("tarewright: " + lot.name() + ": no typeface of ours has the character "
                + String.format(Locale.ROOT, "U+%04X", c) + "; it prints as #"));
        if (printed.spilled()) {
            err.println("tarewright: " + lot.name() + ": a label holds more than its field, so those below it have moved; say fewer rows or columns in `labels`");
        }
    }

    /** What is said of a template that cannot be used. */
    static String broken(BrokenTemplate e) {
        return "the template " + e.template() + e.line().map(l -> ", line " + l).orElse("") + ": " + e.says();
    }

    /** What is said of a mistake of our own. @param what is not done because of it */
    static String ourMistake(Throwable problem, String what) {
        StackTraceElement[] trace = problem.getStackTrace();
        String where = trace.length == 0 ? "" : " in " + trace[0].getFileName() + ", line " + trace[0].getLineNumber();
        return "this is a mistake in Tarewright itself, not in your file (" + problem.getClass().getSimpleName() + where + "). " + what;
    }

    /** What was written, with its pages, and what was left alone. */
    static String written(Printing.Outcome outcome) {
        List<String> said = new ArrayList<>();
        if (!outcome.printed().isEmpty()) {
            said.add(outcome.printed().stream()
                    .map(d -> d.word() + (d.printed().pages() > 0 ? " (" + d.printed().pages() + ")" : ending(d.file()))).collect(Collectors.joining(", ")));
        }
        if (!outcome.unchanged().isEmpty()) {
            said.add("unchanged: " + outcome.unchanged().stream().map(f -> f.kind() + (f.pages() > 0 ? " (" + f.pages() + ")" : " in another format")).distinct().collect(Collectors.joining(", ")));
        }
        return said.isEmpty() ? "unchanged" : String.join("; ", said);
    }

    private static String ending(String file) {
        return file.substring(file.lastIndexOf('.'));
    }
}
