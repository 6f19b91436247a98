package tarewright.wording;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import tarewright.finding.Finding;

/** Turns a finding into words: its headline, what to write instead, what else is known. */
public final class FindingWords {
    private static final int LONGEST_VALUE = 120;
    /** Fields that hold the name of a kind of quantity, as {@link tarewright.quantity.Kinds} gives it. */
    private static final Set<String> KINDS = Set.of("wanted", "found", "leftKind", "rightKind", "measures");

    /** Of a finding that one version of the questions' numbers has and the first has not: the version's letter. */
    private static final String IN_VERSION = "inVersion";

    private final MessageFile messages;
    private final Numbers numbers;

    private FindingWords(MessageFile messages, Numbers numbers) {
        this.messages = messages;
        this.numbers = numbers;
    }

    /** @param language BCP 47; English where there are no words in it */
    public static FindingWords in(String language) {
        return new FindingWords(MessageFile.of("findings", language), Numbers.in(language));
    }

    /** The lasting names of every finding there are words for. */
    public Set<String> ids() {
        Set<String> ids = new TreeSet<>();
        messages.keys().stream().filter(k -> k.contains(".says")).forEach(k -> ids.add(k.substring(0, k.indexOf(".says"))));
        return ids;
    }

    /**
     * What is said of a finding. Text in back-ticks is code or the author's own.
     *
     * @param headline stands alone
     * @param mend what to write instead, often one line, sometimes none
     * @param more what else is known, a line each
     */
    public record Words(String headline, List<String> mend, List<String> more) {
        public Words {
            mend = List.copyOf(mend);
            more = List.copyOf(more);
        }
    }

    public Words words(Finding finding) {
        Words said = words(finding.id(), finding.fields());
        Object version = finding.fields().get(IN_VERSION);
        return version == null ? said : new Words(messages.get("list.in-version").replace("{version}", String.valueOf(version)).replace("{says}", said.headline()),
                said.mend(), said.more());
    }

    /**
     * The words for an id and its fields. Of several numbered templates the first counts whose places all have a value. An id
     * without words is a mistake of ours; it is said by itself, since the finding must not be lost.
     */
    public Words words(String id, Map<String, Object> fields) {
        String headline = part(id + ".says", fields).orElse(id.replace('-', ' '));
        return new Words(headline.replace('\n', ' '), lines(id + ".mend", fields), lines(id + ".more", fields));
    }

    private List<String> lines(String key, Map<String, Object> fields) {
        return part(key, fields).map(words -> words.lines().toList()).orElse(List.of());
    }

    private Optional<String> part(String key, Map<String, Object> fields) {
        String or = messages.get("list.or");
        String and = messages.get("list.and");
        return messages.variants(key).stream()
                .map(words -> new Template(words).filled(place -> members(place, fields.get(place)), or, and))
                .flatMap(Optional::stream).findFirst();
    }

    /** The words for a field: one, or one for each member of a list; none where it has no value. */
    private List<String> members(String field, Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(inner -> members(field, inner)).orElse(List.of());
        }
        if (value instanceof List<?> list) {
            return list.stream().flatMap(inner -> members(field, inner).stream()).toList();
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? List.of(numbers.plainNumber(number.getAsDouble())) : List.of();
        }
        if (value instanceof OptionalInt number) {
            return number.isPresent() ? List.of(String.valueOf(number.getAsInt())) : List.of();
        }
        if (value instanceof Double || value instanceof Float) {
            return List.of(numbers.plainNumber(((Number) value).doubleValue()));
        }
        if (value instanceof Enum<?> constant) {
            return List.of(constant.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        String text = value == null ? "" : oneLine(String.valueOf(value));
        return text.isEmpty() ? List.of() : List.of(KINDS.contains(field) ? kind(text) : text);
    }

    private String kind(String name) {
        return messages.find("kind." + name.replace(' ', '-')).orElse(name);
    }

    /** What the author typed goes into a sentence: without line ends or signs that a terminal would obey, and not too long. */
    private static String oneLine(String text) {
        String clean = Shown.clean(text.replaceAll("\\s+", " "));
        return clean.codePointCount(0, clean.length()) <= LONGEST_VALUE ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, LONGEST_VALUE - 1)) + "…";
    }
}
