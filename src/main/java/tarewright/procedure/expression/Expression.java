package tarewright.procedure.expression;

import tarewright.quantity.Typed;
import tarewright.text.Span;

/** A formula as the author wrote it. Brackets are no part of the tree; a span takes in the brackets between its ends. */
public sealed interface Expression {
    /** Where it stands. */
    Span span();

    /** A number, with its unit if there is one; never a range. */
    record Quantity(Typed typed, Span span) implements Expression {
    }

    /**
     * A reference.
     *
     * @param text runs of blanks made one space: {@code moles of ribbon}
     */
    record Named(String text, Span span) implements Expression {
    }

    /** The negative of something. */
    record Negated(Expression of, Span span) implements Expression {
    }

    record Binary(Operator operator, Expression left, Expression right, Span span) implements Expression {
    }

    /** One figure out of a repeated reading: {@code mean of titre}. */
    record Selected(Selector selector, Named of, Span span) implements Expression {
    }
}
