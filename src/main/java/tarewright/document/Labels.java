package tarewright.document;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.procedure.bench.Bottles;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;

/** What a bottle is called on the page. */
final class Labels {
    private static final String NARROW = "\u202F";

    private final Draft draft;

    Labels(Draft draft) {
        this.draft = draft;
    }

    /** The block whose bottle a block is taken from, in the end. */
    QuantityBlock bottle(QuantityBlock block) {
        return Bottles.source(draft.procedure(), block);
    }

    /** The name: the author's label, else that of the substance. A number of crystal water that is to be found is not in it. */
    List<Text> name(QuantityBlock block) {
        QuantityBlock bottle = bottle(block);
        if (bottle.labelAs().isPresent()) {
            return draft.prose().of(bottle.labelAs().get());
        }
        Optional<Matter> matter = matter(bottle);
        Optional<Text> disguise = matter.flatMap(m -> draft.disguise(m.formula())).map(draft.typeset()::shown);
        return disguise.map(List::of).orElseGet(() -> draft.prose().of(matter.map(draft::called)
                .or(() -> bottle.mixture().map(m -> draft.called(m.value().name()))).orElse(bottle.name())));
    }

    /** The strength as the author typed it; none where it is to be found, or where there is none. */
    List<Text> strength(QuantityBlock block) {
        QuantityBlock bottle = bottle(block);
        if (!draft.open() && draft.secrets().isFound(bottle)) {
            return List.of();
        }
        if (bottle.strength().isPresent()) {
            return typed(bottle.strength().get().at().text());
        }
        return bottle.is(Kind.SOLUTION) ? draft.procedure().quantity(bottle.name())
                .flatMap(q -> q.figure(Property.STRENGTH)).map(f -> Text.words(draft.numbers().printed(f))).orElse(List.of())
                        : List.of();
    }

    /** Name and strength for running text: {@code hydrochloric acid (1.0 mol/L)}. */
    List<Text> label(QuantityBlock block) {
        List<Text> strength = strength(block);
        return strength.isEmpty() ? name(block) : draft.compose("label.with-strength",
                Map.of("name", name(block), "strength", strength));
    }

    /** The same for making it: with the strength that the procedure types, whatever was found on the day. */
    List<Text> toMake(QuantityBlock block) {
        return draft.procedure().quantity(block.name()).flatMap(q -> q.typed(Property.STRENGTH)).<List<Text>>map(typed -> draft.compose("label.with-strength",
                Map.of("name", name(block), "strength", Text.words(draft.numbers().printed(typed))))).orElseGet(() -> label(block));
    }

    /** Whether the reader must not learn from the page what stands in the bottle, or how strong it is. */
    boolean isMasked(QuantityBlock block) {
        QuantityBlock bottle = bottle(block);
        return !draft.open() && (draft.secrets().isFound(bottle) || bottle.labelAs().isPresent() || bottle.shownAs().isPresent());
    }

    String plain(QuantityBlock block) {
        return Plain.of(label(block));
    }

    /** The formula, where it may be seen and the name does not hold it already. */
    List<Text> formula(QuantityBlock block) {
        QuantityBlock bottle = bottle(block);
        if (bottle.labelAs().isPresent() && !draft.open()) {
            return List.of();
        }
        List<Text> name = name(bottle);
        return matter(bottle).<List<Text>>map(m -> {
            Text formula = draft.formula(m.formula());
            return name.contains(formula) || Plain.of(name).equals(m.formula().unicode()) ? List.of() : List.of(formula);
        }).orElse(List.of());
    }

    Optional<Matter> matter(QuantityBlock block) {
        return draft.procedure().quantity(block.name()).flatMap(q -> q.matter());
    }

    /** A strength as typed, with no break inside and its unit's powers raised. */
    private List<Text> typed(String english) {
        String text = draft.numbers().typed(english);
        int as = text.indexOf(" as ");
        String[] words = (as < 0 ? text : text.substring(0, as)).strip().split("\\s+");
        StringBuilder all = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            all.append(NARROW).append(Typeset.unit(words[i]));
        }
        return draft.prose().of(as < 0 ? all.toString() : all + " " + text.substring(as + 1).strip());
    }
}
