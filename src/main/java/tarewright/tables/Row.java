package tarewright.tables;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Provenance;
import tarewright.chemistry.State;

/** A row of one of the product's data files; a missing or unreadable cell is a fault of the product. */
record Row(String file, int number, Map<String, String> cells) {
    /** The cell's text; may be empty. */
    String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalStateException(file + ", row " + number + ": no column " + column);
        }
        return cell.strip();
    }

    Optional<String> optional(String column) {
        return Optional.of(text(column)).filter(cell -> !cell.isEmpty());
    }

    double number(String column) {
        try {
            return Double.parseDouble(text(column));
        } catch (NumberFormatException e) {
            throw new IllegalStateException(file + ", row " + number + ", " + column + ": " + text(column), e);
        }
    }

    OptionalDouble optionalNumber(String column) {
        return text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(column));
    }

    /** A formula. */
    Formula formula(String column) {
        return Formula.parse(text(column)).value().orElseThrow(() ->
                new IllegalStateException(file + ", row " + number + ", " + column + ": no formula: " + text(column)));
    }

    Optional<Formula> optionalFormula(String column) {
        return optional(column).map(cell -> formula(column));
    }

    State state(String column) {
        return State.of(text(column)).orElseThrow(() ->
                new IllegalStateException(file + ", row " + number + ": no state " + text(column)));
    }

    /** A cell that holds several values between bars. */
    List<String> list(String column) {
        return Arrays.stream(text(column).split("\\|")).map(String::strip).filter(cell -> !cell.isEmpty()).toList();
    }

    Provenance provenance() {
        return provenance("source", "confidence");
    }

    Provenance provenance(String source, String confidence) {
        return new Provenance(text(source), Confidence.valueOf(text(confidence).toUpperCase(Locale.ROOT)));
    }
}
