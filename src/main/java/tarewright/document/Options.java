package tarewright.document;

import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import tarewright.text.Digest;

/**
 * The order in which choices are printed: from their words alone, so that it is always the same and tells nothing of which one
 * is right.
 */
final class Options {
    private Options() {
    }

    static List<String> printed(List<String> rightFirst) {
        return rightFirst.stream().sorted(Comparator.comparing(Options::hash).thenComparing(Comparator.naturalOrder())).toList();
    }

    private static String hash(String option) {
        return HexFormat.of().formatHex(Digest.of(option.strip()));
    }
}
