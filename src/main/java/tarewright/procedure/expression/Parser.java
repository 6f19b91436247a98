package tarewright.procedure.expression;

import java.util.Optional;
import java.util.function.Supplier;
import tarewright.finding.Finding;
import tarewright.procedure.syntax.Fields;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.text.Span;

/**
 * Reads a formula by precedence: sums of products of signed powers. Powers group from the right and bind closer than a sign
 * in front, so that −2^2 is −4. Reading stops at the first trouble.
 */
final class Parser {
    private final Fields.Piece piece;
    private final Lexer lexer;
    private final int deepest;
    private Token token;
    private int depth;
    private Optional<Finding> trouble = Optional.empty();

    Parser(Fields.Piece piece, int deepest) {
        this.piece = piece;
        this.lexer = new Lexer(piece);
        this.deepest = deepest;
        this.token = lexer.next();
        noteBad();
    }

    /** An expression and the place that it takes with its brackets, by offsets. */
    private record Placed(Expression expression, int from, int to) {
    }

    Optional<Finding> trouble() {
        return trouble;
    }

    /** The whole text as one expression; empty if there is a {@link #trouble()}. */
    Optional<Expression> whole() {
        Optional<Placed> placed = sum();
        if (placed.isPresent()) {
            if (token instanceof Token.Close) {
                fail(new FormulaFinding.BracketNotOpened(here()));
            } else if (!(token instanceof Token.End)) {
                sideBySide(placed.get());
            }
        }
        return trouble.isPresent() ? Optional.empty() : placed.map(Placed::expression);
    }

    private Optional<Placed> sum() {
        Optional<Placed> left = product();
        while (left.isPresent() && (at(Operator.ADD) || at(Operator.SUBTRACT))) {
            left = joined(left.get(), this::product);
        }
        return left;
    }

    private Optional<Placed> product() {
        Optional<Placed> left = signed();
        while (left.isPresent() && (at(Operator.MULTIPLY) || at(Operator.DIVIDE))) {
            left = joined(left.get(), this::signed);
        }
        return left;
    }

    private Optional<Placed> signed() {
        if (!(token instanceof Token.Sign sign) || sign.operator() != Operator.SUBTRACT && sign.operator() != Operator.ADD) {
            return power();
        }
        return deeper(() -> {
            advance();
            Optional<Placed> below = belowZero(sign);
            if (below.isPresent() || trouble.isPresent()) {
                return below;
            }
            return operand(sign, this::signed).map(of -> sign.operator() == Operator.ADD
                    ? new Placed(of.expression(), sign.from(), of.to())
                    : new Placed(new Expression.Negated(of.expression(), span(sign.from(), of.to())), sign.from(), of.to()));
        });
    }

    /** {@code -5 °C} is a place on the scale below its zero, not the negative of 5 °C, which is 278 K. */
    private Optional<Placed> belowZero(Token.Sign sign) {
        if (sign.operator() != Operator.SUBTRACT || !(token instanceof Token.Number number) || number.typed().unit().fromZero()) {
            return Optional.empty();
        }
        String typed = "-" + piece.text().substring(number.from(), number.to());
        QuantityResult result = QuantityText.parse(typed);
        if (result instanceof QuantityResult.Bad bad) {
            fail(QuantityFinding.in(span(sign.from(), number.to()), bad.trouble()));
            return Optional.empty();
        }
        advance();
        return Optional.of(new Placed(new Expression.Quantity(((QuantityResult.Ok) result).typed(),
                span(sign.from(), number.to())), sign.from(), number.to()));
    }

    private Optional<Placed> power() {
        Optional<Placed> base = primary();
        return base.isPresent() && at(Operator.RAISE) ? deeper(() -> joined(base.get(), this::signed)) : base;
    }

    private Optional<Placed> primary() {
        Token first = token;
        if (first instanceof Token.Number number) {
            advance();
            return placed(new Expression.Quantity(number.typed(), span(number.from(), number.to())), number);
        }
        if (first instanceof Token.Name name) {
            return name(name);
        }
        if (first instanceof Token.Open open) {
            return deeper(() -> bracketed(open));
        }
        if (first instanceof Token.Sign sign) {
            fail(new FormulaFinding.OperandMissing(text(sign), span(sign.from(), sign.to())));
        } else if (first instanceof Token.Close) {
            fail(new FormulaFinding.BracketNotOpened(here()));
        } else {
            fail(new FormulaFinding.Missing(here()));
        }
        return Optional.empty();
    }

