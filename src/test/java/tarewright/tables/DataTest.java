package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Substance;

class DataTest {
    private static final ReferenceTables TABLES = Tables.load();

    @ParameterizedTest
    @ValueSource(strings = {"substances", "solution-density", "commercial-strengths", "gas-solubility", "gas-virial", "thermo",
            "solubility-salts", "acid-base", "atomic-weights"})
    void everyRowSaysWhereItComesFromAndHowFarItIsProven(String table) {
        for (Row row : Rows.of(table + ".csv")) {
            assertFalse(row.text("source").isEmpty(), table + " " + row.number());
            assertTrue(row.text("confidence").matches("read|library|memory"), table + " " + row.number());
        }
    }

    @Test
    void everyDensityOfAPureSubstanceHasItsOwnSource() {
        for (Substance substance : TABLES.substances().all()) {
            substance.density().ifPresent(density -> assertFalse(density.provenance().source().isEmpty(), substance.name()));
        }
    }

    /** A page can mark what it prints from memory: the rows are listed, as many as the files hold. */
    @Test
    void rowsFromMemoryAreListed() {
        long substances = Rows.of("substances.csv").stream().filter(row -> row.text("confidence").equals("memory")).count();
        long densities = Rows.of("substances.csv").stream()
                .filter(row -> row.text("density_confidence").equals("memory")).count();
        assertEquals(substances, TABLES.unproven().stream().filter(row -> row.table().equals("substances")).count());
        assertEquals(densities, TABLES.unproven().stream().filter(row -> row.table().equals("densities of substances")).count());
        assertTrue(TABLES.unproven().stream().allMatch(row -> row.provenance().confidence() == Confidence.MEMORY));
        assertTrue(TABLES.unproven().stream().anyMatch(row -> row.table().equals("commercial strengths")
                && row.row().equals("battery acid 37 %")));
    }
}
