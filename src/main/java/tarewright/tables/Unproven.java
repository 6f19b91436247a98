package tarewright.tables;

import java.util.List;
import java.util.stream.Stream;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Curve;
import tarewright.chemistry.Provenance;

/**
 * A row of our tables that is from memory.
 *
 * @param table which one
 * @param row what it is about
 * @param provenance of the row
 */
public record Unproven(String table, String row, Provenance provenance) {
    static List<Unproven> in(ReferenceTables tables) {
        return Stream.of(
                tables.substances().all().stream().map(row -> new Unproven("substances", row.name(), row.provenance())),
                tables.substances().all().stream().flatMap(row -> row.density().stream()
                        .map(density -> new Unproven("densities of substances", row.name(), density.provenance()))),
                tables.densities().all().stream().flatMap(table ->
                        curve("densities of solutions", table.name(), table.densities())),
                tables.strengths().stream().map(row -> new Unproven("commercial strengths", row.name(), row.provenance())),
                tables.gasSolubilities().stream().map(row -> new Unproven("solubility of gases", row.name(), row.provenance())),
                tables.virials().stream().map(row -> new Unproven("virial coefficients", row.name(), row.provenance())),
                tables.enthalpies().all().stream().map(row -> new Unproven("enthalpies of formation",
                        row.formula().plain() + "(" + row.state().letters() + ")", row.provenance())),
                tables.saltSolubilities().stream().flatMap(row ->
                        curve("solubility of solids", row.formula().plain(), row.saturated())),
                tables.dilutionHeats().stream().flatMap(row -> curve("heats of dilution", row.formula().plain(), row.released())),
                tables.acidConstants().all().stream().map(row -> new Unproven("acid constants", row.name(), row.provenance())))
                .flatMap(each -> each).filter(row -> row.provenance().confidence() == Confidence.MEMORY).toList();
    }

    private static Stream<Unproven> curve(String table, String name, Curve curve) {
        return curve.rows().stream().map(row -> new Unproven(table, name + " at " + row.x(), row.provenance()));
    }
}
