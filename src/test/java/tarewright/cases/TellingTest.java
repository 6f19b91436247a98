package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Accepted;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.text.SourceText;

/** What a procedure as a whole tells its author and its class: findings in the order of the text and once each, what is taken from a bottle, what is accepted of what was read. */
class TellingTest {
    private static final String SETTLING = "CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + NaCl(aq)";

    private static List<Finding> told(String markdown) {
        return Resolver.resolve("case", Reader.read(new SourceText("case.md", markdown)).value(), Overrides.NONE, Door.TABLES).findings();
    }

    private static Page chalk(String equation) {
        return new Page("Chalk").wasted().block("apparatus", "balance: balance; reads to 0.01 g").block("reaction settling", equation)
                .block("solution calcium", "solute: CaCl2", "strength: 0.50 mol/L", "volume: 20.0 mL").block("solution soda", "solute: Na2CO3", "strength: 0.50 mol/L", "volume: 20.0 mL")
                .block("solid chalk", "substance: CaCO3", "made by: settling", "weigh with: balance")
                .block("reading paper", "expect: 1.05 g", "read with: balance").block("reading paper and chalk", "read with: balance")
                .block("reading dry chalk", "of: mass of chalk", "by difference: paper and chalk - paper").ask("moles of chalk", "mmol").text("Weigh {chalk}.");
    }

    /** An author goes through her file from above: an answer's slip before an apparatus's, whatever was looked at first. */
    @Test
    void findingsComeInTheOrderOfTheText() {
        List<Finding> told = told(new Page("Order").text("{nothing}, {mass of nothing}").ask("nought", "").block("value v", "is: missing").block("reading r", "read with: rule")
                .block("solid salt", "substance: NaCl", "mass: 1.0 g", "weigh with: scales").block("reaction r1", "NaCl(aq) -> NaCl(s)", "limiting: nobody").wasted().markdown());
        assertTrue(told.size() >= 6, told.toString());
        for (int i = 1; i < told.size(); i++) {
            assertTrue(told.get(i - 1).at().start() <= told.get(i).at().start(), told.toString());
        }
    }

    /** An equation that cannot be balanced takes the chalk, its mass, two readings and an answer with it: the author is told of the equation, and of nothing that follows. */
    @Test
    void whatFollowsFromOneMistakeIsNotToldAgain() {
        assertEquals(List.of(), told(chalk(SETTLING).markdown()));
        assertEquals(List.of("impossible-equation"), told(chalk("CaCl2(aq) + Na2CO(aq) -> CaCO3(s) + NaCl(aq)").markdown()).stream().map(Finding::id).toList());
        assertEquals(List.of("unknown-element"), told(chalk("CaCl2(aq) + Xx2CO3(aq) -> CaCO3(s) + NaCl(aq)").markdown()).stream().map(Finding::id).toList());
    }

