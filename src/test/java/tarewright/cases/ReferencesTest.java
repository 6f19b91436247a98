package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Referent;
import tarewright.setting.Overrides;

/** What the reader of a page finds in the place of each pair of braces, and what the author is told of braces that stand for nothing. */
class ReferencesTest {
    private static Page page() {
        return new Page("Braces").front("room: 22 °C; 99.8 kPa; 40 %; 180 m3").front("groups: 7").wasted()
                .block("apparatus", "balance: balance; reads to 0.001 g", "cylinder: measuring cylinder, 25 mL; graduation 0.5 mL")
                .block("reaction dissolving", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)")
                .block("solid ribbon", "substance: Mg", "mass: 0.050 g", "weigh with: balance", "cut as: ribbon at 1.00 g/m; to 1 mm")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 10.0 mL", "measure with: cylinder")
                .block("gas hydrogen", "substance: H2", "made by: dissolving")
                .block("value double", "is: 2 * mass of ribbon", "unit: mg")
                .block("reading weighed", "of: mass of ribbon", "read with: balance")
                .block("reading poured", "of: volume of acid", "read with: cylinder", "times: 3");
    }

    private static Door.Outcome with(String text) {
        return Door.open(page().text(text).markdown());
    }

    private static Referent sound(String reference) {
        return referent(with("{" + reference + "}").sound(), reference);
    }

    private static Referent referent(Door.Outcome outcome, String reference) {
        return outcome.resolved().referents().entrySet().stream().filter(e -> e.getKey().text().equals(reference)).map(Map.Entry::getValue).findFirst()
                .orElseThrow();
    }

    private static List<String> told(String reference) {
        return with("{" + reference + "}").errors().stream().map(f -> f.id() + " " + f.at().text()).toList();
    }

    @Test
    void aLabelIsTheNameOfTheBottle() {
        assertEquals("acid", assertInstanceOf(Referent.Bottle.class, sound("label of acid")).block().name());
    }

    @Test
    void aReactionIsItsEquation() {
        assertEquals("dissolving", assertInstanceOf(Referent.Equation.class, sound("dissolving")).block().name());
    }

    /** By the name of a substance or by its formula; carbon monoxide is not cobalt. */
    @ParameterizedTest
    @CsvSource({"formula water,H2O", "formula NaCl,NaCl", "formula CO,CO", "formula Co,Co"})
    void aFormulaIsSetByNameOrAsWritten(String reference, String formula) {
        assertEquals(formula, assertInstanceOf(Referent.Chemical.class, sound(reference)).formula().plain());
    }

    @Test
    void theSectionIsTheOneThatThePageIsPrintedFor() {
        Door.Outcome outcome = Door.open(page().text("For {section}.").markdown(), Overrides.NONE.withSection("Tue-B"));
        assertEquals("Tue-B", assertInstanceOf(Referent.Plain.class, referent(outcome, "section")).text());
        assertEquals("", assertInstanceOf(Referent.Plain.class, sound("section")).text());
    }

    /** 0.050 g of ribbon at 1.00 g/m is 50 mm, 2.057 mmol; 2.057 mmol take 4.114 mmol of acid, of which there are 10.0. */
    @ParameterizedTest
    @CsvSource({"ribbon,0.050,true", "mass of ribbon,0.050,true", "length of ribbon,50,true", "moles of ribbon,2.0572,false", "acid,10.0,true", "volume of acid,10.0,true",
        "strength of acid,1.0,false", "excess of acid,2.4305,false", "left over of acid,5.8856,false", "double,100,false", "weighed,0.050,false", "groups,7,false"})
    void whatIsMeasuredOutIsToldFromWhatIsOnlyKnown(String reference, double value, boolean measured) {
        Referent.Amount amount = assertInstanceOf(Referent.Amount.class, sound(reference));
        assertEquals(value, amount.figure().shownValue(), 1e-4 * value);
        assertEquals(measured, amount.measured());
    }

