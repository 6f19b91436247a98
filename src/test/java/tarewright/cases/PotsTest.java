package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.procedure.resolve.ResolvedReaction.Reactant;

/** What reacts with what: the account of each pot that stands in the key, and what the author is told where a block finds no pot. Molar masses from the IUPAC 2021 table. */
class PotsTest {
    private static final String FIZZING = "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)";
    private static final String NEUTRALISING = "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)";

    private static Page fizz(String chalk, String acid) {
        return new Page("Fizz").wasted().block("reaction fizzing", FIZZING).block("solid chalk", "substance: CaCO3", chalk)
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", acid).block("gas fizz", "substance: CO2", "made by: fizzing");
    }

    private static Finding only(Door.Outcome outcome, String id) {
        List<Finding> found = outcome.errors().stream().filter(f -> f.id().equals(id)).toList();
        assertEquals(1, found.size(), outcome.findings().toString());
        return found.get(0);
    }

    // --- the account

    /** 1.000 g of chalk is 9.9914 mmol; 15.0 mmol of acid turn 7.5 mmol of it, the acid limits, 2.4914 mmol of chalk are left and 7.5 mmol of gas are made. */
    @Test
    void theAccountShowsWhatIsThereWhatLimitsAndWhatIsLeft() {
        Door.Outcome outcome = Door.open(fizz("mass: 1.000 g", "volume: 15.0 mL").markdown()).sound();
        PotAccount account = outcome.resolved().reactions().get(0).pots().get(0);
        assertEquals("", account.batch());
        assertEquals(List.of("acid"), account.limiting());
        assertEquals(7.5e-3, account.extent().orElseThrow().value(), 1e-9);
        assertEquals("mmol", account.extent().orElseThrow().unit().symbol());
        assertEquals(List.of("CaCO3", "HCl"), account.reactants().stream().map(Reactant::formula).toList());
        assertEquals(List.of(1, 2), account.reactants().stream().map(Reactant::coefficient).toList());
        assertEquals(List.of(List.of("chalk"), List.of("acid")), account.reactants().stream().map(Reactant::blocks).toList());
        assertEquals(9.9914e-3, account.reactants().get(0).turns(), 1e-7);
        assertEquals(7.5e-3, account.reactants().get(1).turns(), 1e-9);
        assertEquals(15.0e-3, account.reactants().get(1).moles().value(), 1e-9);
        assertEquals(List.of("chalk", "acid"), List.copyOf(account.leftOver().keySet()));
        assertEquals(2.4914e-3, account.leftOver().get("chalk").value(), 1e-7);
        assertEquals(0, account.leftOver().get("acid").value(), 0);
        assertEquals(9.9914 / 7.5, outcome.shown("chalk", Property.EXCESS), 1e-4);
        assertEquals(1, outcome.shown("acid", Property.EXCESS), 1e-12);
        assertEquals(7.5e-3, outcome.figure("fizz", Property.MOLES).value(), 1e-9);
    }

    /** With acid to spare the chalk limits: 30.0 - 2 × 9.9914 = 10.017 mmol of acid are left. */
    @Test
    void theOtherWayRoundTheChalkLimits() {
        Door.Outcome outcome = Door.open(fizz("mass: 1.000 g", "volume: 30.0 mL").markdown()).sound();
        assertEquals(List.of("chalk"), outcome.resolved().reactions().get(0).pots().get(0).limiting());
        assertEquals(10.017e-3, outcome.figure("acid", Property.LEFT_OVER).value(), 1e-6);
        assertEquals(30 / (2 * 9.9914), outcome.shown("acid", Property.EXCESS), 1e-4);
    }

