package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The optimal string alignment distance; its textbook examples (Wikipedia, "Levenshtein distance" and "Damerau-Levenshtein distance", from memory). */
class LikenessTest {
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "saturday, sunday, 3", "ca, abc, 3", "ca, ac, 1", "abcd, acbd, 1", "'', abc, 3", "mol, mol, 0", "xab, xba, 1",
        "ab, xy, 2", "aab, aba, 1", "abx, bay, 2", "axb, bya, 3"})
    void distance(String a, String b, int distance) {
        assertEquals(distance, Likeness.distance(a, b));
        assertEquals(distance, Likeness.distance(b, a));
    }
}
