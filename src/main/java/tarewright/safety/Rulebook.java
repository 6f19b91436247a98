package tarewright.safety;

import java.util.List;

/** The tables of one rule set, as a country has them. */
public record Rulebook(RuleSet ruleSet, SubstanceTable substances, List<GenericLimit> genericLimits,
        List<AcuteEstimate> acuteEstimates, List<FlammableBand> flammableBands, List<SupplementalLimit> supplementalLimits,
        List<LabelElement> labelElements, List<PictogramRule> pictogramRules, List<CoveredStatement> covered,
        StatementList statements, List<GasLimits> gases, ReactiveTable reactive, List<ProtectionRule> protection,
        List<Sign> signs, WasteTable waste, List<SmallPackRule> smallPacks, List<ResponseRule> responses) {
    public Rulebook {
        genericLimits = List.copyOf(genericLimits);
        acuteEstimates = List.copyOf(acuteEstimates);
        flammableBands = List.copyOf(flammableBands);
        supplementalLimits = List.copyOf(supplementalLimits);
        labelElements = List.copyOf(labelElements);
        pictogramRules = List.copyOf(pictogramRules);
        covered = List.copyOf(covered);
        gases = List.copyOf(gases);
        protection = List.copyOf(protection);
        signs = List.copyOf(signs);
        smallPacks = List.copyOf(smallPacks);
        responses = List.copyOf(responses);
    }

    /** The same rules with other substances. */
    public Rulebook with(SubstanceTable other) {
        return new Rulebook(ruleSet, other, genericLimits, acuteEstimates, flammableBands, supplementalLimits, labelElements,
                pictogramRules, covered, statements, gases, reactive,
                protection, signs, waste, smallPacks, responses);
    }
}
