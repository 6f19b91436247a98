package tarewright.chemistry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.chemistry.Equation.Sign;
import tarewright.chemistry.Equation.Term;
import tarewright.chemistry.EquationTrouble.BadEquationSyntax;
import tarewright.chemistry.EquationTrouble.EquationTooLong;
import tarewright.chemistry.EquationTrouble.SpeciesGivenTwice;
import tarewright.chemistry.EquationTrouble.SpeciesOnBothSides;
import tarewright.chemistry.EquationTrouble.TooManySpecies;

/** Reads an equation: finds the sign, splits the sides at their pluses, and collects the troubles of every term. */
final class EquationReader {
    /** The long ones first, so that none is taken for a part of another. A lone minus stays for charges. */
    private static final Pattern SIGN = Pattern.compile(
            "<=>|<->|<-|(?<=[\\s)]|^)-->|->|==+>?|=>|=|[→⟶⇌⇋⇄↔⇔←⇒⟷⟹]");
    /** A plus with a space or nothing before it, or behind a state. Looks back at most five letters. */
    private static final Pattern PLUS = Pattern.compile("(?:(?<=\\s)|^|(?<=\\([a-z]{1,4}\\)))\\+");

    private static final int LONGEST_PIECE = 60;

    private final String text;
    private final List<EquationTrouble> troubles = new ArrayList<>();

    private EquationReader(String text) {
        this.text = text;
    }

    static EquationResult read(String text, boolean onlookers) {
        EquationReader reader = new EquationReader(text);
        Optional<Equation> equation = reader.whole(onlookers);
        if (equation.isEmpty() || !reader.troubles.isEmpty()) {
            reader.troubles.sort(Comparator.comparingInt(EquationTrouble::from));
            return new EquationResult.Bad(reader.troubles);
        }
        return new EquationResult.Ok(equation.get());
    }

    private Optional<Equation> whole(boolean onlookers) {
        if (text.length() > Equation.LONGEST) {
            troubles.add(new EquationTooLong(text.length(), Equation.LONGEST, 0, text.length()));
            return Optional.empty();
        }
        if (text.isBlank()) {
            mistake(EquationMistake.EMPTY, 0, 0);
            return Optional.empty();
        }
        Matcher signs = SIGN.matcher(text);
        if (!signs.find()) {
            mistake(EquationMistake.NO_SIGN, 0, text.length());
            return Optional.empty();
        }
        Optional<Sign> sign = sign(signs.group());
        int from = signs.start();
        int to = signs.end();
        if (sign.isEmpty()) {
            mistake(EquationMistake.OTHER_SIGN, from, to);
            return Optional.empty();
        }
        if (signs.find()) {
            mistake(EquationMistake.TWO_SIGNS, signs.start(), signs.end());
            return Optional.empty();
        }
        List<Term> left = side(0, from, EquationMistake.LEFT_SIDE_EMPTY, from, to);
        List<Term> right = side(to, text.length(), EquationMistake.RIGHT_SIDE_EMPTY, from, to);
        if (!troubles.isEmpty()) {
            return Optional.empty();
        }
        compare(left, right, onlookers);
        return Optional.of(new Equation(left, right, sign.get()));
    }

    private static Optional<Sign> sign(String written) {
        return switch (written) {
            case "->", "→", "⟶" -> Optional.of(Sign.YIELDS);
            case "=" -> Optional.of(Sign.STOICHIOMETRIC);
            case "<=>", "⇌", "⇋" -> Optional.of(Sign.EQUILIBRIUM);
            default -> Optional.empty();
        };
    }

    private List<Term> side(int from, int to, EquationMistake ifEmpty, int signFrom, int signTo) {
        if (text.substring(from, to).isBlank()) {
            mistake(ifEmpty, signFrom, signTo);
            return List.of();
        }
        List<int[]> stretches = stretches(from, to);
        if (stretches.size() > Equation.MOST_SPECIES) {
            troubles.add(new TooManySpecies(stretches.size(), Equation.MOST_SPECIES, from, to));
            return List.of();
        }
        List<Term> terms = new ArrayList<>();
        for (int[] stretch : stretches) {
            if (stretch[0] == stretch[1]) {
                emptyTerm(stretch[0], from, to);
                continue;
            }
            TermReader.Outcome outcome = TermReader.read(text.substring(stretch[0], stretch[1]), stretch[0]);
            outcome.term().ifPresent(terms::add);
            outcome.trouble().map(trouble -> trouble.shifted(stretch[0])).ifPresent(troubles::add);
        }
        return terms;
    }

    /** The stretches between the pluses, without the spaces around them. */
    private List<int[]> stretches(int from, int to) {
        List<int[]> stretches = new ArrayList<>();
        Matcher plus = PLUS.matcher(text).region(from, to);
        int start = from;
        while (plus.find()) {
            stretches.add(trimmed(start, plus.start()));
            start = plus.end();
        }
        stretches.add(trimmed(start, to));
        return stretches;
    }

    private int[] trimmed(int from, int to) {
        int start = from;
        int end = to;
        while (start < end && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return new int[] {start, end};
    }

    /** Points at the pluses on either side of a place with no term. */
    private void emptyTerm(int at, int from, int to) {
        int first = text.lastIndexOf('+', at - 1);
        int second = text.indexOf('+', at);
        int start = first >= from ? first : second;
        int end = second >= 0 && second < to ? second : first;
        mistake(EquationMistake.EMPTY_TERM, start, end + 1);
    }

    private void compare(List<Term> left, List<Term> right, boolean onlookers) {
        int count = left.size() + right.size();
        if (count > Equation.MOST_SPECIES) {
            troubles.add(new TooManySpecies(count, Equation.MOST_SPECIES, 0, text.length()));
            return;
        }
        twice(left);
        twice(right);
        for (Term term : onlookers ? List.<Term>of() : right) {
            left.stream().filter(other -> other.species().sameAs(term.species())).findFirst().ifPresent(other ->
                    troubles.add(new SpeciesOnBothSides(term.species().plain(), term.from(), term.to(),
                            other.from(), other.to())));
        }
    }

    private void twice(List<Term> side) {
        for (int i = 0; i < side.size(); i++) {
            Term term = side.get(i);
            side.subList(0, i).stream().filter(other -> other.species().sameAs(term.species())).findFirst().ifPresent(other ->
                    troubles.add(new SpeciesGivenTwice(term.species().plain(), term.from(), term.to(),
                            other.from(), other.to())));
        }
    }

    private void mistake(EquationMistake reason, int from, int to) {
        String piece = text.substring(from, to).strip();
        boolean tooLong = piece.length() > LONGEST_PIECE;
        troubles.add(new BadEquationSyntax(reason, tooLong ? piece.substring(0, LONGEST_PIECE) + "…" : piece, from, to));
    }
}
