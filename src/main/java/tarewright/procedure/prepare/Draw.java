package tarewright.procedure.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Term;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.recipe.Ingredient;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Strength;

/**
 * What one procedure takes off the shelf of one thing: what its recipes start from, and what is handed out as it is.
 *
 * @param key the same for the same thing in another procedure
 * @param thing what it is called after
 * @param stock its bottle, where a stock block tells of it
 * @param amount mass, volume, length or number
 */
public record Draw(String key, Thing thing, Optional<StockBlock> stock, Figure amount) {
    /** What gives it its name. */
    public sealed interface Thing {
        /** What a recipe starts from. */
        record From(Ingredient ingredient) implements Thing {
        }

        /** A block of the procedure that nothing is made for. */
        record Block(QuantityBlock block) implements Thing {
        }
    }

    /** Each thing once for each way of measuring it, in the order of the procedure. @param shelf the bottles of the term */
    public static List<Draw> of(Supplies supplies, Recipes recipes, List<StockBlock> shelf) {
        List<StockBlock> bottles = new ArrayList<>(shelf);
        bottles.addAll(supplies.procedure().procedure().stocks());
        List<Draw> single = new ArrayList<>();
        for (Recipe recipe : recipes.recipes()) {
            if (recipes.recipe(recipe.from().name()).isEmpty() || recipe.from().kind() != Ingredient.Kind.BLOCK) {
                recipe.batches().forEach(b -> single.add(taken(recipe.from(), times(b.count(), b.plan().first().taken()), supplies, bottles)));
            }
        }
        supplies.provisions().stream().filter(p -> recipes.recipe(p.name()).isEmpty() && !isWater(p.source()))
                .forEach(p -> single.add(block(p.source().block(), p.ready(), supplies, bottles)));
        Map<String, List<Draw>> byKey = new LinkedHashMap<>();
        single.forEach(d -> byKey.computeIfAbsent(d.key, k -> new ArrayList<>()).add(d));
        return byKey.values().stream().map(Draw::together).toList();
    }

    /** It comes from the tap or the still, not off the shelf. */
    private static boolean isWater(ResolvedQuantity source) {
        return source.matter().filter(m -> m.formula().plain().equals("H2O")).isPresent();
    }

    /** Draws of one key as one. */
    static Draw together(List<Draw> draws) {
        Draw first = draws.get(0);
        return draws.size() == 1 ? first : new Draw(first.key, first.thing, first.stock, sum(draws.stream().map(Draw::amount).toList()));
    }

    /** Of one dimension, in the unit of the first; at least one. */
    /** One figure of several of one dimension, shown to the last digit that one of them has. */
    public static Figure sum(List<Figure> amounts) {
        Figure first = amounts.get(0);
        int decimals = amounts.stream().mapToInt(a -> a.unit().equals(first.unit()) ? a.decimals().orElse(0) : 0).max().orElse(0);
        return amounts.size() == 1 ? first : Figure.of(first.symbol(), first.unit(), new Step.Sum(amounts.stream().map(a -> new Term(1, a)).toList()))
                .shownTo(Math.max(0, decimals));
    }

    private static Figure times(int count, Figure amount) {
        return count == 1 ? amount : Figure.of(amount.symbol(), amount.unit(), new Step.Sum(List.of(new Term(count, amount)))).shownTo(Math.max(0, amount.decimals().orElse(0)));
    }

    private static Draw taken(Ingredient from, Figure amount, Supplies supplies, List<StockBlock> bottles) {
        if (from.kind() == Ingredient.Kind.BLOCK) {
            return block(supplies.procedure().procedure().quantity(from.name()).orElseThrow(), amount, supplies, bottles);
        }
        Optional<StockBlock> stock = from.stock().or(() -> bottles.stream().filter(b -> from.kind() == Ingredient.Kind.SOLID && !b.dissolved() && isOf(b, from.formula())).findFirst());
        return new Draw(key(stock, from.name(), amount), new Thing.From(from), stock, amount);
    }

    private static Draw block(QuantityBlock block, Figure amount, Supplies supplies, List<StockBlock> bottles) {
        Optional<Matter> matter = supplies.procedure().quantity(block.name()).flatMap(q -> q.matter());
        Optional<StockBlock> stock = bottles.stream().filter(b -> b.name().equals(block.name()) || block.madeFrom().filter(n -> n.value().equals(b.name())).isPresent())
                .findFirst().or(() -> bottles.stream().filter(b -> matter.filter(m -> isOf(b, m.formula())).isPresent() && asStrong(b, block)).findFirst());
        String name = matter.map(Matter::name).or(() -> block.mixture().map(m -> m.value().name())).orElse(block.name())
                + block.strength().map(s -> " " + s.at().text()).orElse("");
        return new Draw(key(stock, name, amount), new Thing.Block(block), stock, amount);
    }

    private static boolean isOf(StockBlock bottle, Formula formula) {
        return bottle.matter().filter(m -> m.value().formula().sameComposition(formula)).isPresent();
    }

    private static boolean asStrong(StockBlock bottle, QuantityBlock block) {
        Optional<String> wanted = block.strength().map(At<Strength>::at).map(s -> s.text());
        return bottle.dissolved() == block.is(Kind.SOLUTION) && bottle.strength().map(At<Strength>::at).map(s -> s.text()).equals(wanted);
    }

    /** Bottles of one name and different strengths are different things. */
    private static String key(Optional<StockBlock> stock, String name, Figure amount) {
        return stock.map(s -> "bottle " + s.name() + s.strength().map(t -> " " + t.at().text()).orElse("") + s.matter().map(m -> " " + m.value().formula().plain()).orElse(""))
                .orElse(name) + " " + amount.dimension();
    }

    /** What stands on its bottle: the name of the stock or of what is usually sold, else the substance and its strength as the author wrote them. */
    public String called() {
        String measured = " " + amount.dimension();
        return stock.map(StockBlock::name).orElseGet(() -> thing instanceof Thing.From from ? from.ingredient().name()
                : key.endsWith(measured) ? key.substring(0, key.length() - measured.length()) : key);
    }

    /** How much of it stands on the shelf, where that is told in the way that it is measured. */
    public Optional<Figure> onHand() {
        return stock.flatMap(StockBlock::onHand).map(At::value).filter(t -> t.dimension().equals(amount.dimension()))
                .map(t -> Figure.given(amount.symbol(), t.unit(), t.si(), new tarewright.derivation.Origin.Author()).shownTo(Math.max(0, t.decimals())));
    }

}
