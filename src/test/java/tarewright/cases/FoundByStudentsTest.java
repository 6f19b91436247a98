package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;

/**
 * What students find out recovers what was hidden from them, as far as they can read it.
 * Each number is worked by hand in the comment beside it, with molar masses from the IUPAC abridged standard atomic weights (Prohaska
 * et al., Pure Appl. Chem. 94 (2022) 573) and R = 8.3145 J/(mol K) (CODATA 2018).
 */
class FoundByStudentsTest {
    /**
     * 5.0 % w/v is 50 g/L / 60.052 g/mol = 0.8326 mol/L. Diluted 25 to 250, 25 mL hold 2.0815 mmol: 20.815 mL of 0.1000 mol/L
     * alkali, read as 20.80 mL. Back: 0.1000 × 20.80 / 25.00 = 0.0832 mol/L
     * in the flask, 0.832 mol/L in the bottle.
     */
    @Test
    void aBottleIsFoundThroughItsDilutionAndPortion() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Vinegar"))
                .block("reaction neutralising", "CH3COOH(aq) + NaOH(aq) -> NaCH3COO(aq) + H2O(l)")
                .block("solution vinegar", "solute: acetic acid", "strength: 5.0 % w/v", "found by students: yes",
                        "label as: Sample V")
                .block("solution diluted", "made from: vinegar", "volume: 25.00 mL", "made up to: 250 mL")
                .block("solution aliquot", "portion of: diluted", "volume: 25.00 mL", "portions: 3")
                .block("solution alkali", "solute: NaOH", "strength: 0.1000 mol/L", "for: aliquot", "measure with: burette")
                .block("reading titre", "of: volume of alkali", "read with: burette", "times: 3")
                .text("1. In the bottle?\n\n   ```answer\n   value: strength of vinegar\n   ```\n\n2. In the flask?\n\n   "
                        + "```answer\n   value: strength of diluted\n   ```\n")
                .markdown()).sound();
        assertEquals(0.8326, outcome.shown("vinegar", Property.STRENGTH), 5e-5);
        assertEquals(20.8153, outcome.shown("diluted", Property.MOLES), 5e-4, "the flask holds all that was taken for it");
        assertEquals(20.80, outcome.shown("alkali", Property.VOLUME), 1e-9);
        double mean = outcome.resolved().reading("titre").orElseThrow().value().value() * 1e6;
        assertEquals(20.80, mean, 0.1);
        assertEquals(0.1000 * mean / 25.00 * 250 / 25.00, outcome.answer(0).shownValue(), 1e-9);
        assertEquals(0.1000 * mean / 25.00, outcome.answer(1).shownValue(), 1e-9);
        // Three titrations of twelve groups with a tenth to spare: what reacts with a portion is used as often. Each burette of 50 mL is rinsed with 2 × 10 mL, and after
        // the third titre, for which it was filled again, 55 - 20.80 mL are left in it (common practice, no source).
        assertEquals((20.80 * 3 + 20 + 55 - 20.80) * 12 * 1.1, outcome.shown("alkali", Property.CLASS_TOTAL), 1e-6);
    }

    /**
     * 1.000 g of chalk, 92 % CaCO3 (100.086 g/mol): 9.192 mmol use up 18.384 of 50.00 mmol of acid. 31.616 mmol are left, 31.60
     * mL on the burette. Found: (50.00 - 31.60) / 2 = 9.20 mmol, 0.9208 g, 92.08 %.
     */
    @Test
    void aBackTitrationFindsThePurity() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Chalk"))
                .block("reaction dissolving", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("reaction neutralising", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)")
                .block("solid chalk", "substance: CaCO3", "mass: 1.000 g", "purity: 92 %", "found by students: yes",
                        "weigh with: balance")
                .block("solution acid", "solute: HCl", "strength: 1.000 mol/L", "volume: 50.00 mL", "reacts in: dissolving")
                .block("solution alkali", "solute: NaOH", "strength: 1.000 mol/L", "for: left over of acid",
                        "reacts in: neutralising", "measure with: burette")
                .block("reading titre", "of: volume of alkali", "read with: burette").ask("purity of chalk", "%").markdown())
                        .sound();
        assertEquals(31.616, outcome.shown("acid", Property.LEFT_OVER), 5e-4);
        assertEquals(31.60, outcome.shown("alkali", Property.VOLUME), 1e-9);
        assertEquals(92.08, outcome.answer().shownValue(), 0.005);
    }

    /**
     * 0.300 g, 85 % CaCO3 (100.086 g/mol): 2.5478 mmol of gas, 61.72 mL at 22 °C and 101.3 kPa, read as 62 mL: 2.5593 mmol, 85.38 %. That the acid is read too, before the gas, tells
     * nothing: 20 mmol of it are there, whatever the shell holds, by a fixed volume or by an excess.
     */
    @Test
    void anAcidInExcessThatIsReadTellsNothing() {
        for (String amount : List.of("volume: 20.0 mL", "excess over: sample\nat least: 3 times")) {
            Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Shell")).front("room: 22 °C; 101.3 kPa").front("gases: ideal")
                    .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL", "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL")
                    .block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                    .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", amount, "measure with: cylinder")
                    .block("reading poured", "of: volume of acid", "read with: cylinder")
                    .block("solid sample", "substance: CaCO3", "mass: 0.300 g", "purity: 85 %", "found by students: yes", "label as: Sample",
                            "weigh with: balance")
                    .block("gas fizz", "substance: CO2", "made by: fizzing", "in: syringe")
                    .block("reading syringe read", "of: volume of fizz", "read with: syringe").ask("purity of sample", "%").markdown()).sound();
            assertEquals(85.38, outcome.answer().shownValue(), 0.01);
        }
    }

    /**
     * 0.300 g, 85 % CaCO3: 2.5478 mmol, 61.72 mL at 22 °C and 101.3 kPa, read as 62 mL. Back: 2.5593 mmol, 0.25615 g, 85.38 %.
     */
    @Test
    void aGasVolumeFindsThePurity() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Chalk")).front("room: 22 °C; 101.3 kPa")
                .front("gases: ideal")
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL")
                .block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("solid sample", "substance: CaCO3", "mass: 0.300 g", "purity: 85 %", "found by students: yes",
                        "weigh with: balance")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: sample", "at least: 2 times")
                .block("gas carbon dioxide", "substance: CO2", "made by: fizzing", "in: syringe")
                .block("reading gas read", "of: volume of carbon dioxide").ask("purity of sample", "%").markdown()).sound();
        assertEquals(61.72, outcome.shown("carbon dioxide", Property.VOLUME), 0.005);
        assertEquals(62, outcome.resolved().reading("gas read").orElseThrow().value().shownValue(), 1e-9);
        assertEquals(85.38, outcome.answer().shownValue(), 0.01);
    }

    /**
     * 0.5105 g of potassium hydrogenphthalate (204.222 g/mol) are 2.4997 mmol: 24.222 mL of 0.1032 mol/L, read as 24.20 mL.
     * Found: 2.4997 / 24.20 = 0.10329 mol/L.
     */
    @Test
    void aTitrantIsFoundByWhatIsWeighed() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Standard"))
                .block("reaction neutralising", "KHC8H4O4(aq) + NaOH(aq) -> KNaC8H4O4(aq) + H2O(l)")
                .block("solid standard", "substance: KHC8H4O4", "mass: 0.5105 g")
                .block("solution alkali", "solute: NaOH", "strength: 0.1032 mol/L", "for: standard", "found by students: yes",
                        "measure with: burette")
                .block("reading titre", "of: volume of alkali", "read with: burette").ask("strength of alkali", "mol/L")
                        .markdown()).sound();
        assertEquals(24.20, outcome.shown("alkali", Property.VOLUME), 1e-9);
        assertEquals(0.10329, outcome.answer().shownValue(), 5e-6);
    }

    /**
     * 0.300 g, 90 % FeSO4.7H2O (278.006 g/mol): 0.9712 mmol, a fifth of it is 0.19424 mmol, 19.42 mL of 0.0100 mol/L, read as
     * 19.40 mL. Found: 0.970 mmol, 89.89 %.
     */
    @Test
    void aWeighedSaltBringsItsIon() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Iron"))
                .block("reaction redox", "MnO4^-(aq) + Fe^2+(aq) + H^+(aq) -> Mn^2+(aq) + Fe^3+(aq) + H2O(l)")
                .block("solid tablet", "substance: FeSO4.7H2O", "acts as: Fe^2+", "mass: 0.300 g", "purity: 90 %",
                        "found by students: yes", "weigh with: balance")
                .block("solution acid", "solute: H2SO4", "strength: 1.0 mol/L", "volume: 25 mL")
                .block("solution purple", "solute: KMnO4", "strength: 0.0100 mol/L", "for: tablet", "measure with: burette")
                .block("reading titre", "of: volume of purple", "read with: burette").ask("purity of tablet", "%").markdown())
                        .sound();
        assertEquals(19.40, outcome.shown("purple", Property.VOLUME), 1e-9);
        assertEquals(89.89, outcome.answer().shownValue(), 0.005);
        // 25 mmol of sulfuric acid bring 50 mmol of hydrogen ions for 8 × 0.194 mmol: 32.2 times.
        assertEquals(32.2, outcome.shown("acid", Property.EXCESS), 0.05);
    }

    /**
     * 10.00 mL of bleach, 0.100 mol/L, set 1.000 mmol of iodine free, which takes 2.000 mmol of thiosulfate, 20.00 mL. Back: 1.000 mmol
     * in 10.00 mL.
     */
    @Test
    void iodineThatIsSetFreeTellsOfWhatFreedIt() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Bleach"))
                .block("reaction freeing", "ClO^-(aq) + I^-(aq) + H^+(aq) -> Cl^-(aq) + I2(aq) + H2O(l)")
                .block("reaction titrating", "I2(aq) + S2O3^2-(aq) -> I^-(aq) + S4O6^2-(aq)")
                .block("solution bleach", "solute: NaClO", "strength: 0.100 mol/L", "volume: 10.00 mL", "found by students: yes")
                .block("solution iodide", "solute: KI", "strength: 0.50 mol/L", "excess over: bleach", "at least: 1.5 times",
                        "reacts in: freeing")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: bleach", "at least: 1.5 times")
                .block("solution iodine", "solute: I2", "made by: freeing")
                .block("solution thio", "solute: Na2S2O3", "strength: 0.100 mol/L", "for: iodine", "measure with: burette")
                .block("reading titre", "of: volume of thio", "read with: burette").ask("strength of bleach", "mol/L").markdown())
                .sound();
        assertEquals(20.00, outcome.shown("thio", Property.VOLUME), 1e-9);
        assertEquals(0.1000, outcome.answer().shownValue(), 1e-9);
    }

    /**
     * 2.65 g of washing soda of 95 % Na2CO3 (105.988 g/mol), 23.753 mmol, made up to 250 mL: 25 mL hold 2.3753 mmol and take 47.505 mL of
     * 0.1000 mol/L acid, read as 47.50 mL. Back: 2.375 mmol, tenfold 23.75 mmol, 2.5172 g, 94.99 %.
     */
    @Test
    void aSolidIsFoundThroughTheFlaskItWasMadeUpIn() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Soda"))
                .block("reaction neutralising", "Na2CO3(aq) + HCl(aq) -> NaCl(aq) + H2O(l) + CO2(g)")
                .block("solid soda", "substance: Na2CO3", "mass: 2.650 g", "purity: 95 %", "found by students: yes",
                        "weigh with: balance")
                .block("solution flask", "made from: soda", "made up to: 250 mL")
                .block("solution aliquot", "portion of: flask", "volume: 25.00 mL")
                .block("solution acid", "solute: HCl", "strength: 0.1000 mol/L", "for: aliquot", "measure with: burette")
                .block("reading titre", "of: volume of acid", "read with: burette").ask("purity of soda", "%").markdown()).sound();
        assertEquals(0.09501, outcome.shown("flask", Property.STRENGTH), 5e-6);
        assertEquals(47.50, outcome.shown("acid", Property.VOLUME), 1e-9);
        assertEquals(94.99, outcome.answer().shownValue(), 0.005);
    }

    /**
     * 0.500 g of fertiliser, 80 % (NH4)2SO4 (132.134 g/mol), bring 3.0272 mmol of sulfate; nine tenths of it come out as 0.6359 g of
     * barium sulfate (233.386 g/mol), read as 0.636 g. Back: 2.7251 mmol / 0.90 = 3.0279 mmol, 80.02 %.
     */
    @Test
    void aPrecipitateThatIsNotAllTellsByItsYield() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Sulfate"))
                .block("reaction precipitating", "SO4^2-(aq) + Ba^2+(aq) -> BaSO4(s)", "goes to: 90 %")
                .block("solid fertiliser", "substance: (NH4)2SO4", "acts as: SO4^2-", "mass: 0.500 g", "purity: 80 %",
                        "found by students: yes", "weigh with: balance")
                .block("solution barium", "solute: BaCl2", "strength: 0.20 mol/L", "excess over: fertiliser", "at least: 1.5 times")
                .block("solid white", "substance: BaSO4", "made by: precipitating", "weigh with: balance")
                .block("reading weighed", "of: mass of white", "read with: balance").ask("purity of fertiliser", "%").markdown())
                .sound();
        assertEquals(0.6359, outcome.shown("white", Property.YIELD), 5e-5);
        assertEquals(80.02, outcome.answer().shownValue(), 0.01);
    }

    /** 5.0 mL of 1.0 mol/L acid use up 2.5 mmol of the 8.99 mmol of CaCO3 in the sample: the gas tells of the acid and not of the sample. */
    @Test
    void whatIsLeftOverIsNotFoundOut() {
        String markdown = Titrations.instruments(new Page("Too little acid"))
                .block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("solid sample", "substance: CaCO3", "mass: 1.000 g", "purity: 90 %", "found by students: yes")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: VOLUME mL")
                .block("gas carbon dioxide", "substance: CO2", "made by: fizzing")
                .block("reading gas read", "of: volume of carbon dioxide").ask("purity of sample", "%").markdown();
        assertEquals(List.of("found-left-over"), Door.open(markdown.replace("VOLUME", "5.0")).ids(Severity.ERROR));
        assertEquals(List.of(), Door.open(markdown.replace("VOLUME", "20.0")).ids(Severity.ERROR));
    }

    /**
     * Zinc of unknown mass: 0.200 g (65.38 g/mol) give 3.0590 mmol, 73.585 mL at 20 °C and 101.325 kPa (24.0549 L/mol), read as 74 mL. Back: 3.0763 mmol, 0.20113 g.
     */
    @Test
    void theMassOfAMetalIsFoundByItsGas() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Zinc")).front("room: 20 °C; 101.325 kPa").front("gases: ideal")
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL").block("reaction dissolving", "Zn(s) + HCl(aq) -> ZnCl2(aq) + H2(g)")
                .block("solid metal", "substance: Zn", "mass: 0.200 g", "found by students: yes", "label as: Metal")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20.0 mL").block("gas hydrogen", "substance: H2", "made by: dissolving", "in: syringe")
                .block("reading gas read", "of: volume of hydrogen").ask("mass of metal", "g").markdown()).sound();
        assertEquals(0.20113, outcome.answer().shownValue(), 5e-5);
        assertEquals(0.200, outcome.shown("metal", Property.MASS), 1e-12);
    }

    /** The same metal, whose mass the students do read (0.200 g on the balance): what is weighed is no result, and stays. */
    @Test
    void aMassThatIsWeighedIsNotFoundOut() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Zinc")).front("room: 20 °C; 101.325 kPa").front("gases: ideal")
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL").block("reaction dissolving", "Zn(s) + HCl(aq) -> ZnCl2(aq) + H2(g)")
                .block("solid metal", "substance: Zn", "mass: 0.200 g", "found by students: yes", "label as: Metal", "weigh with: balance")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20.0 mL").block("gas hydrogen", "substance: H2", "made by: dissolving", "in: syringe")
                .block("reading weighed", "of: mass of metal").block("reading gas read", "of: volume of hydrogen").ask("mass of metal", "g").markdown());
        assertEquals(0.200, outcome.answer().shownValue(), 1e-9);
    }

    /** 25.00 mL of 0.100 mol/L sulfate give 2.50 mmol of barium sulfate (233.383 g/mol), 0.5835 g, read as 0.58 g (to 0.01 g). Back: 2.4852 mmol, 0.09941 mol/L; in the bottle of 250 mL 24.852 mmol. */
    @Test
    void aSolutionIsFoundByItsPrecipitateAndItsBottleWithIt() {
        String markdown = new Page("Sulfate").wasted().block("apparatus", "scales: balance; reads to 0.01 g").block("reaction clouding", "Na2SO4(aq) + BaCl2(aq) -> BaSO4(s) + NaCl(aq)")
                .block("solution bottle", "solute: Na2SO4", "strength: 0.100 mol/L", "volume: 250 mL", "found by students: yes", "label as: Sample")
                .block("solution sample", "portion of: bottle", "volume: 25.00 mL").block("solution barium", "solute: BaCl2", "strength: 0.20 mol/L", "excess over: sample", "at least: 1.5 times")
                .block("solid white", "substance: BaSO4", "made by: clouding", "weigh with: scales").block("reading weighed", "of: WHAT", "read with: scales")
                .ask("strength of sample", "mol/L").ask("strength of bottle", "mol/L").ask("moles of bottle", "mmol").ask("yield of white - mass of white", "g").markdown();
        for (String what : List.of("mass of white", "yield of white", "white")) {
            Door.Outcome outcome = Door.open(markdown.replace("WHAT", what)).sound();
            assertEquals(0.09941, outcome.answer(0).shownValue(), 1e-5, what);
            assertEquals(0.09941, outcome.answer(1).shownValue(), 1e-5, what);
            assertEquals(24.852, outcome.answer(2).shownValue(), 2e-3, what);
            assertEquals(0, outcome.answer(3).shownValue(), 1e-9, "the mass of a product is its yield");
            assertEquals(0.100, outcome.shown("bottle", Property.STRENGTH), 1e-12, "what is expected stays");
        }
    }

    /** Nothing is read that could tell of the sample: the author is told, at its name, and nothing is made up from what is hidden. */
    @Test
    void withoutAReadingNothingIsFoundOut() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Nothing")).block("reaction neutralising", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)")
                .block("solution sample", "solute: HCl", "strength: 0.100 mol/L", "volume: 25.00 mL", "found by students: yes", "label as: Sample")
                .block("solution alkali", "solute: NaOH", "strength: 0.1000 mol/L", "for: sample", "measure with: burette").ask("strength of sample", "mol/L").markdown());
        assertEquals(List.of("sample"), outcome.errors().stream().filter(f -> f.id().equals("nothing-expected")).map(f -> f.at().text()).toList());
        assertEquals(java.util.Optional.empty(), outcome.resolved().answers().get(0).value());
    }

    /**
     * A series of dilutions of an unknown: ten to a hundred, and of that ten to a hundred again; 25 mL of the last take 12.50 mL of 0.0100 mol/L. Back: 0.00500, 0.0500, 0.500 mol/L.
     */
    @Test
    void anUnknownIsFoundThroughTwoDilutions() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Twice")).block("reaction neutralising", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)")
                .block("solution drum", "solute: HCl", "strength: 0.500 mol/L", "found by students: yes", "label as: Drum")
                .block("solution first", "made from: drum", "volume: 10.00 mL", "made up to: 100 mL").block("solution second", "made from: first", "volume: 10.00 mL", "made up to: 100 mL")
                .block("solution aliquot", "portion of: second", "volume: 25.00 mL").block("solution alkali", "solute: NaOH", "strength: 0.0100 mol/L", "for: aliquot", "measure with: burette")
                .block("reading titre", "of: volume of alkali", "read with: burette").ask("strength of drum", "mol/L").ask("strength of first", "mol/L").ask("moles of aliquot", "mmol").markdown()).sound();
        assertEquals(12.50, outcome.shown("alkali", Property.VOLUME), 1e-9);
        assertEquals(0.500, outcome.answer(0).shownValue(), 1e-9);
        assertEquals(0.0500, outcome.answer(1).shownValue(), 1e-9);
        assertEquals(0.125, outcome.answer(2).shownValue(), 1e-9);
    }

    /**
     * Back titration two to one: 0.400 g of magnesia, 90 % MgO (40.304 g/mol), 8.9321 mmol of 12.50 mmol of sulfuric acid; 3.5679 mmol are left and take 14.27 mL of 0.500 mol/L alkali, read as
     * 14.25 mL. Back: 12.50 - 14.25 × 0.500 / 2 = 8.9375 mmol, 90.05 %.
     */
    @Test
    void aBackTitrationCountsTwoAlkaliForOneAcid() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Magnesia")).block("reaction dissolving", "MgO(s) + H2SO4(aq) -> MgSO4(aq) + H2O(l)")
                .block("reaction neutralising", "H2SO4(aq) + NaOH(aq) -> Na2SO4(aq) + H2O(l)")
                .block("solid magnesia", "substance: MgO", "mass: 0.400 g", "purity: 90 %", "found by students: yes", "weigh with: balance")
                .block("solution acid", "solute: H2SO4", "strength: 0.500 mol/L", "volume: 25.00 mL", "reacts in: dissolving")
                .block("solution alkali", "solute: NaOH", "strength: 0.500 mol/L", "for: left over of acid", "reacts in: neutralising", "measure with: burette")
                .block("reading titre", "of: volume of alkali", "read with: burette").ask("purity of magnesia", "%").markdown()).sound();
        assertEquals(14.25, outcome.shown("alkali", Property.VOLUME), 1e-9);
        assertEquals(90.05, outcome.answer().shownValue(), 0.01);
    }

    /**
     * Permanganate standardised by 0.1340 g of sodium oxalate (133.998 g/mol), 1.00001 mmol: two for five, 0.40001 mmol, 20.00 mL of 0.0200 mol/L. The acid beside it, in excess and first in the
     * file, tells nothing of it.
     */
    @Test
    void aTitrantIsFoundByWhatIsTypedAndNotByWhatIsInExcess() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Oxalate")).block("reaction redox", "MnO4^-(aq) + C2O4^2-(aq) + H^+(aq) -> Mn^2+(aq) + CO2(g) + H2O(l)")
                .block("solution acid", "solute: H2SO4", "strength: 1.0 mol/L", "excess over: oxalate", "at least: 3 times")
                .block("solid oxalate", "substance: Na2C2O4", "acts as: C2O4^2-", "mass: 0.1340 g")
                .block("solution purple", "solute: KMnO4", "strength: 0.0200 mol/L", "for: oxalate", "found by students: yes", "label as: Purple", "measure with: burette")
                .block("reading titre", "of: volume of purple", "read with: burette").ask("strength of purple", "mol/L").ask("moles of purple", "mmol").markdown()).sound();
        assertEquals(20.00, outcome.shown("purple", Property.VOLUME), 1e-9);
        assertEquals(0.0200005, outcome.answer(0).shownValue(), 1e-6);
        assertEquals(0.400007, outcome.answer(1).shownValue(), 2e-5);
    }

    /** What is found is worked from the standard, 0.5105 g / 204.222 g/mol = 2.49973 mmol, and not from what is hidden, 24.20 mL × 0.1032 mol/L = 2.49744 mmol. */
    @Test
    void whatIsFoundIsNotTakenFromWhatIsHidden() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Standard")).block("reaction neutralising", "KHC8H4O4(aq) + NaOH(aq) -> KNaC8H4O4(aq) + H2O(l)")
                .block("solid standard", "substance: KHC8H4O4", "mass: 0.5105 g")
                .block("solution alkali", "solute: NaOH", "strength: 0.1032 mol/L", "for: standard", "found by students: yes", "measure with: burette")
                .block("reading titre", "of: volume of alkali", "read with: burette").ask("moles of alkali", "mmol").markdown()).sound();
        assertEquals(2.49973, outcome.answer().shownValue(), 2e-5);
        assertEquals(2.49744, outcome.figure("alkali", Property.MOLES).value() * 1000, 2e-5);
    }
}
