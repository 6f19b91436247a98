package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Provenance;

/**
 * Mass per cent of a part, worked by hand, with two standard uncertainties on either side. Molar masses: HCl 36.458, CuSO4.5H2O 249.677, H2O 18.015 g/mol (IUPAC 2021).
 * Density of ethanol 0.789 g/mL, of a half-and-half mixture 0.914 g/mL (CRC Handbook, from memory).
 */
class DoseTest {
    private static SubstanceHazards row(String formula, double molarMass, double lightest) {
        return new SubstanceHazards("x", List.of("x"), formula.isEmpty() ? List.of() : List.of(formula), false, SubstanceHazards.State.SOLID, Set.of(),
                molarMass > 0 ? OptionalDouble.of(molarMass) : OptionalDouble.empty(), lightest, 0, 100, Optional.empty(), List.of(), "", List.of(),
                OptionalDouble.empty(), OptionalDouble.empty(), Map.of(), List.of(), List.of(), Restriction.NONE,
                new SubstanceHazards.Listing(Basis.NO_DATA, "", "", "", false, "", "", new Provenance("invented", Confidence.READ)));
    }

    private static void assertDose(double low, double best, double high, boolean estimated, Dose dose) {
        assertEquals(low, dose.at(Dose.Level.LOW), 5e-4);
        assertEquals(best, dose.at(Dose.Level.BEST), 5e-4);
        assertEquals(high, dose.at(Dose.Level.HIGH), 5e-4);
        assertEquals(estimated, dose.estimated());
    }

    /** 10 ± 2 × 2 %; never under nothing and never over all. */
    @ParameterizedTest
    @CsvSource({"10,2,6,14", "1,1,0,3", "99,1,97,100", "5,0,5,5"})
    void aMassShareHasTwoUncertaintiesOnEitherSide(double percent, double uncertainty, double low, double high) {
        assertDose(low, percent, high, false, Dose.of(row("HCl", 36.458, 1), Content.percent(percent, uncertainty)));
    }

    /** 2.0 mol/L × 36.458 g/mol = 72.916 g in a litre that weighs 1030 g: 7.0792 %; ± 2 × 0.05 mol/L is ± 0.3540 %. With no density, over 1000 g, 7.2916 %. */
    @Test
    void aMolarStrengthGoesByTheDensity() {
        SubstanceHazards acid = row("HCl", 36.458, 1.0);
        assertDose(6.7253, 7.0792, 7.4332, false, Dose.of(acid, new Content.Molar(2, 0.05, OptionalDouble.of(1.03))));
        assertDose(7.2916, 7.2916, 7.2916, true, Dose.of(acid, Content.molar(2)));
        assertDose(0, 100, 100, true, Dose.of(row("HCl", 0, 1), Content.molar(2)));
    }

    /** 0.0300 g/mL over 1.02 g/mL: 2.9412 %, ± 2 × 0.001 / 1.02 = 0.1961 %. With no density the lightest that it can be, 0.95 g/mL: 3.1579 %. */
    @Test
    void aMassInAVolumeGoesByTheDensity() {
        assertDose(2.7451, 2.9412, 3.1373, false, Dose.of(row("", 0, 1), new Content.MassPerVolume(0.03, 0.001, OptionalDouble.of(1.02), Optional.empty())));
        assertDose(3.1579, 3.1579, 3.1579, true, Dose.of(row("", 0, 0.95), new Content.MassPerVolume(0.03, 0, OptionalDouble.empty(), Optional.empty())));
    }

    /** Half of the volume: 50 × 0.789 / 0.914 = 43.162 %, ± 2 × 0.01 × 86.324. With no density of its own twice that of water is taken: 100 % at most. */
    @Test
    void aVolumeShareGoesByBothDensities() {
        assertDose(41.4355, 43.1619, 44.8884, false, Dose.of(row("", 0, 1), new Content.VolumeShare(0.5, 0.01, OptionalDouble.of(0.789), OptionalDouble.of(0.914))));
        assertDose(49.3125, 49.3125, 49.3125, true, Dose.of(row("", 0, 0.8), new Content.VolumeShare(0.5, 0, OptionalDouble.of(0.789), OptionalDouble.empty())));
        assertDose(40, 40, 40, true, Dose.of(row("", 0, 1), new Content.VolumeShare(0.2, 0, OptionalDouble.empty(), OptionalDouble.of(1.0))));
    }

