package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.finding.Finding;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;

/**
 * What a substance brings into a pot: ions, what a hydrate holds, what a strength says.
 * Each number is worked by hand in the comment beside it, with molar masses from the IUPAC abridged standard atomic weights (Prohaska
 * et al., Pure Appl. Chem. 94 (2022) 573) and R = 8.3145 J/(mol K) (CODATA 2018).
 */
class BroughtIntoThePotTest {
    /**
     * 5.0 mL of 20 volume peroxide give 100 mL of oxygen at 0 °C and 101.325 kPa: that is what the strength says. The catalyst is
     * not used up and does not limit.
     */
    @Test
    void volumeStrengthIsWhatItSays() {
        Door.Outcome outcome = Door.open(new Page("Oxygen").front("gases: ideal").wasted()
                .block("reaction course", "H2O2(aq) -> H2O(l) + O2(g)", "catalyst: MnO2")
                .block("solution peroxide", "solute: H2O2", "strength: 20 vol", "volume: 5.0 mL")
                .block("solid helper", "substance: manganese(IV) oxide", "mass: 0.001 g", "role: catalyst")
                .block("gas oxygen", "substance: oxygen", "made by: course", "at: 0 °C; 101.325 kPa").markdown()).sound();
        assertEquals(100.0, outcome.shown("oxygen", Property.VOLUME), 0.002);
        assertEquals(List.of("peroxide"), account(outcome, 0).limiting());
        assertTrue(outcome.block("helper").figure(Property.EXCESS).isEmpty());
    }

    /**
     * 1.0 mmol of calcium chloride brings 2.0 mmol of chloride: 20 mL of 0.10 mol/L silver, 2.0 mmol × 143.32 g/mol = 0.2866 g of
     * silver chloride.
     */
    @Test
    void calciumChlorideBringsTwoChlorides() {
        Door.Outcome outcome = Door.open(new Page("Chloride").wasted().block("reaction course", "Ag^+(aq) + Cl^-(aq) -> AgCl(s)")
                .block("solution salt", "solute: CaCl2", "strength: 0.10 mol/L", "volume: 10.0 mL")
                .block("solution silver", "solute: AgNO3", "strength: 0.10 mol/L", "for: salt")
                .block("solid white", "substance: AgCl", "made by: course").markdown()).sound();
        assertEquals(20.0, outcome.shown("silver", Property.VOLUME), 1e-9);
        assertEquals(0.2866, outcome.shown("white", Property.MASS), 5e-5);
    }

    /**
     * Iron(II) sulfate brings no iron(III), thiosulfate no sulfite, a hydrogencarbonate no carbonate, acetic acid no hydrogen
     * ions to speak of, table salt no permanganate.
     */
    @ParameterizedTest
    @CsvSource({"FeSO4, Fe^3+", "Na2S2O3, SO3^2-", "NaHCO3, CO3^2-", "acetic acid, H^+", "NaCl, MnO4^-"})
    void aSaltBringsNoOtherIon(String solute, String ion) {
        String markdown = new Page("Ions").wasted().block("solution salt", "solute: " + solute, "strength: 0.10 mol/L",
                "volume: 10.0 mL", "acts as: " + ion).markdown();
        List<Finding> errors = Door.open(markdown).errors();
        assertEquals(List.of("ion-not-brought"), errors.stream().map(Finding::id).toList());
        assertEquals(ion, errors.get(0).at().text());
    }

