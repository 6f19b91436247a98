package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.check.SafetyChecks;
import tarewright.procedure.resolve.Resolved;
import tarewright.tables.HazardTables;

/**
 * Waste is one figure on every sheet, and its label tells what it is as it is put in. Regulation (EC) No 1272/2008, Annex I, 3.2.3.1.2: a mixture of a pH of 2 or less, or of 11.5 or
 * more, is corrosive until something shows the opposite.
 */
class WasteOfTheClassTest {
    private static final String TWO = """
            ---
            title: T
            groups: 10
            ---
            ```reaction r
            HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)
            ```
            ```solution acid
            solute: HCl
            strength: %s
            volume: 20.0 mL
            ```
            ```solution alkali
            solute: NaOH
            strength: %s
            volume: 20.0 mL
            ```

            1. Pour {acid} into {alkali}.

            ```waste
            of: r
            into: %s
            ```
            """;

    private static List<Piece.Label> waste(String source) {
        return ((Piece.Labels) Fixture.sheet(Sheet.Kind.LABELS, source).pieces().get(0)).labels().stream().filter(l -> Plain.of(l.name()).startsWith("WASTE")).toList();
    }

    /**
     * By hand: 12 × 15 mL and 3 × 5 + 3 × 10 + 2 × (15 + 20 + 25) mL are 345 mL. 10 mL too much of 0.50 mol/L carbonate in 40 mL are 0.125 mol/L; with a basicity constant of
     * 2.1 × 10⁻⁴ mol/L (pKa 10.33, CRC Handbook, from memory) [OH⁻] = 5.0 mmol/L: pH 11.7.
     */
    @Test
    void dealtAmountsLeaveWhatAllGroupsReallyPourTogether() throws Exception {
        Resolved procedure = Fixture.resolve(Files.readString(Path.of("procedures/turning-point-of-chalk.md")));
        WasteContainer salts = BenchSafety.of(procedure, HazardTables.of("").rules()).containers().get(0);

        assertEquals(345e-6, salts.volume().orElseThrow().value(), 1e-9);
        assertEquals(11.7, salts.putIn().orElseThrow().highest(), 0.05);
        assertEquals(7.0, salts.putIn().orElseThrow().lowest(), 0.05);
        for (Sheet.Kind kind : List.of(Sheet.Kind.PREP, Sheet.Kind.SAFETY)) {
            String sheet = Fixture.text(Fixture.sheet(kind, procedure));
            assertTrue(sheet.contains("About 0.35 L from the class. In the vessels that are emptied into it the pH is about 7.0 to 11.7 (estimated): test it. Not into the sink as it is."), sheet);
        }
        String labels = Fixture.text(Fixture.sheet(Sheet.Kind.LABELS, procedure));
        assertTrue(labels.substring(labels.indexOf("WASTE")).contains("H314"), labels);
    }

    /** Who gets how much, by the number on the bottle: 5.0, 10.0, 15.0, 20.0 and 25.0 mL with a tenth to spare, two figures downward. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"Groups 1, 6, 11|5.5 mL|3", "Groups 2, 7, 12|11 mL|3", "Groups 3, 8|16 mL|2", "Groups 4, 9|22 mL|2", "Groups 5, 10|27 mL|2"})
    void eachGroupsBottleOfWhatIsDealtStandsInTheTable(String groups, String share, String many) throws Exception {
        String prep = Fixture.text(Fixture.sheet(Sheet.Kind.PREP, Files.readString(Path.of("procedures/turning-point-of-chalk.md"))));
        assertTrue(prep.contains("| sodium carbonate (0.50 mol/L): " + groups + " | " + share + " | " + many + " | bottle, "), prep);
    }

    /** Excess acid or alkali in 40 mL: 1.0 mmol is 0.025 mol/L, pH 1.6 or 12.4; 0.12 mmol is 3 mmol/L, pH 2.5. */
    @ParameterizedTest
    @CsvSource({"0.55 mol/L, 0.50 mol/L, true", "0.50 mol/L, 0.55 mol/L, true", "0.506 mol/L, 0.50 mol/L, false"})
    void sourOrAlkalineWasteIsLabelledCorrosive(String acid, String alkali, boolean corrosive) {
        Piece.Label label = waste(TWO.formatted(acid, alkali, "waste of the lesson")).get(0);

        assertEquals(corrosive, label.pictograms().contains("GHS05"), label.toString());
        assertEquals(corrosive ? "Danger" : "", label.signalWord());
        assertEquals(corrosive, label.statements().stream().anyMatch(s -> s.startsWith("H314")));
        assertEquals(corrosive, label.foot().stream().anyMatch(f -> f.contains("3.2.3.1.2")), label.toString());
    }

    /** A pH is reckoned without activities: what comes to 11.4 is labelled as what has 11.5 (own rule: the stricter side). */
    @Test
    void aPHJustBesideTheLimitGoesToTheStricterSide() {
        assertTrue(waste(TWO.formatted("0.500 mol/L", "0.505 mol/L", "waste of the lesson")).get(0).pictograms().contains("GHS05"));
    }

    @Test
    void eachContainerHasALabelOfItsOwn() {
        assertEquals(List.of("WASTE: clear liquid", "WASTE: jar for paper"), waste(TWO.formatted("0.50 mol/L", "0.50 mol/L", "clear liquid; jar for paper")).stream()
                .map(l -> Plain.of(l.name())).toList());
    }

