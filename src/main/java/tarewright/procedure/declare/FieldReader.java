package tarewright.procedure.declare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.FormulaTrouble;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.expression.Expressions;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Field;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.quantity.Dimension;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.QuantityTrouble;
import tarewright.quantity.Strength;
import tarewright.quantity.StrengthResult;
import tarewright.quantity.StrengthText;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;
import tarewright.tables.ReferenceTables;
import tarewright.text.Span;
import tarewright.text.Spelling;

/** Reads fields to typed values and notes what is wrong with them. One is made for each file. */
final class FieldReader {
    private final ReferenceTables tables;
    private final List<Finding> findings = new ArrayList<>();

    FieldReader(ReferenceTables tables) {
        this.tables = tables;
    }

    List<Finding> findings() {
        return findings;
    }

    void note(Finding finding) {
        findings.add(finding);
    }

    /** Notes every key that the type does not have. */
    void checkKeys(String type, Fields fields) {
        List<String> known = Vocabulary.of(type);
        for (Field field : fields.all()) {
            if (known.contains(field.key())) {
                continue;
            }
            List<String> others = Vocabulary.typesWith(field.key());
            if (!others.isEmpty() && !type.startsWith(Vocabulary.FRONT)) {
                note(new DeclareFinding.FieldOfOtherType(type, field.key(), others, field.keySpan()));
            } else {
                note(new DeclareFinding.UnknownField(type, field.key(), Spelling.near(field.key(), known), known, field.keySpan()));
            }
        }
    }

    /** The value of a field as one piece on its first line, empty if there is no such field; a field without value is a finding. */
    Optional<Piece> piece(Fields fields, String key) {
        Optional<Field> field = fields.get(key);
        if (field.isPresent() && field.get().lines().isEmpty()) {
            note(new DeclareFinding.ValueMissing(key, field.get().keySpan()));
            return Optional.empty();
        }
        return field.map(f -> f.lines().size() == 1 ? f.lines().get(0) : new Piece(f.value(), f.valueSpan()));
    }

    Optional<String> words(Fields fields, String key) {
        return piece(fields, key).map(Piece::text);
    }

    Optional<At<String>> name(Fields fields, String key) {
        return piece(fields, key).map(p -> new At<>(p.text().strip().replaceAll("\\s+", " "), p.span()));
    }

    /** A quantity of a dimension. */
    Optional<At<Typed>> quantity(Fields fields, String key, Dimension wanted) {
        return piece(fields, key).flatMap(p -> quantity(p, wanted));
    }

    Optional<At<Typed>> quantity(Piece piece, Dimension wanted) {
        return single(take(piece, QuantityText.parse(piece.text(), wanted)));
    }

    /** A quantity of whatever dimension. */
    Optional<At<Typed>> quantity(Piece piece) {
        return single(take(piece, QuantityText.parse(piece.text())));
    }

    /** A range between positive ends, or one positive quantity. */
    Optional<At<Typed>> window(Fields fields, String key, Dimension wanted) {
        return piece(fields, key).flatMap(p -> aboveZero(key, take(p, QuantityText.parse(p.text(), wanted))));
    }

    /** The one value that a figure is worked from: of a range none could be chosen. */
    private Optional<At<Typed>> single(Optional<At<Typed>> read) {
        return read.filter(q -> {
            q.value().upTo().ifPresent(to -> note(range(q.value(), q.at())));
            return q.value().upTo().isEmpty();
        });
    }

