package tarewright.procedure.declare;

import java.util.Optional;
import tarewright.quantity.Typed;
import tarewright.text.Span;

/** What fixes the amount of a block. Where it stands is {@code at}. */
public sealed interface AmountRule {
    Span at();

    /** Typed as a mass, a volume or an amount of substance. */
    record Stated(Measured what, Typed typed, Span at) implements AmountRule {
    }

    /** Which property was typed. */
    enum Measured { MASS, VOLUME, MOLES }

    /** Just enough to give, or to react with, another block. @param leftOver with what is left over of it */
    record For(String target, boolean leftOver, Span at) implements AmountRule {
    }

    /** At least so many times what another block needs. @param times 1 or more */
    record ExcessOver(String target, Optional<At<Typed>> times, Span at) implements AmountRule {
    }

    /** What a reaction gives. */
    record MadeBy(String reaction, Span at) implements AmountRule {
    }

    /** A wish for a gas, met as well as rounding allows; the reaction that makes it may be named. */
    record Wanted(Typed typed, Optional<At<String>> madeBy, Span at) implements AmountRule {
    }

    /** Nothing fixes it: a bottle from which others are taken. */
    record Unfixed(Span at) implements AmountRule {
    }

    /** Something fixes it and could not be read, which was a finding already. */
    record Unreadable(Span at) implements AmountRule {
    }
}
