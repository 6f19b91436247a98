package tarewright.procedure.expression;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Again;
import tarewright.derivation.Figure;
import tarewright.derivation.Gradient;
import tarewright.quantity.Dimension;

/** Laws over formulas at random, held against a second reading of the same text by Dijkstra's shunting yard on plain doubles. */
class EvaluatorLawsTest {
    private static final int CASES = 3_000;
    /** Values in coherent SI units, by name, with the uncertainty of each; all of one dimension, so that any sum is allowed. */
    private static final List<String> NAMES = List.of("a", "b two", "c", "d-e");
    private static final Map<Character, Integer> BINDING = Map.of('+', 1, '-', 1, '*', 2, '/', 2, '^', 4, '~', 3);

    private final SplittableRandom random = new SplittableRandom(1869);

    @Test
    void theValueIsThatOfTheShuntingYard() {
        int worked = 0;
        for (int i = 0; i < CASES; i++) {
            Formulas names = numbers();
            String text = formula(4);
            double expected = yard(text, names);
            if (!(Math.abs(expected) < 1e60 && Math.abs(expected) > 1e-6)) {
                continue;
            }
            var found = names.evaluate(text, Optional.empty());
            if (found.value().isEmpty()) {
                continue;
            }
            worked++;
            assertEquals(expected, found.value().get().value(), Math.abs(expected) * 1e-6 + 1e-9, text);
        }
        assertTrue(worked > CASES * 2 / 3, "worked out: " + worked);
    }

    /** The gradient is held against central differences of the same derivation worked out again. */
    @Test
    void theGradientIsThatOfSmallChanges() {
        int held = 0;
        for (int i = 0; i < CASES; i++) {
            Formulas names = numbers();
            var found = names.evaluate(formula(3), Optional.empty());
            if (found.value().isEmpty() || Math.abs(found.value().get().value()) > 1e9) {
                continue;
            }
            Figure figure = found.value().get();
            for (Gradient.Part part : figure.gradient().parts()) {
                double h = part.source().value() * 1e-6;
                double above = new Again().with(part.source(), part.source().value() + h).value(figure);
                double below = new Again().with(part.source(), part.source().value() - h).value(figure);
                double slope = (above - below) / (2 * h);
                double scale = Math.max(Math.abs(slope), Math.abs(figure.value()));
                assertEquals(slope, part.derivative(), 1e-4 * scale + 1e-9, figure.toString());
                held++;
            }
        }
        assertTrue(held > CASES, "derivatives: " + held);
    }

    /** The dimension of a product of powers is that of its parts, in every base dimension. */
    @Test
    void dimensionsFollowTheOperators() {
        List<String> units = List.of("m", "kg", "s", "K", "mol");
        for (int i = 0; i < CASES; i++) {
            int[] powers = new int[5];
            StringBuilder text = new StringBuilder("1.5");
            for (int j = 0; j < 6; j++) {
                int unit = random.nextInt(5);
                int power = 1 + random.nextInt(3);
                boolean below = random.nextBoolean();
                powers[unit] += below ? -power : power;
                text.append(below ? " / " : " * ").append("(2.5 ").append(units.get(unit)).append(")^").append(power);
            }
            Figure figure = numbers().value(text.toString());
            assertEquals(new Dimension(powers[0], powers[1], powers[2], powers[3], powers[4]), figure.dimension());
        }
    }

    @Test
    void sumsAreAllowedOfOneDimensionOnly() {
        List<String> units = List.of("cm", "g", "mL", "min", "K", "mol", "kPa", "J", "mol/L", "");
        for (String left : units) {
            for (String right : units) {
                var found = numbers().evaluate("2.5 " + left + " + 1.5 " + right, Optional.empty());
                assertEquals(left.equals(right), found.value().isPresent(), left + " + " + right);
            }
        }
    }

    private Formulas numbers() {
        Formulas names = new Formulas();
        NAMES.forEach(name -> names.with(name, 0.5 + random.nextDouble() * 4, "", 0.01));
        return names;
    }

    private String formula(int depth) {
        if (depth == 0 || random.nextInt(6) == 0) {
            return random.nextInt(3) == 0 ? String.valueOf(1 + random.nextInt(9)) : NAMES.get(random.nextInt(NAMES.size()));
        }
        return switch (random.nextInt(7)) {
            case 0 -> formula(depth - 1) + " + " + formula(depth - 1);
            case 1 -> formula(depth - 1) + " - " + formula(depth - 1);
            case 2, 3 -> formula(depth - 1) + " * " + formula(depth - 1);
            case 4 -> formula(depth - 1) + " / " + formula(depth - 1);
            case 5 -> "(" + formula(depth - 1) + ")^" + (1 + random.nextInt(3));
            default -> "-(" + formula(depth - 1) + ")";
        };
    }

    /** A tiny second evaluator: {@code ~} is the sign in front. */
    private static double yard(String text, Formulas names) {
        Deque<Double> values = new ArrayDeque<>();
        Deque<Character> signs = new ArrayDeque<>();
        boolean operand = true;
        for (String word : words(text)) {
            char c = word.charAt(0);
            if (word.equals("(")) {
                signs.push(c);
            } else if (word.equals(")")) {
                while (signs.peek() != '(') {
                    apply(values, signs.pop());
                }
                signs.pop();
                operand = false;
            } else if (word.length() == 1 && BINDING.containsKey(c)) {
                char sign = operand ? '~' : c;
                while (!operand && !signs.isEmpty() && signs.peek() != '('
                        && (BINDING.get(signs.peek()) > BINDING.get(sign)
                        || BINDING.get(signs.peek()).equals(BINDING.get(sign)) && sign != '^')) {
                    apply(values, signs.pop());
                }
                signs.push(sign);
                operand = true;
            } else {
                values.push(Character.isDigit(c) ? Double.parseDouble(word) : names.get(word).value());
                operand = false;
            }
        }
        while (!signs.isEmpty()) {
            apply(values, signs.pop());
        }
        return values.pop();
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        var matcher = java.util.regex.Pattern.compile("b two|d-e|[a-z]|[0-9]+|[-+*/^()]").matcher(text);
        while (matcher.find()) {
            words.add(matcher.group());
        }
        return words;
    }

    private static void apply(Deque<Double> values, char sign) {
        double right = values.pop();
        if (sign == '~') {
            values.push(-right);
            return;
        }
        double left = values.pop();
        values.push(switch (sign) {
            case '+' -> left + right;
            case '-' -> left - right;
            case '*' -> left * right;
            case '/' -> left / right;
            default -> Math.pow(left, right);
        });
    }
}
