package tarewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {
    /**
     * kitten/sitting and saturday/sunday: the examples of Wagner and Fischer's algorithm as usually taught (from memory);
     * CA/ABC: the example that tells the restricted distance, 3, from the unrestricted one, 2 (from memory).
     */
    @ParameterizedTest
    @CsvSource({"kitten,sitting,3", "saturday,sunday,3", "CA,ABC,3", "acid,acdi,1", "'',abc,3", "same,same,0", "mL,ml,1",
            "a𝛥b,ab,1"})
    void distances(String one, String other, int distance) {
        assertEquals(distance, Spelling.distance(one, other));
        assertEquals(distance, Spelling.distance(other, one));
    }

    @Test
    void isAMeasureOnRandomWords() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 3000; i++) {
            String a = word(random);
            String b = word(random);
            int distance = Spelling.distance(a, b);
            assertEquals(a.equals(b), distance == 0);
            assertEquals(distance, Spelling.distance(b, a));
            assertEquals(plain(a, b, a.length(), b.length()), distance);
        }
    }

    /** The recurrence as it is defined, without a table. */
    private static int plain(String a, String b, int i, int j) {
        if (i == 0 || j == 0) {
            return i + j;
        }
        int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(plain(a, b, i - 1, j - 1) + cost, Math.min(plain(a, b, i - 1, j), plain(a, b, i, j - 1)) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, plain(a, b, i - 2, j - 2) + 1) : least;
    }

    private static String word(SplittableRandom random) {
        StringBuilder word = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            word.append("abc".charAt(random.nextInt(3)));
        }
        return word.toString();
    }

    @Test
    void theNearestComesFirstAndAtMostThree() {
        assertEquals(List.of("solution"), Spelling.near("soluton", List.of("solid", "solution", "liquid")));
        assertEquals(List.of("cat", "bat", "hat"), Spelling.near("cat", List.of("bat", "hat", "cat", "rat", "mat")));
        assertEquals(List.of(), Spelling.near("python", List.of("solution", "caution", "key")));
    }

    @Test
    void theReachGrowsWithTheWord() {
        assertEquals(List.of(), Spelling.near("g", List.of("h", "mg")));
        assertEquals(List.of("key"), Spelling.near("kay", List.of("key")));
        assertEquals(List.of(), Spelling.near("kax", List.of("key")));
        assertEquals(List.of("measure with"), Spelling.near("mesure wiht", List.of("measure with")));
        assertEquals(List.of(), Spelling.near("a".repeat(10_000), List.of("a".repeat(9_999))));
    }

    @Test
    void caseIsALetterReplacedUnlessItCarriesNoMeaning() {
        assertEquals(List.of("mol"), Spelling.near("Mol", List.of("mol")));
        assertEquals(List.of(), Spelling.near("MOL", List.of("mol")));
        assertEquals(List.of("solution"), Spelling.nearInAnyCase("SOLUTON", List.of("solution")));
        assertEquals(List.of("Mol", "mol"), Spelling.near("Mol", List.of("mol", "Mol")));
    }
}
