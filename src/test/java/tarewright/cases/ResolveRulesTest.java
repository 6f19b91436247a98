package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;

/**
 * Procedures as a teacher writes them, each number worked by hand in the comment beside it. Molar masses are sums of the IUPAC
 * abridged standard atomic weights
 * (Prohaska et al., Pure Appl. Chem. 94 (2022) 573); R is 8.3145 J/(mol K) (CODATA 2018).
 */
class ResolveRulesTest {
    private static final String DISSOLVING = "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)";

    private static Reason reason(Figure figure) {
        return assertInstanceOf(Step.Set.class, figure.step()).reason();
    }

    // --- rounding

    /**
     * Vapour pressure of water at 20 °C: 2.339 kPa (Wagner and Pruß 2002). n = (101.3 - 2.339) kPa × 80 mL / (R × 293.15 K) =
     * 3.248 mmol; × 24.305 g/mol = 78.94 mg;
     * / 1.10 g/m = 71.8 mm, cut 72 mm, which is 79.2 mg, on the balance 0.079 g: 3.2504 mmol. Back to a volume: 80.06 mL. The
     * acid: 2 × 3.2504 mmol × 1.5 / 1.0 mol/L = 9.75 mL, up to 10.0 mL.
     */
    @Test
    void ribbonIsCutToTheNearestAndAcidMeasuredUpward() {
        Door.Outcome outcome = Door.open(ribbon("80 mL", "over water", "20 °C; 101.3 kPa", "ribbon at 1.10 g/m; to 1 mm")
                .markdown()).sound();
        Figure length = outcome.figure("ribbon", Property.LENGTH);
        assertEquals(72, length.shownValue(), 1e-9);
        assertEquals(Reason.INSTRUMENT, reason(length));
        assertEquals(71.8, length.from().get(0).value() * 1000, 0.05);
        assertEquals(0.079, outcome.shown("ribbon", Property.MASS), 1e-12);
        assertEquals(3.2504, outcome.shown("ribbon", Property.MOLES), 5e-5);
        assertEquals(80.06, outcome.shown("hydrogen", Property.VOLUME), 0.01);
        Figure acid = outcome.figure("acid", Property.VOLUME);
        assertEquals(10.0, acid.shownValue(), 1e-9);
        assertEquals(Reason.EXCESS, reason(acid));
        assertEquals(9.75, acid.from().get(0).shownValue(), 0.005);
    }

    /**
     * 100 mL at 18 °C and 101.3 kPa: 4.1846 mmol, 101.71 mg of magnesium. The nearest, 0.102 g, would give 100.3 mL in a syringe
     * of 100 mL; so it is 0.101 g.
     */
    @Test
    void roundedDownWhereTheVesselWouldOverfill() {
        Door.Outcome outcome = Door.open(ribbon("100 mL", "dry", "18 °C; 101.3 kPa", "").markdown()).sound();
        Figure mass = outcome.figure("ribbon", Property.MASS);
        assertEquals(0.101, mass.shownValue(), 1e-12);
        assertEquals(Reason.VESSEL, reason(mass));
        assertEquals(101.71, mass.from().get(0).value() * 1e6, 0.01);
        assertEquals(99.30, outcome.shown("hydrogen", Property.VOLUME), 0.01);
        // One millilitre less leaves room for the nearest: 100.69 mg, 0.101 g.
        assertEquals(Reason.INSTRUMENT,
                reason(Door.open(ribbon("99 mL", "dry", "18 °C; 101.3 kPa", "").markdown()).figure("ribbon", Property.MASS)));
    }

