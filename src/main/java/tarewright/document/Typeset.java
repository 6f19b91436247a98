package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaPart;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.ShownFormula;
import tarewright.chemistry.Species;
import tarewright.derivation.Symbol;
import tarewright.wording.Spoken;

/** Sets formulas, equations, symbols and units as they are printed, with what a screen reader says in their place. */
final class Typeset {
    private static final String NARROW = "\u202F";
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    /** A change of a quantity, of formation or another kind, in the standard state or not (IUPAC Green Book, 2.11): {@code ΔfH°}. */
    private static final Pattern CHANGE = Pattern.compile("Δ([a-z]*)([A-Z])(°?)");
    private static final Pattern STATE = Pattern.compile("\\((?:s|l|g|aq)\\)$");

    private final Spoken spoken;
    private final UnaryOperator<Symbol> said;

    /** @param said a symbol in the words of the document's language */
    Typeset(Spoken spoken, UnaryOperator<Symbol> said) {
        this.spoken = spoken;
        this.said = said;
    }

    /** How a formula is shown where its own must not be: the number of a hydrate that the students find. */
    interface Disguise {
        Disguise NONE = formula -> Optional.empty();

        Optional<ShownFormula> of(Formula formula);
    }

    Text.Chemical formula(Formula formula) {
        return new Text.Chemical(parts(formula.parts()), spoken.formula(formula));
    }

    Text.Chemical shown(ShownFormula formula) {
        return new Text.Chemical(parts(formula.parts()), spoken.spelled(formula.parts()));
    }

    Text.Chemical species(Species species) {
        List<Text> pieces = new ArrayList<>(parts(species.formula().parts()));
        species.state().ifPresent(s -> join(pieces, "(" + s.letters() + ")"));
        return new Text.Chemical(pieces, spoken.species(species));
    }

    /**
     * A balanced equation.
     *
     * @param over formulas over the arrow, often none
     */
    Text.Chemical equation(BalancedEquation equation, List<Formula> over, Disguise disguise) {
        List<Text> pieces = new ArrayList<>();
        String left = side(equation.reactants(), equation, disguise, pieces);
        List<Text> above = new ArrayList<>();
        for (Formula catalyst : over) {
            join(above, above.isEmpty() ? "" : ", ");
            above.addAll(disguise.of(catalyst).map(this::shown).orElseGet(() -> formula(catalyst)).pieces());
        }
        join(pieces, " ");
        pieces.add(new Text.Arrow(equation.sign().unicode(), above));
        pieces.add(new Text.Words(" "));
        String right = side(equation.products(), equation, disguise, pieces);
        String sign = spoken.sign(equation.sign(), over.stream().map(f -> disguise.of(f).map(s -> spoken.spelled(s.parts()))
                .orElseGet(() -> spoken.formula(f))).toList());
        return new Text.Chemical(pieces, spoken.equation(left, sign, right));
    }

    private String side(List<BalancedEquation.Term> terms, BalancedEquation equation, Disguise disguise, List<Text> into) {
        List<String> said = new ArrayList<>();
        for (BalancedEquation.Term term : terms) {
            if (!said.isEmpty()) {
                join(into, " + ");
            }
            String count = count(term, equation, disguise);
            if (!count.isEmpty()) {
                join(into, count + NARROW);
            }
            Species species = term.species();
            Optional<ShownFormula> shown = disguise.of(species.formula());
            Text.Chemical set = shown.map(f -> disguised(f, species)).orElseGet(() -> species(species));
            append(into, set.pieces());
            said.add((count.isEmpty() ? "" : count + " ") + set.spoken());
        }
        return spoken.sum(said);
    }

    private Text.Chemical disguised(ShownFormula formula, Species species) {
        List<Text> pieces = new ArrayList<>(parts(formula.parts()));
        species.state().ifPresent(s -> join(pieces, "(" + s.letters() + ")"));
        String said = spoken.spelled(formula.parts());
        return new Text.Chemical(pieces, species.state().map(s -> said + ", " + spoken.state(s)).orElse(said));
    }

    /** The coefficient as printed. Where a hydrate's number is hidden, so is the same number before water. */
    private static String count(BalancedEquation.Term term, BalancedEquation equation, Disguise disguise) {
        if (term.species().formula().plain().equals("H2O")) {
            for (BalancedEquation.Term other : equation.terms()) {
                Optional<String> letter = disguise.of(other.species().formula()).flatMap(Typeset::letter);
                if (letter.isPresent()) {
                    int hidden = other.coefficient() * other.species().formula().watersOfCrystallisation().orElse(0);
                    return lettered(other.coefficient(), letter.get(), term.coefficient() - hidden);
                }
            }
        }
        return term.coefficient() == 1 ? "" : Integer.toString(term.coefficient());
    }

