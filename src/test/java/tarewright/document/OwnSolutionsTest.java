package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tarewright.procedure.resolve.Property;

/** What a group makes up itself is not fetched, and what is handed out is enough. */
class OwnSolutionsTest {
    private static final String LADDER = """
            ---
            title: A ladder
            groups: 7
            spare: 10 %
            ---
            ```apparatus
            pipette: graduated pipette, 25 mL; graduation 0.1 mL; one per group
            balance: balance; reads to 0.01 g; one per class
            ```

            ```solid crystals
            substance: copper(II) sulfate pentahydrate
            mass: 2.50 g
            weigh with: balance
            ```

            ```solution standard
            solute: copper(II) sulfate
            made from: crystals
            strength: 0.100 mol/L
            made up to: 100.0 mL
            label as: Blue 1
            ```

            ```solution second
            made from: standard
            strength: 0.0500 mol/L
            made up to: 50.0 mL
            measure with: pipette
            label as: Blue 2
            ```

            ```solution sample
            solute: copper(II) sulfate
            strength: 0.070 mol/L
            volume: 15 mL
            label as: Sample U
            ```

            1. Dissolve {crystals}. Dilute {taken of second} to make {label of second}. Compare {sample} of {label of sample}.
            """;

    @ParameterizedTest
    @EnumSource(value = Sheet.Kind.class, names = {"HANDOUT", "KEY", "SAFETY", "PREP"})
    void aSolutionThatAGroupMakesIsNoRowOfWhatIsHandedOut(Sheet.Kind kind) {
        String text = Fixture.text(Fixture.sheet(kind, LADDER));
        assertTrue(text.contains("| Sample U") || kind == Sheet.Kind.SAFETY && text.contains("Sample U"), text);
        assertTrue(text.lines().anyMatch(l -> l.startsWith("| copper(II) sulfate pentahydrate") && l.contains("2.50 g")), text);
        assertTrue(text.lines().filter(l -> l.startsWith("| Blue")).allMatch(l -> l.contains("made up by the group")), text);
        assertFalse(text.contains("770.0 mL"), text);
    }

    /** 7 groups, a tenth to spare: 7 × 15 mL × 1.1 = 115.5 mL; a total of 115 mL would leave the last group short. */
    @ParameterizedTest
    @CsvSource({"sample, 116, 115.5", "crystals, 19.25, 19.25"})
    void aClassTotalIsNeverRoundedDown(String block, double total, double exactly) {
        var figure = Fixture.resolve(LADDER).quantity(block).orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow();
        assertEquals(total, figure.shownValue(), 1e-9);
        assertEquals(exactly, figure.unit().fromSi(figure.from().get(0).value()), 1e-9);
    }

    @Test
    void theKeySaysWhyATotalIsRoundedUp() {
        String key = Fixture.text(Fixture.sheet(Sheet.Kind.KEY, LADDER));
        assertTrue(key.contains("115.5 mL ≈ 116 mL   (up to the next 1 mL, so that there is enough for all"), key);
    }
}
