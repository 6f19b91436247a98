package tarewright.procedure.syntax;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tarewright.procedure.syntax.Fields.Field;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.text.Span;

/**
 * Reads lines of {@code key: value}. A line that stands further in than the first belongs to the field
 * above it.
 */
final class FieldReader {
    private final String where;
    private final Findings findings;
    private final List<Field> fields = new ArrayList<>();
    private final Map<String, Span> seen = new HashMap<>();
    /** The column of the first line; 0 before it. */
    private int margin;
    private Piece key;
    private final List<Piece> value = new ArrayList<>();
    private int valueLength;

    private FieldReader(String where, Findings findings) {
        this.where = where;
        this.findings = findings;
    }

    /**
     * @param lines as {@link FieldLines} leaves them
     * @param where what a finding calls the place: a block's type, or {@code front matter}
     */
    static Fields read(List<Piece> lines, String where, Findings findings) {
        FieldReader reader = new FieldReader(where, findings);
        for (Piece line : lines) {
            if (reader.seen.size() == Limits.FIELDS && !reader.continues(line)) {
                findings.add(new SyntaxFinding.TooManyFields(where, Limits.FIELDS, line.span()));
                break;
            }
            reader.take(line);
        }
        reader.finishField();
        return new Fields(reader.fields);
    }

    private boolean continues(Piece line) {
        return margin > 0 && line.span().column() > margin;
    }

    private void take(Piece line) {
        if (continues(line)) {
            addToValue(line);
            return;
        }
        finishField();
        if (margin == 0) {
            margin = line.span().column();
        }
        int colon = line.text().indexOf(':');
        Piece before = line.part(0, Math.max(colon, 0)).trimmed();
        if (before.text().isEmpty()) {
            findings.add(new SyntaxFinding.NotAField(where, line.span()));
            return;
        }
        String folded = folded(before.text());
        Span first = seen.putIfAbsent(folded, before.span());
        if (first != null) {
            findings.add(new SyntaxFinding.KeyGivenTwice(folded, before.span(), first));
            return;
        }
        key = before;
        Piece rest = line.part(colon + 1, line.text().length()).trimmed();
        if (!rest.text().isEmpty()) {
            addToValue(rest);
        }
    }

    private void addToValue(Piece line) {
        if (key == null || valueLength > Limits.VALUE) {
            return;
        }
        valueLength += line.text().length() + 1;
        if (valueLength > Limits.VALUE) {
            findings.add(new SyntaxFinding.ValueTooLong(folded(key.text()), Limits.VALUE, key.span()));
        } else {
            value.add(line);
        }
    }

    private void finishField() {
        if (key != null) {
            Span last = value.isEmpty() ? afterColon() : value.get(value.size() - 1).span();
            fields.add(new Field(folded(key.text()), key.span(), value, key.span().to(last)));
        }
        key = null;
        value.clear();
        valueLength = 0;
    }

    private Span afterColon() {
        int colon = key.span().source().content().indexOf(':', key.span().end());
        return key.span().source().span(colon, colon + 1);
    }

    static String folded(String key) {
        return Spaces.single(key).toLowerCase(Locale.ROOT);
    }
}
