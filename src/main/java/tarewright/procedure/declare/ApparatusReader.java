package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.procedure.declare.ApparatusItem.Share;
import tarewright.procedure.syntax.Fields.Field;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.Typed;

/** Reads the lines of {@code apparatus} blocks. */
final class ApparatusReader {
    private static final List<String> PROPERTIES = List.of("capacity", "graduation", "reads to", "range", "within", "delivers", "one per group",
            "one per student", "one per 4 groups", "one per class", "used up", "kept", "closed");
    private static final List<String> COUNTS = List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final Pattern SHARE = Pattern.compile("(" + String.join("|", COUNTS) + "|[0-9]{1,3}) per (group|student|class|("
            + String.join("|", COUNTS) + "|[0-9]{1,3}) groups|students?)");

    private final FieldReader reader;
    private final List<ApparatusItem> items = new ArrayList<>();

    private ApparatusReader(FieldReader reader) {
        this.reader = reader;
    }

    static List<ApparatusItem> read(FieldReader reader, List<TypedBlock> blocks) {
        ApparatusReader all = new ApparatusReader(reader);
        blocks.forEach(block -> block.fields().all().forEach(all::item));
        return all.items;
    }

    private void item(Field field) {
        Optional<ApparatusItem> earlier = items.stream().filter(i -> i.name().equals(field.key())).findFirst();
        if (earlier.isPresent()) {
            reader.note(new DeclareFinding.ApparatusTwice(field.key(), field.keySpan(), List.of(earlier.get().at())));
            return;
        }
        List<Piece> pieces = field.pieces();
        if (pieces.isEmpty()) {
            reader.note(new DeclareFinding.ValueMissing(field.key(), field.keySpan()));
            return;
        }
        Built built = new Built();
        built.capacity = inWords(pieces.get(0));
        pieces.subList(1, pieces.size()).forEach(p -> property(field.key(), p, built));
        items.add(new ApparatusItem(field.key(), pieces.get(0).text(), built.capacity, built.graduation, built.readsTo, built.least, built.within,
                built.delivers, built.share, built.usedUp, built.kept, built.closed, field.keySpan()));
    }

    /** {@code measuring cylinder, 25 mL}: the size that the words end with is the capacity unless one is given. */
    private Optional<At<Typed>> inWords(Piece words) {
        int comma = words.text().lastIndexOf(',');
        if (comma < 0) {
            return Optional.empty();
        }
        Piece size = words.part(comma + 1, words.text().length()).trimmed();
        return QuantityText.parse(size.text(), Dimension.VOLUME) instanceof QuantityResult.Ok ok && ok.typed().value() > 0
                ? Optional.of(new At<>(ok.typed(), size.span())) : Optional.empty();
    }

    private void property(String item, Piece piece, Built built) {
        String text = piece.text().replaceAll("\\s+", " ");
        Matcher share = SHARE.matcher(text.toLowerCase(Locale.ROOT));
        if (share.matches()) {
            built.share = share(share);
        } else if (text.equals("used up")) {
            built.usedUp = true;
        } else if (text.equals("kept")) {
            built.kept = true;
        } else if (text.equals("closed")) {
            built.closed = true;
        } else if (text.startsWith("capacity ")) {
            built.capacity = value(piece, "capacity");
        } else if (text.startsWith("graduation ")) {
            built.graduation = value(piece, "graduation");
        } else if (text.startsWith("reads to ")) {
            built.readsTo = value(piece, "reads to");
        } else if (text.startsWith("within ")) {
            built.within = value(piece, "within");
        } else if (text.startsWith("delivers ")) {
            built.delivers = value(piece, "delivers");
        } else if (text.startsWith("range ")) {
            range(piece, built);
        } else {
            reader.note(new DeclareFinding.UnknownProperty(item, text, PROPERTIES, piece.span()));
        }
    }

    private Optional<At<Typed>> value(Piece piece, String key) {
        return reader.quantity(piece.part(key.length(), piece.text().length()).trimmed()).filter(q -> {
            boolean positive = q.value().value() > 0;
            if (!positive) {
                reader.note(new DeclareFinding.NotAboveZero(key, q.at().text(), q.at()));
            }
            return positive;
        });
    }

    /** A range gives the capacity by its upper end and the least by its lower one. */
    private void range(Piece piece, Built built) {
        any(piece, "range").ifPresent(q -> {
            Typed typed = q.value();
            if (typed.upTo().isPresent()) {
                built.least = Optional.of(q);
                built.capacity = Optional.of(new At<>(upper(typed), q.at()));
            } else {
                built.capacity = Optional.of(q);
            }
        });
    }

    private static Typed upper(Typed range) {
        double upper = range.upTo().orElseThrow();
        return new Typed(Double.toString(upper), upper, range.unit(), range.explicitUnit(), range.plusMinus(), java.util.OptionalDouble.empty(),
                range.decimals(), range.significantDigits());
    }

    private Optional<At<Typed>> any(Piece piece, String key) {
        Piece value = piece.part(key.length(), piece.text().length()).trimmed();
        return reader.take(value, QuantityText.parse(value.text()));
    }

    private static Share share(Matcher matcher) {
        int count = count(matcher.group(1));
        if (matcher.group(3) != null) {
            return new Share(count, count(matcher.group(3)));
        }
        return switch (matcher.group(2)) {
            case "group" -> new Share(count, 1);
            case "class" -> new Share(count, Share.CLASS);
            default -> new Share(count, Share.STUDENT);
        };
    }

    private static int count(String word) {
        return COUNTS.contains(word) ? COUNTS.indexOf(word) + 1 : Math.max(1, Integer.parseInt(word));
    }

    /** What is known of a line while it is read. */
    private static final class Built {
        private Optional<At<Typed>> capacity = Optional.empty();
        private Optional<At<Typed>> graduation = Optional.empty();
        private Optional<At<Typed>> readsTo = Optional.empty();
        private Optional<At<Typed>> least = Optional.empty();
        private Optional<At<Typed>> within = Optional.empty();
        private Optional<At<Typed>> delivers = Optional.empty();
        private Share share = new Share(1, 1);
        private boolean usedUp;
        private boolean kept;
        private boolean closed;
    }
}
