package tarewright.procedure.prepare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.recipe.Recipes;

/**
 * A whole term for the technician.
 *
 * @param parts by day, those without one last
 * @param makeUps every solution, shared by sections where it keeps
 * @param things of the apparatus, see {@link Order#things}
 * @param waste by container
 */
public record TermPlan(List<Order.Part> parts, List<MakeUp> makeUps, List<Order.Thing> things, List<Waste> waste) {
    public TermPlan {
        parts = List.copyOf(parts);
        makeUps = List.copyOf(makeUps);
        things = List.copyOf(things);
        waste = List.copyOf(waste);
    }

    /**
     * What all sections leave in one container.
     *
     * @param into the name of the container; {@code said} whether it is the author's
     * @param litres together, of those parts of which it is known
     * @param unknown parts of which it is not
     * @param acidity from the sourest that any class puts in to the most alkaline; empty where none is known
     * @param untested how many classes put in something whose pH is not known
     */
    public record Waste(String into, boolean said, double litres, int unknown, Optional<WasteContainer.PutIn> acidity, int untested) {
    }

    /** @param recipes of each part @param waste of each part */
    public static TermPlan of(Map<Order.Part, Recipes> recipes, Map<Order.Part, List<WasteContainer>> waste) {
        List<Order.Part> parts = new ArrayList<>(recipes.keySet());
        parts.sort(Comparator.comparing(p -> p.day().orElse(LocalDate.MAX)));
        Map<Order.Part, Recipes> inOrder = new LinkedHashMap<>();
        parts.forEach(p -> inOrder.put(p, recipes.get(p)));
        List<WasteContainer> all = parts.stream().flatMap(p -> waste.get(p).stream()).toList();
        return new TermPlan(parts, MakeUp.of(inOrder), Order.of(parts).things(), waste(all));
    }

    /** The days on which there is a class, with what is done. */
    public Map<LocalDate, List<Order.Part>> days() {
        Map<LocalDate, List<Order.Part>> days = new TreeMap<>();
        parts.forEach(p -> p.day().ifPresent(d -> days.computeIfAbsent(d, k -> new ArrayList<>()).add(p)));
        return days;
    }

    /** What is handed out as it is, without a recipe. */
    public static List<Provision> portioned(Order.Part part, List<MakeUp> makeUps) {
        Map<String, Boolean> made = new LinkedHashMap<>();
        makeUps.forEach(m -> m.uses().stream().filter(u -> u.part() == part).forEach(u -> made.put(u.recipe().name(), true)));
        return part.supplies().provisions().stream().filter(p -> !made.containsKey(p.name())).toList();
    }

    private static List<Waste> waste(List<WasteContainer> all) {
        Map<String, Waste> byContainer = new LinkedHashMap<>();
        for (WasteContainer each : all) {
            Optional<Double> litres = each.volume().map(v -> v.value() * 1000);
            Optional<WasteContainer.PutIn> acidity = acidity(each);
            Waste own = new Waste(each.into(), each.said(), litres.orElse(0.0), litres.isPresent() ? 0 : 1, acidity, acidity.isPresent() ? 0 : 1);
            byContainer.merge(each.said() + each.into(), own, (a, b) -> new Waste(a.into, a.said, a.litres + b.litres, a.unknown + b.unknown, wider(a.acidity, b.acidity), a.untested + b.untested));
        }
        return List.copyOf(byContainer.values());
    }

    /** Of what is put in and of all of it together. */
    private static Optional<WasteContainer.PutIn> acidity(WasteContainer each) {
        Optional<WasteContainer.PutIn> together = each.pH().isPresent() ? Optional.of(new WasteContainer.PutIn(each.pH().getAsDouble(), each.pH().getAsDouble())) : Optional.empty();
        return wider(each.putIn(), together);
    }

    private static Optional<WasteContainer.PutIn> wider(Optional<WasteContainer.PutIn> one, Optional<WasteContainer.PutIn> other) {
        return one.isEmpty() ? other : other.isEmpty() ? one : Optional.of(new WasteContainer.PutIn(Math.min(one.get().lowest(), other.get().lowest()),
                Math.max(one.get().highest(), other.get().highest())));
    }
}
