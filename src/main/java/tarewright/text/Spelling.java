package tarewright.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;

/**
 * Which known words a mistyped one may have meant.
 *
 * <p>Distance is Damerau's in its restricted form (optimal string alignment): one for each letter added, left out or
 * replaced, and for two neighbours that changed places. It counts code points.
 */
public final class Spelling {
    private static final int MOST = 3;
    /** Nobody mistypes a word as long as this; a longer one is not compared, so that the time stays bounded. */
    private static final int LONGEST = 80;

    private Spelling() {
    }

    /**
     * The known words within reach of {@code word}, the nearest first, at most three; equally near ones in the order of
     * {@code known}. A letter in another case is a letter replaced, so nothing is suggested for its case alone
     * unless one letter is within reach anyway: for symbols of units and elements filter before asking.
     */
    public static List<String> near(String word, Collection<String> known) {
        return nearest(word, known, false);
    }

    /** The same where case carries no meaning, as in keys and type words: letters that differ only in case are equal. */
    public static List<String> nearInAnyCase(String word, Collection<String> known) {
        return nearest(word, known, true);
    }

    /** How many slips of the finger lie between two words, 0 if they are equal. */
    public static int distance(String one, String other) {
        int[] a = one.codePoints().toArray();
        int[] b = other.codePoints().toArray();
        int[] beforeLast = new int[b.length + 1];
        int[] last = new int[b.length + 1];
        for (int j = 0; j <= b.length; j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length; i++) {
            int[] row = new int[b.length + 1];
            row[0] = i;
            for (int j = 1; j <= b.length; j++) {
                int replaced = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.min(replaced, Math.min(last[j], row[j - 1]) + 1);
                boolean swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                if (swapped) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[b.length];
    }

    /**
     * How many slips are still taken for a mistyping: none in a single letter, one up to five letters, two up to ten,
     * then three.
     */
    private static int reach(int length) {
        return length < 2 ? 0 : length <= 5 ? 1 : length <= 10 ? 2 : 3;
    }

    private record Candidate(String word, int distance) {
    }

    private static List<String> nearest(String word, Collection<String> known, boolean fold) {
        int length = word.codePointCount(0, word.length());
        if (length > LONGEST) {
            return List.of();
        }
        List<Candidate> candidates = new ArrayList<>();
        for (String candidate : new LinkedHashSet<>(known)) {
            int its = candidate.codePointCount(0, candidate.length());
            int reach = reach(Math.min(length, its) == 1 ? 1 : Math.max(length, its));
            if (Math.abs(length - its) <= reach) {
                int distance = fold ? distance(folded(word), folded(candidate)) : distance(word, candidate);
                if (distance <= reach) {
                    candidates.add(new Candidate(candidate, distance));
                }
            }
        }
        candidates.sort(Comparator.comparingInt(Candidate::distance));
        return candidates.stream().limit(MOST).map(Candidate::word).toList();
    }

    private static String folded(String word) {
        return word.toLowerCase(Locale.ROOT);
    }
}
