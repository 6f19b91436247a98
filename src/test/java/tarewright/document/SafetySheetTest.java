package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.procedure.resolve.Resolved;
import tarewright.tables.HazardTables;

/**
 * The panel for wall and bench. Classes and statements: Regulation (EC) No 1272/2008, Annex VI, as the hazard tables print it.
 */
class SafetySheetTest {
    private static String safety(String source) {
        return Fixture.text(Fixture.sheet(Sheet.Kind.SAFETY, source));
    }

    private static final String HYDROGEN = safety(Fixture.source("hydrogen"));

    @ParameterizedTest
    @ValueSource(strings = {"hazard: hydrogen, H₂; less than 100 mL for a group", "H220 Extremely flammable gas",
        "on the wall: Danger", "<GHS02> magnesium, hydrogen", "<M004> Splash goggles", "hazard: hydrochloric acid, 1.0 mol/L; HCl; 10.0 mL for a group",
        "It burns and explodes with air.",
        "No flame, no spark, no hot plate near – because of magnesium (H228); hydrogen (H220)",
        "P377 Leaking gas fire", "hydrogen and air explode at a flame", "dilute acid waste",
        "| hydrochloric acid (1.0 mol/L) | 10.0 mL | 132.0 mL |", "Follow the local rules.", "supplier's safety data sheets",
        "not a risk assessment", "EU CLP, Regulation (EC) No 1272/2008, Annex VI", "From memory, not checked against the source"})
    void holds(String line) {
        assertTrue(HYDROGEN.contains(line), HYDROGEN);
    }

    @Test
    void aReadingIsNotToldOnTheWall() {
        assertFalse(HYDROGEN.contains("80.1"), HYDROGEN);
    }

    @Test
    void amountsAgreeWithTheHandoutAndTheKey() {
        String source = Fixture.source("precipitation");
        String total = "| sodium sulfate (0.20 mol/L) | 12.0 mL | 158.4 mL |";
        assertTrue(safety(source).contains(total), safety(source));
        assertTrue(Fixture.text(Fixture.sheet(Sheet.Kind.KEY, source)).contains(total));
        String handout = Fixture.text(Fixture.sheet(Sheet.Kind.HANDOUT, source));
        assertTrue(handout.contains("«12.0 mL» of sodium sulfate (0.20 mol/L)"), handout);
        for (Sheet.Kind kind : new Sheet.Kind[] {Sheet.Kind.HANDOUT, Sheet.Kind.KEY}) {
            assertTrue(Fixture.text(Fixture.sheet(kind, source)).contains("Ba²⁺(aq) + SO₄²⁻(aq) → BaSO₄(s)"));
        }
    }

    @Test
    void whatIsNotKnownIsTreatedAsHazardous() {
        String panel = safety("---\ntitle: T\n---\n```solid odd\nsubstance: Rb2WO4\nmass: 1.0 g\n```\n\n1. Weigh {odd}.\n");
        assertTrue(panel.contains("Hazards not known: treat as hazardous."), panel);
        assertTrue(panel.contains("Some hazards are not known."), panel);
        assertTrue(panel.contains("(hazards not known)"), panel);
    }

    /** Bleach and acid on one bench, in no common reaction: chlorine (US EPA-600/2-80-076, compatibility chart). */
    @Test
    void whatMustNotMeetIsSaid() {
        String panel = safety("""
                ---
                title: T
                ---
                ```solution bleach
                solute: sodium hypochlorite
                strength: 5 % w/w
                density: 1.08 g/mL
                volume: 5 mL
                ```

                ```solution acid
                solute: HCl
                strength: 2 mol/L
                volume: 5 mL
                ```

                1. Take {bleach} or {acid}.
                """);
        assertTrue(panel.contains("Keep apart"), panel);
        assertTrue(panel.contains("must never meet"), panel);
    }

