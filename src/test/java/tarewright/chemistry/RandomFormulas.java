package tarewright.chemistry;

import java.util.Map;
import java.util.SplittableRandom;

/** Formulas made up at random, as typed in ASCII. */
final class RandomFormulas {
    private RandomFormulas() {
    }

    /** With groups, perhaps adducts, perhaps a charge. */
    static String formula(SplittableRandom random) {
        StringBuilder text = new StringBuilder(group(random, 0));
        for (int i = random.nextInt(4); i > 2; i--) {
            int count = random.nextInt(1, 20);
            String fraction = count + "/" + random.nextInt(2, 9);
            text.append('.').append(count == 1 ? "" : random.nextInt(4) == 0 ? fraction : count);
            text.append(random.nextBoolean() ? "H2O" : group(random, 1));
        }
        if (random.nextInt(3) == 0) {
            int charge = random.nextInt(1, 10);
            text.append('^').append(charge == 1 ? "" : charge).append(random.nextBoolean() ? '+' : '-');
        }
        return text.toString();
    }

    private static String group(SplittableRandom random, int depth) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            if (depth < 3 && random.nextInt(4) == 0) {
                boolean round = random.nextBoolean();
                // A group of two pieces at least: a lone I or VI in brackets would read as an oxidation number.
                text.append(round ? '(' : '[').append("Mg").append(group(random, depth + 1)).append(round ? ')' : ']');
            } else {
                text.append(Symbols.ALL.get(random.nextInt(Symbols.ALL.size())));
            }
            text.append(count(random));
        }
        return text.toString();
    }

    /** A formula with its atoms added to a map, each with the product of the numbers outside it. */
    static String counted(SplittableRandom random, int times, int depth, Map<String, Integer> atoms) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(1, 5); i > 0; i--) {
            int count = random.nextInt(1, 8);
            if (depth < 4 && random.nextInt(3) == 0) {
                text.append("(Mg").append(counted(random, times * count, depth + 1, atoms)).append(')');
                atoms.merge("Mg", times * count, Integer::sum);
            } else {
                String symbol = Symbols.ALL.get(random.nextInt(60));
                text.append(symbol);
                atoms.merge(symbol, times * count, Integer::sum);
            }
            text.append(count == 1 ? "" : count);
        }
        return text.toString();
    }

    private static String count(SplittableRandom random) {
        int count = random.nextInt(1, 14);
        return count == 1 ? "" : String.valueOf(count);
    }
}
