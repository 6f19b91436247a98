package tarewright.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tarewright.finding.Found;
import tarewright.safety.RuleSet;
import tarewright.safety.Rulebook;
import tarewright.safety.SubstanceTable;
import tarewright.text.SourceText;

/** Reads the hazard tables that come with the program into a {@link Rulebook}. */
public final class HazardTables {
    private HazardTables() {
    }

    /** The rules that hold where a country has no table of its own here: EU CLP. */
    public static Rulebook standard() {
        return of(ruleSets().get(0));
    }

    /** The rules where a procedure names no country. */
    public static CountryRules usual() {
        return of("");
    }

    /**
     * The rules for a country.
     *
     * @param country ISO 3166 code of two letters, in any case
     */
    public static CountryRules of(String country) {
        String code = country.strip().toUpperCase(Locale.ROOT);
        Optional<RuleSet> own = ruleSets().stream().filter(s -> s.countries().contains(code)).findFirst();
        return new CountryRules(own.map(HazardTables::of).orElseGet(HazardTables::standard), own.isPresent());
    }

    /**
     * Rules and whether they are the country's own. Where they are not, the panel says which list was used.
     *
     * @param own false where the country has no table here and the default was taken
     */
    public record CountryRules(Rulebook rules, boolean own) {
    }

    /**
     * Rules with a hazard table of the teacher's own laid over their substances; {@link HazardOwnTable} says how it is written.
     * What it replaces is noted, and whatever is classified by it carries a remark.
     *
     * @param table its name stands as the source of what is taken from it
     */
    public static Found<Rulebook> withOwn(Rulebook ours, SourceText table) {
        return HazardOwnTable.over(ours, table);
    }

    /**
     * The same rules with the standard's words in another language. A statement that the language lacks keeps its English words.
     *
     * @param language BCP 47; only its first part counts
     */
    public static CountryRules in(CountryRules country, String language) {
        return new CountryRules(StatementWords.in(country.rules(), language.split("-", 2)[0].toLowerCase(Locale.ROOT)), country.own());
    }

    /** The rule sets that come with the program, the default first. */
    public static List<RuleSet> ruleSets() {
        return Rows.of("hazards/rule-sets.csv").stream().map(r -> new RuleSet(r.text("id"), new HashSet<>(r.list("countries")),
                r.text("title"), r.text("edition"), r.text("note"), r.provenance())).toList();
    }

    /** What belongs to the rule set stands in a folder of its name; what holds everywhere, beside it. */
    private static Rulebook of(RuleSet set) {
        String folder = "hazards/" + set.id() + "/";
        SubstanceTable substances = new SubstanceTable(
                HazardSubstances.read(Rows.of(folder + "substances.csv"), Rows.of(folder + "specific-limits.csv"),
                        Rows.of("hazards/ions.csv")));
        return new Rulebook(set, substances, HazardLimits.genericLimits(folder), HazardLimits.acuteEstimates(folder),
                HazardLimits.flammableBands(folder), HazardLimits.supplementalLimits(folder), HazardLabels.labelElements(folder),
                HazardLabels.pictogramRules(folder), HazardLabels.covered(folder), HazardLabels.statements(folder),
                        HazardLimits.gases(),
                HazardReactions.read(), HazardMeasures.protection(), HazardLabels.signs(), HazardMeasures.waste(),
                HazardLabels.smallPacks(folder), HazardLabels.responses(folder));
    }
}
