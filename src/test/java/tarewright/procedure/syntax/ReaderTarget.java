package tarewright.procedure.syntax;

import tarewright.fuzz.Held;
import tarewright.text.SourceText;

/** Any text as a procedure's file: the tree says what stands at each place. */
public final class ReaderTarget {
    private ReaderTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        SourceText text = new SourceText("fuzz.md", Held.text(bytes));
        Held.soon(() -> PlacesLaw.holds(Reader.read(text)));
    }
}
