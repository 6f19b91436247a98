package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import tarewright.procedure.declare.GraphBlock.AxisField;
import tarewright.procedure.declare.GraphBlock.Drift;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;

/** Reads {@code graph} blocks. */
final class GraphReader {
    private static final String SHAPE = "mass of ribbon; 0 to 2 g";
    private static final String DRIFT = "0.4 °C in 1 min";
    private static final String IN = " in ";

    private final FieldReader reader;

    GraphReader(FieldReader reader) {
        this.reader = reader;
    }

    GraphBlock read(TypedBlock block) {
        Fields fields = block.fields();
        reader.checkKeys(block.type(), fields);
        for (String axis : List.of("x", "y")) {
            if (!fields.has(axis)) {
                reader.note(new DeclareFinding.FieldMissing(block.type(), axis, axis + ": " + SHAPE, block.typeSpan()));
            }
        }
        if (fields.has("before") != fields.has("mixed at")) {
            String key = fields.has("before") ? "mixed at" : "before";
            reader.note(new DeclareFinding.FieldMissing(block.type(), key, key.equals("before") ? "before: start" : "mixed at: 3 min", block.typeSpan()));
        }
        if (fields.has("drift") && !fields.has("mixed at")) {
            reader.note(new DeclareFinding.FieldMissing(block.type(), "mixed at", "mixed at: 3 min", block.typeSpan()));
        }
        return new GraphBlock(block, axis(fields, "x"), axis(fields, "y"), reader.name(fields, "of"), reader.name(fields, "before"),
                reader.piece(fields, "mixed at").flatMap(reader::quantity), reader.piece(fields, "drift").flatMap(this::drift));
    }

    private Optional<Drift> drift(Piece piece) {
        int in = piece.text().indexOf(IN);
        if (in < 0) {
            reader.note(new DeclareFinding.BadShape("drift", piece.text(), DRIFT, piece.span()));
            return Optional.empty();
        }
        Optional<At<Typed>> back = aboveZero(piece.part(0, in).trimmed());
        Optional<At<Typed>> time = aboveZero(piece.part(in + IN.length(), piece.text().length()).trimmed());
        return back.flatMap(b -> time.map(t -> new Drift(b, t)));
    }

    private Optional<At<Typed>> aboveZero(Piece piece) {
        return reader.quantity(piece).filter(q -> {
            boolean positive = q.value().value() > 0;
            if (!positive) {
                reader.note(new DeclareFinding.NotAboveZero("drift", q.at().text(), q.at()));
            }
            return positive;
        });
    }

    /** {@code mass of ribbon}, or {@code time; 0 to 10 min}. */
    private Optional<AxisField> axis(Fields fields, String key) {
        Optional<Piece> whole = reader.piece(fields, key);
        if (whole.isEmpty()) {
            return Optional.empty();
        }
        List<Piece> pieces = whole.get().split(';');
        if (pieces.isEmpty() || pieces.size() > 2) {
            reader.note(new DeclareFinding.BadShape(key, whole.get().text(), SHAPE, whole.get().span()));
            return Optional.empty();
        }
        At<String> what = new At<>(pieces.get(0).text().replaceAll("\\s+", " "), pieces.get(0).span());
        if (pieces.size() == 1) {
            return Optional.of(new AxisField(what, Optional.empty()));
        }
        return range(key, pieces.get(1)).map(r -> new AxisField(what, Optional.of(r)));
    }

    private Optional<At<Typed>> range(String key, Piece piece) {
        return reader.take(piece, QuantityText.parse(piece.text())).filter(range -> {
            boolean rising = range.value().upTo().isPresent() && range.value().upTo().getAsDouble() > range.value().value();
            if (!rising) {
                reader.note(new DeclareFinding.BadShape(key, piece.text(), SHAPE, piece.span()));
            }
            return rising;
        });
    }
}
