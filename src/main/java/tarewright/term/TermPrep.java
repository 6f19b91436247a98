package tarewright.term;

import java.util.List;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.print.PdfPrinter;
import tarewright.procedure.prepare.Need;

/**
 * The prep sheet of a whole term.
 *
 * @param term its file's name, which this file's name starts with
 * @param title what it is headed by
 * @param needs each procedure of each section, without errors; at least one
 * @param version the short code on its pages
 * @param footer words for the footer; may be empty
 */
public record TermPrep(String term, String title, List<Need> needs, String version, String footer) {
    public TermPrep {
        needs = List.copyOf(needs);
        if (needs.isEmpty()) {
            throw new IllegalArgumentException("a term for nobody");
        }
    }

    /** Laid out whole; nothing is written. */
    public LotDocument print(PdfPrinter printer) {
        return new LotDocument(Sheet.Kind.PREP, "", false, term + "-prep.pdf", printer.print(Documents.termPrep(title, needs, version, footer)));
    }
}
