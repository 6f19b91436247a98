package tarewright.procedure.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.procedure.bench.OnTheBench;
import tarewright.procedure.bench.OwnSolutions;
import tarewright.procedure.bench.Taken;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.RinseAndFill;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Dimension;
import tarewright.quantity.Rounding;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.setting.Setting;
import tarewright.tables.Practice;

/**
 * What is got ready for one procedure in one setting.
 *
 * @param provisions what is handed out, in the order of the procedure; not what a group makes up itself
 * @param equipment every thing of the apparatus blocks, in their order
 * @param queues at balances that groups share
 */
public record Supplies(Resolved procedure, List<Provision> provisions, List<Equipment> equipment, List<BalanceQueue> queues) {
    private static final Unit MILLILITRE = Units.symbol("mL").orElseThrow();

    public Supplies {
        provisions = List.copyOf(provisions);
        equipment = List.copyOf(equipment);
        queues = List.copyOf(queues);
    }

    /** @param recipes of the solutions that are made, in whole flasks */
    public static Supplies of(Resolved procedure, OnTheBench bench, Recipes recipes) {
        List<Provision> provisions = new ArrayList<>();
        bench.taken().forEach(bottle -> handedOut(procedure, bottle).forEach(p -> provisions.add(recipes.recipe(p.name())
                .filter(r -> r.volume().dimension().equals(p.total().dimension())).map(r -> p.made(r.volume())).orElse(p))));
        List<Equipment> equipment = procedure.procedure().apparatus().stream().map(i -> Equipment.of(i, procedure.setting())).toList();
        return new Supplies(procedure, provisions, equipment, BalanceQueue.of(procedure, equipment));
    }

    public Optional<Provision> provision(String block) {
        return provisions.stream().filter(p -> p.name().equals(block) || p.uses().stream().anyMatch(u -> u.name().equals(block))).findFirst();
    }

    /** By mass and by volume apart, where one bottle is measured out in both ways. */
    private static List<Provision> handedOut(Resolved procedure, Taken bottle) {
        Map<Dimension, Map<ResolvedQuantity, Figure>> byKind = new LinkedHashMap<>();
        for (ResolvedQuantity use : bottle.uses()) {
            boolean bottleOfOthers = procedure.quantities().stream().anyMatch(q -> q.block().portionOf()
                    .filter(p -> p.value().equals(use.name())).isPresent());
            if (!bottleOfOthers && !OwnSolutions.holds(procedure, use.block())) {
                use.figure(Property.LENGTH).or(use::amount).ifPresent(a -> enter(byKind, use, a));
            }
        }
        for (ResolvedQuantity own : OwnSolutions.of(procedure)) {
            Optional<QuantityBlock> from = own.block().madeFrom().flatMap(n -> procedure.procedure().quantity(n.value()));
            if (from.filter(f -> f == bottle.source().block()).isPresent() && !OwnSolutions.holds(procedure, from.get())) {
                own.figure(Property.TAKEN).ifPresent(a -> enter(byKind, own, a));
            }
        }
        return byKind.values().stream().map(uses -> provision(procedure, bottle.source(), uses)).toList();
    }

    private static void enter(Map<Dimension, Map<ResolvedQuantity, Figure>> byKind, ResolvedQuantity use, Figure amount) {
        byKind.computeIfAbsent(amount.dimension(), d -> new LinkedHashMap<>()).put(use, amount);
    }

    private static Provision provision(Resolved procedure, ResolvedQuantity source, Map<ResolvedQuantity, Figure> uses) {
        Setting setting = procedure.setting();
        Practice practice = procedure.tables().practice();
        List<Step.Term> most = most(procedure, uses);
        Figure first = most.get(0).figure();
        List<RinseAndFill> fillings = uses.keySet().stream().flatMap(u -> u.filling().stream()).filter(f -> f.total().dimension().equals(first.dimension())).toList();
        Figure each = each(procedure, source, most, fillings);
        Figure spare = counted("spare", 1 + setting.spare());
        boolean varies = procedure.hands().stream().flatMap(h -> uses.keySet().stream().map(u -> terms(h, u, uses.get(u), 1).get(0).figure().value() - uses.get(u).value()))
                .anyMatch(difference -> difference != 0);
        Figure exact = varies ? Figure.of(named("total", source), each.unit(), new Step.Product(1, List.of(new Power(all(procedure, uses, fillings), 1), new Power(spare, 1))))
                : Figure.of(named("total", source), each.unit(),
                new Step.Product(1, List.of(new Power(each, 1), new Power(counted("groups", setting.groups()), 1), new Power(spare, 1))));
        Figure share = share(procedure, source, each);
        return new Provision(source, List.copyOf(uses.keySet()), fillings, each, lastDigitUp(exact, each, source), Rounded.up(exact, practice.figures(), named("ready", source)),
                share, bottle(share, practice), varies ? dealt(procedure, source, uses, fillings) : List.of());
    }

    /** Of one group, with its part of what rinses and fills. @param takes what it takes in all its runs */
    private static Figure each(Resolved procedure, ResolvedQuantity source, List<Step.Term> takes, List<RinseAndFill> fillings) {
        List<Step.Term> terms = new ArrayList<>(takes);
        fillings.forEach(f -> terms.add(new Step.Term(1.0 / procedure.setting().groups(), f.total())));
        Figure first = terms.get(0).figure();
        return terms.size() == 1 && terms.get(0).coefficient() == 1 ? first : shownAs(Figure.of(named("each", source), first.unit(), new Step.Sum(terms)), first);
    }