    /** The same pH that the sheet asks for when waste is neutralised, 6 to 9 (drain guides of universities), is what neutral means. */
    @ParameterizedTest
    @CsvSource({"0.55 mol/L, neutral waste, true", "0.55 mol/L, la botella de residuos neutros, true", "0.50 mol/L, neutral waste, false", "0.55 mol/L, acid waste, false"})
    void whatIsCalledNeutralAndIsNotIsTold(String acid, String into, boolean told) {
        String source = TWO.formatted(acid, "0.50 mol/L", into);
        Resolved procedure = Fixture.resolve(source);

        assertEquals(told, SafetyChecks.run(procedure, HazardTables.of("").rules()).stream().anyMatch(f -> f.id().equals("not-neutral")));
        assertEquals(told, waste(source).stream().anyMatch(l -> Plain.of(l.detail()).contains("NOT NEUTRAL")));
        assertEquals(told, Fixture.text(Fixture.sheet(Sheet.Kind.PREP, procedure)).contains("NOT NEUTRAL"));
    }

    /** Of two portions in one vessel each is looked at: a group that pours in acid pours it into the jar before another's alkali. */
    @Test
    void theLabelIsThatOfTheWorstThatIsPutIn() throws Exception {
        Resolved procedure = Fixture.resolve(Files.readString(Path.of("procedures/turning-point-of-chalk.md")));
        WasteContainer salts = BenchSafety.of(procedure, HazardTables.of("").rules()).containers().get(0);

        assertEquals(11.7, salts.worst().orElseThrow(), 0.05);
        assertFalse(salts.advice().hazards().harmless());
    }

    /**
     * What must be neutralised waits in a jar on the front bench, with what neutralises it and pH paper, each with a label; students neutralise nothing. By hand: 2.0 mmol of acid too much
     * in each of ten groups are 20 mmol; × 84.006 g/mol (IUPAC weights 2021) = 1.7 g. 400 mL fill half of 1 L (common practice, no source).
     */
    @Test
    void whatIsNeutralisedBeforeTheSinkWaitsInAJarOnTheFrontBench() {
        Resolved procedure = Fixture.resolve(TWO.formatted("0.60 mol/L", "0.50 mol/L", "the sink\nneutralise with: sodium hydrogencarbonate"));
        String prep = Fixture.text(Fixture.sheet(Sheet.Kind.PREP, procedure));
        String bench = prep.substring(prep.indexOf("Front bench"), prep.indexOf("Afterwards"));

        for (String row : List.of("| waste jar, 1000 mL: to be neutralised before the sink | 1 |", "| sodium hydrogencarbonate, to neutralise waste | 1.7 g |", "| pH paper | 1 |")) {
            assertTrue(bench.contains(row), bench);
        }
        for (Sheet.Kind kind : List.of(Sheet.Kind.HANDOUT, Sheet.Kind.SAFETY, Sheet.Kind.PREP)) {
            String sheet = Fixture.text(Fixture.sheet(kind, procedure));
            assertTrue(sheet.contains("into the waste jar on the front bench. It is neutralised there. Only then does it go into: the sink."), sheet);
        }
        String labels = Fixture.text(Fixture.sheet(Sheet.Kind.LABELS, procedure));
        assertTrue(labels.contains("WASTE: to be neutralised before the sink"), labels);
        assertTrue(labels.contains("sodium hydrogencarbonate"), labels);
    }

    /** Citric acid is Eye Irrit. 2, H319 (Annex VI, 607-750-00-3, from memory): its box stands on the prep sheet, and its label has it. */
    @Test
    void whatNeutralisesHasItsOwnHazardsOnPrepSheetAndLabel() {
        Resolved procedure = Fixture.resolve(TWO.formatted("0.50 mol/L", "0.60 mol/L", "alkali waste"));

        assertTrue(Fixture.text(Fixture.sheet(Sheet.Kind.PREP, procedure)).contains("citric acid, to neutralise waste"));
        String labels = Fixture.text(Fixture.sheet(Sheet.Kind.LABELS, procedure));
        assertTrue(labels.substring(labels.indexOf("citric acid")).contains("H319"), labels);
    }

    /** What is as good as neutral needs no jar, no neutraliser and no paper. */
    @Test
    void whatIsNeutralGoesDownTheSinkAndNothingIsPutOutForIt() {
        String prep = Fixture.text(Fixture.sheet(Sheet.Kind.PREP, TWO.formatted("0.50 mol/L", "0.50 mol/L", "the sink")));

        assertFalse(prep.contains("| waste jar"), prep);
        assertFalse(prep.contains("pH paper |"), prep);
    }

    /** The solid that the author sends somewhere by itself has a jar and a label too. */
    @Test
    void theSolidThatIsKeptApartHasItsOwnJar() throws Exception {
        String source = Files.readString(Path.of("procedures/turning-point-of-chalk.md"));

        assertTrue(Fixture.text(Fixture.sheet(Sheet.Kind.PREP, source)).contains("| waste jar: solid waste | 1 |"));
        assertEquals(List.of("WASTE: aqueous salts", "WASTE: solid waste"), waste(source).stream().map(l -> Plain.of(l.name())).toList());
    }
}
