package tarewright.term;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.document.VersionCode;
import tarewright.finding.Finding;
import tarewright.print.PdfPrinter;
import tarewright.procedure.resolve.Resolved;
import tarewright.tables.HazardTables.CountryRules;

/**
 * The unit of printing: one procedure for one section, or for none, in one folder. Its documents share a version code and are
 * printed and replaced together.
 *
 * @param folder below the output folder, with {@code /} between its parts; empty for the output folder itself
 * @param procedure without errors
 * @param warnings what the key tells the teacher at its end
 * @param country the hazard tables for the procedure's country
 * @param kinds which documents, at least one
 * @param data what tells one state of the data from another
 * @param footer words for every footer, such as the school's name; may be empty
 * @param large whether what is read at the bench comes in large print as well
 */
public record Lot(String folder, Resolved procedure, List<Finding> warnings, CountryRules country, Set<Sheet.Kind> kinds, String data, String footer,
        boolean large) {
    public Lot {
        warnings = List.copyOf(warnings);
        if (kinds.isEmpty()) {
            throw new IllegalArgumentException("a lot without a document");
        }
        kinds = Set.copyOf(EnumSet.copyOf(kinds));
    }

    /** The procedure's name, which its files' names start with. */
    public String name() {
        return procedure.name();
    }

    /** The short code on every page of it. */
    public String version() {
        return VersionCode.of(procedure.procedure().source().text().content(), procedure.setting(), data);
    }

    /**
     * Every document, laid out whole; nothing is written.
     *
     * @throws tarewright.print.BrokenTemplate if a template in the person's own folder cannot be used
     */
    public List<LotDocument> print(PdfPrinter printer) {
        List<LotDocument> documents = new ArrayList<>();
        List<Sheet> sheets = new Documents(country).sheets(procedure, kinds, warnings, version(), footer);
        for (Sheet sheet : large ? Documents.withLarge(sheets) : sheets) {
            boolean isLarge = sheet.size() == Sheet.Size.LARGE;
            String file = name() + "-" + sheet.kind().word() + (isLarge ? "-large" : "") + ".pdf";
            documents.add(new LotDocument(sheet.kind(), isLarge, file, printer.print(sheet)));
        }
        return documents;
    }
}
