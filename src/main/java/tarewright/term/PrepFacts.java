package tarewright.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tarewright.chemistry.solution.Plan;
import tarewright.chemistry.solution.Preparation;
import tarewright.derivation.Figure;
import tarewright.procedure.bench.Naming;
import tarewright.procedure.bench.OnTheBench;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.prepare.Draw;
import tarewright.procedure.prepare.Equipment;
import tarewright.procedure.prepare.Provision;
import tarewright.procedure.prepare.Supplies;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.recipe.Unmade;
import tarewright.procedure.resolve.Resolved;
import tarewright.quantity.Dimension;
import tarewright.safety.Rulebook;
import tarewright.wording.Numbers;

/** What the technician's sheet says: recipes, what is got ready, what comes off the shelf, how many of each thing. */
final class PrepFacts {
    private static final Numbers NUMBERS = Numbers.in("en");
    private final Figures figures;
    private final Words words;

    /** Takes a fact that is a figure. */
    interface Figures {
        void add(String about, String of, String what, Figure figure);
    }

    /** Takes a fact in words. */
    interface Words {
        void add(String about, String of, String what, List<String> shown, boolean typed);
    }

    PrepFacts(Figures figures, Words words) {
        this.figures = figures;
        this.words = words;
    }

    void of(Resolved procedure, Rulebook rules) {
        Recipes recipes = Recipes.of(procedure, List.of());
        Supplies supplies = Supplies.of(procedure, OnTheBench.of(procedure, rules, Naming.USUAL), recipes);
        procedure.procedure().stocks().forEach(this::stock);
        recipes.recipes().forEach(this::recipe);
        recipes.unmade().forEach(this::unmade);
        supplies.provisions().forEach(this::provision);
        Draw.of(supplies, recipes, List.of()).forEach(d -> figures.add("shelf", name(d), "takes" + byMass(d.amount()), d.amount()));
        for (Equipment thing : supplies.equipment()) {
            words.add("prep", thing.item().name(), "for the class", List.of(String.valueOf(thing.total())), false);
        }
        supplies.queues().forEach(q -> figures.add("prep", q.item().name(), "time of the queue", q.time().shownTo(0)));
    }

    private static String name(Draw draw) {
        return draw.thing() instanceof Draw.Thing.From from ? from.ingredient().name() : ((Draw.Thing.Block) draw.thing()).block().name();
    }

    /** One bottle may be measured out in both ways. */
    private static String byMass(Figure figure) {
        return figure.dimension().equals(Dimension.MASS) ? " by mass" : "";
    }

    private void stock(StockBlock stock) {
        stock.strength().ifPresent(s -> typed(stock, "strength", s.at().text()));
        stock.density().ifPresent(d -> typed(stock, "density", d.at().text()));
        stock.purity().ifPresent(p -> typed(stock, "purity", p.at().text()));
        stock.onHand().ifPresent(h -> typed(stock, "on hand", h.at().text()));
    }

    private void typed(StockBlock stock, String what, String text) {
        words.add("stock", stock.name(), what, List.of(text), true);
    }

    private void recipe(Recipe recipe) {
        figures.add("recipe", recipe.name(), "makes", recipe.volume());
        words.add("recipe", recipe.name(), "made from", List.of(recipe.from().name()), false);
        List<String> flasks = new ArrayList<>();
        for (Recipe.Batch batch : recipe.batches()) {
            flasks.add(flasks(batch.count(), batch.plan()));
        }
        words.add("recipe", recipe.name(), "flasks", flasks, false);
        words.add("recipe", recipe.name(), "order", List.of(recipe.care().order().name().toLowerCase(Locale.ROOT).replace('_', ' ')), false);
        words.add("recipe", recipe.name(), "gets hot", List.of(recipe.hot() || recipe.care().hot() ? "yes" : "no"), false);
        recipe.keeps().ifPresent(k -> words.add("recipe", recipe.name(), "keeps", List.of(k), true));
    }

    /** {@code 2 × 20.8 mL in 500 mL}. */
    static String flasks(int count, Plan plan) {
        return plan.steps().stream().map(s -> step(count, s)).collect(Collectors.joining(", then "));
    }

    private static String step(int count, Preparation step) {
        return (count > 1 ? count + " × " : "") + NUMBERS.plain(step.taken()) + " in " + NUMBERS.plain(step.volume());
    }

    private void unmade(Unmade unmade) {
        words.add("recipe", unmade.block().name(), "", List.of("no recipe"), false);
    }

    private void provision(Provision provision) {
        String by = byMass(provision.each());
        figures.add("prep", provision.name(), "get ready" + by, provision.ready());
        figures.add("prep", provision.name(), "share of a group" + by, provision.share());
        provision.bottle().ifPresent(b -> figures.add("prep", provision.name(), "bottle" + by, b));
    }
}
