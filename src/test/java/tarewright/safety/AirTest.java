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

class AirTest {
    private static final Air AIR = new Air(Bench.RULES);
    private static final double KELVIN = 295.15;
    private static final double PASCAL = 101_325;

    private static Figure figure(String symbol, String unit, Dimension dimension, double value) {
        return Figure.given(Symbol.alone(symbol), new Unit(unit, dimension, 1), value, new Origin.Author());
    }

    /** Amount of so many millilitres by the ideal gas law, R = 8.314462618 J/(mol K) (SI Brochure, 9th edition). */
    private static Release release(String gas, double millilitres, int vessels, double room) {
        double moles = PASCAL * millilitres * 1e-6 / (8.314462618 * KELVIN);
        return new Release(gas, Optional.empty(), figure("n", "mol", Dimension.AMOUNT, moles), figure("N", "", Dimension.NONE,
                vessels),
                figure("T", "K", Dimension.TEMPERATURE, KELVIN), figure("p", "Pa", Dimension.PRESSURE, PASCAL),
                room > 0 ? Optional.of(figure("V", "m3", Dimension.VOLUME, room)) : Optional.empty());
    }

    /** 1 mL in 1 m³ is 1 ppm by volume: 60 mL in each of 15 vessels in 180 m³. */
    @Test
    void sixtyMillilitresOfHydrogenSulfideDemandAHood() {
        AirEstimate air = AIR.of(release("hydrogen sulfide", 60, 15, 180));

        assertEquals(0.333, air.oneVessel().orElseThrow().shownValue(), 5e-4);
        assertEquals(5.0, air.allVessels().orElseThrow().shownValue(), 5e-3);
        assertEquals(60, air.aroundFace().shownValue(), 0.05);
        assertTrue(air.hoodNeeded());
        assertEquals(List.of(HoodReason.Why.TOXIC_IF_INHALED, HoodReason.Why.OVER_LIMIT_AROUND_FACE),
                air.hood().stream().map(HoodReason::why).toList());
        LimitCheck ceiling = air.hood().get(1).check().orElseThrow();
        assertEquals(10, ceiling.limit(), "NIOSH ceiling 10 ppm, 10 minutes (IDLH documentation 1994)");
        assertEquals(1.18, air.relativeDensity().orElseThrow(), 0.01);
        assertTrue(air.flammable());
    }

    @Test
    void sixtyMillilitresOfCarbonDioxideDoNot() {
        AirEstimate air = AIR.of(release("CO2", 60, 15, 180));

        assertEquals(5.0, air.allVessels().orElseThrow().shownValue(), 5e-3);
        assertEquals(60, air.aroundFace().shownValue(), 0.05);
        assertFalse(air.hoodNeeded());
        assertTrue(air.asphyxiant());
        assertFalse(air.checks().isEmpty());
        assertEquals(1.52, air.relativeDensity().orElseThrow(), 0.005, "vapour density by NIOSH");
    }

    @ParameterizedTest
    @CsvSource({
        // gas, mL, vessels, room m³, hood; H330 and H331 by CLP Annex VI Table 3; limits by the NIOSH Pocket Guide
        "SO2, 1, 1, 180, true", "NH3, 5, 1, 180, true", "Cl2, 1, 1, 180, true", "NO2, 1, 1, 180, true", "CO, 1, 1, 180, true",
        "HCl, 1, 1, 180, true", "chloramine, 1, 1, 180, true", "fennick gas, 1, 1, 180, true",
        "H2, 100, 15, 180, false", "O2, 100, 15, 180, false", "N2, 100, 15, 180, false", "CH4, 100, 15, 180, false",
        "C2H4, 100, 15, 180, false", "C2H2, 100, 15, 180, false", "C2H2, 3000, 1, 180, true", "CO2, 25000, 1, 180, false",
        "CO2, 31000, 1, 180, true", "CO2, 10000, 100, 180, true", "H2, 3900, 1, 180, false", "H2, 4100, 1, 180, true"})
    void hoodIsDemandedByToxicityOrByLimits(String gas, double millilitres, int vessels, double room, boolean hood) {
        assertEquals(hood, AIR.of(release(gas, millilitres, vessels, room)).hoodNeeded());
    }

    @Test
    void withoutARoomTheFaceIsStillReckoned() {
        AirEstimate air = AIR.of(release("CO2", 40_000, 1, 0));

        assertTrue(air.oneVessel().isEmpty());
        assertTrue(air.hoodNeeded());
    }

    @Test
    void concentrationsCarryTheirDerivation() {
        Release release = release("H2S", 60, 15, 180);

        assertEquals(1 / release.moles().value(), AIR.of(new Release(release.gas(), release.formula(),
                release.moles().uncertain(release.moles().value() / 100), release.vessels(), release.temperature(),
                release.pressure(),
                release.room())).aroundFace().gradient().parts().get(0).derivative() / 60e-6, 1e-3 / release.moles().value());
    }

    /** p = p0 T/T0 + nRT/V: 0.01 mol in 0.1 L at 20 °C adds 243.7 kPa (8.314462618 × 293.15 × 0.01 / 1e-4). */
    @Test
    void gasInAClosedVesselRaisesThePressure() {
        Overpressure closed = Overpressure.of(figure("n", "mol", Dimension.AMOUNT, 0.01), figure("V", "m3", Dimension.VOLUME,
                1e-4),
                figure("T", "K", Dimension.TEMPERATURE, 293.15), figure("T0", "K", Dimension.TEMPERATURE, 293.15),
                figure("p0", "Pa", Dimension.PRESSURE, 101_325));

        assertEquals(101_325 + 243_738, closed.pressure().value(), 5);
        assertTrue(closed.over(1.5));
        assertFalse(closed.over(4));
    }

    @Test
    void handlingWhatIsToxicIfInhaledDemandsAHood() {
        assertFalse(Air.handling(Bench.solution("nitric acid", 60)).isEmpty());
        assertTrue(Air.handling(Bench.solution("nitric acid", 6)).isEmpty());
        assertFalse(Air.handling(Bench.CLASSIFICATION.of(Matter.pure("Br2", Form.LIQUID, "Br2"))).isEmpty());
        assertTrue(Air.handling(Bench.CLASSIFICATION.of(Matter.pure("blue", Form.SLURRY, "Cu(OH)2"))).isEmpty());
    }
}
