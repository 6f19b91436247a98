package tarewright.tables;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Provenance;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.chemistry.Substances;
import tarewright.finding.Finding;
import tarewright.tables.OwnTableFinding.FormulaInTable;
import tarewright.tables.OwnTableFinding.NotADensity;
import tarewright.tables.OwnTableFinding.NotASubstanceState;
import tarewright.tables.OwnTableFinding.SubstanceNameMissing;
import tarewright.tables.OwnTableFinding.SubstanceNameTooLong;
import tarewright.tables.OwnTableFinding.SubstanceStateMissing;
import tarewright.text.Span;

/**
 * A row of a teacher's own table whose cells could all be read. What it leaves empty is as in our table.
 *
 * @param name of the substance
 * @param synonyms may be empty
 * @param synonymsAt where they stand, or the name
 * @param formula if given
 * @param state if given
 * @param density in kg/m³, if given
 * @param cells all that are not empty, by column
 */
record OwnSubstance(OwnCell name, List<String> synonyms, Span synonymsAt, Optional<Formula> formula, Optional<State> state,
        Optional<Double> density, Map<String, OwnCell> cells) {
    private static final int LONGEST_NAME = 200;
    /** Nothing is denser than osmium, 22.6 g/mL; what looks denser was typed in kg/m³. */
    private static final double DENSEST = 23;

    static Optional<OwnSubstance> of(Map<String, OwnCell> cells, Span row, Substances ours, List<Finding> findings) {
        OwnCell name = cells.get("name");
        if (name == null) {
            findings.add(new SubstanceNameMissing(row));
            return Optional.empty();
        }
        if (name.text().length() > LONGEST_NAME) {
            findings.add(new SubstanceNameTooLong(LONGEST_NAME, name.at()));
            return Optional.empty();
        }
        int before = findings.size();
        Optional<Formula> formula = Optional.ofNullable(cells.get("formula")).flatMap(cell -> formula(cell, findings));
        Optional<State> state = Optional.ofNullable(cells.get("state")).flatMap(cell -> state(cell, findings));
        Optional<Double> density = Optional.ofNullable(cells.get("density")).flatMap(cell -> density(cell, findings));
        if (!cells.containsKey("state") && ours.named(name.text()).isEmpty()) {
            findings.add(new SubstanceStateMissing(name.text(), name.at()));
        }
        if (findings.size() > before) {
            return Optional.empty();
        }
        OwnCell synonyms = cells.getOrDefault("synonyms", new OwnCell("", name.at()));
        return Optional.of(new OwnSubstance(name, OwnSubstances.parts(synonyms.text()), synonyms.at(), formula, state,
                density, cells));
    }

    private static Optional<Formula> formula(OwnCell cell, List<Finding> findings) {
        FormulaResult read = Formula.parse(cell.text());
        if (read instanceof FormulaResult.Bad bad) {
            boolean asWritten = cell.at().text().equals(cell.text());
            findings.add(new FormulaInTable(bad.trouble(),
                    asWritten ? cell.at().part(bad.trouble().from(), bad.trouble().to()) : cell.at()));
        }
        return read.value();
    }

    private static Optional<State> state(OwnCell cell, List<Finding> findings) {
        Optional<State> state = State.of(cell.text().toLowerCase(Locale.ROOT));
        if (state.isEmpty()) {
            findings.add(new NotASubstanceState(cell.text(), cell.at()));
        }
        return state;
    }

    private static Optional<Double> density(OwnCell cell, List<Finding> findings) {
        double value = cell.text().matches("[0-9]{1,9}([.][0-9]{1,9})?") ? Double.parseDouble(cell.text()) : -1;
        if (value > 0 && value < DENSEST) {
            return Optional.of(value * 1000);
        }
        boolean thousandfold = value >= 500 && value / 1000 < DENSEST;
        findings.add(new NotADensity(cell.text(), thousandfold ? Optional.of(plain(value / 1000)) : Optional.empty(), cell.at()));
        return Optional.empty();
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** The substance, put together from this row and, where it is silent, the one that it replaces. */
    Substance substance(String newId, List<String> names, Optional<Substance> before) {
        Provenance provenance = new Provenance(text("source").orElse(name.at().source().name()), Confidence.READ);
        Optional<Substance.Density> given = density.map(value -> new Substance.Density(value, provenance));
        return new Substance(before.map(Substance::id).orElse(newId), name.text(), names,
                formula.or(() -> before.flatMap(Substance::formula)), state.or(() -> before.map(Substance::state)).orElseThrow(),
                text("cas").or(() -> before.flatMap(Substance::casNumber)), given.or(() -> before.flatMap(Substance::density)),
                text("note").or(() -> before.map(Substance::note)).orElse(""), provenance);
    }

    private Optional<String> text(String column) {
        return Optional.ofNullable(cells.get(column)).map(OwnCell::text);
    }
}
