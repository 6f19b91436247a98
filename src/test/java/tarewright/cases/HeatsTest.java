package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.ResolvedReaction;

/**
 * The heat that a reaction sets free and how far it warms what it happens in. Enthalpies of formation from the CRC Handbook of Chemistry and Physics, Standard Thermodynamic Properties of
 * Chemical Substances and Thermodynamic Properties of Aqueous Ions (read from the packed table's source), in kJ/mol: H2O(l) -285.8, OH- -230.0, CaO -634.9, CaCO3 -1207.6, CO2(g) -393.5,
 * Ca(OH)2 -985.2, NH4Cl -314.4, NH4+ -132.5, Cl- -167.2. Water takes 4.184 J/(g K).
 */
class HeatsTest {
    private static final String NEUTRALISING = "HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)";

    private static Page flask(String reaction) {
        return new Page("Warm").wasted().block("reaction course", reaction);
    }

    private static Page solutions(Page page, String strength, String volume, String batch) {
        return page.block("solution acid" + batch, "solute: HCl", "strength: " + strength, "volume: " + volume, batch.isEmpty() ? "" : "batch:" + batch)
                .block("solution alkali" + batch, "solute: NaOH", "strength: " + strength, "volume: " + volume, batch.isEmpty() ? "" : "batch:" + batch);
    }

    private static ResolvedReaction reaction(Page page) {
        return Door.open(page.markdown()).resolved().reactions().get(0);
    }

    private static void shows(double value, String unit, Figure figure) {
        assertEquals(unit, figure.unit().symbol());
        assertEquals(value, figure.shownValue(), 2e-4 * Math.abs(value));
    }

    /** -285.8 + 230.0 = -55.8 kJ/mol, the heat of neutralisation that every textbook prints; 50 mmol give 2.79 kJ, over 100 g of water 2790 / (100 × 4.184) = 6.668 K. */
    @Test
    void neutralisingWarmsByTheHeatOfNeutralisation() {
        ResolvedReaction reaction = reaction(solutions(flask(NEUTRALISING), "1.00 mol/L", "50.0 mL", ""));
        shows(-55.8, "kJ/mol", reaction.enthalpy().orElseThrow());
        shows(2.79, "kJ", reaction.heat().orElseThrow());
        shows(6.668, "K", reaction.temperatureRise().orElseThrow());
    }

    /** The same figures stand in the text and in formulas. */
    @Test
    void heatAndRiseMayBeAskedForInFormulas() {
        Page page = solutions(flask(NEUTRALISING), "1.00 mol/L", "50.0 mL", "");
        assertEquals(2790, Door.open(page.ask("heat of course", "J").markdown()).sound().answer().shownValue(), 0.5);
        Page other = solutions(flask(NEUTRALISING), "1.00 mol/L", "50.0 mL", "");
        assertEquals(13.336, Door.open(other.ask("2 * temperature rise of course", "K").markdown()).sound().answer().shownValue(), 0.005);
    }

    /** A tenth as strong and 17.0 mL of each: 94.86 J, in joules since it is less than a kilojoule. */
    @Test
    void littleHeatIsGivenInJoules() {
        shows(94.86, "J", reaction(solutions(flask(NEUTRALISING), "0.100 mol/L", "17.0 mL", "")).heat().orElseThrow());
    }

    /** The formation enthalpies are printed to 0.1 kJ/mol; half a kilojoule either way is allowed for all of them together, rectangular (our own allowance, no source). */
    @Test
    void theEnthalpyIsNoBetterThanItsTable() {
        Figure enthalpy = reaction(solutions(flask(NEUTRALISING), "1.00 mol/L", "50.0 mL", "")).enthalpy().orElseThrow();
        assertEquals(500 / Math.sqrt(3), enthalpy.standardUncertainty(), 1e-6);
    }

    /** 50.0 mL of acid at 1.05 g/mL and 50.0 mL of lye of no known density are 102.5 g: 2790 / (102.5 × 4.184) = 6.506 K. */
    @Test
    void aKnownDensityCountsAndElseItIsThatOfWater() {
        ResolvedReaction reaction = reaction(flask(NEUTRALISING).block("solution acid", "solute: HCl", "strength: 1.00 mol/L", "density: 1.05 g/mL", "volume: 50.0 mL")
                .block("solution alkali", "solute: NaOH", "strength: 1.00 mol/L", "volume: 50.0 mL"));
        shows(6.506, "K", reaction.temperatureRise().orElseThrow());
    }

