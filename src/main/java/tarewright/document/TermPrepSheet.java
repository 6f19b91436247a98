package tarewright.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tarewright.chemistry.solution.Plan;
import tarewright.derivation.Figure;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.prepare.Draw;
import tarewright.procedure.prepare.FollowUp;
import tarewright.procedure.prepare.MakeUp;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.prepare.Order;
import tarewright.procedure.prepare.Provision;
import tarewright.procedure.prepare.TermPlan;
import tarewright.procedure.recipe.Recipes;
import tarewright.quantity.Digits;
import tarewright.wording.Dates;

/** A whole term for the technician: the classes in order, what to do on which day, what to make for whom at one go, how much waste, how many of each thing. */
final class TermPrepSheet {
    private static final int WEEK = 7;
    private static final int FIGURES = 2;

    private final Map<Order.Part, Draft> drafts = new IdentityHashMap<>();
    private final Map<Order.Part, String> groups = new IdentityHashMap<>();
    private final TermPlan plan;
    private final Draft draft;

    /** @param needs at least one */
    TermPrepSheet(List<Need> needs) {
        Map<Order.Part, Recipes> recipes = new LinkedHashMap<>();
        Map<Order.Part, List<WasteContainer>> waste = new LinkedHashMap<>();
        for (Need need : needs) {
            Need.Worked worked = need.worked();
            Order.Part part = worked.part();
            recipes.put(part, worked.recipes());
            waste.put(part, worked.safety().containers());
            drafts.put(part, Draft.of(need.procedure(), true));
            groups.put(part, need.procedure().setting().groups() + " × " + need.procedure().setting().groupSize());
        }
        this.plan = TermPlan.of(recipes, waste);
        this.draft = drafts.get(recipes.keySet().iterator().next());
    }

    Draft draft() {
        return draft;
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>(List.of(draft.paragraph("term.said")));
        Grid classes = new Grid(draft, "").words("term.day", "order.section", "order.procedure").numbers("term.groups");
        plan.parts().forEach(p -> classes.row(day(p.day()), Text.words(p.section()), title(p), Text.words(groups.get(p))));
        pieces.addAll(classes.under(2, "heading.term-classes"));
        pieces.addAll(timeline());
        pieces.addAll(solutions());
        Grid waste = new Grid(draft, "term.waste").words("term.container").numbers("term.volume").words("term.ph");
        plan.waste().forEach(w -> waste.row(draft.prose().of(w.said() ? w.into() : draft.say("waste.container." + w.into())), litres(w), acidity(w)));
        pieces.addAll(waste.under(2, "heading.term-waste"));
        Grid things = new Grid(draft, "order.things").words("expect.what").numbers("order.count");
        plan.things().forEach(t -> things.row(Text.words(t.usedUp() || t.kept() ? draft.say(t.usedUp() ? "order.used-up" : "order.kept", "item", t.words()) : t.words()),
                Text.words(Integer.toString(t.count()))));
        pieces.addAll(things.under(2, "heading.order-things"));
        return pieces;
    }

    // --- day by day

    /** What is done on one day. */
    private record Doing(String key, List<Text> what, List<Text> whom) {
    }