    /** Each reaction has its own pots, and a reaction that nothing takes part in has none. */
    @Test
    void eachReactionHasItsOwnPots() {
        Door.Outcome outcome = Door.open(fizz("mass: 1.000 g", "volume: 30.0 mL").block("reaction roasting", "CaO(s) + H2O(l) -> Ca(OH)2(s)").markdown()).sound();
        assertEquals(List.of(1, 0), outcome.resolved().reactions().stream().map(r -> r.pots().size()).toList());
        assertEquals(List.of("fizzing", "roasting"), outcome.resolved().reactions().stream().map(r -> r.name()).toList());
        assertTrue(outcome.resolved().reactions().get(1).heat().isEmpty());
    }

    /** A reaction that is only shown is printed and not reckoned with: the acid has but one to take part in. */
    @Test
    void whatIsOnlyShownIsNotReckonedWith() {
        Door.Outcome outcome = Door.open(fizz("mass: 1.000 g", "volume: 30.0 mL").block("reaction also", NEUTRALISING, "shown only: yes").markdown()).sound();
        assertEquals(10.017e-3, outcome.figure("acid", Property.LEFT_OVER).value(), 1e-6);
    }

    // --- what is needed

    /** Chalk for 20.0 mmol of acid: 10.0 mmol, 1.00086 g; acid for 1.000 g of chalk 19.983 mL; and where the reaction goes only to 80 %, chalk for 100 mL of gas is a quarter more. */
    @ParameterizedTest
    @CsvSource({"for: acid,volume: 20.0 mL,10.000", "mass: 1.000 g,for: chalk,9.9914", "excess over: acid\\nat least: 1.5 times,volume: 20.0 mL,15.000", "excess over: acid,volume: 20.0 mL,10.000"})
    void enoughIsByTheCoefficients(String chalk, String acid, double millimoles) {
        Door.Outcome outcome = Door.open(fizz(chalk.replace("\\n", "\n"), acid).markdown());
        assertEquals(millimoles, outcome.figure("chalk", Property.MOLES).value() * 1e3, 1e-4);
        assertEquals(acid.startsWith("for") ? 19.9828 : 20.0, outcome.figure("acid", Property.VOLUME).value() * 1e6, 1e-3);
    }

    /** Enough to make 1.000 g of chalk at a yield of 80 %: 9.9914 / 0.80 mmol of calcium, 24.98 mL of 0.50 mol/L. The other reactant, for the first one, has no yield in between. */
    @Test
    void theYieldStandsBetweenAReactantAndAProductOnly() {
        Door.Outcome outcome = Door.open(new Page("Yield").wasted().block("reaction settling", "CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + NaCl(aq)", "goes to: 80 %")
                .block("solution calcium", "solute: CaCl2", "strength: 0.50 mol/L", "for: chalk").block("solution soda", "solute: Na2CO3", "strength: 0.50 mol/L", "for: calcium")
                .block("solid chalk", "substance: CaCO3", "mass: 1.000 g").markdown()).sound();
        assertEquals(9.9914 / 0.80 / 0.50, outcome.figure("calcium", Property.VOLUME).value() * 1e6, 1e-3);
        assertEquals(9.9914 / 0.80 / 0.50, outcome.figure("soda", Property.VOLUME).value() * 1e6, 1e-3);
        assertEquals(1.000, outcome.figure("chalk", Property.YIELD).value() * 1e3, 1e-5);
    }

    /** Of 50.0 mmol of acid the chalk takes 19.983; alkali for what is left, 30.017 mmol, of 1.0 mol/L. In the second pot the acid that is left is what limits. */
    @Test
    void whatIsLeftOverGoesIntoTheNextPot() {
        Door.Outcome outcome = Door.open(new Page("Back").wasted().block("reaction fizzing", FIZZING).block("reaction neutralising", NEUTRALISING)
                .block("solid chalk", "substance: CaCO3", "mass: 1.000 g").block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 50.0 mL", "reacts in: fizzing")
                .block("solution alkali", "solute: NaOH", "strength: 1.0 mol/L", "for: left over of acid", "reacts in: neutralising").markdown()).sound();
        assertEquals(30.017, outcome.figure("alkali", Property.VOLUME).value() * 1e6, 1e-3);
        PotAccount second = outcome.resolved().reactions().get(1).pots().get(0);
        Map<String, Double> there = Map.of(second.reactants().get(0).formula(), second.reactants().get(0).moles().value(), second.reactants().get(1).formula(),
                second.reactants().get(1).moles().value());
        assertEquals(30.017e-3, there.get("NaOH"), 1e-6);
        assertEquals(30.017e-3, there.get("HCl"), 1e-6);
        assertEquals(0, outcome.figure("alkali", Property.LEFT_OVER).value(), 1e-9);
    }

