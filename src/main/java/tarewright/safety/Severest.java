package tarewright.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps the most severe class of each endpoint. */
final class Severest {
    private final Map<Endpoint, Assigned> kept = new EnumMap<>(Endpoint.class);

    void add(Assigned assigned) {
        kept.merge(assigned.hazard().endpoint(), assigned, Severest::worse);
    }

    Optional<Assigned> of(Endpoint endpoint) {
        return Optional.ofNullable(kept.get(endpoint));
    }

    boolean isEmpty() {
        return kept.isEmpty();
    }

    /** In the order of their statements. */
    List<Assigned> all() {
        List<Assigned> all = new ArrayList<>(kept.values());
        all.sort(Comparator.comparing(a -> a.hazard().code()));
        return all;
    }

    private static Assigned worse(Assigned a, Assigned b) {
        int difference = a.hazard().severity() - b.hazard().severity();
        if (difference != 0) {
            return difference > 0 ? a : b;
        }
        String code = wider(a.hazard().code(), b.hazard().code());
        if (code.equals(a.hazard().code())) {
            return a;
        }
        if (code.equals(b.hazard().code())) {
            return b;
        }
        List<String> due = new ArrayList<>(a.due());
        b.due().stream().filter(d -> !due.contains(d)).forEach(due::add);
        HazardClass both = new HazardClass(a.hazard().name(), a.hazard().category(), code);
        return new Assigned(both, a.ground(), a.limitPercent(), due, a.clause(), a.provenance());
    }

    /** The statement that says both: H350 for H350 and H350i, H360FD for H360F and H360D. */
    private static String wider(String a, String b) {
        if (a.equals(b) || !a.startsWith("H360") && !a.startsWith("H361")) {
            return a.length() <= b.length() ? a : b;
        }
        if (a.length() == 4 || b.length() == 4) {
            return a.length() == 4 ? a : b;
        }
        boolean second = a.startsWith("H361");
        String ends = a.substring(4) + b.substring(4);
        String fertility = second ? ends.contains("f") ? "f" : "" : ends.contains("F") ? "F" : ends.contains("f") ? "f" : "";
        String child = second ? ends.contains("d") ? "d" : "" : ends.contains("D") ? "D" : ends.contains("d") ? "d" : "";
        boolean childFirst = fertility.equals("f") && child.equals("D");
        return a.substring(0, 4) + (childFirst ? child + fertility : fertility + child);
    }
}
