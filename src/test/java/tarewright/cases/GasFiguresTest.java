package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;

/**
 * What a teacher gets of a gas. An ideal gas takes 24.790 L/mol at 25 °C and 100 kPa and 24.465 L/mol at 101.325 kPa (R from CODATA 2018); the second virial coefficient of carbon dioxide at
 * 298.15 K is -127 cm³/mol, of hydrogen +15.4 (CRC Handbook, Virial Coefficients of Selected Gases); water's vapour pressure is 3.1698 kPa at 25 °C (Wagner and Pruß 2002); Henry's constants
 * from Sander, Atmos. Chem. Phys. 23 (2023) 10901: CO2 3.4e-4, SO2 1.3e-2 mol/(m³ Pa) at 298.15 K.
 */
class GasFiguresTest {
    private static final double RT = 8.31446 * 298.15;
    private static final double MOLAR = RT / 100;
    private static final double HELD = 3.4e-4 * RT;

    private static Page at(String room) {
        return new Page("Gas").front("room: " + room).wasted().block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL");
    }

    private static Door.Outcome gas(Page page, String... fields) {
        return Door.open(page.block("gas g", fields).markdown());
    }

    private static double shown(Door.Outcome outcome, Property property) {
        return outcome.sound().shown("g", property);
    }

    private static List<String> warned(Door.Outcome outcome) {
        return outcome.findings().stream().map(Finding::id).filter(id -> id.startsWith("no-virial")).toList();
    }

    // --- dry and moist

    /** 2.000 mmol: dry 2.000 × 24.790 = 49.58 mL; over water, at 100 - 3.1698 kPa, 51.20 mL, and that is what stands in the vessel. */
    @Test
    void overWaterTheVolumeIsTheMoistOne() {
        Door.Outcome wet = gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: H2", "moles: 2.000 mmol", "collected: over water", "in: syringe");
        assertEquals(49.58, shown(wet, Property.DRY), 0.005);
        assertEquals(51.20, shown(wet, Property.MOIST), 0.005);
        assertEquals(51.20, shown(wet, Property.VOLUME), 0.005);
        Door.Outcome dry = gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: H2", "moles: 2.000 mmol", "in: syringe");
        assertEquals(49.58, shown(dry, Property.VOLUME), 0.005);
        assertTrue(dry.block("g").figure(Property.MOIST).isEmpty());
    }

