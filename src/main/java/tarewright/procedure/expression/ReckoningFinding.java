package tarewright.procedure.expression;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** Why a formula that can be read cannot be worked out. */
public sealed interface ReckoningFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /**
     * A sum or a difference of different kinds.
     *
     * @param leftKind by its name: see {@link tarewright.quantity.Kinds}
     * @param leftUnit empty for a plain number
     * @param at the operands with what joins them
     */
    record DimensionsDiffer(String left, String leftKind, Optional<String> leftUnit, String right, String rightKind,
            Optional<String> rightUnit, Span at, List<Span> also) implements ReckoningFinding {
        public DimensionsDiffer {
            also = List.copyOf(also);
        }

        @Override
        public String id() {
            return "dimensions-differ";
        }
    }

    /** An exponent other than a whole number from −most to most, zero left out. */
    record ExponentNotWhole(String exponent, int most, Span at) implements ReckoningFinding {
        @Override
        public String id() {
            return "exponent-not-whole";
        }
    }

    /** A divisor that is zero. */
    record DivisionByZero(String divisor, Span at) implements ReckoningFinding {
        @Override
        public String id() {
            return "division-by-zero";
        }
    }

    /** Two temperatures on a scale added, where only a difference can be added to one. */
    record TemperaturesAdded(String left, String right, Span at) implements ReckoningFinding {
        @Override
        public String id() {
            return "temperatures-added";
        }
    }

    /** A result in kelvin wanted in degrees, of which nothing says whether it is a temperature or a difference. */
    record TemperatureOrDifference(String formula, String unit, Span at) implements ReckoningFinding {
        @Override
        public String id() {
            return "temperature-or-difference";
        }
    }

    /** A value too large or too small to reckon with. */
    record ResultOutOfRange(String formula, Span at) implements ReckoningFinding {
        @Override
        public String id() {
            return "result-out-of-range";
        }
    }
}