    private List<Piece> timeline() {
        Map<LocalDate, List<Doing>> days = new TreeMap<>();
        plan.days().forEach((day, parts) -> {
            add(days, day.minusDays(WEEK), new Doing("term.order", List.of(), whom(parts)));
            for (Order.Part part : parts) {
                List<Provision> portioned = TermPlan.portioned(part, plan.makeUps());
                if (!portioned.isEmpty()) {
                    add(days, before(day), new Doing("term.portion", Typeset.joined(portioned.stream().map(p -> amountOf(part, p)).toList(), "; "), whom(List.of(part))));
                }
            }
            add(days, day, new Doing("term.put-out", List.of(), whom(parts)));
            add(days, day, new Doing("term.after", List.of(), whom(parts)));
            parts.forEach(p -> FollowUp.of(p, plan.parts()).ifPresent(f -> add(days, f.day().orElseThrow(), again(p, f))));
        });
        plan.makeUps().forEach(m -> m.on().ifPresent(on -> add(days, on, new Doing(m.onTheDay() ? "term.make-first" : "term.make", made(m), whom(parts(m))))));
        Grid grid = new Grid(draft, "").words("term.day", "term.do", "term.whom");
        days.forEach((day, doings) -> {
            for (Doing doing : doings.stream().sorted((a, b) -> Integer.compare(ORDER.indexOf(a.key), ORDER.indexOf(b.key))).toList()) {
                grid.row(day(Optional.of(day)), doing.what.isEmpty() ? Text.words(draft.say(doing.key)) : draft.compose(doing.key, Map.of("what", doing.what)), doing.whom);
            }
        });
        List<Piece> pieces = new ArrayList<>(grid.under(2, "heading.term-days"));
        if (plan.parts().stream().anyMatch(p -> p.day().isEmpty())) {
            pieces.add(draft.paragraph("term.no-day"));
        }
        return pieces;
    }

    private static final List<String> ORDER = List.of("term.make-first", "term.put-out", "term.again", "term.after", "term.make", "term.portion", "term.order");

    private static void add(Map<LocalDate, List<Doing>> days, LocalDate day, Doing doing) {
        days.computeIfAbsent(day, d -> new ArrayList<>()).add(doing);
    }

    /** A week later: what stood by until then, and what its steps take. */
    private Doing again(Order.Part part, FollowUp later) {
        List<List<Text>> needs = later.needs().stream().map(e -> Text.words(draft.say("prep.counted", "item", e.item().words(), "count", e.total()))).toList();
        Map<String, List<Text>> named = Map.of("steps", Text.words(later.steps().stream().map(String::valueOf).collect(Collectors.joining(", "))), "things", Typeset.joined(needs, "; "));
        return new Doing("term.again", draft.compose(later.steps().isEmpty() ? "term.kept-back" : needs.isEmpty() ? "term.again-bare" : "term.again-with", named), whom(List.of(part)));
    }

    private static LocalDate before(LocalDate day) {
        return MakeUp.before(day);
    }

    private List<Text> amountOf(Order.Part part, Provision provision) {
        return draft.compose("term.amount-of", Map.of("amount", shown(provision.ready()), "name", new Labels(drafts.get(part)).label(provision.source().block())));
    }

    // --- solutions

    private List<Piece> solutions() {
        Grid totals = new Grid(draft, "term.totals").words("expect.what").numbers("order.needed", "term.times");
        Map<String, List<MakeUp>> bySolution = new LinkedHashMap<>();
        plan.makeUps().forEach(m -> bySolution.computeIfAbsent(Plain.of(label(m)) + m.recipe().from().name(), k -> new ArrayList<>()).add(m));
        bySolution.values().forEach(all -> totals.row(label(all.get(0)), shown(Draw.sum(all.stream().map(MakeUp::needed).toList())),
                Text.words(Integer.toString(all.size()))));
        Grid grid = new Grid(draft, "term.make-ups").words("term.make-on", "expect.what", "term.whom").numbers("order.needed").words("term.fill", "term.use-by");
        for (MakeUp makeUp : plan.makeUps()) {
            grid.row(day(makeUp.on()), label(makeUp), whom(parts(makeUp)), shown(makeUp.needed()), fill(makeUp),
                    useBy(makeUp));
        }
        List<Piece> pieces = new ArrayList<>(totals.under(2, "heading.term-solutions"));
        pieces.addAll(grid.pieces());
        return pieces;
    }

    /** Until when it keeps; in the author's words where they tell no one time, and that nobody tells. */
    private List<Text> useBy(MakeUp makeUp) {
        return makeUp.until().map(u -> day(Optional.of(u))).orElseGet(() -> makeUp.recipe().keeps().map(k -> draft.prose().of(k)).orElseGet(() -> Text.words(draft.say("term.keeps-unknown"))));
    }

