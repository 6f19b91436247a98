package tarewright.procedure.recipe;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.CountedAs;
import tarewright.chemistry.DensityTable;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Substance;
import tarewright.chemistry.solution.SolutionDensity;
import tarewright.chemistry.solution.StockStrength;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.exact.Rational;
import tarewright.procedure.resolve.MolarMasses;
import tarewright.quantity.Dimension;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.UsualUnits;
import tarewright.tables.ReferenceTables;

/** What the label of a bottle says of its strength, as figures. */
final class LabelStrength {
    private static final Unit PER_CENT = new Unit("%", Dimension.NONE, 0.01);
    private static final Unit GRAM_PER_MILLILITRE = UsualUnits.of(Dimension.DENSITY, 1000);
    private final ReferenceTables tables;
    private final MolarMasses masses;

    LabelStrength(ReferenceTables tables, MolarMasses masses) {
        this.tables = tables;
        this.masses = masses;
    }

    static Figure typed(String letter, Typed typed) {
        double half = typed.plusMinusSi().orElse(typed.lastDigit() * typed.unit().factor() / 2);
        return Figure.given(Symbol.alone(letter), typed.unit(), typed.si(), new Origin.Author()).uncertain(half / Math.sqrt(3))
                .shownTo(typed.decimals());
    }

    /** Empty where the label does not tell: no density is known, or what it counts is not clear. */
    Optional<StockStrength> of(Strength strength, Formula solute, Optional<Typed> density) {
        Optional<Formula> counted = strength.asFormula().isEmpty() ? Optional.of(solute) : formula(strength.asFormula().get());
        Optional<Rational> units = counted.flatMap(c -> CountedAs.unitsOfSolute(c, solute));
        Optional<Figure> mass = counted.flatMap(masses::of);
        if (units.isEmpty() || mass.isEmpty()) {
            return Optional.empty();
        }
        Figure perUnit = scaled(mass.get(), 1 / units.get().doubleValue());
        Typed typed = strength.typed();
        if (strength instanceof Strength.Molar) {
            return Optional.of(new StockStrength.Molar(scaled(typed("c", typed), units.get().doubleValue())));
        }
        if (strength instanceof Strength.MassPerVolume) {
            return Optional.of(new StockStrength.MassByVolume(typed("γ", typed), perUnit));
        }
        if (strength instanceof Strength.MassFraction) {
            Figure share = typed("w", typed);
            return density.map(d -> typed("ρ", d)).or(() -> tableDensity(share, counted.get(), units.get(), solute))
                    .map(d -> new StockStrength.MassShare(share, d, perUnit));
        }
        if (strength instanceof Strength.VolumeFraction) {
            return pureDensity(solute).map(d -> new StockStrength.VolumeShare(typed("φ", typed), d, perUnit));
        }
        return solute.plain().equals("H2O2") ? Optional.of(new StockStrength.VolumesOfOxygen(typed("volumes", typed))) : Optional.empty();
    }

    /** As the table has it sold; the strength that the table works out is not taken: it is worked out here. */
    Optional<StockStrength> of(CommercialStrength sold) {
        Optional<Figure> mass = masses.of(sold.solute());
        Origin origin = new Origin.Table(sold.provenance().source(), sold.provenance().confidence() != Confidence.MEMORY);
        Figure share = Figure.given(Symbol.alone("w"), PER_CENT, sold.strength() / 100, origin);
        return mass.flatMap(m -> switch (sold.basis()) {
            case MASS_PERCENT -> sold.density().stream().mapToObj(d -> Figure.given(Symbol.alone("ρ"), GRAM_PER_MILLILITRE, d, origin))
                    .findFirst().map(d -> new StockStrength.MassShare(share, d, m));
            case MASS_BY_VOLUME_PERCENT -> Optional.of(new StockStrength.MassByVolume(Figure.given(Symbol.alone("γ"),
                    UsualUnits.of(Dimension.DENSITY, 1), sold.strength() * 10, origin), m));
            case VOLUME_PERCENT -> pureDensity(sold.solute()).map(d -> new StockStrength.VolumeShare(share, d, m));
            case VOLUMES_OF_OXYGEN -> Optional.of(new StockStrength.VolumesOfOxygen(Figure.given(Symbol.words("volumes"),
                    new Unit("", Dimension.NONE, 1), sold.strength(), origin)));
        });
    }

    /** The pure liquid as it comes. */
    Optional<StockStrength> pure(Formula formula, Optional<Typed> purity, Optional<Typed> density) {
        Figure share = purity.map(p -> typed("w", p)).orElseGet(() -> Figure.given(Symbol.alone("w"), PER_CENT, 1, new Origin.Counted()));
        return masses.of(formula).flatMap(m -> density.map(d -> typed("ρ", d)).or(() -> pureDensity(formula))
                .map(d -> new StockStrength.MassShare(share, d, m)));
    }

    private Optional<Formula> formula(String text) {
        return tables.substances().named(text).flatMap(Substance::formula)
                .or(() -> Formula.parse(text) instanceof FormulaResult.Ok ok ? Optional.of(ok.formula()) : Optional.empty());
    }

    private Optional<Figure> pureDensity(Formula formula) {
        return tables.substances().of(formula).stream().flatMap(s -> s.density().stream()).findFirst()
                .map(d -> Figure.given(Symbol.alone("ρ"), GRAM_PER_MILLILITRE, d.kilogramsPerCubicMetre(),
                        new Origin.Table(d.provenance().source(), d.provenance().confidence() != Confidence.MEMORY)));
    }

    /** A table counts its own solute, a salt without its water, whatever the label counts. */
    private Optional<Figure> tableDensity(Figure share, Formula counted, Rational units, Formula solute) {
        Optional<DensityTable> table = tables.densities().of(solute).or(() -> tables.densities().of(solute.anhydrous()));
        Optional<Figure> own = table.flatMap(t -> masses.of(t.solute()));
        Optional<Figure> said = masses.of(counted);
        if (own.isEmpty() || said.isEmpty()) {
            return Optional.empty();
        }
        double dry = units.doubleValue() * own.get().value() / said.get().value();
        return table.get().density(share.value() * dry) instanceof tarewright.chemistry.TableValue.Known known
                ? Optional.of(SolutionDensity.figure(Symbol.alone("ρ"), table.get(), share, dry, known.provenance().source())) : Optional.empty();
    }

    private static Figure scaled(Figure figure, double by) {
        return by == 1 ? figure : Figure.of(figure.symbol(), figure.unit(), new Step.Product(by, List.of(new Power(figure, 1))));
    }
}
