package tarewright.term;

import java.util.List;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.print.PdfPrinter;
import tarewright.procedure.prepare.Need;

/**
 * What all sections of a term need, less what is on the shelf: one document for the whole term.
 *
 * @param term its name, which the file's name starts with and the document is headed by
 * @param needs each procedure of each section, without errors; at least one
 * @param version the short code on its pages
 * @param footer words for the footer; may be empty
 */
public record OrderList(String term, List<Need> needs, String version, String footer) {
    public OrderList {
        needs = List.copyOf(needs);
        if (needs.isEmpty()) {
            throw new IllegalArgumentException("an order for nobody");
        }
    }

    public Sheet sheet() {
        return Documents.order(term, needs, version, footer);
    }

    /** Laid out whole; nothing is written. */
    public LotDocument print(PdfPrinter printer) {
        return new LotDocument(Sheet.Kind.ORDER, "", false, term + "-order.pdf", printer.print(sheet()));
    }
}
