package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The small conditions that everything else stands on: which row speaks, what belongs to a group, when a limit is reached, what a name is. */
class ConditionsTest {
    private static ReactiveMember member(double from, double to, double concentrated, Form... forms) {
        return new ReactiveMember("thing", "group", Set.of(forms), from, to, concentrated > 0 ? OptionalDouble.of(concentrated) : OptionalDouble.empty(), Rows.READ);
    }

    /** Our own table of conditions, word for word as it is documented. */
    @ParameterizedTest(name = "{0} {1} {2} %")
    @CsvSource({"ANY, SOLUTION, 0, true", "DRY, SOLID, 1, true", "DRY, MASSIVE, 1, true", "DRY, POWDER, 1, true", "DRY, SLURRY, 100, false", "DRY, LIQUID, 100, false",
        "POWDER, POWDER, 1, true", "POWDER, SOLID, 1, true", "POWDER, MASSIVE, 1, false", "GAS, GAS, 1, true", "GAS, LIQUID, 1, false", "UNDILUTED, LIQUID, 1, true",
        "UNDILUTED, SOLUTION, 99, false", "UNDILUTED, SLURRY, 99, false", "CONCENTRATED, SOLID, 1, true", "CONCENTRATED, GAS, 1, true", "CONCENTRATED, LIQUID, 39, false",
        "CONCENTRATED, LIQUID, 40, true", "CONCENTRATED, SOLUTION, 40, true", "CONCENTRATED, SOLUTION, 39, false", "CONCENTRATED, SLURRY, 39, false",
        "AT_LEAST, SOLUTION, 10, true", "AT_LEAST, SOLID, 9.9, false", "ABOVE, SOLUTION, 10, false", "ABOVE, SOLUTION, 10.1, true"})
    void aNeedHoldsOrNot(Need.Kind kind, Form form, double percent, boolean holds) {
        assertEquals(holds, new Need(kind, 10).holds(form, percent, member(0, 100, 40)));
    }

    /** Without a figure of its own a solution of 20 % counts as concentrated: our own judgement. */
    @Test
    void concentratedIsTwentyPerCentWithoutAFigure() {
        assertTrue(new Need(Need.Kind.CONCENTRATED, 0).holds(Form.SOLUTION, 20, member(0, 100, 0)));
        assertFalse(new Need(Need.Kind.CONCENTRATED, 0).holds(Form.SOLUTION, 19.9, member(0, 100, 0)));
    }

    /** With an uncertain strength the whole range counts: it belongs if either end may. */
    @Test
    void aMemberBelongsFromItsStrengthOn() {
        assertTrue(member(10, 50, 0).belongs(Form.SOLUTION, 9, 10));
        assertFalse(member(10, 50, 0).belongs(Form.SOLUTION, 9, 9.9));
        assertTrue(member(10, 50, 0).belongs(Form.SOLUTION, 50, 60));
        assertFalse(member(10, 50, 0).belongs(Form.SOLUTION, 50.1, 60));
        assertTrue(member(0, 100, 0, Form.SOLID).belongs(Form.SOLID, 1, 1));
        assertFalse(member(0, 100, 0, Form.SOLID).belongs(Form.SOLUTION, 1, 1));
    }

    /** 0.1 typed as 10 % is not under 10 %: what binary fractions round away goes to the stricter side, a thousandth does not. */
    @Test
    void aLimitIsReachedInSpiteOfBinaryFractions() {
        assertTrue(Limits.reached(100 * (0.3 - 0.2), 10));
        assertFalse(Limits.reached(9.999, 10));
        assertTrue(new SpecificLimit(Optional.empty(), "EUH031", 5, true, Rows.READ).reached(5));
        assertFalse(new SpecificLimit(Optional.empty(), "EUH031", 5, false, Rows.READ).reached(5));
        assertTrue(new SpecificLimit(Optional.empty(), "EUH031", 5, false, Rows.READ).reached(5.001));
    }

    @ParameterizedTest
    @CsvSource({"Sulphuric  acid, sulfuric acid", "COPPER(II)-Sulfate, copper(ii) sulfate", "'  water ', water"})
    void namesAreTheSameWithoutCaseHyphensAndSpelling(String written, String plain) {
        assertEquals(plain, Names.plain(written));
    }

