package tarewright.chemistry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tarewright.chemistry.CompositionTrouble.NoAtomicWeight;
import tarewright.chemistry.CompositionTrouble.NoMultiple;
import tarewright.chemistry.CompositionTrouble.NoSimpleRatio;
import tarewright.chemistry.CompositionTrouble.NothingOfElement;
import tarewright.chemistry.CompositionTrouble.PercentSumOver100;
import tarewright.chemistry.CompositionTrouble.PercentSumUnder100;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.exact.Rational;

/** Composition by mass from a formula, and a formula from composition by mass. */
public final class MassComposition {
    /** How far percentages may miss 100 together, in percentage points: what rounding and an analysis leave open. */
    public static final double SUM_TOLERANCE = 1.0;
    /** How far, relatively, a ratio may be from its whole number unless the caller says otherwise. */
    public static final double RATIO_TOLERANCE = 0.01;
    /** How far from its whole number, whatever its size: beyond this a large ratio would fit anything. */
    private static final double RATIO_DISTANCE = 0.15;
    /** The largest factor that is tried to make all ratios whole. */
    private static final int LARGEST_FACTOR = 12;
    /** How far, relatively, a molar mass may be from a multiple of the empirical one; gas densities are no better. */
    private static final double MULTIPLE_TOLERANCE = 0.05;

    private MassComposition() {
    }

    /**
     * The part by mass of each element in a formula, from 0 to 1, in the order of its atoms.
     *
     * @throws IllegalArgumentException if an element has no atomic weight there; see {@link Formula#unweighed}
     */
    public static Map<String, Double> massFractions(Formula formula, Elements elements) {
        double whole = formula.molarMass(elements);
        Map<String, Double> fractions = new LinkedHashMap<>();
        for (Contribution each : formula.contributions(elements)) {
            fractions.put(each.element().symbol(), each.molarMass() / whole);
        }
        return fractions;
    }

    /**
     * The part by mass of a group that a formula holds so many times, from 0 to 1: of the waters in a hydrate, say.
     *
     * @throws IllegalArgumentException if the formula holds fewer atoms, or an element has no atomic weight there
     */
    public static double massFraction(Formula part, int times, Formula whole, Elements elements) {
        for (String symbol : part.atoms().keySet()) {
            if (part.count(symbol).times(Rational.of(times)).compareTo(whole.count(symbol)) > 0) {
                throw new IllegalArgumentException(times + " " + part + " are more than " + whole);
            }
        }
        return times * part.molarMass(elements) / whole.molarMass(elements);
    }

    /**
     * The simplest formula of a substance with these parts by mass, in any one unit, its elements in the order given.
     *
     * @param masses by symbol of the element, above zero; at least one
     * @param tolerance how far, relatively, a ratio of amounts may be from a whole number: {@link #RATIO_TOLERANCE}
     */
    public static CompositionResult empirical(Map<String, Double> masses, double tolerance, Elements elements) {
        List<String> unweighed = masses.keySet().stream().filter(symbol -> elements.symbol(symbol).isEmpty()).toList();
        if (!unweighed.isEmpty()) {
            return new CompositionResult.Bad(new NoAtomicWeight(unweighed));
        }
        for (Map.Entry<String, Double> each : masses.entrySet()) {
            if (!(each.getValue() > 0) || each.getValue().isInfinite()) {
                return new CompositionResult.Bad(new NothingOfElement(each.getKey(), each.getValue()));
            }
        }
        List<String> symbols = List.copyOf(masses.keySet());
        List<Double> amounts = symbols.stream()
                .map(symbol -> masses.get(symbol) / elements.symbol(symbol).orElseThrow().atomicWeight()).toList();
        double smallest = amounts.stream().min(Double::compare).orElseThrow();
        List<Double> ratios = amounts.stream().map(amount -> amount / smallest).toList();
        for (int factor = 1; factor <= LARGEST_FACTOR; factor++) {
            double deviation = deviation(ratios, factor);
            if (deviation <= tolerance) {
                return new CompositionResult.Ok(formula(symbols, ratios, factor), deviation);
            }
        }
        return new CompositionResult.Bad(new NoSimpleRatio(symbols, ratios));
    }

