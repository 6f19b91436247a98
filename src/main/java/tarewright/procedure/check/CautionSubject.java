package tarewright.procedure.check;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.Bottles;
import tarewright.procedure.bench.Made;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.safety.Verdict;

/**
 * What a caution is about. It names a thing by its block, label, substance or formula, by a word of these that nothing else on the bench shares
 * (<em>quicklime</em>; not <em>sulfate</em> where there are two), or by its kind (<em>acid</em>, <em>alkali</em>). One that names nothing on the
 * bench is about everything that has the danger of which it speaks: burns and eyes for what corrodes, poison for what is toxic.
 */
final class CautionSubject {
    private static final int SHORTEST = 4;
    private static final Pattern CORRODES = Pattern.compile("burn|corro|caustic|eye|skin|blind|splash|quema|ojo|piel|salpic");
    private static final Pattern POISONS = Pattern.compile("poison|toxic|fatal|deadly|kill|swallow|breath|inhal|lung|fume|absorb|t[oó]xic|venen|traga|respir|pulm");
    private static final List<String> CORROSIVE = List.of("H314", "H318");
    private static final Set<String> SAID_OF_MANY = Set.of("solution", "dilute", "diluted", "concentrated", "strong", "weak", "acid", "salt", "powder",
            "water", "standard", "sample", "bottle", "stock", "liquid", "solid", "gas");

    private final Map<String, Set<String>> words = new LinkedHashMap<>();
    private final Map<String, Set<String>> names = new LinkedHashMap<>();
    private final Map<String, String> kinds = new LinkedHashMap<>();

    CautionSubject(BenchSafety safety) {
        for (QuantityBlock block : safety.procedure().procedure().quantities()) {
            QuantityBlock source = Bottles.source(safety.procedure(), block);
            Optional<Matter> matter = safety.procedure().quantity(source.name()).flatMap(q -> q.matter());
            add(source.name(), Stream.of(Stream.of(block.name(), source.name()), source.labelAs().stream(), matter.stream().flatMap(CautionSubject::called),
                    source.mixture().stream().map(m -> m.value().name())).flatMap(s -> s).toList());
        }
        safety.bench().made().stream().filter(m -> m.block().isEmpty()).forEach(m -> add(m.verdict().matter().name(), called(m)));
    }

    private static Stream<String> called(Matter matter) {
        return Stream.concat(Stream.of(matter.name(), matter.formula().plain(), matter.formula().unicode()),
                matter.substance().stream().flatMap(s -> Stream.concat(Stream.of(s.name()), s.synonyms().stream())));
    }

    private static List<String> called(Made made) {
        return Stream.concat(Stream.of(made.verdict().matter().name(), made.species().formula().plain()),
                made.substance().stream().flatMap(s -> Stream.concat(Stream.of(s.name()), s.synonyms().stream()))).toList();
    }

    private void add(String thing, List<String> called) {
        for (String name : called) {
            String low = name.toLowerCase(Locale.ROOT).strip();
            if (!low.isEmpty()) {
                names.computeIfAbsent(thing, k -> new LinkedHashSet<>()).add(low);
                Stream.of(low.split("[^\\p{L}]+")).filter(w -> w.length() >= SHORTEST && !SAID_OF_MANY.contains(w))
                        .forEach(w -> words.computeIfAbsent(thing, k -> new LinkedHashSet<>()).add(w));
            }
        }
        String all = String.join(" ", called).toLowerCase(Locale.ROOT);
        if (all.matches("(?s).*(\\bacid\\b|vinegar).*")) {
            kinds.put(thing, "acid|ácido");
        } else if (all.matches("(?s).*(hydroxide|ammonia|\\blye\\b|\\blime\\b|calcium oxide|carbonate|soda).*")) {
            kinds.put(thing, "alkali|alkaline|base|lye|álcali|base");
        }
    }

    static String text(CautionBlock caution) {
        return (caution.hazard() + ". " + caution.consequence() + ". " + caution.avoid()).toLowerCase(Locale.ROOT);
    }

    /** Whether a caution names the thing of a bottle. */
    boolean names(CautionBlock caution, String thing) {
        String text = text(caution);
        return names.getOrDefault(thing, Set.of()).stream().anyMatch(n -> holds(text, n))
                || words.getOrDefault(thing, Set.of()).stream().filter(w -> words.entrySet().stream()
                        .noneMatch(e -> !e.getKey().equals(thing) && e.getValue().contains(w))).anyMatch(w -> holds(text, w))
                || kinds.containsKey(thing) && Pattern.compile("(?<!\\p{L})(" + kinds.get(thing) + ")s?(?!\\p{L})").matcher(text).find();
    }

    private static boolean holds(String text, String name) {
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(s|es)?(?![\\p{L}\\p{N}])").matcher(text).find();
    }

    /** Whether a caution is about a thing: it names it, or names nothing and speaks of its danger. */
    boolean covers(CautionBlock caution, String thing, Verdict verdict) {
        if (names(caution, thing)) {
            return true;
        }
        boolean other = names.keySet().stream().anyMatch(n -> !n.equals(thing) && names(caution, n));
        return !other && speaksOf(text(caution), verdict);
    }

    private static boolean speaksOf(String text, Verdict verdict) {
        boolean corrodes = CORROSIVE.stream().anyMatch(verdict::has);
        boolean poisons = CautionCheck.TOXIC.stream().anyMatch(verdict::has);
        return (!corrodes || CORRODES.matcher(text).find()) && (!poisons || POISONS.matcher(text).find());
    }
}
