package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.Constants;
import tarewright.chemistry.Formula;
import tarewright.chemistry.GasSolubility;
import tarewright.chemistry.IdealGas;
import tarewright.chemistry.TableValue.OutOfRange;
import tarewright.chemistry.Virial;
import tarewright.chemistry.Water;

class GasTest {
    private static final ReferenceTables TABLES = Tables.load();
    /**
     * Fernández-Prini, Alvarez and Harvey, J. Phys. Chem. Ref. Data 32 (2003) 903, Table 3, as IAPWS G7-04 Table 2:
     * ln(kH/p*) = A/Tr + B τ^0.355/Tr + C Tr^-0.41 exp τ. From memory, checked at 25 °C against the column of the table.
     */
    private static final Map<String, double[]> G7_04 = Map.of("N2", new double[] {-9.67578, 4.72162, 11.70585},
            "O2", new double[] {-9.44833, 4.43822, 11.42005}, "CO2", new double[] {-8.55445, 4.01195, 9.52345},
            "H2", new double[] {-4.73284, 6.08954, 6.06066}, "CH4", new double[] {-10.44708, 4.66491, 12.12986},
            "CO", new double[] {-10.52862, 5.13259, 12.01421}, "C2H6", new double[] {-19.67563, 4.51222, 20.62567},
            "H2S", new double[] {-4.51499, 5.23538, 4.42126});

    static List<Row> virialChecks() {
        return Rows.of("gas-virial-checks.csv").stream().filter(row -> !row.text("B_293K").isEmpty()).toList();
    }

    /** CRC Handbook, "Virial Coefficients of Selected Gases": the polynomial worked out by another program. */
    @ParameterizedTest
    @MethodSource("virialChecks")
    void virialCoefficientsAndMolarVolumesAgree(Row row) {
        Virial virial = TABLES.virial(row.formula("formula")).orElseThrow();
        double[] celsius = {0, 10, 20, 25, 30, 40};
        String[] columns = {"B_273K", "B_283K", "B_293K", "B_298K", "B_303K", "B_313K"};
        for (int i = 0; i < celsius.length; i++) {
            assertEquals(row.number(columns[i]), virial.coefficient(celsius[i] + 273.15).value().orElseThrow() * 1e6, 0.31);
        }
        // The two ways of cutting the virial equation differ by (B p/RT)², some 0.01 L/mol for sulfur dioxide.
        assertEquals(row.number("Vm_293K_101325Pa_L_mol"),
                virial.molarVolume(293.15, 101325).value().orElseThrow() * 1000, 0.009);
        assertEquals(row.number("Vm_298K_101325Pa_L_mol"),
                virial.molarVolume(298.15, 101325).value().orElseThrow() * 1000, 0.009);
    }

    /** NIST Chemistry WebBook, isobaric data at 101.325 kPa and 298.15 K, in L/mol; from memory to the digits given. */
    @Test
    void carbonDioxideTakesLessRoomThanAnIdealGas() {
        double molarVolume = TABLES.virial(formula("CO2")).orElseThrow().molarVolume(298.15, 101325).value().orElseThrow();
        assertEquals(24.34, molarVolume * 1000, 0.01);
        assertTrue(molarVolume < IdealGas.molarVolume(298.15, 101325));
    }

    @Test
    void nitrogenDioxideHasNoVirialCoefficient() {
        assertTrue(TABLES.virial(formula("NO2")).isEmpty());
    }

    static List<Row> henryChecks() {
        return Rows.of("gas-solubility-checks.csv").stream().filter(row -> G7_04.containsKey(row.text("formula"))).toList();
    }

    /** IAPWS G7-04 over the range that is claimed: within 5 % from 10 °C to 35 °C, within 10 % from 0 °C to 40 °C. */
    @ParameterizedTest
    @MethodSource("henryChecks")
    void henryConstantsKeepTheClaimedLimits(Row row) {
        GasSolubility gas = TABLES.gasSolubility(row.formula("formula")).orElseThrow();
        assertEquals(row.number("check_Hscp_iapws_G7_04"), standard(row.text("formula"), 298.15),
                row.number("check_Hscp_iapws_G7_04") * 1e-3);
        for (int celsius = 0; celsius <= 40; celsius++) {
            double kelvin = celsius + 273.15;
            double ratio = gas.henry(kelvin).value().orElseThrow() / standard(row.text("formula"), kelvin);
            assertEquals(1, ratio, celsius >= 10 && celsius <= 35 ? 0.05 : 0.1);
        }
    }

    private static double standard(String gas, double kelvin) {
        double[] a = G7_04.get(gas);
        double reduced = kelvin / 647.096;
        double tau = 1 - reduced;
        double pressure = Water.vapourPressure(kelvin).value().orElseThrow() * Math.exp(a[0] / reduced
                + a[1] * Math.pow(tau, 0.355) / reduced + a[2] * Math.pow(reduced, -0.41) * Math.exp(tau));
        return Water.density(kelvin).value().orElseThrow() / 0.01801528 / pressure;
    }

    @ParameterizedTest
    @MethodSource("publishedHenry")
    void henryAgreesWithWorkedExamples(PublishedCase published) {
        Formula gas = formula(published.text("gas"));
        double constant = published.has("henry_constant") ? published.number("henry_constant")
                : published.number(published.has("concentration1") ? "concentration1" : "concentration") * 1e3
                        / published.number(published.has("pressure1") ? "pressure1" : "pressure");
        GasSolubility henry = new GasSolubility(gas, published.text("gas"), constant, 0, Optional.empty(), "",
                TABLES.gasSolubilities().get(0).provenance());
        double found = switch (published.find()) {
            case "concentration" -> henry.concentration(293.15, published.number("pressure2")).value().orElseThrow() / 1e3;
            case "henry constant" -> henry.henry(293.15).value().orElseThrow();
            case "mass concentration" -> henry.concentration(298.15, published.number("pressure")).value().orElseThrow()
                    * gas.molarMass(TABLES.elements()) / 1e3;
            default -> published.number("concentration") * 1e3 / henry.henry(298.15).value().orElseThrow();
        };
        assertEquals(published.answer(), found, published.allowed());
    }

