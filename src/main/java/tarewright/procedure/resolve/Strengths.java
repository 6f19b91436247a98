package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Constants;
import tarewright.chemistry.CountedAs;
import tarewright.chemistry.DensityTable;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.chemistry.TableValue;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.exact.Rational;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/** The strength of a solution in every notation as an amount concentration, the densities that this takes, and dilution. */
final class Strengths {
    private static final Unit MOLAR = Constituents.unit("mol/L").orElseThrow();
    private static final Unit DENSITY = Constituents.unit("g/mL").orElseThrow();
    private static final String PEROXIDE = "H2O2";

    private final Bench bench;
    private final QuantityBlock block;

    Strengths(Bench bench, QuantityBlock block) {
        this.bench = bench;
        this.block = block;
    }

    /** Amount concentration of the solute. */
    Optional<Figure> molar() {
        if (!block.is(Kind.SOLUTION)) {
            return Optional.empty();
        }
        if (bench.byReadings && Unknowns.finds(bench, block, Property.STRENGTH)) {
            return new Unknowns(bench, block).strength();
        }
        Optional<QuantityBlock> source = bench.source(block);
        if (block.strength().isPresent()) {
            return fromNotation(block.strength().get());
        }
        if (source.isPresent() && source.get().is(Kind.SOLUTION)) {
            return bench.figure(source.get(), Property.STRENGTH).flatMap(c -> diluted(c));
        }
        if (source.isPresent() && (block.madeUpTo().isPresent() || block.rule() instanceof AmountRule.Stated)) {
            return madeUp(source.get());
        }
        // A strength that could not be read was a finding already, and a bottle that there is none of.
        if (!block.block().fields().has("strength") && block.portionOf().isEmpty()) {
            bench.note(new ResolveFinding.StrengthMissing(block.name(), block.block().nameSpan()));
        }
        return Optional.empty();
    }

    /** What is weighed or measured, made up with solvent to a volume. */
    private Optional<Figure> madeUp(QuantityBlock solute) {
        Optional<Figure> volume = block.madeUpTo().isPresent() ? Optional.of(volume("V", "made up to", block.madeUpTo().get().value()))
                : bench.figure(block, Property.VOLUME);
        return Amounts.both(bench.figure(solute, Property.MOLES), volume)
                .map(p -> molar(new Step.Product(1, List.of(new Power(p.first(), 1), new Power(p.second(), -1)))));
    }

    /** A portion keeps its bottle's strength; what is made up to a volume has less. */
    private Optional<Figure> diluted(Figure stock) {
        if (block.madeUpTo().isEmpty()) {
            return Optional.of(stock);
        }
        Typed flask = block.madeUpTo().get().value();
        if (!(block.rule() instanceof AmountRule.Stated s) || s.what() != AmountRule.Measured.VOLUME) {
            bench.note(new ResolveFinding.StrengthMissing(block.name(), block.block().nameSpan()));
            return Optional.empty();
        }
        return bench.figure(block, Property.VOLUME).flatMap(taken -> {
            if (taken.value() > flask.si()) {
                bench.note(new ResolveFinding.DilutionImpossible(block.name(), Kit.shown(flask), Kit.shown(stock.value(), stock.unit()),
                        Kit.shown(taken.value(), taken.unit()), Kit.shown(flask), block.madeUpTo().get().at()));
                return Optional.empty();
            }
            Figure made = volume("V", "made up to", flask);
            return Optional.of(molar(new Step.Product(1, List.of(new Power(stock, 1), new Power(taken, 1), new Power(made, -1)))));
        });
    }

    /** The volume of the solution itself: of a dilution what it was made up to, and not what was taken for it. */
    Optional<Figure> whole() {
        boolean diluted = block.madeUpTo().isPresent() && bench.source(block).isPresent();
        return diluted ? Optional.of(volume("V", "made up to", block.madeUpTo().get().value())) : bench.figure(block, Property.VOLUME);
    }

