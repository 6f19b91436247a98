package tarewright.chemistry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The substances that are known, found by any of their names or by formula.
 *
 * <p>Names are matched without regard to letter case, and a hyphen counts as a space. Later substances with the name of
 * an earlier one hide it.
 */
public final class Substances {
    private final List<Substance> all;
    private final Map<String, Substance> byName = new LinkedHashMap<>();
    private final Map<String, String> written = new LinkedHashMap<>();
    private final Map<String, List<Substance>> byFormula = new LinkedHashMap<>();

    public Substances(Collection<Substance> all) {
        this.all = List.copyOf(all);
        for (Substance substance : this.all) {
            enter(substance.name(), substance);
            substance.synonyms().forEach(name -> enter(name, substance));
            substance.formulaText().ifPresent(f -> byFormula.computeIfAbsent(plain(f), k -> new ArrayList<>()).add(substance));
        }
    }

    private void enter(String name, Substance substance) {
        byName.put(key(name), substance);
        written.put(key(name), name);
    }

    /** In the order of the table. */
    public List<Substance> all() {
        return all;
    }

    /** The substance with this name or synonym. A formula is not a name. */
    public Optional<Substance> named(String name) {
        return Optional.ofNullable(byName.get(key(name)));
    }

    /** The substances with this formula, the usual one first: isomers, and elements in several forms, share one. */
    public List<Substance> withFormula(String formula) {
        return Collections.unmodifiableList(byFormula.getOrDefault(plain(formula), List.of()));
    }

    /** Every name and synonym as written, for suggestions. */
    public Collection<String> names() {
        return Collections.unmodifiableCollection(written.values());
    }

    /** What two names must share to be the same name. */
    public static String key(String name) {
        StringBuilder key = new StringBuilder();
        boolean gap = false;
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (Character.isWhitespace(c) || c == '-' || c == '\u2010' || c == '\u2011' || c == '\u2013') {
                gap = key.length() > 0;
                continue;
            }
            if (gap && c != '(' && key.charAt(key.length() - 1) != ')') {
                key.append(' ');
            }
            gap = false;
            key.append(Character.toLowerCase(c));
        }
        return key.toString();
    }

    private static String plain(String formula) {
        return formula.replace('\u00b7', '.');
    }
}
