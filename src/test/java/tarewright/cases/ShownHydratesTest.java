package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import tarewright.procedure.resolve.Property;

/**
 * A salt whose crystal water the students find: its mass is known, and from it and from what is left they find its molar mass.
 * Molar masses from the IUPAC abridged standard atomic weights 2021: CuSO4 159.602, CuSO4.5H2O 249.677 g/mol, CaCO3 100.086, CaO 56.077.
 */
class ShownHydratesTest {
    private static Page blue(String found) {
        return new Page("Blue").wasted().block("apparatus", "balance: balance; reads to 0.01 g")
                .block("reaction heating", "CuSO4.5H2O(s) -> CuSO4(s) + H2O(g)")
                .block("solid blue", "substance: CuSO4.5H2O", "mass: 2.00 g", "weigh with: balance", found, "shown as: CuSO4.xH2O", "label as: Blue")
                .block("solid white", "substance: CuSO4", "made by: heating")
                .block("reading left", "of: mass of white", "read with: balance");
    }

    /** 2.00 g leave 1.2785 g, read as 1.28 g: 8.0199 mmol, so the salt has 2.00 / 8.0199 = 249.38 g/mol; of its own it would be 249.68. */
    @Test
    void theMolarMassIsWorkedFromTheReading() {
        for (String found : new String[] {"found by students: yes", ""}) {
            Door.Outcome outcome = Door.open(blue(found).ask("molar mass of blue", "g/mol").markdown()).sound();
            assertEquals(2.00 / (1.28 / 159.602), outcome.answer().shownValue(), 0.01);
            assertEquals(249.677, outcome.figure("blue", Property.MOLAR_MASS).shownValue(), 0.01);
            Door.Outcome amount = Door.open(blue(found).ask("moles of blue", "mmol").markdown()).sound();
            assertEquals(1280 / 159.602, amount.answer().shownValue(), 1e-4);
        }
    }

    /** The mass was weighed: it is no result, and stays 2.00 g whatever is left. (1.28 / 159.602 × 249.677 would be 2.0024 g.) */
    @Test
    void theMassIsAsWeighed() {
        Door.Outcome outcome = Door.open(blue("found by students: yes").ask("mass of blue - left", "g").markdown()).sound();
        assertEquals(0.72, outcome.answer().shownValue(), 1e-9);
    }

    /** 95 % pure: 1.90 g of salt leave 1.21455 g, read as 1.21 g; 1.90 / (1.21 / 159.602) = 250.615 g/mol. */
    @Test
    void aPurityIsTakenIntoAccount() {
        Door.Outcome outcome = Door.open(blue("found by students: yes\npurity: 95 %").ask("molar mass of blue", "g/mol").markdown()).sound();
        assertEquals(1.90 / (1.21 / 159.602), outcome.answer().shownValue(), 0.01);
    }

    /**
     * A product that is to be found: of 1.00 g of CaCO3, read as 1.00 g, at a yield of 80 % 0.8 × 9.9914 = 7.9931 mmol of CaO come, 0.44823 g. Without the yield it would
     * be 0.5603 g.
     */
    @Test
    void whatIsFoundOfAProductCountsTheYield() {
        Door.Outcome outcome = Door.open(new Page("Lime").wasted().block("apparatus", "balance: balance; reads to 0.01 g")
                .block("reaction burning", "CaCO3(s) -> CaO(s) + CO2(g)", "goes to: 80 %")
                .block("solid chalk", "substance: CaCO3", "mass: 1.00 g", "weigh with: balance")
                .block("solid lime", "substance: CaO", "made by: burning", "found by students: yes", "label as: Product")
                .block("reading chalk taken", "of: mass of chalk", "read with: balance").ask("mass of lime", "g").markdown()).sound();
        assertEquals(0.8 * 1.00 / 100.086 * 56.077, outcome.answer().shownValue(), 1e-5);
    }
}
