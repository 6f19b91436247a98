package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Compounds of units: their spellings (SI Brochure, 9th edition, 5.4.1 and 5.4.2), and the laws of their algebra. */
class CompoundUnitTest {
    @ParameterizedTest
    @CsvSource({
        "g/mol, g/mol, 1e-3", "g mol^-1, g/mol, 1e-3", "g mol-1, g/mol, 1e-3", "g\u00A0mol\u207B\u00B9, g/mol, 1e-3",
        "g\u00B7mol\u22121, g/mol, 1e-3", "J/(g K), J/(g K), 1000", "J/(g\u00B7K), J/(g K), 1000", "J g^-1 K^-1, J/(g K), 1000",
        "J/(g.degC), J/(g °C), 1000", "kJ/degC, kJ/°C, 1000", "kJ/mol, kJ/mol, 1000", "g/mL, g/mL, 1000", "g/cm3, g/cm³, 1000",
        "g cm^-3, g/cm³, 1000", "kg/m3, kg/m³, 1", "g/100 mL, g/100 mL, 10", "g/100mL, g/100 mL, 10", "g / L, g/L, 1",
        "mol dm^-3, mol/dm³, 1000", "mol/dm3, mol/dm³, 1000", "mol L^-1, mol/L, 1000", "mol\u22C5L-1, mol/L, 1000",
        "g/m, g/m, 1e-3",
        "M/atm, mol/(L atm), 0.009869232667160128", "mol/(L.kPa), mol/(L kPa), 1", "M^-1 s^-1, L/(mol s), 0.001", "1/s, 1/s, 1",
        "s^-1, 1/s, 1", "m/s, m/s, 1", "m/s^2, m/s², 1", "mg/kg, mg/kg, 1e-6", "fl oz/min, fl oz/min, 4.92892159375e-7",
        "g*mol, g mol, 1e-3", "cm^3/min, cm³/min, 1.6666666666666667e-8",
    })
    void isReadAndPrintedInOneForm(String typed, String printed, double factor) {
        Unit unit = read(typed);
        assertEquals(printed, unit.symbol());
        assertEquals(1, unit.factor() / factor, 1e-13);
        assertEquals(0, unit.zero());
    }

    /** SI Brochure, 9th edition, 5.4.2: a solidus is used once in a line, or brackets remove the ambiguity. */
    @ParameterizedTest
    @CsvSource({
        "J/g/K, J/(g K)", "J/g K, J/(g K)", "J/g\u00B7K, J/(g K)", "kJ/kg/K, kJ/(kg K)", "mol/L/s, mol/(L s)",
    })
    void twoReadingsAreRefusedAndOneIsOffered(String typed, String offered) {
        UnitTrouble trouble = trouble(typed);
        assertEquals("bad-unit-syntax", trouble.id());
        assertEquals(offered, ((UnitTrouble.BadSyntax) trouble).suggestion().orElseThrow());
        assertEquals(offered, read(offered).symbol());
    }

    @ParameterizedTest
    @CsvSource({
        "''", "/", "g/", "/mol", "g//mol", "J/(g K", "J/g K)", "g^", "g^x", "g^0", "g^99", "g-", "()", "g/()", "(g)",
        "g\u00B7", "\u00B7g",
        "g ^2", "1", "g/1", "g)", "g(", "J/(g K)x", "J/(g K) mol", "J/(g K)/mol", "m^10", "m^-10", "100 mL", "g²³⁴", "km^9 km^9 km^9 km^9", "m m m m m m m m m", "g/100",
    })
    void whatIsNoCompound(String typed) {
        assertEquals("bad-unit-syntax", trouble(typed).id(), typed);
    }

    /** Of stray brackets no reading is offered. */
    @ParameterizedTest
    @CsvSource({"J/g K)", "J/g/(K", "J/g K(", "g)"})
    void strayBracketsHaveNoReading(String typed) {
        assertEquals(Optional.empty(), ((UnitTrouble.BadSyntax) trouble(typed)).suggestion());
    }

    @Test
    void theHighestPowerIsNine() {
        assertEquals("m⁹", read("m^9").symbol());
        assertEquals(9, read("m⁹").dimension().length());
        assertEquals(-9, read("m⁻⁹").dimension().length());
    }

    /** A text of sixty characters is looked at, a longer one is not; what is shown of it is cut. */
    @Test
    void aLongTextIsNoUnit() {
        assertEquals("unknown-unit", trouble("x".repeat(60)).id());
        UnitTrouble trouble = trouble("x".repeat(61));
        assertEquals("bad-unit-syntax", trouble.id());
        assertEquals("x".repeat(60), trouble.fields().get("text"));
    }

