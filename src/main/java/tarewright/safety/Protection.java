package tarewright.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What to wear and what to have at hand, from what is really on the bench. Authors add to it; nobody takes away. */
public final class Protection {
    private static final double MILLILITRES = 1000;

    private final List<ProtectionRule> rules;

    public Protection(Rulebook rules) {
        this.rules = rules.protection();
    }

    /** The measures in the order of the table, each once. */
    public List<Measure> of(List<Verdict> bench, Set<Circumstance> circumstances) {
        Map<String, ProtectionRule> first = new LinkedHashMap<>();
        Map<String, Set<Measure.Reason>> reasons = new LinkedHashMap<>();
        for (ProtectionRule rule : rules) {
            Set<Measure.Reason> found = new LinkedHashSet<>();
            boolean circumstance = rule.when().isEmpty() || holds(rule.when().get(), circumstances, reasons.keySet());
            if (circumstance && !ofItself(rule)) {
                bench.forEach(v -> reason(rule, v).ifPresent(found::add));
            }
            if (circumstance && ofItself(rule) || !found.isEmpty()) {
                first.putIfAbsent(rule.measure(), rule);
                reasons.computeIfAbsent(rule.measure(), m -> new LinkedHashSet<>()).addAll(found);
            }
        }
        Set<String> replaced = new LinkedHashSet<>();
        first.values().forEach(r -> r.replaces().ifPresent(replaced::add));
        List<Measure> measures = new ArrayList<>();
        first.forEach((measure, rule) -> {
            if (!replaced.contains(measure)) {
                measures.add(new Measure(rule, List.copyOf(reasons.get(measure))));
            }
        });
        return measures;
    }

    /** A rule that needs no matter: it always holds, or whenever its circumstance does. */
    private static boolean ofItself(ProtectionRule rule) {
        boolean looksAtMatter = !rule.codes().isEmpty() || !rule.forms().isEmpty() || !rule.substances().isEmpty()
                || rule.unknown() != ProtectionRule.ForUnknown.NO
                || rule.when().filter(w -> w == ProtectionRule.When.RESTRICTED).isPresent();
        return rule.standing() || !looksAtMatter;
    }

    private static boolean holds(ProtectionRule.When when, Set<Circumstance> circumstances, Set<String> measures) {
        return switch (when) {
            case GAS_SYRINGE -> circumstances.contains(Circumstance.GAS_SYRINGE);
            case GLASS_TUBING -> circumstances.contains(Circumstance.GLASS_TUBING);
            case FLAME -> circumstances.contains(Circumstance.FLAME);
            case HEAT -> circumstances.contains(Circumstance.HEAT);
            case GLOVES -> measures.contains("gloves");
            case RESTRICTED -> true;
        };
    }

    private static Optional<Measure.Reason> reason(ProtectionRule rule, Verdict verdict) {
        Matter matter = verdict.matter();
        boolean form = rule.forms().isEmpty() || rule.forms().contains(matter.form());
        boolean volume = reached(rule.fromMillilitres(), matter.litres(), MILLILITRES, rule.unknownAmount());
        boolean mass = reached(rule.fromGrams(), matter.grams(), 1, rule.unknownAmount());
        if (!form || !volume || !mass) {
            return Optional.empty();
        }
        if (!verdict.known() && rule.unknown() != ProtectionRule.ForUnknown.NO) {
            return Optional.of(new Measure.Reason(matter.name(), List.of(), false));
        }
        boolean substance = rule.substances().isEmpty()
                || verdict.rows().stream().anyMatch(r -> rule.substances().contains(r.id()));
        boolean restricted = rule.when().filter(w -> w == ProtectionRule.When.RESTRICTED).isEmpty()
                || verdict.rows().stream().anyMatch(r -> r.restriction() != Restriction.NONE);
        List<String> codes = rule.codes().stream().filter(verdict::has).toList();
        boolean code = rule.codes().isEmpty() || !codes.isEmpty();
        return substance && restricted && code && rule.unknown() != ProtectionRule.ForUnknown.ONLY
                ? Optional.of(new Measure.Reason(matter.name(), codes, verdict.known())) : Optional.empty();
    }

    private static boolean reached(OptionalDouble from, OptionalDouble amount, double factor, boolean unknownCounts) {
        if (from.isEmpty()) {
            return true;
        }
        return amount.isEmpty() ? unknownCounts : Limits.reached(amount.getAsDouble() * factor, from.getAsDouble());
    }
}
