package tarewright.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tarewright.safety.ResponseRule;
import tarewright.safety.Rulebook;
import tarewright.safety.Statement;
import tarewright.safety.StatementList;

/** The words of hazard and precautionary statements, and of what fills their gaps, in other languages than English. */
final class StatementWords {
    /** The languages with a file of their own. */
    private static final Set<String> LANGUAGES = Set.of("es");

    private StatementWords() {
    }

    static Rulebook in(Rulebook rules, String language) {
        if (!LANGUAGES.contains(language)) {
            return rules;
        }
        Map<String, Row> words = new LinkedHashMap<>();
        Rows.of("hazards/" + rules.ruleSet().id() + "/statements_" + language + ".csv").forEach(r -> words.put(r.text("code"), r));
        List<Statement> statements = rules.statements().all().stream().map(s -> words.containsKey(s.code())
                ? new Statement(s.code(), words.get(s.code()).text("text"), s.kind(), words.get(s.code()).provenance()) : s).toList();
        List<ResponseRule> responses = rules.responses().stream().map(r -> words.containsKey(r.fill())
                ? new ResponseRule(r.code(), r.topic(), r.statement(), words.get(r.fill()).text("text"), r.clause(), r.provenance()) : r).toList();
        return new Rulebook(rules.ruleSet(), rules.substances(), rules.genericLimits(), rules.acuteEstimates(), rules.flammableBands(),
                rules.supplementalLimits(), rules.labelElements(), rules.pictogramRules(), rules.covered(), new StatementList(statements), rules.gases(),
                rules.reactive(), rules.protection(), rules.signs(), rules.waste(), rules.smallPacks(), responses);
    }
}
