package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** Laws of every procedure, also of one that cannot be resolved in parts: something is printed, and it is always the same. */
class AnyProcedureTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final Documents DOCUMENTS = new Documents(HazardTables.of(""));
    private static final EnumSet<Sheet.Kind> KINDS = EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY);

    private static List<Sheet> sheets(String source) {
        Resolved procedure = Resolver.resolve("p", Reader.read(new SourceText("p.md", source)).value(), Overrides.NONE, TABLES)
                .value();
        return DOCUMENTS.sheets(procedure, KINDS, List.of(), "abcdefg", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"hydrogen", "titration", "precipitation", "hydrate"})
    void holdsWithLinesTakenAway(String name) {
        SplittableRandom random = new SplittableRandom(name.hashCode());
        List<String> lines = Fixture.source(name).lines().toList();
        for (int i = 0; i < 40; i++) {
            List<String> kept = new ArrayList<>(lines);
            for (int gone = random.nextInt(1, 5); gone > 0; gone--) {
                kept.remove(random.nextInt(kept.size()));
            }
            String source = String.join("\n", kept);
            List<Sheet> sheets = sheets(source);
            assertEquals(3, sheets.size());
            assertEquals(sheets, sheets(source));
            assertTrue(sheets.stream().allMatch(s -> s.pieces().stream().anyMatch(p -> !(p instanceof Piece.FormLine))), source);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "---\n---\n", "---\ntitle: T\n---\nText {nothing}.\n", "1. a\n   1. b\n      1. c\n",
            "> 1. quoted\n"})
    void holdsForLittle(String source) {
        assertEquals(3, sheets(source).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hydrogen", "titration", "precipitation", "hydrate"})
    void lineEndsMakeNoDifference(String name) {
        assertEquals(sheets(Fixture.source(name)), sheets(Fixture.source(name).replace("\n", "\r\n")));
    }
}
