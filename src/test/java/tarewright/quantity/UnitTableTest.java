package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The factors of the table, against the SI Brochure and NIST SP 811; their values are written here from memory. */
class UnitTableTest {
    /** SI Brochure, 9th edition (2019), table 8 and 2.3.1 (definition of the electronvolt through e), from memory. */
    @ParameterizedTest
    @CsvSource({
        "min, 60", "h, 3600", "d, 86400", "L, 0.001", "t, 1000", "eV, 1.602176634e-19",
        "bar, 100000", "mmHg, 133.322387415",
    })
    void nonSiUnitsAcceptedForUseWithTheSi(String symbol, double factor) {
        assertEquals(factor, unit(symbol).factor(), factor * 1e-15);
    }

    /** NIST SP 811 (2008), appendix B.8, from memory: the factors in bold there are exact, the others have seven digits. */
    @ParameterizedTest
    @CsvSource({
        "atm, 1.01325e5, exact", "in, 2.54e-2, exact", "ft, 3.048e-1, exact", "yd, 9.144e-1, exact", "mi, 1.609344e3, exact",
        "cal, 4.184, exact", "kcal, 4.184e3, exact", "kWh, 3.6e6, exact", "Torr, 1.333224e2, 7", "psi, 6.894757e3, 7",
        "inHg, 3.386389e3, 7", "mmHg, 1.333224e2, 7", "gal, 3.785412e-3, 7", "qt, 9.463529e-4, 7", "pt, 4.731765e-4, 7",
        "fl oz, 2.957353e-5, 7", "lb, 4.535924e-1, 7", "oz, 2.834952e-2, 7",
    })
    void conversionFactorsOfTheGuideForTheUseOfTheSi(String symbol, double factor, String digits) {
        double half = digits.equals("exact") ? factor * 1e-15 : 0.5 * Math.pow(10, Math.floor(Math.log10(factor)) - 6);
        assertEquals(factor, unit(symbol).factor(), half);
    }

    /** SI Brochure, 9th edition, table 7: prefixes; 2.3.4 (degree Celsius: 0 °C is 273.15 K exactly). */
    @ParameterizedTest
    @CsvSource({
        "µL, L, 1e-6", "nL, L, 1e-9", "mL, L, 1e-3", "cL, L, 1e-2", "dL, L, 1e-1", "mg, g, 1e-3", "µg, g, 1e-6", "ng, g, 1e-9",
        "kg, g, 1e3", "mm, m, 1e-3", "cm, m, 1e-2", "dm, m, 1e-1", "µm, m, 1e-6", "nm, m, 1e-9", "km, m, 1e3", "ms, s, 1e-3",
        "µs, s, 1e-6", "mmol, mol, 1e-3", "µmol, mol, 1e-6", "nmol, mol, 1e-9", "kmol, mol, 1e3", "kPa, Pa, 1e3",
        "hPa, Pa, 1e2", "MPa, Pa, 1e6", "mPa, Pa, 1e-3", "mbar, bar, 1e-3", "kJ, J, 1e3", "MJ, J, 1e6", "mJ, J, 1e-3",
        "kcal, cal, 1e3", "kW, W, 1e3", "kWh, Wh, 1e3", "cm³, m³, 1e-6", "dm³, m³, 1e-3", "mm³, m³, 1e-9", "cm², m², 1e-4",
        "mm², m², 1e-6", "mmol/L, mol/L, 1e-3", "µmol/L, mol/L, 1e-6", "nmol/L, mol/L, 1e-9", "‰, %, 1e-1", "ppm, %, 1e-4",
        "ppb, %, 1e-7",
    })
    void prefixes(String symbol, String base, double ratio) {
        assertEquals(unit(base).dimension(), unit(symbol).dimension());
        assertEquals(ratio, unit(symbol).factor() / unit(base).factor(), ratio * 1e-14);
    }

    @ParameterizedTest
    @CsvSource({"°C, 0, 273.15", "°C, -273.15, 0", "K, 5, 5", "°F, 32, 273.15", "°F, 212, 373.15", "°F, -40, 233.15"})
    void temperaturesHaveTheirOwnZero(String symbol, double value, double kelvin) {
        assertEquals(kelvin, unit(symbol).toSi(value), 1e-10);
        assertEquals(value, unit(symbol).fromSi(kelvin), 1e-10);
    }

    static List<String> everyUnit() {
        return Units.all();
    }

    @ParameterizedTest
    @MethodSource("everyUnit")
    void aUnitIsReadFromWhatItPrints(String symbol) {
        Unit unit = unit(symbol);
        assertEquals(symbol, unit.symbol());
        assertEquals(new UnitResult.Ok(unit), Units.parse(symbol));
        assertEquals(new UnitResult.Ok(unit), Units.parse("\u00A0" + symbol + " "));
    }

    @ParameterizedTest
    @CsvSource({
        "uL, µL", "\u03BCL, µL", "\u00B5L, µL", "ug, µg", "\u03BCmol, µmol", "um, µm", "cm3, cm³", "cm^3, cm³", "dm3, dm³",
        "m3, m³",
        "degC, °C", "\u2103, °C", "\u212A, K", "degF, °F", "torr, Torr", "M, mol/L", "mM, mmol/L", "uM, µmol/L", "drop, drops",
        "floz, fl oz",
    })
    void spellings(String typed, String printed) {
        assertEquals(printed, unit(typed).symbol());
    }

    /** A letter in another case is another unit or none. */
    @ParameterizedTest
    @CsvSource({"Ml", "ML", "ml", "l", "Mg", "MG", "KG", "Kg", "G", "S", "H", "Mol", "KPA", "pa", "k", "c", "ATM", "j",
        "mM/l", "N"})
    void whatIsNoUnit(String typed) {
        assertTrue(Units.parse(typed) instanceof UnitResult.Bad bad && bad.trouble().id().equals("unknown-unit"), typed);
    }

    private static Unit unit(String symbol) {
        return Units.symbol(symbol).orElseThrow(() -> new AssertionError(symbol));
    }
}
