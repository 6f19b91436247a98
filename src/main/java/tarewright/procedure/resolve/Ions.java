package tarewright.procedure.resolve;

import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import tarewright.chemistry.Formula;

/** How many ions of a kind one formula unit of a salt or a strong acid brings into solution. */
final class Ions {
    /** Acids that give up hydrogen ions in water for the purpose of a net ionic equation; for others the author writes the molecule. */
    private static final Set<String> STRONG = Set.of("HCl", "HBr", "HI", "HNO3", "HClO4", "H2SO4", "HClO3");

    private Ions() {
    }

    /** How often {@code ion} is contained in {@code salt}; empty if it is not. */
    static OptionalInt in(Formula salt, Formula ion) {
        if (ion.charge() == 0) {
            return OptionalInt.empty();
        }
        Formula dry = salt.anhydrous();
        Map<String, Integer> has = dry.atoms();
        if (ion.atoms().equals(Map.of("H", 1))) {
            return STRONG.contains(dry.plain()) ? OptionalInt.of(has.get("H")) : OptionalInt.empty();
        }
        int times = Integer.MAX_VALUE;
        for (Map.Entry<String, Integer> atom : ion.atoms().entrySet()) {
            times = Math.min(times, has.getOrDefault(atom.getKey(), 0) / atom.getValue());
        }
        return times == 0 || times == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(times);
    }
}
