package tarewright.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import tarewright.safety.AcuteEstimate;
import tarewright.safety.CoveredStatement;
import tarewright.safety.FlammableBand;
import tarewright.safety.GasLimits;
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
                HazardSubstances.read(Rows.of("hazards/substances.csv"), Rows.of("hazards/specific-limits.csv")));
        return new Rulebook(set, substances, genericLimits(), acuteEstimates(), flammableBands(), supplementalLimits(), labelElements(),
                pictogramRules(), covered(), statements(), gases(), HazardReactions.read());
    }

    /** The rule sets that come with the program, the default first. */
    public static List<RuleSet> ruleSets() {
        return Rows.of("hazards/rule-sets.csv").stream().map(r -> new RuleSet(r.text("id"), new HashSet<>(r.list("countries")), r.text("title"),
                r.text("edition"), r.text("note"), r.provenance())).toList();
    }

    private static List<GenericLimit> genericLimits() {
        return Rows.of("hazards/generic-limits.csv").stream().map(r -> new GenericLimit(r.text("tier"),
                new HazardClass(r.text("gives_class"), r.text("gives_category"), r.text("gives_code")), r.text("ingredient_class"),
                r.text("ingredient_category"), r.number("limit_pct"), r.text("method").equals("sum"),
                r.optional("m_factor").map(m -> HazardCells.choice(GenericLimit.MFactor.class, r, "m_factor", m)).orElse(GenericLimit.MFactor.NONE),
                r.text("clause"), r.provenance())).toList();
    }

    private static List<AcuteEstimate> acuteEstimates() {
        return Rows.of("hazards/acute-estimates.csv").stream().map(r -> new AcuteEstimate(HazardCells.choice(Route.class, r, "route"),
                (int) r.number("category"), r.text("code"), r.number("point_estimate"), r.number("up_to"), r.text("clause"),
                r.provenance())).toList();
    }

    private static List<FlammableBand> flammableBands() {
        return Rows.of("hazards/flammable-solutions.csv").stream().map(r -> new FlammableBand(r.text("substance"), r.number("from_pct"),
                new HazardClass(r.text("hazard_class"), r.text("category"), r.text("code")), r.provenance())).toList();
    }

    private static List<SupplementalLimit> supplementalLimits() {
        return Rows.of("hazards/supplemental-limits.csv").stream().map(r -> new SupplementalLimit(r.text("code"),
                r.optional("ingredient_class"), r.text("ingredient_category"), r.number("from_pct"),
                HazardCells.choice(SupplementalLimit.When.class, r, "when"), r.provenance())).toList();
    }

    private static List<LabelElement> labelElements() {
        return Rows.of("hazards/label-elements.csv").stream().map(r -> new LabelElement(r.text("hazard_class"), r.list("categories"),
                r.list("codes"), r.list("pictograms"),
                r.optional("signal_word").map(w -> HazardCells.choice(SignalWord.class, r, "signal_word", w)), r.provenance())).toList();
    }

    private static List<PictogramRule> pictogramRules() {
        return Rows.of("hazards/pictogram-precedence.csv").stream().map(r -> new PictogramRule(r.text("rule"), r.text("present"),
                r.optional("because"), r.text("drops"), r.list("only_for"), r.provenance())).toList();
    }

    private static List<CoveredStatement> covered() {
        return Rows.of("hazards/covered-statements.csv").stream()
                .map(r -> new CoveredStatement(r.text("code"), r.text("covers"), r.provenance())).toList();
    }

    private static List<GasLimits> gases() {
        return Rows.of("hazards/gases.csv").stream().map(r -> new GasLimits(r.text("substance"), r.text("name"), r.text("formula"),
                r.optionalNumber("molar_mass"), r.optionalNumber("twa_ppm"), r.optionalNumber("stel_ppm"), r.optionalNumber("ceiling_ppm"),
                r.optionalNumber("idlh_ppm"), r.optionalNumber("pel_twa_ppm"), r.optionalNumber("pel_ceiling_ppm"),
                r.optionalNumber("lel_pct"), r.optionalNumber("uel_pct"), r.text("odour"), r.text("note"), r.text("fields_from_memory"),
                r.provenance())).toList();
    }

    private static StatementList statements() {
        return new StatementList(Rows.of("hazards/statements.csv").stream().map(r -> new Statement(r.text("code"), r.text("text"),
                HazardCells.choice(Statement.Kind.class, r, "kind"), r.provenance())).toList());
    }

    static Optional<RuleSet> ofCountry(String country) {
        return ruleSets().stream().filter(s -> s.countries().contains(country)).findFirst();
    }
}
