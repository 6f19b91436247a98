package tarewright.chemistry.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.UsualUnits;

/**
 * A solution made in one step or in several, each made from the one before.
 *
 * @param steps at least one; the first is made from what is on the shelf
 */
public record Plan(List<Preparation> steps) {
    /** At most so much weaker in one step: common practice, no source. */
    public static final double MOST_IN_ONE_STEP = 100;
    /** The first step of several dilutes tenfold if it can: a flask of nearly undiluted acid on the way would be hot and helps nobody. Common practice, no source. */
    private static final double FIRST_AT_LEAST = 10;
    /** The least that a pipette takes well, in m³: common practice, no source. */
    public static final double LEAST_ALIQUOT = 1e-6;
    private static final double SAME = 1e-9;
    private static final double[] USUAL = {100, 50, 25, 20, 10, 5, 4, 2};
    /** A flask in which a first, stronger solution is made, in m³. */
    private static final double FIRST_FLASK = 100e-6;

    public Plan {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a plan without a step");
        }
    }

    public Preparation first() {
        return steps.get(0);
    }

    public Preparation last() {
        return steps.get(steps.size() - 1);
    }

    /**
     * Amount in against amount out over all steps: what the first measured amount brings, less what each further step leaves
     * behind, against strength times volume of the end.
     */
    public AmountCheck check() {
        if (steps.size() == 1) {
            return first().check();
        }
        List<Power> powers = new ArrayList<>(List.of(new Power(first().check().in(), 1)));
        for (int i = 1; i < steps.size(); i++) {
            powers.add(new Power(steps.get(i).taken(), 1));
            powers.add(new Power(steps.get(i - 1).volume(), -1));
        }
        Figure out = last().check().out();
        return new AmountCheck(Figure.of(Symbol.ofName("n", "in"), out.unit(), new Step.Product(1, powers)), out,
                Delivery.COARSE * steps.size());
    }

    /**
     * Plans a solution. A stock that would have to be diluted more than a hundredfold, or of which less than 1 mL would be taken,
     * is diluted in several steps; a solid of which too little would be weighed is first made into a stronger solution.
     *
     * @param strength wanted amount concentration, above zero
     * @param volume wanted, above zero
     * @param saturation at 20 °C, where it is known
     */
    public static PlanResult of(Figure strength, Figure volume, Source source, Optional<Saturation> saturation) {
        Optional<SolutionTrouble> trouble = saturation.flatMap(s -> s.refuses(strength));
        if (trouble.isEmpty()) {
            trouble = source.strongest().filter(c -> strength.value() > c.value() * (1 + SAME))
                    .map(c -> new SolutionTrouble.StockTooWeak(source.name(), strength.value(), c.value()));
        }
        if (trouble.isPresent()) {
            return new PlanResult.Refused(trouble.get());
        }
        if (source instanceof Source.Stock stock) {
            return new PlanResult.Made(new Plan(diluted(stock, strength, volume)));
        }
        return new PlanResult.Made(new Plan(dissolved(source, strength, volume, saturation)));
    }

    private static Source.Stock made(Figure strength, int step) {
        return Source.Stock.of("step " + step, new StockStrength.Molar(strength));
    }

    private static List<Preparation> dissolved(Source source, Figure strength, Figure volume, Optional<Saturation> saturation) {
        Preparation direct = Preparation.of(strength, volume, source);
        double most = saturation.map(s -> s.concentration().value() / 2).orElse(1000.0);
        double times = 10;
        if (fine(direct) || strength.value() * times > most) {
            return List.of(direct);
        }
        Preparation first = Preparation.of(scaled(strength, times), filled(FIRST_FLASK), source);
        while (!fine(first) && strength.value() * times * 10 <= most) {
            times *= 10;
            first = Preparation.of(scaled(strength, times), filled(FIRST_FLASK), source);
        }
        if (!fine(first)) {
            return List.of(direct);
        }
        List<Preparation> steps = new ArrayList<>(List.of(first));
        steps.addAll(diluted(made(first.strength(), 1), strength, volume));
        return steps;
    }

    /** Whether half a division of the instrument is at most 1 % of the amount. */
    private static boolean fine(Preparation step) {
        return Delivery.division(step.exact()) / 2 <= step.exact().value() * Delivery.COARSE;
    }

    private static List<Preparation> diluted(Source.Stock stock, Figure strength, Figure volume) {
        List<Double> factors = factors(stock.concentration().value() / strength.value(), volume.value());
        List<Preparation> backwards = new ArrayList<>();
        Figure wanted = strength;
        Figure into = volume;
        for (int i = factors.size() - 1; i > 0; i--) {
            // The source's own name is put right below, once it is known how many steps there are.
            Figure before = scaled(wanted, factors.get(i));
            backwards.add(Preparation.of(wanted, into, made(before, i)));
            double aliquot = into.value() / factors.get(i);
            double least = LEAST_ALIQUOT * factors.get(i - 1);
            into = filled(Flasks.holding(Math.max(aliquot, Math.min(least, FIRST_FLASK))).orElse(aliquot));
            wanted = before;
        }
        backwards.add(Preparation.of(wanted, into, stock));
        List<Preparation> steps = new ArrayList<>();
        for (int i = backwards.size() - 1; i >= 0; i--) {
            steps.add(backwards.get(i));
        }
        return steps;
    }

    /** By what each step dilutes, first to last: their product is the whole factor, the odd part of it comes first. */
    private static List<Double> factors(double whole, double volume) {
        List<Double> factors = new ArrayList<>();
        double rest = whole;
        double limit = Math.max(2, Math.min(MOST_IN_ONE_STEP, volume / LEAST_ALIQUOT));
        while (rest > limit * (1 + SAME)) {
            double step = 2;
            for (double usual : USUAL) {
                if (usual <= Math.min(limit, rest / FIRST_AT_LEAST) * (1 + SAME)) {
                    step = usual;
                    break;
                }
            }
            factors.add(0, step);
            rest /= step;
            limit = MOST_IN_ONE_STEP;
        }
        factors.add(0, rest);
        return factors;
    }

    private static Figure scaled(Figure strength, double times) {
        return Figure.of(strength.symbol(), strength.unit(), new Step.Product(times, List.of(new Power(strength, 1))));
    }

    private static Figure filled(double volume) {
        return Figure.given(Symbol.alone("V"), UsualUnits.of(Dimension.VOLUME, volume), volume,
                new tarewright.derivation.Origin.Counted());
    }
}
