package tarewright.procedure.declare;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tarewright.procedure.declare.Front.RoomFields;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.quantity.Dimension;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;

/** Reads the front matter of a procedure. */
final class FrontReader {
    /** More groups, students or runs than any school has are a slip of the hand. */
    static final int MOST = 10_000;

    private FrontReader() {
    }

    static Front read(FieldReader reader, Fields fields, tarewright.text.Span whole) {
        reader.checkKeys(Vocabulary.FRONT, fields);
        Optional<At<String>> title = reader.name(fields, "title");
        if (title.isEmpty() && !fields.has("title")) {
            reader.note(new DeclareFinding.FieldMissing(Vocabulary.FRONT, "title", "title: Hydrogen from magnesium ribbon", start(whole)));
        }
        return new Front(title, reader.words(fields, "code").orElse(""), reader.words(fields, "time").orElse(""),
                reader.whole(fields, "group size", 1, MOST), reader.whole(fields, "runs", 1, 100), reader.words(fields, "level").orElse(""),
                reader.name(fields, "language"), reader.name(fields, "country"), room(reader, pieces(fields, "room")), reader.yes(fields, "hood"),
                reader.whole(fields, "groups", 1, MOST), reader.share(fields, "spare"),
                reader.oneOf(fields, "paper", List.of("a4", "letter")).map(p -> p.toUpperCase(Locale.ROOT)), lines(fields, "aims"),
                lines(fields, "after"), pieces(fields, "labels"), reader.oneOf(fields, "gases", List.of("ideal", "real")).map("real"::equals));
    }

    private static tarewright.text.Span start(tarewright.text.Span whole) {
        return whole.part(0, Math.min(3, whole.end() - whole.start()));
    }

    private static List<Piece> pieces(Fields fields, String key) {
        return fields.get(key).map(Fields.Field::pieces).orElse(List.of());
    }

    /** A list: a line each, or between semicolons on one line. */
    private static List<Piece> lines(Fields fields, String key) {
        return pieces(fields, key);
    }

    /** Temperature, pressure, relative humidity and volume, told apart by their units. */
    static RoomFields room(FieldReader reader, List<Piece> pieces) {
        RoomFields room = RoomFields.NONE;
        for (Piece piece : pieces) {
            QuantityResult result = QuantityText.parse(piece.text());
            Optional<At<Typed>> taken = reader.take(piece, result);
            if (taken.isEmpty()) {
                continue;
            }
            Dimension dimension = taken.get().value().dimension();
            if (dimension.equals(Dimension.TEMPERATURE) && room.temperature().isEmpty()) {
                Optional<At<Typed>> temperature = reader.quantity(piece, Dimension.TEMPERATURE);
                room = new RoomFields(temperature, room.pressure(), room.humidity(), room.volume());
            } else if (dimension.equals(Dimension.PRESSURE) && room.pressure().isEmpty() && taken.get().value().value() > 0) {
                room = new RoomFields(room.temperature(), taken, room.humidity(), room.volume());
            } else if (dimension.equals(Dimension.VOLUME) && room.volume().isEmpty() && taken.get().value().value() > 0) {
                room = new RoomFields(room.temperature(), room.pressure(), room.humidity(), taken);
            } else if (dimension.equals(Dimension.NONE) && taken.get().value().explicitUnit() && room.humidity().isEmpty()
                    && taken.get().value().si() >= 0 && taken.get().value().si() <= 1) {
                room = new RoomFields(room.temperature(), room.pressure(), taken, room.volume());
            } else {
                reader.note(new DeclareFinding.NotOfARoom(piece.text(), already(room, dimension), piece.span()));
            }
        }
        return room;
    }

    private static Optional<String> already(RoomFields room, Dimension dimension) {
        Optional<At<Typed>> earlier = dimension.equals(Dimension.TEMPERATURE) ? room.temperature()
                : dimension.equals(Dimension.PRESSURE) ? room.pressure()
                : dimension.equals(Dimension.VOLUME) ? room.volume()
                : dimension.equals(Dimension.NONE) ? room.humidity() : Optional.empty();
        return earlier.map(e -> e.at().text());
    }
}