    private static Optional<String> letter(ShownFormula formula) {
        return formula.parts().stream().filter(p -> p.kind() == FormulaPart.Kind.MULTIPLIER
                && !Character.isDigit(p.text().charAt(0)))
                .map(FormulaPart::text).findFirst();
    }

    private static String lettered(int times, String letter, int rest) {
        String multiple = times == 1 ? letter : times + letter;
        return rest == 0 ? multiple : "(" + multiple + (rest > 0 ? " + " : " − ") + Math.abs(rest) + ")";
    }

    /** {@code n(Mg)}: the letter of the quantity in italics, the formula set as one. */
    List<Text> symbol(Symbol english) {
        Symbol symbol = said.apply(english);
        List<Text> set = new ArrayList<>();
        boolean letters = symbol.kind() != Symbol.Kind.WORDS && isLetters(symbol.letter());
        Matcher change = CHANGE.matcher(symbol.letter());
        if (change.matches()) {
            set.add(new Text.Words("Δ"));
            if (!change.group(1).isEmpty()) {
                set.add(new Text.Subscript(change.group(1)));
            }
            set.add(new Text.Symbol(change.group(2)));
            join(set, change.group(3));
        } else if (letters) {
            for (String part : symbol.letter().split("(?<=/)|(?=/)")) {
                set.add(part.equals("/") ? new Text.Words("/") : new Text.Symbol(part));
            }
        } else if (!symbol.letter().isEmpty()) {
            set.add(new Text.Words(symbol.letter()));
        }
        if (!symbol.of().isEmpty()) {
            join(set, "(");
            Matcher state = STATE.matcher(symbol.of());
            String of = state.find() ? symbol.of().substring(0, state.start()) : symbol.of();
            if (symbol.kind() == Symbol.Kind.FORMULA && Formula.parse(of) instanceof FormulaResult.Ok ok) {
                set.add(formula(ok.formula()));
                join(set, symbol.of().substring(of.length()));
            } else {
                join(set, symbol.of());
            }
            join(set, ")");
        }
        return set;
    }

    /** Whether it is one symbol, or a quotient of two; words that stand for want of a symbol are longer. */
    private static boolean isLetters(String letter) {
        return letter.codePointCount(0, letter.length()) == 1 || letter.length() == 3 && letter.charAt(1) == '/';
    }

    /** A unit with its powers above the line: {@code cm³}, {@code mol L⁻¹}. */
    static String unit(String symbol) {
        StringBuilder set = new StringBuilder();
        for (int i = 0; i < symbol.length(); i++) {
            char c = symbol.charAt(i);
            boolean behindLetter = i > 0 && (Character.isLetter(symbol.charAt(i - 1)) || isRaised(set.charAt(set.length() - 1)));
            boolean minus = (c == '-' || c == '−') && i + 1 < symbol.length() && isDigit(symbol.charAt(i + 1));
            if (behindLetter && isDigit(c)) {
                set.append(SUPERSCRIPTS.charAt(c - '0'));
            } else {
                set.append(behindLetter && minus ? '⁻' : c);
            }
        }
        return set.toString();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isRaised(char c) {
        return c == '⁻' || SUPERSCRIPTS.indexOf(c) >= 0;
    }

    static List<Text> parts(List<FormulaPart> parts) {
        List<Text> set = new ArrayList<>();
        for (FormulaPart part : parts) {
            switch (part.kind()) {
                case SUBSCRIPT -> set.add(new Text.Subscript(part.text()));
                case SUPERSCRIPT -> set.add(new Text.Superscript(part.text()));
                default -> join(set, part.text());
            }
        }
        return set;
    }

    /** Adds pieces, words to the words before them. */
    static void append(List<Text> to, List<? extends Text> pieces) {
        for (Text piece : pieces) {
            if (piece instanceof Text.Words words) {
                join(to, words.text());
            } else {
                to.add(piece);
            }
        }
    }

    /** Pieces one after another with words between them. */
    static List<Text> joined(List<? extends List<? extends Text>> pieces, String between) {
        List<Text> all = new ArrayList<>();
        for (List<? extends Text> each : pieces) {
            join(all, all.isEmpty() ? "" : between);
            append(all, each);
        }
        return all;
    }

    /** Adds words, to the last ones if there are some. */
    static void join(List<Text> to, String words) {
        if (words.isEmpty()) {
            return;
        }
        int last = to.size() - 1;
        if (last >= 0 && to.get(last) instanceof Text.Words before) {
            to.set(last, new Text.Words(before.text() + words));
        } else {
            to.add(new Text.Words(words));
        }
    }
}
