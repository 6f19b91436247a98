package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;

/** Every way in which a strength may be written, against what handbooks and bottles say. */
class StrengthsTest {
    private static Door.Outcome solution(String... fields) {
        return Door.open(new Page("Strengths").wasted().block("solution s", fields).markdown());
    }

    private static Door.Outcome of(String solute, String strength, String density) {
        return solution("solute: " + solute, "strength: " + strength, density.isEmpty() ? "" : "density: " + density, "volume: 10.0 mL");
    }

    private static double molar(String solute, String strength, String density) {
        return of(solute, strength, density).sound().figure("s", Property.STRENGTH).value() / 1000;
    }

    private static List<String> refused(String solute, String strength) {
        return of(solute, strength, "").ids(Severity.ERROR);
    }

    /**
     * Commercial acids and ammonia, amount concentrations as the CRC Handbook of Chemistry and Physics and makers' dilution tables print them (from memory): 37 % hydrochloric acid,
     * 1.18 g/mL, 12.0; 98 % sulfuric, 1.84, 18.4; 70 % nitric, 1.42, 15.8; 85 % phosphoric, 1.685, 14.6; 28 % ammonia, 0.90, 14.8; 50 % sodium hydroxide, 1.53, 19.1 mol/L.
     */
    @ParameterizedTest
    @CsvSource({"HCl,37 % w/w,1.18,12.0", "H2SO4,98 % w/w,1.84,18.4", "HNO3,70 % w/w,1.42,15.8", "H3PO4,85 % w/w,1.685,14.6", "NH3,28 % w/w,0.90,14.8",
        "NaOH,50 % w/w,1.53,19.1"})
    void aBottlesPerCentByMassIsItsMolarStrength(String solute, String strength, String density, double published) {
        assertEquals(published, molar(solute, strength, density + " g/mL"), 0.05);
    }

    /**
     * Phosphoric acid of 85.0 % is 61.6 % as P₂O₅: the trade prints both on one drum (factor 0.7242, from memory; 141.94 / (2 × 97.994) = 0.72423). One P₂O₅ stands for
     * two H₃PO₄, so both are 14.6 mol/L.
     */
    @Test
    void phosphoricAcidCountedAsItsOxideIsTheSameAcid() {
        assertEquals(molar("H3PO4", "85.0 % w/w", "1.685 g/mL"), molar("H3PO4", "61.56 % w/w as P2O5", "1.685 g/mL"), 0.005);
        assertEquals(molar("H3PO4", "30.00 % w/w", ""), molar("H3PO4", "21.73 % w/w as P2O5", ""), 0.002);
    }

    /**
     * Factors that fertiliser and water analysis print (from memory): N × 4.4268 = NO₃⁻, so 10 mg/L of nitrogen is 44.3 mg/L of nitrate, 0.714 mmol/L; ammonium nitrate
     * is 35.0 % N; K₂O × 1.583 = KCl; sodium × 2.3051 = Na₂CO₃.
     */
    @ParameterizedTest
    @CsvSource({"NaNO3,10 mg/L as N,0.000714", "NH4NO3,35.0 g/L as N,0.01249*100", "KCl,10.00 g/L as K2O,0.2123", "Na2CO3,10.00 g/L as Na,0.2175",
        "Na2CO3,0.50 mol/L as Na,0.25", "CuSO4.5H2O,3 % w/v as CuSO4,0.188", "NaNO3,5 mmol/L as N,0.005"})
    void whatIsCountedAsAnElementCountsItsAtoms(String solute, String strength, String expected) {
        double wanted = expected.contains("*") ? Double.parseDouble(expected.split("\\*")[0]) * 100 : Double.parseDouble(expected);
        assertEquals(wanted, molar(solute, strength, ""), 5e-4 * wanted + 1e-7);
    }