    @ParameterizedTest
    @CsvSource({"temperature of room,22", "pressure of room,99.8", "humidity of room,40", "volume of room,180"})
    void theRoomIsAsTheAuthorSays(String reference, double value) {
        assertEquals(value, assertInstanceOf(Referent.Amount.class, sound(reference)).figure().shownValue(), 1e-9);
    }

    /** Nobody has said how large the room is, so no air is reckoned with: the author is asked. */
    @Test
    void aRoomWithoutAVolumeHasNone() {
        Door.Outcome outcome = Door.open(new Page("Room").wasted().text("{volume of room}, {temperature of room}").markdown());
        assertEquals(List.of("unknown-name"), outcome.ids(Severity.ERROR));
        assertEquals("volume of room", outcome.errors().get(0).fields().get("text"));
        assertInstanceOf(Referent.Nothing.class, referent(outcome, "volume of room"));
        assertEquals(20, assertInstanceOf(Referent.Amount.class, referent(outcome, "temperature of room")).figure().shownValue(), 1e-9);
    }

    /** One for one, two for one, and the other way round. */
    @ParameterizedTest
    @CsvSource({"ratio of acid to ribbon,2", "ratio of ribbon to acid,0.5", "ratio of hydrogen to ribbon,1"})
    void aRatioIsThatOfTheCoefficients(String reference, double ratio) {
        Referent.Amount amount = assertInstanceOf(Referent.Amount.class, sound(reference));
        assertEquals(ratio, amount.figure().value(), 1e-12);
        assertInstanceOf(Origin.Counted.class, assertInstanceOf(Step.Given.class, amount.figure().step()).origin());
    }

    /** Water 18.015 g/mol (IUPAC 2021), by formula or name; of a block it is that of its substance: 24.305 g/mol. */
    @ParameterizedTest
    @CsvSource({"molar mass of H2O,18.015", "molar mass of water,18.015", "molar mass of ribbon,24.305", "molar mass of CuSO4.5H2O,249.677"})
    void aMolarMassIsThatOfABlockOrOfAnyFormula(String reference, double expected) {
        assertEquals(expected, assertInstanceOf(Referent.Amount.class, sound(reference)).figure().shownValue(), 1e-3);
    }

    /**
     * No zero is printed that the weights do not hold: 2 × 1.0080 + 15.999 is 18.015, hydrogen alone 2.0160; uncertain weights and sums of many end sooner (IUPAC 2021,
     * abridged: O 15.999 ± 0.001, Mg 24.305 ± 0.002, Pb 207.2 ± 1.1).
     */
    @ParameterizedTest
    @CsvSource({"H2O,18.015 g/mol", "H2,2.0160 g/mol", "O2,31.998 g/mol", "Mg,24.305 g/mol", "Pb,207.2 g/mol"})
    void aMolarMassHasAsManyDecimalsAsItsWeights(String formula, String printed) {
        assertEquals(printed, tarewright.wording.Numbers.in("en").plain(assertInstanceOf(Referent.Amount.class, sound("molar mass of " + formula)).figure()));
    }

    /** An ideal gas at 0 °C and 101.325 kPa fills 22.414 L/mol (CODATA 2022); over water at 20 °C its own pressure is 2.339 kPa less (IAPWS): 8.3145 J/(mol K) × 293.15 K / 98.986 kPa. */
    @ParameterizedTest
    @CsvSource({"0 °C,dry,22.414", "20 °C,dry,24.055", "20 °C,over water,24.624"})
    void aMolarVolumeIsThatOfTheGasAsItStands(String temperature, String collected, double expected) {
        Door.Outcome outcome = Door.open(new Page("Gas").front("room: " + temperature + "; 101.325 kPa").wasted()
                .block("reaction dissolving", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)").block("solid metal", "substance: Mg", "mass: 0.050 g")
                .block("solution acid", "solute: HCl", "strength: 1.0 mol/L", "volume: 10 mL")
                .block("gas hydrogen", "substance: H2", "made by: dissolving", "collected: " + collected).text("{molar volume of hydrogen}").markdown()).sound();
        assertEquals(expected, assertInstanceOf(Referent.Amount.class, referent(outcome, "molar volume of hydrogen")).figure().shownValue(), 1e-3);
    }

