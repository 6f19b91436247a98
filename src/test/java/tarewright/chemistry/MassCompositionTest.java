package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.Cases.formula;
import static tarewright.chemistry.MassComposition.RATIO_TOLERANCE;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Composition by mass against OpenStax, Chemistry 2e, sections 2.4, 3.2 and 9.3: each row names its example. */
class MassCompositionTest {
    private static final Elements ELEMENTS = Cases.elements();

    static Stream<JsonNode> percentages() {
        return Cases.published("percent").filter(row -> row.get("given").has("formula"));
    }

    @ParameterizedTest
    @MethodSource("percentages")
    void percentagesAsPublished(JsonNode row) {
        JsonNode given = row.get("given");
        Formula whole = formula(given.get("formula").asText());
        String wanted = row.get("find").asText().replace("mass percent of ", "");
        double fraction = given.has("part")
                ? MassComposition.massFraction(formula(given.get("part").asText()),
                        given.get("parts_per_formula").asInt(), whole, ELEMENTS)
                : MassComposition.massFractions(whole, ELEMENTS).get(wanted);
        double expected = Cases.number(row.get("answer").asText());
        assertEquals(expected, 100 * fraction, expected * row.get("tolerance").asDouble());
    }

    static Stream<JsonNode> formulas() {
        return Cases.published("empirical");
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void formulasAsPublished(JsonNode row) {
        assertEquals(row.get("answer").asText(), found(row.get("given")).plain());
    }

    private static Formula found(JsonNode given) {
        if (given.has("molecular_formula")) {
            return MassComposition.simplest(formula(given.get("molecular_formula").asText()));
        }
        CompositionResult empirical = given.has("mass_Fe")
                ? MassComposition.empirical(amounts(given, "mass_"), RATIO_TOLERANCE, ELEMENTS)
                : MassComposition.empiricalOfPercent(amounts(given, "percent_"), RATIO_TOLERANCE, ELEMENTS);
        Formula formula = empirical.value().orElseThrow(() -> new AssertionError(empirical));
        if (given.has("molar_mass")) {
            return molecular(formula, Cases.number(given.get("molar_mass").asText()));
        }
        return given.has("pressure") ? molecular(formula, molarMassOfGas(given)) : formula;
    }

    private static Formula molecular(Formula empirical, double molarMass) {
        return MassComposition.molecular(empirical, molarMass, ELEMENTS).value().orElseThrow();
    }

    /** M = m R T / (p V), with the molar gas constant of 2019 in L atm. */
    private static double molarMassOfGas(JsonNode given) {
        double kelvin = Cases.number(given.get("temperature").asText()) + 273.15;
        return Cases.number(given.get("mass").asText()) * 0.082057366 * kelvin
                / (Cases.number(given.get("pressure").asText()) * Cases.number(given.get("volume").asText()));
    }

    /** The amounts of elements among what is given, in its order. */
    private static Map<String, Double> amounts(JsonNode given, String prefix) {
        Map<String, Double> amounts = new LinkedHashMap<>();
        given.fieldNames().forEachRemaining(name -> {
            if (name.startsWith(prefix)) {
                amounts.put(name.substring(prefix.length()), Cases.number(given.get(name).asText()));
            }
        });
        return amounts;
    }

    /** Two rows more are a mass over a mass, which is plain arithmetic and no matter of this floor. */
    @Test
    void allPublishedCasesAreThere() {
        assertEquals(4, percentages().count());
        assertEquals(9, formulas().count());
        assertEquals(2, Cases.published("percent").filter(row -> row.get("given").has("sample_mass")).count());
    }

    @Test
    void percentagesMustMakeUpTheWhole() {
        JsonNode given = Cases.refused("percent_sum_over_100").findFirst().orElseThrow().get("given");
        assertEquals(new CompositionResult.Bad(new CompositionTrouble.PercentSumOver100(125)),
                MassComposition.empiricalOfPercent(amounts(given, "percent_"), RATIO_TOLERANCE, ELEMENTS));
        assertEquals("percent-sum-under-100", trouble(MassComposition.empiricalOfPercent(
                Map.of("C", 40.0, "H", 6.7), RATIO_TOLERANCE, ELEMENTS)).id());
        Map<String, Double> percent = ordered("C", 40.0, "H", 6.7, "O", 53.6);
        assertEquals("CH2O", MassComposition.empiricalOfPercent(percent, RATIO_TOLERANCE, ELEMENTS).value().orElseThrow().plain(), "100.3 % is what rounding and an analysis leave");
    }

    @Test
    void whatGivesNoFormula() {
        assertEquals("no-simple-ratio", trouble(MassComposition.empirical(ordered("C", 12.011, "H", 1.008 * 1.41421), 0.001,
                ELEMENTS)).id());
        assertEquals("nothing-of-element", trouble(MassComposition.empirical(ordered("C", 1, "H", 0), 0.01, ELEMENTS)).id());
        assertEquals("nothing-of-element",
                trouble(MassComposition.empirical(ordered("C", 1, "H", Double.NaN), 0.01, ELEMENTS)).id());
        assertEquals(new CompositionTrouble.NoAtomicWeight(List.of("Tc")),
                trouble(MassComposition.empirical(ordered("Tc", 1, "H", 1), 0.01, ELEMENTS)));
        assertEquals("no-multiple", trouble(MassComposition.molecular(formula("CH"), 33, ELEMENTS)).id());
        assertEquals("no-multiple", trouble(MassComposition.molecular(formula("CH"), 1, ELEMENTS)).id());
        assertEquals("no-multiple", trouble(MassComposition.molecular(formula("CH"), 1e9, ELEMENTS)).id());
    }

    @Test
    void simplestAndPartsOfAWhole() {
        assertEquals("CH2O", MassComposition.simplest(formula("C6H12O6")).plain());
        assertEquals("e^-", MassComposition.simplest(formula("e^-")).plain());
        assertEquals(0.3607, MassComposition.massFraction(formula("H2O"), 5, formula("CuSO4.5H2O"), ELEMENTS), 0.0001,
                "water in blue vitriol: 90.075 / 249.677 with the weights of 2021");
        assertThrows(IllegalArgumentException.class,
                () -> MassComposition.massFraction(formula("H2O"), 6, formula("CuSO4.5H2O"), ELEMENTS));
    }

    /** A formula with small counts is found again from its own mass fractions. */
    @Test
    void aFormulaIsFoundAgainFromItsComposition() {
        SplittableRandom random = new SplittableRandom(3);
        List<Element> elements = ELEMENTS.all();
        for (int i = 0; i < 2000; i++) {
            StringBuilder text = new StringBuilder();
            int from = random.nextInt(elements.size() - 4);
            int smallest = random.nextInt(1, 9);
            for (int j = 0; j < 4; j++) {
                text.append(elements.get(from + j).symbol()).append(j == 0 ? smallest : random.nextInt(smallest, 13));
            }
            Formula simplest = MassComposition.simplest(formula(text.toString()));
            Map<String, Double> fractions = MassComposition.massFractions(simplest, ELEMENTS);
            CompositionResult found = MassComposition.empirical(fractions, 1e-9, ELEMENTS);
            assertEquals(simplest, found.value().orElseThrow());
            assertEquals(1, fractions.values().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
            int times = random.nextInt(1, 7);
            CompositionResult molecule = MassComposition.molecular(simplest, times * simplest.molarMass(ELEMENTS), ELEMENTS);
            assertTrue(MassComposition.simplest(molecule.value().orElseThrow()).equals(simplest));
        }
    }

    private static Map<String, Double> ordered(Object... pairs) {
        Map<String, Double> ordered = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            ordered.put((String) pairs[i], ((Number) pairs[i + 1]).doubleValue());
        }
        return ordered;
    }

    private static CompositionTrouble trouble(CompositionResult result) {
        return assertInstanceOf(CompositionResult.Bad.class, result, result::toString).trouble();
    }
}
