package tarewright.tables;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.safety.Rulebook;
import tarewright.safety.SubstanceHazards;
import tarewright.safety.SubstanceTable;

/**
 * A teacher's own hazard table: comma-separated, its columns named in the first line. {@code name} and {@code classification} are
 * required; {@code also}, {@code formula}, {@code state}, {@code molar mass}, {@code statements} (EUH), {@code limits} and {@code
 * source} may be given. Several values in one cell stand between bars: {@code Skin Corr. 1B H314 | Eye Dam. 1 H318}; a limit is
 * {@code 25 % Skin Corr. 1B H314}; {@code none} says that it is not classified. A row for a substance of ours replaces every row
 * of that name.
 *
 * @param substances the rows that could be read
 * @param replaced ids of our rows that are laid aside for them
 * @param troubles what could not be read
 */
public record HazardOwnTable(List<SubstanceHazards> substances, List<String> replaced, List<Trouble> troubles) {
    private static final List<String> COLUMNS = List.of("name", "also", "formula", "state", "molar mass", "classification",
            "statements",
            "limits", "source");

    /**
     * Something in the table that could not be read; its row is left out, so that what it was for is unknown and not wrong.
     *
     * @param kind its lasting name is found from this
     * @param line of the file, from 1
     * @param column its name, or empty
     * @param found what stands there
     */
    public record Trouble(Kind kind, int line, String column, String found) {
        /** The kinds of trouble. */
        public enum Kind {
            NO_TABLE, UNKNOWN_COLUMN, NO_NAME, NO_CLASSIFICATION, NOT_A_CLASS, NOT_A_LIMIT, NOT_A_STATEMENT, NOT_A_STATE,
                    NOT_A_NUMBER
        }

        /** The lasting name under which its words stand. */
        public String id() {
            return "own-hazards-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public HazardOwnTable {
        substances = List.copyOf(substances);
        replaced = List.copyOf(replaced);
        troubles = List.copyOf(troubles);
    }

    /**
     * Reads a table.
     *
     * @param text the file
     * @param fileName where it is said to come from
     * @param over the rules over whose substances it is laid
     */
    public static HazardOwnTable read(String text, String fileName, Rulebook over) {
        List<Trouble> troubles = new ArrayList<>();
        List<SubstanceHazards> substances = new ArrayList<>();
        Set<String> replaced = new LinkedHashSet<>();
        int line = 1;
        for (Map<String, String> cells : cells(text, troubles)) {
            line++;
            int before = troubles.size();
            Optional<SubstanceHazards> substance = new OwnRow(cells, line, fileName, over, troubles).substance();
            if (troubles.size() == before && substance.isPresent()) {
                over.substances().rows().stream().filter(r -> substance.get().names().stream().anyMatch(n -> r.names().stream()
                        .anyMatch(n::equalsIgnoreCase))).map(SubstanceHazards::id).forEach(replaced::add);
                substances.add(substance.get());
            }
        }
        return new HazardOwnTable(substances, List.copyOf(replaced), troubles);
    }

    /** Our rules with this table laid over their substances. */
    public Rulebook over(Rulebook ours) {
        SubstanceTable rest = ours.substances();
        for (String id : replaced) {
            rest = rest.without(id);
        }
        return ours.with(rest.with(substances));
    }

    private static List<Map<String, String>> cells(String text, List<Trouble> troubles) {
        List<Map<String, String>> rows = new ArrayList<>();
        try (MappingIterator<Map<String, String>> read = new CsvMapper().readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader()).readValues(text)) {
            while (read.hasNextValue()) {
                Map<String, String> row = new LinkedHashMap<>();
                read.nextValue().forEach((column, cell) -> row.put(column.strip(), cell == null ? "" : cell.strip()));
                rows.add(row);
            }
        } catch (IOException | RuntimeException e) {
            troubles.add(new Trouble(Trouble.Kind.NO_TABLE, rows.size() + 2, "", ""));
            return List.of();
        }
        if (!rows.isEmpty()) {
            rows.get(0).keySet().stream().filter(c -> !COLUMNS.contains(c))
                    .forEach(c -> troubles.add(new Trouble(Trouble.Kind.UNKNOWN_COLUMN, 1, c, c)));
        }
        return rows;
    }
}