    private static DeclareFinding range(Typed typed, Span at) {
        BigDecimal from = BigDecimal.valueOf(typed.value());
        BigDecimal to = BigDecimal.valueOf(typed.upTo().getAsDouble());
        BigDecimal two = BigDecimal.valueOf(2);
        String unit = typed.unit().symbol().isEmpty() ? "" : " " + typed.unit().symbol();
        return new DeclareFinding.RangeHere(at.text(), plain(from.add(to).divide(two)) + " ± " + plain(to.subtract(from).divide(two)) + unit, at);
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    /** A quantity above zero. */
    Optional<At<Typed>> positive(Fields fields, String key, Dimension wanted) {
        return aboveZero(key, quantity(fields, key, wanted));
    }

    private Optional<At<Typed>> aboveZero(String key, Optional<At<Typed>> read) {
        return read.filter(q -> {
            boolean positive = q.value().value() > 0;
            if (!positive) {
                note(new DeclareFinding.NotAboveZero(key, q.at().text(), q.at()));
            }
            return positive;
        });
    }

    /** A fraction of the whole, in per cent or as a number: above 0, at most 1. */
    Optional<At<Typed>> fraction(Fields fields, String key) {
        return positive(fields, key, Dimension.NONE).filter(q -> {
            boolean part = q.value().si() <= 1;
            if (!part) {
                note(new DeclareFinding.PercentOver100(key, q.at().text(), q.at()));
            }
            return part;
        });
    }

    /** A fraction that may be nothing: 0 to 1. */
    Optional<At<Typed>> share(Fields fields, String key) {
        return quantity(fields, key, Dimension.NONE).filter(q -> {
            if (q.value().si() > 1) {
                note(new DeclareFinding.PercentOver100(key, q.at().text(), q.at()));
            } else if (q.value().si() < 0) {
                note(new DeclareFinding.BelowZero(key, q.at().text(), q.at()));
            }
            return q.value().si() >= 0 && q.value().si() <= 1;
        });
    }

    Optional<At<Typed>> take(Piece piece, QuantityResult result) {
        if (result instanceof QuantityResult.Bad bad) {
            trouble(bad.trouble(), piece.span());
            return Optional.empty();
        }
        return Optional.of(new At<>(((QuantityResult.Ok) result).typed(), piece.span()));
    }

    private void trouble(QuantityTrouble trouble, Span in) {
        note(new TroubleFinding(trouble.id(), in.part(trouble.from(), trouble.to()), trouble));
    }

    Optional<At<Strength>> strength(Fields fields, String key) {
        return piece(fields, key).flatMap(this::strength);
    }

    Optional<At<Strength>> strength(Piece piece) {
        StrengthResult result = StrengthText.parse(piece.text());
        if (result instanceof StrengthResult.Bad bad) {
            trouble(bad.trouble(), piece.span());
            return Optional.empty();
        }
        Strength strength = ((StrengthResult.Ok) result).strength();
        if (strength.typed().upTo().isPresent()) {
            note(range(strength.typed(), piece.span()));
            return Optional.empty();
        }
        return Optional.of(new At<>(strength, piece.span()));
    }

    Optional<Unit> unit(Fields fields, String key) {
        return piece(fields, key).flatMap(p -> {
            UnitResult result = Units.parse(p.text().strip());
            if (result instanceof UnitResult.Bad bad) {
                trouble(bad.trouble(), p.span());
                return Optional.empty();
            }
            return Optional.of(((UnitResult.Ok) result).unit());
        });
    }

    OptionalInt whole(Fields fields, String key, int least, int most) {
        Optional<Piece> piece = piece(fields, key);
        if (piece.isEmpty()) {
            return OptionalInt.empty();
        }
        String text = piece.get().text().strip();
        if (text.matches("[0-9]{1,9}") && Integer.parseInt(text) >= least && Integer.parseInt(text) <= most) {
            return OptionalInt.of(Integer.parseInt(text));
        }
        note(new DeclareFinding.NotAWholeNumber(key, text, least, most, piece.get().span()));
        return OptionalInt.empty();
    }

    /** {@code yes} or {@code no}. */
    Optional<Boolean> yes(Fields fields, String key) {
        return oneOf(fields, key, List.of("yes", "no")).map("yes"::equals);
    }

    /** One of certain words. */
    Optional<String> oneOf(Fields fields, String key, List<String> known) {
        return piece(fields, key).flatMap(p -> {
            String word = p.text().strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
            if (known.contains(word)) {
                return Optional.of(word);
            }
            note(new DeclareFinding.UnknownWord(key, p.text(), Spelling.near(word, known), known, p.span()));
            return Optional.empty();
        });
    }

    Optional<At<Matter>> matter(Fields fields, String key) {
        return piece(fields, key).flatMap(this::matter);
    }

    /** A substance that stands in a certain state: the gas HCl is another row of the table than its solution. */
    Optional<At<Matter>> matter(Fields fields, String key, State state) {
        return matter(fields, key).map(at -> tables.substances().named(at.value().written()).isPresent() ? at
                : tables.substances().of(at.value().formula(), state)
                .map(s -> new At<>(new Matter(at.value().written(), at.value().formula(), Optional.of(s)), at.at())).orElse(at));
    }

    /** Something of the table that has a name and no formula. */
    Optional<At<Substance>> mixture(Fields fields, String key) {
        return fields.get(key).filter(f -> f.lines().size() == 1).map(f -> f.lines().get(0))
                .flatMap(p -> tables.substances().named(p.text().strip()).filter(s -> s.formula().isEmpty()).map(s -> new At<>(s, p.span())));
    }

    /** A name from the table of substances, or a formula. */
    Optional<At<Matter>> matter(Piece piece) {
        String text = piece.text().strip();
        Optional<Substance> named = tables.substances().named(text);
        if (named.isPresent() && named.get().formula().isPresent()) {
            return Optional.of(new At<>(new Matter(text, named.get().formula().get(), named), piece.span()));
        }
        FormulaResult result = Formula.parse(text);
        if (result instanceof FormulaResult.Ok ok) {
            return Optional.of(new At<>(new Matter(text, ok.formula(), tables.substances().of(ok.formula()).stream().findFirst()), piece.span()));
        }
        if (named.isPresent()) {
            note(new DeclareFinding.NoFormula(text, named.get().note(), piece.span()));
            return Optional.empty();
        }
        FormulaTrouble trouble = ((FormulaResult.Bad) result).trouble();
        boolean meantAsName = text.matches(".*\\s.*|\\p{Ll}{4,}.*|\\p{Lu}\\p{Ll}{3,}.*");
        if (meantAsName && !isSubstanceInOtherCapitals(trouble)) {
            note(new DeclareFinding.UnknownSubstance(text, Spelling.near(text, tables.substances().names()), piece.span()));
        } else {
            note(new TroubleFinding(trouble.id(), piece.span().part(trouble.from(), trouble.to()), trouble));
        }
        return Optional.empty();
    }

    /** {@code nacl}: other capitals make of it the formula of a substance in the table. */
    private boolean isSubstanceInOtherCapitals(FormulaTrouble trouble) {
        return trouble instanceof FormulaTrouble.UnknownElement unknown && unknown.formulas().stream()
                .anyMatch(f -> Formula.parse(f) instanceof FormulaResult.Ok ok && !tables.substances().of(ok.formula()).isEmpty());
    }

    Optional<At<Expression>> expression(Fields fields, String key) {
        return piece(fields, key).flatMap(p -> {
            Found<Optional<Expression>> found = Expressions.parse(p);
            findings.addAll(found.findings());
            return found.value().map(e -> new At<>(e, p.span()));
        });
    }

    /** {@code 3 figures}, {@code 2 decimals}, or a quantity whose last digit says it ({@code 0.01}). */
    Precision precision(Fields fields, String key) {
        Optional<Piece> piece = piece(fields, key);
        if (piece.isEmpty()) {
            return new Precision.Justified();
        }
        String text = piece.get().text().strip();
        java.util.regex.Matcher matcher = java.util.regex.Pattern.compile("([0-9]{1,2})\\s+(significant figures?|figures?|decimals?|decimal places?)").matcher(text);
        if (matcher.matches()) {
            int count = Integer.parseInt(matcher.group(1));
            if (matcher.group(2).startsWith("d") && count <= 10) {
                return new Precision.Decimals(count);
            }
            if (!matcher.group(2).startsWith("d") && count >= 1 && count <= 12) {
                return new Precision.Figures(count);
            }
        }
        if (text.matches("(1|0\\.0{0,9}1)")) {
            return new Precision.Decimals(text.length() == 1 ? 0 : text.length() - 2);
        }
        note(new DeclareFinding.BadShape(key, text, "3 figures", piece.get().span()));
        return new Precision.Justified();
    }
}
