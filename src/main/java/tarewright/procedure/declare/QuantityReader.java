package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.procedure.declare.AmountRule.Measured;
import tarewright.procedure.declare.QuantityBlock.AlsoDissolved;
import tarewright.procedure.declare.QuantityBlock.GasFields;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.QuantityBlock.Ribbon;
import tarewright.procedure.declare.QuantityBlock.Role;
import tarewright.procedure.syntax.Fields;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;

/** Reads {@code solid}, {@code liquid}, {@code solution} and {@code gas} blocks. */
final class QuantityReader {
    private static final List<String> ROLES = List.of("reacts", "solvent", "indicator", "rinse", "catalyst");
    private static final List<String> FIXING = List.of("mass", "volume", "moles", "for", "excess over", "wanted", "made by", "vary", "series");
    private static final Pattern RIBBON = Pattern.compile("(?:.* at )?(.+)");

    private final FieldReader reader;

    QuantityReader(FieldReader reader) {
        this.reader = reader;
    }

    QuantityBlock read(TypedBlock block) {
        Fields fields = block.fields();
        Kind kind = Kind.valueOf(block.type().toUpperCase(Locale.ROOT));
        reader.checkKeys(block.type(), fields);
        AmountRule own = rule(block, kind);
        Optional<QuantityBlock.Dealt> dealt = new DealReader(reader).dealt(block, kind);
        String matterKey = kind == Kind.SOLUTION ? "solute" : "substance";
        Optional<At<Substance>> mixture = reader.mixture(fields, matterKey);
        Optional<At<Matter>> matter = mixture.isPresent() ? Optional.empty()
                : reader.matter(fields, matterKey, State.of(kind.state()).orElseThrow());
        Optional<At<String>> portionOf = reader.name(fields, "portion of");
        Optional<At<String>> madeFrom = reader.name(fields, "made from");
        if (!fields.has(matterKey) && portionOf.isEmpty() && madeFrom.isEmpty()) {
            reader.note(new DeclareFinding.FieldMissing(block.type(), matterKey, matterKey + ": NaCl", block.typeSpan()));
        }
        Optional<At<Strength>> strength = reader.strength(fields, "strength");
        return new QuantityBlock(block, kind, matter, mixture, dealt.map(d -> d.rules().get(0)).orElse(own), reader.fraction(fields, "purity"),
                reader.positive(fields, "density", Dimension.DENSITY), strength, reader.name(fields, kind == Kind.SOLID ? "weigh with" : "measure with"),
                ribbon(fields), reader.name(fields, "reacts in"), reader.words(fields, "batch").orElse(""), reader.name(fields, "in"), portionOf,
                reader.whole(fields, "portions", 1, 100).orElse(1), madeFrom, reader.positive(fields, "made up to", Dimension.VOLUME), role(fields),
                reader.matter(fields, "acts as"), also(fields), reader.yes(fields, "found by students").orElse(false), reader.words(fields, "label as"),
                reader.words(fields, "shown as"), reader.words(fields, "keeps"), kind == Kind.GAS ? gas(fields) : GasFields.NONE,
                dealt, Optional.empty());
    }

    private Role role(Fields fields) {
        return reader.oneOf(fields, "role", ROLES).map(r -> Role.valueOf(r.toUpperCase(Locale.ROOT))).orElse(Role.REACTS);
    }

    private AmountRule rule(TypedBlock block, Kind kind) {
        Fields fields = block.fields();
        List<Fields.Field> fixing = FIXING.stream().filter(key -> Vocabulary.of(block.type()).contains(key)).flatMap(k -> fields.get(k).stream()).toList();
        boolean target = kind != Kind.GAS && fixing.size() == 2 && fixing.get(1).key().equals("made by") && isStated(fixing.get(0).key());
        boolean wish = fields.has("wanted");
        List<Fields.Field> rival = fixing.stream().filter(f -> !(f.key().equals("made by") && (wish || target))).toList();
        if (rival.size() > 1) {
            reader.note(new DeclareFinding.AmountFixedTwice(rival.get(0).key(), rival.get(1).key(), rival.get(1).keySpan(), List.of(rival.get(0).keySpan())));
        }
        if (rival.isEmpty()) {
            return new AmountRule.Unfixed(block.nameSpan());
        }
        return rule(fields, rival.get(0)).orElse(new AmountRule.Unreadable(rival.get(0).span()));
    }

    private static boolean isStated(String key) {
        return key.equals("mass") || key.equals("volume") || key.equals("moles");
    }