    /** A gas in an oven has a room of its own: 2.000 mmol × R × 353.15 K / 98.0 kPa = 59.92 mL; without a pressure of its own it is at the room's: 58.73 mL. */
    @ParameterizedTest
    @CsvSource({"at: 80 °C; 98.0 kPa,59.92", "at: 80 °C,58.73", "at: 98.0 kPa,50.59", "real: no,49.58"})
    void aGasMayHaveARoomOfItsOwn(String at, double volume) {
        assertEquals(volume, shown(gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: H2", "moles: 2.000 mmol", at, "in: syringe"), Property.VOLUME), 0.005);
    }

    /** Over water of 101 °C no air pressure holds a gas: the vapour alone is 105 kPa. */
    @Test
    void overBoilingWaterThereIsNoGas() {
        Door.Outcome outcome = gas(at("25 °C; 100 kPa"), "substance: N2", "moles: 2.000 mmol", "collected: over water", "at: 101 °C; 101 kPa");
        Finding finding = outcome.errors().get(0);
        assertEquals("water-boils", finding.id());
        assertEquals("101 °C", finding.fields().get("temperature"));
        assertEquals("101 kPa", finding.fields().get("pressure"));
        assertEquals("g", finding.at().text());
        assertTrue(outcome.block("g").figure(Property.VOLUME).isEmpty());
    }

    /** Below freezing the equation of the vapour pressure of water does not hold; the triple point, to four figures 0.000 °C, is named, and the place is the temperature. */
    @Test
    void belowFreezingTheVapourIsNotExtrapolated() {
        Finding finding = gas(at("25 °C; 100 kPa"), "substance: N2", "moles: 2.000 mmol", "collected: over water", "at: -5 °C").errors().get(0);
        assertEquals("out-of-table-range", finding.id());
        assertEquals("-5 °C", finding.at().text());
        assertEquals("-5.000 °C", finding.fields().get("asked"));
        assertTrue(String.valueOf(finding.fields().get("triple")).contains("0.000 °C"), finding.fields().toString());
        Door.Outcome cold = gas(at("-5 °C; 100 kPa"), "substance: N2", "moles: 2.000 mmol", "collected: over water");
        assertEquals(List.of("g"), cold.errors().stream().filter(f -> f.id().equals("out-of-table-range")).map(f -> f.at().text()).toList());
    }

    // --- how its amount is given

    /** 0.03200 g of oxygen (31.998 g/mol) are 1.0001 mmol; 24.79 mL of it likewise at 25 °C and 100 kPa; and 1.0001 mmol weigh 0.03200 g. */
    @ParameterizedTest
    @CsvSource({"mass: 0.03200 g", "volume: 24.792 mL", "moles: 1.0001 mmol"})
    void massVolumeAndAmountAreThreeWaysToSayOne(String amount) {
        Door.Outcome outcome = gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: O2", amount).sound();
        assertEquals(1.0001, outcome.figure("g", Property.MOLES).value() * 1000, 1e-4);
        assertEquals(24.792, outcome.figure("g", Property.VOLUME).value() * 1e6, 2e-3);
        assertEquals(0.03200, outcome.figure("g", Property.MASS).value() * 1000, 3e-6);
        assertEquals("mmol", outcome.figure("g", Property.MOLES).unit().symbol());
    }

    /** 0.2431 g of magnesium (24.305 g/mol), 10.002 mmol, burn in half as much oxygen, 123.98 mL; "twice what it needs" is twice that. */
    @ParameterizedTest
    @CsvSource({"for: ribbon,123.98", "excess over: ribbon\\nat least: 2 times,247.96"})
    void aGasMayBeWhatAnotherNeeds(String amount, double millilitres) {
        Door.Outcome outcome = gas(at("25 °C; 100 kPa").front("gases: ideal").block("reaction burning", "Mg(s) + O2(g) -> MgO(s)")
                .block("solid ribbon", "substance: Mg", "mass: 0.2431 g"), "substance: O2", amount.replace("\\n", "\n")).sound();
        assertEquals(millilitres, outcome.figure("g", Property.VOLUME).value() * 1e6, 0.02);
    }

    /** A gas of which nobody says how much there is cannot be reckoned with; the ways to say it are offered, once. */
    @Test
    void aGasWithoutAnAmountIsAskedFor() {
        Door.Outcome outcome = Door.open(at("25 °C; 100 kPa").block("reaction burning", "Mg(s) + O2(g) -> MgO(s)").block("gas g", "substance: O2")
                .block("solid ribbon", "substance: Mg", "mass: 0.2431 g").text("{excess of g}").markdown());
        List<Finding> missing = outcome.errors().stream().filter(f -> f.id().equals("missing-quantity")).toList();
        assertEquals(1, missing.size(), outcome.findings().toString());
        assertEquals("g", missing.get(0).at().text());
        assertEquals(List.of("wanted", "volume", "moles", "mass", "for", "made by"), missing.get(0).fields().get("ways"));
        assertTrue(outcome.block("g").figure(Property.VOLUME).isEmpty());
    }

    // --- real and ideal

    /**
     * 1.000 mol of carbon dioxide: ideal 24.465 L, with the coefficient 24.338 L, 0.52 % less. Unasked it is taken as real where that is more than half of the accepted range, twice the
     * standard uncertainty: with a temperature to ±1 K (0.19 %) it is, to ±2 K (0.39 %) it is not.
     */
    @ParameterizedTest
    @CsvSource({"25.0 °C; 101.325 kPa,24.338", "25 ± 1 °C; 101.325 kPa,24.338", "25 ± 2 °C; 101.325 kPa,24.465", "25.0 °C; 101.3 ± 1.4 kPa,24.471", "25.0 °C; 101.3 ± 0.2 kPa,24.344"})
    void aGasIsTakenAsRealWhereItMatters(String room, double litres) {
        assertEquals(litres, shown(gas(at(room), "substance: CO2", "moles: 1.000 mol"), Property.VOLUME), 0.002);
    }

    /** The other way round likewise: 24.338 L are 1.000 mol of the real gas, 0.9948 mol of an ideal one. */
    @ParameterizedTest
    @CsvSource({"25.0 °C; 101.325 kPa,1.0000", "25 ± 1 °C; 101.325 kPa,1.0000", "25 ± 2 °C; 101.325 kPa,0.9948"})
    void theAmountInAVolumeIsTakenAsRealWhereItMatters(String room, double moles) {
        assertEquals(moles, shown(gas(at(room), "substance: CO2", "volume: 24.338 L"), Property.MOLES), 0.0001);
    }

    /** A vaguely known amount is no matter for a virial coefficient: 1.0 ± 0.01 mol is uncertain by 0.58 %, twice that is more than the 0.52 %. */
    @Test
    void forAVagueAmountTheIdealGasWillDo() {
        assertEquals(24.465, shown(gas(at("25.0 °C; 101.325 kPa"), "substance: CO2", "moles: 1.00 ± 0.01 mol"), Property.VOLUME), 0.002);
    }

    /** What the author says goes first, of a gas before of all: real 24.338 L, ideal 24.465 L. */
    @ParameterizedTest
    @CsvSource({"gases: ideal,real: yes,24.338", "gases: ideal,substance: CO2,24.465", "gases: real,real: no,24.465", "gases: real,substance: CO2,24.338", "level: any,real: no,24.465"})
    void theAuthorsWordGoesFirst(String front, String own, double litres) {
        Page page = at("25 ± 2 °C; 101.325 kPa").front(front).block("gas g", own.startsWith("substance") ? new String[] {own, "moles: 1.000 mol"}
                : new String[] {"substance: CO2", "moles: 1.000 mol", own});
        assertEquals(litres, Door.open(page.markdown()).sound().shown("g", Property.VOLUME), 0.002);
    }

    /** Hydrogen's molecules take more room than none: 24.465 + 0.0154 L. */
    @Test
    void hydrogenTakesMoreThanAnIdealGas() {
        assertEquals(24.481, shown(gas(at("25 °C; 101.325 kPa"), "substance: H2", "moles: 1.000 mol", "real: yes"), Property.VOLUME), 0.001);
    }

    /** No coefficient is known of nitrogen dioxide, which is half dinitrogen tetroxide: asked for, the author is told; not asked for, it is ideal without a word. */
    @Test
    void aCoefficientThatIsNotKnownIsToldOnlyWhereItIsAskedFor() {
        String[] fields = {"substance: NO2", "moles: 1.000 mol", "real: yes"};
        Door.Outcome asked = gas(at("25.0 °C; 101.325 kPa"), fields);
        assertEquals(List.of("no-virial-coefficient"), warned(asked));
        Finding finding = asked.findings().stream().filter(f -> f.id().startsWith("no-virial")).findFirst().orElseThrow();
        assertEquals("NO₂", finding.fields().get("formula"));
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals("g", finding.at().text());
        assertEquals(24.465, shown(asked, Property.VOLUME), 0.002);
        assertEquals(List.of(), warned(gas(at("25.0 °C; 101.325 kPa"), fields[0], fields[1])));
        assertEquals(List.of(), warned(gas(at("25.0 °C; 101.325 kPa"), fields[0], fields[1], "real: no")));
        assertEquals(List.of("no-virial-coefficient"), warned(gas(at("25.0 °C; 101.325 kPa").front("gases: real"), fields[0], fields[1])));
    }

    /** A thousand degrees lie outside of what was measured of carbon dioxide. */
    @Test
    void theCoefficientIsNotExtrapolated() {
        assertEquals(List.of("no-virial-coefficient"), warned(gas(at("25.0 °C; 101.325 kPa"), "substance: CO2", "moles: 1.000 mol", "real: yes", "at: 1400 °C")));
    }

    // --- what water takes

    /** 2.000 mmol of carbon dioxide, 49.58 mL; 10.0 mL of water in the syringe hold 8.43 mL and the wash of 5.0 mL took 4.21 mL: 36.94 mL are left. */
    @Test
    void whatDissolvesAndWhatIsWashedAwayAreBothTakenOff() {
        Door.Outcome outcome = Door.open(at("25 °C; 100 kPa").front("gases: ideal").block("gas g", "substance: CO2", "moles: 2.000 mmol", "wash: 5.0 mL", "in: syringe")
                .block("liquid water", "substance: water", "volume: 10.0 mL", "in: syringe").markdown()).sound();
        assertEquals(2 * MOLAR - 15 * HELD, outcome.shown("g", Property.VOLUME), 0.005);
        assertEquals(10 * HELD, outcome.shown("g", Property.DISSOLVED), 0.001);
    }

    /** Two liquids in one syringe, 10.0 mL and 5.0 mL, hold as much as one of 15.0 mL; so they do of a gas that is wished for: (30 + 15 × 0.84285) mL have to be made for 30 mL to be seen. */
    @Test
    void theLiquidsOfOneVesselAreSummed() {
        Page page = at("25 °C; 100 kPa").front("gases: ideal").block("liquid water", "substance: water", "volume: 10.0 mL", "in: syringe")
                .block("solution salt", "solute: NaCl", "strength: 0.1 mol/L", "volume: 5.0 mL", "in: syringe");
        Door.Outcome outcome = Door.open(page.block("gas g", "substance: CO2", "moles: 2.000 mmol", "in: syringe").markdown()).sound();
        assertEquals(2 * MOLAR - 15 * HELD, outcome.shown("g", Property.VOLUME), 0.005);
        assertEquals(15 * HELD, outcome.shown("g", Property.DISSOLVED), 0.005);
        Door.Outcome wished = Door.open(at("25 °C; 100 kPa").front("gases: ideal").block("reaction roasting", "CaCO3(s) -> CaO(s) + CO2(g)").block("solid chalk", "substance: CaCO3", "for: g")
                .block("liquid water", "substance: water", "volume: 10.0 mL", "in: syringe").block("solution salt", "solute: NaCl", "strength: 0.1 mol/L", "volume: 5.0 mL", "in: syringe")
                .block("gas g", "substance: CO2", "wanted: 30 mL", "in: syringe").markdown()).sound();
        assertEquals((30 + 15 * HELD) / MOLAR, wished.figure("chalk", Property.MOLES).value() * 1000, 1e-4);
        assertEquals(30, wished.shown("g", Property.VOLUME), 1e-3);
    }

    /**
     * 0.200 g of chalk, 49.54 mL; 10.3 mL of acid, read as 10.5 mL, hold 8.68 mL: 40.86 mL stand, read as 41 mL. Back from what was read of both: (41 + 10.5 × 0.84285) / 24.790 mmol.
     */
    @Test
    void theLiquidThatIsReadCountsAsRead() {
        Door.Outcome outcome = Door.open(at("25 °C; 100 kPa").front("gases: ideal").block("apparatus", "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL")
                .block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)").block("solid chalk", "substance: CaCO3", "mass: 0.200 g", "found by students: yes", "label as: Chalk")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 10.3 mL", "in: syringe").block("gas g", "substance: CO2", "made by: fizzing", "in: syringe")
                .block("reading poured", "of: volume of acid", "read with: cylinder").block("reading gas", "of: volume of g", "read with: syringe").ask("moles of g", "mmol").markdown()).sound();
        assertEquals((41 + 10.5 * HELD) / MOLAR, outcome.answer().shownValue(), 1e-4);
    }

