package tarewright.procedure.expression;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.procedure.syntax.Fields;

/**
 * Reads the formulas of {@code is} and {@code value}: arithmetic with {@code + - * / ^} and brackets over quantities with
 * units and references without braces. Any text at all is read in bounded time.
 */
public final class Expressions {
    static final int MOST_CHARACTERS = 2000;
    private static final int DEEPEST = 40;

    private Expressions() {
    }

    /** The formula, or the first thing that is wrong with it. */
    public static Found<Optional<Expression>> parse(Fields.Piece piece) {
        if (piece.text().isBlank()) {
            return failed(new FormulaFinding.Missing(piece.span()));
        }
        if (piece.text().length() > MOST_CHARACTERS) {
            return failed(new FormulaFinding.TooDeep(MOST_CHARACTERS, DEEPEST, piece.span()));
        }
        Parser parser = new Parser(piece, DEEPEST);
        Optional<Expression> expression = parser.trouble().isPresent() ? Optional.empty() : parser.whole();
        return new Found<>(expression, parser.trouble().stream().toList());
    }

    private static Found<Optional<Expression>> failed(Finding finding) {
        return new Found<>(Optional.empty(), List.of(finding));
    }
}
