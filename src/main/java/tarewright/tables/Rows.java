package tarewright.tables;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The rows of one of the product's own data files. What is wrong in them is a fault of the product, so it throws. */
final class Rows {
    private static final ObjectReader READER = new CsvMapper().readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader()).with(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS);

    private Rows() {
    }

    /** Every row as a map from column to cell, in file order. */
    static List<Row> of(String file) {
        try (InputStream in = Rows.class.getResourceAsStream("/tarewright/data/" + file)) {
            if (in == null) {
                throw new IllegalStateException("no data file " + file);
            }
            List<Row> rows = new ArrayList<>();
            try (MappingIterator<Map<String, String>> read = READER.readValues(in)) {
                while (read.hasNext()) {
                    rows.add(new Row(file, rows.size() + 2, read.next()));
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
