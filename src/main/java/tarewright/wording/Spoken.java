package tarewright.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import tarewright.chemistry.Element;
import tarewright.chemistry.Elements;
import tarewright.chemistry.Equation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaPart;
import tarewright.chemistry.Species;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.chemistry.Substances;

/**
 * How a person would say a formula or an equation aloud: by the name of the substance where it is known, else letter by letter.
 */
public final class Spoken {
    private final Substances substances;
    private final Elements elements;
    private final DocumentWords words;
    private final TableWords tables;

    public Spoken(Substances substances, Elements elements, DocumentWords words, TableWords tables) {
        this.tables = tables;
        this.substances = substances;
        this.elements = elements;
        this.words = words;
    }

    /** {@code sodium hydrogencarbonate}; {@code iron 3 plus}; {@code S O 4 2 minus}. */
    public String formula(Formula formula) {
        return named(formula, Optional.empty()).orElseGet(() -> spelled(formula.parts()));
    }

    /** {@code hydrochloric acid, aqueous}. */
    public String species(Species species) {
        String name = named(species.formula(), species.state()).orElseGet(() -> spelled(species.formula().parts()));
        return species.state().map(s -> words.say("spoken.in-state", "substance", name, "state", state(s))).orElse(name);
    }

    /** The name of a state. */
    public String state(State state) {
        return words.say("spoken.state." + state.letters());
    }

    /** The sign between the two sides of an equation, with what stands over it. */
    public String sign(Equation.Sign sign, List<String> over) {
        String said = words.say("spoken.sign." + sign.name().toLowerCase(Locale.ROOT));
        return over.isEmpty() ? said : words.say("spoken.sign.over", "sign", said, "catalyst", String.join(", ", over));
    }

    /** The terms of one side, joined; a state is set off by commas. */
    public String sum(List<String> terms) {
        return String.join(" " + words.say("spoken.plus") + " ", terms.stream().map(Spoken::paused).toList());
    }

    /** A whole equation. @param left and {@code right} as {@link #sum} says them */
    public String equation(String left, String sign, String right) {
        String said = left + " " + sign + " " + right;
        return said.endsWith(",") ? said.substring(0, said.length() - 1) : said;
    }

    private static String paused(String term) {
        return term.contains(", ") ? term + "," : term;
    }

    private Optional<String> named(Formula formula, Optional<State> state) {
        Optional<Substance> found = state.flatMap(s -> substances.of(formula, s))
                .or(() -> substances.of(formula).stream().findFirst());
        return found.map(Substance::name).map(tables::name).or(() -> ionOfOneElement(formula));
    }

    private Optional<String> ionOfOneElement(Formula formula) {
        List<FormulaPart> parts = formula.parts();
        boolean one = parts.size() == 2 && parts.get(0).kind() == FormulaPart.Kind.SYMBOL
                && parts.get(1).kind() == FormulaPart.Kind.SUPERSCRIPT;
        return one ? elements.symbol(parts.get(0).text()).map(Element::name).map(tables::name).map(name -> name + " " + charge(parts.get(1).text()))
                : Optional.empty();
    }

    /** Letter by letter, a bracket and a dot by their names. */
    public String spelled(List<FormulaPart> parts) {
        List<String> said = new ArrayList<>();
        for (FormulaPart part : parts) {
            said.add(switch (part.kind()) {
                case SYMBOL -> part.text().chars().mapToObj(Character::toString).collect(Collectors.joining(" "));
                case OPEN_BRACKET -> words.say("spoken.open-bracket");
                case CLOSE_BRACKET -> words.say("spoken.close-bracket");
                case DOT -> words.say("spoken.dot");
                case SUPERSCRIPT -> charge(part.text());
                case SUBSCRIPT, MULTIPLIER -> part.text();
            });
        }
        return String.join(" ", said);
    }

    private String charge(String text) {
        String size = text.substring(0, text.length() - 1);
        String sign = words.say(text.endsWith("+") ? "spoken.plus" : "spoken.minus");
        return size.isEmpty() ? sign : size + " " + sign;
    }
}
