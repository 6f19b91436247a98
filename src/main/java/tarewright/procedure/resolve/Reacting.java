package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.text.Spelling;

/** What goes on in the pots: how far each reaction goes, who limits it, what is made, what is left, what is needed. */
final class Reacting {
    private static final double ROUNDING_NOISE = 1e-9;
    private static final Unit MOLE = Units.symbol("mol").orElseThrow();

    private final Bench bench;

    Reacting(Bench bench) {
        this.bench = bench;
    }

    /** A reactant of a pot with the amount of its species that is there, from one block or several. */
    record Supply(String species, int coefficient, List<QuantityBlock> blocks, Figure moles) {
    }

    /** The supplies of a pot, one for each species of the left side that a block provides; empty if one could not be worked out. */
    Optional<List<Supply>> supplies(Pot pot) {
        Map<String, List<Part>> bySpecies = new LinkedHashMap<>();
        pot.reactants().forEach(p -> bySpecies.computeIfAbsent(p.species().formula().plain(), k -> new ArrayList<>()).add(p));
        pot.leftOvers().forEach(p -> bySpecies.computeIfAbsent(p.species().formula().plain(), k -> new ArrayList<>()).add(p));
        List<Supply> supplies = new ArrayList<>();
        for (Map.Entry<String, List<Part>> each : bySpecies.entrySet()) {
            List<Figure> moles = new ArrayList<>();
            for (Part part : each.getValue()) {
                Optional<Figure> own = ofSpecies(part, pot.leftOvers().contains(part) ? Property.LEFT_OVER : Property.MOLES);
                if (own.isEmpty()) {
                    return Optional.empty();
                }
                moles.add(own.get());
            }
            Figure sum = moles.size() == 1 ? moles.get(0) : usual(Figure.of(Symbol.ofFormula("n", each.getKey()), MOLE,
                    new Step.Sum(moles.stream().map(m -> new Step.Term(1, m)).toList())));
            supplies.add(new Supply(each.getKey(), each.getValue().get(0).coefficient(), each.getValue().stream().map(Part::block).toList(), sum));
        }
        return Optional.of(supplies);
    }

    /** The amount of the equation's species that a block brings. */
    private Optional<Figure> ofSpecies(Part part, Property property) {
        Optional<Figure> moles = bench.figure(part.block(), property);
        return part.ions() == 1 ? moles : moles.map(m -> usual(Figure.of(Symbol.ofFormula("n", part.species().formula().plain()), MOLE,
                new Step.Product(part.ions(), List.of(new Power(m, 1))))));
    }

    /** The extent of a pot's reaction: the least of amount over coefficient (IUPAC Green Book, 2.10, ξ). */
    Optional<Figure> extent(Pot pot) {
        return supplies(pot).filter(s -> !s.isEmpty()).map(supplies -> {
            List<Figure> turns = supplies.stream().map(s -> s.coefficient() == 1 ? s.moles() : usual(Figure.of(Symbol.alone("ξ"), MOLE,
                    new Step.Product(1.0 / s.coefficient(), List.of(new Power(s.moles(), 1)))))).toList();
            return turns.size() == 1 ? turns.get(0) : usual(Figure.of(Symbol.alone("ξ"), MOLE, new Step.Extreme(true, turns)));
        });
    }

    /** The supply that gives the least extent. */
    Optional<Supply> limiting(Pot pot) {
        return supplies(pot).flatMap(s -> s.stream().min((a, b) -> Double.compare(a.moles().value() / a.coefficient(), b.moles().value() / b.coefficient())));
    }

    /** What the reaction gives of a product, yield taken. */
    Optional<Figure> made(QuantityBlock product, Symbol symbol) {
        return made(product, symbol, true);
    }

    /** What it could give at most. */
    Optional<Figure> atMost(QuantityBlock product, Symbol symbol) {
        return made(product, symbol, false);
    }

