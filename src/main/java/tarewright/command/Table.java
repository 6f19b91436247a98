package tarewright.command;

import java.util.ArrayList;
import java.util.List;
import tarewright.text.Columns;

/** What a print wrote and found, as aligned lines. */
final class Table {
    private record Row(String name, String written, String found) {
    }

    private final List<Row> rows = new ArrayList<>();

    void row(String name, String written, int errors, int warnings) {
        String found = errors == 0 && warnings == 0 ? "clean" : errors == 0 ? counted(warnings, "warning")
                : warnings == 0 ? counted(errors, "error") : counted(errors, "error") + ", " + counted(warnings, "warning");
        rows.add(new Row(name, written, found));
    }

    private static String counted(int number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }

    /** The table. @param folder where the files are */
    String text(String folder) {
        String head = "written to " + folder + " (pages)";
        int first = width("procedure", rows.stream().map(Row::name).toList());
        int second = width(head, rows.stream().map(Row::written).toList());
        StringBuilder text = new StringBuilder();
        line(text, "procedure", first, head, second, "found");
        rows.forEach(r -> line(text, r.name(), first, r.written(), second, r.found()));
        return text.toString();
    }

    private static int width(String head, List<String> cells) {
        return Math.max(Columns.width(head, 0), cells.stream().mapToInt(c -> Columns.width(c, 0)).max().orElse(0));
    }

    private static void line(StringBuilder text, String a, int first, String b, int second, String c) {
        text.append(a).append(" ".repeat(first - Columns.width(a, 0) + 2)).append(b).append(" ".repeat(second - Columns.width(b, 0) + 2)).append(c)
                .append(System.lineSeparator());
    }
}
