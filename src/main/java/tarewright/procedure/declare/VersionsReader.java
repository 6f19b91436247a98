package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;
import tarewright.setting.Setting;

/** Reads {@code versions: 2.0 g; 2.5 g}: what a value is in each version of the questions' numbers. */
final class VersionsReader {
    private static final String SHAPE = "2.0 g; 2.5 g";

    private final FieldReader reader;

    VersionsReader(FieldReader reader) {
        this.reader = reader;
    }

    /** One quantity for each version, at least two, of one kind, no two of one value; none where there is no such field or it cannot be read. */
    List<At<Expression>> of(Fields fields) {
        Optional<Fields.Field> field = fields.get("versions");
        if (field.isEmpty()) {
            return List.of();
        }
        fields.get("is").ifPresent(is -> reader.note(new DeclareFinding.AmountFixedTwice("is", "versions", field.get().keySpan(), List.of(is.keySpan()))));
        List<Piece> pieces = field.get().pieces();
        if (pieces.size() < 2 || pieces.size() > Setting.MOST_VERSIONS) {
            reader.note(new DeclareFinding.BadShape("versions", field.get().value(), SHAPE, field.get().valueSpan()));
            return List.of();
        }
        List<At<Typed>> typed = new ArrayList<>();
        for (Piece piece : pieces) {
            Optional<Dimension> first = typed.stream().map(t -> t.value().dimension()).findFirst();
            (first.isPresent() ? reader.quantity(piece, first.get()) : reader.quantity(piece)).ifPresent(typed::add);
        }
        if (typed.size() < pieces.size()) {
            return List.of();
        }
        boolean distinct = true;
        for (int i = 0; i < typed.size(); i++) {
            for (At<Typed> earlier : typed.subList(0, i)) {
                if (earlier.value().si() == typed.get(i).value().si()) {
                    reader.note(new DeclareFinding.VersionTwice(typed.get(i).at().text(), typed.get(i).at(), List.of(earlier.at())));
                    distinct = false;
                }
            }
        }
        return distinct ? typed.stream().map(t -> new At<Expression>(new Expression.Quantity(t.value(), t.at()), t.at())).toList() : List.of();
    }
}
