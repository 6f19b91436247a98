package tarewright.chemistry.solution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.solution.Shelf.byMass;
import static tarewright.chemistry.solution.Shelf.formula;
import static tarewright.chemistry.solution.Shelf.millilitres;
import static tarewright.chemistry.solution.Shelf.molar;
import static tarewright.chemistry.solution.Shelf.molarMass;
import static tarewright.chemistry.solution.Shelf.plan;
import static tarewright.chemistry.solution.Shelf.solid;
import static tarewright.chemistry.solution.Shelf.typed;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.chemistry.State;
import tarewright.chemistry.TableValue;
import tarewright.derivation.Figure;
import tarewright.derivation.Symbol;

/** What a technician does with a recipe: what is measured with what, in which order, how warm it gets, how much dissolves. */
class BenchworkTest {
    // --- measuring: common practice, no source; bulb pipettes by ISO 648

    @ParameterizedTest(name = "{0}")
    @CsvSource({"1.00 mL, BULB_PIPETTE, 0.01", "25.0 mL, BULB_PIPETTE, 0.05", "24.9 mL, GRADUATED_PIPETTE, 0.05", "4.99 mL, GRADUATED_PIPETTE, 0.01", "5.01 mL, GRADUATED_PIPETTE, 0.05",
        "25.1 mL, BURETTE, 0.05", "49.9 mL, BURETTE, 0.05", "50.1 mL, CYLINDER, 1", "100 mL, BULB_PIPETTE, 1", "249 mL, CYLINDER, 1", "250 mL, CYLINDER, 5", "999 mL, CYLINDER, 5",
        "1001 mL, CYLINDER, 10"})
    void aVolumeIsMeasuredWithWhatItsSizeAsksFor(String volume, Delivery with, double division) {
        Figure figure = typed(volume);
        assertEquals(with, Delivery.of(figure));
        assertEquals(division, Delivery.division(figure) * 1e6, 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"0.0999 g, 0.0001", "0.1 g, 0.001", "0.999 g, 0.001", "1 g, 0.01", "999 g, 0.01", "1000 g, 1"})
    void aMassIsWeighedToWhatItsSizeAsksFor(String mass, double division) {
        assertEquals(Delivery.BALANCE, Delivery.of(typed(mass)));
        assertEquals(division, Delivery.division(typed(mass)) * 1e3, 1e-9);
    }

    /** Half a division is a rectangle, so its standard uncertainty is the half over √3 (JCGM 100, 4.3.7); the figure is shown to the division. */
    @Test
    void whatIsSetIsRoundedToItsDivision() {
        Figure set = Delivery.set(typed("16.644 mL"), Symbol.alone("V"));
        assertEquals(16.65, millilitres(set), 1e-9);
        assertEquals(java.util.OptionalInt.of(2), set.decimals());
        assertEquals(0.025e-6 / Math.sqrt(3), set.standardUncertainty(), 1e-12);
        assertEquals(java.util.OptionalInt.of(0), Delivery.set(typed("166.4 mL"), Symbol.alone("V")).decimals());
        assertEquals(166, millilitres(Delivery.set(typed("166.4 mL"), Symbol.alone("V"))), 1e-9);
    }

    /** Capacities of ISO 1042 that a school has. */
    @Test
    void flasksFromFiveMillilitresToTwoLitres() {
        assertEquals(List.of(5L, 10L, 25L, 50L, 100L, 250L, 500L, 1000L, 2000L), Flasks.sizes().stream().map(s -> Math.round(s * 1e6)).toList());
        assertTrue(Flasks.holding(2001e-6).isEmpty());
        assertEquals(5e-6, Flasks.holding(1e-9).orElseThrow(), 1e-15);
        assertEquals(List.of(new Flasks.Filling(2e-3, 10_000)), Flasks.filling(20));
        assertEquals(List.of(), Flasks.filling(20.001));
    }

    // --- the order of work

    private static List<String> acts(Source source, String solute, String strength, String volume, Optional<Figure> rise) {
        Preparation step = plan(strength, volume, source).first();
        return Act.of(step, Care.of(source, formula(solute), step.strength(), rise)).stream().map(a -> a.getClass().getSimpleName()).toList();
    }

