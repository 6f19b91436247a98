package tarewright.tables;

import java.util.List;
import tarewright.safety.Neutraliser;
import tarewright.safety.ProtectionRule;
import tarewright.safety.WasteRule;
import tarewright.safety.WasteTable;

/** Reads protection and waste. */
final class HazardMeasures {
    private HazardMeasures() {
    }

    static List<ProtectionRule> protection() {
        return Rows.of("hazards/protection.csv").stream().map(r -> new ProtectionRule(r.text("id"), r.text("measure"),
                r.text("sign"),
                r.list("codes"), HazardReactions.forms(r, "forms"), r.list("substances"),
                r.optional("when").map(w -> HazardCells.choice(ProtectionRule.When.class, r, "when", w)),
                        r.optionalNumber("min_ml"),
                r.optionalNumber("min_g"), HazardCells.yes(r, "unknown_amount"),
                HazardCells.choice(ProtectionRule.ForUnknown.class, r, "unknown", ProtectionRule.ForUnknown.NO),
                HazardCells.yes(r, "standing"), r.optional("replaces"), r.text("text"), r.text("specification"),
                        r.text("authority"),
                r.provenance())).toList();
    }

    static WasteTable waste() {
        List<WasteRule> rules = Rows.of("hazards/waste.csv").stream().map(r -> new WasteRule(r.text("id"),
                HazardCells.choice(WasteRule.Kind.class, r, "kind"), r.list("values"), HazardCells.choice(WasteRule.Sink.class,
                r, "sink"),
                r.optional("container"), r.text("text"), r.text("authority"), r.provenance())).toList();
        List<Neutraliser> neutralisers = Rows.of("hazards/neutralising.csv").stream().map(r -> new Neutraliser(
                r.text("substance"),
                HazardCells.choice(Neutraliser.Against.class, r, "against"), r.number("equivalents"), r.number("molar_mass"),
                r.number("gas_per_equivalent"), r.text("text"), r.provenance())).toList();
        return new WasteTable(rules, neutralisers);
    }
}