    /** A reading has as many spaces as it is read times; a figure without a reading has one. */
    @Test
    void aBlankIsASpaceForEachTimeThatItIsRead() {
        Referent.Blank once = assertInstanceOf(Referent.Blank.class, sound("blank weighed"));
        assertEquals("weighed", once.what());
        assertEquals(List.of(0.050), once.expected().stream().map(f -> f.shownValue()).toList());
        Referent.Blank thrice = assertInstanceOf(Referent.Blank.class, sound("blank poured"));
        assertEquals(3, thrice.expected().size());
        thrice.expected().forEach(f -> assertEquals(10.0, f.shownValue(), 1e-9));
        Referent.Blank figure = assertInstanceOf(Referent.Blank.class, sound("blank moles of ribbon"));
        assertEquals("moles of ribbon", figure.what());
        assertEquals(2.0572, figure.expected().get(0).shownValue(), 1e-4);
    }

    /** The difference of two readings has one space, and its value is expected there. */
    @Test
    void theBlankOfADifferenceIsOne() {
        Door.Outcome outcome = Door.open(new Page("Difference").wasted().block("apparatus", "balance: balance; reads to 0.01 g")
                .block("reading full", "expect: 31.40 g", "read with: balance").block("reading empty", "expect: 30.15 g", "read with: balance")
                .block("reading powder", "by difference: full - empty").text("{blank full} {blank empty} {blank powder}").markdown()).sound();
        Referent.Blank blank = assertInstanceOf(Referent.Blank.class, referent(outcome, "blank powder"));
        assertEquals(1, blank.expected().size());
        assertEquals(1.25, blank.expected().get(0).shownValue(), 1e-9);
    }

    @Test
    void theWorkingOfAFigureIsItsDerivation() {
        Referent.Working working = assertInstanceOf(Referent.Working.class, sound("working of moles of ribbon"));
        assertEquals(2.0572, working.figure().shownValue(), 1e-4);
        assertFalse(working.figure().from().isEmpty());
    }

    // --- braces that stand for nothing

    /** The place of the mistake is told, not that of the whole reference. */
    @Test
    void aBadFormulaIsToldWhereItIsBad() {
        assertEquals(List.of("unknown-element Xx"), told("formula NaXx2"));
        assertEquals(List.of("unknown-element Xx"), told("molar mass of NaXx2"));
        assertEquals(List.of("unknown-element Xx"), told("blank molar mass of NaXx2"));
        assertEquals(List.of("unknown-element Xx"), told("working of molar mass of NaXx2"));
    }

    @Test
    void aBadFormulaLeavesNothingOnThePage() {
        assertInstanceOf(Referent.Nothing.class, referent(with("{formula NaXx2}"), "formula NaXx2"));
    }

    /** An equation has no value, a label none to write down: neither can be a blank, nor be worked. */
    @ParameterizedTest
    @CsvSource({"blank dissolving", "working of dissolving", "blank label of acid", "working of formula NaCl", "blank section"})
    void whatIsNoFigureCannotBeWrittenDown(String reference) {
        Door.Outcome outcome = with("{" + reference + "}");
        assertEquals(List.of("not-a-figure"), outcome.ids(Severity.ERROR));
        assertInstanceOf(Referent.Nothing.class, referent(outcome, reference));
    }

    /** Ribbon has no strength; the figures that it has are offered. A gas that is dry has no moist volume. */
    @Test
    void aFigureThatABlockDoesNotHaveIsToldWithThoseThatItHas() {
        Finding finding = with("{strength of ribbon}").errors().get(0);
        assertEquals("no-such-figure", finding.id());
        assertEquals("strength", finding.fields().get("property"));
        List<?> has = assertInstanceOf(List.class, finding.fields().get("has"));
        assertTrue(has.containsAll(List.of("mass", "moles", "length", "molar mass", "class total", "class length", "excess", "left over")), has.toString());
        assertFalse(has.contains("strength") || has.contains("yield") || has.contains("volume") || has.contains("purity") || has.contains("dry"), has.toString());
        assertEquals(List.of("no-such-figure moist of hydrogen"), told("moist of hydrogen").stream().map(s -> s.replaceAll("[{}]", "")).toList());
        assertTrue(with("{class total of hydrogen}").ids(Severity.ERROR).contains("no-such-figure"));
    }

