package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/**
 * What the students find out, worked from what they read off. The amount of an unknown follows from a partner in its pot: from
 * what reacts with it or is made
 * from it and is read; from what is known, where the unknown itself is read; from what a back titration leaves of a reagent. A
 * bottle that is itself in no pot
 * follows from the portion or the dilution that was taken from it.
 */
final class Unknowns {
    private static final Unit MOLE = Units.symbol("mol").orElseThrow();

    private final Bench bench;
    private final QuantityBlock unknown;

    Unknowns(Bench bench, QuantityBlock unknown) {
        this.bench = bench;
        this.unknown = unknown;
    }

    /** Whether a block's amount or strength is to be found out: its own, or that of the bottle that it comes from. */
    static boolean concerns(Bench bench, QuantityBlock block) {
        return block.found() || fromUnknown(bench, block) && new Unknowns(bench, block).tells(new HashSet<>())
                || block.shownAs().isPresent() && new Unknowns(bench, block).productTells();
    }

    /** Whether a property of a block is worked here on the bench of readings. */
    static boolean finds(Bench bench, QuantityBlock block, Property property) {
        return switch (property) {
            case MOLES -> concerns(bench, block) || isBetween(bench, block);
            case STRENGTH -> concerns(bench, block);
            case PURITY -> block.found() && block.purity().isPresent() && block.shownAs().isEmpty();
            // Of what is shown under another formula the mass is known, and the formula is sought.
            case MASS -> block.found() && block.purity().isEmpty() && block.shownAs().isEmpty() && !block.is(Kind.SOLUTION)
                    && bench.readingOf(block, Property.MASS).isEmpty();
            case MOLAR_MASS -> block.shownAs().isPresent() && !block.is(Kind.SOLUTION) && !block.is(Kind.GAS) && concerns(bench, block);
            default -> false;
        };
    }

