package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Accepted;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.ResolvedAnswer;

/** How far a student's answer may be off, and with how many digits it is printed. */
class AllowancesTest {
    /** 2.43 g of magnesium at 24.305 g/mol are 99.98 mmol. */
    private static Door.Outcome ask(String formula, String... fields) {
        StringBuilder more = new StringBuilder();
        for (String field : fields) {
            more.append("   ").append(field).append('\n');
        }
        return Door.open(new Page("Allowed").wasted().block("solid ribbon", "substance: Mg", "mass: 2.43 g", "purity: 98.0 %")
                .text("1. What is it?\n\n   ```answer\n   value: " + formula + "\n" + more + "   ```\n").markdown());
    }

    private static Accepted accepted(Door.Outcome outcome) {
        return outcome.resolved().answers().get(0).accepted().orElseThrow();
    }

    private static void isWithin(double middle, double half, Accepted accepted) {
        assertEquals(middle - half, accepted.from(), 1e-9 * middle);
        assertEquals(middle + half, accepted.to(), 1e-9 * middle);
    }

    /** A share of the value, whatever its unit. */
    @Test
    void perCentOfAnAmountIsAShareOfIt() {
        Door.Outcome outcome = ask("mass of ribbon", "unit: g", "within: 2 %").sound();
        isWithin(2.43e-3, 0.02 * 2.43e-3, accepted(outcome));
        assertTrue(accepted(outcome).holds(2.475e-3) && !accepted(outcome).holds(2.485e-3));
    }

    /** A negative value, too, is allowed from below to above. */
    @Test
    void theShareOfANegativeValueIsNoNegativeShare() {
        Accepted accepted = accepted(ask("0 g - mass of ribbon", "unit: g", "within: 10 %").sound());
        assertEquals(-2.673e-3, accepted.from(), 1e-12);
        assertEquals(-2.187e-3, accepted.to(), 1e-12);
    }

    /** So many grams more or less. */
    @Test
    void aQuantityIsAllowedEitherWay() {
        isWithin(2.43e-3, 0.05e-3, accepted(ask("mass of ribbon", "unit: g", "within: 0.05 g").sound()));
        isWithin(2.43e-3, 0.05e-3, accepted(ask("mass of ribbon", "unit: g", "within: 50 mg").sound()));
    }

    /** Of 98 %, "within 1 %" means 97 % to 99 %; of a ratio without a unit, it means a hundredth of it, and 0.5 means 0.5. */
    @Test
    void perCentOfAPercentageIsAPercentagePoint() {
        isWithin(0.98, 0.01, accepted(ask("purity of ribbon", "unit: %", "within: 1 %").sound()));
        isWithin(98.0, 0.98, accepted(ask("100 * purity of ribbon", "within: 1 %").sound()));
        isWithin(98.0, 0.5, accepted(ask("100 * purity of ribbon", "within: 0.5").sound()));
    }

    /** Grams are allowed in no number of moles: the author is told at the field, and what the instruments allow stands instead. */
    @Test
    void anAllowanceOfAnotherKindIsRefused() {
        Door.Outcome outcome = ask("moles of ribbon", "unit: mmol", "within: 0.05 g");
        assertEquals(List.of("wrong-allowance"), outcome.ids(Severity.ERROR));
        assertEquals("0.05 g", outcome.errors().get(0).at().text());
        assertTrue(accepted(outcome).to() > accepted(outcome).from());
    }

    /** 2.43 g and 98.0 % to half of their last digits, rectangular: u = 97.98 mmol × √((0.005/2.43)² + (0.05/98)²)/√3 = 0.1199 mmol; k = 2. */
    @Test
    void whereTheAuthorSaysNothingTheDigitsDecide() {
        Accepted accepted = accepted(ask("moles of ribbon", "unit: mmol").sound());
        double amount = 2.43 * 0.98 / 24.305;
        double u = amount * Math.hypot(0.005 / 2.43, 0.05 / 98) / Math.sqrt(3);
        assertEquals(amount - 2 * u, accepted.from(), 1e-6);
        assertEquals(amount + 2 * u, accepted.to(), 1e-6);
    }

    /** 97.979… mmol: as said, in decimals or in significant figures; else to the first uncertain digit (0.12 mmol). */
    @ParameterizedTest
    @CsvSource({"shown to: 3 decimals,3", "shown to: 0 decimals,0", "shown to: 3 figures,1", "shown to: 5 figures,3", "marks: 1,1"})
    void digitsAreAsTheAuthorSaysElseAsTheUncertaintySays(String field, int decimals) {
        ResolvedAnswer answer = ask("moles of ribbon", "unit: mmol", field).sound().resolved().answers().get(0);
        assertEquals(decimals, answer.value().orElseThrow().decimals().orElseThrow());
    }

    /** A question in words has neither value nor range nor slips. */
    @Test
    void anAnswerInWordsHasNoRange() {
        Door.Outcome outcome = Door.open(new Page("Words").wasted().text("1. Why?\n\n   ```answer\n   words: The acid is in excess.\n   ```\n").markdown()).sound();
        ResolvedAnswer answer = outcome.resolved().answers().get(0);
        assertTrue(answer.value().isEmpty() && answer.accepted().isEmpty() && answer.slips().isEmpty());
        assertEquals("1", answer.number());
    }

    /** Questions are numbered through the procedure, their parts by letters; two answers in one question leave open which the number marks. */
    @Test
    void questionsAreNumberedAndEachHasOneAnswer() {
        String parts = "1. Weigh it.\n2. What?\n\n   ```answer\n   words: this\n   ```\n3. And?\n   - first\n\n     ```answer\n     words: a\n     ```\n   - second\n\n     ```answer\n     words: b\n     ```\n";
        Door.Outcome outcome = Door.open(new Page("Numbers").wasted().text(parts).text("Between.\n\n1. Last?\n\n   ```answer\n   words: c\n   ```\n").markdown()).sound();
        assertEquals(List.of("1", "2a", "2b", "3"), outcome.resolved().answers().stream().map(ResolvedAnswer::number).toList());
        Door.Outcome twice = Door.open(new Page("Twice").wasted().text("1. What?\n\n   ```answer\n   words: this\n   ```\n\n   ```answer\n   words: that\n   ```\n").markdown());
        assertEquals(List.of("second-answer"), twice.ids(Severity.ERROR));
        assertEquals("1", twice.errors().get(0).fields().get("question"));
        assertEquals(1, twice.errors().get(0).also().size());
        assertFalse(twice.errors().get(0).also().get(0).start() >= twice.errors().get(0).at().start());
    }
}
