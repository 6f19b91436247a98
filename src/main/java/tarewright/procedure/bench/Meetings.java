package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.safety.Clash;
import tarewright.safety.Incompatible;
import tarewright.safety.Matter;
import tarewright.safety.Rulebook;
import tarewright.safety.Together;

/** What must not meet of what is on the bench, other than what the procedure means to bring together. */
public final class Meetings {
    private Meetings() {
    }

    /** Among bottles and products, gravest first. */
    public static List<Clash> among(Resolved procedure, OnTheBench bench, Rulebook rules) {
        return among(procedure, bench, List.of(), rules);
    }

    /** With the stocks, too, that solutions are made from. */
    static List<Clash> among(Resolved procedure, OnTheBench bench, List<Stock> stocks, Rulebook rules) {
        List<Matter> matters = Stream.concat(bench.verdicts().stream(), stocks.stream().map(Stock::verdict))
                .map(v -> v.matter()).toList();
        return new Incompatible(rules).among(matters, Going.of(procedure), intended(procedure, bench, stocks));
    }

    /** What shares a pot; a stock shares that of what is made from it. */
    private static List<Together> intended(Resolved procedure, OnTheBench bench, List<Stock> stocks) {
        List<Together> pairs = new ArrayList<>();
        for (ResolvedReaction reaction : procedure.reactions()) {
            List<String> made = bench.made().stream().filter(m -> m.reaction() == reaction).map(m -> m.verdict().matter().name())
                    .toList();
            // Also where the amounts of a pot could not be reckoned, its equation says what meets in it.
            List<String> named = new ArrayList<>(made);
            reaction.block().equation().ifPresent(e -> bench.taken().stream()
                    .filter(t -> t.source().matter().filter(m -> e.isReactant(m.formula())).isPresent())
                    .forEach(t -> named.add(t.verdict().matter().name())));
            pairUp(named, pairs);
            for (PotAccount pot : reaction.pots()) {
                List<String> in = new ArrayList<>(made);
                List<String> blocks = pot.reactants().stream().flatMap(r -> r.blocks().stream()).toList();
                bench.taken().stream().filter(t -> t.isUsedIn(blocks)).forEach(t -> in.add(t.verdict().matter().name()));
                bench.made().stream().filter(m -> m.block().filter(b -> blocks.contains(b.name())).isPresent())
                        .forEach(m -> in.add(m.verdict().matter().name()));
                stocks.stream().filter(s -> s.makes().stream().anyMatch(m -> blocks.contains(m.name()))).map(Stock::name)
                        .forEach(in::add);
                pairUp(in, pairs);
            }
        }
        for (Stock stock : stocks) {
            bench.taken().stream().filter(t -> t.isUsedIn(stock.makes().stream().map(m -> m.name()).toList()))
                    .forEach(t -> pairs.add(new Together(stock.name(), t.verdict().matter().name())));
        }
        return pairs;
    }

    private static void pairUp(List<String> names, List<Together> into) {
        List<String> each = names.stream().distinct().toList();
        for (int i = 0; i < each.size(); i++) {
            for (int j = i + 1; j < each.size(); j++) {
                into.add(new Together(each.get(i), each.get(j)));
            }
        }
    }
}