    /** Water in another vessel, or in none, takes nothing. */
    @ParameterizedTest
    @CsvSource({"in: flask", "role: rinse"})
    void onlyTheLiquidOfItsOwnVesselCounts(String where) {
        Door.Outcome outcome = Door.open(at("25 °C; 100 kPa").front("gases: ideal").block("apparatus", "flask: conical flask; capacity 250 mL")
                .block("gas g", "substance: CO2", "moles: 2.000 mmol", "in: syringe").block("liquid water", "substance: water", "volume: 10.0 mL", where).markdown()).sound();
        assertEquals(2 * MOLAR, outcome.shown("g", Property.VOLUME), 0.005);
        assertTrue(outcome.block("g").figure(Property.DISSOLVED).isEmpty());
    }

    /** A volume of water takes 32 volumes of sulfur dioxide: it cannot be washed. Chlorine, 2.3 volumes, can. */
    @Test
    void aGasThatWaterSwallowsCannotBeWashed() {
        Door.Outcome outcome = gas(at("25 °C; 100 kPa"), "substance: SO2", "moles: 3.000 mmol", "wash: 1.0 mL");
        Finding finding = outcome.errors().get(0);
        assertEquals("too-soluble-to-wash", finding.id());
        assertEquals("1.0 mL", finding.at().text());
        assertEquals(Optional.of("32.2"), finding.fields().get("volumes"));
        assertEquals("SO₂", finding.fields().get("gas"));
        assertEquals(3 * MOLAR - 5 * 9.2e-4 * RT, shown(gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: Cl2", "moles: 3.000 mmol", "wash: 5.0 mL"), Property.VOLUME), 0.01);
    }

    /** Hydrogen chloride gives itself up to water altogether, and Henry's constant of the molecule says nothing of it. */
    @ParameterizedTest
    @CsvSource({"HCl", "HBr", "HI"})
    void hydrogenHalidesCannotBeWashed(String formula) {
        assertEquals(List.of("too-soluble-to-wash"), gas(at("25 °C; 100 kPa"), "substance: " + formula, "moles: 30.000 mmol", "wash: 1.0 mL").ids(Severity.ERROR));
    }

    /** 70 mL of water hold 59 mL of carbon dioxide, which is all of 49.58 mL; 55 mL hold 46.4 mL, and 3.2 mL are left. */
    @Test
    void aWashThatTakesAllIsRefused() {
        assertEquals(List.of("too-soluble-to-wash"), gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: CO2", "moles: 2.000 mmol", "wash: 70 mL").ids(Severity.ERROR));
        assertEquals(2 * MOLAR - 55 * HELD, shown(gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: CO2", "moles: 2.000 mmol", "wash: 55 mL"), Property.VOLUME), 0.01);
    }

    /** Wanted 30 mL after a wash with 5.0 mL: 34.21 mL have to be made, 1.380 mmol; of 0.1382 g of chalk (100.086 g/mol). Beside hydrogen chloride nothing is added for a wash. */
    @Test
    void aWishCountsWhatItsWashTakes() {
        Door.Outcome outcome = Door.open(at("25 °C; 100 kPa").front("gases: ideal").block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("gas g", "substance: CO2", "wanted: 30 mL", "wash: 5.0 mL", "in: syringe").block("solid chalk", "substance: CaCO3", "for: g")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: chalk", "at least: 2 times").markdown()).sound();
        assertEquals((30 + 5 * HELD) / MOLAR, outcome.figure("chalk", Property.MOLES).value() * 1000, 1e-4);
        assertEquals(30, outcome.shown("g", Property.VOLUME), 1e-3);
    }

    /** The constant of acetylene is from memory, and the worked line says so; that of carbon dioxide was read. */
    @Test
    void aConstantFromMemoryIsMarked() {
        assertTrue(source("C2H2").endsWith("(memory)"), source("C2H2"));
        assertFalse(source("CO2").contains("(memory)"), source("CO2"));
    }

    private static String source(String formula) {
        Figure dissolved = Door.open(at("25 °C; 100 kPa").block("gas g", "substance: " + formula, "moles: 2.000 mmol", "in: syringe")
                .block("liquid water", "substance: water", "volume: 1.0 mL", "in: syringe").markdown()).sound().figure("g", Property.DISSOLVED);
        Figure henry = assertInstanceOf(Step.Product.class, dissolved.step()).powers().get(0).figure();
        return assertInstanceOf(Step.Relation.class, henry.step()).source();
    }

    // --- how it is shown

    /**
     * 2.000 mmol ± 0.0005 at 25.0 ± 0.05 °C and 100.0 ± 0.05 kPa: relative standard uncertainty √(0.00025² + (0.05/298.15)² + 0.0005²)/√3 = 0.000338; the largest volume is two of them more
     * than 49.58 mL (JCGM 100:2008, 6.3.3).
     */
    @Test
    void theLargestVolumeIsTheUpperEndOfItsRange() {
        Door.Outcome outcome = gas(at("25.0 °C; 100.0 kPa").front("gases: ideal"), "substance: H2", "moles: 2.000 mmol");
        double relative = Math.sqrt(0.00025 * 0.00025 + Math.pow(0.05 / 298.15, 2) + 0.0005 * 0.0005) / Math.sqrt(3);
        assertEquals(2 * MOLAR * (1 + 2 * relative), outcome.sound().figure("g", Property.LARGEST).value() * 1e6, 1e-3);
    }

    /** In the unit that the author wrote, else that of the syringe, else as one would say it: 49.6 mL, 24.8 L. */
    @ParameterizedTest
    @CsvSource({"moles: 2.000 mmol,in: syringe,mL", "moles: 2.000 mmol,real: no,mL", "moles: 1.000 mol,real: no,L", "volume: 0.0500 L,in: syringe,L", "volume: 50.0 cm3,in: syringe,cm³",
        "mass: 0.0040 g,in: syringe,mL"})
    void aVolumeIsShownInTheUnitThatSuitsIt(String amount, String field, String unit) {
        Door.Outcome outcome = gas(at("25 °C; 100 kPa").front("gases: ideal"), "substance: H2", amount, field).sound();
        assertEquals(unit, outcome.figure("g", Property.VOLUME).unit().symbol());
        assertEquals(unit, outcome.figure("g", Property.DRY).unit().symbol());
    }
}
