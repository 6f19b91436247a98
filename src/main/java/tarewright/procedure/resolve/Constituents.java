package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tarewright.chemistry.Constants;
import tarewright.chemistry.Contribution;
import tarewright.chemistry.Element;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.tables.ReferenceTables;

/** Molar masses out of atomic weights, and the gas constant: one figure each, so that what uses the same element is correlated through it. */
final class Constituents {
    static final Unit GRAM_PER_MOLE = Units.symbol("g/mol").or(() -> unit("g/mol")).orElseThrow();
    private static final Unit GAS_UNIT = unit("J/(mol K)").orElseThrow();

    private final ReferenceTables tables;
    private final Map<String, Figure> weights = new HashMap<>();
    private final Map<String, Figure> molarMasses = new HashMap<>();
    private final Figure gasConstant = Figure.given(Symbol.alone("R"), GAS_UNIT, Constants.GAS_CONSTANT.value(),
            new Origin.Constant(Constants.GAS_CONSTANT.provenance().source()));

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
            return Figure.of(Symbol.ofFormula("M", plain), GRAM_PER_MOLE, new Step.Sum(terms));
        });
    }

    /** An atomic weight; its stated uncertainty is a rectangular interval (IUPAC Technical Report 2018, Possolo et al.). */
    private Figure weight(Element element) {
        return weights.computeIfAbsent(element.symbol(), s -> Figure.given(Symbol.ofFormula("M", s), GRAM_PER_MOLE, element.atomicWeight() / 1000,
                new Origin.Table(element.source(), true)).uncertain(element.uncertainty() / 1000 / Math.sqrt(3)));
    }
}