    private Figure volume(String letter, String of, Typed typed) {
        return typed(Symbol.ofName(letter, of), typed);
    }

    /** The volume of its source that a solution of so much takes, where it is diluted to a strength. */
    Optional<Figure> taken() {
        QuantityBlock source = bench.source(block).orElseThrow();
        Optional<Figure> whole = block.madeUpTo().isPresent() ? Optional.of(volume("V", "made up to", block.madeUpTo().get().value()))
                : bench.figure(block, Property.VOLUME);
        return Amounts.both(bench.figure(block, Property.STRENGTH), bench.figure(source, Property.STRENGTH)).flatMap(c -> whole.flatMap(v -> {
            Figure taken = Figure.of(Symbol.ofName("V", source.name()), v.unit(),
                    new Step.Product(1, List.of(new Power(c.first(), 1), new Power(v, 1), new Power(c.second(), -1))));
            if (c.first().value() > c.second().value() * (1 + 1e-9)) {
                bench.note(new ResolveFinding.DilutionImpossible(block.name(), Kit.shown(c.first().value(), MOLAR),
                        Kit.shown(c.second().value(), MOLAR), Kit.shown(taken.value(), taken.unit()), Kit.shown(v.value(), v.unit()),
                        block.strength().get().at()));
                return Optional.empty();
            }
            return Optional.of(taken);
        }));
    }

    private Figure molar(Step step) {
        return Figure.of(new Amounts(bench, block).symbol("c"), MOLAR, step);
    }

    // --- notations

    private Optional<Figure> fromNotation(At<Strength> written) {
        Strength strength = written.value();
        Typed typed = strength.typed();
        if (strength instanceof Strength.VolumeStrength) {
            return fromVolumes(written);
        }
        Optional<Counted> counted = counted(written);
        if (counted.isEmpty()) {
            return Optional.empty();
        }
        double units = counted.get().units();
        if (strength instanceof Strength.Molar) {
            return Optional.of(units == 1 ? typed("c", typed)
                    : molar(new Step.Product(units, List.of(new Power(typed(Symbol.ofFormula("c", counted.get().formula().plain()), typed), 1)))));
        }
        if (!bench.constituents.unweighed(counted.get().formula()).isEmpty()) {
            bench.note(new ResolveFinding.NoAtomicWeight(bench.constituents.unweighed(counted.get().formula()), counted.get().formula().unicode(),
                    strength.asFormula().isPresent() ? written.at() : block.block().nameSpan()));
            return Optional.empty();
        }
        Figure molarMass = bench.constituents.molarMass(counted.get().formula());
        if (strength instanceof Strength.MassPerVolume) {
            return Optional.of(molar(new Step.Product(units, List.of(new Power(typed("γ", typed), 1), new Power(molarMass, -1)))));
        }
        if (strength instanceof Strength.MassFraction) {
            Figure fraction = typed("w", typed);
            return densityAt(fraction, written)
                    .map(d -> molar(new Step.Product(units, List.of(new Power(fraction, 1), new Power(d, 1), new Power(molarMass, -1)))));
        }
        return fromVolumeFraction(written, counted.get(), molarMass);
    }

    /** What a strength counts. @param units formula units of the solute for one of it */
    private record Counted(Formula formula, double units) {
    }

    /** Volume of the pure liquid over that of the solution: only what is a liquid by itself is measured so. */
    private Optional<Figure> fromVolumeFraction(At<Strength> written, Counted counted, Figure molarMass) {
        Matter solute = bench.matter(block).orElseThrow();
        if (!counted.formula().sameComposition(solute.formula())) {
            bench.note(new ResolveFinding.CountedAsUnclear(counted.formula().unicode(), solute.formula().unicode(), written.at()));
            return Optional.empty();
        }
        if (solute.substance().filter(s -> s.state() == State.SOLID || s.state() == State.GAS).isPresent()) {
            bench.note(new ResolveFinding.NotALiquid(solute.name(), Kit.shown(written.value().typed()), written.at()));
            return Optional.empty();
        }
        Optional<Figure> density = pureDensity();
        if (density.isEmpty()) {
            bench.note(new ResolveFinding.DensityMissing(block.name(), Kit.shown(written.value().typed()), written.at()));
        }
        Figure share = typed("φ", written.value().typed());
        return density.map(d -> molar(new Step.Product(1, List.of(new Power(share, 1), new Power(d, 1), new Power(molarMass, -1)))));
    }

