package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.Cases.formula;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openscience.cdk.interfaces.IIsotope;
import org.openscience.cdk.interfaces.IMolecularFormula;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;

/** Molar masses against an open textbook and against the formula module of the Chemistry Development Kit 2.10. */
class MolarMassTest {
    private static final Elements ELEMENTS = Cases.elements();

    /**
     * Elements whose weight in the library, the mean over its list of isotopes, is farther than 1e-4 from the standard atomic
     * weight of 2021: their masses are compared with the library's own weight of them.
     */
    private static final Set<String> OTHER_WEIGHT = Set.of("S", "Se", "Mo", "Zn");

    static Stream<JsonNode> published() {
        return Cases.published("molar_mass");
    }

    /** OpenStax, Chemistry 2e; each row names its section, and its tolerance comes from the digits printed there. */
    @ParameterizedTest
    @MethodSource("published")
    void asPublished(JsonNode row) {
        double expected = Cases.number(row.get("answer").asText());
        double found = formula(row.get("given").get("formula").asText()).molarMass(ELEMENTS);
        assertEquals(expected, found, expected * row.get("tolerance").asDouble());
    }

    @Test
    void thereAreNineteenPublishedCases() {
        assertEquals(19, published().count());
    }

    static Stream<String> formulasOfOurTables() {
        Set<String> formulas = new LinkedHashSet<>();
        for (String table : List.of("substances.csv", "thermo.csv", "solubility-salts.csv")) {
            for (Map<String, String> row : Cases.table("/tarewright/data/" + table)) {
                Formula.parse(row.get("formula")).value()
                        .filter(formula -> formula.charge() == 0 && formula.units() == 1 && formula.unweighed(ELEMENTS).isEmpty())
                        .ifPresent(formula -> formulas.add(formula.plain()));
            }
        }
        return formulas.stream();
    }

    @Test
    void thereAreTwoHundredFormulasToCompare() {
        assertTrue(formulasOfOurTables().count() >= 200, "only " + formulasOfOurTables().count());
    }

    /** The library reads round brackets and dots as we do; square ones are written round for it. */
    @ParameterizedTest
    @MethodSource("formulasOfOurTables")
    void asTheReferenceLibraryHasIt(String plain) {
        Formula formula = formula(plain);
        IMolecularFormula reference = reference(plain.replace('[', '(').replace(']', ')'));
        double expected = MolecularFormulaManipulator.getMass(reference, MolecularFormulaManipulator.MolWeight);
        for (IIsotope isotope : reference.isotopes()) {
            int count = reference.getIsotopeCount(isotope);
            assertEquals(count, formula.atoms().get(isotope.getSymbol()), isotope.getSymbol());
            if (OTHER_WEIGHT.contains(isotope.getSymbol())) {
                expected += count * (ours(isotope.getSymbol()) - referenceWeight(isotope.getSymbol()));
            }
        }
        assertEquals(reference.getIsotopeCount(), formula.atoms().size());
        assertEquals(expected, formula.molarMass(ELEMENTS), expected * 1e-4);
    }

    @Test
    void onlyElementsThatDifferAreExcepted() {
        for (String symbol : OTHER_WEIGHT) {
            assertTrue(Math.abs(ours(symbol) / referenceWeight(symbol) - 1) > 1e-4, symbol);
        }
    }

    @Test
    void theContributionsAddUp() {
        List<Contribution> contributions = formula("CuSO4.5H2O").contributions(ELEMENTS);
        assertEquals(List.of("Cu", "S", "O", "H"), contributions.stream().map(each -> each.element().symbol()).toList());
        assertEquals(List.of("1", "1", "9", "10"), contributions.stream().map(each -> each.count().toString()).toList());
        assertEquals(formula("CuSO4.5H2O").molarMass(ELEMENTS),
                contributions.stream().mapToDouble(Contribution::molarMass).sum(), 1e-12);
    }

    /** CRC Handbook, "Physical Constants of Inorganic Compounds": calcium sulfate hemihydrate 145.149 (from memory). */
    @Test
    void halfAWaterWeighsHalf() {
        assertEquals(145.149, formula("CaSO4·½H2O").molarMass(ELEMENTS), 0.0145);
        assertEquals("9/2", formula("CaSO4·½H2O").contributions(ELEMENTS).get(2).count().toString());
    }

    /** The mass of an electron, 0.00054858 g/mol, is left out, as every table does. */
    @Test
    void aChargeWeighsNothing() {
        assertEquals(formula("Fe").molarMass(ELEMENTS), formula("Fe^3+").molarMass(ELEMENTS));
        assertEquals(0, formula("e^-").molarMass(ELEMENTS));
    }

    /** No standard atomic weight: IUPAC, Prohaska et al. 2022, table 1. */
    @Test
    void elementsWithoutAnAtomicWeightAreNamed() {
        assertEquals(List.of("Tc", "Ra"), formula("NaTcRaCl").unweighed(ELEMENTS));
        assertEquals(List.of(), formula("UO2Cl2").unweighed(ELEMENTS));
        assertThrows(IllegalArgumentException.class, () -> formula("RaCl2").molarMass(ELEMENTS));
    }

    private static double ours(String symbol) {
        return ELEMENTS.symbol(symbol).orElseThrow().atomicWeight();
    }

    private static double referenceWeight(String symbol) {
        return MolecularFormulaManipulator.getMass(reference(symbol), MolecularFormulaManipulator.MolWeight);
    }

    private static IMolecularFormula reference(String text) {
        return MolecularFormulaManipulator.getMolecularFormula(text, SilentChemObjectBuilder.getInstance());
    }
}