    /** The rule that one field gives; empty where its value could not be read, which was a finding. */
    private Optional<AmountRule> rule(Fields fields, Fields.Field field) {
        switch (field.key()) {
            case "mass":
                return stated(fields, "mass", Dimension.MASS, Measured.MASS);
            case "volume":
                return stated(fields, "volume", Dimension.VOLUME, Measured.VOLUME);
            case "moles":
                return stated(fields, "moles", Dimension.AMOUNT, Measured.MOLES);
            case "wanted":
                return reader.positive(fields, "wanted", Dimension.VOLUME)
                        .map(w -> new AmountRule.Wanted(w.value(), reader.name(fields, "made by"), w.at()));
            case "for":
                return reader.name(fields, "for").map(QuantityReader::target);
            case "excess over":
                Optional<At<Typed>> times = times(fields);
                return reader.name(fields, "excess over").map(n -> new AmountRule.ExcessOver(n.value(), times, n.at()));
            case "vary":
            case "series":
                return Optional.empty();
            default:
                return reader.name(fields, "made by").map(n -> new AmountRule.MadeBy(n.value(), n.at()));
        }
    }

    private static AmountRule target(At<String> name) {
        boolean left = name.value().startsWith("left over of ");
        return new AmountRule.For(left ? name.value().substring("left over of ".length()) : name.value(), left, name.at());
    }

    private Optional<AmountRule> stated(Fields fields, String key, Dimension dimension, Measured what) {
        return reader.positive(fields, key, dimension).map(q -> new AmountRule.Stated(what, q.value(), q.at()));
    }

    /** {@code 1.5 times}, or just {@code 1.5}. */
    private Optional<At<Typed>> times(Fields fields) {
        return reader.piece(fields, "at least").flatMap(p -> {
            Matcher matcher = Pattern.compile("(.*\\S)\\s+times").matcher(p.text().strip());
            Piece number = matcher.matches() ? p.trimmed().part(0, matcher.end(1)) : p.trimmed();
            return reader.quantity(number, Dimension.NONE).filter(q -> {
                boolean enough = q.value().si() >= 1;
                if (!enough) {
                    reader.note(new DeclareFinding.BadShape("at least", p.text(), "1.5 times", p.span()));
                }
                return enough;
            });
        });
    }

    /** {@code ribbon at 1.10 g/m; to 1 mm}. */
    private Optional<Ribbon> ribbon(Fields fields) {
        return fields.get("cut as").flatMap(field -> {
            List<Piece> pieces = field.pieces();
            Optional<At<Typed>> linear = Optional.empty();
            Optional<At<Typed>> step = Optional.empty();
            if (pieces.size() == 2 && pieces.get(1).text().startsWith("to ")) {
                Matcher matcher = RIBBON.matcher(pieces.get(0).text());
                if (matcher.matches()) {
                    linear = reader.quantity(pieces.get(0).part(matcher.start(1), matcher.end(1)), Dimension.LINEAR_DENSITY);
                }
                step = reader.quantity(pieces.get(1).part(3, pieces.get(1).text().length()).trimmed(), Dimension.LENGTH);
                if (linear.isEmpty() || step.isEmpty()) {
                    return Optional.empty();
                }
                if (linear.get().value().value() > 0 && step.get().value().value() > 0) {
                    return Optional.of(new Ribbon(linear.get(), step.get()));
                }
            }
            reader.note(new DeclareFinding.BadShape("cut as", field.value(), "ribbon at 1.10 g/m; to 1 mm", field.valueSpan()));
            return Optional.empty();
        });
    }

    /** {@code sodium chloride, 0.10 mol/L}, several between semicolons. */
    private List<AlsoDissolved> also(Fields fields) {
        List<AlsoDissolved> all = new ArrayList<>();
        for (Piece piece : fields.get("also").map(Fields.Field::pieces).orElse(List.of())) {
            List<Piece> parts = piece.split(',');
            if (parts.size() != 2) {
                reader.note(new DeclareFinding.BadShape("also", piece.text(), "sodium chloride, 0.10 mol/L", piece.span()));
                continue;
            }
            Optional<At<Matter>> matter = reader.matter(parts.get(0));
            Optional<At<Strength>> strength = reader.strength(parts.get(1));
            if (matter.isPresent() && strength.isPresent()) {
                all.add(new AlsoDissolved(matter.get().value(), strength.get()));
            }
        }
        return all;
    }

    private GasFields gas(Fields fields) {
        boolean wet = reader.oneOf(fields, "collected", List.of("dry", "over water")).filter("over water"::equals).isPresent();
        Front.RoomFields own = FrontReader.room(reader, fields.get("at").map(Fields.Field::pieces).orElse(List.of()));
        return new GasFields(wet, own.temperature(), own.pressure(), reader.window(fields, "fits", Dimension.VOLUME),
                reader.positive(fields, "wash", Dimension.VOLUME), reader.positive(fields, "dead volume", Dimension.VOLUME),
                reader.yes(fields, "real"));
    }
}