    /** Acid into water, never the other way (common practice); what gets hot cools before it is made up to the mark. */
    @Test
    void theOrderOfWork() {
        assertEquals(List.of("Take", "Water", "Add", "MakeUp", "Mix"), acts(molar("1 mol/L"), "NaCl", "0.1 mol/L", "100 mL", Optional.empty()));
        assertEquals(List.of("Take", "Water", "Add", "Cool", "MakeUp", "Mix"), acts(molar("1 mol/L"), "NaCl", "0.1 mol/L", "100 mL", Optional.of(typed("5 K"))));
        assertEquals(List.of("Take", "Water", "HeatNotKnown", "Add", "Cool", "MakeUp", "Mix"), acts(molar("5 mol/L"), "H2SO4", "1 mol/L", "100 mL", Optional.empty()));
    }

    /** Six tenths of the flask for acid and for what gets hot, half for the rest, and never more than there is room for beside what is measured. */
    @ParameterizedTest
    @CsvSource({"12 mol/L, HCl, 1 mol/L, 60", "1 mol/L, NaCl, 0.1 mol/L, 50", "1 mol/L, NaCl, 0.9 mol/L, 10", "1 mol/L, NaCl, 1 mol/L, 0"})
    void waterFirstAsMuchAsThereIsRoomFor(String stock, String solute, String strength, double water) {
        Preparation step = plan(strength, "100 mL", molar(stock)).first();
        Act.Water first = (Act.Water) Act.of(step, Care.of(step.source(), formula(solute), step.strength(), Optional.of(typed("0 K")))).get(1);
        assertEquals(water, first.volume() * 1e6, 1e-6);
        Preparation weighed = plan("0.1 mol/L", "100 mL", solid("NaCl")).first();
        assertEquals(50, ((Act.Water) Act.of(weighed, Care.of(weighed.source(), formula("NaCl"), weighed.strength(), Optional.empty())).get(1)).volume() * 1e6, 1e-6);
    }

    private static Care care(Source source, String solute, String strength, String rise) {
        return Care.of(source, formula(solute), typed(strength), Optional.ofNullable(rise).map(Shelf::typed));
    }

    @Test
    void whatGoesIntoWhat() {
        assertEquals(Care.Order.ACID_INTO_WATER, care(molar("0.1 mol/L"), "HCl", "0.01 mol/L", null).order());
        assertEquals(Care.Order.ACID_INTO_WATER, care(solid("CrO3"), "CrO3", "0.01 mol/L", null).order());
        assertEquals(Care.Order.STOCK_INTO_WATER, care(molar("10 mol/L"), "NaOH", "1 mol/L", null).order());
        assertEquals(Care.Order.SOLID_INTO_WATER, care(solid("NaOH"), "NaOH", "1 mol/L", "11 K").order());
        assertEquals(Care.Order.DISSOLVE, care(solid("NaCl"), "NaCl", "1 mol/L", "-1 K").order());
    }

    /** 5 K is where cooling is worth it; a hydrate has given off its heat, and is told by its rise alone; a stock of 1 mol/L is mild. All common practice, no source. */
    @Test
    void whatGetsHot() {
        assertTrue(care(solid("NaCl"), "NaCl", "1 mol/L", "5 K").hot() && !care(solid("NaCl"), "NaCl", "1 mol/L", "4.9 K").hot());
        assertTrue(care(solid("CaCl2"), "CaCl2", "0.1 mol/L", "2 K").hot() && !care(solid("CaCl2.6H2O"), "CaCl2", "0.1 mol/L", "-2 K").hot());
        assertTrue(care(molar("1.1 mol/L"), "NaOH", "0.1 mol/L", "0 K").hot() && !care(molar("1.0 mol/L"), "NaOH", "0.1 mol/L", "0 K").hot());
    }