    /** Two salts bring one ion: 10.0 mL of 0.10 mol/L CaCl2 (2.0 mmol of chloride) and 10.0 mL of NaCl (1.0 mmol) take 3.0 mmol of silver, 30.0 mL. */
    @Test
    void anIonThatTwoSaltsBringIsSummed() {
        Door.Outcome outcome = Door.open(new Page("Silver").wasted().block("reaction clouding", "Ag^+(aq) + Cl^-(aq) -> AgCl(s)")
                .block("solution calcium", "solute: CaCl2", "strength: 0.10 mol/L", "volume: 10.0 mL").block("solution salt", "solute: NaCl", "strength: 0.10 mol/L", "volume: 10.0 mL")
                .block("solution silver", "solute: AgNO3", "strength: 0.10 mol/L", "volume: 40.0 mL").block("solid cloud", "substance: AgCl", "made by: clouding").markdown()).sound();
        PotAccount account = outcome.resolved().reactions().get(0).pots().get(0);
        assertEquals(List.of("calcium", "salt"), account.limiting());
        assertEquals(3.0e-3, outcome.figure("cloud", Property.MOLES).value(), 1e-9);
        assertEquals(1.0e-3, outcome.figure("silver", Property.LEFT_OVER).value(), 1e-9);
        assertEquals(4.0 / 3.0, outcome.shown("silver", Property.EXCESS), 1e-9);
    }

    /** 1.0 mmol of calcium chloride left over is 2.0 mmol of chloride: 40 mL of salt bring 8.0 mmol, the silver takes 6.0. */
    @Test
    void whatIsLeftOfASaltIsInItsOwnMoles() {
        Door.Outcome outcome = Door.open(new Page("Silver").wasted().block("reaction clouding", "Ag^+(aq) + Cl^-(aq) -> AgCl(s)")
                .block("solution calcium", "solute: CaCl2", "strength: 0.10 mol/L", "volume: 40.0 mL").block("solution silver", "solute: AgNO3", "strength: 0.10 mol/L", "volume: 60.0 mL").markdown()).sound();
        assertEquals(1.0e-3, outcome.figure("calcium", Property.LEFT_OVER).value(), 1e-9);
        assertEquals(8.0 / 6.0, outcome.shown("calcium", Property.EXCESS), 1e-9);
    }

    // --- which reaction

    /** The acid stands in two equations; that it is for the chalk says which. */
    @ParameterizedTest
    @CsvSource({"for: chalk", "excess over: chalk\\nat least: 2 times"})
    void whatABlockIsForSaysWhereItReacts(String acid) {
        Door.Outcome outcome = Door.open(new Page("Two").wasted().block("reaction neutralising", NEUTRALISING).block("reaction fizzing", FIZZING)
                .block("solid chalk", "substance: CaCO3", "mass: 1.000 g").block("solution acid", "solute: HCl", "strength: 1.0 mol/L", acid.replace("\\n", "\n")).markdown()).sound();
        assertEquals(List.of(0, 1), outcome.resolved().reactions().stream().map(r -> r.pots().size()).toList());
        assertEquals(acid.startsWith("for") ? 19.983 : 39.966, outcome.figure("acid", Property.VOLUME).value() * 1e6, 1e-3);
    }

