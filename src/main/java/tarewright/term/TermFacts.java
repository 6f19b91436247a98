package tarewright.term;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tarewright.derivation.Figure;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.declare.StockBlock.Price;
import tarewright.procedure.prepare.MakeUp;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.prepare.Order;
import tarewright.procedure.prepare.TermPlan;
import tarewright.procedure.recipe.Recipes;
import tarewright.quantity.Digits;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;
import tarewright.wording.Numbers;

/**
 * What the order list and the prep sheet of a term say, fact by fact. What they only repeat of the sections' own sheets (what is got ready for which class, the days) is told
 * there.
 */
final class TermFacts {
    private static final Numbers NUMBERS = Numbers.in("en");
    private static final int FIGURES = 2;
    private final List<Fact> facts = new ArrayList<>();

    private TermFacts() {
    }

    static List<Fact> of(List<Need> needs) {
        Map<Order.Part, Recipes> recipes = new LinkedHashMap<>();
        Map<Order.Part, List<WasteContainer>> waste = new LinkedHashMap<>();
        for (Need need : needs) {
            Need.Worked worked = need.worked();
            recipes.put(worked.part(), worked.recipes());
            waste.put(worked.part(), worked.safety().containers());
        }
        TermFacts all = new TermFacts();
        Order order = Order.of(List.copyOf(recipes.keySet()));
        order.lines().forEach(all::line);
        all.sums(order);
        order.things().forEach(t -> all.words("order", t.words() + (t.usedUp() ? ", used up" : t.kept() ? ", kept until the next lesson" : ""), "count", List.of(String.valueOf(t.count())), false));
        TermPlan plan = TermPlan.of(recipes, waste);
        plan.makeUps().forEach(all::makeUp);
        plan.waste().forEach(all::waste);
        return List.copyOf(all.facts);
    }

    // --- the order list

    private void line(Order.Line line) {
        String name = line.from().called() + (line.needed().dimension().equals(Dimension.MASS) ? " by mass" : "");
        figure("order", name, "needed", line.needed());
        if (line.shares().size() > 1) {
            line.shares().forEach((procedure, amount) -> figure("order", name, "for " + procedure, amount));
        }
        line.from().stock().ifPresent(stock -> {
            line.onHand().ifPresent(h -> words("order", name, "on hand", List.of(NUMBERS.plain(h)), true));
            stock.pack().ifPresent(p -> words("order", name, "pack", List.of(typed(p.value())), true));
            stock.price().ifPresent(p -> words("order", name, "price of a pack", List.of(money(p.value())), true));
        });
        line.packs().ifPresent(p -> words("order", name, "packs to buy", List.of(String.valueOf(p.count())), false));
        line.packs().flatMap(p -> p.cost().map(c -> (c.toPlainString() + " " + p.price().map(Price::currency).orElse("")).strip()))
                .ifPresent(c -> words("order", name, "cost", List.of(c), false));
    }

    private void sums(Order order) {
        List<String> sums = order.costs().entrySet().stream().map(e -> (e.getValue().toPlainString() + " " + e.getKey()).strip()).toList();
        if (!sums.isEmpty()) {
            words("order", "", "in all", List.of(String.join(" + ", sums)), false);
        }
    }

    private static String money(Price price) {
        return (price.amount().toPlainString() + " " + price.currency()).strip();
    }

    private static String typed(Typed typed) {
        return NUMBERS.plain(typed.unit().fromSi(typed.si()), typed.unit(), Math.max(0, typed.decimals()));
    }

    // --- the prep sheet

    private void makeUp(MakeUp makeUp) {
        String of = whom(makeUp);
        makeUp.on().ifPresent(d -> words("term", of, "made on", List.of(d.toString()), false));
        makeUp.until().ifPresent(d -> words("term", of, "use by", List.of(d.toString()), false));
        makeUp.recipe().block().strength().ifPresent(s -> words("term", of, "strength", List.of(s.at().text()), true));
        words("term", of, "made from", List.of(makeUp.recipe().from().name()), false);
        figure("term", of, "needed", makeUp.needed());
        List<String> flasks = makeUp.flasks().stream().map(f -> PrepFacts.flasks(f.count(), f.plan())).toList();
        words("term", of, "take", List.of(String.join("; ", flasks)), false);
    }

    /** {@code acid of hydrogen-from-magnesium for Mon-A, Mon-B}. */
    private static String whom(MakeUp makeUp) {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        makeUp.uses().forEach(u -> sections.computeIfAbsent(u.recipe().name() + " of " + u.part().procedure(), k -> new ArrayList<>()).add(u.part().section()));
        return sections.entrySet().stream().map(e -> e.getKey() + " for " + e.getValue().stream().distinct().collect(Collectors.joining(", "))).collect(Collectors.joining(" and "));
    }

    private void waste(TermPlan.Waste waste) {
        if (waste.litres() > 0) {
            String about = Digits.significant(waste.litres(), FIGURES) + " L";
            words("term", "waste, " + waste.into(), waste.unknown() > 0 ? "at least" : "about", List.of(about), false);
        }
    }

    // --- facts

    private void figure(String about, String of, String what, Figure figure) {
        facts.add(new Fact(about, of, what, "", List.of(NUMBERS.plain(figure)), List.of(figure.value()), false));
    }

    private void words(String about, String of, String what, List<String> shown, boolean typed) {
        facts.add(new Fact(about, of, what, "", shown, List.of(), typed));
    }
}
