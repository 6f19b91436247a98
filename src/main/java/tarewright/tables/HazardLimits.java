package tarewright.tables;

import java.util.List;
import tarewright.safety.AcuteEstimate;
import tarewright.safety.FlammableBand;
import tarewright.safety.GasLimits;
import tarewright.safety.GenericLimit;
import tarewright.safety.HazardClass;
import tarewright.safety.Route;
import tarewright.safety.SupplementalLimit;

/** Reads the rules by which a mixture is classified. */
final class HazardLimits {
    private HazardLimits() {
    }

    static List<GenericLimit> genericLimits(String folder) {
        return Rows.of(folder + "generic-limits.csv").stream().map(r -> new GenericLimit(r.text("tier"),
                new HazardClass(r.text("gives_class"), r.text("gives_category"), r.text("gives_code")),
                r.text("ingredient_class"),
                r.text("ingredient_category"), r.number("limit_pct"), r.text("method").equals("sum"),
                r.optional("m_factor").map(m -> HazardCells.choice(GenericLimit.MFactor.class, r, "m_factor",
                        m)).orElse(GenericLimit.MFactor.NONE),
                r.text("clause"), r.provenance())).toList();
    }

    static List<AcuteEstimate> acuteEstimates(String folder) {
        return Rows.of(folder + "acute-estimates.csv").stream().map(r -> new AcuteEstimate(HazardCells.choice(Route.class, r,
                "route"),
                (int) r.number("category"), r.text("code"), r.number("point_estimate"), r.number("up_to"), r.text("clause"),
                r.provenance())).toList();
    }

    static List<FlammableBand> flammableBands(String folder) {
        return Rows.of(folder + "flammable-solutions.csv").stream().map(r -> new FlammableBand(r.text("substance"),
                r.number("from_pct"),
                new HazardClass(r.text("hazard_class"), r.text("category"), r.text("code")), r.provenance())).toList();
    }

    static List<SupplementalLimit> supplementalLimits(String folder) {
        return Rows.of(folder + "supplemental-limits.csv").stream().map(r -> new SupplementalLimit(r.text("code"),
                r.optional("ingredient_class"), r.text("ingredient_category"), r.number("from_pct"),
                HazardCells.choice(SupplementalLimit.When.class, r, "when"), r.provenance())).toList();
    }

    static List<GasLimits> gases() {
        return Rows.of("hazards/gases.csv").stream().map(r -> new GasLimits(r.text("substance"), r.text("name"),
                r.text("formula"),
                r.optionalNumber("molar_mass"), r.optionalNumber("twa_ppm"), r.optionalNumber("stel_ppm"),
                        r.optionalNumber("ceiling_ppm"),
                r.optionalNumber("idlh_ppm"), r.optionalNumber("pel_twa_ppm"), r.optionalNumber("pel_ceiling_ppm"),
                r.optionalNumber("lel_pct"), r.optionalNumber("uel_pct"), r.text("odour"), r.text("note"),
                        r.text("fields_from_memory"),
                r.provenance())).toList();
    }
}
