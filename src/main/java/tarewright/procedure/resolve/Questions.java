package tarewright.procedure.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.TypedBlock;

/** Numbers the questions through a procedure: 1, 2, 3; the parts of one by letters. */
public final class Questions {
    private final Map<TypedBlock, String> numbers = new LinkedHashMap<>();
    private int next = 1;

    private Questions() {
    }

    /** The number of each answer block's question, in source order. Several answers in one item share its number. */
    public static Map<TypedBlock, String> numbers(List<Part> body) {
        Questions all = new Questions();
        all.walk(body);
        return all.numbers;
    }

    private void walk(List<Part> parts) {
        for (Part part : parts) {
            if (part instanceof Part.Items list && list.ordered()) {
                list.items().forEach(this::item);
            } else {
                walk(part.parts());
            }
        }
    }

    private void item(Part.Item item) {
        if (!item.isQuestion()) {
            walk(item.parts());
            return;
        }
        String number = Integer.toString(next++);
        item.answers().forEach(a -> numbers.put(a, number));
        int letter = 0;
        for (Part part : item.parts()) {
            if (part instanceof Part.Items parts) {
                for (Part.Item lettered : parts.items()) {
                    String full = number + letter(letter++);
                    lettered.answers().forEach(a -> numbers.put(a, full));
                }
            }
        }
    }

    /** a to z, then aa, ab. */
    public static String letter(int index) {
        return index < 26 ? String.valueOf((char) ('a' + index)) : letter(index / 26 - 1) + letter(index % 26);
    }
}