    private Optional<Placed> bracketed(Token.Open open) {
        advance();
        if (token instanceof Token.Close) {
            fail(new FormulaFinding.OperandMissing("(", span(open.from(), token.to())));
        }
        Optional<Placed> inside = operand(open, this::sum);
        if (inside.isEmpty()) {
            return inside;
        }
        if (token instanceof Token.Close close) {
            advance();
            return Optional.of(new Placed(inside.get().expression(), open.from(), close.to()));
        }
        if (token instanceof Token.End) {
            fail(new FormulaFinding.BracketNotClosed(span(open.from(), open.to())));
        } else {
            sideBySide(inside.get());
        }
        return Optional.empty();
    }

    private Optional<Placed> name(Token.Name name) {
        advance();
        Optional<Selector> selector = Selector.startOf(name.text());
        if (selector.isEmpty()) {
            return placed(new Expression.Named(name.text(), span(name.from(), name.to())), name);
        }
        String of = name.text().substring(selector.get().words().length()).strip();
        if (of.isEmpty()) {
            fail(new FormulaFinding.OperandMissing(name.text(), span(name.from(), name.to())));
            return Optional.empty();
        }
        int start = Letters.skipBlanks(piece.text(), piece.text().indexOf("of", name.from()) + 2);
        Expression.Named named = new Expression.Named(of, span(start, name.to()));
        return placed(new Expression.Selected(selector.get(), named, span(name.from(), name.to())), name);
    }

    private Optional<Placed> joined(Placed left, Supplier<Optional<Placed>> behind) {
        Token.Sign sign = (Token.Sign) token;
        advance();
        return operand(sign, behind).map(right -> new Placed(new Expression.Binary(sign.operator(), left.expression(),
                right.expression(), span(left.from(), right.to())), left.from(), right.to()));
    }

    /** What stands behind a sign or a bracket; a finding at that sign if nothing does. */
    private Optional<Placed> operand(Token before, Supplier<Optional<Placed>> read) {
        boolean closed = token instanceof Token.Close && !(before instanceof Token.Open);
        if (trouble.isEmpty() && (token instanceof Token.End || closed)) {
            fail(new FormulaFinding.OperandMissing(text(before), span(before.from(), before.to())));
        }
        return trouble.isPresent() ? Optional.empty() : read.get();
    }

    private Optional<Placed> deeper(Supplier<Optional<Placed>> read) {
        if (++depth > deepest) {
            fail(new FormulaFinding.TooDeep(Expressions.MOST_CHARACTERS, deepest, here()));
            return Optional.empty();
        }
        Optional<Placed> result = read.get();
        depth--;
        return result;
    }

    private void sideBySide(Placed left) {
        if (trouble.isPresent()) {
            return;
        }
        String before = piece.text().substring(left.from(), left.to());
        boolean call = token instanceof Token.Open && left.expression() instanceof Expression.Named;
        if (call && Functions.isOne(((Expression.Named) left.expression()).text())) {
            String name = ((Expression.Named) left.expression()).text();
            fail(new FormulaFinding.NoFunction(name, Functions.instead(name), span(left.from(), left.to())));
            return;
        }
        String behind = token instanceof Token.Open ? "(…)" : text(token);
        Optional<String> instead = before.length() + behind.length() > 60 ? Optional.empty()
                : Optional.of(before + " * " + behind);
        fail(new FormulaFinding.OperatorMissing(Letters.shortened(text(token)), instead, here()));
    }

    private boolean at(Operator operator) {
        return token instanceof Token.Sign sign && sign.operator() == operator;
    }

    private void advance() {
        if (trouble.isEmpty()) {
            token = lexer.next();
            noteBad();
        }
    }

    private void noteBad() {
        if (token instanceof Token.Bad bad) {
            fail(bad.finding());
        }
    }

    private void fail(Finding finding) {
        if (trouble.isEmpty()) {
            trouble = Optional.of(finding);
        }
    }

    private Optional<Placed> placed(Expression expression, Token token) {
        return Optional.of(new Placed(expression, token.from(), token.to()));
    }

    private String text(Token of) {
        return piece.text().substring(of.from(), of.to());
    }

    private Span here() {
        return span(token.from(), token.to());
    }

    private Span span(int from, int to) {
        return piece.span().part(from, to);
    }
}
