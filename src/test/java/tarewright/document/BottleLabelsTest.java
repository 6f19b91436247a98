package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Finding;
import tarewright.procedure.declare.DeclarationReader;
import tarewright.procedure.declare.LabelPaper;
import tarewright.procedure.syntax.Reader;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** Labels for bottles and waste. Classes and statements: Regulation (EC) No 1272/2008, Annex I and VI, as the hazard tables print them. */
class BottleLabelsTest {
    private static final String ACID = """
            ---
            title: T
            groups: 10
            spare: 0 %%
            %s---

            ```solution acid
            solute: HCl
            strength: %s
            volume: %s
            %s```

            1. Measure {acid}.
            """;

    private static Piece.Labels sheet(String source) {
        return (Piece.Labels) Fixture.sheet(Sheet.Kind.LABELS, source).pieces().get(0);
    }

    private static Piece.Label only(String source) {
        List<Piece.Label> labels = sheet(source).labels();
        assertEquals(1, labels.size());
        return labels.get(0);
    }

    private static List<String> codes(Piece.Label label) {
        return label.statements().stream().map(s -> s.substring(0, s.indexOf(' '))).filter(c -> c.matches("(H|EUH)[0-9].*")).toList();
    }

    @Test
    void everyBottleEveryStockAndTheWasteHaveALabel() {
        List<String> names = sheet(Fixture.source("hydrogen")).labels().stream().map(l -> Plain.of(l.name())).toList();

        assertTrue(names.containsAll(List.of("magnesium", "hydrochloric acid", "WASTE: dilute acid waste")), names.toString());
        assertFalse(names.contains("hydrogen"), "a gas that is made has no bottle");
    }

    /** Annex VI, 017-002-01-X: Skin Corr. 1B from 25 %; so the stock is classified as it is sold and the dilute acid is not. */
    @Test
    void aStockIsLabelledAtItsOwnStrength() {
        List<Piece.Label> labels = sheet(ACID.formatted("", "0.5 mol/L", "10 mL", "made from: concentrated hydrochloric acid\n")).labels();

        assertEquals(List.of(), codes(labels.get(0)));
        assertEquals("concentrated hydrochloric acid", Plain.of(labels.get(1).name()));
        assertEquals(List.of("H314", "H335"), codes(labels.get(1)));
        assertEquals("Danger", labels.get(1).signalWord());
        assertTrue(Plain.of(labels.get(1).detail()).contains("% w/w"), labels.get(1).detail().toString());
    }

    /**
     * Annex VI, 017-002-01-X: H315, H319 and H335 from 10 %. Annex I, 1.5.2.1.1 (b) 12 and 13 let a package of at most 125 mL leave out the
     * irritation; (b) 14 lets H335 go only where it is not supplied to the general public, so it stays. Ten groups at 12 mL are 120 mL.
     */
    @ParameterizedTest
    @CsvSource({"12 mL, H335", "13 mL, H315 H319 H335"})
    void aSmallBottleHasTheReducedLabel(String volume, String codes) {
        Piece.Label label = only(ACID.formatted("", "12 % w/w", volume, ""));

        assertEquals(List.of(codes.split(" ")), codes(label));
        assertEquals(List.of("GHS07"), label.pictograms());
        assertEquals("Warning", label.signalWord());
        boolean told = label.foot().stream().anyMatch(f -> f.contains("CLP Annex I 1.5.2.1.1 (b) 12"));
        assertEquals(volume.equals("12 mL"), told, label.foot().toString());
    }

    /** Annex VI: H314 of hydrochloric acid from 25 %; H318 of copper sulfate; H331 of nitric acid (007-030-00-3). */
    @ParameterizedTest
    @CsvSource({"HCl, 30 % w/w, H314", "CuSO4.5H2O, 20 % w/w, H318", "HNO3, 60 % w/w, H331"})
    void aSmallBottleKeepsWhatCorrodesBlindsOrPoisons(String solute, String strength, String code) {
        Piece.Label label = only(ACID.replace("HCl", solute).formatted("", strength, "1 mL", ""));

        assertTrue(codes(label).contains(code), label.statements().toString());
    }

    @Test
    void whatStudentsFindOutIsNotOnTheLabelButItsHazardsAre() {
        Piece.Label label = only(ACID.formatted("", "6.0 mol/L", "50 mL", "found by students: yes\nlabel as: Sample A\n"));
        String text = label.name() + " " + label.detail() + " " + label.statements() + " " + label.foot();

        assertEquals("Sample A", Plain.of(label.name()));
        assertEquals(List.of(), label.detail());
        assertEquals(List.of("H315", "H319", "H335"), codes(label));
        assertFalse(text.contains("6.0") || text.contains("HCl") || text.contains("hydrochloric"), text);
    }

    @Test
    void whatIsNotKnownSaysSoOnItsBottle() {
        Piece.Label label = only("---\ntitle: T\n---\n```solid odd\nsubstance: Rb2WO4\nmass: 1.0 g\n```\n\n1. Weigh {odd}.\n");

        assertFalse(label.known());
        assertTrue(label.statements().get(0).startsWith("Hazards not known: treat as hazardous."), label.statements().toString());
    }

