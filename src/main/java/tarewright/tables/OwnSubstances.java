package tarewright.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Substance;
import tarewright.chemistry.SubstanceNames;
import tarewright.chemistry.Substances;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.tables.OwnTableFinding.CellsLeftOver;
import tarewright.tables.OwnTableFinding.ColumnGivenTwice;
import tarewright.tables.OwnTableFinding.NameColumnMissing;
import tarewright.tables.OwnTableFinding.SubstanceGivenTwice;
import tarewright.tables.OwnTableFinding.SubstanceOverridden;
import tarewright.tables.OwnTableFinding.SynonymIsAnotherName;
import tarewright.tables.OwnTableFinding.SynonymMoved;
import tarewright.tables.OwnTableFinding.UnknownColumn;
import tarewright.text.SourceText;
import tarewright.text.Span;
import tarewright.text.Spelling;

/** Lays a teacher's own table of substances over ours. */
final class OwnSubstances {
    private static final List<String> COLUMNS = List.of("name", "formula", "state", "density", "synonyms", "source", "id", "cas",
            "note", "density_g_mL_20C", "density_source", "density_confidence", "confidence");

    private static final int MOST_COLUMNS = 50;

    private final Substances ours;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Span> given = new HashMap<>();
    private final Map<String, Span> replaced = new HashMap<>();
    private final Map<String, Set<String>> taken = new LinkedHashMap<>();
    private final List<Substance> own = new ArrayList<>();

    private OwnSubstances(Substances ours) {
        this.ours = ours;
    }

    static Found<Substances> over(Substances ours, SourceText source) {
        Found<List<List<OwnCell>>> rows = OwnRows.of(source);
        OwnSubstances reader = new OwnSubstances(ours);
        reader.findings.addAll(rows.findings());
        if (!rows.value().isEmpty()) {
            reader.read(rows.value());
        }
        return new Found<>(reader.together(), reader.findings);
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
            long last = row.stream().skip(columns.size()).filter(cell -> !cell.isEmpty()).count();
            if (last > 0) {
                findings.add(new CellsLeftOver(row.size(), columns.size(), row.get(columns.size()).at()));
            } else {
                OwnSubstance.of(cells, row.get(0).at(), ours, findings).ifPresent(this::take);
            }
        }
    }

    private List<Optional<String>> columns(List<OwnCell> header) {
        List<Optional<String>> columns = new ArrayList<>();
        if (header.size() > MOST_COLUMNS) {
            findings.add(new CellsLeftOver(header.size(), MOST_COLUMNS, header.get(MOST_COLUMNS).at()));
        }
        for (OwnCell cell : header.subList(0, Math.min(header.size(), MOST_COLUMNS))) {
            String name = cell.text().toLowerCase(Locale.ROOT).equals("density_g_ml_20c") ? "density"
                    : cell.text().toLowerCase(Locale.ROOT).replace(' ', '_');
            Optional<String> column = Optional.of(name).filter(COLUMNS::contains);
            if (column.isEmpty() && !cell.isEmpty()) {
                findings.add(new UnknownColumn(cell.text(), Spelling.nearInAnyCase(cell.text(), COLUMNS.subList(0, 9)),
                        COLUMNS.subList(0, 6), cell.at()));
            } else if (column.isPresent() && columns.contains(column)) {
                findings.add(new ColumnGivenTwice(name, cell.at()));
                column = Optional.empty();
            }
            columns.add(column);
        }
        return columns;
    }

    private void take(OwnSubstance row) {
        Optional<Substance> before = ours.named(row.name().text());
        Optional<Span> other = before.map(Substance::id).map(replaced::get);
        other.ifPresent(first -> findings.add(new SubstanceGivenTwice(row.name().text(), row.name().at(), first)));
        if (other.isPresent() || repeated(row.name().text(), row.name().at())) {
            return;
        }
        Set<String> synonyms = new LinkedHashSet<>();
        for (String synonym : row.synonyms()) {
            if (!synonym.isEmpty() && mayHave(synonym, row, before) && !repeated(synonym, row.synonymsAt())) {
                synonyms.add(synonym);
            }
        }
        before.ifPresent(old -> {
            replaced.put(old.id(), row.name().at());
            findings.add(overridden(row, old));
            synonyms.add(old.name());
            synonyms.addAll(old.synonyms());
            synonyms.removeIf(name -> SubstanceNames.key(name).equals(SubstanceNames.key(row.name().text())));
        });
        own.add(row.substance("own-" + (own.size() + 1), List.copyOf(synonyms), before));
    }

    private static SubstanceOverridden overridden(OwnSubstance row, Substance old) {
        boolean other = row.formula().isPresent() && old.formula().isPresent()
                && !row.formula().get().sameComposition(old.formula().get());
        return new SubstanceOverridden(row.name().text(), old.formula().map(Formula::plain).filter(formula -> other),
                row.name().at());
    }

    private boolean repeated(String name, Span at) {
        Span first = given.putIfAbsent(SubstanceNames.key(name), at);
        if (first != null) {
            findings.add(new SubstanceGivenTwice(name, at, first));
        }
        return first != null;
    }

    private boolean mayHave(String synonym, OwnSubstance row, Optional<Substance> before) {
        Optional<Substance> other = ours.named(synonym).filter(holder -> before.map(same -> !same.equals(holder)).orElse(true));
        if (other.isEmpty()) {
            return true;
        }
        String key = SubstanceNames.key(synonym);
        if (SubstanceNames.key(other.get().name()).equals(key)) {
            findings.add(new SynonymIsAnotherName(synonym, other.get().name(), row.synonymsAt()));
            return false;
        }
        findings.add(new SynonymMoved(synonym, other.get().name(), row.synonymsAt()));
        taken.computeIfAbsent(other.get().id(), id -> new HashSet<>()).add(key);
        return true;
    }

    private Substances together() {
        List<Substance> all = new ArrayList<>(own);
        ours.all().stream().filter(substance -> !replaced.containsKey(substance.id())).forEach(all::add);
        return new Substances(all.stream().map(each -> without(each, taken.getOrDefault(each.id(), Set.of()))).toList());
    }

    private static Substance without(Substance substance, Set<String> names) {
        List<String> kept = substance.synonyms().stream().filter(name -> !names.contains(SubstanceNames.key(name))).toList();
        return new Substance(substance.id(), substance.name(), kept, substance.formula(), substance.state(),
                substance.casNumber(), substance.density(), substance.note(), substance.provenance());
    }

    static List<String> parts(String cell) {
        return Arrays.stream(cell.split("\\|")).map(String::strip).toList();
    }
}
