package tarewright.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.safety.Basis;
import tarewright.safety.Rulebook;
import tarewright.safety.SubstanceHazards;
import tarewright.safety.SubstanceTable;
import tarewright.tables.HazardFinding.HazardsOverridden;
import tarewright.tables.OwnTableFinding.CellsLeftOver;
import tarewright.tables.OwnTableFinding.ColumnGivenTwice;
import tarewright.tables.OwnTableFinding.NameColumnMissing;
import tarewright.tables.OwnTableFinding.UnknownColumn;
import tarewright.text.SourceText;
import tarewright.text.Spelling;

/**
 * Lays a teacher's own hazard table over the substances of a rule set. Its columns are named in the first line: {@code name} and
 * {@code classification}, and if wanted {@code synonyms}, {@code formula}, {@code state}, {@code molar mass}, {@code limits},
 * {@code statements}, {@code source}. Several values in a cell stand between bars: {@code Skin Corr. 1B H314 | Eye Dam. 1 H318};
 * {@code none} says that it is not classified; a limit is {@code 25 % Skin Corr. 1B H314}. A row takes the place of every row of
 * ours that has its name; what that must not meet, and where it is restricted, stays.
 */
final class HazardOwnTable {
    private static final List<String> COLUMNS = List.of("name", "classification", "synonyms", "formula", "state", "molar_mass",
            "limits",
            "statements", "source");

    private final Rulebook ours;
    private final String file;
    private final List<Finding> findings = new ArrayList<>();
    private final List<SubstanceHazards> own = new ArrayList<>();
    private SubstanceTable rest;

    private HazardOwnTable(Rulebook ours, String file) {
        this.ours = ours;
        this.file = file;
        this.rest = ours.substances();
    }

    static Found<Rulebook> over(Rulebook ours, SourceText source) {
        Found<List<List<OwnCell>>> rows = OwnRows.of(source);
        HazardOwnTable table = new HazardOwnTable(ours, source.name());
        table.findings.addAll(rows.findings());
        if (!rows.value().isEmpty()) {
            table.read(rows.value());
        }
        return new Found<>(ours.with(table.rest.with(table.own)), table.findings);
    }

    private void read(List<List<OwnCell>> rows) {
        List<Optional<String>> columns = columns(rows.get(0));
        if (!columns.contains(Optional.of("name"))) {
            findings.add(new NameColumnMissing(rows.get(0).get(0).at()));
            return;
        }
        for (List<OwnCell> row : rows.subList(1, rows.size())) {
            Map<String, OwnCell> cells = new HashMap<>();
            for (int i = 0; i < Math.min(row.size(), columns.size()); i++) {
                OwnCell cell = row.get(i);
                columns.get(i).filter(column -> !cell.isEmpty()).ifPresent(column -> cells.put(column, cell));
            }
            if (row.stream().skip(columns.size()).anyMatch(cell -> !cell.isEmpty())) {
                findings.add(new CellsLeftOver(row.size(), columns.size(), row.get(columns.size()).at()));
            } else {
                new HazardOwnRow(cells, row.get(0).at(), file, ours, findings).substance()
                        .ifPresent(substance -> take(substance, cells.get("name")));
            }
        }
    }

    private List<Optional<String>> columns(List<OwnCell> header) {
        List<Optional<String>> columns = new ArrayList<>();
        for (OwnCell cell : header.subList(0, Math.min(header.size(), 2 * COLUMNS.size()))) {
            Optional<String> column = Optional.of(cell.text().toLowerCase(Locale.ROOT).replace(' ',
                    '_')).filter(COLUMNS::contains);
            if (column.isEmpty() && !cell.isEmpty()) {
                findings.add(new UnknownColumn(cell.text(), Spelling.nearInAnyCase(cell.text(), COLUMNS), COLUMNS, cell.at()));
            } else if (column.isPresent() && columns.contains(column)) {
                findings.add(new ColumnGivenTwice(column.get(), cell.at()));
                column = Optional.empty();
            }
            columns.add(column);
        }
        return columns;
    }

    private void take(SubstanceHazards substance, OwnCell name) {
        List<SubstanceHazards> replaced = rest.rows().stream().filter(row -> row.listing().basis() != Basis.TEACHER
                && substance.names().stream().anyMatch(n -> row.names().stream().anyMatch(n::equalsIgnoreCase))).toList();
        for (SubstanceHazards row : replaced) {
            rest = rest.without(row.id());
            own.add(row.classifiedAs(substance));
            findings.add(new HazardsOverridden(row.name(), name.at()));
        }
        if (replaced.isEmpty()) {
            own.add(substance);
        }
    }
}