    /** How many of an ion one formula unit brings: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"CaCl2, Cl^-, 2", "(NH4)2Fe(SO4)2.6H2O, Fe^2+, 1", "H2SO4, H^+, 2", "H2SO4, H3O^+, 2", "HCl, H^+, 1",
            "K2Cr2O7, Cr2O7^2-, 1", "Na2S2O3.5H2O, S2O3^2-, 1",
            "KMnO4, MnO4^-, 1", "FeCl3.6H2O, Fe^3+, 1", "Al2(SO4)3, SO4^2-, 3", "Na2CO3.10H2O, CO3^2-, 1",
                    "Ba(OH)2.8H2O, OH^-, 2", "AgNO3, Ag^+, 1"})
    void ionsAreCounted(String solute, String ion, int count) {
        boolean positive = ion.endsWith("+");
        // Anything of one element and the opposite charge will do as the other side of this equation: it only has to balance.
        int charge = Integer.parseInt("0" + ion.replaceAll(".*\\^|[+-]", "").trim()) == 0 ? 1
                : Integer.parseInt(ion.replaceAll(".*\\^|[+-]", ""));
        String electrons = charge + " e^-";
        String equation = positive ? ion + " + " + electrons + " -> " + ion.replaceAll("\\^.*", "") : ion + " -> "
                + ion.replaceAll("\\^.*", "") + " + " + electrons;
        Door.Outcome outcome = Door.open(new Page("Ions").wasted().block("reaction course", equation)
                .block("solution salt", "solute: " + solute, "strength: 0.10 mol/L", "volume: 10.0 mL", "acts as: " + ion)
                        .markdown()).sound();
        // 1.0 mmol of salt.
        assertEquals(count, account(outcome, 0).reactants().get(0).moles().value() * 1000, 1e-9);
    }

    /**
     * 2.497 g of CuSO4.5H2O (249.677 g/mol) are 10.00 mmol of CuSO4: 0.5585 g of iron (55.845 g/mol). 3 % w/v as CuSO4 (159.602
     * g/mol) is 0.18797 mol/L, whichever crystals it is made from.
     */
    @Test
    void crystalsReactAsWhatTheyHold() {
        Door.Outcome outcome = Door.open(new Page("Copper").wasted()
                .block("reaction course", "CuSO4(aq) + Fe(s) -> Cu(s) + FeSO4(aq)")
                .block("solid blue", "substance: CuSO4.5H2O", "mass: 2.497 g").block("solid iron", "substance: iron", "for: blue")
                .block("solution as crystals", "solute: CuSO4.5H2O", "strength: 3 % w/v as CuSO4", "volume: 100 mL",
                        "role: rinse")
                .block("solution as powder", "solute: CuSO4", "strength: 3 % w/v", "volume: 100 mL", "role: rinse").markdown())
                        .sound();
        assertEquals(0.5585, outcome.shown("iron", Property.MASS), 5e-5);
        assertEquals(0.18797, outcome.shown("as crystals", Property.STRENGTH), 5e-6);
        assertEquals(0.18797, outcome.shown("as powder", Property.STRENGTH), 5e-6);
    }

    /** Starch and mixed dyes have a name and no formula: handled, and in no account. Vinegar is no substance that could react. */
    @Test
    void aMixtureIsHandledAndNotReckonedWith() {
        Door.Outcome outcome = Door.open(new Page("Iodine").wasted()
                .block("reaction course", "I2(aq) + S2O3^2-(aq) -> I^-(aq) + S4O6^2-(aq)")
                .block("solution brown", "solute: iodine", "strength: 0.050 mol/L", "volume: 20.0 mL")
                .block("solution clear", "solute: Na2S2O3.5H2O", "strength: 0.100 mol/L", "for: brown")
                .block("solution drops", "solute: starch", "strength: 1 % w/v", "volume: 1 mL", "role: indicator")
                .block("solution colours", "solute: universal indicator", "volume: 3 drops", "role: indicator")
                .text("{drops} of {label of drops}").markdown()).sound();
        assertEquals(20.0, outcome.shown("clear", Property.VOLUME), 1e-9);
        assertEquals(1, outcome.shown("drops", Property.VOLUME), 1e-9);
        assertTrue(outcome.block("drops").figure(Property.MOLES).isEmpty());
        List<Finding> errors = Door.open(new Page("Vinegar").wasted().block("solution salt", "solute: NaCl", "strength: 1 mol/L",
                "volume: 5 mL", "also: vinegar, 5 % w/v").markdown()).errors();
        assertEquals(List.of("no-formula"), errors.stream().map(Finding::id).toList());
    }

    private static PotAccount account(Door.Outcome outcome, int pot) {
        return outcome.resolved().reactions().get(0).pots().get(pot);
    }
}
