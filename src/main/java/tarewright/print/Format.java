package tarewright.print;

import java.util.Locale;

/** What kind of file a document becomes. */
public enum Format {
    /** For paper: every document. */
    PDF,
    /** For a browser and a screen reader: every document. */
    HTML,
    /** To be changed by hand: the handout alone. */
    DOCX;

    /** The word on the command line, and how the file's name ends. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