    /** The smallest stretch that shows the trouble. */
    @ParameterizedTest
    @CsvSource({
        "g/Ml, 2, 4, Ml, mL", "kj/mol, 0, 2, kj, kJ", "J/(gm K), 3, 5, gm, g", "' mol/litre', 5, 10, litre, L",
        "g/ 100 ml, 7, 9, ml, mL",
    })
    void theUnknownPartIsPointedAt(String typed, int from, int to, String part, String offered) {
        UnitTrouble.Unknown trouble = (UnitTrouble.Unknown) trouble(typed);
        assertEquals(List.of(from, to), List.of(trouble.from(), trouble.to()));
        assertEquals(part, trouble.text());
        assertEquals(part, typed.substring(from, to));
        assertEquals(offered, trouble.suggestions().get(0));
    }

    static List<Dimension> bases() {
        return List.of(Dimension.LENGTH, Dimension.MASS, Dimension.TIME, Dimension.TEMPERATURE, Dimension.AMOUNT);
    }

    @ParameterizedTest
    @MethodSource("bases")
    void everyBaseDimensionObeysTheLawsOfPowers(Dimension base) {
        for (int a = -4; a <= 4; a++) {
            for (int b = -4; b <= 4; b++) {
                assertEquals(base.power(a + b), base.power(a).times(base.power(b)));
                assertEquals(base.power(a - b), base.power(a).over(base.power(b)));
                assertEquals(base.power(a * b), base.power(a).power(b));
            }
            for (Dimension other : bases()) {
                assertEquals(base.power(a), base.power(a).times(other.power(3)).over(other.power(3)));
                assertEquals(base.times(other).power(a), base.power(a).times(other.power(a)));
                assertEquals(other.equals(base), base.equals(other));
            }
        }
        assertEquals(Dimension.NONE, base.over(base));
        assertEquals(Dimension.NONE, base.power(0));
    }

    @Test
    void aCompoundHasTheProductOfItsPartsInFactorAndDimension() {
        SplittableRandom random = new SplittableRandom(20410204);
        List<Unit> units = Units.all().stream().filter(symbol -> symbol.matches("[A-Za-zµ°]+")).map(CompoundUnitTest::read)
                .toList();
        for (int i = 0; i < 2000; i++) {
            Unit u = units.get(random.nextInt(units.size()));
            Unit v = units.get(random.nextInt(units.size()));
            int n = 1 + random.nextInt(3);
            Unit product = read(u.symbol() + " " + v.symbol());
            assertEquals(u.dimension().times(v.dimension()), product.dimension());
            assertEquals(1, product.factor() / (u.factor() * v.factor()), 1e-14);
            Unit quotient = read(u.symbol() + "/" + v.symbol());
            assertEquals(u.dimension().over(v.dimension()), quotient.dimension());
            assertEquals(1, quotient.factor() / (u.factor() / v.factor()), 1e-14);
            Unit back = read(u.symbol() + " " + v.symbol() + "/" + v.symbol());
            assertEquals(u.dimension(), back.dimension(), "(u v)/v = u");
            assertEquals(u.factor(), back.factor(), u.factor() * 1e-15);
            Unit power = read(u.symbol() + "^" + n);
            assertEquals(u.dimension().power(n), power.dimension());
            assertEquals(1, power.factor() / Math.pow(u.factor(), n), 1e-14);
            Unit inverse = read(u.symbol() + "^-" + n);
            assertEquals(Dimension.NONE, inverse.dimension().times(power.dimension()));
            assertEquals(1, inverse.factor() * power.factor(), 1e-14);
            for (Unit unit : List.of(product, quotient, back, power, inverse)) {
                assertEquals(unit.symbol(), read(unit.symbol()).symbol());
                assertEquals(unit.dimension(), read(unit.symbol()).dimension());
                assertEquals(unit.factor(), read(unit.symbol()).factor());
            }
        }
    }

    @Test
    void kindsHaveNames() {
        assertEquals("density", Kinds.name(read("g/mL").dimension()));
        assertEquals("specific heat capacity", Kinds.name(read("J/(g K)").dimension()));
        assertEquals("m/s", Kinds.name(read("km/h").dimension()));
        assertEquals("1/(m s²)", Kinds.siUnit(read("1/(m s^2)").dimension()));
        assertEquals("kg/(m s²)", Kinds.siUnit(Dimension.PRESSURE));
        assertEquals("", Kinds.siUnit(Dimension.NONE));
        assertEquals("m³", Kinds.siUnit(Dimension.VOLUME));
        assertEquals("kg m²/(K s²)", Kinds.siUnit(read("J/K").dimension()));
        assertEquals("1/mol", Kinds.siUnit(read("1/mol").dimension()));
        assertTrue(Units.of(Dimension.PRESSURE).containsAll(List.of("kPa", "atm", "mmHg")));
    }

    static Unit read(String typed) {
        UnitResult result = Units.parse(typed);
        return result instanceof UnitResult.Ok ok ? ok.unit() : fail(typed, result);
    }

    private static Unit fail(String typed, UnitResult result) {
        throw new AssertionError(typed + ": " + result);
    }

    private static UnitTrouble trouble(String typed) {
        UnitResult result = Units.parse(typed);
        assertTrue(result instanceof UnitResult.Bad, typed + ": " + result);
        return ((UnitResult.Bad) result).trouble();
    }
}
