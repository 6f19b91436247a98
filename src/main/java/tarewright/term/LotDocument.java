package tarewright.term;

import tarewright.document.Sheet;
import tarewright.print.Printed;

/**
 * A document of a lot.
 *
 * @param letter of the version of the questions' numbers; empty where there is one
 * @param large whether in large print
 * @param file its name within the lot's folder
 */
public record LotDocument(Sheet.Kind kind, String letter, boolean large, String file, Printed printed) {
    /** What it is, as its file's name says it: {@code handout-B-large}. */
    public String word() {
        return word(kind, letter) + (large ? "-large" : "");
    }

    static String word(Sheet.Kind kind, String letter) {
        return kind.word() + (letter.isEmpty() ? "" : "-" + letter);
    }
}
