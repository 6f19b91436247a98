package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import tarewright.chemistry.Substance;

class TablesTest {
    private static final ReferenceTables TABLES = Tables.load();

    @Test
    void manySubstancesAreKnown() {
        assertTrue(TABLES.substances().all().size() >= 250);
    }

    /** Everyday names: common practice, no source. */
    @Test
    void aSubstanceIsFoundByEverydayNames() {
        assertEquals("NaHCO3", formulaOf("Baking soda"));
        assertEquals("CuSO4·5H2O", formulaOf("blue vitriol"));
        assertEquals("CuSO4", formulaOf("copper (II) sulfate"));
        assertEquals("H2SO4", formulaOf("sulphuric acid"));
        assertEquals("C2H5OH", formulaOf("ethyl-alcohol"));
    }

    private static String formulaOf(String name) {
        return TABLES.substances().named(name).flatMap(Substance::formulaText).orElse("none");
    }
}
