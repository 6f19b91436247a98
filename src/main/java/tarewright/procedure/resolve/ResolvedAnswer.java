package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Accepted;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;

/**
 * An answer in its question.
 *
 * @param number of the question, with the letter of its part: {@code 3}, {@code 3b}
 * @param value where a figure is sought and could be worked
 * @param accepted the range within which a value is accepted, where there is a value
 * @param slips what common mistakes give
 */
public record ResolvedAnswer(AnswerBlock block, String number, Optional<Figure> value, Optional<Accepted> accepted, List<Slip> slips) {
    public ResolvedAnswer {
        slips = List.copyOf(slips);
    }

}