    /** -985.2 + 634.9 + 285.8 = -64.5 kJ/mol. 1.000 g of quicklime (56.077 g/mol), 17.833 mmol, 1.1502 kJ, in 50.0 mL of water at 0.9982 g/mL (20 °C): 5.508 K. The lime itself is no liquid. */
    @Test
    void aPureLiquidTakesTheHeatUpAndASolidDoesNot() {
        ResolvedReaction reaction = reaction(flask("CaO(s) + H2O(l) -> Ca(OH)2(s)").block("solid lime", "substance: CaO", "mass: 1.000 g")
                .block("liquid water", "substance: water", "volume: 50.0 mL"));
        shows(-64.5, "kJ/mol", reaction.enthalpy().orElseThrow());
        shows(1.1502, "kJ", reaction.heat().orElseThrow());
        assertEquals(5.508, reaction.temperatureRise().orElseThrow().shownValue(), 0.003);
    }

    /** -132.5 - 167.2 + 314.4 = +14.7 kJ/mol: dissolving 2.675 g (53.49 g/mol, 50.0 mmol) of sal ammoniac takes up 0.735 kJ, so the heat set free is less than nothing. */
    @Test
    void whatCoolsHasANegativeHeat() {
        ResolvedReaction reaction = reaction(flask("NH4Cl(s) -> NH4^+(aq) + Cl^-(aq)").block("solid salt", "substance: NH4Cl", "mass: 2.675 g"));
        shows(14.7, "kJ/mol", reaction.enthalpy().orElseThrow());
        assertEquals(-735, reaction.heat().orElseThrow().value(), 0.5);
        assertEquals("J", reaction.heat().orElseThrow().unit().symbol());
        assertTrue(reaction.temperatureRise().isEmpty());
    }

    /**
     * Three flasks: 20 mL of 1.0 mol/L each way, 6.668 K; 10 mL of 2.0 mol/L, 13.336 K from 1.116 kJ; 50 mL of 0.50 mol/L, 3.334 K from 1.395 kJ. The one that gets hottest is told of, wherever
     * it stands and though another gives more heat.
     */
    @Test
    void ofSeveralFlasksTheHottestIsToldOf() {
        List<String> strengths = List.of("1.00 mol/L", "2.00 mol/L", "0.500 mol/L");
        List<String> volumes = List.of("20.0 mL", "10.0 mL", "50.0 mL");
        for (List<Integer> order : List.of(List.of(0, 1, 2), List.of(2, 1, 0), List.of(1, 2, 0))) {
            Page page = flask(NEUTRALISING);
            order.forEach(i -> solutions(page, strengths.get(i), volumes.get(i), " " + i));
            ResolvedReaction reaction = reaction(page);
            shows(13.336, "K", reaction.temperatureRise().orElseThrow());
            shows(1.116, "kJ", reaction.heat().orElseThrow());
        }
    }

    /** -634.9 - 393.5 + 1207.6 = +179.2 kJ/mol. Nothing in a crucible is warmed: asked for a rise, the author is told so at the braces. */
    @Test
    void whereNoLiquidIsNothingWarms() {
        Page page = flask("CaCO3(s) -> CaO(s) + CO2(g)").block("solid chalk", "substance: CaCO3", "mass: 1.000 g");
        shows(179.2, "kJ/mol", reaction(page).enthalpy().orElseThrow());
        // 9.9914 mmol × 179.2 kJ/mol
        assertEquals(-1790.5, reaction(page).heat().orElseThrow().value(), 0.5);
        Finding finding = Door.open(page.text("{heat of course} and {temperature rise of course}").markdown()).errors().get(0);
        assertEquals("nothing-warms", finding.id());
        assertEquals("course", finding.fields().get("reaction"));
        assertEquals("temperature rise of course", finding.at().text());
    }

    /** Vitamin C stands in no table of enthalpies: asked for heat, the author is told which it is; asked for nothing, nothing. */
    @Test
    void aSpeciesThatNoTableHasIsNamed() {
        Page page = flask("C6H8O6(aq) + I2(aq) -> C6H6O6(aq) + HI(aq)").block("solution vitamin", "solute: C6H8O6", "strength: 0.050 mol/L", "volume: 20.0 mL")
                .block("solution iodine", "solute: I2", "strength: 0.050 mol/L", "for: vitamin");
        Door.Outcome quiet = Door.open(page.markdown()).sound();
        assertTrue(quiet.resolved().reactions().get(0).enthalpy().isEmpty() && quiet.resolved().reactions().get(0).heat().isEmpty());
        Door.Outcome asked = Door.open(page.text("{heat of course} {temperature rise of course}").markdown());
        List<Finding> told = asked.errors().stream().filter(f -> f.id().equals("no-enthalpy")).toList();
        assertEquals(List.of("heat of course", "temperature rise of course"), told.stream().map(f -> f.at().text()).toList());
        assertTrue(((List<?>) told.get(0).fields().get("species")).contains("C₆H₈O₆(aq)"), told.get(0).fields().toString());
        assertEquals(List.of("no-enthalpy", "no-enthalpy"), asked.ids(Severity.ERROR));
    }
}