    /**
     * The simplest formula of a substance with these mass percentages, which must make up the whole within
     * {@link #SUM_TOLERANCE}.
     *
     * @param percent by symbol of the element, above zero; at least one
     * @param tolerance as for {@link #empirical}
     */
    public static CompositionResult empiricalOfPercent(Map<String, Double> percent, double tolerance, Elements elements) {
        return sumTrouble(percent).<CompositionResult>map(CompositionResult.Bad::new)
                .orElseGet(() -> empirical(percent, tolerance, elements));
    }

    /** The trouble with mass percentages that should make up a whole, if there is one. */
    public static Optional<CompositionTrouble> sumTrouble(Map<String, Double> percent) {
        double sum = percent.values().stream().mapToDouble(Double::doubleValue).sum();
        if (sum > 100 + SUM_TOLERANCE) {
            return Optional.of(new PercentSumOver100(sum));
        }
        return sum < 100 - SUM_TOLERANCE ? Optional.of(new PercentSumUnder100(sum)) : Optional.empty();
    }

    /** The atoms of a formula in their simplest ratio, without groups, adducts and charge: CH₂O of C₆H₁₂O₆. */
    public static Formula simplest(Formula formula) {
        if (formula.isElectron()) {
            return formula;
        }
        int common = formula.atoms().values().stream().reduce(0, MassComposition::greatestCommonDivisor);
        return withCounts(formula.atoms().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, each -> each.getValue() / common, (a, b) -> a, LinkedHashMap::new)));
    }

    /**
     * The molecular formula: the multiple of an empirical formula that has a molar mass.
     *
     * @param molarMass measured, in g/mol, above zero; it may miss the multiple by 5 %
     */
    public static CompositionResult molecular(Formula empirical, double molarMass, Elements elements) {
        Formula simplest = simplest(empirical);
        double unit = simplest.molarMass(elements);
        double multiple = molarMass / unit;
        long times = Math.round(multiple);
        boolean fits = times >= 1 && times <= Formula.LARGEST_COUNT && Math.abs(multiple - times) / times <= MULTIPLE_TOLERANCE;
        boolean countable = fits && simplest.atoms().values().stream().allMatch(count -> count * times <= Formula.LARGEST_COUNT);
        if (!countable) {
            return new CompositionResult.Bad(new NoMultiple(simplest.plain(), unit, molarMass, multiple));
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        simplest.atoms().forEach((symbol, count) -> counts.put(symbol, (int) (count * times)));
        return new CompositionResult.Ok(withCounts(counts), Math.abs(multiple - times) / times);
    }

    private static double deviation(List<Double> ratios, int factor) {
        double largest = 0;
        for (double ratio : ratios) {
            double times = ratio * factor;
            double whole = Math.rint(times);
            boolean near = Math.abs(times - whole) <= RATIO_DISTANCE && whole <= Formula.LARGEST_COUNT;
            largest = Math.max(largest, near ? Math.abs(times - whole) / whole : Double.POSITIVE_INFINITY);
        }
        return largest;
    }

    private static Formula formula(List<String> symbols, List<Double> ratios, int factor) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int i = 0; i < symbols.size(); i++) {
            counts.put(symbols.get(i), (int) Math.rint(ratios.get(i) * factor));
        }
        return withCounts(counts);
    }

    private static Formula withCounts(Map<String, Integer> counts) {
        List<FormulaPart> parts = new ArrayList<>();
        counts.forEach((symbol, count) -> {
            parts.add(new FormulaPart(Kind.SYMBOL, symbol));
            if (count > 1) {
                parts.add(new FormulaPart(Kind.SUBSCRIPT, String.valueOf(count)));
            }
        });
        return Formula.of(parts);
    }

    private static int greatestCommonDivisor(int one, int other) {
        return other == 0 ? one : greatestCommonDivisor(other, one % other);
    }
}
