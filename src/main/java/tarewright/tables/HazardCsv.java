package tarewright.tables;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.safety.Reference;
import tarewright.safety.Trust;

/** One row of a hazard table, its cells by the names in the first line. */
record HazardCsv(String table, Map<String, String> cells) {
    private static final String FOLDER = "/tarewright/data/hazards/";

    /** The rows of one of our tables. A missing or malformed table of ours is a bug. */
    static List<HazardCsv> rows(String table) {
        try (InputStream in = HazardCsv.class.getResourceAsStream(FOLDER + table + ".csv")) {
            if (in == null) {
                throw new IllegalStateException("no table " + table);
            }
            return rows(table, new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader()).readValues(in));
        } catch (IOException e) {
            throw new UncheckedIOException(table, e);
        }
    }

    static List<HazardCsv> parse(String table, String text) throws IOException {
        try (MappingIterator<Map<String, String>> rows = new CsvMapper().readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader()).readValues(text)) {
            return rows(table, rows);
        }
    }

    private static List<HazardCsv> rows(String table, MappingIterator<Map<String, String>> from) throws IOException {
        List<HazardCsv> rows = new ArrayList<>();
        while (from.hasNextValue()) {
            rows.add(new HazardCsv(table, from.nextValue()));
        }
        return rows;
    }

    /** A cell, stripped; empty where the column is missing. */
    String text(String column) {
        String cell = cells.get(column);
        return cell == null ? "" : cell.strip();
    }

    Optional<String> maybe(String column) {
        return Optional.of(text(column)).filter(t -> !t.isEmpty());
    }

    /** The values of a cell between semicolons. */
    List<String> list(String column) {
        return Arrays.stream(text(column).split(";")).map(String::strip).filter(t -> !t.isEmpty()).toList();
    }

    double number(String column) {
        return Double.parseDouble(text(column));
    }

    double number(String column, double otherwise) {
        return text(column).isEmpty() ? otherwise : number(column);
    }

    OptionalDouble maybeNumber(String column) {
        return text(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(column));
    }

    boolean yes(String column) {
        return text(column).equals("yes");
    }

    <E extends Enum<E>> E choice(Class<E> of, String column) {
        return choice(of, column, text(column));
    }

    <E extends Enum<E>> E choice(Class<E> of, String column, String word) {
        String wanted = word.replace('-', '_');
        return Arrays.stream(of.getEnumConstants()).filter(e -> e.name().equalsIgnoreCase(wanted)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(table + ": " + column + " " + word));
    }

    Reference reference() {
        return new Reference(text("source"), choice(Trust.class, "confidence"));
    }
}
