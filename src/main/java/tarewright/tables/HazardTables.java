package tarewright.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import tarewright.safety.AcuteEstimate;
import tarewright.safety.CoveredStatement;
import tarewright.safety.FlammableBand;
import tarewright.safety.GenericLimit;
import tarewright.safety.HazardClass;
import tarewright.safety.LabelElement;
import tarewright.safety.PictogramRule;
import tarewright.safety.Route;
import tarewright.safety.RuleSet;
import tarewright.safety.Rulebook;
import tarewright.safety.SignalWord;
import tarewright.safety.Statement;
import tarewright.safety.StatementList;
import tarewright.safety.SubstanceTable;
import tarewright.safety.SupplementalLimit;

/** Reads the hazard tables that come with the program into a {@link Rulebook}. */
public final class HazardTables {
    private HazardTables() {
    }

    /** The rules that hold where a country has no table of its own here: EU CLP. */
    public static Rulebook standard() {
        RuleSet set = ruleSets().get(0);
        SubstanceTable substances = new SubstanceTable(
                HazardSubstances.read(HazardCsv.rows("substances"), HazardCsv.rows("specific-limits")));
        return new Rulebook(set, substances, genericLimits(), acuteEstimates(), flammableBands(), supplementalLimits(), labelElements(),
                pictogramRules(), covered(), statements());
    }

    /** The rule sets that come with the program, the default first. */
    public static List<RuleSet> ruleSets() {
        return HazardCsv.rows("rule-sets").stream().map(r -> new RuleSet(r.text("id"), new HashSet<>(r.list("countries")), r.text("title"),
                r.text("edition"), r.text("note"), r.reference())).toList();
    }

    private static List<GenericLimit> genericLimits() {
        return HazardCsv.rows("generic-limits").stream().map(r -> new GenericLimit(r.text("tier"),
                new HazardClass(r.text("gives_class"), r.text("gives_category"), r.text("gives_code")), r.text("ingredient_class"),
                r.text("ingredient_category"), r.number("limit_pct"), r.text("method").equals("sum"),
                r.maybe("m_factor").map(m -> r.choice(GenericLimit.MFactor.class, "m_factor", m)).orElse(GenericLimit.MFactor.NONE),
                r.text("clause"), r.reference())).toList();
    }

    private static List<AcuteEstimate> acuteEstimates() {
        return HazardCsv.rows("acute-estimates").stream().map(r -> new AcuteEstimate(r.choice(Route.class, "route"),
                (int) r.number("category"), r.text("code"), r.number("point_estimate"), r.number("up_to"), r.text("clause"),
                r.reference())).toList();
    }

    private static List<FlammableBand> flammableBands() {
        return HazardCsv.rows("flammable-solutions").stream().map(r -> new FlammableBand(r.text("substance"), r.number("from_pct"),
                new HazardClass(r.text("hazard_class"), r.text("category"), r.text("code")), r.reference())).toList();
    }

    private static List<SupplementalLimit> supplementalLimits() {
        return HazardCsv.rows("supplemental-limits").stream().map(r -> new SupplementalLimit(r.text("code"),
                r.maybe("ingredient_class"), r.text("ingredient_category"), r.number("from_pct"),
                r.choice(SupplementalLimit.When.class, "when"), r.reference())).toList();
    }

    private static List<LabelElement> labelElements() {
        return HazardCsv.rows("label-elements").stream().map(r -> new LabelElement(r.text("hazard_class"), r.list("categories"),
                r.list("codes"), r.list("pictograms"),
                r.maybe("signal_word").map(w -> r.choice(SignalWord.class, "signal_word", w)), r.reference())).toList();
    }

    private static List<PictogramRule> pictogramRules() {
        return HazardCsv.rows("pictogram-precedence").stream().map(r -> new PictogramRule(r.text("rule"), r.text("present"),
                r.maybe("because"), r.text("drops"), r.list("only_for"), r.reference())).toList();
    }

    private static List<CoveredStatement> covered() {
        return HazardCsv.rows("covered-statements").stream()
                .map(r -> new CoveredStatement(r.text("code"), r.text("covers"), r.reference())).toList();
    }

    private static StatementList statements() {
        return new StatementList(HazardCsv.rows("statements").stream().map(r -> new Statement(r.text("code"), r.text("text"),
                r.choice(Statement.Kind.class, "kind"), r.reference())).toList());
    }

    static Optional<RuleSet> ofCountry(String country) {
        return ruleSets().stream().filter(s -> s.countries().contains(country)).findFirst();
    }
}
