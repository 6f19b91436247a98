package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;

/**
 * Mass, volume and amount of what stands on the bench, what the class takes of it, and how an instrument rounds it. Molar masses are sums of the IUPAC abridged standard atomic weights (Prohaska
 * et al., Pure Appl. Chem. 94 (2022) 573): Mg 24.305, NaOH 39.997, C2H5OH 46.069, CH3COOH 60.052, CaCO3 100.086 g/mol.
 */
class AmountsTest {
    private static Page kit(String title) {
        return new Page(title).wasted().block("apparatus", "balance: balance; reads to 0.01 g", "fine: balance; reads to 1 mg", "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL",
                "beaker: beaker; capacity 100 mL", "coarse: balance; capacity 200 g", "syringe: gas syringe; capacity 100 mL; graduation 1 mL");
    }

    private static Door.Outcome with(String info, String... fields) {
        return Door.open(kit("Amounts").block(info, fields).markdown());
    }

    private static Reason reason(Figure figure) {
        return assertInstanceOf(Step.Set.class, figure.step(), figure::toString).reason();
    }

    private static void shows(double value, String unit, double within, Figure figure) {
        assertEquals(unit, figure.unit().symbol());
        assertEquals(value, figure.shownValue(), within);
    }

    // --- from one to the other

    /** 10.0 mL of ethanol at 0.789 g/mL are 7.89 g, 171.3 mmol; at 96.0 % w/w 164.4 mmol. 7.89 g or 171.3 mmol are 10.0 mL back again. */
    @ParameterizedTest
    @CsvSource({"volume: 10.0 mL,purity: 100 %,10.00,7.890,171.26", "volume: 10.0 mL,purity: 96.0 %,10.00,7.890,164.41", "mass: 7.890 g,purity: 96.0 %,10.00,7.890,164.41",
        "moles: 171.26 mmol,purity: 100 %,10.00,7.890,171.26", "moles: 164.41 mmol,purity: 96.0 %,10.00,7.890,164.41"})
    void aLiquidHasMassVolumeAndAmount(String amount, String purity, double millilitres, double grams, double millimoles) {
        Door.Outcome outcome = with("liquid spirit", "substance: C2H5OH", "density: 0.789 g/mL", amount, purity).sound();
        assertEquals(millilitres, outcome.figure("spirit", Property.VOLUME).value() * 1e6, 0.002);
        assertEquals(grams, outcome.figure("spirit", Property.MASS).value() * 1e3, 0.001);
        assertEquals(millimoles, outcome.figure("spirit", Property.MOLES).value() * 1e3, 0.02);
        assertEquals(0.789, outcome.figure("spirit", Property.DENSITY).shownValue(), 1e-12);
    }

    /** 2.50 g of sodium hydroxide of 97 % are 60.63 mmol; 60.63 mmol of it weigh 2.50 g. At 2.13 g/mL they would take 1.174 mL. */
    @ParameterizedTest
    @CsvSource({"mass: 2.500 g", "moles: 60.630 mmol"})
    void aSolidIsAsPureAsItsAuthorSays(String amount) {
        Door.Outcome outcome = with("solid lye", "substance: NaOH", amount, "purity: 97 %", "density: 2.13 g/mL").sound();
        assertEquals(2.500, outcome.figure("lye", Property.MASS).value() * 1e3, 1e-4);
        assertEquals(60.630, outcome.figure("lye", Property.MOLES).value() * 1e3, 2e-3);
        assertEquals(1.1737, outcome.figure("lye", Property.VOLUME).value() * 1e6, 1e-4);
        assertEquals(97, outcome.shown("lye", Property.PURITY), 1e-9);
    }

    /** 20.0 mL of 0.50 mol/L hold 10.0 mmol; for 10.0 mmol 20.0 mL; and 20.0 mL at 1.02 g/mL weigh 20.4 g. */
    @ParameterizedTest
    @CsvSource({"volume: 20.0 mL", "moles: 10.0 mmol"})
    void aSolutionHasVolumeAmountAndMass(String amount) {
        Door.Outcome outcome = with("solution acid", "solute: HCl", "strength: 0.50 mol/L", "density: 1.02 g/mL", amount).sound();
        assertEquals(20.0, outcome.figure("acid", Property.VOLUME).value() * 1e6, 1e-9);
        assertEquals(10.0, outcome.figure("acid", Property.MOLES).value() * 1e3, 1e-9);
        assertEquals(20.4, outcome.figure("acid", Property.MASS).value() * 1e3, 1e-9);
    }

