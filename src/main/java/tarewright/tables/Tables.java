package tarewright.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import tarewright.chemistry.AcidConstant;
import tarewright.chemistry.AcidConstants;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.Composition;
import tarewright.chemistry.Curve;
import tarewright.chemistry.Densities;
import tarewright.chemistry.DensityTable;
import tarewright.chemistry.DilutionHeat;
import tarewright.chemistry.Element;
import tarewright.chemistry.Elements;
import tarewright.chemistry.FlammableLimits;
import tarewright.chemistry.FormationEnthalpies;
import tarewright.chemistry.FormationEnthalpy;
import tarewright.chemistry.GasSolubility;
import tarewright.chemistry.SaltSolubility;
import tarewright.chemistry.Substance;
import tarewright.chemistry.Substances;
import tarewright.chemistry.Virial;

/** Loads the chemical data of the product. */
public final class Tables {
    private Tables() {
    }

    /** Reads every data file from the class path. Takes some 0.1 s in a cold JVM: load once and pass it on. */
    public static ReferenceTables load() {
        List<Row> gases = Rows.of("gas-virial.csv");
        Substances substances = new Substances(Rows.of("substances.csv").stream().map(Tables::substance).toList());
        Set<Composition> isomers = substances.isomers();
        return new ReferenceTables(
                Elements.of(Rows.of("atomic-weights.csv").stream().flatMap(row -> element(row).stream()).toList()),
                substances,
                new Densities(groups("solution-density.csv", "solute").stream().map(Tables::density).toList(), isomers),
                Rows.of("commercial-strengths.csv").stream().map(Tables::strength).toList(),
                Rows.of("gas-solubility.csv").stream().map(Tables::gasSolubility).toList(),
                gases.stream().filter(row -> !row.text("a1_cm3_mol").isEmpty()).map(Tables::virial).toList(),
                gases.stream().filter(row -> row.text("flammable").equals("yes")).map(Tables::flammable).toList(),
                new FormationEnthalpies(Rows.of("thermo.csv").stream().map(Tables::enthalpy).toList(), isomers),
                groups("solubility-salts.csv", "formula").stream().map(Tables::saltSolubility).toList(),
                groups("dilution-heat.csv", "formula").stream().map(Tables::dilutionHeat).toList(),
                new AcidConstants(Rows.of("acid-base.csv").stream().map(Tables::acidConstant).toList(), isomers), Practice.load());
    }

    private static Collection<List<Row>> groups(String file, String column) {
        Map<String, List<Row>> groups = new LinkedHashMap<>();
        Rows.of(file).forEach(row -> groups.computeIfAbsent(row.text(column), k -> new ArrayList<>()).add(row));
        return groups.values();
    }

    private static Curve curve(List<Row> rows, String x, double xUnit, String y, double yUnit) {
        return new Curve(rows.stream().map(row -> new Curve.Row(row.number(x) * xUnit, row.number(y) * yUnit, row.provenance()))
                .toList());
    }

    /** Those without a standard atomic weight are left out. */
    private static Optional<Element> element(Row row) {
        return row.optional("abridged_value").map(weight -> new Element((int) row.number("z"), row.text("symbol"),
                row.text("name"), row.number("abridged_value"), row.number("abridged_uncertainty"), row.text("source")));
    }

    private static Substance substance(Row row) {
        return new Substance(row.text("id"), row.text("name"), row.list("synonyms"), row.optionalFormula("formula"),
                row.state("state"),
                row.optional("cas"), row.optional("density_g_mL_20C").map(cell -> new Substance.Density(
                        row.number("density_g_mL_20C") * 1000, row.provenance("density_source", "density_confidence"))),
                row.text("note"), row.provenance());
    }

    private static DensityTable density(List<Row> rows) {
        return new DensityTable(rows.get(0).formula("solute"), rows.get(0).text("name"),
                curve(rows, "mass_percent", 0.01, "density_g_mL_20C", 1000));
    }

    private static CommercialStrength strength(Row row) {
        OptionalDouble density = row.optionalNumber("density_g_mL_20C");
        return new CommercialStrength(row.text("name"), row.formula("solute"), row.text("household").equals("yes"),
                row.number("strength"), basis(row.text("strength_basis")),
                density.isPresent() ? OptionalDouble.of(density.getAsDouble() * 1000) : density,
                row.number("concentration_mol_L") * 1000, row.text("note"), row.provenance());
    }

    private static CommercialStrength.Basis basis(String symbol) {
        return Arrays.stream(CommercialStrength.Basis.values()).filter(basis -> basis.symbol().equals(symbol)).findFirst()
                .orElseThrow(() -> new IllegalStateException("basis " + symbol));
    }

    private static GasSolubility gasSolubility(Row row) {
        return new GasSolubility(row.formula("formula"), row.text("name"), row.number("Hscp_mol_m3_Pa"),
                row.number("dlnH_d1T_K"), row.optional("reacts"), row.text("note"), row.provenance());
    }

    private static Virial virial(Row row) {
        return new Virial(row.formula("formula"), row.text("name"),
                IntStream.rangeClosed(1, 5).mapToObj(i -> row.number("a" + i + "_cm3_mol")).toList(), row.provenance());
    }

    private static FlammableLimits flammable(Row row) {
        return new FlammableLimits(row.formula("formula"), row.number("lower_limit_vol_percent") / 100,
                row.number("upper_limit_vol_percent") / 100, row.provenance());
    }

    private static FormationEnthalpy enthalpy(Row row) {
        return new FormationEnthalpy(row.formula("formula"), row.state("state"), row.number("dfH_kJ_mol") * 1000,
                row.provenance());
    }

    private static SaltSolubility saltSolubility(List<Row> rows) {
        Row first = rows.get(0);
        return new SaltSolubility(first.formula("formula"), first.formula("solid_phase"),
                curve(rows, "t_C", 1, "g_per_100g_water", 1), first.text("note"));
    }

    private static DilutionHeat dilutionHeat(List<Row> rows) {
        return new DilutionHeat(rows.get(0).formula("formula"), curve(rows, "molality_mol_kg", 1, "heat_kJ_mol", 1));
    }

    private static AcidConstant acidConstant(Row row) {
        return new AcidConstant(row.text("name"), row.optionalFormula("acid_form"), row.optionalFormula("base_form"),
                (int) row.number("step"), row.number("pKa"), row.number("t_C"),
                AcidConstant.Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)), row.text("note"),
                row.provenance());
    }
}
