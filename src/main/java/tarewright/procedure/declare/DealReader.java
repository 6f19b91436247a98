package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.procedure.declare.AmountRule.Measured;
import tarewright.procedure.declare.QuantityBlock.Dealt;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.QuantityBlock.Member;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Field;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;

/** Reads the fields with which a block has several amounts: {@code vary}, {@code vary over}, {@code series}. */
final class DealReader {
    private static final List<String> OVER = List.of("groups", "runs");
    private static final String SHAPE = "0.5 g; 1.0 g; 1.5 g";
    private static final String VOLUMES = "1 mL; 2 mL; 4 mL";

    private final FieldReader reader;

    DealReader(FieldReader reader) {
        this.reader = reader;
    }

    /** The amounts that are dealt out, where there are any; at least two. */
    Optional<Dealt> dealt(TypedBlock block, Kind kind) {
        Fields fields = block.fields();
        Optional<String> over = reader.oneOf(fields, "vary over", OVER);
        Optional<Field> field = fields.get("vary");
        if (field.isEmpty()) {
            fields.get("vary over").ifPresent(f -> reader.note(new DeclareFinding.FieldMissing(block.type(), "vary", "vary: " + SHAPE, f.keySpan())));
            return Optional.empty();
        }
        List<AmountRule> rules = rules(field.get(), kind, SHAPE);
        return rules.isEmpty() ? Optional.empty() : Optional.of(new Dealt(rules, over.filter("runs"::equals).isPresent()));
    }

    /** The block itself, or the members of its dilution series: what is taken for each, by name and number. */
    List<QuantityBlock> members(QuantityBlock block) {
        Optional<Field> field = block.block().fields().get("series");
        if (field.isEmpty()) {
            return List.of(block);
        }
        if (block.madeUpTo().isEmpty() && !block.block().fields().has("made up to")) {
            reader.note(new DeclareFinding.FieldMissing(block.block().type(), "made up to", "made up to: 10 mL", field.get().keySpan()));
        }
        if (block.madeFrom().isEmpty() && !block.block().fields().has("made from")) {
            reader.note(new DeclareFinding.FieldMissing(block.block().type(), "made from", "made from: stock", field.get().keySpan()));
        }
        List<AmountRule> rules = rules(field.get(), block.kind(), VOLUMES);
        List<QuantityBlock> members = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            TypedBlock own = block.block();
            TypedBlock named = new TypedBlock(own.type(), own.typeSpan(), own.name() + " " + (i + 1), own.nameSpan(), own.equation(), own.fields(), own.markdown(),
                    own.span());
            members.add(block.asMember(named, rules.get(i), new Member(own.name(), i + 1)));
        }
        return members.isEmpty() ? List.of(block) : members;
    }

    /** One rule for each amount; none where one of them cannot be read, or where they are not of one kind. */
    private List<AmountRule> rules(Field field, Kind kind, String shape) {
        List<Piece> pieces = field.pieces();
        if (pieces.size() < 2) {
            reader.note(new DeclareFinding.BadShape(field.key(), field.value(), shape, field.valueSpan()));
            return List.of();
        }
        List<AmountRule> rules = new ArrayList<>();
        Optional<Dimension> first = Optional.empty();
        for (Piece piece : pieces) {
            Optional<At<Typed>> typed = first.isPresent() ? reader.quantity(piece, first.get()) : reader.quantity(piece);
            Optional<Measured> what = typed.flatMap(t -> measured(t.value().dimension(), kind));
            if (typed.isPresent() && what.isEmpty()) {
                // What the first amount is, the others are meant to be: one mistake, one finding.
                reader.note(new DeclareFinding.BadShape(field.key(), piece.text(), kind == Kind.SOLID ? SHAPE : VOLUMES, piece.span()));
                return List.of();
            } else if (typed.isPresent() && typed.get().value().value() <= 0) {
                reader.note(new DeclareFinding.NotAboveZero(field.key(), piece.text(), piece.span()));
            } else if (typed.isPresent()) {
                first = first.or(() -> Optional.of(typed.get().value().dimension()));
                rules.add(new AmountRule.Stated(what.get(), typed.get().value(), piece.span()));
            }
        }
        return rules.size() == pieces.size() ? rules : List.of();
    }

    private static Optional<Measured> measured(Dimension dimension, Kind kind) {
        if (dimension.equals(Dimension.AMOUNT)) {
            return Optional.of(Measured.MOLES);
        }
        if (dimension.equals(Dimension.MASS) && kind != Kind.SOLUTION) {
            return Optional.of(Measured.MASS);
        }
        return dimension.equals(Dimension.VOLUME) && kind != Kind.SOLID ? Optional.of(Measured.VOLUME) : Optional.empty();
    }
}
