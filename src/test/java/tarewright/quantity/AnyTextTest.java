package tarewright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Any text at all is read without an exception, and its trouble lies within it. */
class AnyTextTest {
    private static final List<String> PIECES = List.of("0", "1", "20", "000", "999", ".", ",", " ", "\u00A0", "\u202F", "-",
            "\u2212",
            "+", "e", "E", "^", "×", "x", "10", "²", "³", "\u207B", "\u00B1", "+/-", "to", "\u2013", "g", "mL", "mol", "L",
            "°C", "K",
            "J", "%", "w/w", "w/v", "vol", "as", "CuSO4", "/", "(", ")", "·", "*", "µ", "\u03BC", "Ml", "drops", "100", "'",
            "\"", "\\",
            "\uD83E\uDDEA", "\uD83E", "\0", "\n", "\t", "٣", "Å", "e999", "M", "in", "°");

    @Test
    void piecesInAnyOrder() {
        SplittableRandom random = new SplittableRandom(20260101);
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            int count = random.nextInt(12);
            for (int j = 0; j < count; j++) {
                text.append(PIECES.get(random.nextInt(PIECES.size())));
            }
            readEveryWay(text.toString());
        }
    }

    @Test
    void charactersInAnyOrder() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 10_000; i++) {
            StringBuilder text = new StringBuilder();
            int count = random.nextInt(30);
            for (int j = 0; j < count; j++) {
                text.append((char) (random.nextInt(4) == 0 ? random.nextInt(0x10000) : 32 + random.nextInt(96)));
            }
            readEveryWay(text.toString());
        }
    }

    /** Bounded, however long: a pattern that tries again and again would not come back from these. */
    @Test
    void longTexts() {
        for (String piece : PIECES) {
            for (int times : new int[] {60, 199, 200, 201, 100_000}) {
                readEveryWay(piece.repeat(times));
                readEveryWay("1" + piece.repeat(times));
                readEveryWay("1 000 " + piece.repeat(times) + " g");
            }
        }
        readEveryWay("(".repeat(1_000_000));
        readEveryWay("1 ".repeat(500_000));
        readEveryWay("1 " + "g/".repeat(500_000));
    }

    private static void readEveryWay(String text) {
        check(text, QuantityText.parse(text));
        check(text, QuantityText.parse(text, Dimension.MASS));
        check(text, QuantityText.parseDifference(text));
        check(text, QuantityText.parseFraction(text));
        if (StrengthText.parse(text) instanceof StrengthResult.Bad bad) {
            within(text, bad.trouble());
        }
        if (Units.parse(text) instanceof UnitResult.Bad bad) {
            within(text, bad.trouble());
        } else {
            Unit unit = ((UnitResult.Ok) Units.parse(text)).unit();
            assertEquals(unit.symbol(), ((UnitResult.Ok) Units.parse(unit.symbol())).unit().symbol(), "read from its print");
        }
        Units.near(Dimension.VOLUME, text);
        Units.near(text);
    }

    private static void check(String text, QuantityResult result) {
        if (result instanceof QuantityResult.Bad bad) {
            within(text, bad.trouble());
            return;
        }
        Typed typed = ((QuantityResult.Ok) result).typed();
        assertTrue(Math.abs(typed.value()) <= 1e30 && typed.significantDigits() >= 1, text);
        assertEquals(typed.value(), Double.parseDouble(typed.number()) + 0.0, "the number is written as it counts");
        typed.upTo().ifPresent(to -> assertTrue(to > typed.value(), text));
        typed.plusMinus().ifPresent(half -> assertTrue(half > 0, text));
    }

    private static void within(String text, QuantityTrouble trouble) {
        boolean within = trouble.from() >= 0 && trouble.from() <= trouble.to() && trouble.to() <= text.length();
        assertTrue(within, () -> text + ": " + trouble);
        assertTrue(trouble.fields().toString().length() < 2000, "what is said of it stays short");
    }
}
