package tarewright.procedure.recipe;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.Formula;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.chemistry.solution.Source;
import tarewright.chemistry.solution.StockStrength;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.resolve.MolarMasses;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;

/**
 * What a solution is made from: the bottle on the shelf or the block that it names; where it names none, a solid at hand, a stronger bottle on the shelf, the solid, or what is usually sold of it. A bottle of the term goes before
 * one of the same name in the procedure.
 */
final class Shelf {
    /** How many times as strong a bottle has to be to be diluted. */
    private static final double STRONGER = 1.05;
    private final Resolved procedure;
    private final List<StockBlock> term;
    private final MolarMasses masses;
    private final LabelStrength labels;

    Shelf(Resolved procedure, List<StockBlock> term) {
        this.procedure = procedure;
        this.term = term;
        this.masses = new MolarMasses(procedure.tables());
        this.labels = new LabelStrength(procedure.tables(), masses);
    }

    /** Empty where nothing on the shelf, in the procedure or in the tables brings the solute. */
    Optional<Ingredient> of(QuantityBlock block, Formula solute) {
        Optional<String> name = block.madeFrom().map(At::value);
        if (name.isEmpty()) {
            return atHand(solute).or(() -> stronger(block, solute)).or(() -> solid(solute)).or(() -> usual(solute, ""));
        }
        Optional<StockBlock> bottle = bottle(name.get());
        if (bottle.isPresent()) {
            return bottle.flatMap(this::taken).filter(i -> brings(i, solute));
        }
        Optional<ResolvedQuantity> other = procedure.quantity(name.get()).filter(q -> q.block() != block);
        if (other.isPresent()) {
            return ofBlock(other.get()).filter(i -> brings(i, solute));
        }
        Optional<Substance> named = procedure.tables().substances().named(name.get()).filter(s -> s.state() == State.SOLID);
        return named.flatMap(Substance::formula).flatMap(f -> ofSolid(Ingredient.Kind.SOLID, name.get(), f, Optional.empty(), Optional.empty()))
                .filter(i -> brings(i, solute)).or(() -> usual(solute, name.get())).or(() -> solid(solute));
    }

    /** A solid that is there anyway, on the shelf or among what the class uses, if it brings the solute: perhaps another hydrate. */
    private Optional<Ingredient> atHand(Formula solute) {
        Stream<Ingredient> bottles = Stream.concat(term.stream(), procedure.procedure().stocks().stream()).flatMap(b -> taken(b).stream());
        return Stream.concat(bottles, procedure.quantities().stream().flatMap(q -> jar(q).stream()))
                .filter(i -> i.source() instanceof Source.Solid && brings(i, solute)).findFirst();
    }

    /** A bottle on the shelf with more of the solute in it than is wanted; one that is only as strong is poured out of, and there is no recipe for that. */
    private Optional<Ingredient> stronger(QuantityBlock block, Formula solute) {
        Optional<Figure> wanted = procedure.quantity(block.name()).flatMap(q -> q.figure(Property.STRENGTH));
        return Stream.concat(term.stream(), procedure.procedure().stocks().stream()).flatMap(b -> taken(b).stream()).filter(i -> i.source() instanceof Source.Stock && brings(i, solute))
                .filter(i -> wanted.flatMap(w -> i.source().strongest().filter(c -> c.value() > w.value() * STRONGER)).isPresent()).findFirst();
    }

    /** The jar that a solid of the class comes out of: what is taken from it comes on top of what the class gets. */
    private Optional<Ingredient> jar(ResolvedQuantity solid) {
        return solid.taken() && solid.block().is(Kind.SOLID) ? solid.matter().flatMap(m ->
                ofSolid(Ingredient.Kind.SOLID, m.name(), m.formula(), solid.figure(Property.PURITY), Optional.empty())) : Optional.empty();
    }

    private Optional<StockBlock> bottle(String name) {
        return term.stream().filter(s -> s.name().equals(name)).findFirst().or(() -> procedure.procedure().stock(name));
    }

    private static boolean brings(Ingredient ingredient, Formula solute) {
        return ingredient.formula().anhydrous().sameComposition(solute.anhydrous());
    }

