package tarewright.procedure.expression;

import java.util.Map;
import tarewright.procedure.syntax.Fields;
import tarewright.text.Span;

/** Cuts a formula into tokens, one at a time, so that nothing is read behind the first trouble. */
final class Lexer {
    private static final Map<Character, Operator> SIGNS = Map.ofEntries(
            Map.entry('+', Operator.ADD),
            Map.entry('-', Operator.SUBTRACT), Map.entry('\u2212', Operator.SUBTRACT), Map.entry('\u2013', Operator.SUBTRACT),
            Map.entry('*', Operator.MULTIPLY), Map.entry('\u00D7', Operator.MULTIPLY), Map.entry('\u00B7', Operator.MULTIPLY),
            Map.entry('\u22C5', Operator.MULTIPLY),
            Map.entry('/', Operator.DIVIDE), Map.entry('\u00F7', Operator.DIVIDE), Map.entry('\u2215', Operator.DIVIDE),
            Map.entry('^', Operator.RAISE));

    private final Fields.Piece piece;
    private final String text;
    private int at;
    private boolean exponent;

    Lexer(Fields.Piece piece) {
        this.piece = piece;
        this.text = piece.text();
    }

    Token next() {
        at = Letters.skipBlanks(text, at);
        Token token = token();
        at = token.to();
        boolean caret = token instanceof Token.Sign sign && sign.operator() == Operator.RAISE;
        boolean minus = token instanceof Token.Sign sign && sign.operator() == Operator.SUBTRACT;
        exponent = caret || exponent && minus;
        return token;
    }

    private Token token() {
        if (at >= text.length()) {
            return new Token.End(at, at);
        }
        char c = text.charAt(at);
        if (NumberToken.startsAt(text, at)) {
            return NumberToken.read(piece, at, exponent);
        }
        if (NameReader.startsAt(text, at)) {
            return NameReader.read(text, at);
        }
        if (SIGNS.containsKey(c)) {
            return new Token.Sign(SIGNS.get(c), at, at + 1);
        }
        return switch (c) {
            case '(' -> new Token.Open(at, at + 1);
            case ')' -> new Token.Close(at, at + 1);
            case '{' -> braces();
            default -> stray();
        };
    }

    private Token braces() {
        int close = text.indexOf('}', at);
        if (close < 0) {
            return stray();
        }
        Span span = piece.span().part(at, close + 1);
        String name = Letters.shortened(text.substring(at + 1, close).strip());
        return new Token.Bad(new FormulaFinding.BracesInFormula(name, span), at, close + 1);
    }

    private Token stray() {
        int end = at + Character.charCount(text.codePointAt(at));
        return new Token.Bad(new FormulaFinding.StrayCharacter(text.substring(at, end), piece.span().part(at, end)), at, end);
    }
}
