package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.check.Checks;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.tables.HazardTables;

/** The teacher's key. */
class KeyTest {
    private static final String HYDROGEN = Fixture.text(Fixture.sheet(Sheet.Kind.KEY, Fixture.source("hydrogen")));
    private static final String TITRATION = Fixture.text(Fixture.sheet(Sheet.Kind.KEY, Fixture.source("titration")));

    /**
     * By hand from M(Mg) = 24.305 g/mol (CIAAW 2021), R = 8.314 463 J/(mol K) (CODATA 2022) and the vapour pressure of water at
     * 20 °C, 2.339 kPa (IAPWS): 80 mL moist at 101.3 kPa is 98.96 kPa × 80 mL / (R × 293.15 K) = 3.248 mmol, 78.95 mg, 71.77 mm
     * of ribbon; cut 72 mm, 79.2 mg, on the balance 0.079 g.
     */
    @ParameterizedTest
    @ValueSource(strings = {
        "| magnesium, length | 72 mm |  | 71.77 mm → 72 mm, to the nearest 1 mm |",
        "0.07920 g → 0.079 g, to the nearest 0.001 g |",
        "up to the next 0.5 mL, since it is an excess |",
        "| HCl | 10.0 mmol | 5.0 mmol | in excess | 1.5",
        "| hydrochloric acid (1.0 mol/L) | 10.0 mL | 132.0 mL |",
        "Worked out for 12 groups with 10 % to spare.",
        "Answer: [=3.25 mmol].",
        "| [=0.079] | [=80] | [=6 min] | [=20] |",
        "[x] it doubles", "Do not accept: the syringe.",
        "The gas is moist: give a mark to whoever says so.",
        "| gas read | 80 mL | 78 mL | 2041-01-15 |"})
    void holds(String line) {
        assertTrue(HYDROGEN.contains(line), HYDROGEN);
    }

    /** 25.00 mL of 0.118 mol/L need 2.950 mmol of alkali: 29.50 mL of 0.100 mol/L. */
    @ParameterizedTest
    @ValueSource(strings = {"| titre | [=29.50 mL] |", "| 1 | [=29.50] |", "| Sample A | hydrochloric acid, HCl | 0.118 mol/L |",
        "Answer: [=0.1180 mol/L].", "mean of titre = ", "| 3\u00A0×\u00A029.50 mL |", "[x] the first pink that stays for 30 s"})
    void holdsOfTheTitration(String line) {
        assertTrue(TITRATION.contains(line), TITRATION);
    }

    @ParameterizedTest
    @CsvSource({"mass of ribbon / g,g", "volume of gas (mL),mL", "titre,", "rate / mol/L,mol/L", "c / cm³,cm³", "a / b,"})
    void theUnitOfAColumnIsReadOffItsHead(String head, String unit) {
        assertEquals(unit == null ? "" : unit, HeadUnit.of(head).map(u -> u.symbol()).orElse(""));
    }

    @Test
    void nothingIsWorkedTwice() {
        List<String> lines = HYDROGEN.substring(0, HYDROGEN.indexOf("Values from tables")).lines().filter(l -> l.contains(" = "))
                .toList();
        assertEquals(lines.stream().distinct().toList(), lines);
        assertTrue(lines.size() > 8, lines.toString());
    }

    @Test
    void eachTableValueHasItsSource() {
        assertTrue(HYDROGEN.contains("| M(Mg) | 24.305 g/mol | Prohaska"), HYDROGEN);
        assertTrue(HYDROGEN.contains("| R | 8.314"), HYDROGEN);
        assertTrue(HYDROGEN.contains("IAPWS"), HYDROGEN);
    }

    /** What is in the key's class column is worked out from the number of groups: twice the groups, twice the amount. */
    @Test
    void totalsFollowTheGroups() {
        Resolved few = Fixture.resolve(Fixture.source("hydrogen"), HandoutTest.groups(9));
        Resolved many = Fixture.resolve(Fixture.source("hydrogen"), HandoutTest.groups(18));
        double one = few.quantity("acid").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().value();
        double two = many.quantity("acid").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().value();
        assertEquals(2 * one, two, 1e-12);
        assertTrue(Fixture.text(Fixture.sheet(Sheet.Kind.KEY, few)).contains("| 10.0 mL | 99.0 mL |"));
        assertTrue(Fixture.text(Fixture.sheet(Sheet.Kind.KEY, many)).contains("| 10.0 mL | 198.0 mL |"));
    }

    @Test
    void warningsStandAtTheEnd() {
        String source = Fixture.source("hydrogen");
        source = source.substring(0, source.indexOf("```waste"));
        Resolved procedure = Fixture.resolve(source);
        List<Finding> warnings = Checks.run(procedure).stream().filter(f -> f.severity() == Severity.WARNING).toList();
        assertFalse(warnings.isEmpty());
        Sheet key = new Documents(HazardTables.of("")).sheets(procedure, EnumSet.of(Sheet.Kind.KEY), warnings, "abcdefg", "")
                .get(0);
        String text = Fixture.text(key);
        assertTrue(text.indexOf("Warnings of the check") > text.indexOf("When it was tried"), text);
    }

    /** A range is two standard uncertainties to each side (JCGM 100:2008, 6.2.1 and 6.3.3), or what the author allows. */
    @Test
    void theAuthorsLimitGoesBeforeTheReckoned() {
        String source = Fixture.source("hydrogen")
                .replace("value: moles of ribbon\n", "value: moles of ribbon\n   within: 10 %\n");
        String key = Fixture.text(Fixture.sheet(Sheet.Kind.KEY, source));
        assertTrue(key.contains("Accept 2.92 mmol to 3.58 mmol."), key);
    }

    /** Runs side by side: one reading spreads over its row, the unit is that of the row. */
    @Test
    void aRepeatedReadingSpreadsOverItsRow() {
        String table = "| run | 1 | 2 | 3 |\n|---|---|---|---|\n| titre / mL | {blank titre} | | |\n\n";
        String source = Fixture.source("titration");
        source = source.substring(0, source.indexOf("| run |")) + table + source.substring(source.indexOf("# Questions"));
        String key = Fixture.text(Fixture.sheet(Sheet.Kind.KEY, source));
        assertTrue(key.contains("| titre / mL | [=29.50] | [=29.50] | [=29.50] |"), key);
        String handout = Fixture.text(Fixture.sheet(Sheet.Kind.HANDOUT, source));
        String space = "[____ Write here: titre]";
        assertTrue(handout.contains("| titre / mL | " + space + " | " + space + " | " + space + " |"), handout);
    }
}
