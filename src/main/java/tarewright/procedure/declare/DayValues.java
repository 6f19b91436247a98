package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Field;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.setting.DayValue;
import tarewright.text.Spelling;

/**
 * Puts values as they are on the day in the place of those that a procedure types. A value is put into the block's field before the field
 * is read, so that it is held to the same rules, and everything that follows from the field follows from it.
 */
final class DayValues {
    private static final String IS = " is ";
    private static final String OF = " of ";
    /** What a bottle, a sample or an instrument may turn out to be. */
    private static final List<String> HELD = List.of("strength", "purity");
    private static final List<String> FACTS = List.of("strength", "purity", "density", "dead volume");
    /** What is set by hand; only where the author typed it, since a worked-out amount follows from the others. */
    private static final List<String> AMOUNTS = List.of("mass", "volume", "moles", "wanted");
    private static final List<String> PROPERTIES = Stream.of(FACTS, AMOUNTS).flatMap(List::stream).toList();

    private DayValues() {
    }

    /** Reads {@code strength of titrant is 0.1032 mol/L}, one a piece. */
    static List<DayValue> read(FieldReader reader, List<Piece> pieces) {
        List<DayValue> values = new ArrayList<>();
        for (Piece piece : pieces) {
            int is = piece.text().lastIndexOf(IS);
            if (is <= 0 || piece.text().substring(is + IS.length()).isBlank()) {
                reader.note(new DeclareFinding.BadShape("on the day", piece.text(), "strength of titrant is 0.1032 mol/L", piece.span()));
                continue;
            }
            Piece name = piece.part(0, is).trimmed();
            Piece value = piece.part(is + IS.length(), piece.text().length()).trimmed();
            DayValue read = new DayValue(name.text().replaceAll("\\s+", " "), value.text(), name.span(), value.span());
            Optional<DayValue> earlier = values.stream().filter(v -> v.of().equals(read.of())).findFirst();
            if (earlier.isPresent()) {
                reader.note(new DeclareFinding.DayValueTwice(read.of(), name.span(), List.of(earlier.get().name())));
            } else {
                values.add(read);
            }
        }
        return values;
    }

    /** Whether a block of the procedure is meant. @param procedure its name */
    static boolean meets(DayValue value, String procedure, List<TypedBlock> blocks) {
        return blocks.stream().anyMatch(b -> key(value, procedure, b).isPresent());
    }

    /** Whether it is said of what a bottle, a sample or a solution turned out to hold, which nobody knew when it was made. */
    static boolean found(DayValue value, String procedure, List<TypedBlock> blocks) {
        return blocks.stream().flatMap(b -> key(value, procedure, b).stream()).anyMatch(HELD::contains);
    }

    /** The field of this block that a value is for, if it is meant. A block's own name goes before any reading as {@code property of name in procedure}. */
    private static Optional<String> key(DayValue value, String procedure, TypedBlock block) {
        return key(value.of(), block).or(() -> value.within(procedure).flatMap(of -> key(of, block)));
    }

    private static Optional<String> key(String of, TypedBlock block) {
        if (block.type().equals("value")) {
            return of.equals(block.name()) ? Optional.of("is") : Optional.empty();
        }
        boolean quantity = List.of("solid", "liquid", "solution", "gas").contains(block.type());
        return PROPERTIES.stream().filter(p -> quantity && of.equals(p + OF + block.name())).findFirst();
    }

    /**
     * The blocks of a procedure with these values in them; those that are not meant are the same ones. Of two for one field the first goes, the one of the command line before
     * the one of a section; two of one place are a mistake.
     */
    static List<TypedBlock> in(List<TypedBlock> blocks, String procedure, List<DayValue> values, FieldReader reader) {
        values.stream().filter(v -> !meets(v, procedure, blocks)).forEach(v -> reader.note(unknown(v, blocks)));
        return blocks.stream().map(b -> {
            TypedBlock block = b;
            Map<String, DayValue> set = new HashMap<>();
            for (DayValue value : values) {
                Optional<String> key = key(value, procedure, b);
                Optional<DayValue> earlier = key.flatMap(k -> Optional.ofNullable(set.putIfAbsent(k, value)));
                if (earlier.isPresent() && earlier.get().name().source() == value.name().source()) {
                    reader.note(new DeclareFinding.DayValueTwice(value.of(), value.name(), List.of(earlier.get().name())));
                }
                block = key.isPresent() && earlier.isEmpty() ? with(block, key.get(), value, reader) : block;
            }
            return block;
        }).toList();
    }

    private static DeclareFinding unknown(DayValue value, List<TypedBlock> blocks) {
        List<String> names = new ArrayList<>();
        for (TypedBlock block : blocks) {
            if (block.type().equals("value")) {
                names.add(block.name());
            } else {
                Stream.concat(FACTS.stream().filter(f -> mayStand(f, block)), AMOUNTS.stream().filter(block.fields()::has))
                        .filter(f -> Vocabulary.of(block.type()).contains(f)).forEach(f -> names.add(f + OF + block.name()));
            }
        }
        return new DeclareFinding.UnknownDayValue(value.of(), Spelling.nearInAnyCase(value.of(), names), names, value.name());
    }

    private static boolean mayStand(String fact, TypedBlock block) {
        return block.fields().has(fact) || fact.equals("purity") && block.fields().has("substance");
    }

    private static TypedBlock with(TypedBlock block, String key, DayValue value, FieldReader reader) {
        if (!Vocabulary.of(block.type()).contains(key)) {
            reader.note(new DeclareFinding.FieldOfOtherType(block.type(), key, Vocabulary.typesWith(key), value.name()));
            return block;
        }
        if (block.fields().has("versions")) {
            reader.note(new DeclareFinding.DayValueInVersions(value.of(), value.name()));
            return block;
        }
        if (!block.fields().has(key) && !mayStand(key, block)) {
            reader.note(new DeclareFinding.DayValueDerived(value.of(), value.name()));
            return block;
        }
        Piece piece = new Piece(value.value(), value.at());
        Field field = new Field(key, value.name(), List.of(piece), value.name().to(value.at()));
        List<Field> fields = new ArrayList<>(block.fields().all());
        fields.replaceAll(f -> f.key().equals(key) ? field : f);
        if (!block.fields().has(key)) {
            fields.add(field);
        }
        return new TypedBlock(block.type(), block.typeSpan(), block.name(), block.nameSpan(), block.equation(), new Fields(fields), block.markdown(),
                block.span());
    }
}
