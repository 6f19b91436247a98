package tarewright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import tarewright.chemistry.solution.AmountCheck;
import tarewright.chemistry.solution.Preparation;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.recipe.Rework;
import tarewright.wording.WorkedLines;

/** The recipes of a procedure's solutions, for other programs: what to take, the flask, and the check line. */
final class RecipesJson {
    private static final WorkedLines WORKING = WorkedLines.in("en");

    private RecipesJson() {
    }

    static void into(ObjectNode node, Recipes recipes) {
        ObjectNode all = node.putObject("recipes");
        recipes.recipes().forEach(r -> recipe(all.putObject(r.name()), r));
        if (!recipes.unmade().isEmpty()) {
            ObjectNode none = node.putObject("no recipe");
            recipes.unmade().forEach(u -> none.put(u.block().name(), u.trouble().map(t -> t.id()).orElseGet(() -> word(u.why()))));
        }
    }

    private static void recipe(ObjectNode node, Recipe recipe) {
        node.put("from", recipe.from().name());
        node.put("known from", word(recipe.from().kind()));
        node.set("needed", FiguresJson.figure(recipe.needed()));
        node.set("volume", FiguresJson.figure(recipe.volume()));
        node.put("order", word(recipe.care().order()));
        ArrayNode batches = node.putArray("batches");
        for (Recipe.Batch batch : recipe.batches()) {
            ObjectNode each = batches.addObject();
            each.put("flasks", batch.count());
            ArrayNode steps = each.putArray("steps");
            batch.plan().steps().forEach(s -> step(steps.addObject(), s));
            each.set("check", check(batch.plan().check()));
        }
        recipe.rise().ifPresent(r -> node.set("temperature rise", FiguresJson.figure(r)));
        node.put("heat", word(recipe.care().heat()));
        node.put("hot", recipe.hot() || recipe.care().hot());
        recipe.rework().ifPresent(r -> rework(node.putObject("rework"), r));
        recipe.keeps().ifPresent(k -> node.put("keeps", k));
    }

    private static void step(ObjectNode node, Preparation step) {
        node.put("of", step.source().name());
        node.set("take", FiguresJson.figure(step.taken()));
        node.put("with", word(step.delivery()));
        node.set("flask", FiguresJson.figure(step.volume()));
        ArrayNode working = node.putArray("working");
        WORKING.of(step.exact()).forEach(line -> working.add(line.plain()));
    }

    private static ObjectNode check(AmountCheck check) {
        ObjectNode node = FiguresJson.figure(check.in()).objectNode();
        node.set("in", FiguresJson.figure(check.in()));
        node.set("out", FiguresJson.figure(check.out()));
        node.put("agrees", check.agrees());
        return node;
    }

    private static void rework(ObjectNode node, Rework rework) {
        if (rework instanceof Rework.OtherHydrate hydrate) {
            node.put("named", hydrate.named());
            node.put("on the shelf", hydrate.onShelf());
        } else if (rework instanceof Rework.OtherStrength strength) {
            node.put("named", strength.named());
            node.put("on the shelf", strength.onShelf());
        }
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
