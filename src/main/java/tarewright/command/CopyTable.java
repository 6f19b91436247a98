package tarewright.command;

import java.util.ArrayList;
import java.util.List;
import tarewright.text.Columns;

/** How often each document of a term is copied, and how many sheets of paper that takes on both sides. */
final class CopyTable {
    private static final List<String> HEAD = List.of("section", "document", "pages", "copies", "sheets");

    private final List<List<String>> rows = new ArrayList<>();
    private int sheets;

    /** @param pages of one copy */
    void row(String section, String document, int pages, int copies) {
        int paper = (pages + 1) / 2 * copies;
        sheets += paper;
        rows.add(List.of(section, document, Integer.toString(pages), Integer.toString(copies), Integer.toString(paper)));
    }

    /** The table; nothing where there is nothing to copy. */
    String text() {
        if (rows.isEmpty()) {
            return "";
        }
        List<List<String>> all = new ArrayList<>(rows);
        all.add(0, HEAD);
        all.add(List.of("all", "", "", "", Integer.toString(sheets)));
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
}