    /** A gas that is wished for is made by the only reaction that makes it; where two do, the author has to say. */
    @Test
    void aWishIsMadeByTheReactionThatMakesIt() {
        Page page = new Page("Wish").front("gases: ideal").front("room: 20 °C; 101.325 kPa").wasted().block("reaction fizzing", FIZZING).block("solid chalk", "substance: CaCO3", "for: fizz")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: chalk", "at least: 2 times").block("gas fizz", "substance: CO2", "wanted: 100 mL");
        // 101.325 kPa × 100 mL / (8.31446 × 293.15 K) = 4.1571 mmol
        assertEquals(4.1571, Door.open(page.markdown()).sound().figure("chalk", Property.MOLES).value() * 1e3, 1e-4);
        Door.Outcome twice = Door.open(page.block("reaction roasting", "CaCO3(s) -> CaO(s) + CO2(g)").markdown());
        Finding finding = twice.errors().stream().filter(f -> f.id().equals("ambiguous-reaction") && f.at().text().equals("fizz")).findFirst().orElseThrow();
        assertEquals(List.of("fizzing", "roasting"), finding.fields().get("reactions"));
    }

    /** A reaction that is not there is told with those near it, whether a block reacts in it or is made by it. */
    @ParameterizedTest
    @CsvSource({"solution acid,solute: HCl,reacts in: fizing", "gas fizz,substance: CO2,made by: fizing"})
    void aReactionThatIsNotThereIsToldWithTheNearest(String info, String matter, String field) {
        Door.Outcome outcome = Door.open(new Page("Name").wasted().block("reaction fizzing", FIZZING).block(info, matter, info.startsWith("gas") ? "" : "strength: 1.0 mol/L",
                info.startsWith("gas") ? "" : "volume: 10 mL", field).markdown());
        Finding finding = only(outcome, "unknown-name");
        assertEquals("reaction", finding.fields().get("wanted"));
        assertEquals(List.of("fizzing"), finding.fields().get("suggestions"));
        assertEquals("fizing", finding.at().text());
    }

    /** Salt does not stand on the left side, nor nitrogen on the right: those that do are named. */
    @ParameterizedTest
    @CsvSource({"solution salt,solute: NaCl,reacts in: fizzing,NaCl,HCl(aq)", "gas air,substance: N2,made by: fizzing,N₂,CO₂(g)"})
    void aSubstanceThatIsNotInTheEquationIsTold(String info, String matter, String field, String formula, String there) {
        Door.Outcome outcome = Door.open(new Page("Species").wasted().block("reaction fizzing", FIZZING).block(info, matter, info.startsWith("gas") ? "" : "strength: 1.0 mol/L",
                info.startsWith("gas") ? "" : "volume: 10 mL", field).markdown());
        Finding finding = only(outcome, "species-not-in-equation");
        assertEquals(formula, finding.fields().get("formula"));
        assertEquals("fizzing", finding.fields().get("reaction"));
        assertTrue(((List<?>) finding.fields().get("species")).contains(there), finding.fields().toString());
        assertEquals(info.startsWith("gas") ? 3 : 2, ((List<?>) finding.fields().get("species")).size());
        assertEquals(matter.substring(matter.indexOf(' ') + 1), finding.at().text());
    }

    /** The permanganate ion is in the salt, but not in the only equation. Where there are several reactions, or none, nothing is missed. */
    @Test
    void anIonThatNoEquationAsksForIsTold() {
        Page page = new Page("Ion").wasted().block("reaction clouding", "Ag^+(aq) + Cl^-(aq) -> AgCl(s)")
                .block("solution purple", "solute: KMnO4", "strength: 0.01 mol/L", "volume: 10 mL", "acts as: MnO4^-");
        Finding finding = only(Door.open(page.markdown()), "species-not-in-equation");
        assertEquals("MnO₄⁻", finding.fields().get("formula"));
        assertEquals("clouding", finding.fields().get("reaction"));
        assertEquals(List.of("Ag⁺(aq)", "Cl⁻(aq)", "AgCl(s)"), finding.fields().get("species"));
        assertEquals("MnO4^-", finding.at().text());
        assertEquals(List.of(), Door.open(page.block("reaction neutralising", NEUTRALISING).markdown()).ids(Severity.ERROR));
    }