    @Test
    void whatIsKnownOfTheHeat() {
        assertEquals(Care.Heat.RECKONED, care(solid("NaOH"), "NaOH", "1 mol/L", "11 K").heat());
        assertEquals(Care.Heat.NOT_KNOWN, care(solid("Na3PO4"), "Na3PO4", "0.061 mol/L", null).heat());
        assertEquals(Care.Heat.LITTLE, care(solid("Na3PO4"), "Na3PO4", "0.06 mol/L", null).heat());
        assertEquals(Care.Heat.LITTLE, care(solid("Na3PO4.12H2O"), "Na3PO4", "0.5 mol/L", null).heat());
        assertFalse(care(solid("Na3PO4"), "Na3PO4", "0.5 mol/L", null).hot());
        assertEquals(Care.Heat.NOT_KNOWN, care(solid("AlCl3"), "AlCl3", "0.01 mol/L", null).heat());
        assertEquals(Care.Heat.NOT_KNOWN, care(molar("1.1 mol/L"), "H3PO4", "1 mol/L", null).heat());
        assertEquals(Care.Heat.NOT_KNOWN, care(molar("1.1 mol/L"), "HBr", "1 mol/L", null).heat());
        assertEquals(Care.Heat.LITTLE, care(molar("1 mol/L"), "H3PO4", "0.1 mol/L", null).heat());
        assertEquals(Care.Heat.LITTLE, care(molar("4 mol/L"), "NaCl", "1 mol/L", null).heat());
    }

    // --- heat

    /**
     * Enthalpy of solution at infinite dilution, 25 °C (CRC Handbook, "Enthalpy of Solution of Electrolytes"; from memory): NaOH −44.51, KOH −57.61, NH₄Cl 14.78, NH₄NO₃ 25.69,
     * KNO₃ 34.89, CaCl₂ −81.3 kJ/mol. Hydrates join the water: soda crystals 68 kJ/mol (from memory).
     */
    @ParameterizedTest
    @CsvSource({"NaOH, -44.51, 0.3", "KOH, -57.61, 0.3", "NH4Cl, 14.78, 0.3", "NH4NO3, 25.69, 0.5", "KNO3, 34.89, 0.5", "CaCl2, -81.3, 1.5", "Na2CO3.10H2O, 68, 2"})
    void dissolvingTakesOrGivesHeat(String salt, double kilojoules, double within) {
        Figure enthalpy = new DissolvingHeat(Shelf.TABLES.enthalpies()).enthalpy(formula(salt), State.SOLID).orElseThrow();
        assertEquals(kilojoules, enthalpy.value() / 1000, within);
        // 1 mol/L over 998.2 kg/m³ and some 4.18 kJ/(kg K).
        assertEquals(-kilojoules / 4.173, DissolvingHeat.rise(typed("1 mol/L"), enthalpy).value(), within / 4);
    }

    @Test
    void withoutAFigureThereIsNoHeat() {
        DissolvingHeat heat = new DissolvingHeat(Shelf.TABLES.enthalpies());
        assertTrue(heat.enthalpy(formula("Na3PO4"), State.SOLID).isEmpty());
        assertTrue(heat.enthalpy(formula("NaOH"), State.GAS).isEmpty());
        assertTrue(heat.enthalpy(formula("PbO2"), State.SOLID).isEmpty(), "solid, but in no solution");
    }

    /** Parker, NSRDS-NBS 2 (1965): hydrogen chloride from 10 to 1 mol/kg 10.24 − 1.695, nitric acid from 20 to 5 9.498 − 1.310 kJ/mol; perchloric acid takes heat up from 6 to 0. */
    @ParameterizedTest
    @CsvSource({"HCl, 10, 1, 8.545", "HNO3, 20, 5, 8.188", "HClO4, 6, 0, -0.351", "CH3COOH, 20, 0, 2.075", "HCl, 5, 5, 0"})
    void dilutingGivesTheTablesHeat(String acid, double from, double to, double kilojoules) {
        assertEquals(kilojoules, Shelf.TABLES.dilutionHeat(formula(acid)).orElseThrow().between(from, to).value().orElseThrow(), 1e-9);
    }