    private Optional<Figure> made(QuantityBlock product, Symbol symbol, boolean withYield) {
        Optional<Pot> pot = bench.potAsProduct(product);
        if (pot.isEmpty()) {
            return Optional.empty();
        }
        if (pot.get().reactants().isEmpty()) {
            bench.note(new ResolveFinding.MissingQuantity(product.name(), product.kind().word(),
                    pot.get().reaction().equation().map(e -> e.reactants().stream().map(t -> t.species().unicode()).toList()).orElse(List.of()),
                    product.block().nameSpan()));
            return Optional.empty();
        }
        Part part = pot.get().of(product).orElseThrow();
        return bench.extent(pot.get()).map(extent -> {
            List<Power> powers = new ArrayList<>(List.of(new Power(extent, 1)));
            if (withYield) {
                yieldOf(pot.get().reaction()).ifPresent(y -> powers.add(new Power(y, 1)));
            }
            return usual(Figure.of(symbol, MOLE, new Step.Product((double) part.coefficient() / part.ions(), powers)));
        });
    }

    private Optional<Figure> yieldOf(ReactionBlock reaction) {
        return reaction.goesTo().map(y -> bench.constituents.typed(y.value(), Symbol.words("yield")));
    }

    /** How many times what the reaction uses up is there. */
    Optional<Figure> excess(QuantityBlock block) {
        return bench.potAsReactant(block).flatMap(pot -> bench.extent(pot).flatMap(extent -> supply(pot, block).map(supply -> Figure.of(
                Symbol.ofName("excess", block.name()), Unit.ONE,
                new Step.Product(1.0 / supply.coefficient(), List.of(new Power(supply.moles(), 1), new Power(extent, -1)))))));
    }

    /**
     * What is not used up, as an amount of the block's own substance. Of a species that several blocks bring, each has left over the share that it brought: in the
     * pot they are one.
     */
    Optional<Figure> leftOver(QuantityBlock block) {
        return bench.potAsReactant(block).flatMap(pot -> Amounts.both(bench.figure(block, Property.MOLES), bench.extent(pot))
                .flatMap(p -> supply(pot, block).map(supply -> leftOver(pot.of(block).orElseThrow(), supply, p.first(), p.second()))));
    }

    private static Figure leftOver(Part part, Supply supply, Figure own, Figure extent) {
        Symbol symbol = Symbol.ofName("n left", part.block().name());
        double usedOfAll = supply.coefficient() * extent.value();
        // What is used up to the last leaves nothing; the difference of two equal figures would only show rounding noise.
        if (Math.abs(supply.moles().value() - usedOfAll) <= ROUNDING_NOISE * supply.moles().value()) {
            return Figure.of(symbol, own.unit(), new Step.Product(0, List.of(new Power(own, 1))));
        }
        if (supply.blocks().size() == 1) {
            double used = (double) part.coefficient() / part.ions();
            return Figure.of(symbol, own.unit(), new Step.Sum(List.of(new Step.Term(1, own), new Step.Term(-used, extent))));
        }
        Figure left = usual(Figure.of(Symbol.ofFormula("n left", supply.species()), MOLE, new Step.Sum(List.of(
                new Step.Term(1, supply.moles()), new Step.Term(-supply.coefficient(), extent)))));
        return Figure.of(symbol, own.unit(), new Step.Product(1, List.of(new Power(left, 1), new Power(own, 1), new Power(supply.moles(), -1))));
    }

    private Optional<Supply> supply(Pot pot, QuantityBlock block) {
        return supplies(pot).flatMap(s -> s.stream().filter(each -> each.blocks().contains(block)).findFirst());
    }

    // --- what is needed

    /** Just enough of a block to give, or to react with, its target. */
    Optional<Figure> neededFor(QuantityBlock block, AmountRule.For goal, Symbol symbol) {
        Optional<QuantityBlock> target = target(goal.target(), goal.at());
        if (target.isEmpty()) {
            return Optional.empty();
        }
        return pair(block, target.get(), goal.at()).flatMap(pair -> wantedOf(target.get(), goal, pair).map(moles ->
                scaled(symbol, pair, moles, Optional.empty())));
    }

    /** At least so many times what the target needs. */
    Optional<Figure> neededOver(QuantityBlock block, AmountRule.ExcessOver over, Symbol symbol) {
        Optional<QuantityBlock> target = target(over.target(), over.at());
        if (target.isEmpty()) {
            return Optional.empty();
        }
        Optional<Figure> times = over.times().map(t -> Kit.asTyped(Figure.given(Symbol.words("excess"), Unit.ONE, t.value().si(), new Origin.Author()), t.value()));
        return pair(block, target.get(), over.at()).flatMap(pair -> bench.figure(target.get(), Property.MOLES).map(moles -> scaled(symbol, pair, moles, times)));
    }

