package tarewright.safety;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tarewright.chemistry.Provenance;

/**
 * A measure and what asks for it. What is empty does not restrict the rule.
 *
 * @param measure a lasting name; rules with the same measure ask for the same thing
 * @param sign ISO 7010 number
 * @param codes statements of which a matter must have one
 * @param forms forms of which a matter must have one
 * @param substances ids of which a matter must hold one
 * @param when something else that must hold
 * @param fromMillilitres of a matter, from
 * @param fromGrams of a matter, from
 * @param unknownAmount whether an amount that is not known counts as reached
 * @param unknown whether a matter that is not known asks for it too, or only such a matter
 * @param standing whether it holds in every lesson
 * @param replaces a lesser measure that need not be named beside it
 * @param text what to do, in the table's words
 * @param specification standards and figures, in the table's words
 * @param authority what stands behind it: a law, a standard, guidance, or practice without a source
 */
public record ProtectionRule(String id, String measure, String sign, List<String> codes, Set<Form> forms, List<String> substances,
        Optional<When> when, OptionalDouble fromMillilitres, OptionalDouble fromGrams, boolean unknownAmount, ForUnknown unknown,
        boolean standing, Optional<String> replaces, String text, String specification, String authority, Provenance provenance) {
    /** Conditions that are not read off a matter's statements. */
    public enum When {
        GAS_SYRINGE, GLASS_TUBING, FLAME, HEAT,
        /** Gloves are asked for by another rule. */
        GLOVES,
        /** The table restricts the substance. */
        RESTRICTED
    }

    /** What a rule says of a matter that is not known. */
    public enum ForUnknown {
        NO, YES, ONLY
    }

    public ProtectionRule {
        codes = List.copyOf(codes);
        forms = Set.copyOf(forms);
        substances = List.copyOf(substances);
    }
}