    private Optional<Ingredient> taken(StockBlock bottle) {
        Optional<Formula> formula = bottle.matter().map(m -> m.value().formula());
        Optional<Typed> density = bottle.density().map(At::value);
        if (formula.isEmpty()) {
            return Optional.empty();
        }
        if (bottle.dissolved()) {
            return bottle.strength().flatMap(s -> labels.of(s.value(), formula.get(), density))
                    .map(s -> stock(Ingredient.Kind.SHELF, bottle.name(), s, formula.get(), Optional.of(bottle)));
        }
        Optional<State> state = bottle.matter().flatMap(m -> m.value().substance()).map(Substance::state);
        if (state.filter(s -> s == State.LIQUID).isPresent()) {
            return labels.pure(formula.get(), bottle.purity().map(At::value), density)
                    .map(s -> stock(Ingredient.Kind.SHELF, bottle.name(), s, formula.get(), Optional.of(bottle)));
        }
        return state.filter(s -> s == State.GAS).isPresent() ? Optional.empty()
                : ofSolid(Ingredient.Kind.SHELF, bottle.name(), formula.get(), bottle.purity().map(p -> LabelStrength.typed("w", p.value())),
                        Optional.of(bottle));
    }

    private Ingredient stock(Ingredient.Kind kind, String name, StockStrength strength, Formula formula, Optional<StockBlock> bottle) {
        Source.Stock stock = Source.Stock.of(name, strength);
        OptionalDouble from = procedure.tables().practice().fumesFrom(formula.plain());
        return new Ingredient(kind, from.isPresent() && stock.concentration().value() >= from.getAsDouble() ? stock.fuming() : stock, formula, bottle);
    }

    private Optional<Ingredient> ofSolid(Ingredient.Kind kind, String name, Formula formula, Optional<Figure> purity, Optional<StockBlock> bottle) {
        return masses.of(formula).map(m -> new Ingredient(kind, new Source.Solid(name, formula, m, purity), formula, bottle));
    }

    private Optional<Ingredient> ofBlock(ResolvedQuantity other) {
        Optional<Formula> formula = other.matter().map(Matter::formula);
        if (formula.isEmpty()) {
            return Optional.empty();
        }
        if (other.block().is(Kind.SOLUTION)) {
            return other.strengthToMake().map(c -> stock(Ingredient.Kind.BLOCK, other.name(), new StockStrength.Molar(c), formula.get(), Optional.empty()));
        }
        if (other.block().is(Kind.LIQUID)) {
            return labels.pure(formula.get(), other.block().purity().map(At::value), other.block().density().map(At::value))
                    .map(s -> stock(Ingredient.Kind.BLOCK, other.name(), s, formula.get(), Optional.empty()));
        }
        return other.block().is(Kind.SOLID)
                ? ofSolid(Ingredient.Kind.BLOCK, other.name(), formula.get(), other.figure(Property.PURITY), Optional.empty()) : Optional.empty();
    }

    private Optional<Ingredient> solid(Formula solute) {
        List<Substance> rows = procedure.tables().substances().of(solute);
        return rows.stream().filter(s -> s.state() == State.SOLID).findFirst()
                .flatMap(s -> ofSolid(Ingredient.Kind.SOLID, s.name(), solute, Optional.empty(), Optional.empty()));
    }

    /** As it is usually sold to laboratories: the row that fits the name, the preferred one before others. */
    private Optional<Ingredient> usual(Formula solute, String name) {
        List<String> words = words(name);
        List<CommercialStrength> sold = procedure.tables().strengthsOf(solute.anhydrous());
        List<CommercialStrength> fitting = sold.stream().filter(s -> !name.isEmpty() && words(s.name()).containsAll(words)).toList();
        List<CommercialStrength> rows = fitting.isEmpty() ? sold.stream().filter(s -> !s.household()).toList() : fitting;
        return rows.stream().filter(s -> s.note().contains("preferred")).findFirst().or(() -> rows.stream().findFirst())
                .flatMap(s -> labels.of(s).map(strength -> stock(Ingredient.Kind.USUAL, s.name(), strength, s.solute(), Optional.empty())));
    }

    private static List<String> words(String name) {
        return List.of(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"));
    }

    /** How the bottle differs from what the procedure names. */
    Optional<Rework> rework(QuantityBlock block, Formula solute, Ingredient ingredient) {
        if (ingredient.source() instanceof Source.Solid && !ingredient.formula().sameComposition(solute)) {
            return Optional.of(new Rework.OtherHydrate(solute.unicode(), ingredient.formula().unicode()));
        }
        Optional<At<Strength>> named = block.madeFrom().flatMap(n -> procedure.procedure().stock(n.value()).flatMap(StockBlock::strength)
                .or(() -> procedure.procedure().quantity(n.value()).flatMap(QuantityBlock::strength)));
        Optional<At<Strength>> here = ingredient.stock().flatMap(StockBlock::strength);
        return named.flatMap(n -> here.filter(h -> !h.at().text().equals(n.at().text()))
                .map(h -> new Rework.OtherStrength(n.at().text(), h.at().text())));
    }
}
