package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import tarewright.text.Span;

/** A block of the Markdown body. */
public sealed interface Part permits Part.Heading, Part.Paragraph, Part.Items, Part.Table, Part.Quote, Part.Literal,
        Part.Rule, TypedBlock {
    /** Where it stands. */
    Span span();

    /** The running text that belongs to this part itself (not to parts nested in it). */
    default List<Inline> inlines() {
        return List.of();
    }

    /** The parts nested in it, in order. */
    default List<Part> parts() {
        return List.of();
    }

    /** Calls {@code visit} on each part and all that is nested in it, in source order. */
    static void walk(List<Part> parts, Consumer<Part> visit) {
        for (Part part : parts) {
            visit.accept(part);
            walk(part.parts(), visit);
        }
    }

    /** A heading of level 1 to 6. */
    record Heading(int level, List<Inline> inlines, Span span) implements Part {
        public Heading {
            inlines = List.copyOf(inlines);
        }
    }

    record Paragraph(List<Inline> inlines, Span span) implements Part {
        public Paragraph {
            inlines = List.copyOf(inlines);
        }
    }

    /**
     * A list. An ordered one is a list of steps, save its items that hold an {@code answer}, which are questions.
     *
     * @param ordered whether it is numbered
     * @param start the first number of an ordered list
     */
    record Items(boolean ordered, int start, List<Item> items, Span span) implements Part {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public List<Part> parts() {
            return items.stream().flatMap(i -> i.parts().stream()).toList();
        }
    }

    /** One item of a list. */
    record Item(List<Part> parts, Span span) {
        public Item {
            parts = List.copyOf(parts);
        }

        /** The answer blocks that stand directly in this item (not in a nested list). */
        public List<TypedBlock> answers() {
            return parts.stream().filter(p -> p instanceof TypedBlock b && b.type().equals("answer")).map(p -> (TypedBlock) p)
                    .toList();
        }

        /**
         * An item is a question if an answer stands in it, or in an item of a list nested in it (a question with
         * lettered parts).
         */
        public boolean isQuestion() {
            return !answers().isEmpty() || parts.stream().anyMatch(
                    p -> p instanceof Items list && list.items().stream().anyMatch(Item::isQuestion));
        }
    }

    /**
     * A table as GFM writes it.
     *
     * @param head the cells of the head row
     * @param rows the body rows; each has as many cells as the head
     * @param alignments one for each column
     */
    record Table(List<Cell> head, List<List<Cell>> rows, List<Alignment> alignments, Span span) implements Part {
        public Table {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
            alignments = List.copyOf(alignments);
        }

        @Override
        public List<Inline> inlines() {
            List<Inline> all = new ArrayList<>();
            head.forEach(c -> all.addAll(c.inlines()));
            rows.forEach(r -> r.forEach(c -> all.addAll(c.inlines())));
            return all;
        }
    }

    record Cell(List<Inline> inlines, Span span) {
        public Cell {
            inlines = List.copyOf(inlines);
        }
    }

    enum Alignment { LEFT, CENTRE, RIGHT, NONE }

    record Quote(List<Part> parts, Span span) implements Part {
        public Quote {
            parts = List.copyOf(parts);
        }
    }

    /** Code to be shown as it stands, each line with its line end. A block of HTML is a paragraph, its tags words. */
    record Literal(String text, Span span) implements Part {
    }

    /** A thematic break. */
    record Rule(Span span) implements Part {
    }
}