    /** Available chlorine: 5.25 % of sodium hypochlorite is 5.0 % as Cl₂ (70.90 / 74.44; the figure printed on bleach, from memory): one Cl₂ for one hypochlorite. */
    @Test
    void availableChlorineIsOneForEachHypochlorite() {
        assertEquals(molar("NaClO", "5.25 % w/v", ""), molar("NaClO", "5.00 % w/v as Cl2", ""), 0.001);
        assertEquals(0.705, molar("NaClO", "5.00 % w/v as Cl2", ""), 0.001);
    }

    /** Hardness: 1 mg/L of magnesium is 4.118 mg/L as CaCO₃ (APHA Standard Methods 2340 B, from memory): 100 mg/L as CaCO₃ is 0.999 mmol/L of either metal. */
    @ParameterizedTest
    @CsvSource({"MgSO4", "CaCl2", "Ca(HCO3)2"})
    void hardnessCountsOneCarbonateForEachMetal(String solute) {
        assertEquals(0.000999, molar(solute, "100 mg/L as CaCO3", ""), 1e-6);
    }

    /** A copper salt's strength says nothing of sodium chloride; and alkalinity as CaCO₃ goes by the acid that is taken up, which the formula does not tell. */
    @ParameterizedTest
    @CsvSource({"NaCl,10 % w/v as CuSO4", "NaHCO3,100 mg/L as CaCO3", "NaCl,1.0 mol/L as CuSO4", "C2H5OH,70 % v/v as CH3OH"})
    void whatDoesNotSettleTheSoluteIsRefused(String solute, String strength) {
        assertEquals(List.of("counted-as-unclear"), refused(solute, strength));
    }

    /**
     * Hydrogen peroxide: 10 volumes is 3.0 % w/v and 0.89 mol/L, 20 volumes 6.1 % and 1.8 mol/L, 100 volumes 30 % and 8.9 mol/L (printed on the bottles; British Pharmacopoeia:
     * 6 % is about 20 volumes, from memory).
     */
    @ParameterizedTest
    @CsvSource({"10 vol,0.892,0.0304", "20 vol,1.785,0.0607", "100 vol,8.92,0.304"})
    void volumesOfOxygenAreMolesOfPeroxide(String strength, double expected, double massPerVolume) {
        assertEquals(expected, molar("H2O2", strength, ""), 0.003 * expected);
        assertEquals(massPerVolume, molar("H2O2", strength, "") * 34.014 / 1000, 0.003 * massPerVolume);
    }

    /** Volumes of oxygen come from hydrogen peroxide alone: of an acid they say nothing. */
    @Test
    void volumesOfOxygenOfAnAcidAreRefused() {
        assertEquals(List.of("not-a-peroxide"), refused("HCl", "20 vol"));
    }

    /** Rubbing alcohol, 70 % v/v of ethanol: 0.70 × 789.3 g/L / 46.07 g/mol = 11.99 mol/L (density: CRC Handbook, 20 °C, from memory). */
    @Test
    void perCentByVolumeCountsThePureLiquid() {
        assertEquals(11.99, molar("C2H5OH", "70 % v/v", ""), 0.02);
    }

    /** Salt and hydrogen chloride are no liquids: what would 10 mL of them be? */
    @ParameterizedTest
    @CsvSource({"NaCl", "glucose", "CuSO4.5H2O", "hydrogen chloride"})
    void perCentByVolumeOfWhatIsNoLiquidIsRefused(String solute) {
        assertEquals(List.of("not-a-liquid"), refused(solute, "10 % v/v"));
    }

    /** Physiological saline: 0.9 % w/v, 9 g/L, 154 mmol/L (printed on the bag). */
    @Test
    void salineIs154MillimolesInALitre() {
        assertEquals(0.154, molar("NaCl", "0.9 % w/v", ""), 5e-5);
        assertEquals(0.154, molar("NaCl", "9 g/L", ""), 5e-5);
        assertEquals(0.154, molar("NaCl", "0.9 g/100 mL", ""), 5e-5);
    }