    private static Page ribbon(String wanted, String collected, String room, String cut) {
        return new Page("Hydrogen").front("room: " + room).wasted()
                .block("apparatus", "syringe: gas syringe; capacity 100 mL; graduation 1 mL",
                        "balance: balance; reads to 0.001 g",
                        "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL")
                .block("reaction dissolving", DISSOLVING)
                .block("gas hydrogen", "substance: hydrogen", "made by: dissolving", "wanted: " + wanted,
                        "collected: " + collected, "in: syringe")
                .block("solid ribbon", "substance: magnesium", "for: hydrogen", cut.isEmpty() ? "" : "cut as: " + cut,
                        "weigh with: balance")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: ribbon", "at least: 1.5 times",
                        "measure with: cylinder");
    }

    /** A balance measures no volume, a cylinder no mass, a thermometer no titre. */
    @Test
    void anInstrumentMeasuresItsOwnKind() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Instruments"))
                .block("solid salt", "substance: NaCl", "mass: 1.000 g", "weigh with: burette")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 20.00 mL", "measure with: balance")
                .block("reading poured", "of: volume of acid", "read with: balance").markdown());
        assertEquals(List.of("wrong-instrument", "wrong-instrument", "wrong-instrument"), outcome.ids(Severity.ERROR));
        assertEquals(List.of("burette", "balance", "balance"), outcome.errors().stream().map(f -> f.at().text()).toList());
    }

    /** 10 mmol of sodium hydroxide (39.997 g/mol) are 0.39997 g: weighed as 0.40 g, they are 10.0008 mmol. */
    @Test
    void aTypedAmountOfSubstanceIsWeighed() {
        Door.Outcome outcome = Door.open(Titrations.instruments(new Page("Lye"))
                .block("apparatus", "scales: balance; reads to 0.01 g")
                .block("solid lye", "substance: NaOH", "moles: 10 mmol", "weigh with: scales").markdown()).sound();
        assertEquals(0.40, outcome.shown("lye", Property.MASS), 1e-12);
        assertEquals(10.0008, outcome.shown("lye", Property.MOLES), 5e-5);
        assertEquals(Reason.INSTRUMENT, reason(outcome.figure("lye", Property.MASS)));
    }

    // --- pots

    /** What a portion is taken from stays in its bottle: 10.0 mL of 0.50 mol/L are 5.0 mmol, whatever stands on the shelf. */
    @Test
    void bottlesStayOutOfThePot() {
        Door.Outcome outcome = Door.open(new Page("Bottles").wasted().block("reaction dissolving", DISSOLVING)
                .block("solid ribbon", "substance: Mg", "mass: 0.30 g")
                .block("solution stock", "solute: HCl", "strength: 2.0 mol/L", "volume: 500 mL")
                .block("solution bench", "made from: stock", "strength: 0.50 mol/L", "volume: 100 mL")
                .block("solution acid", "portion of: bench", "volume: 10.0 mL")
                .block("gas hydrogen", "substance: H2", "made by: dissolving").markdown()).sound();
        assertEquals(List.of("acid"), account(outcome, 0).limiting());
        assertEquals(2.5, outcome.figure("hydrogen", Property.MOLES).value() * 1000, 1e-9);
        // 0.50 × 100 / 2.0
        assertEquals(25.0, outcome.shown("bench", Property.TAKEN), 1e-9);
    }

    /** 2.0 mol/L, made to 0.10, tenfold and tenfold again: 0.0010 mol/L. 0.10 × 50 / 2.0 = 2.5 mL of stock. */
    @Test
    void dilutionsFollowEachOther() {
        Door.Outcome outcome = Door.open(new Page("Ladder").wasted().block("solution portion", "portion of: weakest",
                "volume: 5 mL")
                .block("solution weakest", "made from: weaker", "volume: 10 mL", "made up to: 100 mL")
                .block("solution weaker", "made from: bench", "volume: 10 mL", "made up to: 100 mL")
                .block("solution bench", "made from: stock", "strength: 0.10 mol/L", "volume: 50 mL")
                .block("solution stock", "solute: HCl", "strength: 2.0 mol/L").markdown()).sound();
        assertEquals(0.0010, outcome.shown("portion", Property.STRENGTH), 1e-12);
        assertEquals(5.0, outcome.figure("portion", Property.MOLES).value() * 1e6, 1e-9);
        assertEquals(2.5, outcome.shown("bench", Property.TAKEN), 1e-9);
    }

    private static PotAccount account(Door.Outcome outcome, int pot) {
        return outcome.resolved().reactions().get(0).pots().get(pot);
    }

    /**
     * A: 5.0 mmol of acid are enough for 2.5 mmol of magnesium out of 4.1. B: 0.10 g / 24.305 g/mol = 4.1144 mmol of magnesium,
     * and 10 mmol of acid.
     */
    @Test
    void batchesAreKeptApart() {
        Page page = new Page("Two flasks").wasted().block("reaction course", DISSOLVING, "limiting: metal B");
        for (String batch : List.of("A", "B")) {
            page.block("solid metal " + batch, "substance: Mg", "mass: 0.10 g", "batch: " + batch)
                    .block("solution acid " + batch, "solute: HCl",
                            "strength: " + (batch.equals("A") ? "1.0" : "2.0") + " mol/L", "volume: 5.0 mL", "batch: " + batch)
                    .block("gas gas " + batch, "substance: H2", "made by: course", "batch: " + batch);
        }
        Door.Outcome outcome = Door.open(page.markdown());
        assertEquals(List.of("too-hot"), outcome.ids(Severity.ERROR),
                "the claim is about B and true there; the hotter of two flasks is told of");
        assertEquals(List.of("acid A"), account(outcome, 0).limiting());
        assertEquals(List.of("metal B"), account(outcome, 1).limiting());
        assertEquals(2.5, outcome.figure("gas A", Property.MOLES).value() * 1000, 1e-9);
        assertEquals(4.1144, outcome.figure("gas B", Property.MOLES).value() * 1000, 5e-5);
    }

    /**
     * Two bottles of acid in one flask: 5.0 + 5.0 mmol for 5.952 mmol of soda (0.50 g / 84.006 g/mol). 4.048 mmol are left, half
     * from each.
     */
    @Test
    void severalBlocksBringOneSpecies() {
        Door.Outcome outcome = Door.open(new Page("Two acids").wasted()
                .block("reaction fizzing", "NaHCO3(s) + HCl(aq) -> NaCl(aq) + H2O(l) + CO2(g)", "limiting: soda")
                .block("solid soda", "substance: NaHCO3", "mass: 0.50 g")
                .block("solution first acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 5.0 mL")
                .block("solution second acid", "solute: HCl", "strength: 0.50 mol/L", "volume: 10.0 mL").markdown()).sound();
        assertEquals(10 / 5.952, outcome.shown("first acid", Property.EXCESS), 1e-3);
        assertEquals(2.024, outcome.shown("first acid", Property.LEFT_OVER), 5e-4);
        assertEquals(2.024, outcome.shown("second acid", Property.LEFT_OVER), 5e-4);
        assertEquals(0, outcome.shown("soda", Property.LEFT_OVER), 0);
    }

    /** Hydrochloric acid stands in both equations: the author has to say which is meant, and both are named. */
    @Test
    void ambiguityIsAnError() {
        String markdown = new Page("Which?").wasted().block("reaction one", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)")
                .block("reaction two", "HCl(aq) + NaHCO3(s) -> NaCl(aq) + H2O(l) + CO2(g)")
                .block("solution acid", "solute: HCl", "strength: 0.50 mol/L", "volume: 20.0 mL", "SAY")
                .block("solution alkali", "solute: NaOH", "strength: 0.40 mol/L", "volume: 20.0 mL").markdown();
        Finding finding = Door.open(markdown.replace("SAY\n", "")).errors().stream()
                .filter(f -> f.id().equals("ambiguous-reaction")).findFirst().orElseThrow();
        assertEquals("acid", finding.at().text());
        assertEquals(List.of("one", "two"), finding.fields().get("reactions"));
        assertEquals(List.of("one", "two"), finding.also().stream().map(s -> s.text()).toList());
        Door.Outcome said = Door.open(markdown.replace("SAY", "reacts in: one")).sound();
        // 8.0 mmol of alkali for 10.0 mmol of acid.
        assertEquals(2.0, said.shown("acid", Property.LEFT_OVER), 1e-9);
    }

    // --- products

    /**
     * 3.0 g of CuSO4.5H2O are 12.0155 mmol; at 75 % that takes 16.021 mmol of copper oxide (79.545 g/mol), 1.2744 g, weighed as
     * 1.27 g: 15.966 mmol. At most 3.986 g of crystals, at 75 % 2.990 g.
     */
    @Test
    void aMassOfProductIsAimedAt() {
        Door.Outcome outcome = Door.open(new Page("Crystals").wasted().block("apparatus", "balance: balance; reads to 0.01 g")
                .block("reaction making", "CuO(s) + H2SO4(aq) + H2O(l) -> CuSO4.5H2O(s)", "goes to: 75 %")
                .block("solid oxide", "substance: copper(II) oxide", "for: crystals", "weigh with: balance")
                .block("solution acid", "solute: H2SO4", "strength: 1.0 mol/L", "excess over: oxide", "at least: 1.05 times")
                .block("solid crystals", "substance: CuSO4.5H2O", "mass: 3.0 g", "made by: making")
                        .text("{most of crystals}, {yield of crystals}").markdown()).sound();
        assertEquals(1.27, outcome.shown("oxide", Property.MASS), 1e-12);
        assertEquals(3.986, outcome.shown("crystals", Property.MOST), 5e-4);
        assertEquals(2.990, outcome.shown("crystals", Property.YIELD), 5e-4);
    }

    /**
     * A wish for 80 mL at a yield of 90 %: 3.2489 mmol of hydrogen (20 °C, 101.325 kPa, over water) take 3.6099 mmol of
     * magnesium.
     */
    @Test
    void aWishCountsTheYield() {
        Door.Outcome outcome = Door.open(new Page("Wish").front("gases: ideal").wasted().block("reaction dissolving", DISSOLVING,
                "goes to: 90 %")
                .block("gas hydrogen", "substance: hydrogen", "wanted: 80 mL", "collected: over water")
                        .block("solid ribbon", "substance: magnesium", "for: hydrogen")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: ribbon", "at least: 1.5 times")
                        .markdown()).sound();
        assertEquals(3.6099, outcome.shown("ribbon", Property.MOLES), 5e-4);
        assertEquals(80.0, outcome.shown("hydrogen", Property.VOLUME), 1e-9);
    }

    /**
     * Sodium chloride made in solution has an amount and no strength of its own; a liquid whose density nobody knows has a mass.
     */
    @Test
    void whatNobodyAsksForNeedsNoData() {
        Door.Outcome outcome = Door.open(new Page("Salt").wasted()
                .block("reaction neutralising", "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)")
                .block("solution acid", "solute: HCl", "strength: 0.50 mol/L", "volume: 20.0 mL")
                        .block("solution alkali", "solute: NaOH", "strength: 0.40 mol/L", "for: acid")
                .block("solution brine", "solute: NaCl", "made by: neutralising").block("liquid oil", "substance: C11H22O2",
                        "mass: 2 g", "role: solvent").markdown()).sound();
        assertEquals(10.0, outcome.shown("brine", Property.MOLES), 1e-9);
        assertTrue(outcome.block("brine").figure(Property.STRENGTH).isEmpty() && outcome.block("oil").figure(Property.VOLUME)
                .isEmpty());
    }

    /** Magnesium burns and the oxide dissolves: 0.243 g, 9.998 mmol, need twice as much acid, and a tenth more. */
    @Test
    void whatOneReactionMakesGoesOnIntoTheNext() {
        Door.Outcome outcome = Door.open(new Page("Two steps").wasted().block("reaction burning", "Mg(s) + O2(g) -> MgO(s)")
                .block("reaction dissolving", "MgO(s) + HCl(aq) -> MgCl2(aq) + H2O(l)").block("solid ribbon", "substance: Mg",
                        "mass: 0.243 g")
                .block("gas oxygen", "substance: O2", "excess over: ribbon", "at least: 2 times")
                        .block("solid oxide", "substance: MgO", "made by: burning")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: oxide", "at least: 1.1 times")
                        .markdown()).sound();
        assertEquals(9.998, outcome.shown("oxide", Property.MOLES), 5e-4);
        assertEquals(21.9955, outcome.shown("acid", Property.VOLUME), 5e-4);
    }

    // --- gases

    /** Gay-Lussac: two volumes of hydrogen and one of oxygen. Dry 50 mL take 25 mL, and a fifth more is 30 mL. */
    @Test
    void gasesReactByVolumes() {
        Door.Outcome outcome = Door.open(new Page("Volumes").front("gases: ideal").wasted()
                .block("reaction burning", "H2(g) + O2(g) -> H2O(l)")
                .block("gas hydrogen", "substance: H2", "volume: 50 mL")
                        .block("gas oxygen", "substance: O2", "excess over: hydrogen", "at least: 1.2 times").markdown()).sound();
        assertEquals(30.0, outcome.shown("oxygen", Property.VOLUME), 1e-9);
        assertEquals(1.2, outcome.shown("oxygen", Property.EXCESS), 1e-9);
    }

    /**
     * One mole of carbon dioxide at 25 °C and 101.325 kPa takes 24.34 L (NIST Chemistry WebBook, isobaric data, from memory), an
     * ideal gas 24.465 L; and so much of it is one mole.
     */
    @Test
    void aRealGasIsRealBothWays() {
        for (String said : List.of("real: yes", "real: no")) {
            double litres = said.equals("real: yes") ? 24.34 : 24.465;
            Door.Outcome outcome = Door.open(new Page("Real").front("room: 25 °C; 101.325 kPa").wasted()
                    .block("gas by moles", "substance: CO2", "moles: 1.000 mol", said).block("gas by volume", "substance: CO2",
                            "volume: " + litres + " L", said).markdown()).sound();
            assertEquals(litres, outcome.shown("by moles", Property.VOLUME), 0.01);
            assertEquals(1.000, outcome.shown("by volume", Property.MOLES), 0.0005);
        }
    }

    /** A wish that nothing rounds is met, real or not: with the same law on the way there and back. */
    @Test
    void anUnroundedWishIsMet() {
        for (String said : List.of("gases: ideal", "gases: real", "level: evening class")) {
            Door.Outcome outcome = Door.open(ribbon("50 mL", "over water", "20 °C; 101.3 kPa", "").front(said).markdown()
                    .replace("weigh with: balance\n", "")).sound();
            assertEquals(50, outcome.shown("hydrogen", Property.VOLUME), 1e-3, said);
        }
    }

    // --- temperatures

    /**
     * 8.3145 J/(mol K) × 295.15 K / 100.2 kPa = 24.4913 L/mol, whether the author writes degrees or kelvins; 22.0 °C on a
     * thermometer of half degrees; 6.7 degrees between two readings.
     */
    @Test
    void degreesAreTemperaturesInProductsAndDifferencesInSums() {
        Door.Outcome outcome = Door.open(new Page("Degrees").front("room: 22 °C; 100.2 kPa").wasted()
                .block("apparatus", "thermometer: thermometer; reads to 0.1 °C", "old thermometer: thermometer; reads to 0.5 °C")
                .block("value by room", "is: 8.3145 J/(mol K) * temperature of room / pressure of room", "unit: L/mol")
                .block("value by degrees", "is: 8.3145 J/(mol K) * 22 °C / 100.2 kPa", "unit: L/mol")
                .block("reading degrees", "of: temperature of room", "read with: old thermometer")
                .block("reading start", "expect: 20.0 °C", "read with: thermometer").block("reading top", "expect: 26.7 °C",
                        "read with: thermometer")
                .block("reading rise", "by difference: top - start").ask("100 g * 4.18 J/(g K) * rise", "J").markdown()).sound();
        assertEquals(24.4913, outcome.resolved().values().get("by room").shownValue(), 5e-5);
        assertEquals(24.4913, outcome.resolved().values().get("by degrees").shownValue(), 5e-5);
        assertEquals(22.0, outcome.resolved().reading("degrees").orElseThrow().value().shownValue(), 1e-9);
        assertEquals(26.7, outcome.resolved().reading("top").orElseThrow().value().shownValue(), 1e-9);
        assertEquals(6.7, outcome.resolved().reading("rise").orElseThrow().value().shownValue(), 1e-9);
        // 100 × 4.18 × 6.7
        assertEquals(2800.6, outcome.answer().shownValue(), 1e-6);
    }

    /** An excess of exactly once is none, whatever the author calls it. */
    @Test
    void onceIsNoExcess() {
        String markdown = new Page("Once").wasted().block("reaction dissolving", DISSOLVING)
                .block("solid ribbon", "substance: Mg", "mass: 0.050 g")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: ribbon", "SAY").markdown();
        assertTrue(Door.open(markdown.replace("SAY\n", "")).ids(Severity.ERROR).contains("not-in-excess"));
        assertTrue(Door.open(markdown.replace("SAY", "at least: 1 times")).ids(Severity.ERROR).contains("not-in-excess"));
        assertTrue(!Door.open(markdown.replace("SAY", "at least: 1.2 times")).ids(Severity.ERROR).contains("not-in-excess"));
    }

    /**
     * 10 % of the pentahydrate is 10 % × 159.602 / 249.677 = 6.392 % of copper(II) sulfate. Between 1.0511 g/mL at 5 % and 1.0842 g/mL at 8 % (CRC Handbook, 102nd ed., Concentrative Properties
     * of Aqueous Solutions, 20 °C) a straight line gives 1.0665 g/mL there; so c = 0.100 × 1066.5 g/L / 249.677 g/mol = 0.4271 mol/L. The curve lies 0.0003 g/mL at most beside the line.
     */
    @Test
    void theDensityOfAHydratesSolutionIsThatOfItsDrySalt() {
        Figure strength = Door.open(copper("10 % w/w")).figure("blue", Property.STRENGTH);
        assertEquals(0.4271, strength.shownValue(), 0.0002);
        assertEquals(1.0665, Door.open(copper("10 % w/w")).figure("blue", Property.DENSITY).shownValue(), 0.0003);
        Figure counted = Door.open(copper("6.3923 % w/w as CuSO4")).figure("blue", Property.STRENGTH);
        assertEquals(strength.value(), counted.value(), 1e-5 * strength.value());
    }

    private static String copper(String strength) {
        return "---\ntitle: Blue\n---\n\n```solution blue\nsolute: CuSO4.5H2O\nstrength: " + strength + "\nvolume: 10 mL\n```\n";
    }
}
