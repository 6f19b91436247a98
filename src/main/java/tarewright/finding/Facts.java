package tarewright.finding;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tarewright.text.Span;

/** Reads the components of a record as named fields. */
public final class Facts {
    private Facts() {
    }

    /**
     * The components of a record by name in their order, spans left out.
     *
     * @throws IllegalArgumentException if {@code of} is not a record
     */
    public static Map<String, Object> of(Object of) {
        if (!of.getClass().isRecord()) {
            throw new IllegalArgumentException(of.getClass() + " is not a record");
        }
        Map<String, Object> fields = new LinkedHashMap<>();
        for (RecordComponent component : of.getClass().getRecordComponents()) {
            Object value = read(of, component);
            boolean places = value instanceof Span || value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Span;
            if (!places) {
                fields.put(component.getName(), value);
            }
        }
        return fields;
    }

    /**
     * The fields of a trouble of the core: its own {@code fields()}, where it says more than its components do, else those.
     *
     * @throws IllegalArgumentException if {@code trouble} is not a record
     */
    @SuppressWarnings("unchecked")
    public static Map<String, Object> ofTrouble(Object trouble) {
        try {
            Method fields = trouble.getClass().getMethod("fields");
            fields.setAccessible(true);
            return (Map<String, Object>) fields.invoke(trouble);
        } catch (NoSuchMethodException e) {
            return of(trouble);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object read(Object of, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(of);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }
}
