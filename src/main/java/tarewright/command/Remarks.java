package tarewright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
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
