package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Units of everyday laboratory writing: common practice, no source. */
class UsualUnitsTest {
    @ParameterizedTest
    @CsvSource({
        "0.2 mg, g", "5 kg, g", "25 mL, mL", "999 mL, mL", "1 L, L", "-3 mL, mL", "3 mmol, mmol", "99 mmol, mmol", "0.1 mol, mol",
        "1 mmol/L, mol/L", "58.44 g/mol, g/mol", "24 L/mol, L/mol", "1.18 g/mL, g/mL", "1.2 g/L, g/L", "12 g/L, g/L", "285 K, K",
        "1 atm, kPa", "40 s, s", "3 min, min", "2 h, min", "500 J, J", "57 kJ, kJ", "57 kJ/mol, kJ/mol", "4.18 J/(g K), J/(g K)",
        "8.314 J/(mol K), J/(mol K)", "2 cm, cm", "2 m, m", "50 %, ''", "1 mL/s, mL/s", "1 mol/(L s), mol/(L s)", "1 1/s, 1/s",
        "2 g/m, g/m", "2 mol^2/L^2, mol²/m⁶"})
    void suitsTheSize(String typed, String symbol) {
        Typed quantity = ((QuantityResult.Ok) QuantityText.parse(typed)).typed();
        assertEquals(symbol, UsualUnits.of(quantity.dimension(), quantity.si()).symbol());
    }

    @Test
    void hasTheDimensionAskedFor() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            Dimension dimension = new Dimension(random.nextInt(-9, 10), random.nextInt(-3, 4), random.nextInt(-3, 4),
                    random.nextInt(-2, 3), random.nextInt(-3, 4));
            Unit unit = UsualUnits.of(dimension, 1);
            assertEquals(dimension, unit.dimension());
            assertEquals(0, unit.zero());
            // What is printed for a kind without a usual unit is that kind's unit, as the table reads it.
            assertEquals(dimension, unit.symbol().isEmpty() ? Dimension.NONE : CompoundUnitTest.read(unit.symbol()).dimension());
        }
    }
}
