package tarewright.procedure.syntax;

import java.util.List;
import java.util.function.Consumer;
import tarewright.text.Span;

/** A piece of running text. */
public sealed interface Inline {
    /** Where it stands. */
    Span span();

    /** What is nested in it, in order. */
    default List<Inline> inside() {
        return List.of();
    }

    /** Calls {@code visit} on an inline and all that is nested in it. */
    static void walk(Inline inline, Consumer<Inline> visit) {
        visit.accept(inline);
        inline.inside().forEach(i -> walk(i, visit));
    }

    /**
     * Plain words; raw HTML of the author's, other than comments, ends up here as text.
     *
     * @param text what is to be read: escapes and entities decoded, a line break made one space. Where there are none of
     *         these, exactly what stands at {@code span}
     */
    record Words(String text, Span span) implements Inline {
    }

    record Strong(List<Inline> inside, Span span) implements Inline {
        public Strong {
            inside = List.copyOf(inside);
        }
    }

    record Emphasis(List<Inline> inside, Span span) implements Inline {
        public Emphasis {
            inside = List.copyOf(inside);
        }
    }

    record Code(String text, Span span) implements Inline {
    }

    record Link(List<Inline> inside, String destination, Span span) implements Inline {
        public Link {
            inside = List.copyOf(inside);
        }
    }

    /**
     * A picture.
     *
     * @param alternative the words of its description, references as they stand in braces
     * @param inside the description with its references
     */
    record Picture(String alternative, List<Inline> inside, String destination, Span span) implements Inline {
        public Picture {
            inside = List.copyOf(inside);
        }
    }

    record HardBreak(Span span) implements Inline {
    }

    /**
     * {@code {name}} or {@code {property of name}} in running text.
     *
     * @param text what stands between the braces, trimmed, runs of white space made one space
     * @param span with the braces
     */
    record Reference(String text, Span span) implements Inline {
    }
}
