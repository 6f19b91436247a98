package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.Curve;
import tarewright.chemistry.DensityTable;
import tarewright.chemistry.Formula;
import tarewright.chemistry.SaltSolubility;
import tarewright.chemistry.TableValue.OutOfRange;

class SolutionTest {
    private static final ReferenceTables TABLES = Tables.load();

    static List<Row> handbook() {
        return Rows.of("crc-concentrations.csv");
    }

    /**
     * CRC Handbook 102nd edition, "Concentrative Properties of Aqueous Solutions": rows that are not in our table, so that
     * the way between rows is tested; density to 0.0003 g/mL, the handbook's own molarity to a unit of its last digit.
     */
    @ParameterizedTest
    @MethodSource("handbook")
    void betweenRowsTheHandbookIsMet(Row row) {
        DensityTable table = table(row.text("solute"));
        double fraction = row.number("mass_percent") / 100;
        assertTrue(table.densities().rows().stream().noneMatch(own -> Math.abs(own.x() - fraction) < 1e-9), "is a row");
        assertEquals(row.number("density_g_mL") * 1000, table.density(fraction).value().orElseThrow(), 0.3);
        double concentration = table.concentration(fraction, molarMass(table)).value().orElseThrow();
        assertEquals(row.number("molarity_mol_L"), concentration / 1000, 0.0015 + 3e-4 * row.number("molarity_mol_L"));
    }

    static List<Row> laliberte() {
        return Rows.of("solution-density-checks.csv").stream().filter(row -> !row.text("check_density_laliberte").isEmpty())
                .filter(row -> row.text("series").equals("main") || row.text("solute").equals("CH3COOH"))
                .filter(row -> Math.abs(row.number("check_diff_pct")) < 0.3).toList();
    }

    /** Laliberté, J. Chem. Eng. Data 54 (2009) 1725, which claims some 0.15 %; 0.4 % for alcohol and concentrated alkali. */
    @ParameterizedTest
    @MethodSource("laliberte")
    void densitiesAgreeWithAnotherModel(Row row) {
        DensityTable table = table(row.text("solute"));
        double density = table.density(row.number("mass_percent") / 100).value().orElseThrow() / 1000;
        assertEquals(row.number("check_density_laliberte"), density, 0.004);
    }