    /** {@code 2 × 500 mL: 20.80 mL of concentrated acid each}. */
    private List<Text> fill(MakeUp makeUp) {
        List<List<Text>> flasks = new ArrayList<>();
        for (MakeUp.Fill fill : makeUp.flasks()) {
            Plan its = fill.plan();
            List<List<Text>> steps = its.steps().stream().map(s -> draft.compose("term.flask", Map.of("count", Text.words(Integer.toString(fill.count())),
                    "flask", shown(s.volume()), "take", shown(s.taken())))).toList();
            flasks.add(Typeset.joined(steps, draft.say("term.then")));
        }
        return draft.compose("term.from", Map.of("flasks", Typeset.joined(flasks, "; "),
                "source", RecipePieces.source(drafts.get(makeUp.uses().get(0).part()), makeUp.recipe().from())));
    }

    private List<Text> made(MakeUp makeUp) {
        double volume = makeUp.flasks().stream().mapToDouble(f -> f.count() * f.plan().steps().get(f.plan().steps().size() - 1).volume().value()).sum();
        Figure needed = makeUp.recipe().volume();
        String shown = draft.numbers().printed(needed.unit().fromSi(volume), needed.unit(), Math.max(0, needed.decimals().orElse(0)));
        return draft.compose("term.amount-of", Map.of("amount", Text.words(shown), "name", label(makeUp)));
    }

    private List<Text> label(MakeUp makeUp) {
        return new Labels(drafts.get(makeUp.uses().get(0).part())).toMake(makeUp.recipe().block());
    }

    private static List<Order.Part> parts(MakeUp makeUp) {
        return makeUp.uses().stream().map(MakeUp.Use::part).toList();
    }

    // --- names and numbers

    /** {@code Hydrogen from magnesium ribbon (Mon-A, Mon-B)}. */
    private List<Text> whom(List<Order.Part> parts) {
        Map<String, List<Order.Part>> byProcedure = new LinkedHashMap<>();
        parts.forEach(p -> byProcedure.computeIfAbsent(p.procedure(), k -> new ArrayList<>()).add(p));
        return Typeset.joined(byProcedure.values().stream().map(its -> draft.compose("term.for", Map.of("procedure", title(its.get(0)), "sections",
                Text.words(its.stream().map(Order.Part::section).distinct().collect(Collectors.joining(", ")))))).toList(), "; ");
    }

    private List<Text> title(Order.Part part) {
        return part.supplies().procedure().procedure().front().title().map(t -> drafts.get(part).prose().of(t.value())).orElseGet(() -> Text.words(part.procedure()));
    }

    private List<Text> day(Optional<LocalDate> day) {
        return Text.words(day.map(d -> draft.say("day.with", "weekday", draft.say("day." + d.getDayOfWeek().getValue()), "date",
                Dates.printed(d.toString(), draft.procedure().setting().language()))).orElseGet(() -> draft.say("term.not-told")));
    }

    /** Outward to a tenth, so that nothing is milder on paper. */
    private List<Text> acidity(TermPlan.Waste waste) {
        if (waste.acidity().isEmpty()) {
            return Text.words(draft.say("term.ph-unknown"));
        }
        String lowest = draft.numbers().localised(BigDecimal.valueOf(waste.acidity().get().lowest()).setScale(1, RoundingMode.FLOOR).toPlainString());
        String highest = draft.numbers().localised(BigDecimal.valueOf(waste.acidity().get().highest()).setScale(1, RoundingMode.CEILING).toPlainString());
        return Text.words(draft.say(waste.untested() > 0 ? "term.ph-partly" : "term.ph-from", "lowest", lowest, "highest", highest));
    }

    private List<Text> litres(TermPlan.Waste waste) {
        String about = draft.numbers().localised(Digits.significant(waste.litres(), FIGURES)) + "\u202FL";
        return Text.words(waste.litres() <= 0 ? draft.say("term.not-told") : waste.unknown() > 0 ? draft.say("term.at-least", "volume", about) : about);
    }

    private List<Text> shown(Figure figure) {
        return Text.words(draft.numbers().printed(figure));
    }
}
