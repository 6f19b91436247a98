package tarewright.tables;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows of one of the product's own data files. What is wrong in them is a fault of the product, so it throws. */
final class Rows {
    private static final CsvFactory FACTORY = CsvFactory.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES).build();

    private Rows() {
    }

    /** Every row as a map from column to cell, in file order. */
    static List<Row> of(String file) {
        return read("/tarewright/data/" + file);
    }

    /** The same from anywhere on the class path. */
    static List<Row> read(String file) {
        try (InputStream in = Rows.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no data file " + file);
            }
            List<List<String>> lines = lines(in);
            List<String> columns = lines.get(0);
            List<Row> rows = new ArrayList<>();
            for (List<String> line : lines.subList(1, lines.size())) {
                rows.add(row(file, rows.size() + 2, columns, line));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static Row row(String file, int number, List<String> columns, List<String> line) {
        if (line.size() != columns.size()) {
            throw new IllegalStateException(file + ", row " + number + ": " + line.size() + " cells");
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            cells.put(columns.get(i), line.get(i));
        }
        return new Row(file, number, cells);
    }

    private static List<List<String>> lines(InputStream in) throws IOException {
        List<List<String>> lines = new ArrayList<>();
        try (CsvParser parser = FACTORY.createParser(in)) {
            List<String> line = new ArrayList<>();
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    line.add(parser.getText());
                } else if (token == JsonToken.END_ARRAY && !line.isEmpty()) {
                    lines.add(line);
                    line = new ArrayList<>();
                }
            }
        }
        return lines;
    }
}
