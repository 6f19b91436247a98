package tarewright.tables;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.tables.OwnTableFinding.OwnTableTooLarge;
import tarewright.tables.OwnTableFinding.OwnTableTooLong;
import tarewright.tables.OwnTableFinding.OwnTableUnreadable;
import tarewright.text.SourceText;
import tarewright.text.Span;

/** The cells of a teacher's own table with their places. Any text is read; commas or, failing them, semicolons part cells. */
final class OwnRows {
    /** The longest file that is read, in UTF-16 units. */
    static final int LONGEST = 1 << 20;
    /** The most rows that are read, the first line not counted. */
    static final int MOST = 5000;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final SourceText source;
    private final List<Finding> findings = new ArrayList<>();
    private final List<List<OwnCell>> rows = new ArrayList<>();

    private OwnRows(SourceText source) {
        this.source = source;
    }

    /** The rows that hold anything, the first line with the names of the columns among them. */
    static Found<List<List<OwnCell>>> of(SourceText source) {
        OwnRows reader = new OwnRows(source);
        int length = source.content().length();
        if (length > LONGEST) {
            reader.findings.add(new OwnTableTooLarge(length, LONGEST, source.span(0, 0)));
        } else {
            reader.read();
        }
        return new Found<>(List.copyOf(reader.rows), reader.findings);
    }

    private void read() {
        String first = source.line(1);
        char separator = first.indexOf(',') < 0 && first.indexOf(';') >= 0 ? ';' : ',';
        CsvFactory factory = CsvFactory.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
        int start = 0;
        try (CsvParser cells = factory.createParser(source.content())) {
            cells.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
            List<OwnCell> row = new ArrayList<>();
            for (JsonToken token = cells.nextToken(); token != null; token = cells.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    row.add(cell(cells));
                } else if (token == JsonToken.END_ARRAY) {
                    if (!finish(row)) {
                        return;
                    }
                    row = new ArrayList<>();
                }
                start = Math.max(start, (int) cells.currentLocation().getCharOffset());
            }
        } catch (IOException unclosedQuote) {
            int at = Math.min(start, source.content().length());
            while (at < source.content().length() && Character.isWhitespace(source.content().charAt(at))) {
                at++;
            }
            findings.add(new OwnTableUnreadable(lineFrom(at)));
        }
    }

    private boolean finish(List<OwnCell> row) {
        if (row.stream().allMatch(OwnCell::isEmpty)) {
            return true;
        }
        if (rows.size() > MOST) {
            findings.add(new OwnTableTooLong(MOST, row.get(0).at()));
            return false;
        }
        rows.add(List.copyOf(row));
        return true;
    }

    private OwnCell cell(JsonParser cells) throws IOException {
        String content = source.content();
        String raw = cells.getText();
        int start = Math.min((int) Math.max(cells.currentTokenLocation().getCharOffset(), 0), content.length());
        String text = raw.strip();
        if (start == 0 && text.indexOf(BYTE_ORDER_MARK) == 0) {
            text = text.substring(1).strip();
        }
        int at = start;
        while (at < content.length() && (content.charAt(at) == '"' || content.charAt(at) == BYTE_ORDER_MARK
                || Character.isWhitespace(content.charAt(at)))) {
            at++;
        }
        boolean asWritten = !text.isEmpty() && content.startsWith(text, at);
        return new OwnCell(text, asWritten ? source.span(at, at + text.length()) : lineFrom(start));
    }

    /** From a place to the end of its line: a quoted cell may not stand in the source as it reads. */
    private Span lineFrom(int start) {
        int line = source.lineAt(start);
        int end = source.startOfLine(line) + source.line(line).length();
        return source.span(start, Math.max(start, end));
    }
}