    @ParameterizedTest
    @CsvSource({"CuSO₄·5H₂O, CuSO4.5H2O, CuSO4", "CuSO4 * 5 H2O, CuSO4.5H2O, CuSO4", "CuSO4•5H2O(s), CuSO4.5H2O, CuSO4", "NaCl(aq), NaCl, NaCl", "H2O(l), H2O, H2O",
        "CO2(g), CO2, CO2", "Zn^2+, Zn^2+, Zn^2+", "Na2CO3.NaHCO3, Na2CO3.NaHCO3, Na2CO3.NaHCO3", "B₀₉, B09, B09", ".5H2O, .5H2O, .5H2O"})
    void formulasAreTheSameInWhateverWriting(String written, String plain, String dry) {
        assertEquals(plain, Names.formula(written));
        assertEquals(dry, Names.dry(written));
    }

    // --- which row of the tables speaks

    private static final SubstanceTable TABLE = new SubstanceTable(List.of(
            Rows.of("acid").formula("HX").between(0, 70).row(), Rows.of("acid-fuming").formula("HX").between(70, 100).row(),
            Rows.of("metal-powder").formula("M").forms(Form.POWDER, Form.SOLID).row(), Rows.of("metal-ribbon").formula("M").forms(Form.MASSIVE).row(),
            Rows.of("vapour").formula("HY").state(SubstanceHazards.State.GAS).dissolvedAs("vapour-in-water").row(), Rows.of("vapour-in-water").row(),
            Rows.of("blue").formula("CuZ.5H2O").row(), Rows.of("nothing").formula("Nn").basis(Basis.NO_DATA).row()));

    private static String row(String substance, Form form, double percent) {
        return TABLE.find(Part.of(substance, Content.pure()), form, percent).map(SubstanceHazards::id).orElse("none");
    }

    @ParameterizedTest(name = "{0} {1} {2} %")
    @CsvSource({"HX, SOLUTION, 70, acid", "HX, SOLUTION, 71, acid-fuming", "acid-fuming, SOLUTION, 10, acid", "M, POWDER, 100, metal-powder", "M, MASSIVE, 100, metal-ribbon",
        "metal-ribbon, SOLID, 100, metal-ribbon", "metal-ribbon, POWDER, 100, metal-ribbon", "M, LIQUID, 100, metal-powder", "HY, GAS, 100, vapour", "HY, SOLUTION, 10, vapour-in-water",
        "CuZ, SOLID, 100, blue", "CuZ.5H2O, SOLUTION, 1, blue", "Nn, SOLID, 100, none", "nothing, SOLID, 100, none", "Qq, SOLID, 100, none"})
    void theRowForTheFormAndStrengthSpeaks(String substance, Form form, double percent, String expected) {
        if (substance.equals("acid-fuming")) {
            assertEquals(expected, TABLE.find(Part.of("acid-fuming", "HX", Content.pure()), form, percent).orElseThrow().id(), "named wrongly, but by its formula it fits");
        } else {
            assertEquals(expected, row(substance, form, percent));
        }
    }

    /** A molar strength is turned to per cent before the row is chosen: 15 mol/L of 63 g/mol at 1 g/mL are 94.5 %, over the 70 % of the weaker row. */
    @Test
    void theRowIsChosenByTheStrengthInPerCent() {
        SubstanceTable table = new SubstanceTable(List.of(Rows.of("acid").formula("HX").molarMass(63).between(0, 70).row(),
                Rows.of("acid-fuming").formula("HX").molarMass(63).between(70, 100).row()));
        assertEquals("acid-fuming", chosen(table, new Content.Molar(15, 0, OptionalDouble.of(1))));
        assertEquals("acid", chosen(table, new Content.Molar(11, 0, OptionalDouble.of(1))));
        assertEquals("acid-fuming", chosen(table, new Content.MassShare(0.8, 0, Optional.empty())));
        assertEquals("acid", chosen(table, new Content.MassShare(0.6, 0, Optional.empty())));
        assertEquals("acid-fuming", chosen(table, Content.pure()));
        assertEquals("acid-fuming", chosen(table, Content.unstated()));
        assertEquals("acid-fuming", chosen(table, new Content.VolumeShare(0.8, 0, OptionalDouble.of(1), OptionalDouble.of(1))));
        assertEquals("acid", chosen(table, new Content.VolumeShare(0.6, 0, OptionalDouble.of(1), OptionalDouble.of(1))));
        assertEquals("acid-fuming", chosen(table, new Content.MassPerVolume(0.8, 0, OptionalDouble.of(1), Optional.empty())));
    }

