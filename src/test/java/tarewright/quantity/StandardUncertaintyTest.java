package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class StandardUncertaintyTest {
    /** JCGM 100:2008, F.2.2.1: an indication that is resolved to δx has u = 0,29 δx. */
    @Test
    void resolution() {
        assertEquals(0.29, StandardUncertainty.rectangular(0.5), 0.005);
    }

    /** Eurachem/CITAC Guide CG 4, example A1: purity 0,9999 ± 0,0001 has u = 0,000058; ± 0,1 mL, triangular, has 0,04 mL. */
    @Test
    void eurachem() {
        assertEquals(0.000058, StandardUncertainty.rectangular(0.0001), 0.0000005);
        assertEquals(0.0408248, StandardUncertainty.triangular(0.1), 0.0000001);
    }

    /** The same example: a flask of 100 mL with 0,0408 mL (calibration), 0,0485 mL (temperature) and 0,02 mL (repeatability). */
    @Test
    void combinedAsTheGuideDoes() {
        double temperature = StandardUncertainty.rectangular(100 * 4 * 2.1e-4);
        double volume = StandardUncertainty.combined(StandardUncertainty.triangular(0.1), temperature, 0.02);
        assertEquals(0.07, volume, 0.005);
        assertEquals(0.0664730521840743, volume, 5e-5);
        assertEquals(0, StandardUncertainty.combined());
    }
}
