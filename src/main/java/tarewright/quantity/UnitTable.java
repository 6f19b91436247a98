package tarewright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The units that there are, each with its spellings. Closed: a unit that is not here is not a unit.
 *
 * <p>Sources: SI Brochure, 9th edition, tables 2, 4 and 7 (units and prefixes) and 8 (min, h, d, L, t, eV); NIST SP 811 (2008),
 * appendix B.8 (inch-pound, customary volume, atm, torr, mmHg, inHg, psi, cal). The values were written from memory of these
 * tables; the tests hold them against UCUM as a reference library reads it.
 */
final class UnitTable {
    /** Enough digits that a quotient of exact factors rounds to the nearest double. */
    static final MathContext DIGITS = MathContext.DECIMAL128;

    private static final Dimension POWER = Dimension.ENERGY.over(Dimension.TIME);

    private static final UnitTable TABLE = new UnitTable();

    private final Map<String, Entry> bySymbol = new LinkedHashMap<>();
    private final Map<String, Entry> bySpelling = new HashMap<>();

    private UnitTable() {
        lengths();
        volumes();
        masses();
        times();
        temperatures();
        amounts();
        pressures();
        energies();
        fractions();
    }

    /** One row: the unit, and its factor in decimal so that compounds of it are exact. */
    record Entry(Unit unit, BigDecimal factor) {
    }

    /** All spellings, the printed symbols among them. */
    static Map<String, Entry> spellings() {
        return Collections.unmodifiableMap(TABLE.bySpelling);
    }

    /** The units by printed symbol, in the order in which they are offered. */
    static Map<String, Entry> symbols() {
        return Collections.unmodifiableMap(TABLE.bySymbol);
    }

    /** The commonest first, since a list of suggestions keeps this order. */
    private void lengths() {
        add("cm", Dimension.LENGTH, "0.01");
        add("mm", Dimension.LENGTH, "0.001");
        add("m", Dimension.LENGTH, "1");
        add("dm", Dimension.LENGTH, "0.1");
        add("µm", Dimension.LENGTH, "1e-6", "um");
        add("nm", Dimension.LENGTH, "1e-9");
        add("km", Dimension.LENGTH, "1000");
        add("in", Dimension.LENGTH, "0.0254");
        add("ft", Dimension.LENGTH, "0.3048");
        add("yd", Dimension.LENGTH, "0.9144");
        add("mi", Dimension.LENGTH, "1609.344");
        add("m²", Dimension.AREA, "1", "m2", "m^2");
        add("cm²", Dimension.AREA, "1e-4", "cm2", "cm^2");
        add("mm²", Dimension.AREA, "1e-6", "mm2", "mm^2");
    }

    private void volumes() {
        add("mL", Dimension.VOLUME, "1e-6");
        add("L", Dimension.VOLUME, "1e-3");
        add("cm³", Dimension.VOLUME, "1e-6", "cm3", "cm^3");
        add("dm³", Dimension.VOLUME, "1e-3", "dm3", "dm^3");
        add("µL", Dimension.VOLUME, "1e-9", "uL");
        add("cL", Dimension.VOLUME, "1e-5");
        add("dL", Dimension.VOLUME, "1e-4");
        add("nL", Dimension.VOLUME, "1e-12");
        add("m³", Dimension.VOLUME, "1", "m3", "m^3");
        add("mm³", Dimension.VOLUME, "1e-9", "mm3", "mm^3");
        // Twenty drops to the millilitre (UCUM, [drp]); drops of a real dropping pipette run from 0.03 mL to 0.07 mL (common
        // practice, no source).
        add("drops", Dimension.VOLUME, "5e-8", "drop", "gota", "gotas");
        // United States liquid measure: a gallon is 231 cubic inches.
        add("gal", Dimension.VOLUME, "3.785411784e-3");
        add("qt", Dimension.VOLUME, "9.46352946e-4");
        add("pt", Dimension.VOLUME, "4.73176473e-4");
        add("fl oz", Dimension.VOLUME, "2.95735295625e-5", "floz", "fl_oz");
    }

    private void masses() {
        add("g", Dimension.MASS, "1e-3");
        add("mg", Dimension.MASS, "1e-6");
        add("kg", Dimension.MASS, "1");
        add("µg", Dimension.MASS, "1e-9", "ug");
        add("ng", Dimension.MASS, "1e-12");
        add("t", Dimension.MASS, "1000");
        add("lb", Dimension.MASS, "0.45359237");
        add("oz", Dimension.MASS, "0.028349523125");
    }

