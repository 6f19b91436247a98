package tarewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/** Writes a step as a formula, in symbols or with the values in their place. */
final class StepWriter {
    /** Shows 20 °C as 293.15 K, so that a reader who reckons with it comes to the same result. */
    private static final int KELVIN_DECIMALS = 2;

    private final Figure subject;
    private final boolean values;
    private final Numbers numbers;
    private final Quantities words;

    /** @param subject the figure that the line is about, whose name need not be said again */
    StepWriter(Figure subject, boolean values, Numbers numbers, Quantities words) {
        this.subject = subject;
        this.values = values;
        this.numbers = numbers;
        this.words = words;
    }

    /** Empty for a figure that was not worked out. */
    List<Worked> written(Step step) {
        if (step instanceof Step.Product product) {
            return product(product);
        }
        if (step instanceof Step.Sum sum) {
            return sum(sum);
        }
        if (step instanceof Step.Extreme extreme) {
            return List.of(new Worked.Selection(extreme.least() ? words.smallestOf() : words.largestOf(),
                    extreme.from().stream().map(f -> operand(f, subject.symbol().equals(f.symbol()), false)).toList()));
        }
        if (step instanceof Step.Relation relation) {
            List<List<Worked>> at = relation.from().stream().map(f -> List.<Worked>of(amount(f, false))).toList();
            return List.of(new Worked.Looked(words.relation(relation.name()), words.at(), at));
        }
        return List.of();
    }

    /** A figure that says nothing of itself but its own working: a sum in brackets, a quantity typed in a formula. */
    static boolean isUnnamed(Figure figure) {
        return figure.symbol().letter().isEmpty();
    }

    /** The figure that another is the same as, under the name by which it was worked out. */
    static Figure meant(Figure figure) {
        Figure meant = figure;
        while (meant.step() instanceof Step.Same same) {
            meant = same.other();
        }
        return meant;
    }

    private List<Worked> product(Step.Product product) {
        Coefficient coefficient = Coefficient.of(product.coefficient());
        List<Worked> above = new ArrayList<>();
        List<Worked> below = new ArrayList<>();
        coefficient.aboveIfNotOne(numbers).ifPresent(above::add);
        coefficient.belowIfNotOne(numbers).ifPresent(below::add);
        for (Step.Power power : product.powers()) {
            List<Worked> side = power.exponent() > 0 ? above : below;
            if (!side.isEmpty()) {
                side.add(Worked.Sign.TIMES);
            }
            side.add(raised(factor(power.figure()), Math.abs(power.exponent())));
        }
        if (above.isEmpty()) {
            above.add(new Worked.Number("1"));
        }
        List<Worked> written = below.isEmpty() ? above : List.of(new Worked.Fraction(above, below));
        if (!coefficient.negative()) {
            return written;
        }
        List<Worked> negative = new ArrayList<>(List.of(Worked.Sign.MINUS));
        negative.addAll(written);
        return negative;
    }

    private static Worked raised(Worked base, int exponent) {
        return exponent == 1 ? base : new Worked.Raised(base, exponent);
    }

    private Worked factor(Figure figure) {
        List<Worked> pieces = operand(figure, false, true);
        boolean single = pieces.size() == 1 && !(pieces.get(0) instanceof Worked.Fraction)
                && !(pieces.get(0) instanceof Worked.Selection) && !isNegative(pieces.get(0));
        return single ? pieces.get(0) : new Worked.Bracketed(pieces);
    }

    private List<Worked> sum(Step.Sum sum) {
        int many = sum.terms().size();
        boolean mean = many > 1 && sum.terms().stream().allMatch(t -> Math.abs(t.coefficient() * many - 1) < 1e-12);
        List<Worked> pieces = new ArrayList<>();
        for (Step.Term term : sum.terms()) {
            add(pieces, Coefficient.of(mean ? 1 : term.coefficient()), term.figure());
        }
        return mean ? List.of(new Worked.Fraction(pieces, List.of(new Worked.Number(String.valueOf(many))))) : pieces;
    }

    private void add(List<Worked> pieces, Coefficient coefficient, Figure figure) {
        boolean first = pieces.isEmpty();
        if (coefficient.negative() || !first) {
            pieces.add(coefficient.negative() ? Worked.Sign.MINUS : Worked.Sign.PLUS);
        }
        List<Worked> operand = operand(figure, false, false);
        boolean bracket = isUnnamed(figure) && meant(figure).step() instanceof Step.Sum
                || !first && isNegative(operand.get(0));
        List<Worked> term = new ArrayList<>();
        coefficient.aboveIfNotOne(numbers).ifPresent(number -> term.addAll(List.of(number, Worked.Sign.TIMES)));
        term.addAll(bracket ? List.of(new Worked.Bracketed(operand)) : operand);
        Optional<Worked> below = coefficient.belowIfNotOne(numbers);
        pieces.addAll(below.isPresent() ? List.of(new Worked.Fraction(term, List.of(below.get()))) : term);
    }

    private static boolean isNegative(Worked piece) {
        return piece.equals(Worked.Sign.MINUS) || piece instanceof Worked.Amount amount && amount.number().startsWith("\u2212");
    }

    /** @param spelled whether it is written out though it has a name @param factor whether a temperature counts in kelvin */
    private List<Worked> operand(Figure figure, boolean spelled, boolean factor) {
        Figure meant = meant(figure);
        boolean rounded = meant.step() instanceof Step.Set || meant.step() instanceof Step.Read;
        boolean workedOut = !meant.from().isEmpty() && !rounded;
        if (workedOut && (isUnnamed(meant) || spelled)) {
            return written(meant.step());
        }
        return List.of(values || isUnnamed(meant) ? amount(meant, factor) : name(meant.symbol()));
    }

    private Worked.Name name(Symbol symbol) {
        Symbol of = subject.symbol();
        boolean known = !symbol.of().isEmpty() && symbol.of().equals(of.of()) && symbol.kind() == of.kind()
                && !symbol.letter().equals(of.letter());
        return new Worked.Name(symbol.letter(), known ? "" : symbol.of(), symbol.kind());
    }

    private Worked.Amount amount(Figure figure, boolean factor) {
        if (factor && !figure.unit().fromZero()) {
            Unit kelvin = Units.symbol("K").orElseThrow();
            int decimals = Math.max(KELVIN_DECIMALS, Numbers.decimals(figure));
            return amount(figure.in(kelvin).shownTo(decimals), numbers);
        }
        return amount(figure, numbers);
    }

    static Worked.Amount amount(Figure figure, Numbers numbers) {
        return new Worked.Amount(numbers.printedNumber(figure), UnitPart.of(figure.unit()).stream()
                .map(p -> new UnitPart(numbers.symbol(p.symbol()), p.power(), p.struck())).toList());
    }
}
