package tarewright.wording;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;

/**
 * One line of a calculation: {@code n(Mg) = m / M = 0.079 g / 24.305 g/mol = 3.25 mmol}.
 *
 * @param figure what is worked out
 * @param subject its symbol
 * @param formula in symbols; empty where it would say no more than the numbers
 * @param numbers the formula with the values in; empty where the formula says it all
 * @param result the value
 * @param rounded where the line is the rounding of a worked-out amount: why it is rounded so; {@code numbers} then holds the
 *     amount before it
 */
public record WorkedLine(Figure figure, Worked.Name subject, List<Worked> formula, List<Worked> numbers, Worked.Amount result,
        Optional<Reason> rounded) {
    public WorkedLine {
        formula = List.copyOf(formula);
        numbers = List.copyOf(numbers);
    }

    /** The whole line as plain text with ordinary spaces. */
    public String plain() {
        StringBuilder line = new StringBuilder(subject.plain());
        if (!formula.isEmpty()) {
            line.append(" = ").append(Worked.plain(formula));
        }
        // One figure taken over as it is: its number would stand there twice.
        if (!numbers.isEmpty() && !Worked.plain(numbers).equals(result.plain())) {
            line.append(" = ").append(Worked.plain(numbers));
        }
        return line.append(rounded.isPresent() ? " ≈ " : " = ").append(result.plain()).toString();
    }
}
