package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.Cases.formula;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws over seeded random cases. */
class FormulaLawsTest {
    private static final String ALPHABET = "CHONaClFe()[]0123456789.·^+-−⁻²₂₀ₙxne \u00a0½/=>🧪é\u0000\ud800";

    @Test
    void whatIsPrintedIsReadBack() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 5000; i++) {
            Formula formula = formula(RandomFormulas.formula(random));
            assertEquals(formula, formula(formula.plain()), formula.plain());
            assertEquals(formula, formula(formula.unicode()), formula.unicode());
            assertEquals(formula.atoms(), formula(formula.plain()).atoms());
            assertEquals(formula.charge(), formula(formula.unicode()).charge());
        }
    }

    /** Each atom is counted by its own product of the numbers that hold for it: a second way of counting. */
    @Test
    void atomsAreCountedThroughBrackets() {
        SplittableRandom random = new SplittableRandom(2);
        int counted = 0;
        for (int i = 0; i < 2000; i++) {
            Map<String, Integer> expected = new HashMap<>();
            String written = RandomFormulas.counted(random, 1, 0, expected);
            if (written.length() <= Formula.LONGEST) {
                assertEquals(expected, formula(written).atoms(), written);
                counted++;
            }
        }
        assertTrue(counted > 1500, "only " + counted);
    }

    @Test
    void anyTextIsReadWithoutAnException() {
        SplittableRandom random = new SplittableRandom(3);
        int read = 0;
        for (int i = 0; i < 30_000; i++) {
            String text = any(random, random.nextInt(1, 20));
            read += Formula.parse(text) instanceof FormulaResult.Ok ok && !ok.formula().plain().isEmpty() ? 1 : 0;
            Formula.parseShown(text);
        }
        assertTrue(read > 100, "some of them are formulas: " + read);
    }

    /** Small letters in a long run are the worst for the search for capitals. */
    @Test
    void theSearchForCapitalsIsBounded() {
        assertEquals(3, ((FormulaTrouble.UnknownElement) trouble("co".repeat(100))).formulas().size());
        assertEquals(0, ((FormulaTrouble.UnknownElement) trouble("co".repeat(99) + "q")).formulas().size());
    }

    private static FormulaTrouble trouble(String text) {
        return ((FormulaResult.Bad) Formula.parse(text)).trouble();
    }

    private static String any(SplittableRandom random, int length) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < length; i++) {
            text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return text.toString();
    }
}