    private Figure typed(String letter, Typed typed) {
        return typed(new Amounts(bench, block).symbol(letter), typed);
    }

    private Figure typed(Symbol symbol, Typed typed) {
        return bench.constituents.typed(typed, symbol);
    }

    /**
     * Volumes of oxygen at 0 °C and 101.325 kPa from one of peroxide: each two of peroxide give one of oxygen, so c = 2 × volumes / Vm with
     * Vm = 22.414 L/mol.
     */
    private Optional<Figure> fromVolumes(At<Strength> written) {
        Optional<Matter> solute = bench.matter(block);
        boolean peroxide = solute.filter(m -> m.formula().plain().equals(PEROXIDE)).isPresent()
                && written.value().asFormula().filter(f -> !f.equals(PEROXIDE)).isEmpty();
        if (!peroxide) {
            solute.ifPresent(m -> bench.note(new ResolveFinding.NotAPeroxide(m.name(), Kit.shown(written.value().typed()), written.at())));
            return Optional.empty();
        }
        Figure volumes = typed(Symbol.words("volumes"), written.value().typed());
        Constants constant = Constants.MOLAR_VOLUME_101_325_KPA;
        Figure molarVolume = Figure.given(Symbol.alone("Vm"), Constituents.unit("L/mol").orElseThrow(), constant.value(),
                new Origin.Constant(constant.provenance().source()));
        return Optional.of(molar(new Step.Product(2, List.of(new Power(volumes, 1), new Power(molarVolume, -1)))));
    }

    /** What the strength counts: the solute, or what stands behind {@code as}. */
    private Optional<Counted> counted(At<Strength> written) {
        Optional<Formula> solute = bench.matter(block).map(Matter::formula);
        if (written.value().asFormula().isEmpty() || solute.isEmpty()) {
            return solute.map(f -> new Counted(f, 1));
        }
        String text = written.value().asFormula().get();
        Optional<Formula> named = bench.tables.substances().named(text).flatMap(Substance::formula);
        Optional<Formula> formula = named.or(() -> Formula.parse(text) instanceof FormulaResult.Ok ok ? Optional.of(ok.formula()) : Optional.empty());
        if (formula.isEmpty()) {
            bench.note(new ResolveFinding.UnknownName(text, "formula", List.of(), written.at()));
            return Optional.empty();
        }
        Optional<Rational> units = CountedAs.unitsOfSolute(formula.get(), solute.get());
        if (units.isEmpty()) {
            bench.note(new ResolveFinding.CountedAsUnclear(formula.get().unicode(), solute.get().unicode(), written.at()));
        }
        return units.map(u -> new Counted(formula.get(), u.doubleValue()));
    }

    // --- densities

    /** The density of the block's contents, where something says it; a finding where nothing does and it is needed. */
    Optional<Figure> density() {
        return knownDensity().or(() -> {
            if (block.is(Kind.LIQUID) || block.is(Kind.SOLID)) {
                bench.note(new ResolveFinding.VolumeNeedsDensity(block.name(), bench.matter(block).map(m -> m.formula().unicode()).orElse(""),
                        block.kind().word(), block.block().nameSpan()));
            }
            return Optional.empty();
        });
    }

