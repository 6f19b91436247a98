package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;

/**
 * A gas beside a liquid that takes it up. Henry's constant of carbon dioxide is 3.4e-4 mol/(m³ Pa) at 298.15 K (Burkholder et al. 2019, in Sander, Atmos. Chem. Phys. 23
 * (2023) 10901), so that at 25 °C a volume of water holds 3.4e-4 × 8.3145 × 298.15 = 0.84285 volumes of it. R from CODATA 2018, 100.086 g/mol for CaCO3 from IUPAC 2021.
 */
class VesselLiquidsTest {
    private static final double HELD = 3.4e-4 * 8.31446 * 298.15;
    /** Of an ideal gas at 25 °C and 100 kPa, in L/mol: 24.790 (CODATA 2018). */
    private static final double MOLAR = 24.790;

    private static Page fizz(String chalk, String gas, String acid) {
        return new Page("Fizz").front("room: 25 °C; 100 kPa").front("gases: ideal").wasted()
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL", "balance: balance; reads to 0.001 g",
                        "cylinder: measuring cylinder, 25 mL; graduation 0.1 mL")
                .block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("solid chalk", "substance: CaCO3", chalk)
                .block("gas fizz", "substance: CO2", gas, "in: syringe")
                .block("solution acid", "solute: HCl", acid, "in: syringe");
    }

    /** 0.200 g are 1.99828 mmol, 49.537 mL; 10.0 mL of acid hold 8.428 mL, so 41.108 mL are to be seen. */
    @Test
    void whatDissolvesIsNotInTheSyringe() {
        Door.Outcome outcome = Door.open(fizz("mass: 0.200 g", "made by: fizzing", "strength: 1.0 mol/L\nvolume: 10.0 mL").markdown()).sound();
        assertEquals(200 / 100.086 * MOLAR, outcome.shown("fizz", Property.DRY), 0.01);
        assertEquals(10 * HELD, outcome.shown("fizz", Property.DISSOLVED), 1e-3);
        assertEquals(200 / 100.086 * MOLAR - 10 * HELD, outcome.shown("fizz", Property.VOLUME), 0.01);
    }

    /** 0.020 g give 4.95 mL, and 10 mL of acid could hold 8.43: nothing is to be seen, and the author is told. */
    @Test
    void aGasThatItsLiquidCanHoldLeavesNothing() {
        Door.Outcome outcome = Door.open(fizz("mass: 0.020 g", "made by: fizzing", "strength: 1.0 mol/L\nvolume: 10.0 mL").markdown()).sound();
        assertEquals(0, outcome.shown("fizz", Property.VOLUME), 0);
        assertEquals(20 / 100.086 * MOLAR, outcome.shown("fizz", Property.DISSOLVED), 1e-3);
        assertTrue(outcome.ids(Severity.WARNING).contains("gas-all-dissolves"), outcome.findings().toString());
        assertEquals(0, outcome.shown("fizz", Property.LARGEST), 0);
    }

    /** Read as 41 mL, with the 8.428 mL that 10.0 mL of acid hold: 49.428 mL, 1.99389 mmol. As expected it is what the chalk gives. */
    @Test
    void theAmountFromAReadVolumeCountsWhatDissolved() {
        Door.Outcome outcome = Door.open(fizz("mass: 0.200 g\nfound by students: yes", "made by: fizzing", "strength: 1.0 mol/L\nvolume: 10.0 mL")
                .block("reading gas volume", "of: volume of fizz", "read with: syringe").ask("moles of fizz", "mmol").markdown()).sound();
        assertEquals((41 + 10 * HELD) / MOLAR, outcome.answer().shownValue(), 1e-4);
        assertEquals(200 / 100.086, outcome.figure("fizz", Property.MOLES).value() * 1000, 1e-5);
    }

    /** Washed with 5 mL of water, which takes 4.214 mL: 49.537 - 4.214 = 45.32, read as 45 mL, back 49.214 mL. */
    @Test
    void theAmountFromAReadVolumeCountsWhatWashingTook() {
        Door.Outcome outcome = Door.open(new Page("Fizz").front("room: 25 °C; 100 kPa").front("gases: ideal").wasted()
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL")
                .block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("solid chalk", "substance: CaCO3", "mass: 0.200 g", "found by students: yes")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20 mL")
                .block("gas fizz", "substance: CO2", "made by: fizzing", "wash: 5.0 mL", "in: syringe")
                .block("reading gas volume", "of: volume of fizz", "read with: syringe").ask("moles of fizz", "mmol").markdown()).sound();
        assertEquals(200 / 100.086 * MOLAR - 5 * HELD, outcome.shown("fizz", Property.VOLUME), 0.01);
        assertEquals((45 + 5 * HELD) / MOLAR, outcome.answer().shownValue(), 1e-4);
    }

    /** A typed volume of gas is what there is of it: 50.0 mL are 2.0169 mmol, whatever liquid it is then put to. */
    @Test
    void aTypedVolumeIsAllOfTheGas() {
        Door.Outcome outcome = Door.open(new Page("Gas").front("room: 25 °C; 100 kPa").front("gases: ideal").wasted()
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL")
                .block("gas fizz", "substance: CO2", "volume: 50.0 mL", "in: syringe")
                .block("liquid water", "substance: water", "volume: 10 mL", "in: syringe").markdown()).sound();
        assertEquals(50.0 / MOLAR, outcome.figure("fizz", Property.MOLES).value() * 1000, 1e-4);
    }

    /** 50 mL to be seen beside 10.0 mL of acid: 58.428 mL in all, 2.35694 mmol, 0.23590 g, weighed as 0.236 g. Forwards 50.02 mL stand in the syringe. */
    @Test
    void aWishCountsWhatAGivenLiquidTakes() {
        Door.Outcome outcome = Door.open(fizz("for: fizz\nweigh with: balance", "made by: fizzing\nwanted: 50 mL", "strength: 1.0 mol/L\nvolume: 10.0 mL")
                .markdown()).sound();
        assertEquals(0.236, outcome.shown("chalk", Property.MASS), 1e-9);
        assertEquals(236 / 100.086 * MOLAR - 10 * HELD, outcome.shown("fizz", Property.VOLUME), 0.01);
    }

    /**
     * Three times the acid that the chalk needs, 1.0 mol/L: 6 mL for each mmol of gas, which hold 5.057 of its 24.790 mL. For 50 mL to be seen 50 / (24.790 - 5.057) =
     * 2.5338 mmol: 0.2536 g and 15.2 mL. Weighed as 0.254 g and poured as 15.3 mL (never less than three times), 50.02 mL stand in the syringe.
     */
    @Test
    void aWishAndTheLiquidThatFollowsFromItSettle() {
        Door.Outcome outcome = Door.open(fizz("for: fizz\nweigh with: balance", "made by: fizzing\nwanted: 50 mL",
                "strength: 1.0 mol/L\nexcess over: chalk\nat least: 3 times\nmeasure with: cylinder").markdown()).sound();
        assertEquals(0.254, outcome.shown("chalk", Property.MASS), 1e-9);
        assertEquals(15.3, outcome.shown("acid", Property.VOLUME), 1e-9);
        assertEquals(254 / 100.086 * MOLAR - 15.3 * HELD, outcome.shown("fizz", Property.VOLUME), 0.01);
        assertEquals(50, outcome.shown("fizz", Property.VOLUME), 0.1);
    }

    /** At 0.1 mol/L, 60 mL of acid for each mmol hold 50.6 mL, more than the mmol is: no amount of chalk fills the syringe. */
    @Test
    void aWishThatItsOwnLiquidSwallowsIsRefused() {
        Door.Outcome outcome = Door.open(fizz("for: fizz\nweigh with: balance", "made by: fizzing\nwanted: 50 mL",
                "strength: 0.1 mol/L\nexcess over: chalk\nat least: 3 times\nmeasure with: cylinder").markdown());
        assertTrue(outcome.ids(Severity.ERROR).contains("wish-dissolves"), outcome.findings().toString());
        assertEquals(List.of("50 mL"), outcome.errors().stream().filter(f -> f.id().equals("wish-dissolves")).map(f -> f.at().text()).toList());
    }
}
