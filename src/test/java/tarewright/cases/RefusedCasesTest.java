package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tarewright.chemistry.CompositionResult;
import tarewright.chemistry.CompositionTrouble;
import tarewright.chemistry.MassComposition;
import tarewright.finding.Finding;
import tarewright.wording.FindingWords;

/**
 * Inputs that must be refused, each written down as a teacher would come to type it: one error and no other, of the kind that is
 * asked for, at the line where the
 * mistake is, in words that say what is wrong. The kinds of message are the ids of findings with {@code -} for {@code _}; none
 * differs.
 */
class RefusedCasesTest {
    private static final FindingWords WORDS = FindingWords.in("en");

    /** What the words hold of what the message should say. */
    private static final Map<String, List<String>> SAY = say();

    private static Map<String, List<String>> say() {
        Map<String, List<String>> say = new TreeMap<>();
        say.put("bad-003", List.of("`O` is 6 on the left, 4 on the right"));
        say.put("bad-005", List.of("only on the left `Cl`"));
        say.put("bad-006", List.of("only on the left `S`", "only on the right `C`"));
        say.put("bad-008", List.of("no coefficients above zero balance these together", "`H, O`"));
        say.put("bad-010", List.of("only on the left `O`", "in acid", "in base"));
        say.put("bad-011", List.of("the atoms balance", "+2 on the left, +1 on the right"));
        say.put("bad-013", List.of("second arrow or sign", "one is expected"));
        say.put("bad-015", List.of("no substance on one side of the plus"));
        say.put("bad-016", List.of("the left side of `->` is empty"));
        say.put("bad-018", List.of("the state `(x)` is not s, l, g or aq"));
        say.put("bad-020", List.of("`Jo` is not an element"));
        say.put("bad-021", List.of("`NaCl`", "starts with a capital"));
        say.put("bad-023", List.of("the closing bracket `)` has no opening one"));
        say.put("bad-025", List.of("the group `OH` is repeated 0 times"));
        say.put("bad-026", List.of("the count of `H` is 0"));
        say.put("bad-028", List.of("nothing after the dot"));
        say.put("bad-030", List.of("the brackets `()` are empty"));
        say.put("bad-031", List.of("`x` is not a number", "the number of `H2O`"));
        say.put("bad-033", List.of("the charge mark `^` has no charge"));
        say.put("bad-035", List.of("`22 kPa` has a unit of pressure, not of temperature"));
        say.put("bad-036", List.of("`gg` is not a unit"));
        say.put("bad-038", List.of("`0.15` has no unit", "mass"));
        say.put("bad-040", List.of("`-300 degC`", "-273.15"));
        say.put("bad-041", List.of("`0 K`", "above", "0 K"));
        say.put("bad-043", List.of("`104 %` is more than 100 %"));
        say.put("bad-045", List.of("a yield of `0 %` would need an infinite amount"));
        say.put("bad-046", List.of("`O₂` does not stand", "`course`"));
        say.put("bad-048", List.of("nothing says how much of `zinc` there is"));
        say.put("bad-051", List.of("the volume of `zinc` needs the density of `Zn`"));
        say.put("bad-053", List.of("the volume of `acid` needs the density of `HCl`", "a gas is a block `gas`",
                "`solution` with a `strength`"));
        say.put("bad-055", List.of("450", "above the critical point of water"));
        say.put("bad-056", List.of("cannot be made", "1000 mL for 100 mL"));
        say.put("bad-058", List.of("the percentages add up to 125 %"));
        say.put("bad-060", List.of("`110 % w/w` is more than 100 %"));
        return say;
    }

    @TestFactory
    Stream<DynamicTest> refusals() {
        return Case.refused().stream().map(row -> DynamicTest.dynamicTest(row.id() + " " + row.kind(),
                () -> RefusedPages.of(row).ifPresentOrElse(written -> refused(row, written), () -> refusedByTheCore(row))));
    }

    @Test
    void everyCaseIsAsked() {
        assertEquals(34, Case.refused().size());
        assertEquals(SAY.keySet(), Case.refused().stream().map(Case::id).collect(Collectors.toSet()));
        assertEquals(33, Case.refused().stream().filter(row -> RefusedPages.of(row).isPresent()).count());
    }

    private static void refused(Case row, RefusedPages.Written written) {
        Door.Outcome outcome = Door.open(written.page().markdown());
        assertEquals(List.of(row.kind().replace('_', '-')), outcome.errors().stream().map(Finding::id).toList(),
                written.page()::markdown);
        Finding finding = outcome.errors().get(0);
        assertEquals(written.lineNumber(), finding.at().line());
        says(row, WORDS.words(finding));
    }

    /** Masses that make up a formula have no place in a procedure. */
    private static void refusedByTheCore(Case row) {
        Map<String, Double> percent = new LinkedHashMap<>();
        row.given().keySet().forEach(name -> percent.put(name.substring("percent_".length()), row.number(name)));
        CompositionResult result = MassComposition.empiricalOfPercent(percent, MassComposition.RATIO_TOLERANCE,
                Door.TABLES.elements());
        CompositionTrouble trouble = assertInstanceOf(CompositionResult.Bad.class, result).trouble();
        assertEquals(row.kind().replace('_', '-'), trouble.id());
        says(row, WORDS.words(trouble.id(), trouble.fields()));
    }

    private static void says(Case row, FindingWords.Words words) {
        String all = words.headline() + "\n" + String.join("\n", words.mend()) + "\n" + String.join("\n", words.more());
        SAY.get(row.id()).forEach(part ->
                assertTrue(all.contains(part), () -> "'" + part + "' (" + row.shouldSay() + ") is not in: " + all));
    }
}
