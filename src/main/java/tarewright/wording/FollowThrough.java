package tarewright.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.Collections;
import java.util.IdentityHashMap;
import tarewright.derivation.Again;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReading;
import tarewright.quantity.Digits;

/**
 * An answer in terms of what a student reads off: the formula with the readings left as names and everything else as numbers, and a strip of answers for a run of
 * plausible readings, so that a marker need not work each one out again.
 */
public final class FollowThrough {
    private static final int EACH_SIDE = 3;

    private final Numbers numbers;
    private final Quantities words;
    private final Set<Figure> readings = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<ResolvedReading> all;

    private FollowThrough(Numbers numbers, Quantities words, List<ResolvedReading> all) {
        this.numbers = numbers;
        this.words = words;
        this.all = all;
        all.forEach(r -> {
            readings.add(r.value());
            readings.addAll(r.each());
        });
    }

    /** For the readings of a procedure, in a language. */
    public static FollowThrough of(Resolved procedure, String language) {
        return new FollowThrough(Numbers.in(language), Quantities.in(language), procedure.readings());
    }

    /** The formula; none for an answer that no reading goes into. */
    public Optional<String> formula(Figure answer) {
        return depends(answer) ? Optional.of(expand(answer, true)) : Optional.empty();
    }

    private boolean depends(Figure figure) {
        return readings.contains(figure) || figure.from().stream().anyMatch(this::depends);
    }

    // --- the formula

    private String expand(Figure figure, boolean top) {
        if (readings.contains(figure)) {
            return words.said(figure.symbol()).plain();
        }
        if (!depends(figure)) {
            return numbers.plainIn(figure);
        }
        Step step = figure.step();
        if (step instanceof Step.Same same) {
            return expand(same.other(), top);
        }
        if (step instanceof Step.Product product) {
            return product(product);
        }
        Optional<ResolvedReading> mean = all.stream().filter(r -> r.each().size() > 1 && r.each().equals(figure.from())).findFirst();
        if (mean.isPresent()) {
            return words.said(mean.get().value().symbol()).plain();
        }
        if (step instanceof Step.Sum sum) {
            String text = sum(sum);
            return top ? text : "(" + text + ")";
        }
        if (step instanceof Step.Extreme extreme) {
            return (extreme.least() ? words.smallestOf() : words.largestOf()) + " (" + String.join("; ", extreme.from().stream().map(f -> expand(f, true)).toList()) + ")";
        }
        if (step instanceof Step.Relation relation) {
            return words.relation(relation.name()) + " " + words.at() + " " + String.join("; ", relation.from().stream().map(f -> expand(f, false)).toList());
        }
        return numbers.plainIn(figure);
    }

    private String product(Step.Product product) {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        Coefficient share = Coefficient.of(product.coefficient());
        if (share.above() != 1) {
            above.add(numbers.localised(numbers.plainNumber(share.above())));
        }
        if (share.below() != 1) {
            below.add(Integer.toString(share.below()));
        }
        for (Power power : product.powers()) {
            boolean bracket = power.exponent() != 1 && isProduct(power.figure());
            String text = bracket ? "(" + kelvin(power.figure()) + ")" : kelvin(power.figure());
            int times = Math.abs(power.exponent());
            (power.exponent() > 0 ? above : below).add(times == 1 ? text : text + "^" + times);
        }
        String top = above.isEmpty() ? "1" : String.join(" × ", above);
        return below.isEmpty() ? top : top + " / " + (below.size() == 1 ? below.get(0) : "(" + String.join(" × ", below) + ")");
    }

    /** A factor that would fall apart under a stroke. */
    private boolean isProduct(Figure figure) {
        return !readings.contains(figure) && depends(figure)
                && (figure.step() instanceof Step.Product || figure.step() instanceof Step.Same same && isProduct(same.other()));
    }

    /** A temperature in a product counts from absolute zero. */
    private String kelvin(Figure figure) {
        boolean offset = !figure.unit().fromZero();
        if (!offset) {
            return expand(figure, false);
        }
        return depends(figure) ? "(" + expand(figure, false) + " + " + numbers.localised("273.15") + " K)" : numbers.localised(Digits.decimals(figure.value(), 2)) + " K";
    }

    private String sum(Step.Sum sum) {
        StringBuilder text = new StringBuilder();
        for (Term term : sum.terms()) {
            boolean minus = term.coefficient() < 0;
            double size = Math.abs(term.coefficient());
            String each = (size == 1 ? "" : numbers.localised(numbers.plainNumber(size)) + " × ") + expand(term.figure(), false);
            text.append(text.length() == 0 ? minus ? "−" : "" : minus ? " − " : " + ").append(each);
        }
        return text.toString();
    }

    // --- the strip

    /**
     * Answers for a run of plausible readings.
     *
     * @param reading the reading that runs, as it is named
     * @param unit of the readings
     * @param answerUnit of the answers
     * @param steps each reading as it is shown, with its answer, both as numbers
     */
    public record Strip(String reading, String unit, String answerUnit, List<Entry> steps) {
        public Strip {
            steps = List.copyOf(steps);
        }
    }

    /** A reading and the answer that it gives. @param expected whether it is the expected reading */
    public record Entry(String reading, String answer, boolean expected) {
    }

    /** The strip over the reading that moves the answer most; none for an answer that no reading goes into. */
    public Optional<Strip> strip(Figure answer) {
        return all.stream().filter(r -> uses(answer, r.value())).max(Comparator.comparingDouble(r -> weight(answer, r.value()))).map(r -> strip(answer, r));
    }

    private static boolean uses(Figure figure, Figure reading) {
        return figure == reading || figure.from().stream().anyMatch(f -> uses(f, reading));
    }

    private static double weight(Figure answer, Figure reading) {
        double step = reading.standardUncertainty() > 0 ? reading.standardUncertainty() : Math.abs(reading.value()) * 0.01;
        return Math.abs(new Again().with(reading, reading.value() + step).value(answer) - answer.value());
    }

    private Strip strip(Figure answer, ResolvedReading reading) {
        Figure read = reading.value();
        double division = reading.instrument().flatMap(i -> i.division().isPresent() ? Optional.of(i.division().getAsDouble()) : Optional.empty())
                .orElse(Math.pow(10, -Numbers.decimals(read)) * read.unit().factor());
        int divisions = (int) Math.max(1, Math.ceil(read.standardUncertainty() / division));
        List<Entry> steps = new ArrayList<>();
        for (int i = -EACH_SIDE; i <= EACH_SIDE; i++) {
            double value = read.value() + i * divisions * division;
            if (value <= 0 && read.unit().fromZero()) {
                continue;
            }
            double result = new Again().with(read, value).value(answer);
            steps.add(new Entry(number(value, read), number(result, answer), i == 0));
        }
        return new Strip(words.said(read.symbol()).plain(), read.unit().symbol(), answer.unit().symbol(), steps);
    }

    private String number(double si, Figure like) {
        return numbers.localised(Digits.decimals(like.unit().fromSi(si), Math.max(0, Numbers.decimals(like))));
    }
}