    private static String chosen(SubstanceTable table, Content content) {
        return Dose.of(Part.of("HX", content), Form.SOLUTION, table).orElseThrow().row().id();
    }

    /** A table laid over ours speaks first, and a row with the id of one of ours takes its place. */
    @Test
    void ownRowsGoOverTheTables() {
        SubstanceTable over = TABLE.with(List.of(Rows.of("acid").formula("HX").row(), Rows.of("mine").formula("HX").row()));
        assertEquals("acid", over.rows().get(0).id());
        assertEquals(TABLE.rows().size() + 1, over.rows().size());
        assertEquals("acid", over.find(Part.of("HX", Content.pure()), Form.SOLUTION, 90).orElseThrow().id());
        assertTrue(over.without("acid").byId("acid").isEmpty());
        assertEquals(TABLE.rows().size(), over.without("acid").rows().size());
    }

    /** A teacher's classification takes the place of the published one; the id by which the rest of the tables know the substance stays. */
    @Test
    void aClassificationCanBeTakenOver() {
        SubstanceHazards ours = Rows.of("acid").formula("HX").molarMass(63).restricted(Restriction.REFUSE).is("Skin Corr.|1A|H314").row();
        SubstanceHazards plain = ours.classifiedAs(Rows.of("theirs").is("Skin Irrit.|2|H315").says("EUH031").basis(Basis.TEACHER).row());
        assertEquals(List.of("acid", List.of("theirs", "acid"), List.of("HX"), OptionalDouble.of(63), Restriction.REFUSE, Basis.TEACHER),
                List.of(plain.id(), plain.names(), plain.formulas(), plain.molarMass(), plain.restriction(), plain.listing().basis()));
        assertEquals(List.of("Skin Irrit. 2 H315"), plain.classes().stream().map(HazardClass::toString).toList());
        assertEquals(List.of("EUH031"), plain.supplemental());
        SubstanceHazards full = ours.classifiedAs(Rows.of("theirs").formula("HX.H2O").molarMass(81).row());
        assertEquals(List.of(List.of("HX.H2O"), OptionalDouble.of(81)), List.of(full.formulas(), full.molarMass()));
    }

