package tarewright.cases;

import java.util.ArrayList;
import java.util.List;

/** A procedure as a teacher would type it, put together from its blocks. */
final class Page {
    private final List<String> front = new ArrayList<>();
    private final List<String> parts = new ArrayList<>();

    Page(String title) {
        front.add("title: " + title);
    }

    /** A line of front matter. */
    Page front(String line) {
        front.add(line);
        return this;
    }

    /** A typed block; fields that are empty are left out. */
    Page block(String info, String... fields) {
        StringBuilder block = new StringBuilder("```" + info + "\n");
        for (String field : fields) {
            block.append(field.isEmpty() ? "" : field + "\n");
        }
        parts.add(block + "```\n");
        return this;
    }

    Page text(String markdown) {
        parts.add(markdown + "\n");
        return this;
    }

    /** A question whose answer is worked by a formula. */
    Page ask(String formula, String unit) {
        return text("1. What is it?\n\n   ```answer\n   value: " + formula + "\n"
                + (unit.isEmpty() ? "" : "   unit: " + unit + "\n") + "   ```\n");
    }

    /** The waste block that every procedure has. */
    Page wasted() {
        return block("waste", "into: labelled waste");
    }

    String markdown() {
        return "---\n" + String.join("\n", front) + "\n---\n\n" + String.join("\n", parts);
    }

    /** The same with its blocks in another order. @param order a permutation of their indices */
    String markdown(List<Integer> order) {
        return "---\n" + String.join("\n", front) + "\n---\n\n" + String.join("\n", order.stream().map(parts::get).toList());
    }

    int size() {
        return parts.size();
    }
}
