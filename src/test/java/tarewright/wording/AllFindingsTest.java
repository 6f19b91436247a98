package tarewright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import tarewright.finding.Facts;
import tarewright.finding.Finding;

/**
 * Every finding and every trouble that the program can make has words in English, and no message names a field that its finding
 * lacks. The records are found on the class path, so that a new one without words fails here.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AllFindingsTest {
    private static final List<String> PARTS = List.of("says", "mend", "more");
    private final MessageFile messages = MessageFile.of("findings", "en");

    /** The fields of every record that stands under an id; one set for each record, or for each reason that it may give. */
    private final Map<String, List<Made>> byId = new TreeMap<>();

    private record Made(Class<?> type, Set<String> fields) {
    }

    AllFindingsTest() {
        for (JavaClass each : classes()) {
            Class<?> type = each.reflect();
            if (type.isRecord() && isTrouble(type)) {
                for (Object made : Samples.of(type)) {
                    Map<String, Object> fields = made instanceof Finding finding ? finding.fields() : Facts.ofTrouble(made);
                    byId.computeIfAbsent(id(made), id -> new ArrayList<>()).add(new Made(type, fields.keySet()));
                }
            }
        }
    }

    private static JavaClasses classes() {
        return ArchConfiguration.withThreadLocalScope(scope -> {
            scope.setResolveMissingDependenciesFromClassPath(false);
            return new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("tarewright");
        });
    }

    /** A record with an id of its own. One that is given its id, or that wraps a trouble, speaks for another. */
    private static boolean isTrouble(Class<?> type) {
        boolean wraps = Arrays.stream(type.getRecordComponents())
                .anyMatch(c -> c.getName().equals("id") || c.getName().equals("trouble"));
        return !wraps && Arrays.stream(type.getMethods())
                .anyMatch(m -> m.getName().equals("id") && m.getParameterCount() == 0 && m.getReturnType() == String.class);
    }

    private static String id(Object made) {
        try {
            Method method = made.getClass().getMethod("id");
            method.setAccessible(true);
            return (String) method.invoke(made);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(made.getClass().toString(), e);
        }
    }

    @Test
    void findsTheFindings() {
        assertTrue(byId.size() > 100, byId.keySet().toString());
        assertTrue(byId.keySet().containsAll(Set.of("unknown-unit", "dimensions-differ", "unknown-element")));
        assertTrue(byId.values().stream().flatMap(List::stream).anyMatch(made -> Finding.class.isAssignableFrom(made.type())));
    }

    @Test
    void everyIdIsLowerCaseWithHyphens() {
        byId.keySet().forEach(id -> assertTrue(id.matches("[a-z0-9]+(-[a-z0-9]+)*"), id));
    }

    @Test
    void everyIdHasWords() {
        Set<String> without = byId.keySet().stream().filter(id -> messages.variants(id + ".says").isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), without);
    }

    /** Of the templates under an id, each place is a field of some record with that id. */
    @Test
    void everyPlaceIsAField() {
        List<String> wrong = new ArrayList<>();
        byId.forEach((id, records) -> {
            Set<String> fields = records.stream().flatMap(made -> made.fields().stream()).collect(Collectors.toSet());
            for (String part : PARTS) {
                for (String words : messages.variants(id + "." + part)) {
                    new Template(words).places().stream().filter(place -> !fields.contains(place))
                            .forEach(place -> wrong.add(id + "." + part + " {" + place + "} of " + fields));
                }
            }
        });
        assertEquals(List.of(), wrong);
    }

    /** Each record under an id has a headline whose places are all fields of that record. */
    @Test
    void everyRecordHasAHeadline() {
        List<String> wrong = new ArrayList<>();
        byId.forEach((id, records) -> records.forEach(made -> {
            List<String> headlines = messages.variants(id + ".says");
            boolean one = headlines.stream().anyMatch(words -> made.fields().containsAll(new Template(words).places()));
            if (!headlines.isEmpty() && !one) {
                wrong.add(id + " of " + made);
            }
        }));
        assertEquals(List.of(), wrong);
    }

    /** A key that no finding reaches is a misspelling, or words for what is gone. */
    @Test
    void everyMessageBelongsToAFinding() {
        List<String> stray = messages.keys().stream().filter(key -> !key.startsWith("list.") && !key.startsWith("kind."))
                .filter(key -> !key.matches("[a-z0-9-]+\\.(says|mend|more)(\\.[0-9]+)?")
                        || !byId.containsKey(key.substring(0, key.indexOf('.'))))
                .toList();
        assertEquals(List.of(), stray);
    }

    /** Numbered templates count up from 1, and stand in the place of an unnumbered one. */
    @Test
    void variantsAreNumberedFromOne() {
        List<String> wrong = new ArrayList<>();
        for (String id : byId.keySet()) {
            for (String part : PARTS) {
                String key = id + "." + part;
                long numbered = messages.keys().stream().filter(k -> k.matches(Pattern.quote(key) + "\\.[0-9]+")).count();
                boolean plain = messages.find(key).isPresent();
                if (plain && numbered > 0 || messages.variants(key).size() != numbered + (plain ? 1 : 0)) {
                    wrong.add(key);
                }
            }
        }
        assertEquals(List.of(), wrong);
    }
}
