package tarewright.tables;

import java.util.List;
import tarewright.safety.CoveredStatement;
import tarewright.safety.LabelElement;
import tarewright.safety.PictogramRule;
import tarewright.safety.ResponseRule;
import tarewright.safety.Sign;
import tarewright.safety.SignalWord;
import tarewright.safety.SmallPackRule;
import tarewright.safety.Statement;
import tarewright.safety.StatementList;

/** Reads what labels show. */
final class HazardLabels {
    private HazardLabels() {
    }

    static List<LabelElement> labelElements(String folder) {
        return Rows.of(folder + "label-elements.csv").stream().map(r -> new LabelElement(r.text("hazard_class"),
                r.list("categories"),
                r.list("codes"), r.list("pictograms"),
                r.optional("signal_word").map(w -> HazardCells.choice(SignalWord.class, r, "signal_word", w)),
                        r.provenance())).toList();
    }

    static List<PictogramRule> pictogramRules(String folder) {
        return Rows.of(folder + "pictogram-precedence.csv").stream().map(r -> new PictogramRule(r.text("rule"), r.text("present"),
                r.optional("because"), r.text("drops"), r.list("only_for"), r.provenance())).toList();
    }

    static List<CoveredStatement> covered(String folder) {
        return Rows.of(folder + "covered-statements.csv").stream()
                .map(r -> new CoveredStatement(r.text("code"), r.text("covers"), r.provenance())).toList();
    }

    static StatementList statements(String folder) {
        return new StatementList(Rows.of(folder + "statements.csv").stream().map(r -> new Statement(r.text("code"),
                r.text("text"),
                HazardCells.choice(Statement.Kind.class, r, "kind"), r.provenance())).toList());
    }

    static List<SmallPackRule> smallPacks(String folder) {
        return Rows.of(folder + "small-packs.csv").stream().map(r -> new SmallPackRule(r.text("hazard_class"),
                r.list("categories"),
                HazardCells.choice(SmallPackRule.Omits.class, r, "omits"), r.optional("only_if"), r.text("clause"),
                        r.provenance()))
                .toList();
    }

    static List<ResponseRule> responses(String folder) {
        return Rows.of(folder + "responses.csv").stream().map(r -> new ResponseRule(r.text("code"),
                HazardCells.choice(ResponseRule.Topic.class, r, "topic"), r.text("statement"), r.text("fill"), r.text("clause"),
                r.provenance())).toList();
    }

    static List<Sign> signs() {
        return Rows.of("hazards/signs.csv").stream().map(r -> new Sign(r.text("number"), r.text("kind"), r.text("meaning"),
                r.text("use"),
                r.provenance())).toList();
    }
}