    /** Magnesium in a cylinder: without a density a volume is asked for that nobody can know. */
    @Test
    void theVolumeOfASolidNeedsADensity() {
        assertEquals(List.of("ambiguous-state"), with("{volume of ribbon}").ids(Severity.ERROR));
    }

    @Test
    void aRatioOfWhatNeverMeetsIsRefused() {
        Door.Outcome outcome = Door.open(page().block("solid salt", "substance: NaCl", "mass: 1.0 g", "role: rinse").text("{ratio of salt to ribbon}").markdown());
        assertEquals(List.of("no-common-reaction"), outcome.ids(Severity.ERROR));
        assertEquals("salt", outcome.errors().get(0).fields().get("first"));
        assertEquals("ribbon", outcome.errors().get(0).fields().get("second"));
    }

    /** A slip of spelling, another word for the same figure, a figure of a block that is not there. */
    @ParameterizedTest
    @CsvSource({"ribon,ribbon", "mass of ribon,mass of ribbon", "weight of ribbon,mass of ribbon", "concentration of acid,strength of acid", "mas of ribbon,mass of ribbon",
        "Molecular weight of acid,molar mass of acid", "blank weighd,weighed", "working of acd,acid", "label of acd,label of acid", "amount of substance of acid,moles of acid",
        "number of moles of acid,moles of acid", "blank amount of substance of acid,moles of acid",         "doubl,double", "dissolvin,dissolving", "heat of disolving,heat of dissolving", "enthalpy of dissolving,heat of dissolving"})
    void whatWasPerhapsMeantIsOffered(String reference, String meant) {
        Finding finding = with("{" + reference + "}").errors().get(0);
        assertEquals("unknown-name", finding.id());
        List<?> offered = assertInstanceOf(List.class, finding.fields().get("suggestions"));
        assertTrue(offered.contains(meant), offered.toString());
    }

    /** Words that can be no formula are a name that is not there, and not a formula with a mistake in it. */
    @ParameterizedTest
    @CsvSource({"molar mass of table slt,unknown-name", "molar mass of Slt,unknown-element", "molar mass of abcdefghijklmnopqrstuvwxyzabcdefghijklmnopqrstuvwxyz,unknown-name"})
    void wordsAreNoFormula(String reference, String id) {
        assertEquals(List.of(id), with("{" + reference + "}").ids(Severity.ERROR));
    }

    /** {@code amount} may be any of three: all are offered, in the order in which they are likely. */
    @Test
    void wordsOfTwoMeaningsOfferBoth() {
        assertEquals(List.of("moles of acid", "mass of acid", "volume of acid"), with("{amount of acid}").errors().get(0).fields().get("suggestions"));
    }

    /** A name of several words goes before any reading of it as a figure of something. */
    @Test
    void aBlocksOwnNameGoesFirst() {
        Door.Outcome outcome = Door.open(new Page("Names").wasted().block("solid salt", "substance: NaCl", "mass: 2.0 g")
                .block("solid mass of salt", "substance: KCl", "mass: 3.0 g").block("solution oil of vitriol", "solute: H2SO4", "strength: 2.0 mol/L", "volume: 5.0 mL")
                .text("{mass of salt} {strength of oil of vitriol} {mass of mass of salt}").markdown()).sound();
        assertEquals(3.0, assertInstanceOf(Referent.Amount.class, referent(outcome, "mass of salt")).figure().shownValue(), 1e-12);
        assertEquals(2.0, assertInstanceOf(Referent.Amount.class, referent(outcome, "strength of oil of vitriol")).figure().shownValue(), 1e-12);
        assertEquals(3.0, assertInstanceOf(Referent.Amount.class, referent(outcome, "mass of mass of salt")).figure().shownValue(), 1e-12);
        assertEquals(2.0, outcome.shown("salt", Property.MASS), 1e-12);
    }
}