    /** Mass fractions with their density out of the table: 10 % NaCl, 1.0707 g/mL, 1.832 mol/L; 20 % H2SO4, 1.1394 g/mL, 2.324 mol/L (CRC Handbook, Concentrative properties, from memory). */
    @ParameterizedTest
    @CsvSource({"NaCl,10.0 % w/w,1.832", "NaCl,100 g/kg,1.832", "H2SO4,20.0 % w/w,2.324", "HCl,10.0 % w/w,2.873"})
    void theTableGivesTheDensity(String solute, String strength, double expected) {
        assertEquals(expected, molar(solute, strength, ""), 0.003 * expected);
    }

    /** One value is needed: the weaker end of a range is not what the author meant. */
    @Test
    void aRangeIsNoStrengthAndNoAmount() {
        assertEquals(List.of("range-here"), refused("NaCl", "5 to 10 % w/v"));
        assertEquals(List.of("range-here"), solution("solute: NaCl", "strength: 1.0 mol/L", "volume: 5 to 10 mL").ids(Severity.ERROR));
        assertEquals("7.5 ± 2.5 mL", solution("solute: NaCl", "strength: 1.0 mol/L", "volume: 5 to 10 mL").errors().get(0).fields().get("limits"));
    }

    // --- what is taken from what

    private static Door.Outcome taken(String... fields) {
        return Door.open(new Page("Bottles").wasted().block("solution bottle", "solute: HCl", "strength: 0.50 mol/L", "volume: 500 mL")
                .block("solution s", fields).markdown());
    }

    /** A portion of 0.50 mol/L acid is not 1.0 mol/L. */
    @Test
    void aPortionIsAsStrongAsItsBottle() {
        assertEquals(List.of("portion-strength"), taken("portion of: bottle", "strength: 1.0 mol/L", "volume: 10 mL").ids(Severity.ERROR));
        taken("portion of: bottle", "strength: 0.50 mol/L", "volume: 10 mL").sound();
    }

    /** Lye is not made by diluting acid. */
    @Test
    void aSolutionIsMadeFromItsOwnSubstance() {
        assertEquals(List.of("made-from-other"), taken("solute: NaOH", "made from: bottle", "strength: 0.10 mol/L", "volume: 100 mL").ids(Severity.ERROR));
        Door.open(new Page("Blue").wasted().block("solid crystals", "substance: CuSO4.5H2O", "mass: 2.50 g")
                .block("solution blue", "solute: CuSO4", "made from: crystals", "made up to: 100 mL").markdown()).sound();
    }

    // --- what is used twice has one error

    /**
     * 10.00 mL of stock made up to 100 mL: the whole flask holds the 10.00 mL × 0.500 mol/L that went in, however full it was filled. Its uncertainty is that of the pipette
     * and the stock alone: 5.000 mmol × √((0.0005/0.5)² + (0.005/10)²)/√3 = 3.2 µmol (JCGM 100:2008, 5.2: an input that is used twice counts once).
     */
    @Test
    void theFlaskThatDividesAndMultipliesCountsOnce() {
        Door.Outcome outcome = Door.open(new Page("Flask").wasted().block("solution stock", "solute: HCl", "strength: 0.500 mol/L", "volume: 500 mL")
                .block("solution flask", "made from: stock", "volume: 10.00 mL", "made up to: 100 ± 5 mL").markdown()).sound();
        double expected = 5.000e-3 * Math.hypot(0.0005 / 0.5, 0.005 / 10) / Math.sqrt(3);
        assertEquals(5.000e-3, outcome.figure("flask", Property.MOLES).value(), 1e-12);
        assertEquals(expected, outcome.figure("flask", Property.MOLES).standardUncertainty(), 1e-9);
        assertTrue(outcome.figure("flask", Property.STRENGTH).standardUncertainty() / outcome.figure("flask", Property.STRENGTH).value() > 0.02);
    }

