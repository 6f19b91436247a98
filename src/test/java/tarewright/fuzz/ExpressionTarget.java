package tarewright.fuzz;

import tarewright.procedure.expression.Expressions;
import tarewright.procedure.syntax.Fields;
import tarewright.text.SourceText;

/** Any text as what stands behind `is:`. */
public final class ExpressionTarget {
    private ExpressionTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        SourceText text = new SourceText("fuzz.md", Held.text(bytes));
        Fields.Piece piece = new Fields.Piece(text.content(), text.span(0, text.content().length()));
        Held.soon(() -> Held.within(Expressions.parse(piece).findings(), text));
    }
}
