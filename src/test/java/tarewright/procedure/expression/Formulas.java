package tarewright.procedure.expression;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.syntax.Fields;
import tarewright.quantity.Unit;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** Formulas to try, with figures by name. */
final class Formulas implements Lookup {
    private final Map<String, Figure> figures = new LinkedHashMap<>();
    private final Map<String, List<Figure>> repeated = new LinkedHashMap<>();

    record Unknown(Span at) implements Finding {
        @Override
        public String id() {
            return "unknown-name";
        }

        @Override
        public Severity severity() {
            return Severity.ERROR;
        }
    }

    Formulas with(String name, double value, String unit, double uncertainty) {
        figures.put(name, figure(name, value, unit, uncertainty));
        return this;
    }

    Formulas with(String name, double value, String unit) {
        return with(name, value, unit, 0);
    }

    Formulas with(String name, List<Figure> readings) {
        repeated.put(name, readings);
        return this;
    }

    Figure get(String name) {
        return figures.get(name);
    }

    static Figure figure(String name, double value, String unit, double uncertainty) {
        Unit in = unit(unit);
        return Figure.given(Symbol.words(name), in, in.toSi(value), new Origin.Author()).uncertain(uncertainty * in.factor());
    }

    static Unit unit(String symbol) {
        return symbol.isEmpty() ? Unit.ONE : ((UnitResult.Ok) Units.parse(symbol)).unit();
    }

    static Fields.Piece piece(String text) {
        SourceText source = new SourceText("test.md", "is: " + text + "\n");
        return new Fields.Piece(text, source.span(4, 4 + text.length()));
    }

    static Expression parse(String text) {
        Found<Optional<Expression>> found = Expressions.parse(piece(text));
        return found.value().orElseThrow(() -> new AssertionError(text + ": " + found.findings()));
    }

    static Finding trouble(String text) {
        Found<Optional<Expression>> found = Expressions.parse(piece(text));
        if (found.value().isPresent() || found.findings().size() != 1) {
            throw new AssertionError(text + ": " + found);
        }
        return found.findings().get(0);
    }

    Found<Optional<Figure>> evaluate(String text, Optional<Unit> unit) {
        return Evaluator.evaluate(parse(text), Symbol.words("result"), unit, this);
    }

    Figure value(String text) {
        Found<Optional<Figure>> found = evaluate(text, Optional.empty());
        return found.value().orElseThrow(() -> new AssertionError(text + ": " + found.findings()));
    }

    Figure value(String text, String unit) {
        Found<Optional<Figure>> found = evaluate(text, Optional.of(unit(unit)));
        return found.value().orElseThrow(() -> new AssertionError(text + ": " + found.findings()));
    }

    Finding finding(String text, String unit) {
        Found<Optional<Figure>> found = evaluate(text, unit.isEmpty() ? Optional.empty() : Optional.of(unit(unit)));
        if (found.value().isPresent() || found.findings().size() != 1) {
            throw new AssertionError(text + ": " + found);
        }
        return found.findings().get(0);
    }

    @Override
    public Optional<Figure> figure(Expression.Named named, Consumer<Finding> findings) {
        Optional<Figure> figure = Optional.ofNullable(figures.get(named.text()));
        if (figure.isEmpty()) {
            findings.accept(new Unknown(named.span()));
        }
        return figure;
    }

    @Override
    public List<Figure> repeated(Expression.Named named, Consumer<Finding> findings) {
        List<Figure> readings = repeated.getOrDefault(named.text(), List.of());
        if (readings.isEmpty()) {
            findings.accept(new Unknown(named.span()));
        }
        return readings;
    }
}
