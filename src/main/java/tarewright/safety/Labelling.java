package tarewright.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** From the classes of one matter to what its label shows. The rules of precedence hold within this one label. */
final class Labelling {
    private final Rulebook rules;

    Labelling(Rulebook rules) {
        this.rules = rules;
    }

    /** The hazard statements, without those that another one covers. */
    List<Statement> statements(List<Assigned> assigned) {
        Set<String> codes = new LinkedHashSet<>();
        assigned.forEach(a -> codes.add(a.hazard().code()));
        for (CoveredStatement covered : rules.covered()) {
            if (codes.contains(covered.code())) {
                codes.remove(covered.covers());
            }
        }
        return codes.stream().sorted().map(rules.statements()::of).toList();
    }

    Optional<SignalWord> signalWord(List<Assigned> assigned) {
        return assigned.stream().flatMap(a -> element(a.hazard()).signalWord().stream()).max(Comparator.naturalOrder());
    }

    List<String> pictograms(List<Assigned> assigned) {
        Map<String, List<String>> because = new TreeMap<>();
        for (Assigned a : assigned) {
            element(a.hazard()).pictograms()
                    .forEach(p -> because.computeIfAbsent(p, k -> new ArrayList<>()).add(a.hazard().code()));
        }
        Map<String, List<String>> left = new LinkedHashMap<>();
        because.forEach((pictogram, codes) -> left.put(pictogram, new ArrayList<>(codes)));
        for (PictogramRule rule : rules.pictogramRules()) {
            List<String> present = because.getOrDefault(rule.present(), List.of());
            boolean applies = rule.because().map(present::contains).orElse(!present.isEmpty());
            if (applies && left.containsKey(rule.drops())) {
                left.get(rule.drops()).removeIf(code -> rule.onlyFor().isEmpty() || rule.onlyFor().contains(code));
            }
        }
        return left.entrySet().stream().filter(e -> !e.getValue().isEmpty()).map(Map.Entry::getKey).toList();
    }

    private LabelElement element(HazardClass hazard) {
        return rules.labelElements().stream()
                .filter(e -> e.hazardClass().equals(hazard.name()) && e.codes().contains(hazard.code()))
                .max(Comparator.comparing(e -> e.categories().contains(hazard.category())))
                .orElseThrow(() -> new IllegalStateException("no label element for " + hazard));
    }
}
