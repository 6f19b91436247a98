package tarewright.procedure.expression;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What is wrong with the writing of a formula. */
public sealed interface FormulaFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /** Nothing stands where a formula should. */
    record Missing(Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "formula-missing";
        }
    }

    /** Longer, or with brackets in brackets deeper, than any formula on a handout. */
    record TooDeep(int characters, int levels, Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "expression-too-deep";
        }
    }

    /** An operator or bracket without anything behind it. @param sign as typed */
    record OperandMissing(String sign, Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "operand-missing";
        }
    }

    /** Two operands side by side. @param instead both with the sign that is likely meant */
    record OperatorMissing(String text, Optional<String> instead, Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "operator-missing";
        }
    }

    /** An opening bracket that is never closed. */
    record BracketNotClosed(Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "bracket-not-closed";
        }
    }

    /** A closing bracket that closes nothing. */
    record BracketNotOpened(Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "bracket-not-opened";
        }
    }

    /** A character that is no part of any formula. */
    record StrayCharacter(String text, Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "stray-character";
        }
    }

    /** A reference in braces, as running text has them. @param name what stands between them */
    record BracesInFormula(String name, Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "braces-in-formula";
        }
    }

    /** A word before a bracket. @param instead how the selector is written that is likely meant */
    record NoFunction(String name, List<String> instead, Span at) implements FormulaFinding {
        public NoFunction {
            instead = List.copyOf(instead);
        }

        @Override
        public String id() {
            return "no-function";
        }
    }

    /** {@code 5 to 10 mL}: two values, where one is reckoned with. */
    record RangeInFormula(String text, Span at) implements FormulaFinding {
        @Override
        public String id() {
            return "range-in-formula";
        }
    }
}