    private static boolean fromUnknown(Bench bench, QuantityBlock block) {
        Set<QuantityBlock> seen = new HashSet<>();
        Optional<QuantityBlock> at = Optional.of(block);
        while (at.isPresent() && at.get().strength().isEmpty() && seen.add(at.get())) {
            at = bench.source(at.get());
            if (at.filter(QuantityBlock::found).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** What is made from an unknown and taken up in another pot by something that is read: iodine set free and titrated. */
    private static boolean isBetween(Bench bench, QuantityBlock block) {
        Unknowns between = new Unknowns(bench, block);
        return block.rule() instanceof AmountRule.MadeBy && !between.isRead(block)
                && bench.potAsProduct(block).filter(p -> p.reactants().stream().anyMatch(r -> concerns(bench, r.block()))).isPresent()
                && bench.potAsReactant(block).filter(p -> p.parts().stream().anyMatch(q -> q.block() != block && between.isRead(q.block())))
                        .isPresent();
    }

    /** Whether anything that is read leads to it. */
    private boolean tells(Set<QuantityBlock> seen) {
        return seen.add(unknown) && (partner().isPresent() || titratedBack().isPresent()
                || taken().anyMatch(t -> new Unknowns(bench, t).tells(seen)));
    }

    /** Whether something that is made of it, or added until it is used up, is read: only that tells for certain. */
    private boolean productTells() {
        return partner().filter(p -> isRead(p) && rank(p) == 0).isPresent();
    }

    /** The amount of the unknown's substance. */
    Optional<Figure> moles() {
        Optional<QuantityBlock> partner = partner();
        if (partner.isPresent()) {
            return bench.figure(partner.get(), Property.MOLES).flatMap(n -> reacting().pair(unknown, partner.get())
                    .map(pair -> amount(pair, n)));
        }
        Optional<Back> back = titratedBack();
        if (back.isPresent()) {
            return usedUp(back.get())
                    .flatMap(used -> reacting().pair(unknown, back.get().reagent()).map(pair -> amount(pair, used)));
        }
        Optional<QuantityBlock> portion = telling();
        if (portion.isEmpty()) {
            bench.note(new ResolveFinding.NothingExpected(unknown.name(), unknown.block().nameSpan()));
            return Optional.empty();
        }
        if (unknown.is(Kind.SOLUTION)) {
            return Amounts.both(bench.figure(unknown, Property.STRENGTH), new Strengths(bench, unknown).whole())
                    .map(p -> content(p.first(), p.second()));
        }
        return Amounts.both(bench.figure(portion.get(), Property.STRENGTH), new Strengths(bench, portion.get()).whole())
                .map(p -> content(p.first(), p.second()));
    }

    private Reacting reacting() {
        return new Reacting(bench);
    }

    /** More was there than its product shows; of a product less is there than what was used up shows. */
    private Figure amount(Reacting.Pair pair, Figure moles) {
        List<Power> powers = new ArrayList<>(List.of(new Power(moles, 1)));
        pair.yield(reacting()).ifPresent(y -> powers.add(new Power(y, -1)));
        pair.turned().yield(reacting()).ifPresent(y -> powers.add(new Power(y, 1)));
        return Reacting.usual(Figure.of(symbol("n"), MOLE, new Step.Product(pair.ratio(), powers)));
    }

    private Figure content(Figure strength, Figure volume) {
        return Reacting.usual(Figure.of(symbol("n"), MOLE,
                new Step.Product(1, List.of(new Power(strength, 1), new Power(volume, 1)))));
    }

    private Symbol symbol(String letter) {
        return new Amounts(bench, unknown).symbol(letter);
    }

    // --- partners in the pot

    /** Reacts with it or is made from it, and is read off; or, where the unknown is read off, is known of itself. */
    private Optional<QuantityBlock> partner() {
        Optional<QuantityBlock> read = others().filter(b -> (isRead(b) || isBetween(bench, b)) && !(b.rule() instanceof AmountRule.ExcessOver))
                .min(Comparator.comparingInt(this::rank));
        return read.isPresent() || !isRead(unknown) ? read : others().filter(b -> b.rule() instanceof AmountRule.Stated)
                .findFirst();
    }

    /** What is made from it, or is added until it is used up, tells for certain; a reagent of a fixed amount may as well be in excess. */
    private int rank(QuantityBlock block) {
        boolean made = bench.potAsProduct(block).isPresent() && bench.potsOf(unknown).contains(bench.potAsProduct(block).get());
        return made || block.rule() instanceof AmountRule.For || isBetween(bench, block) ? 0 : 1;
    }

    private Stream<QuantityBlock> others() {
        return bench.potsOf(unknown).stream().flatMap(p -> p.parts().stream()).map(Part::block)
                .filter(b -> b != unknown && !b.found() && !fromUnknown(bench, b));
    }

    private boolean isRead(QuantityBlock block) {
        return Stream.of(Property.VOLUME, Property.MASS, Property.MOLES).anyMatch(p -> bench.readingOf(block, p).isPresent());
    }

    /** A reagent of the unknown's pot, and what takes up the rest of it. */
    private record Back(QuantityBlock reagent, QuantityBlock titrant) {
    }

    private Optional<Back> titratedBack() {
        return others().flatMap(reagent -> bench.procedure.quantities().stream()
                .filter(t -> t.rule() instanceof AmountRule.For goal && goal.leftOver() && goal.target().equals(reagent.name())
                        && isRead(t))
                .map(t -> new Back(reagent, t))).findFirst();
    }

    /** What the unknown used up of a reagent: all that was there less what the titrant found left. */
    private Optional<Figure> usedUp(Back back) {
        return Amounts.both(bench.figure(back.reagent(), Property.MOLES), bench.figure(back.titrant(), Property.MOLES))
                .flatMap(n -> reacting().pair(back.titrant(), back.reagent()).map(pair -> Reacting.usual(
                        Figure.of(Symbol.ofName("n used", back.reagent().name()), MOLE,
                                new Step.Sum(List.of(new Term(1, n.first()), new Term(-1 / pair.ratio(), n.second())))))));
    }

    // --- portions of a bottle

    /** What was taken or made from the unknown. */
    private Stream<QuantityBlock> taken() {
        return bench.procedure.quantities().stream()
                .filter(q -> q.strength().isEmpty() && bench.source(q).filter(s -> s == unknown).isPresent());
    }

    private Optional<QuantityBlock> telling() {
        return taken().filter(t -> new Unknowns(bench, t).tells(new HashSet<>())).findFirst();
    }

    /** Amount over volume; of a bottle the strength of its portion, or of its dilution times how far it was diluted. */
    Optional<Figure> strength() {
        Optional<QuantityBlock> portion = partner().isPresent() || titratedBack().isPresent() ? Optional.empty() : telling();
        if (portion.isEmpty()) {
            return Amounts.both(bench.figure(unknown, Property.MOLES), new Strengths(bench, unknown).whole())
                    .map(p -> molar(List.of(
                    new Power(p.first(), 1), new Power(p.second(), -1))));
        }
        Optional<Figure> weaker = bench.figure(portion.get(), Property.STRENGTH);
        if (portion.get().madeUpTo().isEmpty()) {
            return weaker.map(c -> molar(List.of(new Power(c, 1))));
        }
        return Amounts.both(new Strengths(bench, portion.get()).whole(), bench.figure(portion.get(), Property.VOLUME))
                .flatMap(v -> weaker.map(c ->
                molar(List.of(new Power(c, 1), new Power(v.first(), 1), new Power(v.second(), -1)))));
    }

    private Figure molar(List<Power> powers) {
        return Figure.of(symbol("c"), Constituents.unit("mol/L").orElseThrow(), new Step.Product(1, powers));
    }

    // --- what was weighed

    /** The mass fraction of the substance in what was weighed. */
    Optional<Figure> purity() {
        return pureMass().flatMap(pure -> bench.figure(unknown, Property.MASS).map(sample -> Figure.of(symbol("w"),
                Units.symbol("%").orElseThrow(), new Step.Product(1, List.of(new Power(pure, 1), new Power(sample, -1))))));
    }

    Optional<Figure> mass() {
        return pureMass();
    }

    /** Mass over amount, of what is shown under a formula that leaves a number open. */
    Optional<Figure> molarMass() {
        return Amounts.both(bench.figure(unknown, Property.MASS), bench.figure(unknown, Property.MOLES)).map(p -> {
            List<Power> powers = new ArrayList<>(List.of(new Power(p.first(), 1), new Power(p.second(), -1)));
            unknown.purity().ifPresent(w -> powers.add(new Power(bench.constituents.typed(w.value(), symbol("w")), 1)));
            return Figure.of(symbol("M"), Constituents.unit("g/mol").orElseThrow(), new Step.Product(1, powers));
        });
    }

    private Optional<Figure> pureMass() {
        return Amounts.both(bench.figure(unknown, Property.MOLES), bench.figure(unknown, Property.MOLAR_MASS)).map(p -> {
            Figure mass = Figure.of(symbol("m"), Units.symbol("g").orElseThrow(),
                    new Step.Product(1, List.of(new Power(p.first(), 1), new Power(p.second(), 1))));
            return mass.in(Kit.usual(Dimension.MASS, mass.value()));
        });
    }
}
