package tarewright.chemistry.solution;

import java.util.Map;
import java.util.Optional;
import tarewright.quantity.Digits;

/** Why a solution cannot be made so. Strengths are amount concentrations in mol/m³. */
public sealed interface SolutionTrouble {
    /** The lasting name under which its words stand. */
    String id();

    /** For the words: strengths as text in mol/L. */
    Map<String, Object> fields();

    /** A step of a series of dilutions that would make it stronger than what it starts from. */
    record DilutionImpossible(double wanted, double from) implements SolutionTrouble {
        @Override
        public String id() {
            return "dilution-impossible";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("wanted", molesPerLitre(wanted), "stock", molesPerLitre(from));
        }
    }

    /** A stock, or a pure liquid, that is weaker than what is to be made from it. */
    record StockTooWeak(String stock, double wanted, double strongest) implements SolutionTrouble {
        @Override
        public String id() {
            return "stock-too-weak";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("stock", stock, "wanted", molesPerLitre(wanted), "strongest", molesPerLitre(strongest));
        }
    }

    /** More than dissolves at 20 °C. @param saturated strength of the saturated solution, or a bound that it does not reach */
    record BeyondSolubility(String formula, double wanted, double saturated, boolean bound) implements SolutionTrouble {
        @Override
        public String id() {
            return "beyond-solubility";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("formula", formula, "wanted", molesPerLitre(wanted),
                    "saturated", bound ? Optional.empty() : Optional.of(molesPerLitre(saturated)),
                    "below", bound ? Optional.of(molesPerLitre(saturated)) : Optional.empty());
        }
    }

    /** A strength that does not lie between the two that are to be mixed. */
    record MixingImpossible(double wanted, double weaker, double stronger) implements SolutionTrouble {
        @Override
        public String id() {
            return "mixing-impossible";
        }

        @Override
        public Map<String, Object> fields() {
            return Map.of("wanted", molesPerLitre(wanted), "weaker", molesPerLitre(weaker), "stronger", molesPerLitre(stronger));
        }
    }

    private static String molesPerLitre(double si) {
        return Digits.significant(si / 1000, 3) + " mol/L";
    }
}
