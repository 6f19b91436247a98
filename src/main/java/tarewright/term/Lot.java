package tarewright.term;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.document.VersionCode;
import tarewright.finding.Finding;
import tarewright.print.EditablePrinter;
import tarewright.print.Format;
import tarewright.print.PdfPrinter;
import tarewright.print.Presses;
import tarewright.print.Printed;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Version;
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
 * @param inputs SHA-256 in hexadecimal of each text that went into it, by name: the procedure, the teacher's own tables and templates
 * @param footer words for every footer, such as the school's name; may be empty
 * @param large whether what is read at the bench comes in large print as well
 * @param facts what it says
 * @param version the short code on every page of it
 */
public record Lot(String folder, Resolved procedure, List<Finding> warnings, CountryRules country, Set<Sheet.Kind> kinds, Map<String, String> inputs,
        String footer, boolean large, List<Fact> facts, String version) {
    public Lot {
        warnings = List.copyOf(warnings);
        if (kinds.isEmpty()) {
            throw new IllegalArgumentException("a lot without a document");
        }
        kinds = Set.copyOf(EnumSet.copyOf(kinds));
        inputs = Collections.unmodifiableMap(new TreeMap<>(inputs));
        facts = List.copyOf(facts);
    }

    /**
     * A lot with its facts and its code. The code covers whatever can move a word on its pages: texts, setting, figures (so values of the day and
     * stocks too), warnings, the teacher's own tables and templates, and the program's data.
     *
     * @param program see {@link Program#data}
     */
    public static Lot of(String folder, Resolved procedure, List<Finding> warnings, CountryRules country, Set<Sheet.Kind> kinds, Map<String, String> inputs,
            String footer, boolean large, String program) {
        List<Fact> facts = LotFacts.of(procedure, country.rules(), warnings, footer);
        String told = warnings.stream().map(w -> w.id() + w.fields()).collect(Collectors.joining("\n"));
        String data = String.join("\u0000", program, new TreeMap<>(inputs).toString(), footer, told,
                facts.stream().map(Fact::onPaper).collect(Collectors.joining("\n")));
        String version = VersionCode.of(procedure.procedure().source().text().content(), procedure.setting(), data);
        return new Lot(folder, procedure, warnings, country, kinds, inputs, footer, large, facts, version);
    }

    /** The same lot with other documents asked for; its code is the same. */
    Lot only(Set<Sheet.Kind> others, boolean alsoLarge) {
        return new Lot(folder, procedure, warnings, country, others, inputs, footer, alsoLarge, facts, version);
    }

    /** The procedure's name, which its files' names start with. */
    public String name() {
        return procedure.name();
    }

    /** The names of a kind's files in ordinary print: of what a student gets, one for each version of the questions' numbers. */
    public List<String> files(Sheet.Kind kind, Format format) {
        boolean each = kind == Sheet.Kind.HANDOUT || kind == Sheet.Kind.MISSED || kind == Sheet.Kind.MISSED_KEY;
        return (each ? procedure.eachVersion() : List.of(new Version("", procedure))).stream()
                .map(v -> name() + "-" + LotDocument.word(kind, v.letter()) + "." + format.word()).toList();
    }

    /**
     * Every document, laid out whole; nothing is written.
     *
     * @throws tarewright.print.BrokenTemplate if a template in the person's own folder cannot be used
     */
    public List<LotDocument> print(PdfPrinter printer) {
        return print(Presses.of(printer), Set.of(Format.PDF));
    }

    /**
     * Every document in every format that is asked for: an editable copy of the handout alone; large print on paper alone, since a browser
     * sets the size of its letters itself.
     */
    public List<LotDocument> print(Presses presses, Set<Format> formats) {
        List<Piece> pieces = new ArrayList<>();
        List<Sheet> sheets = new Documents(country).sheets(procedure, kinds, warnings, version, footer);
        for (Sheet sheet : large ? Documents.withLarge(sheets) : sheets) {
            new TreeSet<>(formats).forEach(format -> pieces.add(new Piece(sheet, format)));
        }
        return presses.each(pieces, this::document).stream().flatMap(Optional::stream).toList();
    }

    /** A document in one format. */
    private record Piece(Sheet sheet, Format format) {
    }

    private Optional<LotDocument> document(PdfPrinter printer, Piece piece) {
        Sheet sheet = piece.sheet();
        boolean isLarge = sheet.size() == Sheet.Size.LARGE;
        String file = name() + "-" + LotDocument.word(sheet.kind(), sheet.letter()) + (isLarge ? "-large" : "") + "." + piece.format().word();
        return printed(sheet, piece.format(), printer).map(p -> new LotDocument(sheet.kind(), sheet.letter(), isLarge, file, p));
    }

    private static Optional<Printed> printed(Sheet sheet, Format format, PdfPrinter printer) {
        if (format == Format.PDF) {
            return Optional.of(printer.print(sheet));
        }
        if (sheet.size() == Sheet.Size.LARGE || format == Format.DOCX && sheet.kind() != Sheet.Kind.HANDOUT) {
            return Optional.empty();
        }
        return Optional.of(Printed.unpaged(format == Format.HTML ? printer.web().print(sheet) : new EditablePrinter().print(sheet)));
    }
}