    static Collection<DensityTable> tables() {
        return TABLES.densities().all();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void massFractionIsTheInverseOfConcentration(DensityTable table) {
        double molarMass = molarMass(table);
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 50; i++) {
            double fraction = random.nextDouble(table.strongest());
            double concentration = table.concentration(fraction, molarMass).value().orElseThrow();
            assertEquals(fraction, table.massFraction(concentration, molarMass).value().orElseThrow(), 1e-10);
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void aTableStartsAtWaterAndMoreSoluteIsMoreConcentrated(DensityTable table) {
        assertEquals(0, table.densities().first());
        assertEquals(998.2, table.density(0).value().orElseThrow(), 0.01);
        double before = -1;
        for (int i = 0; i <= 1000; i++) {
            double concentration = table.concentration(table.strongest() * i / 1000, 1).value().orElseThrow();
            assertTrue(concentration > before, table.name() + " at " + i);
            before = concentration;
        }
    }

    /** Only ammonia, alcohol and the hump of acetic and sulfuric acid may fall. */
    @ParameterizedTest
    @MethodSource("tables")
    void saltsMakeWaterDenser(DensityTable table) {
        List<Curve.Row> rows = table.densities().rows();
        boolean rises = true;
        for (int i = 1; i < rows.size(); i++) {
            rises &= rows.get(i).y() > rows.get(i - 1).y();
        }
        boolean mayFall = List.of("NH3", "C2H5OH", "CH3COOH", "H2SO4").contains(table.solute().plain());
        assertEquals(!mayFall, rises, table.name());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void strongerThanTheTableIsSaidSo(DensityTable table) {
        OutOfRange trouble = assertInstanceOf(OutOfRange.class, table.density(table.strongest() + 0.01));
        assertEquals("stronger-than-table", trouble.id());
        assertEquals(table.strongest() * 100, trouble.to(), 1e-9);
        assertInstanceOf(OutOfRange.class, table.massFraction(1e6, molarMass(table)));
        assertInstanceOf(OutOfRange.class, table.concentration(-0.01, 1));
        assertInstanceOf(OutOfRange.class, table.density(Double.NaN));
    }

    static List<CommercialStrength> sold() {
        return TABLES.strengths();
    }

    /** The published molarity of what is sold, each row with its own source, within the difference that its source leaves. */
    @ParameterizedTest
    @MethodSource("sold")
    void whatIsSoldIsAsStrongAsPublished(CommercialStrength sold) {
        double molarMass = sold.solute().molarMass(TABLES.elements()) / 1000;
        double concentration = switch (sold.basis()) {
            case MASS_PERCENT -> sold.strength() / 100 * sold.density().orElseThrow() / molarMass;
            case MASS_BY_VOLUME_PERCENT -> sold.strength() / 100 * 1000 / molarMass;
            case VOLUME_PERCENT -> sold.strength() / 100 * TABLES.substances().of(sold.solute()).get(0).density().orElseThrow()
                    .kilogramsPerCubicMetre() / molarMass;
            case VOLUMES_OF_OXYGEN -> sold.strength() * 2 / 0.02241396954;
        };
        assertEquals(1, concentration / sold.concentration(), 0.0065, sold.name());
    }

    /** What is sold under one name is one thing, and as dense as the table of densities has it: labels print three digits. */
    @Test
    void soldSolutionsAgreeWithTheTableOfDensities() {
        assertEquals(sold().size(), sold().stream().map(CommercialStrength::name).distinct().count());
        int checked = 0;
        for (CommercialStrength sold : sold()) {
            Optional<DensityTable> table = TABLES.densities().of(sold.solute());
            if (sold.basis() == CommercialStrength.Basis.MASS_PERCENT && table.isPresent() && sold.density().isPresent()
                    && table.get().density(sold.strength() / 100).value().isPresent()) {
                double found = table.get().density(sold.strength() / 100).value().getAsDouble();
                assertEquals(1, found / sold.density().getAsDouble(), 0.006, sold.name());
                checked++;
            }
        }
        assertTrue(checked >= 25, "only " + checked);
        assertTrue(TABLES.strengthsOf(formula("NH3")).stream().allMatch(sold -> sold.solute().equals(formula("NH3"))));
    }

    /** OpenStax, Chemistry 2e, Appendix F: density and molarity of commercial acids and bases, against our density tables. */
    @Test
    void appendixOfTheTextbookIsMet() {
        assertEquals(11.6, molarity("HCl", 36), 0.1);
        assertEquals(18.0, molarity("H2SO4", 96), 0.05);
        assertEquals(16.0, molarity("HNO3", 71), 0.1);
        assertEquals(17.4, molarity("CH3COOH", 99.5), 0.05);
        assertEquals(14.8, molarity("NH3", 28), 0.05);
        assertEquals(19.1, molarity("NaOH", 50), 0.05);
    }

    private static double molarity(String solute, double percent) {
        DensityTable table = table(solute);
        return table.concentration(percent / 100, molarMass(table)).value().orElseThrow() / 1000;
    }

    static List<Row> saturated() {
        return Rows.of("solubility-salts-checks.csv").stream()
                .filter(row -> !row.text("diff_pct").isEmpty() && !row.text("formula").equals("NaOH")).toList();
    }

    /** The second column of the table: recalled from Lange's Handbook; within the difference noted beside it. */
    @ParameterizedTest
    @MethodSource("saturated")
    void solubilitiesAgreeWithAnotherHandbook(Row row) {
        SaltSolubility salt = TABLES.saltSolubility(row.formula("formula")).orElseThrow();
        double found = salt.gramsPer100GramsOfWater(row.number("t_C") + 273.15).value().orElseThrow();
        double other = row.number("check_g_per_100g");
        boolean otherBasis = salt.note().contains("dihydrate") || salt.note().contains("CRC mass percent");
        if (!otherBasis) {
            assertEquals(other, found, Math.max(Math.abs(row.number("diff_pct")) / 100 + 0.005, 0.02) * found + 1e-4);
        }
    }

    /** Mass percent of the saturated solution, CRC Handbook 98th edition, "Aqueous Solubility of Inorganic Compounds". */
    @Test
    void saturatedMassFractionIsThatOfTheHandbook() {
        int checked = 0;
        for (Row row : Rows.of("solubility-salts-checks.csv")) {
            if (row.text("mass_percent_saturated").isEmpty()) {
                continue;
            }
            if (row.text("formula").equals("NaOH")) {
                // 46 % cannot be where a 50 % solution is sold: the row is left out of our table.
                assertTrue(TABLES.saltSolubility(row.formula("formula")).isEmpty());
                continue;
            }
            SaltSolubility salt = TABLES.saltSolubility(row.formula("formula")).orElseThrow();
            double fraction = salt.massFraction(row.number("t_C") + 273.15).value().orElseThrow();
            assertEquals(row.number("mass_percent_saturated"), fraction * 100, 0.012 + 1e-3 * fraction * 100,
                    row.text("formula"));
            checked++;
        }
        assertTrue(checked > 80, "only " + checked);
    }

    @Test
    void lithiumCarbonateIsLessSolubleInHotWaterAndSaltpetreMore() {
        assertTrue(grams("Li2CO3", 60) < grams("Li2CO3", 20));
        assertTrue(grams("KNO3", 60) > 3 * grams("KNO3", 20));
    }

    @Test
    void solubilityIsNotExtrapolated() {
        SaltSolubility salt = TABLES.saltSolubility(formula("NaCl")).orElseThrow();
        OutOfRange trouble = assertInstanceOf(OutOfRange.class, salt.massFraction(373.15 + 20));
        assertEquals("out-of-table-range", trouble.id());
        assertEquals("°C", trouble.unit());
    }

    private static double grams(String salt, double celsius) {
        return TABLES.saltSolubility(formula(salt)).orElseThrow().gramsPer100GramsOfWater(celsius + 273.15).value().orElseThrow();
    }

    private static DensityTable table(String solute) {
        return TABLES.densities().of(formula(solute)).orElseThrow();
    }

    private static double molarMass(DensityTable table) {
        return table.solute().molarMass(TABLES.elements()) / 1000;
    }

    private static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }
}