    @Test
    void aGasThatIsToxicDemandsAHood() {
        String source = """
                ---
                title: T
                hood: no
                room: 20 °C; 101.3 kPa; 180 m3
                ---
                ```reaction making
                FeS(s) + HCl(aq) -> FeCl2(aq) + H2S(g)
                ```

                ```solid lump
                substance: FeS
                mass: 1.0 g
                ```

                ```solution acid
                solute: HCl
                strength: 2 mol/L
                volume: 50 mL
                ```

                ```gas smell
                substance: H2S
                made by: making
                ```

                1. Mix {lump} and {acid}.
                """;
        String panel = safety(source);
        assertTrue(panel.contains("There is no fume hood, and one is needed here."), panel);
        assertTrue(panel.contains("H330"), panel);
        assertTrue(safety(source.replace("hood: no", "hood: yes")).contains("Work in the fume hood."));
    }

    @Test
    void aCountryWithoutAListOfItsOwnIsTold() {
        String sentence = "is at hand here. EU CLP, Regulation (EC) No 1272/2008 is used instead.";
        assertTrue(inCountry("NZ").contains("No list of NZ " + sentence), inCountry("NZ"));
        assertFalse(inCountry("DE").contains(sentence), inCountry("DE"));
        assertFalse(HYDROGEN.contains(sentence), HYDROGEN);
    }

    private static String inCountry(String code) {
        Resolved procedure = Fixture.resolve(Fixture.source("hydrogen").replace("code: H1", "code: H1\ncountry: " + code));
        return Fixture.text(new Documents(HazardTables.of(code))
                .sheets(procedure, EnumSet.of(Sheet.Kind.SAFETY), List.of(), "abcdefg", "").get(0));
    }

    /** The amount worked by hand: 0.5 mol/L x 20 mL less 2 x 1 mmol is 8 mmol; twelve groups, 84.006 g/mol: 8.1 g. pH of 0.40 mol/L: 0.4. */
    private static final String LEFT = """
            ---
            title: T
            groups: 12
            ---

            ```reaction fizz
            Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)
            ```

            ```solid ribbon
            substance: magnesium
            moles: 1.000 mmol
            ```

            ```solution acid
            solute: HCl
            strength: 0.5000 mol/L
            volume: 20.00 mL
            %s```

            1. Put {ribbon} into {acid}.

            ```waste
            of: fizz
            into: tub
            neutralise with: sodium hydrogencarbonate
            ```
            """;

    @Test
    void whatIsLeftIsSaidWithItsPHAndHowToNeutraliseIt() {
        String panel = safety(LEFT.formatted(""));
        assertTrue(panel.contains("About 0.24 L from the class. Its pH comes to about 0.4 (estimated): test it."), panel);
        assertTrue(panel.contains("about 8.1 g of sodium hydrogencarbonate") && panel.contains("Stop when pH paper shows 6 to 9."), panel);
        assertFalse(panel.contains("pH not known"), panel);
    }

    /** 10 mmol of alkali left in each of twelve groups, three to a mole of citric acid of 192.12 g/mol: 7.7 g. */
    @Test
    void whatStudentsFindOutIsNotToldByItsWaste() {
        String source = LEFT.replace("Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)", "NaOH(aq) + HCl(aq) -> NaCl(aq) + H2O(l)")
                .replace("```solid ribbon\nsubstance: magnesium\nmoles: 1.000 mmol", "```solution ribbon\nsolute: NaOH\nstrength: 0.5000 mol/L\nvolume: 40.00 mL")
                .replace("sodium hydrogencarbonate", "citric acid");
        String open = safety(source.formatted(""));
        assertTrue(open.contains("about 7.7 g of citric acid"), open);
        String panel = safety(source.formatted("found by students: yes\nlabel as: Sample A\n"));
        assertTrue(panel.contains("To neutralise it: citric acid") && panel.contains("Test its pH."), panel);
        assertFalse(panel.contains("7.7 g") || panel.contains("pH comes to"), panel);
    }
}
