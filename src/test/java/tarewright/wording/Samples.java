package tarewright.wording;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** Makes a value of any record, for tests that ask only about its shape: one for each constant of its enumerations. */
final class Samples {
    private static final SourceText SOURCE = new SourceText("a.md", "text");

    private Samples() {
    }

    static List<Object> of(Class<?> record) {
        List<List<Object>> arguments = new ArrayList<>(List.of(List.of()));
        for (RecordComponent component : record.getRecordComponents()) {
            List<Object> choices = component.getType().isEnum() ? List.of((Object[]) component.getType().getEnumConstants())
                    : List.of(value(component.getGenericType()));
            arguments = arguments.stream().flatMap(before -> choices.stream().map(choice -> {
                List<Object> longer = new ArrayList<>(before);
                longer.add(choice);
                return longer;
            })).toList();
        }
        return arguments.stream().map(list -> made(record, list)).toList();
    }

    private static Object made(Class<?> record, List<Object> arguments) {
        try {
            Constructor<?> constructor = record.getDeclaredConstructor(
                    Arrays.stream(record.getRecordComponents()).map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return constructor.newInstance(arguments.toArray());
        } catch (InvocationTargetException e) {
            throw new AssertionError(record + " refuses " + arguments, e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(record.toString(), e);
        }
    }

    private static Object value(Type type) {
        if (type instanceof ParameterizedType generic) {
            Class<?> raw = (Class<?>) generic.getRawType();
            Object inner = value(generic.getActualTypeArguments()[0]);
            return raw == Optional.class ? Optional.of(inner) : raw == List.class ? List.of(inner)
                    : raw == Set.class ? Set.of(inner) : Map.of(inner, value(generic.getActualTypeArguments()[1]));
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class || plain == Object.class) {
            return "x";
        }
        if (plain == int.class || plain == Integer.class) {
            return 1;
        }
        if (plain == double.class || plain == Double.class) {
            return 1.0;
        }
        if (plain == BigInteger.class) {
            return BigInteger.ONE;
        }
        if (plain == boolean.class) {
            return true;
        }
        if (plain == OptionalDouble.class) {
            return OptionalDouble.of(1);
        }
        if (plain == OptionalInt.class) {
            return OptionalInt.of(1);
        }
        if (plain == Span.class) {
            return SOURCE.span(0, 4);
        }
        if (plain == Formula.class) {
            return ((FormulaResult.Ok) Formula.parse("NaCl")).formula();
        }
        if (plain.isEnum()) {
            return plain.getEnumConstants()[0];
        }
        if (plain.isRecord()) {
            return of(plain).get(0);
        }
        if (plain.isSealed()) {
            return value(plain.getPermittedSubclasses()[0]);
        }
        throw new AssertionError("no sample of " + type);
    }
}
