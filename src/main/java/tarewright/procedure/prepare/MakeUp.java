package tarewright.procedure.prepare;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tarewright.chemistry.solution.Flasks;
import tarewright.chemistry.solution.Plan;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.quantity.Dimension;
import tarewright.quantity.UsualUnits;

/**
 * A solution that is made once, for one section or for several that need the same while it keeps.
 *
 * @param uses for whom, by day; at least one
 * @param on the working day before the first use; empty where that has no day
 * @param until when it keeps; empty where nothing tells
 * @param flasks what is filled; together no more than the sections' own sheets say, so that the order list is enough
 */
public record MakeUp(List<Use> uses, Optional<LocalDate> on, Optional<LocalDate> until, List<Fill> flasks) {
    private static final double SAME = 1e-9;

    public MakeUp {
        uses = List.copyOf(uses);
        flasks = List.copyOf(flasks);
    }

    /** @param recipe as on the sheet of that section */
    public record Use(Order.Part part, Recipe recipe) {
    }

    /** @param count of flasks that are filled alike */
    public record Fill(int count, Plan plan) {
    }

    /** What the classes take of it. */
    public Figure needed() {
        return Draw.sum(uses.stream().map(u -> u.recipe().needed()).toList());
    }

    public Recipe recipe() {
        return uses.get(0).recipe();
    }

    /** Every solution of every part, in the order of the days. @param recipes of a part */
    static List<MakeUp> of(Map<Order.Part, Recipes> recipes) {
        Map<List<Object>, List<Use>> alike = new LinkedHashMap<>();
        recipes.forEach((part, its) -> its.recipes().forEach(r -> alike.computeIfAbsent(key(part, r), k -> new ArrayList<>()).add(new Use(part, r))));
        List<MakeUp> all = new ArrayList<>();
        alike.values().forEach(uses -> shared(uses, all));
        all.sort(Comparator.comparing(m -> m.on().orElse(LocalDate.MAX)));
        return all;
    }

    /** The same solute as strong, from the same thing. */
    private static List<Object> key(Order.Part part, Recipe recipe) {
        String solute = part.supplies().procedure().quantity(recipe.name()).flatMap(q -> q.matter()).map(Matter::formula).map(f -> f.plain()).orElse(recipe.name());
        return List.of(solute, Math.round(recipe.strength().value() * 1e6), recipe.from().kind(), recipe.from().name());
    }

    /** From the first use on, whatever falls into the time that it keeps. */
    private static void shared(List<Use> uses, List<MakeUp> into) {
        List<Use> left = new ArrayList<>(uses);
        left.sort(Comparator.comparing(u -> u.part().day().orElse(LocalDate.MAX)));
        while (!left.isEmpty()) {
            Use first = left.remove(0);
            Optional<LocalDate> on = first.part().day().map(MakeUp::before);
            List<Use> together = new ArrayList<>(List.of(first));
            Optional<LocalDate> until = until(on, first.recipe());
            for (Use other : List.copyOf(left)) {
                Optional<LocalDate> both = earlier(until, until(on, other.recipe()));
                if (both.isPresent() && other.part().day().filter(d -> !d.isAfter(both.get())).isPresent()) {
                    together.add(other);
                    left.remove(other);
                    until = both;
                }
            }
            into.add(new MakeUp(together, on, until, flasks(together)));
        }
    }

    private static Optional<LocalDate> until(Optional<LocalDate> on, Recipe recipe) {
        OptionalInt days = recipe.keeps().map(Keeps::days).orElse(OptionalInt.empty());
        return days.isPresent() ? on.map(d -> d.plusDays(days.getAsInt())) : Optional.empty();
    }

    /** The earlier of both; empty unless both are told. */
    private static Optional<LocalDate> earlier(Optional<LocalDate> one, Optional<LocalDate> other) {
        return one.flatMap(a -> other.map(b -> a.isBefore(b) ? a : b));
    }

    /** The working day before: Saturday and Sunday are stepped over. Common practice, no source. */
    public static LocalDate before(LocalDate day) {
        LocalDate before = day.minusDays(1);
        while (before.getDayOfWeek() == DayOfWeek.SATURDAY || before.getDayOfWeek() == DayOfWeek.SUNDAY) {
            before = before.minusDays(1);
        }
        return before;
    }

    private static List<Fill> flasks(List<Use> uses) {
        List<Fill> each = uses.stream().flatMap(u -> u.recipe().batches().stream()).map(b -> new Fill(b.count(), b.plan())).toList();
        if (uses.size() == 1) {
            return each;
        }
        double separately = uses.stream().mapToDouble(u -> u.recipe().volume().value()).sum();
        List<Fill> together = new ArrayList<>();
        double made = 0;
        for (Flasks.Filling filling : Flasks.filling(uses.stream().mapToDouble(u -> u.recipe().needed().value()).sum())) {
            Optional<Plan> plan = Plan.of(uses.get(0).recipe().strength(), flask(filling.capacity()), uses.get(0).recipe().from().source(), Optional.empty()).value();
            plan.ifPresent(p -> together.add(new Fill(filling.count(), p)));
            made += plan.isPresent() ? filling.count() * filling.capacity() : Double.POSITIVE_INFINITY;
        }
        return together.isEmpty() || made > separately * (1 + SAME) ? each : together;
    }

    private static Figure flask(double volume) {
        return Figure.given(Symbol.alone("V"), UsualUnits.of(Dimension.VOLUME, volume), volume, new Origin.Counted());
    }
}
