package tarewright.procedure.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Found;
import tarewright.procedure.check.Checks;
import tarewright.procedure.resolve.ResolvedGraph.Point;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** Amounts dealt to groups and runs, dilution series, graphs. */
class DealsTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final String CHALK = """
            ---
            title: Chalk
            groups: %d
            runs: %d
            spare: 10 %%
            ---

            ```apparatus
            cylinder: measuring cylinder, 25 mL; capacity 25 mL; graduation 0.5 mL; one per group
            balance: balance; reads to 0.01 g; one per class
            ```

            ```reaction settling
            CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + NaCl(aq)
            limiting: varies
            ```

            ```solution calcium
            solute: CaCl2
            strength: 0.50 mol/L
            volume: 15.0 mL
            measure with: cylinder
            ```

            ```solution carbonate
            solute: Na2CO3
            strength: 0.50 mol/L
            %s
            measure with: cylinder
            ```

            ```solid chalk
            substance: CaCO3
            made by: settling
            ```

            ```graph turn
            x: %s
            y: mass of chalk%s
            ```

            1. Measure {calcium}. Add {carbonate}.
            """;
    private static final String THREE = "vary: 10.0 mL; 20.0 mL; 25.0 mL";
    private static final String LADDER = """
            ---
            title: Ladder
            ---

            ```apparatus
            pipette: graduated pipette; graduation 0.1 mL; one per group
            ```

            ```solution stock
            solute: CuSO4
            strength: 0.50 mol/L
            ```

            ```solution ladder
            made from: stock
            series: %s
            made up to: 10.0 mL
            measure with: pipette
            ```

            ```graph curve
            x: strength of ladder
            y: absorbance; 0 to 1
            of: %s
            ```

            1. Make {strength of ladder 2} from {ladder 2}.
            """;

    private static Found<Resolved> read(String text) {
        Found<Resolved> found = Resolver.resolve("test", Reader.read(new SourceText("test.md", text)).value(), Overrides.NONE, TABLES);
        List<tarewright.finding.Finding> all = new ArrayList<>(found.findings());
        all.addAll(Checks.run(found.value()));
        return new Found<>(found.value(), all);
    }

    private static Found<Resolved> chalk(int groups, int runs, String amount, String x, String range) {
        return read(String.format(CHALK, groups, runs, amount, x, range));
    }

    private static List<String> ids(Found<Resolved> found) {
        return found.findings().stream().map(f -> f.id()).filter(id -> !id.equals("waste-missing")).toList();
    }

    /** Fourteen groups and three amounts: five, five and four groups. */
    @Test
    void amountsGoToTheGroupsInTurn() {
        Resolved chalk = chalk(14, 1, THREE, "volume of carbonate", "").value();
        assertEquals(List.of(5, 5, 4), chalk.hands().stream().map(Hand::times).toList());
        assertEquals(List.of(1, 4, 7, 10, 13), chalk.hands().get(0).groups());
        List<Double> dealt = chalk.hands().stream().map(h -> h.dealt().get("carbonate").shownValue()).toList();
        for (int i = 0; i < 3; i++) {
            assertEquals(new double[] {10, 20, 25}[i], dealt.get(i), 1e-9);
        }
    }

    /** 1.1 × the sum over all groups, however many they are and whatever hand the total is asked of. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 7, 14, 30})
    void theTotalOfTheClassIsTheSumOverItsGroups(int groups) {
        Resolved chalk = chalk(groups, 1, THREE, "volume of carbonate", "").value();
        double[] amounts = {10, 20, 25};
        double sum = IntStream.range(0, groups).mapToDouble(g -> amounts[g % 3]).sum() * 1.1;
        double up = Math.ceil(sum * 10 - 1e-6) / 10;
        for (Hand hand : chalk.hands()) {
            assertEquals(up, hand.resolved().quantity("carbonate").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().shownValue(), 1e-9);
        }
        List<Integer> everyone = chalk.hands().stream().flatMap(h -> h.groups().stream()).sorted().toList();
        assertEquals(IntStream.rangeClosed(1, groups).boxed().toList(), everyone);
    }

    @Test
    void amountsDealtOverRunsGoToEveryGroup() {
        Found<Resolved> chalk = chalk(4, 3, THREE + "\nvary over: runs", "volume of carbonate", "");
        assertEquals(List.of(), ids(chalk));
        assertEquals(List.of(List.of(1), List.of(2), List.of(3)), chalk.value().hands().stream().map(Hand::runs).toList());
        assertTrue(chalk.value().hands().stream().allMatch(h -> h.groups().equals(List.of(1, 2, 3, 4))));
        assertEquals(1.1 * 4 * 55, chalk.value().quantity("carbonate").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().shownValue(), 1e-9);
        assertEquals(List.of("few-runs"), ids(chalk(4, 2, THREE + "\nvary over: runs", "volume of carbonate", "")));
    }

    /** 15.0 mL of 0.50 mol/L each way: 7.5 mmol of chalk at the turn, 100.087 g/mol (sum of the IUPAC 2021 atomic weights of Ca, C and 3 O). */
    @Test
    void theLineForTheKeyTurnsWhereTheOtherReactantRunsOut() {
        ResolvedGraph turn = chalk(14, 1, THREE, "volume of carbonate", "; 0 to 1 g").value().graphs().get(0);
        assertEquals(3, turn.line().size(), turn.line().toString());
        Point corner = turn.line().get(1);
        assertEquals(15.0, corner.x(), 1e-6);
        assertEquals(0.75065, corner.y(), 1e-4);
        assertEquals(0, turn.line().get(0).y(), 1e-12);
        assertEquals(corner.y(), turn.line().get(2).y(), 1e-9);
        assertEquals(List.of("1", "2", "3"), turn.expected().stream().map(Point::of).toList());
        assertEquals(0.50043, turn.expected().get(0).y(), 1e-4);
    }

    /** The axis of what is dealt ends at the largest amount; an axis that only the answer could number has no numbers. */
    @Test
    void noAxisTellsTheAnswer() {
        ResolvedGraph open = chalk(14, 1, THREE, "volume of carbonate", "").value().graphs().get(0);
        assertEquals(25, open.x().scale().orElseThrow().to(), 0);
        assertEquals(5, open.x().scale().orElseThrow().step(), 0);
        assertTrue(open.y().scale().isEmpty());
        ResolvedGraph other = chalk(14, 1, "volume: 3.0 mL", "volume of carbonate", "; 0 to 1 g").value().graphs().get(0);
        assertEquals(List.of(0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0), other.y().scale().orElseThrow().ticks());
    }

    /** Dilution: c = 0.50 mol/L × V / 10.0 mL. */
    @Test
    void aSeriesIsAsManySolutions() {
        Found<Resolved> found = read(String.format(LADDER, "1.0 mL; 2.0 mL; 4.0 mL", "ladder"));
        assertEquals(List.of(), ids(found));
        double[] strengths = {0.05, 0.10, 0.20};
        for (int i = 0; i < 3; i++) {
            ResolvedQuantity member = found.value().quantity("ladder " + (i + 1)).orElseThrow();
            assertEquals(strengths[i], member.figure(Property.STRENGTH).orElseThrow().shownValue(), 1e-12);
        }
        ResolvedGraph curve = found.value().graphs().get(0);
        assertEquals(0.5, curve.x().scale().orElseThrow().to(), 1e-12);
        assertEquals(List.of(), curve.expected());
    }

    @ParameterizedTest
    @ValueSource(strings = {"vary: 10.0 mL", "vary: 10.0 g; 20.0 g", "vary: 10.0 mL; 0.5 mol", "vary: 10.0 mL; 0 mL", "vary: 0.5 mol/L; 1.0 mol/L"})
    void amountsThatCannotBeDealtAreTold(String vary) {
        Found<Resolved> found = chalk(6, 1, vary, "volume of carbonate", "");
        assertEquals(1, ids(found).size(), found.findings().toString());
        assertEquals(List.of(), found.value().dealt());
    }

    @Test
    void mistakesOfGraphsAreToldAtTheirPlace() {
        assertEquals(List.of("unknown-name"), ids(chalk(6, 1, THREE, "volume of carbonat", "")));
        assertEquals(List.of("axis-kind"), ids(chalk(6, 1, THREE, "volume of carbonate", "; 0 to 5 mL")));
        assertEquals(List.of("range-backwards"), ids(chalk(6, 1, THREE, "volume of carbonate", "; 5 to 1 g")));
        assertEquals(List.of("amount-fixed-twice"), ids(chalk(6, 1, "volume: 5.0 mL\n" + THREE, "volume of carbonate", "")));
        assertTrue(ids(read(String.format(LADDER, "1.0 mL; 2.0 mL", "lader"))).contains("unknown-name"));
    }

    /** With less carbonate than calcium in every hand nothing varies. */
    @Test
    void whatIsSaidToVaryMustVary() {
        assertEquals(List.of("limiting-does-not-vary"), ids(chalk(6, 1, "vary: 5.0 mL; 10.0 mL", "volume of carbonate", "")));
        assertEquals(List.of(), ids(chalk(1, 1, "vary: 5.0 mL; 20.0 mL", "volume of carbonate", "")));
    }

    /** Six groups do it three times each; two amounts are dealt to the groups: each amount is measured out nine times, and only what is dealt is listed. */
    @Test
    void aHandIsDoneByEachOfItsGroupsInEachRun() {
        Resolved chalk = chalk(6, 3, "vary: 10.0 mL; 20.0 mL", "volume of carbonate", "").value();
        assertEquals(List.of(9, 9), chalk.hands().stream().map(Hand::times).toList());
        assertEquals(List.of(List.of(1, 3, 5), List.of(2, 4, 6)), chalk.hands().stream().map(Hand::groups).toList());
        chalk.hands().forEach(h -> assertEquals(java.util.Set.of("carbonate"), h.dealt().keySet()));
        assertEquals(List.of("1", "2"), chalk.hands().stream().map(Hand::label).toList());
        assertEquals(1.1 * 9 * 30, chalk.quantity("carbonate").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().shownValue(), 1e-9);
    }

    /** Where nothing is dealt, or all get the same, there is one hand without a number, and it is that of the whole class. */
    @Test
    void aSingleHandHasNoNumber() {
        Resolved plain = chalk(5, 2, "volume: 10.0 mL", "volume of carbonate", "").value();
        assertEquals(List.of(""), plain.hands().stream().map(Hand::label).toList());
        assertEquals(List.of(1, 2, 3, 4, 5), plain.hands().get(0).groups());
        assertEquals(List.of(1, 2), plain.hands().get(0).runs());
        Resolved alone = chalk(1, 1, THREE, "volume of carbonate", "").value();
        assertEquals(List.of(), alone.dealt());
        assertEquals(10.0, alone.quantity("carbonate").orElseThrow().amount().orElseThrow().shownValue(), 1e-9);
    }
}
