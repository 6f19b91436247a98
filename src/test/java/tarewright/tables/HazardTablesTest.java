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
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.safety.Classification;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Remark;
import tarewright.safety.Rulebook;
import tarewright.safety.Statement;
import tarewright.safety.Verdict;
import tarewright.text.SourceText;
import tarewright.text.Span;

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
        "rule-sets", "ions", "eu-clp/substances", "eu-clp/specific-limits", "eu-clp/generic-limits", "eu-clp/acute-estimates",
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

    private static Found<Rulebook> own(String text) {
        return HazardTables.withOwn(RULES, new SourceText("own.csv", text));
    }

    private static Verdict classify(Found<Rulebook> own, Matter matter) {
        return new Classification(own.value()).of(matter);
    }

    private static List<String> ids(Found<Rulebook> own) {
        return own.findings().stream().map(Finding::id).toList();
    }

    @Test
    void aTeachersOwnRowStandsBeforeOurs() {
        Found<Rulebook> own = own("""
                name,formula,classification,limits,statements
                potassium iodide,KI,none,,
                fennick blue,,Skin Sens. 1 H317 | Eye Dam. 1 H318,2 % Eye Dam. 1 H318,EUH031
                """);

        assertEquals(List.of("hazards-overridden"), ids(own));
        assertFalse(own.hasErrors());
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
        "name,classification/x,Skin Burn 1 H314; not-a-hazard-class; Skin Burn 1 H314",
        "name,classification/x,Acute Tox. 7 H302; not-a-hazard-class; Acute Tox. 7 H302",
        "name,classification/x,Acute Tox. 4 H314; not-a-hazard-class; Acute Tox. 4 H314",
        "name,classification/x,; classification-missing; x", "name,classification/,none; substance-name-missing; ,none",
        "name,classification,limits/x,none,half Eye Dam. 1 H318; not-a-concentration-limit; half Eye Dam. 1 H318",
        "name,classification,limits/x,none,200 % Eye Dam. 1 H318; not-a-concentration-limit; 200 % Eye Dam. 1 H318",
        "name,classification,colour/x,none,blue; unknown-column; colour",
                "name,classification,name/x,none,y; column-given-twice; name",
        "name,classification,state/x,none,foam; not-a-substance-state; foam",
        "name,classification,molar mass/x,none,heavy; not-a-molar-mass; heavy",
        "name,classification,statements/x,none,H314; not-a-supplemental-statement; H314",
        "classification/none; name-column-missing; classification", "name,classification/x,none,more; cells-left-over; more"})
    void whatCannotBeReadIsFoundAtItsPlaceAndItsRowLeftOut(String text, String id, String place) {
        Found<Rulebook> own = own(text.replace('/', '\n'));

        assertEquals(List.of(id), ids(own));
        Span at = own.findings().get(0).at();
        assertEquals(place, text.replace('/', '\n').substring(at.start(), at.end()));
        boolean rowStands = id.equals("unknown-column") || id.equals("column-given-twice");
        assertEquals(rowStands, classify(own, Matter.pure("x", Form.SOLID, "x")).known());
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
            Found<Rulebook> own = own(text.toString());
            own.value().substances().rows().stream().filter(s -> s.id().startsWith("own "))
                    .forEach(s -> classify(own, Matter.solution("x", s.name(), Content.percent(5))));
        }
    }
}
