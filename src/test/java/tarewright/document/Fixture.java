package tarewright.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.print.PlainText;
import tarewright.procedure.check.Checks;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** Procedures of the tests, resolved through the same door as a user's file. */
final class Fixture {
    private static final ReferenceTables TABLES = Tables.load();
    private static final Documents DOCUMENTS = new Documents(HazardTables.of(""));

    private Fixture() {
    }

    static String source(String name) {
        try (InputStream in = Fixture.class.getResourceAsStream(name + ".md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @throws AssertionError if anything in it is an error */
    static Resolved resolve(String source) {
        return resolve(source, Overrides.NONE);
    }

    static Resolved resolve(String source, Overrides overrides) {
        Found<SourceFile> file = Reader.read(new SourceText("procedure.md", source));
        Found<Resolved> resolved = Resolver.resolve("procedure", file.value(), overrides, TABLES);
        List<Finding> errors = java.util.stream.Stream.of(file.findings(), resolved.findings(), Checks.run(resolved.value()))
                .flatMap(List::stream)
                .filter(f -> f.severity() == Severity.ERROR).toList();
        if (!errors.isEmpty()) {
            throw new AssertionError(errors.toString());
        }
        return resolved.value();
    }

    static Sheet sheet(Sheet.Kind kind, String source) {
        return sheet(kind, resolve(source));
    }

    static Sheet sheet(Sheet.Kind kind, Resolved procedure) {
        return DOCUMENTS.sheets(procedure, EnumSet.of(kind), List.of(), "abcdefg", "").get(0);
    }

    /** The prep sheet with the bottles of a term. */
    static Sheet prep(Resolved procedure, List<tarewright.procedure.declare.StockBlock> shelf) {
        return new Documents(HazardTables.of(""), shelf).sheets(procedure, EnumSet.of(Sheet.Kind.PREP), List.of(), "abcdefg", "").get(0);
    }

    /** Plain text, with ordinary spaces. */
    static String text(Sheet sheet) {
        return PlainText.of(sheet).replace('\u202F', ' ');
    }
}