    /** Methyl decanoate (186.295 g/mol), of which no table has the density: by mass it has an amount, 2.0 g are 10.74 mmol, and no volume; by volume it has no amount, and it is not offered. */
    @Test
    void aLiquidOfUnknownDensityHasAnAmountByMassOnly() {
        assertEquals(10.736, with("liquid oil", "substance: C11H22O2", "mass: 2.0 g").sound().figure("oil", Property.MOLES).value() * 1e3, 1e-3);
        Door.Outcome outcome = Door.open(kit("Oil").block("liquid oil", "substance: C11H22O2", "volume: 2.0 mL").text("{moles of oil}").markdown());
        assertEquals(List.of("no-such-figure"), outcome.ids(Severity.ERROR));
        assertFalse(((List<?>) outcome.errors().get(0).fields().get("has")).contains("moles"));
        assertTrue(((List<?>) outcome.errors().get(0).fields().get("has")).contains("volume"));
    }

    /** Without a density a solution has no mass, and none is made up. */
    @Test
    void aSolutionOfUnknownDensityHasNoMass() {
        assertTrue(with("solution acid", "solute: HCl", "strength: 0.50 mol/L", "volume: 20.0 mL").sound().block("acid").figure(Property.MASS).isEmpty());
    }

    /** What is shown is in the unit of the instrument, else in the author's, else in the usual one: 0.25 g are 250 mg on a balance of milligrams. */
    @ParameterizedTest
    @CsvSource({"moles: 10.2858 mmol,weigh with: fine,250,mg", "moles: 10.2858 mmol,weigh with: balance,0.25,g", "mass: 250 mg,weigh with: balance,250,mg", "moles: 10.2858 mmol,purity: 100 %,0.25,g",
        "mass: 0.00025 kg,purity: 100 %,0.00025,kg"})
    void theUnitIsThatOfTheInstrumentOrOfTheAuthor(String amount, String more, double value, String unit) {
        shows(value, unit, 1e-4 * value, with("solid ribbon", "substance: Mg", amount, more).sound().figure("ribbon", Property.MASS));
    }

    // --- what is asked for where nothing is said

    /** A bottle of which nobody says how much is taken has no amount to print: the figure is told, and no density is asked for that is in the table already. */
    @ParameterizedTest
    @CsvSource({"solid x,substance: NaCl,mass", "liquid x,substance: water,volume", "solution x,solute: NaCl,volume"})
    void aBottleHasNoAmountToMeasureOut(String info, String matter, String property) {
        Door.Outcome outcome = Door.open(kit("Missing").block(info, matter, info.startsWith("solution") ? "strength: 1.0 mol/L" : "").text("Take {x}.").markdown());
        assertEquals(List.of("no-such-figure"), outcome.ids(Severity.ERROR));
        assertEquals(property, outcome.errors().get(0).fields().get("property"));
    }