    private Figure scaled(Symbol symbol, Pair pair, Figure moles, Optional<Figure> times) {
        List<Power> powers = new ArrayList<>();
        times.ifPresent(t -> powers.add(new Power(t, 1)));
        powers.add(new Power(moles, 1));
        pair.yield(this).ifPresent(y -> powers.add(new Power(y, -1)));
        return usual(Figure.of(symbol, MOLE, new Step.Product(pair.ratio(), powers)));
    }

    /** What of a target is to be given or reacted with. */
    private Optional<Figure> wantedOf(QuantityBlock target, AmountRule.For goal, Pair pair) {
        if (goal.leftOver()) {
            return bench.figure(target, Property.LEFT_OVER);
        }
        if (target.rule() instanceof AmountRule.Wanted) {
            return new Gases(bench, target).wantedMoles();
        }
        if (target.rule() instanceof AmountRule.MadeBy && !pair.target().reactant()) {
            bench.note(new ResolveFinding.MissingQuantity(target.name(), target.kind().word(),
                    target.is(QuantityBlock.Kind.GAS) ? List.of("wanted", "volume", "moles") : List.of("mass", "moles"), goal.at()));
            return Optional.empty();
        }
        return bench.figure(target, Property.MOLES);
    }

    private Optional<QuantityBlock> target(String name, tarewright.text.Span at) {
        Optional<QuantityBlock> target = bench.procedure.quantity(name);
        if (target.isEmpty()) {
            List<String> names = bench.procedure.quantities().stream().map(QuantityBlock::name).toList();
            bench.note(new ResolveFinding.UnknownName(name, "block", Spelling.near(name, names), at));
        }
        return target;
    }

    /** Two blocks in one reaction. */
    record Pair(Part own, Part target) {
        /** Amount of the own block for one of the target's. */
        double ratio() {
            return (double) own.coefficient() * target.ions() / (target.coefficient() * (double) own.ions());
        }

        Pair turned() {
            return new Pair(target, own);
        }

        /** The yield that stands between a reactant and what is made of it. */
        Optional<Figure> yield(Reacting reacting) {
            return own.reactant() && !target.reactant() ? reacting.yieldOf(own.reaction()) : Optional.empty();
        }
    }

    private Optional<Pair> pair(QuantityBlock own, QuantityBlock target, tarewright.text.Span at) {
        Optional<Pair> pair = pair(own, target);
        // Where a block or an equation could not be read, that was a finding, and this would only follow from it.
        boolean readable = bench.matter(own).isPresent() && bench.matter(target).isPresent()
                && bench.procedure.reactions().stream().allMatch(r -> r.equation().isPresent());
        if (pair.isEmpty() && readable) {
            bench.note(new ResolveFinding.NoCommonReaction(own.name(), target.name(), at));
        }
        return pair;
    }

    /** The parts of two blocks in the reaction that they share. */
    Optional<Pair> pair(QuantityBlock own, QuantityBlock target) {
        for (Pot pot : bench.pots) {
            Optional<Part> mine = pot.of(own);
            if (mine.isEmpty()) {
                continue;
            }
            Optional<Part> other = pot.of(target).or(() -> pot.leftOvers().stream().filter(p -> p.block() == target).findFirst())
                    .or(() -> bench.pots.stream().filter(q -> q.key().reaction().equals(pot.key().reaction())).flatMap(q -> q.of(target).stream()).findFirst());
            if (other.isPresent()) {
                return Optional.of(new Pair(mine.get(), other.get()));
            }
        }
        return Optional.empty();
    }

    /** The ratio of the coefficients of two blocks, as a figure that is exact. */
    Optional<Figure> ratio(QuantityBlock above, QuantityBlock below) {
        return pair(above, below).map(p -> Figure.given(Symbol.words("ratio of " + above.name() + " to " + below.name()), Unit.ONE, p.ratio(),
                new Origin.Counted()));
    }

    static Figure usual(Figure moles) {
        return moles.in(Kit.usual(Dimension.AMOUNT, moles.value()));
    }
}
