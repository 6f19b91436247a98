package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tarewright.procedure.resolve.Slip;
import tarewright.procedure.resolve.Slip.Kind;

/**
 * The wrong answers of the common mistakes, each worked by hand. Molar masses from Prohaska et al. (2022), R = 8.3145 J/(mol K), Vm(0 °C, 101.325 kPa) = 22.414 L/mol
 * (CODATA), p(H₂O, 20 °C) = 2.339 kPa (Wagner and Pruß).
 */
class SlipsTest {
    private static List<Slip> slips(Page page) {
        return Door.open(page.wasted().markdown()).sound().resolved().answers().get(0).slips();
    }

    private static double value(List<Slip> slips, Kind kind) {
        return slip(slips, kind).value();
    }

    private static Slip slip(List<Slip> slips, Kind kind) {
        Optional<Slip> found = slips.stream().filter(s -> s.kind() == kind).findFirst();
        return found.orElseThrow(() -> new AssertionError(kind + " not in " + slips));
    }

    private static boolean has(List<Slip> slips, Kind kind) {
        return slips.stream().anyMatch(s -> s.kind() == kind);
    }

    private static Page gas(String collected) {
        return new Page("Gas").front("room: 20 °C; 101.3 kPa").block("reaction dissolving", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)")
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL")
                .block("solid ribbon", "substance: Mg", "mass: 0.0800 g").block("gas hydrogen", "substance: H2", "made by: dissolving", "collected: " + collected)
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20.0 mL");
    }

    /**
     * Dry gas of 3.2915 mmol (0.0800 g / 24.305 g/mol): 79.20 mL at 20 °C and 101.3 kPa. By 22.414 L/mol 73.78 mL; with 20 for the temperature in the gas law 5.40 mL; two acid for one
     * magnesium taken for one. Acid taken as limiting: 10.0 mmol, 240.6 mL.
     */
    @Test
    void theGasLawTakenWrongly() {
        List<Slip> slips = slips(gas("dry").ask("volume of hydrogen", "mL"));
        assertEquals(73.78, value(slips, Kind.MOLAR_VOLUME_AT_0_C) * 1e6, 0.01);
        assertEquals(5.402, value(slips, Kind.CELSIUS_IN_GAS_LAW) * 1e6, 0.005);
        assertEquals(240.6, value(slips, Kind.EXCESS_TAKEN_AS_LIMITING) * 1e6, 0.1);
        assertFalse(has(slips, Kind.WATER_VAPOUR_FORGOTTEN));
        assertFalse(slip(slips, Kind.MOLAR_VOLUME_AT_0_C).cannotTell());
    }

    /** Moist gas: 81.07 mL; who forgets the vapour finds 79.20 mL. */
    @Test
    void theWaterVapourForgotten() {
        List<Slip> slips = slips(gas("over water").ask("volume of hydrogen", "mL"));
        assertEquals(79.20, value(slips, Kind.WATER_VAPOUR_FORGOTTEN) * 1e6, 0.01);
    }

    /** At 0 °C and 101.325 kPa the molar volume is right: there is no slip to make. */
    @Test
    void whereAMistakeChangesNothingItIsNotListed() {
        List<Slip> slips = slips(new Page("Cold").front("room: 0.00 °C; 101.325 kPa").block("gas oxygen", "substance: O2", "volume: 100.0 mL")
                .ask("moles of oxygen", "mmol"));
        assertFalse(has(slips, Kind.CELSIUS_IN_GAS_LAW));
        assertFalse(has(slips, Kind.MOLAR_VOLUME_AT_0_C));
    }

    private static Page titration() {
        return new Page("Titration").block("apparatus", "burette: burette, 50 mL; graduation 0.1 mL; within 0.05 mL")
                .block("reaction neutralising", "H2SO4(aq) + NaOH(aq) -> Na2SO4(aq) + H2O(l)")
                .block("solution sample", "solute: H2SO4", "strength: 0.0600 mol/L", "volume: 20.00 mL", "found by students: yes", "label as: Sample")
                .block("solution lye", "solute: NaOH", "strength: 0.100 mol/L", "for: sample", "measure with: burette")
                .block("reading titre", "of: volume of lye", "read with: burette");
    }

