package tarewright.procedure.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Ions.Count;
import tarewright.tables.ReferenceTables;

/** How many ions of a kind one formula unit of a salt or a strong acid brings into solution. */
final class Ions {
    /**
     * Acids that give up hydrogen ions in water for the purpose of a net ionic equation; for others the author writes the
     * molecule.
     */
    private static final Set<String> STRONG = Set.of("HCl", "HBr", "HI", "HNO3", "HClO4", "H2SO4", "HClO3");
    private static final List<Map<String, Integer>> PROTONS = List.of(Map.of("H", 1), Map.of("H", 3, "O", 1));

    private final ReferenceTables tables;

    Ions(ReferenceTables tables) {
        this.tables = tables;
    }

    /**
     * How often {@code ion} is in {@code salt}; empty if it is not. What parts into ions of the table brings those and no others:
     * iron(II) sulfate brings no iron(III),
     * a hydrogencarbonate no carbonate. Of other salts the atoms are counted.
     */
    OptionalInt in(Formula salt, Formula ion) {
        if (ion.charge() == 0) {
            return OptionalInt.empty();
        }
        Formula dry = salt.anhydrous();
        if (ion.charge() == 1 && PROTONS.contains(ion.atoms())) {
            return STRONG.contains(dry.plain()) ? OptionalInt.of(dry.atoms().get("H")) : OptionalInt.empty();
        }
        Optional<List<Count>> parts = tables.enthalpies().ions(salt);
        return parts.isPresent() ? parts.get().stream().filter(p -> p.ion().sameComposition(ion)).mapToInt(Count::count)
                .findFirst() : counted(dry, ion);
    }

    private static OptionalInt counted(Formula dry, Formula ion) {
        int times = Integer.MAX_VALUE;
        for (Map.Entry<String, Integer> atom : ion.atoms().entrySet()) {
            times = Math.min(times, dry.atoms().getOrDefault(atom.getKey(), 0) / atom.getValue());
        }
        return times == 0 || times == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(times);
    }

    /** What a salt brings, as far as it is known. */
    List<String> of(Formula salt) {
        return tables.enthalpies().ions(salt).orElse(List.of()).stream().map(p -> p.ion().unicode()).toList();
    }
}
