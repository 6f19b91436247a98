package tarewright.chemistry.solution;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.DensityTable;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;

/** Jars and bottles for tests. */
final class Shelf {
    static final ReferenceTables TABLES = Tables.load();

    private Shelf() {
    }

    static Formula formula(String text) {
        return Formula.parse(text).value().orElseThrow();
    }

    /** A quantity as typed, known exactly. */
    static Figure typed(String text) {
        Typed typed = ((QuantityResult.Ok) QuantityText.parse(text)).typed();
        return Figure.given(Symbol.words(text), typed.unit(), typed.si(), new Origin.Author());
    }

    static Figure molarMass(String formula) {
        return Figure.of(Symbol.ofFormula("M", formula), typed("1 g/mol").unit(), new Step.Given(
                formula(formula).molarMass(TABLES.elements()) / 1000, new Origin.Counted()));
    }

    static Source.Solid solid(String formula, String... purity) {
        return new Source.Solid(formula, formula(formula), molarMass(formula),
                List.of(purity).stream().findFirst().map(Shelf::typed));
    }

    static Source.Stock molar(String strength) {
        return Source.Stock.of("stock", new StockStrength.Molar(typed(strength)));
    }

    /** A stock by its mass fraction, with the density of the table at 20 °C or that of its label. */
    static Source.Stock byMass(String formula, String percent, String... density) {
        Figure share = typed(percent);
        Figure dense = List.of(density).stream().findFirst().map(Shelf::typed).orElseGet(() -> {
            DensityTable table = TABLES.densities().of(formula(formula)).orElseThrow();
            return SolutionDensity.figure(Symbol.alone("ρ"), table, share, 1, "table");
        });
        return Source.Stock.of(percent + " " + formula, new StockStrength.MassShare(share, dense, molarMass(formula)));
    }

    static Saturation saturation(String anhydrous) {
        return Saturation.of(TABLES.saltSolubility(formula(anhydrous)).orElseThrow(), TABLES.densities().of(formula(anhydrous)),
                molarMass(anhydrous)).orElseThrow();
    }

    static Plan plan(String strength, String volume, Source source) {
        return Plan.of(typed(strength), typed(volume), source, Optional.empty()).value().orElseThrow();
    }

    static double millilitres(Figure volume) {
        return volume.value() * 1e6;
    }

    static double grams(Figure mass) {
        return mass.value() * 1e3;
    }
}
