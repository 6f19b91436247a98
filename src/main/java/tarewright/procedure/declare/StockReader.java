package tarewright.procedure.declare;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.finding.Found;
import tarewright.procedure.declare.StockBlock.Price;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.SourceFile;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;
import tarewright.tables.ReferenceTables;

/** Reads {@code stock} blocks, whichever file they stand in. */
public final class StockReader {
    /** {@code 31.40 per pack}, {@code 31.40 EUR per pack}, {@code € 31,40 per pack}: the currency is any word without digits. */
    private static final Pattern PRICE = Pattern
            .compile("(?:([^\\d\\s.,;-]{1,8})\\s*)?([0-9]{1,9}(?:[.,][0-9]{1,4})?)(?:\\s*([^\\d\\s.,;-]{1,8}))?\\s+per\\s+pack");

    private final FieldReader reader;

    StockReader(FieldReader reader) {
        this.reader = reader;
    }

    /** The stock blocks of a file in their order, and what is wrong with them. */
    public static Found<List<StockBlock>> read(SourceFile source, ReferenceTables tables) {
        FieldReader reader = new FieldReader(tables);
        List<StockBlock> all = new StockReader(reader).all(source);
        return new Found<>(all, reader.findings());
    }

    List<StockBlock> all(SourceFile source) {
        return source.blocks().stream().filter(b -> b.type().equals("stock")).map(this::stock).toList();
    }

    private StockBlock stock(TypedBlock block) {
        Fields fields = block.fields();
        reader.checkKeys("stock", fields);
        boolean dissolved = fields.has("solute");
        String key = dissolved ? "solute" : "substance";
        if (dissolved && fields.has("substance")) {
            both(fields, "solute", "substance");
        } else if (!fields.has(key)) {
            reader.note(new DeclareFinding.FieldMissing("stock", key, "substance: NaOH", block.typeSpan()));
        }
        Optional<At<Substance>> mixture = reader.mixture(fields, key);
        Optional<At<Matter>> matter = mixture.isPresent() ? Optional.empty()
                : dissolved ? reader.matter(fields, key, State.AQUEOUS) : reader.matter(fields, key);
        if (dissolved && mixture.isEmpty() && !fields.has("strength")) {
            reader.note(new DeclareFinding.FieldMissing("stock", "strength", "strength: 37 % w/w", block.typeSpan()));
        }
        String other = dissolved ? "purity" : "strength";
        if (fields.has(other) && fields.has(key)) {
            both(fields, key, other);
        }
        Optional<At<Strength>> strength = reader.strength(fields, "strength");
        Optional<At<Typed>> pack = amount(fields, "pack").filter(this::anything);
        return new StockBlock(block, dissolved, matter, mixture, strength, reader.positive(fields, "density", Dimension.DENSITY),
                reader.fraction(fields, "purity"), pack, onHand(fields, pack), price(fields, block), reader.words(fields, "keeps"));
    }

    /** Two fields that say different things of one bottle. */
    private void both(Fields fields, String first, String second) {
        reader.note(new DeclareFinding.AmountFixedTwice(first, second, fields.get(second).orElseThrow().keySpan(),
                List.of(fields.get(first).orElseThrow().keySpan())));
    }

    private boolean anything(At<Typed> pack) {
        if (!(pack.value().value() > 0)) {
            reader.note(new DeclareFinding.NotAboveZero("pack", pack.at().text(), pack.at()));
        }
        return pack.value().value() > 0;
    }

    /** A mass or a volume. */
    private Optional<At<Typed>> amount(Fields fields, String key) {
        return reader.piece(fields, key).flatMap(reader::quantity).filter(q -> {
            boolean fits = q.value().dimension().equals(Dimension.MASS) || q.value().dimension().equals(Dimension.VOLUME);
            if (!fits) {
                shape(key, q.at().text(), "2.5 L", q);
            }
            return fits;
        });
    }

    private void shape(String key, String text, String shape, At<?> at) {
        reader.note(new DeclareFinding.BadShape(key, text, shape, at.at()));
    }

    /** An empty bottle is on hand with nothing in it; a pack in litres is not counted in grams. */
    private Optional<At<Typed>> onHand(Fields fields, Optional<At<Typed>> pack) {
        return amount(fields, "on hand").filter(q -> {
            boolean kind = pack.filter(p -> !p.value().dimension().equals(q.value().dimension())).isEmpty();
            boolean fits = q.value().value() >= 0 && kind;
            if (!fits) {
                shape("on hand", q.at().text(), "0 " + pack.map(p -> p.value().unit().symbol()).orElse("L"), q);
            }
            return fits;
        });
    }

    private Optional<At<Price>> price(Fields fields, TypedBlock block) {
        Optional<Piece> piece = reader.piece(fields, "price").map(Piece::trimmed);
        if (piece.isEmpty()) {
            return Optional.empty();
        }
        Matcher matcher = PRICE.matcher(piece.get().text());
        boolean read = matcher.matches() && (matcher.group(1) == null || matcher.group(3) == null);
        if (!read) {
            reader.note(new DeclareFinding.BadShape("price", piece.get().text(), "31.40 per pack", piece.get().span()));
            return Optional.empty();
        }
        if (!fields.has("pack")) {
            reader.note(new DeclareFinding.FieldMissing("stock", "pack", "pack: 2.5 L", block.typeSpan()));
        }
        String currency = matcher.group(1) != null ? matcher.group(1) : matcher.group(3) != null ? matcher.group(3) : "";
        return Optional.of(new At<>(new Price(new BigDecimal(matcher.group(2).replace(',', '.')), currency), piece.get().span()));
    }
}