    @Test
    void beyondTheTableNothingIsSaid() {
        TableValue.OutOfRange out = assertInstanceOf(TableValue.OutOfRange.class, Shelf.TABLES.dilutionHeat(formula("HI")).orElseThrow().between(20.1, 1));
        assertEquals(List.of(20.1, 0.0, 20.0, "mol/kg"), List.of(out.asked(), out.from(), out.to(), out.unit()));
        assertTrue(Shelf.TABLES.dilutionHeat(formula("HI")).orElseThrow().between(20, 1).value().isPresent());
        assertTrue(Shelf.TABLES.dilutionHeat(formula("H2SO4")).isEmpty());
    }

    /** 37 % w/w is 370 g in 630 g of water: 16.11 mol/kg, 16.4 kJ/mol; 1 mol/L is 1.02 mol/kg, 1.7 kJ/mol (the same table). As 12 mol/L of unknown density it is taken for stronger. */
    @Test
    void aStockIsDilutedFromItsMolality() {
        var table = Shelf.TABLES.dilutionHeat(formula("HCl")).orElseThrow();
        StockStrength strong = byMass("HCl", "37 %", "1.184 g/mL").strength();
        assertEquals(-14.7, DissolvingHeat.ofDiluting(table, strong, molarMass("HCl"), typed("1 mol/L")).orElseThrow().value() / 1000, 0.15);
        assertEquals(0, DissolvingHeat.ofDiluting(table, strong, molarMass("HCl"), strong.concentration(Symbol.alone("c"))).orElseThrow().value(), 1e-6);
        double guessed = DissolvingHeat.ofDiluting(table, molar("12 mol/L").strength(), molarMass("HCl"), typed("1 mol/L")).orElseThrow().value() / 1000;
        assertTrue(guessed < -17 && guessed > -21, "over, never under: " + guessed);
        assertTrue(DissolvingHeat.ofDiluting(table, molar("28 mol/L").strength(), molarMass("HCl"), typed("1 mol/L")).isEmpty(), "no room for water");
    }

    // --- how much dissolves

    /** Saturated at 20 °C, of handbook solubilities: sodium chloride 35.9 g in 100 g of water and 1.200 g/mL, 5.42 mol/L; potassium chloride 34.0 g, 1.174 g/mL, 4.00 mol/L (CRC Handbook; from memory). */
    @ParameterizedTest
    @CsvSource({"NaCl, 5.42, 0.02, BEYOND_TABLE", "KCl, 4.00, 0.02, BEYOND_TABLE", "KMnO4, 0.4003, 0.0002, BOUND"})
    void saturatedSolutionsAreAsStrongAsHandbooksSay(String salt, double molesPerLitre, double within, Saturation.Basis basis) {
        Saturation saturation = Shelf.saturation(salt);
        assertEquals(molesPerLitre, saturation.concentration().value() / 1000, within);
        assertEquals(basis, saturation.basis());
        assertEquals(Optional.empty(), saturation.refuses(typed(molesPerLitre + " mol/L")));
        SolutionTrouble.BeyondSolubility trouble = assertInstanceOf(SolutionTrouble.BeyondSolubility.class, saturation.refuses(typed(molesPerLitre * 1.03 + " mol/L")).orElseThrow());
        assertEquals(basis == Saturation.Basis.BOUND, trouble.bound());
        assertEquals(basis == Saturation.Basis.BOUND, ((Optional<?>) trouble.fields().get("saturated")).isEmpty());
        assertEquals(basis != Saturation.Basis.BOUND, ((Optional<?>) trouble.fields().get("below")).isEmpty());
    }

    /** A strength typed to one digit may be as little as half a digit less: 5.5 ± 0.05 mol/L is let be, 5.55 is not. */
    @Test
    void theDigitsOfAStrengthCount() {
        Figure rough = typed("5.5 mol/L").uncertain(100 / Math.sqrt(3));
        assertEquals(Optional.empty(), Shelf.saturation("NaCl").refuses(rough));
        assertTrue(Shelf.saturation("NaCl").refuses(typed("5.5 mol/L")).isPresent());
    }