    /** Amount over mass of an acid of w = 10 ± 1 %: both hold the density, which falls out; n/m = w/M, 10 % uncertain, whatever the density's limits. */
    @Test
    void theDensityInAmountAndMassCountsOnce() {
        Door.Outcome outcome = Door.open(new Page("Density").wasted().block("solution s", "solute: HCl", "strength: 10 ± 1 % w/w", "density: 1.05 ± 0.10 g/mL",
                "volume: 10.0 mL").ask("moles of s / mass of s", "mol/kg").markdown()).sound();
        assertEquals(0.1 / Math.sqrt(3), outcome.answer().standardUncertainty() / outcome.answer().value(), 1e-4);
        assertEquals(2.743, outcome.answer().value(), 0.001);
    }

    // --- what is not known, or cannot be

    private static void refusedAt(String place, String id, Door.Outcome outcome) {
        List<tarewright.finding.Finding> found = outcome.errors().stream().filter(f -> f.id().equals(id)).toList();
        assertEquals(1, found.size(), outcome.findings().toString());
        assertEquals(place, found.get(0).at().text());
    }

    /** A solution of no strength that is made from nothing: the author is asked once, at its name. One made from a bottle that there is none of in the file has been told of already. */
    @Test
    void aSolutionNeedsAStrength() {
        refusedAt("s", "strength-missing", solution("solute: NaCl", "volume: 10.0 mL"));
        refusedAt("s", "strength-missing", taken("made from: bottle", "made up to: 100 mL", "moles: 1.0 mmol"));
        assertEquals(List.of("unknown-name"), solution("solute: NaCl", "portion of: jar", "volume: 10.0 mL").ids(Severity.ERROR));
    }

    /** 100 mL of 0.50 mol/L made up to 100 mL are as strong as before; 101 mL do not go into the flask. What is wanted, what there is and what it would take are told. */
    @Test
    void moreThanTheFlaskHoldsCannotBeDilutedInIt() {
        assertEquals(0.50, taken("made from: bottle", "volume: 100 mL", "made up to: 100 mL").sound().shown("s", Property.STRENGTH), 1e-12);
        Door.Outcome outcome = taken("made from: bottle", "volume: 101 mL", "made up to: 100 mL");
        refusedAt("100 mL", "dilution-impossible", outcome);
        assertEquals("101 mL", outcome.errors().get(0).fields().get("needed"));
        assertEquals("0.500 mol/L", outcome.errors().get(0).fields().get("stock"));
    }

    /** 50 mL of 0.50 mol/L out of a bottle of 0.50 mol/L are 50 mL of it; of 0.51 mol/L there are none. */
    @Test
    void aDilutionCannotBeStrongerThanItsStock() {
        assertEquals(50.0, taken("made from: bottle", "strength: 0.50 mol/L", "volume: 50 mL").sound().shown("s", Property.TAKEN), 1e-9);
        assertEquals(20.0, taken("made from: bottle", "strength: 0.10 mol/L", "made up to: 100 mL").sound().shown("s", Property.TAKEN), 1e-9);
        Door.Outcome outcome = taken("made from: bottle", "strength: 0.51 mol/L", "volume: 50 mL");
        refusedAt("0.51 mol/L", "dilution-impossible", outcome);
        assertEquals("0.510 mol/L", outcome.errors().get(0).fields().get("wanted"));
        assertEquals("51.0 mL", outcome.errors().get(0).fields().get("needed"));
        assertTrue(outcome.block("s").figure(Property.TAKEN).isEmpty());
    }

    /** 2.4968 g of blue vitriol (249.677 g/mol), 10.000 mmol, in 100 mL, said as a flask or as a volume: 0.1000 mol/L. */
    @ParameterizedTest
    @CsvSource({"made up to: 100 mL", "volume: 100 mL"})
    void aSolidDissolvedIsAmountOverVolume(String volume) {
        Door.Outcome outcome = Door.open(new Page("Blue").wasted().block("solid crystals", "substance: CuSO4.5H2O", "mass: 2.4968 g")
                .block("solution blue", "made from: crystals", volume).markdown()).sound();
        assertEquals(0.1000, outcome.shown("blue", Property.STRENGTH), 1e-5);
        assertEquals(10.000e-3, outcome.figure("blue", Property.MOLES).value(), 1e-6);
        assertEquals("c(blue)", outcome.figure("blue", Property.STRENGTH).symbol().plain());
    }