    /** What the reaction makes is not taken from a bottle, nor a product whose mass is aimed at; a reagent is, and what only rinses; what one reaction makes and another uses is made. */
    @Test
    void whatIsMadeInThePotIsNotTakenFromABottle() {
        Door.Outcome outcome = Door.open(new Page("Taken").wasted().block("reaction burning", "Mg(s) + O2(g) -> MgO(s)").block("reaction dissolving", "MgO(s) + HCl(aq) -> MgCl2(aq) + H2O(l)")
                .block("solid ribbon", "substance: Mg", "mass: 0.243 g").block("gas oxygen", "substance: O2", "excess over: ribbon", "at least: 2 times")
                .block("solid oxide", "substance: MgO", "made by: burning").block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "excess over: oxide", "at least: 1.1 times")
                .block("solution salt", "solute: MgCl2", "strength: 0.1 mol/L", "volume: 5 mL", "role: rinse").block("solution bitter", "solute: MgCl2", "made by: dissolving").markdown()).sound();
        assertEquals(List.of("ribbon", "oxygen", "acid", "salt"), outcome.resolved().quantities().stream().filter(q -> q.taken()).map(q -> q.name()).toList());
        Door.Outcome aimed = Door.open(new Page("Aim").front("gases: ideal").wasted().block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("gas fizz", "substance: CO2", "wanted: 50 mL").block("solid chalk", "substance: CaCO3", "for: fizz").block("solution acid", "solute: HCl", "strength: 1.0 mol/L",
                        "excess over: chalk", "at least: 2 times").markdown()).sound();
        assertEquals(List.of("chalk", "acid"), aimed.resolved().quantities().stream().filter(q -> q.taken()).map(q -> q.name()).toList());
        Door.Outcome typed = Door.open(new Page("Typed").wasted().block("reaction settling", SETTLING).block("solution calcium", "solute: CaCl2", "strength: 0.50 mol/L", "for: chalk")
                .block("solution soda", "solute: Na2CO3", "strength: 0.50 mol/L", "for: calcium").block("solid chalk", "substance: CaCO3", "mass: 1.0 g").markdown()).sound();
        assertEquals(List.of("calcium", "soda"), typed.resolved().quantities().stream().filter(q -> q.taken()).map(q -> q.name()).toList());
    }

    /**
     * The strength of a sample found by its titre, 24.0 mL: the pipette (20.00 mL, to 0.005), the lye (0.100 mol/L, to 0.0005), the sample itself (0.0600, to 0.00005) and the burette (to 0.05 mL)
     * all move the titre, each once; on paper the pipette and the lye stand at their face value. Relative standard uncertainties, rectangular, added in squares; k = 2 (JCGM 100:2008, 5.1.2, 6.3.3).
     */
    @Test
    void whatIsAcceptedCountsEachErrorAsItComesIntoTheReading() {
        Door.Outcome outcome = Door.open(new Page("Titration").wasted().block("apparatus", "burette: burette, 50 mL; graduation 0.1 mL; within 0.05 mL")
                .block("reaction neutralising", "H2SO4(aq) + NaOH(aq) -> Na2SO4(aq) + H2O(l)")
                .block("solution sample", "solute: H2SO4", "strength: 0.0600 mol/L", "volume: 20.00 mL", "found by students: yes", "label as: Sample")
                .block("solution lye", "solute: NaOH", "strength: 0.100 mol/L", "for: sample", "measure with: burette")
                .block("reading titre", "of: volume of lye", "read with: burette").ask("strength of sample", "mol/L").markdown()).sound();
        double relative = Math.sqrt(Math.pow(0.005 / 20, 2) + Math.pow(0.0005 / 0.100, 2) + Math.pow(0.00005 / 0.0600, 2) + Math.pow(0.05 / 24.0, 2)) / Math.sqrt(3);
        Accepted accepted = outcome.resolved().answers().get(0).accepted().orElseThrow();
        assertEquals(60.0, outcome.answer().value(), 1e-9);
        assertEquals(60.0 * (1 - 2 * relative), accepted.from(), 1e-3);
        assertEquals(60.0 * (1 + 2 * relative), accepted.to(), 1e-3);
        assertEquals("V(NaOH)", accepted.mostImportant().get(1).source().symbol().plain());
        assertEquals("c(NaOH)", accepted.mostImportant().get(0).source().symbol().plain());
    }

    /** A word of the author's that is nothing in the procedure is told wherever a formula may stand. */
    @Test
    void aFormulaWithAnUnknownWordIsToldWhereverItStands() {
        Door.Outcome outcome = Door.open(new Page("Words").wasted().block("reading r", "expect: 2 * tare").block("value v", "is: 3 * tara").ask("4 * taro", "").ask("2 * molar mass of Xx2", "")
                .ask("2 * molar mass of TcO2", "").markdown());
        assertEquals(List.of("unknown-name tare", "unknown-name tara", "unknown-name taro", "unknown-element molar mass of Xx2", "no-atomic-weight molar mass of TcO2"),
                outcome.errors().stream().map(f -> f.id() + " " + f.at().text()).toList());
        assertEquals(5, outcome.ids(Severity.ERROR).size());
    }

    /**
     * A pipette of ±0.60 mL (1.73 % standard) outweighs all else: it shows in the titre, once, and stands on paper at its face value: √(0.0173² + 0.0029² + …) and not √2 times as much.
     */
    @Test
    void aPipettesErrorCountsOnce() {
        Door.Outcome outcome = Door.open(new Page("Titration").wasted().block("apparatus", "burette: burette, 50 mL; graduation 0.1 mL; within 0.05 mL")
                .block("reaction neutralising", "H2SO4(aq) + NaOH(aq) -> Na2SO4(aq) + H2O(l)")
                .block("solution sample", "solute: H2SO4", "strength: 0.0600 mol/L", "volume: 20.00 ± 0.60 mL", "found by students: yes", "label as: Sample")
                .block("solution lye", "solute: NaOH", "strength: 0.100 mol/L", "for: sample", "measure with: burette")
                .block("reading titre", "of: volume of lye", "read with: burette").ask("strength of sample", "mol/L").markdown()).sound();
        double relative = Math.sqrt(Math.pow(0.60 / 20, 2) + Math.pow(0.0005 / 0.100, 2) + Math.pow(0.00005 / 0.0600, 2) + Math.pow(0.05 / 24.0, 2)) / Math.sqrt(3);
        assertEquals(relative * 60.0, outcome.resolved().answers().get(0).accepted().orElseThrow().standardUncertainty(), 1e-3);
    }

    /**
     * Nothing reacts in the reaction whose heat is asked for, and the bench acid says nowhere what is in it: no rule of its own refuses either, so each place that would stay empty is told, an
     * amount, an answer and a reference. Where something else is wrong already, that is told alone.
     */
    @Test
    void nothingIsMissingFromAPageWithoutAWord() {
        Page page = new Page("Gaps").wasted().block("reaction roasting", "CaCO3(s) -> CaO(s) + CO2(g)").block("reaction fizzing", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)")
                .block("solid chalk", "substance: CaCO3", "mass: 1.0 g", "reacts in: fizzing").block("solution acid", "made from: bench acid", "strength: 1.0 mol/L", "for: chalk")
                .ask("heat of roasting", "kJ").text("It takes {heat of roasting}.");
        List<Finding> told = told(page.markdown());
        assertEquals(List.of("not-worked-out", "not-worked-out", "not-worked-out"), told.stream().map(Finding::id).toList());
        assertEquals(List.of("chalk", "heat of roasting", "{heat of roasting}"), told.stream().map(f -> f.at().text()).toList());
        assertEquals(List.of("volume of acid", "heat of roasting", "heat of roasting"), told.stream().map(f -> f.fields().get("text")).toList());
        assertEquals(List.of("unknown-name"), told(page.text("{nobody}").markdown()).stream().map(Finding::id).toList());
    }

    /** A page asks for the result of the block that it has before it, and gets that of this block and of no other. */
    @Test
    void eachBlockOfThePageFindsItsResult() {
        var resolved = Door.open(chalk(SETTLING).ask("mass of chalk", "g").block("graph first", "x: volume of soda", "y: mass of chalk").block("graph second", "x: volume of calcium", "y: mass of chalk")
                .text("Mix {soda} and {calcium}.").markdown()).sound().resolved();
        resolved.answers().forEach(a -> assertEquals(a, resolved.answer(a.block().block()).orElseThrow()));
        resolved.answers().forEach(a -> assertEquals(a.block(), resolved.declared(a.block().block()).orElseThrow()));
        assertEquals(2, resolved.answers().stream().distinct().count());
        resolved.graphs().forEach(g -> assertEquals(g, resolved.graph(g.block().block()).orElseThrow()));
        assertEquals(List.of("first", "second"), resolved.graphs().stream().map(g -> g.name()).toList());
        resolved.referents().forEach((reference, referent) -> assertEquals(referent, resolved.referent(reference)));
        assertEquals(java.util.Optional.empty(), resolved.answer(resolved.graphs().get(0).block().block()));
        assertEquals(java.util.Optional.empty(), resolved.quantity("nobody"));
        assertEquals(java.util.Optional.empty(), resolved.reading("nobody"));
        var elsewhere = Door.open(chalk(SETTLING).markdown()).resolved().procedure().source().references().get(0);
        assertEquals(new tarewright.procedure.resolve.Referent.Nothing(), resolved.referent(elsewhere));
    }

    /** Questions are numbered in the order of the page, however deep their lists stand in the text: in a step, in a bulleted list, in a quotation; parts after z are aa, ab. */
    @Test
    void questionsAreNumberedWhereverTheyStand() {
        String question = "```answer\nwords: it\n```\n";
        String text = "- bulleted\n\n  1. First?\n\n     " + question.replace("\n", "\n     ").strip() + "\n\n1. A step.\n\n   > 1. Second?\n   >\n   >    "
                + question.strip().replace("\n", "\n   >    ") + "\n\n> 1. Third?\n>\n>    " + question.replace("\n", "\n>    ").strip().replaceAll("\n>\\s*$", "") + "\n\nThen.\n\n1. Fourth?\n\n   " + question.replace("\n", "\n   ").strip() + "\n";
        assertEquals(List.of("1", "2", "3", "4"), Door.open(new Page("Deep").wasted().text(text).markdown()).resolved().answers().stream().map(a -> a.number()).toList());
        assertEquals(List.of("a", "z", "aa", "ab", "az", "ba", "zz", "aaa"),
                List.of(0, 25, 26, 27, 51, 52, 701, 702).stream().map(tarewright.procedure.resolve.Questions::letter).toList());
    }

    /** What fixes a block's amount cannot be read: that is told once, its strength can be read all the same, and of its amount nothing is said. */
    @Test
    void whatCanBeReadOfABlockIsWorkedOut() {
        Door.Outcome outcome = Door.open(new Page("Unreadable").wasted().block("solution salt", "solute: KMnO4", "strength: 0.020 mol/L", "volume: 5 foo").ask("strength of salt", "mol/L")
                .ask("moles of salt", "mmol").text("{strength of salt} {salt}").markdown());
        assertEquals(1, outcome.ids(Severity.ERROR).size(), outcome.findings().toString());
        assertEquals(0.020, outcome.answer(0).shownValue(), 1e-12);
        assertTrue(outcome.resolved().answers().get(1).value().isEmpty() && outcome.block("salt").amount().isEmpty());
    }

    /** The molar mass that a recipe asks for: water 18.015 g/mol (IUPAC 2021); of technetium's oxide there is none. */
    @Test
    void aRecipeGetsAMolarMassWhereThereIsOne() {
        var masses = new tarewright.procedure.resolve.MolarMasses(Door.TABLES);
        assertEquals(18.015, masses.of(formula("H2O")).orElseThrow().shownValue(), 1e-3);
        assertTrue(masses.of(formula("TcO2")).isEmpty());
    }

    private static tarewright.chemistry.Formula formula(String text) {
        return ((tarewright.chemistry.FormulaResult.Ok) tarewright.chemistry.Formula.parse(text)).formula();
    }
}
