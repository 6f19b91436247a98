package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;

class WasteTest {
    private static final Waste WASTE = new Waste(Bench.RULES);

    private static Optional<Figure> moles(double value) {
        return Optional.of(Figure.given(Symbol.alone("n"), new Unit("mol", Dimension.AMOUNT, 1), value, new Origin.Author()));
    }

    private static WasteAdvice of(Matter matter) {
        return WASTE.of(new Leftover(matter, Optional.empty(), Optional.empty()), Optional.empty());
    }

    /**
     * 40 CFR 261.24 for Pb, Ba, Ag, Cr; aquatic toxicity (CLP H400, H410) for Cu, Zn; drain guide of a university (UNM) for
     * simple salts.
     */
    @ParameterizedTest
    @CsvSource({"PbI2, NEVER, metals", "AgNO3, NEVER, metals", "BaCl2, NEVER, metals", "K2Cr2O7, NEVER, metals",
            "NiSO4, NEVER, metals",
        "CoCl2, NEVER, metals", "CuSO4, NEVER, metals", "ZnSO4, NEVER, metals", "MnSO4, NEVER, metals", "KMnO4, NEVER, metals",
        "ethanol, NEVER, organic", "hexane, NEVER, organic", "dichloromethane, NEVER, organic", "H2O2, NEVER, oxidisers",
        "NaOCl, NEVER, oxidisers", "Na2S, NEVER, alkaline", "fennick salt, NEVER, unknown", "NaCl, LOCAL, sink",
                "MgSO4, LOCAL, sink",
        "glucose, LOCAL, sink", "Na2SO4, LOCAL, sink", "HCl, NEVER, acid", "NaOH, NEVER, alkali"})
    void whatMustNotGoToTheSink(String substance, WasteRule.Sink sink, String container) {
        WasteAdvice advice = of(Matter.solution("left", substance, Content.percent(5)));

        assertEquals(sink, advice.sink());
        assertTrue(advice.containers().contains(container), advice.containers()::toString);
    }

    @Test
    void metalsAreFoundEvenInWhatTheTablesDoNotKnow() {
        WasteAdvice advice = of(Matter.of("left", Form.SOLUTION, List.of(Part.of("lead ethanoate", "Pb(CH3COO)2",
                Content.percent(1)))));

        assertTrue(advice.reasons().stream().anyMatch(r -> r.rule().id().equals("regulated-metals")
                && r.found().equals(List.of("Pb"))));
    }

    @Test
    void solidsStayOutOfTheSinkAndBariumSulfateIsNoMetalWaste() {
        WasteAdvice advice = of(Matter.pure("white", Form.SLURRY, "BaSO4"));

        assertEquals(WasteRule.Sink.NEVER, advice.sink());
        assertEquals(List.of("solids"), advice.containers());
    }

    /** 40 CFR 403.5(b): nothing below pH 5; 40 CFR 261.22: corrosive at pH 2 and below, 12.5 and above. */
    @ParameterizedTest
    @CsvSource({"7, LOCAL", "4, NEVER", "1, NEVER", "9.5, NEVER", "13, NEVER", "6, LOCAL", "8.9, LOCAL"})
    void pHClosesTheSink(double pH, WasteRule.Sink sink) {
        assertEquals(sink, of(Matter.solution("left", "NaCl", Content.percent(1)).atPH(pH)).sink());
    }

    /** 0.010 mol of H+ takes 0.010 mol of NaHCO3 (84.006 g/mol): 0.840 g, and frees as much CO2. */
    @Test
    void acidIsNeutralisedWithHydrogencarbonate() {
        Leftover left = new Leftover(Matter.solution("left", "HCl", Content.percent(1)).atPH(0.6), moles(0.010),
                Optional.empty());

        WasteAdvice.Recipe recipe = WASTE.of(left, Optional.of("sodium hydrogencarbonate")).neutralising().orElseThrow();

        assertEquals(0.840, recipe.mass().shownValue(), 5e-4);
        assertEquals("g", recipe.mass().unit().symbol());
        assertEquals(0.010, recipe.gas().orElseThrow().value(), 1e-12);
        assertEquals(0.530, WASTE.of(left, Optional.of("Na2CO3")).neutralising().orElseThrow().mass().shownValue(), 5e-4,
                "105.988 g/mol, two H+ for each");
        assertEquals("sodium-hydrogencarbonate", WASTE.of(left,
                Optional.of("citric acid")).neutralising().orElseThrow().with().substance());
    }

    /** 0.030 mol of OH- takes 0.010 mol of citric acid (192.123 g/mol): 1.92 g. */
    @Test
    void alkaliIsNeutralisedWithCitricAcid() {
        Leftover left = new Leftover(Matter.solution("left", "NaOH", Content.percent(1)).atPH(13), Optional.empty(),
                moles(0.030));

        WasteAdvice.Recipe recipe = WASTE.of(left, Optional.empty()).neutralising().orElseThrow();

        assertEquals(1.921, recipe.mass().shownValue(), 1e-3);
        assertTrue(recipe.gas().isEmpty());
    }

    /** EUH031: acid would free chlorine. */
    @Test
    void whatGivesToxicGasWithAcidIsNeverAcidified() {
        Leftover left = new Leftover(Matter.solution("left", "NaOCl", Content.percent(1)).atPH(12), Optional.empty(),
                moles(0.03));

        WasteAdvice advice = WASTE.of(left, Optional.of("citric acid"));

        assertTrue(advice.keepAlkaline());
        assertFalse(advice.neutralising().isPresent());
    }
}
