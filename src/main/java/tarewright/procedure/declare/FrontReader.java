package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import tarewright.procedure.declare.Front.RoomFields;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.quantity.Dimension;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;

/** Reads the front matter of a procedure. */
final class FrontReader {
    /** Between two quantities; that within a number has no space behind it. */
    private static final Pattern COMMA = Pattern.compile(",\\s+");

    /** More groups, students or runs than any school has are a slip of the hand. */
    static final int MOST = 10_000;

    private static final List<String> PAPERS = List.of("A4", "letter");

    private FrontReader() {
    }

    static Front read(FieldReader reader, Fields fields, tarewright.text.Span whole) {
        reader.checkKeys(Vocabulary.FRONT, fields);
        Optional<At<String>> title = reader.name(fields, "title");
        if (title.isEmpty() && !fields.has("title")) {
            reader.note(new DeclareFinding.FieldMissing(Vocabulary.FRONT, "title", "title: Hydrogen from magnesium ribbon",
                    start(whole)));
        }
        return new Front(title, reader.words(fields, "code").orElse(""), reader.words(fields, "time").orElse(""),
                reader.whole(fields, "group size", 1, MOST), reader.whole(fields, "runs", 1, 100),
                        reader.words(fields, "level").orElse(""),
                reader.name(fields, "language"), reader.name(fields, "country"), room(reader, pieces(fields, "room")),
                        reader.yes(fields, "hood"),
                reader.whole(fields, "groups", 1, MOST), reader.share(fields, "spare"),
                paper(reader, fields),
                        lines(fields, "aims"),
                lines(fields, "after"), LabelPaperReader.read(pieces(fields, "labels"), reader::note),
                        reader.oneOf(fields, "gases", List.of("ideal", "real")).map("real"::equals));
    }

    /** In any case; of another size none is near: A5 is half of A4 and no slip of the finger. */
    private static Optional<String> paper(FieldReader reader, Fields fields) {
        return reader.piece(fields, "paper").flatMap(p -> {
            Optional<String> known = PAPERS.stream().filter(p.text().strip()::equalsIgnoreCase).findFirst();
            if (known.isEmpty()) {
                reader.note(new DeclareFinding.UnknownWord("paper", p.text(), List.of(), PAPERS, p.span()));
            }
            return known.map(k -> k.toUpperCase(Locale.ROOT));
        });
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
        for (At<Typed> taken : withoutWrongKinds(reader, taken(reader, pieces))) {
            Typed typed = taken.value();
            Dimension dimension = typed.dimension();
            if (dimension.equals(Dimension.TEMPERATURE) && room.temperature().isEmpty()) {
                room = new RoomFields(kept(reader, taken, Dimension.TEMPERATURE), room.pressure(), room.humidity(),
                        room.volume());
            } else if (dimension.equals(Dimension.PRESSURE) && room.pressure().isEmpty() && typed.value() > 0) {
                room = new RoomFields(room.temperature(), Optional.of(taken), room.humidity(), room.volume());
            } else if (dimension.equals(Dimension.VOLUME) && room.volume().isEmpty() && typed.value() > 0) {
                room = new RoomFields(room.temperature(), room.pressure(), room.humidity(), Optional.of(taken));
            } else if (dimension.equals(Dimension.NONE) && typed.explicitUnit() && room.humidity().isEmpty() && typed.si() >= 0
                    && typed.si() <= 1) {
                room = new RoomFields(room.temperature(), room.pressure(), Optional.of(taken), room.volume());
            } else {
                reader.note(new DeclareFinding.NotOfARoom(taken.at().text(), already(room, dimension), taken.at()));
            }
        }
        return room;
    }

    private static List<At<Typed>> taken(FieldReader reader, List<Piece> pieces) {
        List<At<Typed>> taken = new ArrayList<>();
        for (Piece piece : pieces) {
            String apart = COMMA.matcher(piece.text()).replaceAll("; ");
            if (!apart.equals(piece.text())) {
                reader.note(new DeclareFinding.BadShape("room", piece.text(), apart, piece.span()));
            } else {
                reader.quantity(piece).ifPresent(taken::add);
            }
        }
        return taken;
    }

    /**
     * Of two pressures without a temperature the first stands in the temperature's place, and of two temperatures without a
     * pressure the second.
     */
    private static List<At<Typed>> withoutWrongKinds(FieldReader reader, List<At<Typed>> taken) {
        List<At<Typed>> temperatures = of(taken, Dimension.TEMPERATURE);
        List<At<Typed>> pressures = of(taken, Dimension.PRESSURE);
        Optional<At<Typed>> wrong = Optional.empty();
        if (temperatures.isEmpty() && pressures.size() == 2) {
            wrong = Optional.of(pressures.get(0));
            kept(reader, pressures.get(0), Dimension.TEMPERATURE);
        } else if (pressures.isEmpty() && temperatures.size() == 2) {
            wrong = Optional.of(temperatures.get(1));
            kept(reader, temperatures.get(1), Dimension.PRESSURE);
        }
        Optional<At<Typed>> without = wrong;
        return taken.stream().filter(t -> without.filter(w -> w == t).isEmpty()).toList();
    }

    private static List<At<Typed>> of(List<At<Typed>> taken, Dimension dimension) {
        return taken.stream().filter(t -> t.value().dimension().equals(dimension)).toList();
    }

    /** The value, if it is of the kind and possible; else a finding. */
    private static Optional<At<Typed>> kept(FieldReader reader, At<Typed> taken, Dimension wanted) {
        String text = taken.at().text();
        return reader.take(new Piece(text, taken.at()), QuantityText.requireDimension(taken.value(), text, wanted));
    }

    private static Optional<String> already(RoomFields room, Dimension dimension) {
        Optional<At<Typed>> earlier = dimension.equals(Dimension.TEMPERATURE) ? room.temperature()
                : dimension.equals(Dimension.PRESSURE) ? room.pressure()
                : dimension.equals(Dimension.VOLUME) ? room.volume()
                : dimension.equals(Dimension.NONE) ? room.humidity() : Optional.empty();
        return earlier.map(e -> e.at().text());
    }
}
