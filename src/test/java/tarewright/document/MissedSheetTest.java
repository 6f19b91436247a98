package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Missed;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.ResolvedReading;
import tarewright.tables.HazardTables;
import tarewright.wording.Numbers;

/** What a student who missed the class is handed, and what marks it. */
class MissedSheetTest {
    private static final Documents DOCUMENTS = new Documents(HazardTables.of(""));
    private static final Numbers NUMBERS = Numbers.in("en");
    private static final String VERSION = "abcdefg";

    private static Resolved library(String name) throws IOException {
        return Fixture.resolve(Files.readString(Path.of("procedures", name + ".md")));
    }

    private static String text(Sheet.Kind kind, Resolved procedure) {
        List<Sheet> sheets = DOCUMENTS.sheets(procedure, EnumSet.of(kind), List.of(), VERSION, "");
        return Fixture.text(sheets.get(0));
    }

    private static String shown(Figure figure) {
        return NUMBERS.printed(figure).replace('\u202F', ' ');
    }

    /** Other words, choices, remarks and trials for the teacher leave the sheet as it was, letter by letter; the key to it changes. */
    @ParameterizedTest
    @ValueSource(strings = {"hydrogen-from-magnesium", "acid-in-a-descaler", "chalk-from-two-solutions"})
    void theSuppliedSheetTellsNothingOfTheKey(String name) throws IOException {
        String source = Files.readString(Path.of("procedures", name + ".md"));
        String other = source.replaceAll("(?m)^( *)words: .*$", "$1words: Something else altogether.")
                .replaceAll("(?m)^( *)choice: ([^;]*); (.*)$", "$1choice: $3; $2").replaceAll("(?m)^( *)reject: .*$", "$1reject: nothing at all")
                .replaceAll("(?m)^gave: .*$", "gave: 44 mL").replaceAll("(?ms)^```key\\R.*?^```", "```key\nOther words for the teacher.\n```");
        assertNotEquals(source, other);
        assertEquals(text(Sheet.Kind.MISSED, Fixture.resolve(source)), text(Sheet.Kind.MISSED, Fixture.resolve(other)));
        assertNotEquals(text(Sheet.Kind.MISSED_KEY, Fixture.resolve(source)), text(Sheet.Kind.MISSED_KEY, Fixture.resolve(other)));
    }

    /** Every supplied reading stands on the sheet, no worked answer does, and the sheet says that the readings are not the student's own. */
    @ParameterizedTest
    @ValueSource(strings = {"acid-in-a-descaler", "heat-of-neutralisation", "water-in-epsom-salt"})
    void theReadingsStandOnTheSheetAndTheAnswersInTheKeyAlone(String name) throws IOException {
        Resolved procedure = library(name);
        Resolved missed = Missed.of(procedure, VersionCode.seed(VERSION)).orElseThrow();
        String sheet = text(Sheet.Kind.MISSED, procedure);
        String key = text(Sheet.Kind.MISSED_KEY, procedure);
        for (ResolvedReading reading : missed.readings()) {
            if (reading.block().difference().isEmpty()) {
                for (Figure each : reading.each()) {
                    String digits = NUMBERS.printedNumber(each).replace('\u202F', ' ');
                    assertTrue(sheet.contains(digits), reading.block().name() + " " + digits);
                    assertTrue(key.contains(shown(each)), reading.block().name());
                }
            }
        }
        // A mean may happen to be one of the readings.
        List<String> readings = missed.readings().stream().flatMap(r -> r.each().stream()).map(MissedSheetTest::shown).toList();
        for (ResolvedAnswer answer : missed.answers()) {
            answer.value().ifPresent(v -> {
                assertTrue(key.contains(shown(v)), answer.number());
                assertFalse(sheet.contains(shown(v)) && !readings.contains(shown(v)), answer.number());
            });
        }
        assertTrue(sheet.startsWith("Supplied readings: not your own"), sheet.substring(0, 60));
    }

    /** A class in which nothing is read has nothing to supply. */
    @Test
    void withoutReadingsThereIsNoSuchSheet() {
        Resolved procedure = Fixture.resolve("---\ntitle: Salt\n---\n\n```solid salt\nsubstance: sodium chloride\nmass: 2.0 g\n```\n\n1. Weigh {salt}.\n");
        assertEquals(List.of(), DOCUMENTS.sheets(procedure, EnumSet.of(Sheet.Kind.MISSED, Sheet.Kind.MISSED_KEY), List.of(), VERSION, ""));
    }
}