    /** Every saturated solution of the table is weaker than its solute in as much water, and stronger than in as much again: it takes room, and not all of it. Ions of three charges draw water together by up to 1.2 %, which the
     * refusal leaves open. */
    @Test
    void saturationIsBelowItsBound() {
        Shelf.TABLES.saltSolubilities().stream().filter(s -> s.gramsPer100GramsOfWater(293.15).value().orElse(0) > 0).forEach(salt -> {
            Saturation found = Saturation.of(salt, Shelf.TABLES.densities().of(salt.formula()), molarMass(salt.formula().plain())).orElseThrow();
            double bound = salt.gramsPer100GramsOfWater(293.15).value().orElseThrow() * 9.982 / (molarMass(salt.formula().plain()).value() * 1000);
            assertTrue(found.concentration().value() / 1000 <= bound * 1.015, salt.formula().plain());
            assertTrue(found.basis() == Saturation.Basis.BOUND || found.concentration().value() / 1000 > bound / 3, salt.formula().plain());
        });
        Map<Saturation.Basis, Long> bases = Shelf.TABLES.saltSolubilities().stream()
                .flatMap(s -> Saturation.of(s, Shelf.TABLES.densities().of(s.formula()), molarMass(s.formula().plain())).stream())
                .collect(Collectors.groupingBy(Saturation::basis, Collectors.counting()));
        assertEquals(3, bases.size(), bases.toString());
    }

    // --- plans

    /** Too little to weigh is made stronger first, tenfold at a time, as long as half of what dissolves is not passed; a solid is not weighed in less than its balance can do. */
    @Test
    void aSmallMassIsWeighedForAStrongerSolution() {
        Plan tenfold = plan("0.0001 mol/L", "10 mL", solid("NaCl"));
        assertEquals(2, tenfold.steps().size());
        assertEquals(10, tenfold.last().factor(), 1e-9);
        assertEquals(100, millilitres(tenfold.first().volume()), 1e-9);
        Plan hundredfold = plan("0.00001 mol/L", "10 mL", solid("NaCl"));
        assertEquals(100, hundredfold.steps().stream().skip(1).mapToDouble(Preparation::factor).reduce(1, (a, b) -> a * b), 1e-6);
        Plan direct = Plan.of(typed("0.0001 mol/L"), typed("10 mL"), solid("NaCl"), Optional.of(new Saturation(typed("0.0015 mol/L"), Saturation.Basis.TABLE, "NaCl"))).value().orElseThrow();
        assertEquals(1, direct.steps().size(), "a tenfold solution would be over half of what dissolves");
        assertEquals(1, plan("0.1 mol/L", "100 mL", solid("NaCl")).steps().size());
        assertEquals(1, plan("0.1 mol/L", "100 mL", solid("NaCl")).first().factor());
        assertThrows(IllegalArgumentException.class, () -> new Plan(List.of()));
    }

    /** 12 mol/L to 0.096 mol/L is 125-fold: tenfold last, twelve and a half before, so that no flask of 5 mol/L acid stands on the way. */
    @Test
    void severalDilutionsBeginTenfold() {
        List<Preparation> steps = plan("0.096 mol/L", "1 L", molar("12 mol/L")).steps();
        assertEquals(List.of(12.5, 10.0), steps.stream().map(s -> Math.round(s.factor() * 1e6) / 1e6).toList());
        assertEquals(0.96, steps.get(0).strength().value() / 1000, 1e-9);
        assertEquals(1, plan("0.1 mol/L", "1 L", molar("10 mol/L")).steps().size(), "a hundredfold is one step");
        assertEquals(2, plan("0.0999 mol/L", "1 L", molar("10 mol/L")).steps().size());
        assertEquals(2, plan("0.05 mol/L", "5 mL", molar("0.5 mol/L")).steps().size(), "half a millilitre is not pipetted");
    }

    @Test
    void whatIsRefusedIsTold() {
        SolutionTrouble weak = ((PlanResult.Refused) Plan.of(typed("2 mol/L"), typed("1 L"), molar("1 mol/L"), Optional.empty())).trouble();
        assertEquals(Map.of("stock", "stock", "wanted", "2.00 mol/L", "strongest", "1.00 mol/L"), weak.fields());
        assertTrue(Plan.of(typed("1 mol/L"), typed("1 L"), molar("1 mol/L"), Optional.empty()).value().isPresent());
        SolutionTrouble dry = ((PlanResult.Refused) Plan.of(typed("7 mol/L"), typed("1 L"), solid("NaCl"), Optional.of(Shelf.saturation("NaCl")))).trouble();
        assertEquals("beyond-solubility", dry.id());
        assertTrue(new PlanResult.Refused(dry).value().isEmpty());
        assertEquals(Map.of("wanted", "2.00 mol/L", "stock", "1.00 mol/L"), new SolutionTrouble.DilutionImpossible(2000, 1000).fields());
    }

