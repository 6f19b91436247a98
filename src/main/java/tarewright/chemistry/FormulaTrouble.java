package tarewright.chemistry;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Why a text is not a formula. {@link #from()} and {@link #to()} are offsets of the smallest stretch that shows it, in UTF-16
 * units from the start of the text that was read.
 */
public sealed interface FormulaTrouble extends EquationTrouble {
    @Override
    FormulaTrouble shifted(int by);

    /**
     * A symbol that no element has.
     *
     * @param symbol as written
     * @param formulas the whole formula in other capitals, each a formula indeed; often none
     * @param symbols elements spelled nearly so; none if there are {@code formulas}
     */
    record UnknownElement(String symbol, List<String> formulas, List<String> symbols, int from, int to)
            implements FormulaTrouble {
        public UnknownElement {
            formulas = List.copyOf(formulas);
            symbols = List.copyOf(symbols);
        }

        @Override
        public String id() {
            return "unknown-element";
        }

        @Override
        public UnknownElement shifted(int by) {
            return new UnknownElement(symbol, formulas, symbols, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("symbol", symbol, "formulas", formulas, "symbols", symbols);
        }
    }

    /**
     * A bracket without its fellow.
     *
     * @param bracket as written
     * @param reason which of the three it is
     */
    record BracketMismatch(String bracket, Reason reason, int from, int to) implements FormulaTrouble {
        /** What is wrong with the bracket. */
        public enum Reason {
            NEVER_OPENED("neverOpened"),
            NEVER_CLOSED("neverClosed"),
            OTHER_KIND("otherKind");

            private final String field;

            Reason(String field) {
                this.field = field;
            }

            /** The name under which the words about it find the bracket. */
            public String field() {
                return field;
            }
        }

        @Override
        public String id() {
            return "bracket-mismatch";
        }

        @Override
        public BracketMismatch shifted(int by) {
            return new BracketMismatch(bracket, reason, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of(reason.field(), bracket);
        }
    }

    /**
     * Something counted 0 times; exactly one of the two is given.
     *
     * @param element the symbol that is counted
     * @param group what stands between the brackets, or behind the count of an adduct
     */
    record ZeroCount(Optional<String> element, Optional<String> group, int from, int to) implements FormulaTrouble {
        @Override
        public String id() {
            return "zero-count";
        }

        @Override
        public ZeroCount shifted(int by) {
            return new ZeroCount(element, group, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("element", element, "group", group);
        }
    }

    /**
     * A text that is not built as a formula is.
     *
     * @param reason what is wrong
     * @param piece the text that shows it; empty if it stands at the end
     * @param instead what the author may have meant, for the whole formula
     */
    record BadFormulaSyntax(FormulaMistake reason, String piece, Optional<String> instead, int from, int to)
            implements FormulaTrouble {
        @Override
        public String id() {
            return "bad-formula-syntax";
        }

        @Override
        public BadFormulaSyntax shifted(int by) {
            return new BadFormulaSyntax(reason, piece, instead, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of(reason.field(), piece, "instead", instead);
        }
    }

    /** A pair of brackets with nothing between. */
    record EmptyGroup(String brackets, int from, int to) implements FormulaTrouble {
        @Override
        public String id() {
            return "empty-group";
        }

        @Override
        public EmptyGroup shifted(int by) {
            return new EmptyGroup(brackets, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("brackets", brackets);
        }
    }

    /**
     * A letter where a number belongs.
     *
     * @param variable the letter
     * @param adduct what it counts, behind a dot: {@code H2O}
     * @param group what it repeats: {@code C6H10O5}, or the symbol of an element
     */
    record UnresolvedVariable(String variable, Optional<String> adduct, Optional<String> group, int from, int to)
            implements FormulaTrouble {
        @Override
        public String id() {
            return "unresolved-variable";
        }

        @Override
        public UnresolvedVariable shifted(int by) {
            return new UnresolvedVariable(variable, adduct, group, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("variable", variable, "adduct", adduct, "group", group);
        }
    }

    /**
     * A number before a plain sign, which may count atoms or charges.
     *
     * @param readings the whole formula as each reading would be written, the likelier first
     */
    record AmbiguousCharge(String piece, List<String> readings, int from, int to) implements FormulaTrouble {
        public AmbiguousCharge {
            readings = List.copyOf(readings);
        }

        @Override
        public String id() {
            return "ambiguous-charge";
        }

        @Override
        public AmbiguousCharge shifted(int by) {
            return new AmbiguousCharge(piece, readings, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("piece", piece, "readings", readings);
        }
    }

    /** More characters than a formula may have. */
    record FormulaTooLong(int length, int limit, int from, int to) implements FormulaTrouble {
        @Override
        public String id() {
            return "formula-too-long";
        }

        @Override
        public FormulaTooLong shifted(int by) {
            return new FormulaTooLong(length, limit, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("length", length, "limit", limit);
        }
    }

    /** A count, or what counts amount to when multiplied, beyond any substance. */
    record CountTooLarge(String count, int limit, int from, int to) implements FormulaTrouble {
        @Override
        public String id() {
            return "count-too-large";
        }

        @Override
        public CountTooLarge shifted(int by) {
            return new CountTooLarge(count, limit, from + by, to + by);
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("count", count, "limit", limit);
        }
    }
}
