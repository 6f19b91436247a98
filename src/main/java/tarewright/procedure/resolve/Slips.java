package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.chemistry.Constants;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.derivation.Accepted;
import tarewright.derivation.Again;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;

/**
 * What common mistakes would give, read off the derivation of an answer: at each step where a mistake can be made it is made, and all that follows is worked out
 * again. Only the steps that a student takes are looked at: from the readings, the set amounts and the given figures on.
 */
final class Slips {
    /** Two values closer than this, relative to the right one, are the same value on paper. */
    private static final double SAME = 1e-6;

    private final Constituents constituents;
    private final Figure answer;
    private final Accepted accepted;
    private final List<Slip> found = new ArrayList<>();
    private final Map<Figure, Double> millilitres = new IdentityHashMap<>();
    /** What a student reads or takes as it is: a mistake on paper does not change it. */
    private final List<Figure> taken = new ArrayList<>();

    private Slips(Constituents constituents, Figure answer, Accepted accepted) {
        this.constituents = constituents;
        this.answer = answer;
        this.accepted = accepted;
    }

    /** The slips that change an answer, in the order of the derivation, each value once. */
    static List<Slip> of(Figure answer, Accepted accepted, Constituents constituents) {
        Slips slips = new Slips(constituents, answer, accepted);
        slips.gather(answer, Collections.newSetFromMap(new IdentityHashMap<>()));
        slips.visit(answer, Collections.newSetFromMap(new IdentityHashMap<>()));
        if (!slips.millilitres.isEmpty()) {
            // Whoever takes millilitres for litres does so throughout, so that it may cancel.
            slips.add(Slip.Kind.MILLILITRES_AS_LITRES, "", slips.millilitres);
        }
        return List.copyOf(slips.found);
    }

    private static boolean isTaken(Step step) {
        return step instanceof Step.Read || step instanceof Step.Set || step instanceof Step.Given;
    }

    private void gather(Figure figure, Set<Figure> seen) {
        if (!seen.add(figure)) {
            return;
        }
        if (isTaken(figure.step())) {
            taken.add(figure);
        } else {
            figure.from().forEach(f -> gather(f, seen));
        }
    }

    private void visit(Figure figure, Set<Figure> seen) {
        if (!seen.add(figure)) {
            return;
        }
        Step step = figure.step();
        boolean students = !isTaken(step);
        if (!students) {
            return;
        }
        if (isMolarMass(figure)) {
            molarMass(figure);
            return;
        }
        figure.from().forEach(each -> visit(each, seen));
        if (step instanceof Step.Product product) {
            gasLaw(figure, product);
            noteMillilitres(figure, product);
            coefficient(figure, product);
            dilution(figure, product);
            percent(figure, product);
        } else if (step instanceof Step.Extreme extreme && extreme.least()) {
            excess(figure, extreme);
        } else if (step instanceof Step.Sum sum) {
            waterVapour(figure, sum);
        }
    }

    private void add(Slip.Kind kind, String about, Figure at, double instead) {
        add(kind, about, Map.of(at, instead));
    }

    private void add(Slip.Kind kind, String about, Map<Figure, Double> changed) {
        Again again = new Again();
        taken.forEach(f -> again.with(f, f.value()));
        changed.forEach(again::with);
        double value = again.value(answer);
        boolean changes = Math.abs(value - answer.value()) > SAME * Math.abs(answer.value());
        boolean known = found.stream().anyMatch(s -> Math.abs(s.value() - value) <= SAME * Math.abs(value));
        if (changes && !known && !Double.isNaN(value) && !Double.isInfinite(value)) {
            found.add(new Slip(kind, about, value, accepted.holds(value)));
        }
    }

    /** A product with some of its factors changed. */
    private static double redo(Step.Product product, java.util.function.ToDoubleFunction<Figure> value) {
        return product.value(product.powers().stream().map(Power::figure).mapToDouble(value).toArray());
    }


    private void gasLaw(Figure figure, Step.Product product) {
        Optional<Power> temperature = product.powers().stream().filter(p -> p.figure().dimension().equals(Dimension.TEMPERATURE)).findFirst();
        Optional<Power> pressure = product.powers().stream().filter(p -> p.figure().dimension().equals(Dimension.PRESSURE)).findFirst();
        boolean law = product.powers().stream().anyMatch(p -> p.figure().symbol().equals(Symbol.alone("R")));
        if (!law || temperature.isEmpty() || pressure.isEmpty()) {
            return;
        }
        Figure hot = temperature.get().figure();
        double ice = Constants.ICE_POINT.value();
        add(Slip.Kind.MOLAR_VOLUME_AT_0_C, "", figure, redo(product, f -> f == hot ? ice
                : f == pressure.get().figure() ? Constants.STANDARD_ATMOSPHERE.value() : f.value()));
        if (hot.value() > ice) {
            add(Slip.Kind.CELSIUS_IN_GAS_LAW, "", figure, redo(product, f -> f == hot ? hot.value() - ice : f.value()));
        }
    }