    /** 10 % counted as the dry salt are 10 × 249.677 / 159.602 = 15.644 % of the pentahydrate; as the monohydrate 10 × 249.677 / 177.617 = 14.057 %; another salt is counted as it is. */
    @ParameterizedTest
    @CsvSource({"CuSO4,15.6437", "CuSO4.H2O,14.0570", "CuSO4.5H2O,10", "ZnSO4,10"})
    void waterOfCrystallisationIsCounted(String countedAs, double percent) {
        SubstanceHazards blue = row("CuSO4.5H2O", 249.677, 1);
        assertEquals(percent, Dose.of(blue, new Content.MassShare(0.1, 0, Optional.of(countedAs))).best(), 1e-3);
        assertEquals(percent, Dose.of(blue, new Content.MassPerVolume(0.1, 0, OptionalDouble.of(1), Optional.of(countedAs))).best(), 1e-3);
        assertEquals(10, Dose.of(row("CuSO4.5H2O", 0, 1), new Content.MassShare(0.1, 0, Optional.of(countedAs))).best(), 1e-9, "no molar mass, no ratio");
    }

    @Test
    void pureIsAllAndUnstatedIsTakenForAll() {
        Dose pure = Dose.of(row("", 0, 1), Content.pure());
        assertDose(100, 100, 100, false, pure);
        assertFalse(pure.unstated());
        Dose unstated = Dose.of(row("", 0, 1), Content.unstated());
        assertDose(0, 100, 100, false, unstated);
        assertTrue(unstated.unstated());
    }

    /** CLP Annex I 3.2.3.1.2: extreme are pH 2 and under, 11.5 and over. Common salt itself says nothing of skin. */
    @ParameterizedTest
    @CsvSource({"2.0,true", "2.01,false", "11.49,false", "11.5,true", "7,false", "0,true", "14,true"})
    void anExtremePHBurns(double pH, boolean burns) {
        Verdict verdict = Bench.CLASSIFICATION.of(Matter.solution("brine", "NaCl", Content.percent(1)).atPH(pH));
        assertEquals(burns, Bench.codes(verdict).contains("H314"), Bench.codes(verdict).toString());
        Verdict unknown = Bench.CLASSIFICATION.of(Matter.solution("odd", "Rb2TeO4", Content.percent(1)).atPH(pH));
        assertEquals(burns, Bench.codes(unknown).contains("H314"), Bench.codes(unknown).toString());
    }

    /** Sodium hydroxide is H314 from 2 %, 1A from 5 % (CLP Annex VI, 011-002-00-6). 4.9 % known to 0.1 % may be over 5 %: it is taken for 1A, and said to be near the limit. */
    @Test
    void nearALimitTheStricterSideIsTakenAndSaid() {
        Verdict near = Bench.CLASSIFICATION.of(Matter.solution("lye", "NaOH", Content.percent(4.9, 0.1)));
        assertTrue(near.assigned().stream().anyMatch(a -> a.hazard().toString().equals("Skin Corr. 1A H314")), near.assigned().toString());
        Verdict sure = Bench.CLASSIFICATION.of(Matter.solution("lye", "NaOH", Content.percent(4.9)));
        assertTrue(sure.assigned().stream().anyMatch(a -> a.hazard().toString().equals("Skin Corr. 1B H314")), sure.assigned().toString());
        NearLimit limit = ((Classified) near).nearLimits().stream().filter(l -> l.hazard().category().equals("1A")).findFirst().orElseThrow();
        assertEquals(List.of(5.0, 4.9, 5.1), List.of(limit.limitPercent(), Math.round(limit.percent() * 1e6) / 1e6, Math.round(limit.highPercent() * 1e6) / 1e6));
        assertTrue(limit.stricterTaken());
        NearLimit above = ((Classified) Bench.CLASSIFICATION.of(Matter.solution("lye", "NaOH", Content.percent(5.05, 0.1)))).nearLimits().get(0);
        assertFalse(above.stricterTaken(), "as stated it is over the limit");
        assertEquals(List.of(), ((Classified) sure).nearLimits());
        Verdict over = Bench.CLASSIFICATION.of(Matter.solution("lye", "NaOH", Content.percent(6, 0.1)));
        assertEquals(List.of(), ((Classified) over).nearLimits(), "5.8 % at least is over 5 % for certain");
    }
}
