package tarewright.procedure.prepare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.solution.Flasks;
import tarewright.chemistry.solution.Plan;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.procedure.recipe.Recipe;
import tarewright.quantity.Dimension;
import tarewright.quantity.UsualUnits;

/**
 * The flasks of what is made at one go for several: as few as hold it, and together no more than the sections' own sheets say, so that what the order list counts is enough.
 */
final class Joined {
    private static final double SAME = 1e-9;
    private static final int MOST = 4;
    /** A flask beside one of ten times its size is not worth filling: common practice, no source. */
    private static final double SMALLEST = 0.2;

    private Joined() {
    }

    static List<MakeUp.Fill> flasks(List<MakeUp.Use> uses, Figure needed) {
        List<MakeUp.Fill> each = each(uses);
        double separately = uses.stream().mapToDouble(u -> u.recipe().volume().value()).sum();
        int many = each.stream().mapToInt(MakeUp.Fill::count).sum();
        return uses.size() == 1 ? each : fewest(needed.value(), separately, many).flatMap(sizes -> filled(uses.get(0).recipe(), sizes)).orElse(each);
    }

    /** As on the sheets of the sections, flasks that are filled alike counted together. */
    private static List<MakeUp.Fill> each(List<MakeUp.Use> uses) {
        Map<Double, MakeUp.Fill> bySize = new LinkedHashMap<>();
        uses.stream().flatMap(u -> u.recipe().batches().stream()).forEach(b -> bySize.merge(b.plan().last().volume().value(), new MakeUp.Fill(b.count(), b.plan()),
                (a, c) -> new MakeUp.Fill(a.count() + c.count(), a.plan())));
        return List.copyOf(bySize.values());
    }

    /** The fewest flasks, and of as many the smallest together, that hold at least so much and at most as much as is made one by one. */
    private static Optional<List<Double>> fewest(double needed, double separately, int many) {
        for (int count = 1; count <= MOST && count < many; count++) {
            List<List<Double>> all = new ArrayList<>();
            choose(count, Flasks.sizes().size() - 1, new ArrayList<>(), all);
            Optional<List<Double>> best = all.stream().filter(s -> sum(s) >= needed * (1 - SAME) && sum(s) <= separately * (1 + SAME))
                    .filter(s -> s.get(s.size() - 1) >= SMALLEST * s.get(0) * (1 - SAME)).min(Comparator.comparingDouble(Joined::sum));
            if (best.isPresent()) {
                return best;
            }
        }
        return Optional.empty();
    }

    /** Every choice of so many flasks, the largest first. */
    private static void choose(int count, int from, List<Double> chosen, List<List<Double>> into) {
        if (count == 0) {
            into.add(List.copyOf(chosen));
            return;
        }
        for (int i = from; i >= 0; i--) {
            chosen.add(Flasks.sizes().get(i));
            choose(count - 1, i, chosen, into);
            chosen.remove(chosen.size() - 1);
        }
    }

    private static double sum(List<Double> sizes) {
        return sizes.stream().mapToDouble(Double::doubleValue).sum();
    }

    private static Optional<List<MakeUp.Fill>> filled(Recipe recipe, List<Double> sizes) {
        Map<Double, MakeUp.Fill> bySize = new LinkedHashMap<>();
        for (double size : sizes) {
            Figure flask = Figure.given(Symbol.alone("V"), UsualUnits.of(Dimension.VOLUME, size), size, new Origin.Counted());
            Optional<Plan> plan = Plan.of(recipe.strength(), flask, recipe.from().source(), Optional.empty()).value();
            if (plan.isEmpty()) {
                return Optional.empty();
            }
            bySize.merge(size, new MakeUp.Fill(1, plan.get()), (a, b) -> new MakeUp.Fill(a.count() + 1, a.plan()));
        }
        return Optional.of(List.copyOf(bySize.values()));
    }
}
