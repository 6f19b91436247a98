package tarewright.chemistry;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.exact.Rational;

/** What came of looking for the coefficients of an equation. */
public sealed interface Balance {
    /**
     * The one set of coefficients.
     *
     * @param coefficients one for each term, left then right: whole, above zero, without a common divisor
     */
    record Unique(List<BigInteger> coefficients) implements Balance {
        public Unique {
            coefficients = List.copyOf(coefficients);
        }
    }

    /**
     * No set of coefficients above zero balances it.
     *
     * @param kind why
     * @param onlyLeft elements that appear on the left only
     * @param onlyRight elements that appear on the right only
     * @param together elements that cannot be balanced together, each of them needed for that; empty if some appear on one
     *     side only
     * @param mediumHelps whether it can be balanced once water and its ions take part
     */
    record Impossible(Kind kind, List<String> onlyLeft, List<String> onlyRight, List<String> together, boolean mediumHelps)
            implements Balance, BalanceTrouble {
        public Impossible {
            onlyLeft = List.copyOf(onlyLeft);
            onlyRight = List.copyOf(onlyRight);
            together = List.copyOf(together);
        }

        /** Why no coefficients can balance an equation. */
        public enum Kind {
            /** An element appears on one side only. */
            ONE_SIDED,
            /** The elements appear on both sides, but no coefficients above zero balance them together. */
            NO_POSITIVE_SET,
            /** The atoms can be balanced, the charge cannot at the same time. */
            CHARGE
        }

        @Override
        public String id() {
            return "impossible-equation";
        }

        @Override
        public Map<String, Object> fields() {
            boolean charge = kind == Kind.CHARGE;
            String blamed = String.join(", ", together);
            return Map.of("onlyLeft", String.join(", ", onlyLeft), "onlyRight", String.join(", ", onlyRight),
                    "charge", charge ? blamed : "", "together", charge ? "" : blamed,
                    "medium", mediumHelps ? Optional.of(Medium.ACIDIC.ion().plain()) : Optional.empty());
        }
    }

    /**
     * Several independent reactions between the same species, which can be mixed in any proportion.
     *
     * @param reactions independent ones, at most six, and none where more than twelve are independent: for each term its
     *     coefficient, whole, zero or above, without a common divisor
     * @param balancesAsWritten whether it balances with the coefficients written, 1 where none is
     * @param examples the same reactions written out, without what does not take part in each
     */
    record Ambiguous(List<List<BigInteger>> reactions, boolean balancesAsWritten, List<String> examples)
            implements Balance, BalanceTrouble {
        public Ambiguous {
            reactions = reactions.stream().map(List::copyOf).toList();
            examples = List.copyOf(examples);
        }

        @Override
        public String id() {
            return "ambiguous-equation";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("examples", examples);
        }
    }

    /** What came of checking the coefficients that are written. */
    sealed interface Check {
        /** They are right, if not always the lowest; as written, 1 where none is. */
        record Correct(List<Rational> coefficients) implements Check {
            public Correct {
                coefficients = List.copyOf(coefficients);
            }
        }

        /** Elements whose atoms differ, in the order of their first appearance; at least one. */
        record Unbalanced(List<ElementCount> elements) implements Check, BalanceTrouble {
            public Unbalanced {
                elements = List.copyOf(elements);
            }

            @Override
            public String id() {
                return "unbalanced-equation";
            }

            @Override
            public Map<String, Object> fields() {
                ElementCount first = elements.get(0);
                List<String> others = elements.stream().skip(1).map(ElementCount::toString).toList();
                return Map.of("element", first.element(), "left", first.left().toString(), "right", first.right().toString(),
                        "others", String.join("; ", others));
            }
        }

        /** The atoms balance, the charge does not; in elementary charges. */
        record ChargeImbalance(Rational left, Rational right) implements Check, BalanceTrouble {
            @Override
            public String id() {
                return "charge-imbalance";
            }

            @Override
            public Map<String, Object> fields() {
                return Map.of("left", signed(left), "right", signed(right));
            }

            private static String signed(Rational charge) {
                return (charge.signum() > 0 ? "+" : "") + charge;
            }
        }
    }

    /** How many atoms of an element stand on each side, coefficients included. */
    record ElementCount(String element, Rational left, Rational right) {
        /** {@code O 6 | 4}. */
        @Override
        public String toString() {
            return element + " " + left + " | " + right;
        }
    }
}
