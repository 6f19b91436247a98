package tarewright.term;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tarewright.text.Columns;

/** How often each document of a term is copied, and how many sheets of paper that takes on both sides. */
public record CopyTable(List<Copying> rows) {
    private static final List<String> HEAD = List.of("section", "document", "pages", "copies", "sheets");

    public CopyTable {
        rows = List.copyOf(rows);
    }

    private List<List<String>> lines() {
        List<List<String>> all = new ArrayList<>(List.of(HEAD));
        rows.forEach(r -> all.add(List.of(r.section(), r.document(), Integer.toString(r.pages()), Integer.toString(r.copies()), Integer.toString(r.sheets()))));
        all.add(List.of("all", "", "", "", Integer.toString(rows.stream().mapToInt(Copying::sheets).sum())));
        return all;
    }

    /** For the screen; nothing where there is nothing to copy. */
    public String text() {
        if (rows.isEmpty()) {
            return "";
        }
        List<List<String>> all = lines();
        StringBuilder text = new StringBuilder(System.lineSeparator());
        for (List<String> row : all) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                int column = i;
                int width = all.stream().mapToInt(r -> Columns.width(r.get(column), 0)).max().orElse(0);
                String pad = " ".repeat(width - Columns.width(row.get(i), 0));
                line.append(i < 2 ? row.get(i) + pad : pad + row.get(i)).append("  ");
            }
            text.append(line.toString().stripTrailing()).append(System.lineSeparator());
        }
        return text.toString();
    }

    /** For a spreadsheet (RFC 4180). */
    public String csv() {
        return lines().stream().map(row -> row.stream().map(CopyTable::quoted).collect(Collectors.joining(",")) + "\r\n").collect(Collectors.joining());
    }

    /** What a spreadsheet could take for a formula or for two fields stands in quotation marks. */
    private static String quoted(String field) {
        return field.matches("[\\p{L}\\p{N}][^,\"\\r\\n]*|") ? field : "\"" + field.replace("\"", "\"\"") + "\"";
    }
}
