package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/**
 * An {@code answer}.
 *
 * @param sought what kind of answer
 * @param marks none if the author gave none
 * @param lines ruled lines in the handout; none leaves it to the kind of answer
 * @param unit to give a value in
 * @param precision how a value is shown
 * @param within how far a value may be off
 * @param reject answers that are not accepted, in words
 */
public record AnswerBlock(TypedBlock block, Sought sought, OptionalInt marks, OptionalInt lines, Optional<Unit> unit, Precision precision,
        Optional<At<Typed>> within, List<String> reject) {
    public AnswerBlock {
        reject = List.copyOf(reject);
    }

    /** What an answer is. */
    public sealed interface Sought {
    }

    /** A figure, worked by a formula. */
    public record Worked(At<Expression> formula) implements Sought {
    }

    /** Words to look for. */
    public record InWords(At<String> words) implements Sought {
    }

    /** One of several options; the first is right. */
    public record Choice(List<String> options) implements Sought {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /** Nothing usable was written, which was a finding. */
    public record Missing() implements Sought {
    }
}
