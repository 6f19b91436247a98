package tarewright.procedure.syntax;

import java.util.List;
import java.util.Optional;
import tarewright.text.Span;

/** The fields of a block or of the front matter in their order. A key stands once: a second one was a finding and is not here. */
public record Fields(List<Field> all) {
    public static final Fields NONE = new Fields(List.of());

    public Fields {
        all = List.copyOf(all);
    }

    /** The field of that key, in the author's spelling folded to single spaces and lower case. */
    public Optional<Field> get(String key) {
        return all.stream().filter(f -> f.key().equals(key)).findFirst();
    }

    public boolean has(String key) {
        return get(key).isPresent();
    }

    /**
     * One field.
     *
     * @param key folded to lower case and single spaces
     * @param keySpan the key as it stands
     * @param lines the value: the rest of the key's line (if not empty), then each continuation line, each trimmed and
     *         with its place
     * @param span from the key to the end of the value
     */
    public record Field(String key, Span keySpan, List<Piece> lines, Span span) {
        public Field {
            lines = List.copyOf(lines);
        }

        /** The whole value, continuation lines joined by one space. */
        public String value() {
            return String.join(" ", lines.stream().map(Piece::text).toList());
        }

        /** Where the value stands; an empty span behind the colon if there is none. */
        public Span valueSpan() {
            return lines.isEmpty() ? new Span(span.source(), span.end(), span.end())
                    : lines.get(0).span().to(lines.get(lines.size() - 1).span());
        }

        /** The values between semicolons, trimmed, each with its place; empty ones are left out. */
        public List<Piece> pieces() {
            List<Piece> pieces = new java.util.ArrayList<>();
            for (Piece line : lines) {
                pieces.addAll(line.split(';'));
            }
            return pieces;
        }
    }

    /** A stretch of value text with its place; {@code text} is exactly what stands at {@code span}. */
    public record Piece(String text, Span span) {
        /** The parts between separators, trimmed, empty ones left out. */
        public List<Piece> split(char separator) {
            List<Piece> parts = new java.util.ArrayList<>();
            int from = 0;
            for (int i = 0; i <= text.length(); i++) {
                if (i == text.length() || text.charAt(i) == separator) {
                    Piece part = part(from, i).trimmed();
                    if (!part.text.isEmpty()) {
                        parts.add(part);
                    }
                    from = i + 1;
                }
            }
            return parts;
        }

        public Piece part(int from, int to) {
            return new Piece(text.substring(from, to), span.part(from, to));
        }

        public Piece trimmed() {
            int from = 0;
            int to = text.length();
            while (from < to && Spaces.isSpace(text.charAt(from))) {
                from++;
            }
            while (to > from && Spaces.isSpace(text.charAt(to - 1))) {
                to--;
            }
            return part(from, to);
        }
    }
}
