package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import javax.measure.UnitConverter;
import javax.measure.format.UnitFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.ucum.format.UCUMFormat;

/**
 * Every unit of the table that UCUM knows, against the Unified Code for Units of Measure (UCUM 2.1) as the reference
 * implementation of JSR 385 reads it.
 */
class UcumTest {
    private static final UnitFormat UCUM = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);

    /**
     * In UCUM, not compared: its mm[Hg] and [in_i'Hg] rest on 133.3220 Pa rounded to seven digits, its eV on the value before
     * the revision of the SI in 2019; the torr and the vol are not there.
     */
    private static final Set<String> NOT_COMPARED = Set.of("mmHg", "inHg", "eV", "Torr");

    private static final String ALL = """
            cm cm; mm mm; m m; dm dm; µm um; nm nm; km km; in [in_i]; ft [ft_i]; yd [yd_i]; mi [mi_i];
            m² m2; cm² cm2; mm² mm2; mL mL; L L; cm³ cm3; dm³ dm3; µL uL; cL cL; dL dL; nL nL; m³ m3; mm³ mm3; drops [drp];
            gal [gal_us]; qt [qt_us]; pt [pt_us]; fl_oz [foz_us]; g g; mg mg; kg kg; µg ug; ng ng; t t; lb [lb_av]; oz [oz_av];
            min min; s s; h h; d d; ms ms; µs us; K K; mol mol; mmol mmol; µmol umol; nmol nmol; kmol kmol;
            mol/L mol/L; mmol/L mmol/L; µmol/L umol/L; nmol/L nmol/L; kPa kPa; atm atm; bar bar; mbar mbar; hPa hPa; Pa Pa;
            MPa MPa; mPa mPa; psi [psi]; kJ kJ; J J; MJ MJ; mJ mJ; cal cal; kcal kcal; kWh kW.h; Wh W.h; W W; kW kW;
            % %; ‰ [ppth]; ppm [ppm]; ppb [ppb];
            g/mol g/mol; J/(g_K) J/(g.K); kJ/mol kJ/mol; g/mL g/mL; g/m g/m; g/100_mL g/(100.mL); mol_dm^-3 mol/dm3; kg/m³ kg/m3;
            m/s m/s; L/(mol_s) L/(mol.s); mol/(L_atm) mol/(L.atm); cm³/min cm3/min; kJ/(kg_K) kJ/(kg.K); mg/dL mg/dL""";

    @Test
    void factorsAndDimensionsAgree() {
        Set<String> seen = new TreeSet<>();
        for (String pair : ALL.split(";\\s*")) {
            String symbol = pair.split(" ")[0].replace('_', ' ');
            String code = pair.split(" ")[1].strip();
            Unit ours = ((UnitResult.Ok) Units.parse(symbol)).unit();
            javax.measure.Unit<?> theirs = UCUM.parse(code);
            double factor = inBaseUnits(theirs, ours.dimension());
            assertEquals(1, ours.factor() / factor, 1e-12, symbol + " against " + code);
            seen.add(ours.symbol());
        }
        Set<String> missing = new TreeSet<>(Units.all());
        missing.removeAll(seen);
        missing.removeAll(NOT_COMPARED);
        assertEquals(Set.of("°C", "°F"), missing, "every other unit of the table is compared");
    }

    @ParameterizedTest
    @CsvSource({"°C, Cel", "°F, [degF]"})
    void temperaturesAgree(String symbol, String code) {
        UnitConverter toKelvin = converter(UCUM.parse(code), UCUM.parse("K"));
        Unit ours = Units.symbol(symbol).orElseThrow();
        for (double value : new double[] {-200, -40, 0, 20, 37, 100, 1000}) {
            assertEquals(toKelvin.convert(value), ours.toSi(value), 1e-9, symbol);
        }
    }

    /** UCUM's conventional millimetre of mercury and ours are the same to the digits that UCUM gives. */
    @ParameterizedTest
    @CsvSource({"mmHg, mm[Hg]", "inHg, [in_i'Hg]"})
    void mercuryAgreesToTheDigitsOfUcum(String symbol, String code) {
        double factor = inBaseUnits(UCUM.parse(code), Dimension.PRESSURE);
        assertTrue(Math.abs(Units.symbol(symbol).orElseThrow().factor() / factor - 1) < 4e-6);
    }

    private static double inBaseUnits(javax.measure.Unit<?> unit, Dimension dimension) {
        String base = power("kg", dimension.mass()) + power("m", dimension.length()) + power("s", dimension.time())
                + power("K", dimension.temperature()) + power("mol", dimension.amount()) + "1";
        return converter(unit, UCUM.parse(base)).convert(1.0);
    }

    private static String power(String symbol, int power) {
        return power == 0 ? "" : symbol + power + ".";
    }

    private static UnitConverter converter(javax.measure.Unit<?> from, javax.measure.Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (javax.measure.IncommensurableException e) {
            throw new AssertionError(from + " and " + to, e);
        }
    }
}
