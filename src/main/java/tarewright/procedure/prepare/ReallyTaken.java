package tarewright.procedure.prepare;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Term;
import tarewright.procedure.recipe.Ingredient;
import tarewright.procedure.recipe.Recipe;

/** What solutions that are made at one go take of the solution that they are made from, in the place of what the sections' own sheets take of it one by one. */
final class ReallyTaken {
    /** By the part that it is made for first, and the name of what it is made from. */
    private final Map<Order.Part, Map<String, List<Term>>> changes = new IdentityHashMap<>();

    /** Whether a recipe starts from another solution of the procedure. */
    static boolean isFrom(Recipe recipe, String name) {
        return recipe.from().kind() == Ingredient.Kind.BLOCK && recipe.from().name().equals(name);
    }

    /** Once it is known in which flasks it is made. */
    void of(MakeUp made) {
        if (made.uses().size() < 2 || made.recipe().from().kind() != Ingredient.Kind.BLOCK) {
            return;
        }
        made.uses().forEach(u -> u.recipe().batches().forEach(b -> change(u, new Term(-b.count(), b.plan().first().taken()))));
        made.flasks().forEach(f -> change(made.uses().get(0), new Term(f.count(), f.plan().first().taken())));
    }

    private void change(MakeUp.Use use, Term term) {
        changes.computeIfAbsent(use.part(), p -> new java.util.LinkedHashMap<>()).computeIfAbsent(use.recipe().from().name(), n -> new ArrayList<>()).add(term);
    }

    /** What one use needs, with what really goes into others. */
    Figure needed(MakeUp.Use use) {
        Figure alone = use.recipe().needed();
        List<Term> terms = changes.getOrDefault(use.part(), Map.of()).getOrDefault(use.recipe().name(), List.of());
        if (terms.isEmpty()) {
            return alone;
        }
        List<Term> all = new ArrayList<>(List.of(new Term(1, alone)));
        all.addAll(terms);
        return Figure.of(alone.symbol(), alone.unit(), new Step.Sum(all)).shownTo(Math.max(0, alone.decimals().orElse(0)));
    }
}
