package tarewright.procedure.prepare;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.solution.Plan;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.recipe.Ingredient;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;

/**
 * A solution that is made once, for one section or for several that need the same while it keeps.
 *
 * @param uses for whom, by day; at least one
 * @param on the working day before the first use, or its day where it does not keep so long; empty where that has no day
 * @param until when it keeps; empty where nothing tells
 * @param needed what the classes take of it and what is really taken of it for other solutions
 * @param flasks what is filled; together no more than the sections' own sheets say, so that the order list is enough
 */
public record MakeUp(List<Use> uses, Optional<LocalDate> on, Optional<LocalDate> until, Figure needed, List<Fill> flasks) {
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

    public Recipe recipe() {
        return uses.get(0).recipe();
    }

    /** Whether it is made on the day of its class, before it. */
    public boolean onTheDay() {
        return on.isPresent() && on.equals(uses.get(0).part().day());
    }

    /** Every solution of every part, in the order of the days. @param recipes of a part */
    static List<MakeUp> of(Map<Order.Part, Recipes> recipes) {
        Map<List<Object>, List<Use>> alike = new LinkedHashMap<>();
        recipes.forEach((part, its) -> its.recipes().forEach(r -> alike.computeIfAbsent(key(part, r), k -> new ArrayList<>()).add(new Use(part, r))));
        // What others are made of comes after them: only then is known what is really taken of it.
        List<List<Use>> inTurn = new ArrayList<>(alike.values());
        inTurn.sort(Comparator.comparingInt(uses -> uses.stream().mapToInt(u -> above(recipes.get(u.part()), u.recipe())).max().orElse(0)));
        ReallyTaken taken = new ReallyTaken();
        List<MakeUp> all = new ArrayList<>();
        for (List<Use> uses : inTurn) {
            List<MakeUp> its = shared(uses, taken);
            its.forEach(taken::of);
            all.addAll(its);
        }
        Map<Use, Integer> order = new IdentityHashMap<>();
        alike.values().forEach(uses -> uses.forEach(u -> order.put(u, order.size())));
        all.sort(Comparator.<MakeUp, LocalDate>comparing(m -> m.on().orElse(LocalDate.MAX)).thenComparing(m -> !isSource(m, all)).thenComparingInt(m -> order.get(m.uses().get(0))));
        return all;
    }

    private static boolean isSource(MakeUp one, List<MakeUp> all) {
        return all.stream().anyMatch(m -> m.recipe().from().kind() == Ingredient.Kind.BLOCK && m.recipe().from().name().equals(one.recipe().name()));
    }

    /** How many solutions stand between it and what is handed out. */
    private static int above(Recipes all, Recipe recipe) {
        return all.recipes().stream().filter(r -> r != recipe && ReallyTaken.isFrom(r, recipe.name())).mapToInt(r -> 1 + above(all, r)).max().orElse(0);
    }

    /** The same solute as strong, from the same thing. */
    private static List<Object> key(Order.Part part, Recipe recipe) {
        String solute = part.supplies().procedure().quantity(recipe.name()).flatMap(q -> q.matter()).map(Matter::formula).map(f -> f.plain()).orElse(recipe.name());
        return List.of(solute, Math.round(recipe.strength().value() * 1e6), recipe.from().kind(), recipe.from().name());
    }

    /** From the first use on, whatever falls into the time that it keeps, and every class of the same day, for which it grows no older. */
    private static List<MakeUp> shared(List<Use> uses, ReallyTaken taken) {
        List<MakeUp> all = new ArrayList<>();
        List<Use> left = new ArrayList<>(uses);
        left.sort(Comparator.comparing(u -> u.part().day().orElse(LocalDate.MAX)));
        while (!left.isEmpty()) {
            Use first = left.remove(0);
            Optional<LocalDate> on = first.part().day().map(d -> madeOn(d, first.recipe()));
            List<Use> together = new ArrayList<>(List.of(first));
            Optional<LocalDate> until = until(on, first.recipe());
            for (Use other : List.copyOf(left)) {
                Optional<LocalDate> both = earlier(until, until(on, other.recipe()));
                boolean sameDay = on.isPresent() && first.part().day().equals(other.part().day()) && !forHours(first.recipe()) && !forHours(other.recipe())
                        && onTheDay(first.recipe()) == onTheDay(other.recipe());
                boolean keeps = !onTheDay(first.recipe()) && both.isPresent() && other.part().day().filter(d -> !d.isAfter(both.get())).isPresent();
                if (sameDay || keeps) {
                    together.add(other);
                    left.remove(other);
                    until = both;
                }
            }
            Figure needed = Draw.sum(together.stream().map(taken::needed).toList());
            all.add(new MakeUp(together, on, until, needed, Joined.flasks(together, needed)));
        }
        return all;
    }

    private static boolean onTheDay(Recipe recipe) {
        return recipe.keeps().filter(Keeps::onTheDay).isPresent();
    }

    /** Two classes of one day may be further apart than it keeps. */
    private static boolean forHours(Recipe recipe) {
        return recipe.keeps().flatMap(Keeps::of).filter(Period::isZero).isPresent();
    }

    /** The working day before, or the day itself where it does not keep so long. */
    private static LocalDate madeOn(LocalDate day, Recipe recipe) {
        LocalDate before = before(day);
        return onTheDay(recipe) || until(Optional.of(before), recipe).filter(u -> u.isBefore(day)).isPresent() ? day : before;
    }

    private static Optional<LocalDate> until(Optional<LocalDate> on, Recipe recipe) {
        return recipe.keeps().flatMap(Keeps::of).flatMap(p -> on.map(d -> d.plus(p)));
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
}
