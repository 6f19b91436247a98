package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.safety.Classification;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Remark;
import tarewright.safety.Rulebook;
import tarewright.safety.Statement;
import tarewright.safety.Verdict;

class HazardTablesTest {
    private static final Rulebook RULES = HazardTables.standard();

    @Test
    void aCountryWithoutATableOfItsOwnIsToldWhichOneWasUsed() {
        assertTrue(HazardTables.of("es").own());
        assertFalse(HazardTables.of("US").own());
        assertFalse(HazardTables.of("").own());
        assertEquals("eu-clp", HazardTables.of("US").rules().ruleSet().id());
        assertFalse(RULES.ruleSet().edition().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"reactive-members", "reactive-pairs", "reactive-groups", "protection", "signs", "waste",
            "neutralising", "gases",
        "rule-sets", "eu-clp/substances", "eu-clp/specific-limits", "eu-clp/generic-limits", "eu-clp/acute-estimates",
        "eu-clp/supplemental-limits", "eu-clp/label-elements", "eu-clp/pictogram-precedence", "eu-clp/covered-statements",
        "eu-clp/statements", "eu-clp/small-packs", "eu-clp/responses", "eu-clp/flammable-solutions"})
    void everyRowNamesItsSourceAndHowFarItIsProven(String table) {
        List<Row> rows = Rows.of("hazards/" + table + ".csv");

        assertFalse(rows.isEmpty());
        rows.forEach(row -> assertFalse(row.provenance().source().isBlank(), table + " " + row.number()));
    }

    @Test
    void everySignIsOfTheStandard() {
        RULES.protection().forEach(rule -> assertTrue(RULES.signs().stream().anyMatch(s -> s.number().equals(rule.sign())),
                rule.id()));
    }

    private static HazardOwnTable own(String text) {
        return HazardOwnTable.read(text, "own.csv", RULES);
    }

    private static Verdict classify(HazardOwnTable own, Matter matter) {
        return new Classification(own.over(RULES)).of(matter);
    }

    @Test
    void aTeachersOwnRowStandsBeforeOurs() {
        HazardOwnTable own = own("""
                name,formula,classification,limits,statements
                potassium iodide,KI,none,,
                fennick blue,,Skin Sens. 1 H317 | Eye Dam. 1 H318,2 % Eye Dam. 1 H318,EUH031
                """);

        assertEquals(List.of(), own.troubles());
        assertEquals(List.of("potassium-iodide"), own.replaced());
        Verdict salt = classify(own, Matter.pure("salt", Form.SOLID, "KI"));
        assertTrue(salt.harmless());
        assertTrue(salt.remarks().stream().anyMatch(r -> r.about() == Remark.About.TEACHERS_TABLE
                && r.details().get(1).equals("own.csv")));
        assertTrue(classify(own, Matter.solution("dye", "Fennick blue", Content.percent(2))).statements().stream()
                .map(Statement::code).toList().contains("H318"));
        assertTrue(classify(own, Matter.solution("dye", "Fennick blue", Content.percent(1.9))).has("EUH031"));
        assertFalse(classify(own, Matter.solution("dye", "Fennick blue", Content.percent(1.9))).has("H318"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "name,classification|x,Skin Burn 1 H314; NOT_A_CLASS", "name,classification|x,Acute Tox. 7 H302; NOT_A_CLASS",
        "name,classification|x,Acute Tox. 4 H314; NOT_A_CLASS", "name,classification|x,; NO_CLASSIFICATION",
        "name,classification|,none; NO_NAME", "name,classification,limits|x,none,half Eye Dam. 1 H318; NOT_A_LIMIT",
        "name,classification,limits|x,none,200 % Eye Dam. 1 H318; NOT_A_LIMIT",
                "name,classification,colour|x,none,blue; UNKNOWN_COLUMN",
        "name,classification,state|x,none,foam; NOT_A_STATE", "name,classification,molar mass|x,none,heavy; NOT_A_NUMBER",
        "name,classification,statements|x,none,H314; NOT_A_STATEMENT"})
    void whatCannotBeReadIsATroubleAndLeavesItsRowUnknown(String text, HazardOwnTable.Trouble.Kind kind) {
        HazardOwnTable own = own(text.replace('|', '\n'));

        assertEquals(List.of(kind), own.troubles().stream().map(HazardOwnTable.Trouble::kind).toList());
        assertEquals(kind != HazardOwnTable.Trouble.Kind.UNKNOWN_COLUMN, own.substances().isEmpty());
    }

    @Test
    void anyTextAtAllIsReadWithoutThrowing() {
        SplittableRandom random = new SplittableRandom(7);
        String alphabet = "name,classification\n\"|%1 H314 Skin Corr. 1B;\t\u00b7none";
        for (int i = 0; i < 500; i++) {
            StringBuilder text = new StringBuilder(i % 2 == 0 ? "name,classification,limits\n" : "");
            for (int j = random.nextInt(120); j > 0; j--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            HazardOwnTable own = own(text.toString());
            own.substances().forEach(s -> classify(own, Matter.solution("x", s.name(), Content.percent(5))));
        }
    }
}