    /** Chalk is for a gas that nothing fixes: it is asked for how much of it, by volume; of a solid by mass. */
    @Test
    void whatIsForSomethingWithoutAnAmountIsAskedFor() {
        Finding gas = only(Door.open(fizz("for: fizz", "volume: 30.0 mL").markdown()), "missing-quantity");
        assertEquals(List.of("wanted", "volume", "moles"), gas.fields().get("ways"));
        assertEquals("fizz", gas.fields().get("name"));
        assertEquals("fizz", gas.at().text());
        Finding solid = only(Door.open(new Page("Solid").wasted().block("reaction settling", "CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + NaCl(aq)")
                .block("solution calcium", "solute: CaCl2", "strength: 0.50 mol/L", "for: chalk").block("solid chalk", "substance: CaCO3", "made by: settling").markdown()), "missing-quantity");
        assertEquals(List.of("mass", "moles"), solid.fields().get("ways"));
    }

    /** A gas of which nothing is there to make it: the reactants of its equation are what is missing. */
    @Test
    void aProductWithoutReactantsAsksForThem() {
        Finding finding = only(Door.open(new Page("Nothing").wasted().block("reaction fizzing", FIZZING).block("gas fizz", "substance: CO2", "made by: fizzing").text("{fizz}").markdown()),
                "missing-quantity");
        assertEquals(List.of("CaCO₃(s)", "HCl(aq)"), finding.fields().get("ways"));
        assertEquals("fizz", finding.at().text());
    }

