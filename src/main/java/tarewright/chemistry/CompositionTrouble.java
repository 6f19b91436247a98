package tarewright.chemistry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Why a composition by mass gives no formula. */
public sealed interface CompositionTrouble {
    /** A lasting name such as {@code percent-sum-over-100}. */
    String id();

    /** What the words about it may name, by the name of the placeholder; numbers to four digits. */
    Map<String, Object> fields();

    /** Mass percentages that add up to more than the whole. */
    record PercentSumOver100(double sum) implements CompositionTrouble {
        @Override
        public String id() {
            return "percent-sum-over-100";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("sum", shown(sum));
        }
    }

    /** Mass percentages that leave part of the whole open: an element may be missing. */
    record PercentSumUnder100(double sum) implements CompositionTrouble {
        @Override
        public String id() {
            return "percent-sum-under-100";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("sum", shown(sum));
        }
    }

    /** A mass or percentage that is not above zero. */
    record NothingOfElement(String element, double amount) implements CompositionTrouble {
        @Override
        public String id() {
            return "nothing-of-element";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("element", element, "amount", shown(amount));
        }
    }

    /** Elements without an atomic weight; at least one. */
    record NoAtomicWeight(List<String> elements) implements CompositionTrouble {
        public NoAtomicWeight {
            elements = List.copyOf(elements);
        }

        @Override
        public String id() {
            return "no-atomic-weight";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("elements", String.join(", ", elements));
        }
    }

    /**
     * Amounts of substance that are in no simple ratio.
     *
     * @param elements the symbols as given
     * @param ratios of the amounts to the smallest of them, in that order
     */
    record NoSimpleRatio(List<String> elements, List<Double> ratios) implements CompositionTrouble {
        public NoSimpleRatio {
            elements = List.copyOf(elements);
            ratios = List.copyOf(ratios);
        }

        @Override
        public String id() {
            return "no-simple-ratio";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("elements", String.join(", ", elements),
                    "ratios", ratios.stream().map(CompositionTrouble::shown).collect(Collectors.joining(" : ")));
        }
    }

    /**
     * A molar mass that is no multiple of that of the empirical formula.
     *
     * @param empirical the formula
     * @param empiricalMolarMass in g/mol
     * @param molarMass in g/mol
     * @param multiple the one divided by the other
     */
    record NoMultiple(String empirical, double empiricalMolarMass, double molarMass, double multiple)
            implements CompositionTrouble {
        @Override
        public String id() {
            return "no-multiple";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("empirical", empirical, "unit", shown(empiricalMolarMass), "mass", shown(molarMass),
                    "multiple", shown(multiple));
        }
    }

    private static String shown(double number) {
        return Double.isFinite(number)
                ? new BigDecimal(number).round(new MathContext(4)).stripTrailingZeros().toPlainString() : "not a number";
    }
}
