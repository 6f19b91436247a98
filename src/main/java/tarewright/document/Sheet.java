package tarewright.document;

import java.util.List;

/**
 * One document, ready for a template.
 *
 * @param kind which document
 * @param title the procedure's title, the level 1 heading
 * @param kindName what kind of document it is, in the reader's language
 * @param code the procedure's short code, for the footer; may be empty
 * @param version the short version code, for the footer
 * @param language BCP 47
 * @param paper the page
 * @param footer words for the footer, such as the school's name; may be empty
 * @param pageWord the words around the page numbers: {@code page}, {@code of}
 * @param size of the print
 * @param letter of the version of the questions' numbers that it is; empty where there is one for all
 * @param pieces the content
 */
public record Sheet(Kind kind, String title, String kindName, String code, String version, String language, Paper paper,
        String footer, PageWords pageWord, Size size, String letter, List<Piece> pieces) {
    public Sheet {
        pieces = List.copyOf(pieces);
    }

    /** A sheet in ordinary print. */
    public Sheet(Kind kind, String title, String kindName, String code, String version, String language, Paper paper,
            String footer, PageWords pageWord, List<Piece> pieces) {
        this(kind, title, kindName, code, version, language, paper, footer, pageWord, Size.USUAL, "", pieces);
    }

    /** The same sheet in large print. @param largeName its name, such as {@code Student handout, large print} */
    public Sheet large(String largeName) {
        return new Sheet(kind, title, largeName, code, version, language, paper, footer, pageWord, Size.LARGE, letter, pieces);
    }

    /** The same sheet for a whole term: under the term's name, without a procedure's own code. */
    Sheet headed(String term) {
        return new Sheet(kind, term, kindName, "", version, language, paper, footer, pageWord, size, letter, pieces);
    }

    /** The same sheet as one of several versions. @param named its title with the version in it, which stands at the foot of each page too */
    Sheet lettered(String ofVersion, String named) {
        return new Sheet(kind, named, kindName, code, version, language, paper, footer, pageWord, size, ofVersion, pieces);
    }

    /** Ordinary print, or 18 points and more. */
    public enum Size { USUAL, LARGE }

    public enum Kind {
        HANDOUT, KEY, SAFETY, PREP, LABELS, ORDER, MISSED, MISSED_KEY;

        /** The word in file names and on the command line. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    public enum Paper { A4, LETTER }

    public record PageWords(String page, String of) {
    }
}
