package tarewright.fuzz;

import tarewright.procedure.declare.DeclarationReader;
import tarewright.procedure.declare.TermReader;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** Any text between the lines of front matter, of a procedure and of a term. */
public final class FrontTarget {
    private static final ReferenceTables TABLES = Tables.load();

    private FrontTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        SourceText text = new SourceText("fuzz.md", "---\n" + Held.text(bytes) + "\n---\n\nSome words.\n");
        Held.soon(() -> {
            SourceFile source = Reader.read(text).value();
            Held.within(DeclarationReader.read(source, TABLES).findings(), source.text());
            Held.within(TermReader.read(source, TABLES).findings(), source.text());
        });
    }
}
