package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.exact.Rational;

/**
 * How much of the solute one formula unit of what a label counts stands for. Fertiliser labels count N, P₂O₅ and K₂O; available chlorine is one Cl₂ for each hypochlorite
 * (it is what acid sets free: ClO⁻ + Cl⁻ + 2 H⁺ → Cl₂ + H₂O); hardness is counted as CaCO₃ (ISO 6059). All common practice, worked from the formulas.
 */
class CountedAsTest {
    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource({"H3PO4, P2O5, 2", "KNO3, N, 1", "NH4NO3, N, 1/2", "KCl, K2O, 2", "K2SO4, K2O, 1", "CuSO4.5H2O, CuSO4, 1", "CuSO4, CuSO4.5H2O, 1", "CuSO4, Cu, 1", "NaOCl, Cl2, 1",
        "Ca(OCl)2, Cl2, 1/2", "HOCl, Cl2, 1", "MgSO4, CaCO3, 1", "CaCl2, CaCO3, 1", "Ca3(PO4)2, CaCO3, 1/3", "Na2S2O3.5H2O, S, 1/2"})
    void theElementThatBothHoldTells(String solute, String counted, String units) {
        String[] parts = units.split("/");
        Rational expected = Rational.of(Integer.parseInt(parts[0])).over(Rational.of(parts.length > 1 ? Integer.parseInt(parts[1]) : 1));
        assertEquals(Optional.of(expected), units(solute, counted));
    }

    /** Nothing in common but hydrogen and oxygen; two elements that disagree; chlorine that is no hypochlorite; hardness of what has none, or two metals. */
    @ParameterizedTest(name = "{0} as {1}")
    @CsvSource({"HCl, H2O", "NaCl, S", "H2O2, O2", "Na2SO4, NaCl3S", "MgCa(CO3)2, CaCO3", "NaHCO3, CaCO3"})
    void whatTheFormulasDoNotSettleIsRefused(String solute, String counted) {
        assertEquals(Optional.empty(), units(solute, counted));
    }

    /** A chloride counted as Cl₂ goes by its chlorine: two of NaCl for one Cl₂. A chlorate, or a hypochlorite of another metal, is no bleach. */
    @ParameterizedTest(name = "{0} as Cl2")
    @CsvSource({"NaCl, 2", "NaClO3, 2", "FeOCl, 2"})
    void whatIsNoBleachGoesByItsChlorine(String solute, int units) {
        assertEquals(Optional.of(Rational.of(units)), units(solute, "Cl2"));
    }

    private static Optional<Rational> units(String solute, String counted) {
        return CountedAs.unitsOfSolute(Formula.parse(counted).value().orElseThrow(), Formula.parse(solute).value().orElseThrow());
    }
}