    private void times() {
        add("min", Dimension.TIME, "60");
        add("s", Dimension.TIME, "1");
        add("h", Dimension.TIME, "3600");
        add("d", Dimension.TIME, "86400");
        add("ms", Dimension.TIME, "1e-3");
        add("µs", Dimension.TIME, "1e-6", "us");
    }

    private void temperatures() {
        // U+2103 and U+2109 are one sign each; Unicode says to prefer the two-letter spelling.
        put(new Unit("°C", Dimension.TEMPERATURE, 1, 273.15), BigDecimal.ONE, "degC", "\u2103", "\u00BAC");
        put(new Unit("K", Dimension.TEMPERATURE, 1), BigDecimal.ONE, "\u212A");
        BigDecimal fahrenheit = new BigDecimal(5).divide(new BigDecimal(9), DIGITS);
        double zero = new BigDecimal("459.67").multiply(new BigDecimal(5)).divide(new BigDecimal(9), DIGITS).doubleValue();
        put(new Unit("°F", Dimension.TEMPERATURE, fahrenheit.doubleValue(), zero), fahrenheit, "degF", "\u2109");
    }

    private void amounts() {
        add("mol", Dimension.AMOUNT, "1");
        add("mmol", Dimension.AMOUNT, "1e-3");
        add("µmol", Dimension.AMOUNT, "1e-6", "umol");
        add("nmol", Dimension.AMOUNT, "1e-9");
        add("kmol", Dimension.AMOUNT, "1000");
        add("mol/L", Dimension.CONCENTRATION, "1000", "M");
        add("mmol/L", Dimension.CONCENTRATION, "1", "mM");
        add("µmol/L", Dimension.CONCENTRATION, "1e-3", "µM", "uM");
        add("nmol/L", Dimension.CONCENTRATION, "1e-6", "nM");
    }

    private void pressures() {
        add("kPa", Dimension.PRESSURE, "1000");
        add("atm", Dimension.PRESSURE, "101325");
        add("mmHg", Dimension.PRESSURE, "133.322387415");
        put("Torr", Dimension.PRESSURE, new BigDecimal("101325").divide(new BigDecimal("760"), DIGITS), "torr");
        add("bar", Dimension.PRESSURE, "1e5");
        add("mbar", Dimension.PRESSURE, "100");
        add("hPa", Dimension.PRESSURE, "100");
        add("Pa", Dimension.PRESSURE, "1");
        add("MPa", Dimension.PRESSURE, "1e6");
        add("mPa", Dimension.PRESSURE, "1e-3");
        BigDecimal poundForce = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
        put("psi", Dimension.PRESSURE, poundForce.divide(new BigDecimal("0.00064516"), DIGITS));
        add("inHg", Dimension.PRESSURE, "3386.388640341");
    }

    private void energies() {
        add("kJ", Dimension.ENERGY, "1000");
        add("J", Dimension.ENERGY, "1");
        add("MJ", Dimension.ENERGY, "1e6");
        add("mJ", Dimension.ENERGY, "1e-3");
        // The thermochemical calorie.
        add("cal", Dimension.ENERGY, "4.184");
        add("kcal", Dimension.ENERGY, "4184");
        add("eV", Dimension.ENERGY, "1.602176634e-19");
        add("kWh", Dimension.ENERGY, "3.6e6");
        add("Wh", Dimension.ENERGY, "3600");
        add("W", POWER, "1");
        add("kW", POWER, "1000");
    }

    private void fractions() {
        add("%", Dimension.NONE, "0.01");
        add("‰", Dimension.NONE, "0.001");
        add("ppm", Dimension.NONE, "1e-6");
        add("ppb", Dimension.NONE, "1e-9");
    }

    private void add(String symbol, Dimension dimension, String factor, String... spellings) {
        put(symbol, dimension, new BigDecimal(factor), spellings);
    }

    private void put(String symbol, Dimension dimension, BigDecimal factor, String... spellings) {
        put(new Unit(symbol, dimension, factor.doubleValue()), factor, spellings);
    }

    private void put(Unit unit, BigDecimal factor, String... spellings) {
        Entry entry = new Entry(unit, factor);
        bySymbol.put(unit.symbol(), entry);
        spell(unit.symbol(), entry);
        for (String spelling : spellings) {
            spell(spelling, entry);
        }
    }

    /** The Greek letter mu is the micro sign to every reader. */
    private void spell(String spelling, Entry entry) {
        spellOnce(spelling, entry);
        if (spelling.indexOf('\u00B5') >= 0) {
            spellOnce(spelling.replace('\u00B5', '\u03BC'), entry);
        }
    }

    private void spellOnce(String spelling, Entry entry) {
        if (bySpelling.put(spelling, entry) != null) {
            throw new IllegalStateException("two units are spelled " + spelling);
        }
    }
}
