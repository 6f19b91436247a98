package tarewright.procedure.resolve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import tarewright.chemistry.Constants;
import tarewright.chemistry.Contribution;
import tarewright.chemistry.Element;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Digits;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.tables.ReferenceTables;

/**
 * Molar masses out of atomic weights, the gas constant, and what the author typed: one figure each, so that what uses the same of them is correlated through it. A
 * flask that a strength is divided by and an amount multiplied by has one error and not two.
 */
final class Constituents {
    static final Unit GRAM_PER_MOLE = Units.symbol("g/mol").or(() -> unit("g/mol")).orElseThrow();
    private static final Unit GAS_UNIT = unit("J/(mol K)").orElseThrow();
    private static final int MOST_DECIMALS = 6;
    private static final int MOST_FIGURES = 6;

    private final ReferenceTables tables;
    private final Map<String, Figure> weights = new HashMap<>();
    private final Map<String, Figure> molarMasses = new HashMap<>();
    private final Figure gasConstant = Figure.given(Symbol.alone("R"), GAS_UNIT, Constants.GAS_CONSTANT.value(),
            new Origin.Constant(Constants.GAS_CONSTANT.provenance().source()));

    private final Map<String, Figure> enthalpies = new HashMap<>();
    private final Map<Typed, Figure> typed = new IdentityHashMap<>();

    Constituents(ReferenceTables tables) {
        this.tables = tables;
    }

    static java.util.Optional<Unit> unit(String symbol) {
        return Units.parse(symbol) instanceof tarewright.quantity.UnitResult.Ok ok ? java.util.Optional.of(ok.unit()) : java.util.Optional.empty();
    }

    /** R, shown as 8.314 J/(mol K). */
    Figure gasConstant() {
        return gasConstant;
    }

    /** A typed value, known to half of its last digit or to its limits; the same figure each time it is asked for, told apart by where it was typed. */
    Figure typed(Typed value, Symbol symbol) {
        return typed.computeIfAbsent(value, v -> Kit.asTyped(Figure.given(symbol, v.unit(), v.si(), new Origin.Author())
                .uncertain(Kit.standardUncertainty(v)), v));
    }

    /** The enthalpy of a reaction, the same figure for its heat and for the warming that comes of it. */
    Figure enthalpy(String reaction, Supplier<Figure> found) {
        return enthalpies.computeIfAbsent(reaction, r -> found.get());
    }

    /** The elements of a formula that the table gives no atomic weight for. */
    List<String> unweighed(Formula formula) {
        return formula.unweighed(tables.elements());
    }

    /** The molar mass of a formula all of whose elements have an atomic weight. */
    Figure molarMass(Formula formula) {
        return molarMasses.computeIfAbsent(formula.plain(), plain -> {
            List<Step.Term> terms = new ArrayList<>();
            for (Contribution part : formula.contributions(tables.elements())) {
                terms.add(new Step.Term(part.count().doubleValue(), weight(part.element())));
            }
            return asTabulated(Figure.of(Symbol.ofFormula("M", plain), GRAM_PER_MOLE, new Step.Sum(terms)), terms);
        });
    }

    /** Shown to no more decimals than the weights that it is added up from: 18.015 g/mol of 1.0080 and 15.999. */
    private static Figure asTabulated(Figure sum, List<Step.Term> terms) {
        if (!(sum.standardUncertainty() > 0) || terms.stream().anyMatch(t -> t.figure().decimals().isEmpty())) {
            return sum;
        }
        int tabulated = terms.stream().mapToInt(t -> t.figure().decimals().getAsInt()).min().orElse(MOST_DECIMALS);
        double known = sum.standardUncertainty() / GRAM_PER_MOLE.factor();
        return sum.shownTo(Math.min(tabulated, Math.min(Digits.decimalsFor(known), Digits.decimalsOfSignificant(sum.shownValue(), MOST_FIGURES))));
    }

    /** An atomic weight, shown as it is tabulated; its stated uncertainty is a rectangular interval (IUPAC Technical Report 2018, Possolo et al.). */
    private Figure weight(Element element) {
        return weights.computeIfAbsent(element.symbol(), s -> {
            Figure weight = Figure.given(Symbol.ofFormula("M", s), GRAM_PER_MOLE, element.atomicWeight() / 1000, new Origin.Table(element.source(), true))
                    .uncertain(element.uncertainty() / 1000 / Math.sqrt(3));
            return element.uncertainty() > 0 ? weight.shownTo(tabulated(element)) : weight;
        });
    }

    /** The digit that the uncertainty is of; the digits of the weight itself where that is as large as lead's. */
    private static int tabulated(Element element) {
        int typed = Math.max(0, BigDecimal.valueOf(element.atomicWeight()).stripTrailingZeros().scale());
        return Math.min(MOST_DECIMALS, Math.max(typed, Digits.decimalsFor(element.uncertainty())));
    }
}