    /** A volume read in millilitres beside a strength in moles in a litre. */
    private void noteMillilitres(Figure figure, Step.Product product) {
        Optional<Power> strength = product.powers().stream().filter(p -> p.figure().dimension().equals(Dimension.CONCENTRATION)).findFirst();
        long volumes = product.powers().stream().filter(p -> p.figure().dimension().equals(Dimension.VOLUME)).count();
        boolean amount = figure.dimension().equals(Dimension.AMOUNT);
        boolean concentration = figure.dimension().equals(Dimension.CONCENTRATION);
        if (volumes == 1 && (amount && strength.isPresent() || concentration && strength.isEmpty())) {
            Figure volume = product.powers().stream().map(Power::figure).filter(f -> f.dimension().equals(Dimension.VOLUME)).findFirst().orElseThrow();
            if (volume.unit().symbol().equals("mL") || volume.unit().symbol().equals("cm³")) {
                millilitres.put(volume, volume.value() * 1000);
            }
        }
    }

    /** A ratio of coefficients: amount of one substance from the amount of another. */
    private void coefficient(Figure figure, Step.Product product) {
        boolean ratio = product.coefficient() != 1 && figure.dimension().equals(Dimension.AMOUNT)
                && product.powers().stream().filter(p -> p.figure().dimension().equals(Dimension.AMOUNT) && p.exponent() == 1).count() == 1;
        if (ratio && product.coefficient() > 0) {
            add(Slip.Kind.COEFFICIENT_IGNORED, figure.symbol().of(), figure, figure.value() / product.coefficient());
            add(Slip.Kind.COEFFICIENT_UPSIDE_DOWN, figure.symbol().of(), figure, figure.value() / product.coefficient() / product.coefficient());
        }
    }

    private void excess(Figure figure, Step.Extreme extreme) {
        for (Figure other : extreme.from()) {
            if (other != extreme.chosen()) {
                add(Slip.Kind.EXCESS_TAKEN_AS_LIMITING, other.from().isEmpty() ? other.symbol().of() : about(other), figure, other.value());
            }
        }
    }

    private static String about(Figure turns) {
        return turns.symbol().of().isEmpty() ? turns.from().get(0).symbol().of() : turns.symbol().of();
    }

    private void waterVapour(Figure figure, Step.Sum sum) {
        Optional<Term> vapour = sum.terms().stream().filter(t -> t.coefficient() < 0 && t.figure().symbol().equals(Symbol.ofFormula("p", "H2O"))).findFirst();
        vapour.ifPresent(v -> add(Slip.Kind.WATER_VAPOUR_FORGOTTEN, "", figure, figure.value() + v.figure().value()));
    }

    private void dilution(Figure figure, Step.Product product) {
        List<Power> volumes = product.powers().stream().filter(p -> p.figure().dimension().equals(Dimension.VOLUME)).toList();
        boolean dilutes = volumes.size() == 2 && volumes.get(0).exponent() == -volumes.get(1).exponent()
                && product.powers().stream().anyMatch(p -> p.figure().dimension().equals(Dimension.CONCENTRATION));
        if (dilutes) {
            Figure a = volumes.get(0).figure();
            Figure b = volumes.get(1).figure();
            add(Slip.Kind.DILUTION_INVERTED, "", figure, redo(product, f -> f == a ? b.value() : f == b ? a.value() : f.value()));
        }
    }

    private void percent(Figure figure, Step.Product product) {
        for (Power power : product.powers()) {
            if (power.figure().unit().symbol().equals("%")) {
                add(Slip.Kind.PERCENT_AS_NUMBER, power.figure().symbol().plain(), figure,
                        redo(product, f -> f == power.figure() ? f.value() * 100 : f.value()));
            }
        }
    }

    // --- molar masses

    private static boolean isMolarMass(Figure figure) {
        return figure.symbol().letter().equals("M") && figure.symbol().kind() == Symbol.Kind.FORMULA && figure.dimension().equals(Dimension.MOLAR_MASS);
    }

    private void molarMass(Figure figure) {
        if (!(Formula.parse(figure.symbol().of()) instanceof FormulaResult.Ok ok)) {
            return;
        }
        Formula formula = ok.formula();
        if (formula.watersOfCrystallisation().orElse(0) > 0) {
            add(Slip.Kind.WATER_OF_CRYSTALLISATION_FORGOTTEN, formula.plain(), figure, constituents.molarMass(formula.anhydrous()).value());
        }
        if (formula.atoms().size() == 1 && formula.atoms().values().iterator().next() == 2) {
            add(Slip.Kind.DIATOMIC_AS_ATOM, formula.plain(), figure, figure.value() / 2);
        }
    }
}