    static List<PublishedCase> publishedHenry() {
        return PublishedCase.of("henry");
    }

    /** The same textbook's constants at 25 °C, 1.38e-3 mol/L of oxygen at 20 °C under 101.3 kPa, against our table. */
    @Test
    void oxygenInWaterAgreesWithTheTextbook() {
        double found = TABLES.gasSolubility(formula("O2")).orElseThrow().concentration(293.15, 101300).value().orElseThrow();
        assertEquals(1.38, found, 0.06);
    }

    @Test
    void nothingIsExtrapolated() {
        GasSolubility oxygen = TABLES.gasSolubility(formula("O2")).orElseThrow();
        assertEquals("out-of-table-range", assertInstanceOf(OutOfRange.class, oxygen.henry(353)).id());
        Virial hydrogen = TABLES.virial(formula("H2")).orElseThrow();
        assertInstanceOf(OutOfRange.class, hydrogen.molarVolume(500, 101325));
        assertInstanceOf(OutOfRange.class, hydrogen.molarVolume(298, 1e7));
        assertInstanceOf(OutOfRange.class, hydrogen.molarVolume(298, 0));
    }

    @ParameterizedTest
    @MethodSource("publishedIdeal")
    void idealGasAgreesWithWorkedExamples(PublishedCase c) {
        double kelvin = c.number("temperature");
        double mass = c.has("substance") && !c.text("substance").isEmpty()
                ? formula(c.text("substance")).molarMass(TABLES.elements()) / 1e3 : 0;
        double found = switch (c.find()) {
            case "pressure" -> IdealGas.pressure(c.number("amount"), kelvin, c.number("volume"));
            case "amount" -> IdealGas.amount(c.number("volume"), kelvin, c.number("pressure"));
            case "mass" -> IdealGas.amount(c.number("volume"), kelvin, c.number("pressure")) * mass;
            case "volume" -> IdealGas.volume(c.number("mass") / mass, kelvin, c.number("pressure"));
            case "density" -> mass / IdealGas.molarVolume(kelvin, c.number("pressure"));
            default -> c.number("mass") / IdealGas.amount(c.number("volume"), kelvin, c.number("pressure"));
        };
        assertEquals(c.answer(), found, c.allowed());
    }

    static List<PublishedCase> publishedIdeal() {
        return PublishedCase.of("ideal_gas");
    }

    @ParameterizedTest
    @MethodSource("publishedLaws")
    void gasLawsAgreeWithWorkedExamples(PublishedCase c) {
        // One mole of an ideal gas is taken from state 1; a quantity that is not given is the same in both states.
        double pressure = c.has("P1") ? c.number("P1") : 1e5;
        double kelvin = c.has("T1") ? c.number("T1") : 300;
        double volume = c.has("V1") ? c.number("V1") : 1e-3;
        double amount = IdealGas.amount(volume, kelvin, pressure);
        double kelvin2 = c.has("T2") ? c.number("T2") : kelvin;
        double pressure2 = c.has("P2") ? c.number("P2") : pressure;
        double volume2 = c.has("V2") ? c.number("V2") : volume;
        double found = switch (c.find()) {
            case "P2" -> IdealGas.pressure(amount, kelvin2, volume2);
            case "V2" -> IdealGas.volume(amount, kelvin2, pressure2);
            default -> pressure2 * volume2 / (amount * Constants.GAS_CONSTANT.value());
        };
        assertEquals(c.answer(), found, c.allowed());
    }

    static List<PublishedCase> publishedLaws() {
        return PublishedCase.of("gas_laws");
    }

    /** CODATA 2022: the molar volumes are R T/p. */
    @Test
    void molarVolumesFollowFromTheGasConstant() {
        assertEquals(Constants.MOLAR_VOLUME_100_KPA.value(), IdealGas.molarVolume(273.15, 100000), 1e-11);
        assertEquals(Constants.MOLAR_VOLUME_101_325_KPA.value(), IdealGas.molarVolume(273.15, 101325), 1e-11);
        assertEquals(Constants.GAS_CONSTANT.value(), Constants.AVOGADRO.value() * 1.380649e-23, 1e-15);
        assertEquals(Constants.FARADAY.value(), Constants.AVOGADRO.value() * 1.602176634e-19, 1e-9);
    }

    /** IEC 60079-20-1:2010 and NFPA 497:2008: the wider of the two ranges, so that neither is narrowed. */
    @Test
    void flammableLimitsAreTheWiderOfTwoStandards() {
        for (Row row : Rows.of("gas-virial-checks.csv")) {
            var limits = TABLES.flammableLimits(row.formula("formula"));
            assertEquals(row.text("flammable").equals("yes"), limits.isPresent(), row.text("formula"));
            if (limits.isPresent()) {
                for (String standard : List.of("iec", "nfpa")) {
                    assertTrue(limits.get().lower() * 100 <= row.number(standard + "_LEL_volpct") + 1e-9);
                    assertTrue(limits.get().upper() * 100 >= row.number(standard + "_UEL_volpct") - 1e-9);
                }
            }
        }
    }

    private static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }
}
