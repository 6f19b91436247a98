package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import tarewright.document.Piece;
import tarewright.document.Sheet;
import tarewright.document.Text;

/** Every kind of piece and text has a macro, plain words, and a place in the samples that the other tests print. */
class KindsTest {
    private static Set<String> all() {
        return Stream.of(Piece.class, Text.class).flatMap(k -> Arrays.stream(k.getPermittedSubclasses()))
                .map(Class::getSimpleName)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void collect(Object value, Set<String> into) throws ReflectiveOperationException {
        if (value instanceof Record record) {
            into.add(record.getClass().getSimpleName());
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                collect(component.getAccessor().invoke(record), into);
            }
        } else if (value instanceof List<?> list) {
            for (Object item : list) {
                collect(item, into);
            }
        }
    }

    @Test
    @DisplayName("the samples use every kind, so that what is said of them is said of all")
    void samplesAreComplete() throws Exception {
        Set<String> used = new TreeSet<>();
        for (Sheet sheet : SampleSheets.all(Sheet.Paper.A4)) {
            collect(sheet, used);
        }
        Set<String> unused = all();
        unused.removeAll(used);
        assertEquals(Set.of(), unused);
    }

    @Test
    @DisplayName("every kind has its macro under its own name")
    void macros() {
        String macros = Packed.text("templates/pieces.ftlx");
        String forTheWeb = Packed.text("templates/web/pieces.ftlx");
        for (String kind : all()) {
            String name = kind.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + kind.substring(1);
            assertTrue(macros.contains("<#macro " + name + " "), name);
            assertTrue(forTheWeb.contains("<#macro " + name + " "), name);
        }
    }

    @Test
    @DisplayName("a template sees text, truth values, lists, maps and drawings, never a number")
    void noNumbers() {
        SheetFacts facts = new SheetFacts(new Pictures(Medium.PAPER));
        for (Sheet sheet : SampleSheets.all(Sheet.Paper.A4)) {
            plain(facts.of(sheet));
        }
    }

    private static void plain(Object value) {
        if (value instanceof Map<?, ?> map) {
            map.values().forEach(KindsTest::plain);
        } else if (value instanceof List<?> list) {
            list.forEach(KindsTest::plain);
        } else {
            assertFalse(value instanceof Number, String.valueOf(value));
            assertTrue(value instanceof String || value instanceof Boolean
                    || value instanceof freemarker.core.TemplateMarkupOutputModel,
                    String.valueOf(value));
        }
    }
}