    /** Typed, else of the pure liquid, else of the solution at its mass fraction. */
    Optional<Figure> knownDensity() {
        Optional<Figure> typed = typedDensity();
        if (typed.isPresent()) {
            return typed;
        }
        if (block.is(Kind.LIQUID) || block.is(Kind.SOLID)) {
            return pureDensity();
        }
        if (block.is(Kind.SOLUTION) && block.strength().isPresent()
                && block.strength().get().value() instanceof Strength.MassFraction fraction) {
            Figure typedFraction = typed("w", fraction.typed());
            return densityTable().flatMap(t -> ofTable(t, typedFraction, block.strength().get()).filter(share -> t.density(share.value()).value().isPresent())
                    .flatMap(share -> densityAt(typedFraction, block.strength().get())));
        }
        return Optional.empty();
    }

    private Optional<Figure> typedDensity() {
        return block.density().map(d -> typed("ρ", d.value()));
    }

    private Optional<Figure> pureDensity() {
        return bench.matter(block).flatMap(Matter::substance).flatMap(Substance::density).map(d -> Figure.given(
                new Amounts(bench, block).symbol("ρ"), DENSITY, d.kilogramsPerCubicMetre(),
                new Origin.Table(d.provenance().source(), d.provenance().confidence() != tarewright.chemistry.Confidence.MEMORY)));
    }

    private Optional<DensityTable> densityTable() {
        return bench.matter(block).flatMap(m -> bench.tables.densities().of(m.formula())
                .or(() -> bench.tables.densities().of(m.formula().anhydrous())));
    }

    /**
     * The mass fraction of what the table counts. A table of a salt counts the salt without its water of crystallisation, whatever the strength counts: of 10 % of the
     * pentahydrate of copper(II) sulfate, 6.4 % are copper(II) sulfate.
     */
    private Optional<Figure> ofTable(DensityTable table, Figure fraction, At<Strength> written) {
        Optional<Counted> counted = counted(written);
        if (counted.isEmpty() || !bench.constituents.unweighed(table.solute()).isEmpty() || !bench.constituents.unweighed(counted.get().formula()).isEmpty()) {
            return Optional.empty();
        }
        if (counted.get().formula().sameComposition(table.solute())) {
            return Optional.of(fraction);
        }
        return Optional.of(Figure.of(Symbol.ofFormula("w", table.solute().plain()), fraction.unit(), new Step.Product(counted.get().units(), List.of(
                new Power(fraction, 1), new Power(bench.constituents.molarMass(table.solute()), 1),
                new Power(bench.constituents.molarMass(counted.get().formula()), -1)))));
    }

    /** Density of a solution of a mass fraction: typed, else out of the solute's table at 20 °C. */
    private Optional<Figure> densityAt(Figure fraction, At<Strength> written) {
        Optional<Figure> typed = typedDensity();
        if (typed.isPresent()) {
            return typed;
        }
        Optional<DensityTable> table = densityTable();
        if (table.isEmpty()) {
            bench.note(new ResolveFinding.DensityMissing(block.name(), Kit.shown(written.value().typed()) + " w/w", written.at()));
            return Optional.empty();
        }
        Optional<Figure> share = ofTable(table.get(), fraction, written);
        if (share.isEmpty()) {
            return Optional.empty();
        }
        TableValue value = table.get().density(share.get().value());
        if (value instanceof TableValue.OutOfRange out) {
            bench.note(new ResolveFinding.OutOfTableRange("density of " + table.get().name(), out.limit().id(), number(out.asked()) + " " + out.unit(),
                    number(out.from()) + " " + out.unit(), number(out.to()) + " " + out.unit(), written.at()));
            return Optional.empty();
        }
        TableValue.Known known = (TableValue.Known) value;
        DensityTable from = table.get();
        return Optional.of(Figure.of(new Amounts(bench, block).symbol("ρ"), DENSITY, new Step.Relation("density of a solution", known.provenance().source(),
                List.of(share.get()), of -> from.density(Math.min(Math.max(of[0], 0), from.strongest())).value().orElse(Double.NaN))).shownTo(4));
    }

    private static String number(double value) {
        return tarewright.quantity.Digits.significant(value, 4);
    }
}
