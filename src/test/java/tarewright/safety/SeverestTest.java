package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Provenance;

/** Of several reasons for one danger the label says the worst. Categories by CLP Annex I, the letters of H360 and H361 by CLP Annex III Table 1.2 and Annex VI 1.1.2.1.2. */
class SeverestTest {
    private static Assigned of(String name, String category, String code, String due) {
        return new Assigned(new HazardClass(name, category, code), Assigned.Ground.SPECIFIC_LIMIT, OptionalDouble.of(3), List.of(due), "clause",
                new Provenance("invented", Confidence.READ));
    }

    private static List<String> codes(Severest severest) {
        return severest.all().stream().map(a -> a.hazard().toString()).toList();
    }

    /** Corrosion 1A before 1B before 1C before irritation 2, in whatever order they come. */
    @Test
    void theWorseCategoryStays() {
        Assigned[] falling = {of("Skin Corr.", "1A", "H314", "a"), of("Skin Corr.", "1B", "H314", "b"), of("Skin Corr.", "1C", "H314", "c"),
            of("Skin Irrit.", "2", "H315", "d")};
        for (int i = 0; i < falling.length; i++) {
            for (int k = i + 1; k < falling.length; k++) {
                for (boolean turned : new boolean[] {false, true}) {
                    Severest severest = new Severest();
                    severest.add(turned ? falling[k] : falling[i]);
                    severest.add(turned ? falling[i] : falling[k]);
                    assertEquals(List.of(falling[i]), severest.all());
                }
            }
        }
    }

    /** Skin and eyes are two dangers, and both stay, in the order of their statements. */
    @Test
    void otherDangersStayBeside() {
        Severest severest = new Severest();
        assertTrue(severest.isEmpty());
        severest.add(of("Eye Irrit.", "2", "H319", "a"));
        severest.add(of("Skin Irrit.", "2", "H315", "a"));
        assertEquals(List.of("Skin Irrit. 2 H315", "Eye Irrit. 2 H319"), codes(severest));
        assertEquals("H319", severest.of(Endpoint.EYE).orElseThrow().hazard().code());
        assertTrue(!severest.isEmpty() && severest.of(Endpoint.AQUATIC_ACUTE).isEmpty());
    }

    /** Two statements of one category are joined to the one that says both. */
    @ParameterizedTest
    @CsvSource({"H360F,H360D,H360FD", "H360F,H360F,H360F", "H360Fd,H360D,H360FD", "H360Df,H360F,H360FD", "H360D,H360Df,H360Df", "H360F,H360Fd,H360Fd", "H360,H360D,H360",
        "H360Fd,H360Df,H360FD", "H360FD,H360F,H360FD", "H361f,H361d,H361fd", "H361d,H361d,H361d", "H361,H361fd,H361", "H361fd,H361f,H361fd", "H350i,H350,H350"})
    void statementsOfOneCategoryAreJoined(String one, String other, String both) {
        boolean cancer = one.startsWith("H350");
        String category = one.startsWith("H361") ? "2" : "1B";
        for (boolean turned : new boolean[] {false, true}) {
            Severest severest = new Severest();
            severest.add(of(cancer ? "Carc." : "Repr.", category, turned ? other : one, "a"));
            severest.add(of(cancer ? "Carc." : "Repr.", category, turned ? one : other, "b"));
            assertEquals(1, severest.all().size());
            Assigned kept = severest.all().get(0);
            assertEquals(both, kept.hazard().code());
            assertEquals(category, kept.hazard().category());
        }
    }

    /** Where two substances bring in the two halves, both are named, each once. */
    @Test
    void whoBringsAHalfInIsNamed() {
        Severest severest = new Severest();
        severest.add(of("Repr.", "1B", "H360F", "a"));
        severest.add(of("Repr.", "1B", "H360D", "b"));
        assertEquals(List.of("a", "b"), severest.all().get(0).due());
        Severest same = new Severest();
        same.add(of("Repr.", "1B", "H360F", "a"));
        same.add(of("Repr.", "1B", "H360D", "a"));
        assertEquals(List.of("a"), same.all().get(0).due());
    }
}