    /** A number that cannot be is a mistake of ours, and stops at the door. */
    @Test
    void whatCannotBeIsRefused() {
        for (double no : new double[] {-0.001, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new Content.Molar(no, 0, OptionalDouble.empty()));
            assertThrows(IllegalArgumentException.class, () -> new Content.Molar(1, no, OptionalDouble.empty()));
            assertThrows(IllegalArgumentException.class, () -> new Content.MassShare(no, 0, Optional.empty()));
            assertThrows(IllegalArgumentException.class, () -> new Content.MassShare(0, no, Optional.empty()));
            assertThrows(IllegalArgumentException.class, () -> new Content.MassPerVolume(no, 0, OptionalDouble.empty(), Optional.empty()));
            assertThrows(IllegalArgumentException.class, () -> new Content.MassPerVolume(0, no, OptionalDouble.empty(), Optional.empty()));
            assertThrows(IllegalArgumentException.class, () -> new Content.VolumeShare(no, 0, OptionalDouble.empty(), OptionalDouble.empty()));
            assertThrows(IllegalArgumentException.class, () -> new Content.VolumeShare(0, no, OptionalDouble.empty(), OptionalDouble.empty()));
            assertThrows(IllegalArgumentException.class, () -> Checks.positive(no));
        }
        assertThrows(IllegalArgumentException.class, () -> Checks.positive(0));
        assertThrows(IllegalArgumentException.class, () -> new Content.MassShare(1.001, 0, Optional.empty()));
        assertEquals(new Content.MassShare(1, 0, Optional.empty()), Content.percent(100));
        assertEquals(0, ((Content.MassShare) Content.percent(0)).share());
        Checks.positive(Double.MIN_VALUE);
        assertEquals(0, new Content.Molar(0, 0, OptionalDouble.empty()).molPerLitre());
        assertEquals(0, new Content.MassPerVolume(0, 0, OptionalDouble.empty(), Optional.empty()).gramsPerMillilitre());
        assertThrows(IllegalArgumentException.class, () -> Matter.of("empty", Form.SOLID, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new HazardClass("Boredom", "1", "H999"));
        assertThrows(IllegalStateException.class, () -> Bench.RULES.statements().of("H999"));
        assertEquals(Optional.empty(), Bench.RULES.statements().find("H999"));
        assertThrows(IllegalArgumentException.class, () -> new Unknown(List.of(), (Classified) Bench.solution("NaCl", 1)));
    }

    /** What is known of a verdict is known of one with something unknown in it too. */
    @Test
    void whatIsKnownOfTheRestStands() {
        Verdict acid = Bench.solution("HCl", 12);
        Verdict both = Bench.CLASSIFICATION.of(Matter.of("m", Form.SOLUTION, List.of(Part.of("HCl", Content.percent(10, 1)), Part.of("fennick salt", Content.percent(1)),
                Part.of("CoCl2", Content.percent(0.1)))).litres(0.5).grams(20).atPH(3));
        assertTrue(acid.known() && !acid.harmless() && Bench.solution("NaCl", 1).harmless());
        assertFalse(both.known() || both.harmless());
        assertTrue(both.assigned().size() > 3 && both.statements().size() > 3 && !both.pictograms().isEmpty());
        assertEquals(Optional.of(SignalWord.DANGER), both.signalWord());
        assertEquals("hydrochloric-acid", both.rows().get(0).id());
        assertEquals(Bench.RULES.ruleSet(), both.ruleSet());
        assertEquals(List.of(0.5, 20.0, 3.0), List.of(both.matter().litres().orElseThrow(), both.matter().grams().orElseThrow(), both.matter().pH().orElseThrow()));
        assertFalse(both.supplemental().isEmpty());
        assertFalse(both.nearLimits().isEmpty());
        assertFalse(both.remarks().isEmpty());
        assertFalse(both.bases().isEmpty());
        assertTrue(both.has("H999", "EUH208") && both.has("H315") && !both.has("H999"));
    }

    /** 16, 20: severity falls from 1A to 1C to 2, and what has no category is the worst of its kind. */
    @Test
    void categoriesFallInSeverity() {
        List<Integer> falling = List.of("1", "1B", "1C", "2", "3", "4").stream().map(c -> new HazardClass("Skin Corr.", c, "H314").severity()).toList();
        assertEquals(List.of(90, 89, 88, 80, 70, 60), falling);
        assertEquals(90, new HazardClass("Skin Corr.", "1A", "H314").severity());
        assertEquals(100, new HazardClass("Lact.", "", "H362").severity());
        assertEquals("Lact. H362", new HazardClass("Lact.", "", "H362").toString());
        assertEquals(List.of(Endpoint.ON_SKIN, Endpoint.SWALLOWED, Endpoint.INHALED), List.of("H311", "H301", "H331").stream().map(c -> Endpoint.of("Acute Tox.", c)).toList());
        assertTrue(Endpoint.FLAMMABLE_LIQUID.physical() && !Endpoint.SKIN.physical());
        assertEquals(List.of(Endpoint.SWALLOWED, Endpoint.ON_SKIN, Endpoint.INHALED, Endpoint.INHALED, Endpoint.INHALED), List.of(Route.values()).stream().map(Route::endpoint).toList());
        assertTrue(Form.SLURRY.wet() && Form.LIQUID.wet() && Form.SOLUTION.wet() && !Form.GAS.wet() && !Form.SOLID.wet() && !Form.GAS.dry());
    }

    /** The standard's list is asked by code and told in its order. */
    @Test
    void theListOfStatementsIsAskedByCode() {
        Statement one = new Statement("H1", "one", Statement.Kind.HAZARD, Rows.READ);
        Statement two = new Statement("EUH2", "two", Statement.Kind.SUPPLEMENTAL, Rows.READ);
        StatementList list = new StatementList(List.of(two, one));
        assertEquals(List.of(two, one), list.all());
        assertEquals(one, list.of("H1"));
        assertEquals(Optional.of(two), list.find("EUH2"));
        assertEquals(Optional.empty(), list.find("H2"));
    }

    /** A statement without the open places of the standard; two spaces that they leave are one. */
    @Test
    void aStatementIsPrintedWithoutItsOpenPlaces() {
        Statement open = new Statement("P1", " Call a doctor/\u2026 [if you <state organ <or all>> feel] unwell  now", Statement.Kind.PRECAUTIONARY, Rows.READ);
        assertEquals("Call a doctor if you feel unwell now", open.printed());
    }
}