    /** With spare, rounded down, but never less than it takes. */
    private static Figure share(Resolved procedure, ResolvedQuantity source, Figure each) {
        Figure spare = counted("spare", 1 + procedure.setting().spare());
        Figure withSpare = Figure.of(named("each with spare", source), each.unit(), new Step.Product(1, List.of(new Power(each, 1), new Power(spare, 1))));
        Figure down = Rounded.down(withSpare, procedure.tables().practice().figures(), named("share", source));
        return down.value() < each.value() ? shownAs(each.as(named("share", source)), each) : down;
    }

    /** Who gets how much, in the order of the first group that gets it. */
    private static List<Provision.Dealt> dealt(Resolved procedure, ResolvedQuantity source, Map<ResolvedQuantity, Figure> uses, List<RinseAndFill> fillings) {
        Map<Double, List<Integer>> groups = new LinkedHashMap<>();
        Map<Double, Figure> each = new LinkedHashMap<>();
        for (int group = 1; group <= procedure.setting().groups(); group++) {
            Figure takes = each(procedure, source, takes(procedure, uses, group), fillings);
            groups.computeIfAbsent(takes.value(), k -> new ArrayList<>()).add(group);
            each.putIfAbsent(takes.value(), takes);
        }
        return groups.entrySet().stream().map(e -> {
            Figure share = share(procedure, source, each.get(e.getKey()));
            return new Provision.Dealt(e.getValue(), share, bottle(share, procedure.tables().practice()));
        }).toList();
    }

    /** What a group takes, each hand of it as often as the group has it. */
    private static List<Step.Term> takes(Resolved procedure, Map<ResolvedQuantity, Figure> uses, int group) {
        return procedure.hands().stream().filter(h -> h.groups().contains(group))
                .flatMap(h -> uses.keySet().stream().flatMap(u -> terms(h, u, uses.get(u), h.runs().size()).stream())).toList();
    }

    /** What the group takes that takes most. */
    private static List<Step.Term> most(Resolved procedure, Map<ResolvedQuantity, Figure> uses) {
        List<Step.Term> most = List.of();
        double largest = -1;
        for (int group = 1; group <= procedure.setting().groups(); group++) {
            List<Step.Term> terms = takes(procedure, uses, group);
            double takes = terms.stream().mapToDouble(t -> t.coefficient() * t.figure().value()).sum();
            if (takes > largest) {
                largest = takes;
                most = terms;
            }
        }
        return most;
    }

    /** What all groups take, without spare. */
    private static Figure all(Resolved procedure, Map<ResolvedQuantity, Figure> uses, List<RinseAndFill> fillings) {
        List<Step.Term> terms = new ArrayList<>(procedure.hands().stream().flatMap(h -> uses.keySet().stream().flatMap(u -> terms(h, u, uses.get(u), h.times()).stream())).toList());
        fillings.forEach(f -> terms.add(new Step.Term(1, f.total())));
        return Figure.of(Symbol.words("all groups"), terms.get(0).figure().unit(), new Step.Sum(terms));
    }

    /** What a hand takes for one use, so many times. @param likewise the same figure of the first hand */
    private static List<Step.Term> terms(Hand hand, ResolvedQuantity use, Figure likewise, int times) {
        Figure own = hand.resolved().quantity(use.name()).flatMap(q -> Stream.of(q.figure(Property.LENGTH), q.amount(), q.figure(Property.TAKEN)).flatMap(Optional::stream)
                .filter(f -> f.symbol().equals(likewise.symbol()) && f.dimension().equals(likewise.dimension())).findFirst()).orElse(likewise);
        return List.of(new Step.Term((double) use.block().portions() * times, own));
    }

    /** No digit that is not shown is lacking. */
    private static Figure lastDigitUp(Figure exact, Figure each, ResolvedQuantity source) {
        if (each.decimals().isEmpty()) {
            return exact;
        }
        int decimals = Math.max(0, each.decimals().getAsInt());
        Rounding up = new Rounding(Rounding.Direction.UP, each.unit().factor() / Math.pow(10, decimals));
        return Figure.of(named("total", source), each.unit(), new Step.Set(exact, up, Reason.ENOUGH)).shownTo(decimals);
    }

    private static Figure shownAs(Figure figure, Figure like) {
        return like.decimals().isPresent() ? figure.shownTo(Math.max(0, like.decimals().getAsInt())) : figure;
    }

    private static Symbol named(String letter, ResolvedQuantity source) {
        return Symbol.ofName(letter, source.name());
    }

    private static Figure counted(String words, double number) {
        return Figure.given(Symbol.words(words), Unit.ONE, number, new Origin.Counted());
    }

    private static Optional<Figure> bottle(Figure share, Practice practice) {
        if (!share.dimension().equals(Dimension.VOLUME)) {
            return Optional.empty();
        }
        return practice.bottles().stream().filter(v -> share.value() <= v * practice.fullest() * (1 + 1e-9)).findFirst()
                .map(v -> Figure.given(Symbol.alone("V"), MILLILITRE, v, new Origin.Table("common practice, no source", false)).shownTo(0));
    }
}