    /** A solid in a reaction of which nobody says how much: the ways to say it are offered, once. */
    @Test
    void aSolidThatReactsNeedsAMass() {
        Door.Outcome reacting = Door.open(kit("Missing").block("reaction course", "NaOH(s) + HCl(aq) -> NaCl(aq) + H2O(l)").block("solid lye", "substance: NaOH")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "for: lye").markdown());
        List<Finding> missing = reacting.errors().stream().filter(f -> f.id().equals("missing-quantity")).toList();
        assertEquals(1, missing.size());
        assertEquals("lye", missing.get(0).at().text());
        assertEquals(List.of("mass", "moles", "for", "excess over", "made by"), missing.get(0).fields().get("ways"));
    }

    /** An acid in a reaction of which nobody says how much: it is asked for by volume. */
    @Test
    void aSolutionThatReactsNeedsAVolume() {
        Door.Outcome outcome = Door.open(kit("Missing").block("reaction course", "NaOH(s) + HCl(aq) -> NaCl(aq) + H2O(l)").block("solid lye", "substance: NaOH", "for: acid")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L").markdown());
        Finding finding = outcome.errors().stream().filter(f -> f.id().equals("missing-quantity")).findFirst().orElseThrow();
        assertEquals(List.of("volume", "moles", "for", "excess over", "made by"), finding.fields().get("ways"));
        assertEquals("solution", finding.fields().get("type"));
        assertEquals("acid", finding.at().text());
    }

    /** Technetium has no standard atomic weight (IUPAC 2021): no mass becomes an amount. Its mass alone can be weighed all the same. */
    @Test
    void anElementWithoutAnAtomicWeightHasNoAmount() {
        Door.Outcome outcome = Door.open(kit("Heavy").block("solid oxide", "substance: TcO2", "mass: 1.0 g").text("{oxide} {moles of oxide} {molar mass of TcO2}").markdown());
        List<Finding> told = outcome.errors().stream().filter(f -> f.id().equals("no-atomic-weight")).toList();
        assertEquals(List.of("oxide", "molar mass of TcO2"), told.stream().map(f -> f.at().text()).toList());
        assertEquals(List.of("Tc"), told.get(0).fields().get("elements"));
        assertEquals("TcO₂", told.get(0).fields().get("formula"));
        assertEquals(1.0, outcome.shown("oxide", Property.MASS), 1e-12);
    }

    // --- the whole class

    private static Figure total(String front, String info, String... fields) {
        Page page = kit("Class");
        for (String line : front.split("; ")) {
            page.front(line);
        }
        return Door.open(page.block(info, fields).markdown()).sound().figure("x", Property.CLASS_TOTAL);
    }

    /** So much for each group and run, and a share to spare, up to the last digit that is shown: 0.033 × 12 × 1.1 = 0.4356, 0.436 g. Where nothing is cut off nothing is rounded. */
    @ParameterizedTest
    @CsvSource({"groups: 12,0.250 g,3.300", "groups: 12,0.033 g,0.436", "groups: 7,0.033 g,0.255", "groups: 7; runs: 3,0.100 g,2.310", "groups: 7; spare: 0 %,0.033 g,0.231",
        "groups: 7; spare: 25 %,0.033 g,0.289", "groups: 1; spare: 0 %,0.033 g,0.033", "groups: 12,2 g,27"})
    void theClassTakesItUpToTheLastDigit(String front, String mass, double expected) {
        Figure total = total(front, "solid x", "substance: NaCl", "mass: " + mass);
        assertEquals(expected, total.shownValue(), 1e-9);
        assertEquals(Reason.ENOUGH, reason(total));
    }

    /** The line of the key shows one digit more than the total where that is rounded up, and no more where it is not: 0.4356 → 0.436, 3.300 → 3.300. */
    @Test
    void theTotalBeforeRoundingIsShownToOneDigitMore() {
        Figure up = total("groups: 12", "solid x", "substance: NaCl", "mass: 0.033 g");
        assertEquals(3, up.decimals().orElseThrow());
        assertEquals(4, up.from().get(0).decimals().orElseThrow());
        assertEquals(0.4356, up.from().get(0).shownValue(), 1e-12);
        Figure even = total("groups: 12", "solid x", "substance: NaCl", "mass: 0.250 g");
        assertEquals(3, even.from().get(0).decimals().orElseThrow());
        Figure tens = total("groups: 12", "solution x", "solute: NaCl", "strength: 1 mol/L", "volume: 20 mL");
        assertEquals(264, tens.shownValue(), 1e-9);
    }

    /** A solution that is measured out three times by each group is needed three times. */
    @Test
    void portionsCount() {
        assertEquals(25.0 * 3 * 12 * 1.1, total("groups: 12", "solution x", "solute: NaCl", "strength: 1.0 mol/L", "volume: 25.0 mL", "portions: 3").shownValue(), 1e-9);
        assertEquals(5, total("groups: 12; runs: 2", "solution x", "solute: NaCl", "strength: 1.0 mol/L", "volume: 25.0 mL", "portions: 3").from().get(0).from().size());
        assertEquals(3, total("groups: 12", "solution x", "solute: NaCl", "strength: 1.0 mol/L", "volume: 25.0 mL").from().get(0).from().size());
    }

    /** Six groups of which two each take 10, 20 and 25 mL, twice, with a tenth to spare: 2 × 2 × 55 × 1.1 mL. */
    @Test
    void whatIsDealtAndMeasuredOutTwiceIsNeededTwice() {
        assertEquals(242.0, total("groups: 6", "solution x", "solute: NaCl", "strength: 1.0 mol/L", "vary: 10.0 mL; 20.0 mL; 25.0 mL", "portions: 2").shownValue(), 1e-9);
    }

    /** A volume without digits of its own (5.0 mmol of 0.31 mol/L) is not rounded up by any. */
    @Test
    void aTotalWithoutDigitsIsExact() {
        assertEquals(5.0 / 0.31 * 13.2, total("groups: 12", "solution x", "solute: NaCl", "strength: 0.31 mol/L", "moles: 5.0 mmol").shownValue(), 1e-9);
    }

    /** Ribbon is ordered by its length as well: 50 mm × 12 × 1.1 = 660 mm. What a reaction makes, nobody orders. */
    @Test
    void ribbonIsTotalledByLengthAndAProductNotAtAll() {
        Door.Outcome outcome = Door.open(kit("Ribbon").block("reaction dissolving", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)")
                .block("solid ribbon", "substance: Mg", "mass: 0.050 g", "cut as: ribbon at 1.00 g/m; to 1 mm").block("gas hydrogen", "substance: H2", "made by: dissolving")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20.0 mL").markdown()).sound();
        shows(660, "mm", 1e-9, outcome.figure("ribbon", Property.CLASS_LENGTH));
        assertTrue(outcome.block("hydrogen").figure(Property.CLASS_TOTAL).isEmpty());
        assertTrue(outcome.block("acid").figure(Property.CLASS_LENGTH).isEmpty() && outcome.block("acid").figure(Property.LENGTH).isEmpty());
    }

    // --- rounding

    private static Page chalk(String chalk, String acid) {
        return kit("Rounding").block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)").block("solid chalk", "substance: CaCO3", chalk)
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", acid, "measure with: cylinder");
    }

    /** 0.800 g of chalk, 7.9931 mmol, takes 15.986 mL: set to the nearest half, 16.0 mL; as an excess of once and a half, 23.979 mL, up to 24.0 mL; of 1.51 times, 24.139 mL, up to 24.5 mL. */
    @ParameterizedTest
    @CsvSource({"for: chalk,16.0,INSTRUMENT", "excess over: chalk;at least: 1.5 times,24.0,EXCESS", "excess over: chalk;at least: 1.51 times,24.5,EXCESS"})
    void whatIsForAnotherIsSetToTheNearestAndAnExcessUpward(String acid, double millilitres, Reason reason) {
        Figure volume = Door.open(chalk("mass: 0.800 g", acid.replace(";", "\n")).markdown()).sound().figure("acid", Property.VOLUME);
        shows(millilitres, "mL", 1e-9, volume);
        assertEquals(reason, reason(volume));
        assertEquals(1, volume.decimals().orElseThrow());
        // Half a division of 0.5 mL, rectangular.
        assertEquals(0.25e-6 / Math.sqrt(3), volume.ownUncertainty(), 1e-15);
        assertEquals(volume.standardUncertainty(), volume.ownUncertainty(), 1e-15, "what is set is known as well as it is set");
    }

    /** 6.0052 g of acetic acid, 100.0 mmol, take as much ethanol (46.069 g/mol): at 0.789 g/mL and 96.0 % 6.082 mL, set as 6.0 mL, 4.734 g, 98.65 mmol. Pure, 5.839 mL would do, set as 6.0 mL too. */
    @ParameterizedTest
    @CsvSource({"96.0 %,6.0822,98.65", "100.0 %,5.8389,102.76"})
    void aLiquidForAnotherIsMeasuredByVolume(String purity, double wanted, double millimoles) {
        Door.Outcome outcome = Door.open(kit("Ester").block("reaction joining", "C2H5OH(l) + CH3COOH(l) -> CH3COOC2H5(l) + H2O(l)")
                .block("liquid spirit", "substance: C2H5OH", "density: 0.789 g/mL", "purity: " + purity, "for: vinegar", "measure with: cylinder")
                .block("liquid vinegar", "substance: CH3COOH", "mass: 6.0052 g").markdown()).sound();
        Figure volume = outcome.figure("spirit", Property.VOLUME);
        shows(6.0, "mL", 1e-9, volume);
        assertEquals(wanted, volume.from().get(0).shownValue(), 5e-4);
        assertEquals(4.734, outcome.figure("spirit", Property.MASS).value() * 1e3, 1e-3);
        assertEquals(millimoles, outcome.figure("spirit", Property.MOLES).value() * 1e3, 0.01);
    }

    /** A titrant whose volume is read is not set but found, and follows the sample with its error. */
    @Test
    void anEndPointIsReadAndNotSet() {
        Page page = chalk("mass: 1.000 g", "for: chalk").block("reading poured", "of: volume of acid", "read with: cylinder");
        Figure volume = Door.open(page.markdown()).sound().figure("acid", Property.VOLUME);
        assertInstanceOf(Step.Read.class, volume.step());
        shows(20.0, "mL", 1e-9, volume);
        assertTrue(volume.standardUncertainty() > volume.ownUncertainty());
    }

    /** A beaker without marks rounds nothing. */
    @Test
    void aVesselWithoutMarksRoundsNothing() {
        Figure volume = Door.open(chalk("mass: 1.000 g", "for: chalk").markdown().replace("measure with: cylinder", "measure with: beaker")).sound().figure("acid", Property.VOLUME);
        assertEquals(19.983, volume.shownValue(), 1e-3);
        assertFalse(volume.step() instanceof Step.Set);
    }

    /** A typed volume is known as well as its cylinder, 0.25 mL/√3; to its own limits, where they are typed; to half of its last digit where no instrument is named. */
    @ParameterizedTest
    @CsvSource({"volume: 20.0 mL,measure with: cylinder,0.25", "volume: 20.0 ± 0.1 mL,measure with: cylinder,0.1", "volume: 20.0 mL,density: 1.0 g/mL,0.05", "volume: 20 mL,measure with: beaker,0.5"})
    void aTypedVolumeIsAsSureAsItsInstrument(String volume, String more, double halfWidth) {
        Figure figure = with("solution acid", "solute: HCl", "strength: 1.0 mol/L", volume, more).sound().figure("acid", Property.VOLUME);
        assertEquals(halfWidth * 1e-6 / Math.sqrt(3), figure.standardUncertainty(), 1e-14);
    }

    /** 8.2288 mmol of acid take 4.1144 mmol of magnesium: 0.1000 g at 1.10 g/m are 90.9 mm: cut to 91 mm, 0.1001 g; with a balance of milligrams that is what it shows, 100 mg; without one it is what was cut. */
    @ParameterizedTest
    @CsvSource({"weigh with: fine,100,mg", "weigh with: balance,0.10,g", "weigh with: coarse,0.1001,g", "keeps: dry,0.1001,g"})
    void ribbonIsCutAndThenWeighed(String instrument, double mass, String unit) {
        Door.Outcome outcome = Door.open(kit("Ribbon").block("reaction dissolving", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)").block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 8.2288 mL")
                .block("solid ribbon", "substance: Mg", "for: acid", "cut as: ribbon at 1.10 g/m; to 1 mm", instrument.startsWith("keeps") ? "" : instrument).markdown()).sound();
        shows(91, "mm", 1e-9, outcome.figure("ribbon", Property.LENGTH));
        assertEquals(0, outcome.figure("ribbon", Property.LENGTH).decimals().orElseThrow());
        assertEquals(0.5e-3 / Math.sqrt(3), outcome.figure("ribbon", Property.LENGTH).standardUncertainty(), 1e-12);
        shows(mass, unit, 1e-9, outcome.figure("ribbon", Property.MASS));
    }

    /**
     * 24.055 L/mol at 20 °C and 101.325 kPa. A wish for 99.9 mL, 0.4157 g, in a syringe of 100 mL is not overfilled by the balance's rounding up to 0.42 g; where the wish itself is larger than the
     * syringe, rounding down would not help, and it is to the nearest.
     */
    @ParameterizedTest
    @CsvSource({"99.9 mL,VESSEL", "81 mL,INSTRUMENT", "99 mL,INSTRUMENT", "105 mL,INSTRUMENT"})
    void onlyWhereTheVesselWouldOverfillItIsRoundedDown(String wanted, Reason reason) {
        Door.Outcome outcome = Door.open(kit("Wish").front("room: 20 °C; 101.325 kPa").front("gases: ideal").block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("gas fizz", "substance: CO2", "made by: fizzing", "wanted: " + wanted, "in: syringe").block("solid chalk", "substance: CaCO3", "for: fizz", "weigh with: balance")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: chalk", "at least: 2 times").markdown());
        Figure mass = outcome.figure("chalk", Property.MASS);
        assertEquals(reason, reason(mass));
        double exact = mass.from().get(0).value() * 1e5;
        assertEquals(reason == Reason.VESSEL ? Math.floor(exact) : Math.rint(exact), mass.value() * 1e5, 1e-9);
        assertTrue(reason != Reason.VESSEL || Math.rint(exact) > exact, "the nearest would have been more");
    }

    // --- products

    private static Page crystals(String yield, String product) {
        return kit("Crystals").block("reaction settling", "CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + NaCl(aq)", yield).block("solution calcium", "solute: CaCl2", "strength: 0.50 mol/L", "volume: 20.0 mL")
                .block("solution soda", "solute: Na2CO3", "strength: 0.50 mol/L", "volume: 30.0 mL").block("solid chalk", "substance: CaCO3", product);
    }

    /** 10.0 mmol at most, 1.00086 g; at 85 % 0.85073 g, of 98 % purity more is weighed: 0.86809 g. Of a gas there is a volume and no yield by mass. */
    @ParameterizedTest
    @CsvSource({"goes to: 85 %,made by: settling,1.00086,0.85073", "goes to: 85 %,made by: settling;purity: 98 %,1.02129,0.86809", "limiting: calcium,made by: settling,1.00086,1.00086",
        "goes to: 85 %,mass: 0.9 g;made by: settling,1.00086,0.85073"})
    void aProductHasAMostAndAYield(String reaction, String product, double most, double yield) {
        Door.Outcome outcome = Door.open(crystals(reaction, product.replace(";", "\n")).markdown());
        assertEquals(most, outcome.figure("chalk", Property.MOST).value() * 1e3, 2e-5);
        assertEquals(yield, outcome.figure("chalk", Property.YIELD).value() * 1e3, 2e-5);
    }

    /** What is typed of a product is a wish: its mass stays as typed. What is not reckoned with in any reaction is no product. */
    @Test
    void aTypedProductStaysAsTyped() {
        Door.Outcome outcome = Door.open(crystals("", "mass: 0.9 g\nmade by: settling").markdown());
        assertEquals(0.9, outcome.shown("chalk", Property.MASS), 1e-12);
        assertTrue(outcome.block("chalk").figure(Property.CLASS_TOTAL).isEmpty());
        Door.Outcome rinse = Door.open(crystals("", "mass: 0.9 g\nrole: rinse").markdown()).sound();
        assertTrue(rinse.block("chalk").figure(Property.MOST).isEmpty() && rinse.block("chalk").figure(Property.YIELD).isEmpty());
        assertEquals(0.9 * 13.2, rinse.figure("chalk", Property.CLASS_TOTAL).value() * 1e3, 0.1);
    }

    /** A substance that stands once in a procedure is called by its formula; of two of a kind, or one that hides its formula, each by its name. */
    @Test
    void aFigureIsCalledByItsFormulaWhereThatTellsItApart() {
        Door.Outcome one = Door.open(crystals("", "made by: settling").markdown()).sound();
        assertEquals("n(CaCl2)", one.figure("calcium", Property.MOLES).symbol().plain());
        Door.Outcome two = Door.open(crystals("", "made by: settling").block("solution more", "solute: CaCl2", "strength: 0.10 mol/L", "volume: 5.0 mL", "role: rinse").markdown()).sound();
        assertEquals("n(calcium)", two.figure("calcium", Property.MOLES).symbol().plain());
        assertEquals("n(more)", two.figure("more", Property.MOLES).symbol().plain());
        assertEquals("n(Na2CO3)", two.figure("soda", Property.MOLES).symbol().plain());
    }

    @Test
    void aMistakeInOneBlockIsToldOnce() {
        Door.Outcome outcome = Door.open(crystals("", "made by: settling").markdown().replace("strength: 0.50 mol/L\nvolume: 20.0 mL", "strength: 0.50 mol/L\nvolume: 20.0 g"));
        assertEquals(1, outcome.ids(Severity.ERROR).size(), outcome.errors().toString());
    }
}