    /** A target that is not there, and two blocks that no equation brings together. */
    @ParameterizedTest
    @CsvSource({"for: chlk,unknown-name,chlk", "excess over: chlk,unknown-name,chlk", "for: sugar,no-common-reaction,sugar", "excess over: sugar,no-common-reaction,sugar"})
    void aTargetThatCannotBeReachedIsTold(String acid, String id, String at) {
        Door.Outcome outcome = Door.open(fizz("mass: 1.000 g", acid).block("solid sugar", "substance: glucose", "mass: 1.0 g", "role: rinse").markdown());
        Finding finding = outcome.errors().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError(outcome.findings().toString()));
        assertEquals(at, finding.at().text());
        if (id.equals("unknown-name")) {
            assertEquals(List.of("chalk"), finding.fields().get("suggestions"));
            assertEquals("block", finding.fields().get("wanted"));
        } else {
            assertEquals("acid", finding.fields().get("first"));
            assertEquals("sugar", finding.fields().get("second"));
        }
    }

    /** Where the equation cannot be read, that is the mistake, and not that two blocks do not meet, or wait for themselves. */
    @Test
    void oneMistakeIsToldOnce() {
        List<String> ids = Door.open(fizz("mass: 1.000 g", "for: chalk").markdown().replace("CaCO3(s) + HCl", "CaCO3(s) + Hcl")).ids(Severity.ERROR);
        assertEquals(List.of("unknown-element"), ids);
        List<String> circle = Door.open(fizz("for: acid", "for: chalk").markdown()).ids(Severity.ERROR);
        assertEquals(List.of("circular"), circle);
    }

    /** Chalk waits for the acid and the acid for the chalk: the circle is told with both, in order. */
    @Test
    void aCircleIsToldWithAllThatStandInIt() {
        Finding finding = only(Door.open(fizz("for: acid", "for: chalk").markdown()), "circular");
        assertEquals(List.of("chalk", "acid"), finding.fields().get("circle"));
    }

    /** A block of mixed spelling in a field is told with the nearest name of its kind: limiting, portion, waste, instruments. */
    @Test
    void namesInFieldsAreHeldAgainstTheirKind() {
        Door.Outcome outcome = Door.open(new Page("Names").block("apparatus", "balance: balance; reads to 0.01 g", "fine: analytical balance; reads to 1 mg", "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL",
                "flask: conical flask; capacity 250 mL").block("reaction fizzing", FIZZING, "limiting: chlk")
                .block("solid chalk", "substance: CaCO3", "mass: 1.000 g", "weigh with: balanc").block("solid other", "substance: CaCO3", "mass: 1.000 g", "weigh with: analytical", "role: rinse")
                .block("solid third", "substance: CaCO3", "mass: 1.000 g", "weigh with: scales", "role: rinse").block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 30 mL", "in: flsk")
                .block("liquid bath", "substance: water", "volume: 30 mL", "in: jar", "role: rinse")
                .block("solution part", "portion of: acd", "volume: 5 mL", "role: rinse").block("reading level", "of: volume of acid", "read with: cylindr")
                .block("waste", "of: fizing", "into: labelled waste").markdown());
        List<String> told = outcome.errors().stream().filter(f -> f.id().equals("unknown-name"))
                .map(f -> f.at().text() + " " + f.fields().get("wanted") + " " + f.fields().get("suggestions")).toList();
        assertEquals(List.of("chlk block [chalk]", "balanc apparatus [balance]", "analytical apparatus [fine]", "scales apparatus [balance, fine]", "flsk apparatus [flask]", "jar apparatus [cylinder, flask]", "acd block [acid]",
                "cylindr apparatus [cylinder]", "fizing block [fizzing]"), told);
    }

    /** A liquid may be weighed on a balance; a solid may not be measured in a cylinder, nor a solution weighed. */
    @ParameterizedTest
    @CsvSource({"liquid x,substance: water,mass: 5.0 g,measure with: balance,true", "liquid x,substance: water,volume: 5.0 mL,measure with: balance,true",
        "solid x,substance: NaCl,mass: 5.0 g,weigh with: cylinder,false", "solution x,solute: NaCl\\nstrength: 1 mol/L,volume: 5.0 mL,measure with: balance,false",
        "solution x,solute: NaCl\\nstrength: 1 mol/L,volume: 5.0 mL,measure with: cylinder,true"})
    void aBalanceWeighsAndACylinderMeasures(String info, String matter, String amount, String with, boolean fits) {
        Door.Outcome outcome = Door.open(new Page("Fits").wasted().block("apparatus", "balance: balance; reads to 0.1 g", "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL")
                .block(info, matter.replace("\\n", "\n"), amount, with).markdown());
        assertEquals(fits ? List.of() : List.of("wrong-instrument"), outcome.ids(Severity.ERROR));
        if (!fits) {
            Finding finding = outcome.errors().get(0);
            assertEquals(info.startsWith("solid") ? "volume" : "mass", finding.fields().get("measures"));
            assertEquals(info.startsWith("solid") ? "mass" : "volume", finding.fields().get("wanted"));
            assertEquals(with.substring(with.indexOf(':') + 2), finding.fields().get("instrument"));
        }
    }

    /** Two of liquid water and one of steam slake three of lime: each state has its own coefficient. 3.00 mmol of lime (168.23 mg) take 2.00 mmol of water and 1.00 of steam. */
    @ParameterizedTest
    @CsvSource({"liquid,2.00", "gas,1.00"})
    void aSubstanceInTwoStatesReactsInItsOwn(String kind, double millimoles) {
        Door.Outcome outcome = Door.open(new Page("Slaking").wasted().block("reaction slaking", "2 H2O(l) + H2O(g) + 3 CaO(s) -> 3 Ca(OH)2(s)").block("solid lime", "substance: CaO", "mass: 168.23 mg")
                .block(kind + " water", "substance: water", "for: lime").markdown());
        assertEquals(millimoles, outcome.figure("water", Property.MOLES).value() * 1e3, 1e-3);
    }

    /** Silver for salt and salt for silver: 2.0 mmol of silver take 1.0 mmol of calcium chloride; barium for alum, 1.0 mmol of Al2(SO4)3 takes 3.0 mmol. */
    @ParameterizedTest
    @CsvSource({"Ag^+(aq) + Cl^-(aq) -> AgCl(s),AgNO3,20.0 mL,CaCl2,1.0", "Ba^2+(aq) + SO4^2-(aq) -> BaSO4(s),Al2(SO4)3,10.0 mL,BaCl2,3.0", "H^+(aq) + OH^-(aq) -> H2O(l),H2SO4,10.0 mL,Ba(OH)2,1.0",
        "H^+(aq) + OH^-(aq) -> H2O(l),H2SO4,10.0 mL,NaOH,2.0", "H^+(aq) + OH^-(aq) -> H2O(l),HCl,10.0 mL,Ba(OH)2,0.5"})
    void ionsAreCountedOnBothSidesOfARatio(String equation, String solute, String volume, String other, double millimoles) {
        Door.Outcome outcome = Door.open(new Page("Ions").wasted().block("reaction meeting", equation).block("solution first", "solute: " + solute, "strength: 0.10 mol/L", "volume: " + volume)
                .block("solution second", "solute: " + other, "strength: 0.10 mol/L", "for: first").text("{ratio of second to first}").markdown()).sound();
        assertEquals(millimoles, outcome.figure("second", Property.MOLES).value() * 1e3, 1e-9);
        assertEquals(0, outcome.figure("second", Property.LEFT_OVER).value(), 0);
        assertEquals(0, outcome.figure("first", Property.LEFT_OVER).value(), 0);
    }

    /** Iron(II) sulfate brings iron(II) and sulfate: they are named where the author asks for iron(III). A salt of which no table knows the ions is counted by its atoms: no vanadium, no vanadate. */
    @Test
    void whatASaltDoesBringIsNamed() {
        Page page = new Page("Ion").wasted().block("solution green", "solute: FeSO4", "strength: 0.10 mol/L", "volume: 10 mL", "acts as: Fe^3+");
        assertEquals(List.of("Fe²⁺", "SO₄²⁻"), only(Door.open(page.markdown()), "ion-not-brought").fields().get("brings"));
        assertEquals(List.of(), only(Door.open(new Page("Ion").wasted().block("solution odd", "solute: Na2S4O6", "strength: 0.10 mol/L", "volume: 10 mL", "acts as: VO4^3-").markdown()),
                "ion-not-brought").fields().get("brings"));
    }

    /** Salts that no table takes apart bring as many of an ion as their atoms make: one tetrathionate, two bromates, one diphosphate (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"Na2S4O6,S4O6^2-,S4O6,2,1", "Sr(BrO3)2,BrO3^-,BrO3,1,2", "K4P2O7,P2O7^4-,P2O7,4,1"})
    void ionsThatNoTableKnowsAreCountedByTheirAtoms(String solute, String ion, String without, int charge, int count) {
        Door.Outcome outcome = Door.open(new Page("Ions").wasted().block("reaction course", ion + " -> " + without + " + " + charge + " e^-")
                .block("solution salt", "solute: " + solute, "strength: 0.10 mol/L", "volume: 10.0 mL", "acts as: " + ion).markdown()).sound();
        assertEquals(count, outcome.resolved().reactions().get(0).pots().get(0).reactants().get(0).moles().value() * 1000, 1e-9);
    }

    /** An ion beside an equation that cannot be read: the equation is told, and nothing of the ion. */
    @Test
    void anIonBesideABadEquationIsNotToldOf() {
        assertEquals(List.of("unknown-element"), Door.open(new Page("Ion").wasted().block("reaction clouding", "Ag^+(aq) + Xx^-(aq) -> AgXx(s)")
                .block("solution salt", "solute: KMnO4", "strength: 0.01 mol/L", "volume: 10 mL", "acts as: MnO4^-").markdown()).ids(Severity.ERROR).stream().distinct().toList());
    }
}
