package tarewright.procedure.bench;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.ValueBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.safety.PairRule;

/**
 * What goes on beside mixing: heating, a flame. Told by what the procedure says, and on the safe side: by the words of its apparatus (a burner, a hot
 * plate), by the words of its steps (heat, boil, light), and by a typed temperature that is hot to the hand. Cautions are not asked, since "keep
 * every flame away" is none. A step that says what not to do still counts: better one question too many. The words are English and Spanish ones.
 */
final class Going {
    /** From here something is hot to the touch. Common practice, no source. */
    private static final double HOT_KELVIN = 273.15 + 43;
    private static final Pattern FLAME = words("bunsen|burners?|spirit lamps?|alcohol lamps?|candles?|match(es)?|blowlamps?|blow ?torch(es)?|gas torch(es)?|flames?|"
            + "splints?|ignite[sd]?|set (it )?(on fire|alight)|light (it|the|a|your)|burn(s|ing)?|mecheros?|velas?|cerillas?|f[oó]sforos?|llamas?|enciend[ae]n?");
    private static final Pattern HEAT = words("hot ?plates?|heating mantles?|ovens?|furnaces?|kilns?|(water|sand|oil|steam) baths?|heat(s|ed|ing)?|hot|warm(s|ed|ing)?|boil(s|ed|ing)?|"
            + "melt(s|ed|ing)?|reflux|evaporate[sd]?|placas? calefactoras?|hornos?|ba[nñ]os? mar[ií]a|calient[ae]n?|calentar|hierv[ae]n?|hervir|funde?");

    private Going() {
    }

    private static Pattern words(String alternatives) {
        return Pattern.compile("(?<!\\p{L})(" + alternatives + ")(?!\\p{L})");
    }

    static Set<PairRule.Setting> of(Resolved procedure) {
        Set<PairRule.Setting> going = EnumSet.noneOf(PairRule.Setting.class);
        Consumer<String> look = text -> {
            String words = text.toLowerCase(Locale.ROOT);
            if (FLAME.matcher(words).find()) {
                going.add(PairRule.Setting.NEAR_FLAME);
                going.add(PairRule.Setting.HEATED);
            }
            if (HEAT.matcher(words).find()) {
                going.add(PairRule.Setting.HEATED);
            }
        };
        procedure.procedure().apparatus().stream().map(ApparatusItem::words).forEach(look);
        steps(procedure, look);
        if (typedHot(procedure)) {
            going.add(PairRule.Setting.HEATED);
        }
        return going;
    }

    /** The words of every step; those of questions are no steps. */
    private static void steps(Resolved procedure, Consumer<String> look) {
        Part.walk(procedure.procedure().source().body(), part -> {
            if (part instanceof Part.Items list && list.ordered()) {
                list.items().stream().filter(i -> !i.isQuestion()).flatMap(i -> i.parts().stream())
                        .map(p -> p.inlines().stream().map(Going::text).collect(Collectors.joining())).forEach(look);
            }
        });
    }

    private static String text(Inline inline) {
        return inline instanceof Inline.Words words ? words.text()
                : inline.inside().stream().map(Going::text).collect(Collectors.joining("", "", inline.inside().isEmpty() ? " " : ""));
    }

    private static boolean typedHot(Resolved procedure) {
        return procedure.procedure().values().stream().map(ValueBlock::name).flatMap(n -> java.util.Optional.ofNullable(procedure.values().get(n)).stream())
                .anyMatch(f -> f.unit().dimension().equals(tarewright.quantity.Dimension.TEMPERATURE) && f.value() >= HOT_KELVIN)
                || procedure.procedure().quantities().stream().flatMap(q -> q.gas().temperature().stream()).anyMatch(t -> t.value().si() >= HOT_KELVIN);
    }
}