    /** Technetium has no atomic weight: a share by mass of its oxide is no amount, told at the name, or at the strength where that counts it. */
    @Test
    void aShareByMassNeedsAtomicWeights() {
        refusedAt("s", "no-atomic-weight", of("TcO2", "1.0 % w/v", ""));
        assertEquals(List.of("s", "1.0 % w/v as TcO2"), of("TcO2", "1.0 % w/v as TcO2", "").errors().stream().map(f -> f.at().text()).toList());
    }

    /** Methyl decanoate is a liquid whose density the tables lack, tetrathionate a salt of whose solutions they know nothing; with 1.04 g/mL, 5 % of it (270.22 g/mol) is 0.1924 mol/L. */
    @Test
    void whereADensityIsMissingItIsAskedFor() {
        refusedAt("10 % v/v", "density-missing", of("C11H22O2", "10 % v/v", ""));
        Door.Outcome outcome = of("Na2S4O6", "5 % w/w", "");
        refusedAt("5 % w/w", "density-missing", outcome);
        assertEquals("5 % w/w", outcome.errors().get(0).fields().get("strength"));
        assertEquals(0.05 * 1040 / 270.22, molar("Na2S4O6", "5 % w/w", "1.04 g/mL"), 1e-4);
    }

    /** The table of table salt ends where the solution is saturated, at 26 %: 40 % cannot be, and is not extrapolated. The limit is named. */
    @Test
    void beyondTheTableNothingIsExtrapolated() {
        Door.Outcome outcome = of("NaCl", "40 % w/w", "");
        refusedAt("40 % w/w", "out-of-table-range", outcome);
        assertEquals("40.00 %", outcome.errors().get(0).fields().get("asked"));
        assertEquals("0.000 %", outcome.errors().get(0).fields().get("from"));
        assertEquals("26.00 %", outcome.errors().get(0).fields().get("to"));
        assertTrue(String.valueOf(outcome.errors().get(0).fields().get("what")).startsWith("density of "), outcome.errors().get(0).fields().toString());
        assertTrue(outcome.block("s").figure(Property.STRENGTH).isEmpty() && outcome.block("s").figure(Property.DENSITY).isEmpty());
    }

    /** What stands behind "as" has to be a substance, and of hydrogen peroxide's volumes it can only be the peroxide. */
    @Test
    void whatIsCountedHasToBeASubstance() {
        assertEquals(1, refused("NaCl", "5 % w/v as Foo").size());
        assertEquals(List.of("not-a-peroxide"), refused("H2O2", "20 vol as O2"));
        assertEquals(1.785, molar("H2O2", "20 vol as H2O2", ""), 0.005);
    }

    /** A liquid that reacts by its volume and whose density nobody knows: its volume says nothing of its amount. */
    @Test
    void aVolumeOfALiquidOfUnknownDensityHasNoAmount() {
        Door.Outcome outcome = Door.open(new Page("Ester").wasted().block("reaction splitting", "C11H22O2(l) + NaOH(aq) -> NaC10H19O2(aq) + CH3OH(aq)")
                .block("liquid ester", "substance: C11H22O2", "volume: 2.0 mL").block("solution lye", "solute: NaOH", "strength: 1.0 mol/L", "for: ester").markdown());
        refusedAt("ester", "ambiguous-state", outcome);
        assertEquals("liquid", outcome.errors().get(0).fields().get("type"));
        Door.Outcome typed = Door.open(new Page("Ester").wasted().block("reaction splitting", "C11H22O2(l) + NaOH(aq) -> NaC10H19O2(aq) + CH3OH(aq)")
                .block("liquid ester", "substance: C11H22O2", "volume: 2.0 mL", "density: 0.873 g/mL").block("solution lye", "solute: NaOH", "strength: 1.0 mol/L", "for: ester").markdown()).sound();
        // 2.0 mL × 0.873 g/mL / 186.295 g/mol
        assertEquals(9.372e-3, typed.figure("lye", Property.MOLES).value(), 2e-6);
    }
}
