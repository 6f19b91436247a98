package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import tarewright.tables.HazardTables;

/** Both sides of each limit of common laboratory substances; the rule is named in each row of the file. */
class StrengthTableTest {
    private static final Classification CLASSIFICATION = new Classification(HazardTables.standard());

    @ParameterizedTest(name = "{0} {2} %: {3}")
    @CsvFileSource(resources = "/tarewright/safety/strengths.csv", numLinesToSkip = 1)
    void classifiesAtItsStrength(String substance, String form, double percent, String statements, String supplemental,
            String rule) {
        Matter matter = Matter.of(substance, Form.valueOf(form.toUpperCase(Locale.ROOT)),
                List.of(Part.of(substance, Content.percent(percent))));

        Verdict verdict = CLASSIFICATION.of(matter);

        assertTrue(verdict.known());
        assertEquals(words(statements), codes(verdict.statements()), rule);
        assertEquals(words(supplemental), codes(verdict.supplemental()), rule);
    }

    private static String words(String cell) {
        return cell == null ? "" : cell;
    }

    private static String codes(List<Statement> statements) {
        return statements.stream().map(Statement::code).collect(Collectors.joining(" "));
    }
}
