package tarewright.procedure.resolve;

import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;

/**
 * An answer in its question.
 *
 * @param number of the question, with the letter of its part: {@code 3}, {@code 3b}
 * @param value where a figure is sought and could be worked
 */
public record ResolvedAnswer(AnswerBlock block, String number, Optional<Figure> value) {
}