    @Test
    void dateMadeUseByAndMakerAreLinesToFill() {
        Piece.Label label = only(ACID.formatted("", "1.0 mol/L", "50 mL", "keeps: 6 months\n"));

        assertTrue(label.foot().get(0).startsWith("Made: __"), label.foot().toString());
        assertTrue(label.foot().get(1).startsWith("Use by: __") && label.foot().get(1).endsWith("(keeps 6 months)"), label.foot().toString());
        assertTrue(label.foot().get(2).startsWith("Maker: __"), label.foot().toString());
    }

    @Test
    void whatIsCollectedThoughNothingReactsHasALabelTooAndWhatGoesDownTheSinkHasNone() {
        String collected = ACID.replace("HCl", "CuSO4.5H2O").formatted("", "0.5 mol/L", "50 mL", "") + "\n```waste\ninto: copper waste\n```\n";
        List<Piece.Label> labels = sheet(collected).labels();

        assertEquals("WASTE: copper waste", Plain.of(labels.get(1).name()));
        assertEquals(codes(labels.get(0)), codes(labels.get(1)));
        String poured = "\n```waste\ninto: the sink\n```\n";
        assertEquals(1, sheet(ACID.replace("HCl", "NaCl").formatted("", "0.1 mol/L", "50 mL", "") + poured).labels().size());
        assertEquals("WASTE: to be neutralised before the sink", Plain.of(sheet(ACID.formatted("", "0.1 mol/L", "50 mL", "") + poured).labels().get(1).name()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"7 rows; 3 columns; margins 15 mm and 7.5 mm|7|3|15|7.5", "7; 3; 1.5 cm; 8 mm|7|3|15|8",
        "3 columns|4|3|13|6", "2 columns; 5 rows; 10 mm|5|2|10|10"})
    void theFrontMatterSaysHowTheLabelPaperIsDivided(String field, int rows, int columns, double top, double left) {
        Piece.LabelGrid grid = sheet(ACID.formatted("labels: " + field + "\n", "1 mol/L", "50 mL", "")).grid();

        assertEquals(new Piece.LabelGrid(columns, rows, top, left), grid);
        assertEquals(new Piece.LabelGrid(LabelPaper.USUAL.columns(), LabelPaper.USUAL.rows(), LabelPaper.USUAL.marginTop(),
                LabelPaper.USUAL.marginLeft()), sheet(ACID.formatted("", "1 mol/L", "50 mL", "")).grid());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 rows", "21 rows", "7 columns", "4; 2; 61 mm", "4 rows; 5 rows", "wide", "4; 2; 3", "-1 rows", "10 mm; 10 mm; 10 mm", "9999"})
    void labelPaperThatCannotBeIsFound(String field) {
        List<Finding> findings = new ArrayList<>(DeclarationReader.read(
                Reader.read(new SourceText("p.md", ACID.formatted("labels: " + field + "\n", "1 mol/L", "50 mL", ""))).value(), Tables.load())
                .findings());

        assertEquals(List.of("not-label-paper"), findings.stream().map(Finding::id).toList());
    }

    /** Annex VI 029-023-00-4: H302, H318, H400, H410 of the pentahydrate. A salt as a solid and dissolved is one substance in the waste, not twice as much. */
    @Test
    void oneSubstanceFromTwoBottlesIsNotCountedTwiceInTheWaste() {
        String both = ACID.replace("HCl", "CuSO4").formatted("", "0.5 mol/L", "50 mL", "")
                + "\n```solid crystals\nsubstance: copper(II) sulfate pentahydrate\nmass: 2.0 g\n```\n\n```waste\ninto: copper waste\n```\n";
        List<Piece.Label> labels = sheet(both).labels();

        assertEquals(List.of("H302", "H318", "H410"), codes(labels.get(labels.size() - 1)));
    }

    /** Phenolphthalein is sold in ethanol and in water with ethanol (common practice, no source): ethanol is H225 and H319 (Annex VI, 603-002-00-5, as corrected by suppliers). */
    @Test
    void anIndicatorWhoseSolventIsNotToldIsNeverNotClassified() {
        String source = "---\ntitle: T\n---\n\n```solution drops\nsolute: phenolphthalein\nstrength: 0.1 % w/v\nvolume: 1 drop\nrole: indicator\n```\n\n1. Add {drops}.\n";
        Piece.Label label = only(source);

        assertTrue(label.statements().get(0).startsWith("Solvent not told."), label.toString());
        assertFalse(label.known());
        for (Sheet.Kind kind : List.of(Sheet.Kind.HANDOUT, Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS)) {
            String text = Fixture.text(Fixture.sheet(kind, source));
            assertFalse(text.contains("Not classified as hazardous"), kind + text);
            assertTrue(text.toLowerCase(java.util.Locale.ROOT).contains("solvent"), kind + text);
        }
    }
}