    /**
     * 24.0 mL × 0.100 mol/L = 2.40 mmol of alkali, 1.20 mmol of acid. One for one: 2.40 mmol; two acid for one alkali: 4.80 mmol; millilitres for litres: a thousand times as much.
     */
    @Test
    void theCoefficientForgottenAndTurned() {
        List<Slip> slips = slips(titration().ask("moles of sample", "mmol"));
        assertEquals(2.40e-3, value(slips, Kind.COEFFICIENT_IGNORED), 1e-9);
        assertEquals(4.80e-3, value(slips, Kind.COEFFICIENT_UPSIDE_DOWN), 1e-9);
        assertEquals(1.20, value(slips, Kind.MILLILITRES_AS_LITRES), 1e-6);
        assertEquals("H2SO4", slip(slips, Kind.COEFFICIENT_IGNORED).about());
    }

    /** In the strength, millilitres stand above and below and cancel: whoever forgets them is right. The coefficient is not: 0.120 and 0.240 for 0.0600 mol/L. */
    @Test
    void millilitresThatCancelAreNoMistake() {
        List<Slip> slips = slips(titration().ask("strength of sample", "mol/L"));
        assertFalse(has(slips, Kind.MILLILITRES_AS_LITRES));
        assertEquals(120, value(slips, Kind.COEFFICIENT_IGNORED), 1e-6);
        assertEquals(240, value(slips, Kind.COEFFICIENT_UPSIDE_DOWN), 1e-6);
    }

    /** 2.497 g of CuSO4·5H2O (249.68 g/mol) are 10.00 mmol; as the dry salt (159.60 g/mol) they would be 15.65 mmol. */
    @Test
    void theWaterOfCrystallisationForgotten() {
        List<Slip> slips = slips(new Page("Blue").block("solid crystals", "substance: CuSO4.5H2O", "mass: 2.497 g").ask("moles of crystals", "mmol"));
        assertEquals(15.65e-3, value(slips, Kind.WATER_OF_CRYSTALLISATION_FORGOTTEN), 5e-6);
        assertEquals("CuSO4.5H2O", slip(slips, Kind.WATER_OF_CRYSTALLISATION_FORGOTTEN).about());
        assertFalse(has(slips, Kind.DIATOMIC_AS_ATOM));
    }

    /** 7.09 g of Cl2 (70.90 g/mol) are 0.1000 mol; by the mass of one atom 0.2000 mol. Ozone has three atoms and is another mistake. */
    @Test
    void theMoleculeTakenForTheAtom() {
        assertEquals(0.2000, value(slips(new Page("Chlorine").block("gas g", "substance: Cl2", "mass: 7.09 g").ask("moles of g", "mol")), Kind.DIATOMIC_AS_ATOM), 2e-4);
        assertFalse(has(slips(new Page("Ozone").block("gas g", "substance: O3", "mass: 4.80 g").ask("moles of g", "mol")), Kind.DIATOMIC_AS_ATOM));
    }

    /** 10.0 mL of 0.50 mol/L made up to 100 mL: 0.050 mol/L; upside down 5.0 mol/L. */
    @Test
    void theDilutionUpsideDown() {
        List<Slip> slips = slips(new Page("Flask").block("solution stock", "solute: HCl", "strength: 0.50 mol/L", "volume: 500 mL")
                .block("solution weak", "made from: stock", "volume: 10.0 mL", "made up to: 100 mL").ask("strength of weak", "mol/L"));
        assertEquals(5000, value(slips, Kind.DILUTION_INVERTED), 1e-6);
    }

    /** 5.00 g of 90.0 % NaCl hold 77.0 mmol; who multiplies by 90 finds 7.70 mol. */
    @Test
    void perCentTakenForTheNumber() {
        List<Slip> slips = slips(new Page("Salt").block("solid salt", "substance: NaCl", "mass: 5.00 g", "purity: 90.0 %").ask("moles of salt", "mmol"));
        assertEquals(7.70, value(slips, Kind.PERCENT_AS_NUMBER), 0.001);
    }

    /** A syringe that reads to 5 mL cannot tell moist from dry: the key has to say so. */
    @Test
    void theNumberCannotTellWhereTheRangeIsWide() {
        List<Slip> slips = slips(gas("over water").block("reading read", "of: volume of hydrogen", "unit: mL", "read with: coarse")
                .block("apparatus", "coarse: large syringe; capacity 100 mL; graduation 10 mL").ask("moles of hydrogen", "mmol"));
        assertTrue(slips.stream().noneMatch(s -> s.kind() == Kind.WATER_VAPOUR_FORGOTTEN && !s.cannotTell()), slips.toString());
    }

    /** Two mistakes that give one number are one line in the key. */
    @Test
    void eachWrongValueIsListedOnce() {
        List<Slip> slips = slips(titration().ask("moles of sample", "mmol"));
        assertEquals(slips.size(), slips.stream().map(s -> Math.round(s.value() * 1e12)).distinct().count());
    }
}
