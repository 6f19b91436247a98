package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import tarewright.finding.Finding;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Dealt;
import tarewright.setting.Setting;

/**
 * One distinct deal: who gets it, and the procedure with its amounts. Amounts go to the groups in turn, the first to the first group, and after the last the first
 * again; amounts dealt over runs go to the runs of each group in the same way.
 *
 * @param label a number from 1; empty where nothing is dealt
 */
record Deal(String label, List<Integer> groups, List<Integer> runs, Procedure procedure) {
    int times() {
        return groups.size() * runs.size();
    }

    static List<Deal> all(Procedure procedure, Setting setting, Consumer<Finding> findings) {
        List<QuantityBlock> dealt = procedure.quantities().stream().filter(q -> q.dealt().isPresent()).toList();
        if (dealt.isEmpty()) {
            return List.of(new Deal("", Hand.upTo(setting.groups()), Hand.upTo(setting.runs()), procedure));
        }
        dealt.stream().filter(q -> q.dealt().get().overRuns() && q.dealt().get().rules().size() > setting.runs()).forEach(q -> findings.accept(
                new ResolveFinding.FewRuns(q.name(), q.dealt().get().rules().size(), setting.runs(), q.rule().at())));
        Map<List<Integer>, TreeSet<Integer>> groups = new LinkedHashMap<>();
        Map<List<Integer>, TreeSet<Integer>> runs = new LinkedHashMap<>();
        boolean overRuns = dealt.stream().anyMatch(q -> q.dealt().get().overRuns());
        for (int group = 0; group < setting.groups(); group++) {
            for (int run = 0; run < (overRuns ? setting.runs() : 1); run++) {
                List<Integer> which = new ArrayList<>();
                for (QuantityBlock block : dealt) {
                    Dealt deal = block.dealt().get();
                    which.add((deal.overRuns() ? run : group) % deal.rules().size());
                }
                groups.computeIfAbsent(which, k -> new TreeSet<>()).add(group + 1);
                runs.computeIfAbsent(which, k -> new TreeSet<>()).add(run + 1);
            }
        }
        List<Deal> deals = new ArrayList<>();
        groups.forEach((which, who) -> deals.add(new Deal(groups.size() == 1 ? "" : String.valueOf(deals.size() + 1), List.copyOf(who),
                overRuns ? List.copyOf(runs.get(which)) : Hand.upTo(setting.runs()), with(procedure, dealt, which))));
        return deals;
    }

    private static Procedure with(Procedure procedure, List<QuantityBlock> dealt, List<Integer> which) {
        return procedure.with(procedure.quantities().stream().map(q -> dealt.contains(q) ? q.dealing(which.get(dealt.indexOf(q))) : q).toList());
    }
}
