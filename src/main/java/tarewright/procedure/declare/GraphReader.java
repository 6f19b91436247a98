package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import tarewright.procedure.declare.GraphBlock.AxisField;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;

/** Reads {@code graph} blocks. */
final class GraphReader {
    private static final String SHAPE = "mass of ribbon; 0 to 2 g";

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
        return new GraphBlock(block, axis(fields, "x"), axis(fields, "y"), reader.name(fields, "of"), reader.name(fields, "before"),
                reader.piece(fields, "mixed at").flatMap(reader::quantity));
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
