package tarewright.procedure.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.library.Library;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.tables.HazardTables;

/** Where groups get different amounts, what is got ready is the sum over all groups, however many there are, and a group's own bottle holds the largest. */
class DealtSuppliesTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 7, 14, 30})
    void nobodyIsShort(int groups) {
        Resolved procedure = Library.resolve(Library.file("turning-point-of-chalk"), Library.setting(groups, "20 °C", "101.3 kPa")).value();
        Recipes recipes = Recipes.of(procedure, List.of());
        Supplies supplies = Supplies.of(procedure, BenchSafety.of(procedure, HazardTables.of("").rules()).bench(), recipes);
        double factor = 1 + procedure.setting().spare();
        int dealt = 0;
        for (Provision provision : supplies.provisions()) {
            double sum = 0;
            double most = 0;
            for (Hand hand : procedure.hands()) {
                double takes = hand.resolved().quantity(provision.name()).orElseThrow().figure(Property.VOLUME).orElseThrow().value();
                sum += takes * hand.times();
                most = Math.max(most, takes);
            }
            assertEquals(most, provision.each().value(), 1e-12, provision.name());
            assertTrue(provision.total().value() >= sum * factor * (1 - 1e-9), provision.name());
            assertEquals(sum * factor, provision.total().value(), 1.01e-6, provision.name());
            assertTrue(provision.ready().value() >= sum * factor * (1 - 1e-9), provision.name());
            Optional<Recipe> recipe = recipes.recipe(provision.name());
            assertTrue(recipe.isEmpty() || recipe.get().volume().value() >= sum * factor * (1 - 1e-9), provision.name());
            dealt += provision.varies() ? 1 : 0;
        }
        assertEquals(groups == 1 ? 0 : 1, dealt);
    }
}