    /** In and out may differ by what the instrument leaves open, either way, and by no more. */
    @Test
    void theCheckLineAgreesWithinTheInstrument() {
        AmountCheck over = new AmountCheck(typed("1.01 mol"), typed("1.00 mol"), 0.01);
        assertEquals(0.01, over.difference(), 1e-9);
        assertTrue(new AmountCheck(typed("1.005 mol"), typed("1.00 mol"), 0.01).agrees() && new AmountCheck(typed("0.995 mol"), typed("1.00 mol"), 0.01).agrees());
        assertFalse(new AmountCheck(typed("1.02 mol"), typed("1.00 mol"), 0.01).agrees() || new AmountCheck(typed("0.98 mol"), typed("1.00 mol"), 0.01).agrees());
    }

    // --- strengths as stated

    /** 5 % v/v of ethanol of 0.789 g/mL are 0.856 mol/L; 20 volumes of oxygen are 2 × 20 / 22.414 mol/L; 30 % w/w at 1.11 g/mL of H₂O₂ 9.79 mol/L (worked by hand from M = 46.069 and 34.014 g/mol). */
    @Test
    void everyNotationComesToMolesInALitre() {
        Symbol c = Symbol.alone("c");
        assertEquals(0.8563, new StockStrength.VolumeShare(typed("5 %"), typed("0.789 g/mL"), molarMass("C2H5OH")).concentration(c).value() / 1000, 1e-4);
        assertEquals(1.7846, new StockStrength.VolumesOfOxygen(typed("20 %")).concentration(c).value() * 100 / 1000, 1e-4);
        assertEquals(9.790, new StockStrength.MassShare(typed("30 %"), typed("1.11 g/mL"), molarMass("H2O2")).concentration(c).value() / 1000, 1e-3);
        assertEquals(2.0, new StockStrength.Molar(typed("2 mol/L")).product().powers().get(0).figure().value() / 1000, 1e-12);
        Source.Solid impure = solid("NaOH", "97.0 %");
        assertEquals(Symbol.ofName("m", "NaOH"), impure.symbol());
        assertEquals(0.97 * 40 / 39.997, impure.moles(typed("40 g")).value(), 1e-4);
        assertEquals(typed("40 g").value() * 39.997 / 40 / 0.97, impure.take(typed("1 mol")).value(), 1e-6);
        assertTrue(impure.strongest().isEmpty() && molar("1 mol/L").strongest().isPresent());
        assertEquals(Symbol.ofName("V", "stock"), molar("1 mol/L").symbol());
    }

    /** Concentrated acid is not filled into a burette: from 5 mL on it is measured in a cylinder, to half a division of at most 1 % (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"4.9 mL, GRADUATED_PIPETTE, 4.90", "5.33 mL, CYLINDER, 5.3", "8.33 mL, CYLINDER, 8.3", "20.0 mL, CYLINDER, 20.0", "33.3 mL, CYLINDER, 33.5", "83.3 mL, CYLINDER, 83"})
    void whatFumesIsMeasuredInACylinder(String volume, Delivery delivery, String set) {
        Source.Stock fuming = Source.Stock.of("acid", new StockStrength.Molar(Shelf.typed("12.0 mol/L"))).fuming();
        Figure amount = Shelf.typed(volume);

        assertEquals(delivery, Delivery.of(Delivery.set(amount, fuming), fuming));
        assertEquals(Double.parseDouble(set) * 1e-6, Delivery.set(amount, fuming).value(), 1e-12);
        assertEquals(amount.value(), Delivery.set(amount, fuming).value(), Delivery.COARSE * amount.value());
    }
}
