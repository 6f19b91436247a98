package tarewright.procedure.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Air;
import tarewright.safety.AirEstimate;
import tarewright.safety.Clash;
import tarewright.safety.Classification;
import tarewright.safety.HoodReason;
import tarewright.safety.Matter;
import tarewright.safety.Rulebook;
import tarewright.safety.Verdict;
import tarewright.setting.Setting;

/**
 * All that can be reckoned of the dangers of one procedure.
 *
 * @param stocks what its solutions are made from
 * @param clashes what must not meet, gravest first
 * @param closed closed vessels in which a gas forms
 * @param waste what is left in each pot
 * @param containers where it goes, all pots of one container together
 * @param verdicts by the name of each block, by that of each product that is no block, by that of each stock
 */
public record BenchSafety(Resolved procedure, OnTheBench bench, List<Stock> stocks, List<Clash> clashes, List<ClosedVessel> closed,
        List<PotWaste> waste, List<WasteContainer> containers, Map<String, Verdict> verdicts) {
    /** Whether a fume hood is needed, and there. */
    public enum Hood { NEEDED, GIVEN, NOT_NEEDED }

    public BenchSafety {
        stocks = List.copyOf(stocks);
        clashes = List.copyOf(clashes);
        closed = List.copyOf(closed);
        waste = List.copyOf(waste);
        containers = List.copyOf(containers);
        verdicts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(verdicts));
    }

    public static BenchSafety of(Resolved procedure, Rulebook rules) {
        return of(procedure, List.of(), rules);
    }

    /** @param shelf stock blocks of a term, which go before the procedure's own */
    public static BenchSafety of(Resolved procedure, List<StockBlock> shelf, Rulebook rules) {
        OnTheBench bench = OnTheBench.of(procedure, rules, Naming.USUAL);
        List<Stock> stocks = Stock.of(procedure, shelf, rules);
        List<PotWaste> waste = PotWaste.of(procedure, bench, rules);
        return new BenchSafety(procedure, bench, stocks, Meetings.among(procedure, bench, stocks, rules),
                ClosedVessel.of(procedure, bench), waste, WasteContainer.of(procedure, p -> p == procedure ? bench : OnTheBench.of(p, rules, Naming.USUAL), rules),
                verdicts(procedure, bench, stocks, new Classification(rules)));
    }

    private static Map<String, Verdict> verdicts(Resolved procedure, OnTheBench bench, List<Stock> stocks,
            Classification classification) {
        Map<String, Verdict> all = new LinkedHashMap<>();
        for (ResolvedQuantity quantity : procedure.quantities()) {
            ResolvedQuantity source = procedure.quantity(Bottles.source(procedure, quantity.block()).name()).orElse(quantity);
            Optional<Verdict> made = bench.made().stream().filter(m -> m.block().filter(b -> b == quantity).isPresent())
                    .map(Made::verdict).findFirst();
            Optional<Verdict> taken = bench.taken().stream().filter(t -> t.source() == source || t.uses().contains(quantity))
                    .map(Taken::verdict).findFirst();
            all.put(quantity.name(), made.or(() -> taken).orElseGet(() -> classification.of(Matter.of(quantity.name(),
                    Contents.form(source.block()), Contents.parts(source, quantity.name())))));
        }
        bench.made().stream().filter(m -> m.block().isEmpty()).forEach(m -> all.putIfAbsent(m.verdict().matter().name(), m.verdict()));
        stocks.forEach(s -> all.putIfAbsent(s.name(), s.verdict()));
        return all;
    }

    /** What each gas would do to the air, by the name of its block, else of its substance. */
    public Map<String, AirEstimate> air() {
        Map<String, AirEstimate> all = new LinkedHashMap<>();
        bench.made().forEach(m -> m.air().ifPresent(a -> all.putIfAbsent(
                m.block().map(ResolvedQuantity::name).orElse(m.verdict().matter().name()), a)));
        bench.taken().forEach(t -> t.air().ifPresent(a -> all.putIfAbsent(t.source().name(), a)));
        return all;
    }

    /** Why a hood is demanded, by what demands it: a gas, or something fatal or toxic if inhaled that is handled. */
    public Map<Verdict, List<HoodReason>> hoodReasons() {
        Map<Verdict, List<HoodReason>> all = new LinkedHashMap<>();
        bench.made().forEach(m -> reasons(m.verdict(), m.air(), all));
        bench.taken().forEach(t -> reasons(t.verdict(), t.air(), all));
        return all;
    }

    private static void reasons(Verdict verdict, Optional<AirEstimate> air, Map<Verdict, List<HoodReason>> into) {
        List<HoodReason> reasons = air.map(AirEstimate::hood).orElseGet(() -> Air.handling(verdict));
        if (!reasons.isEmpty()) {
            into.put(verdict, reasons);
        }
    }

    public Hood hood() {
        if (hoodReasons().isEmpty()) {
            return Hood.NOT_NEEDED;
        }
        return procedure.setting().hood() == Setting.Hood.GIVEN ? Hood.GIVEN : Hood.NEEDED;
    }
}
