package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.Acidity;
import tarewright.chemistry.Formula;
import tarewright.chemistry.solution.Electrolytes;
import tarewright.chemistry.solution.InWater;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Leftover;
import tarewright.safety.Matter;
import tarewright.safety.Part;
import tarewright.safety.Rulebook;
import tarewright.safety.Waste;
import tarewright.safety.WasteAdvice;
import tarewright.tables.ReferenceTables;

/**
 * What stands in one vessel of waste, of one pot or of several.
 *
 * @param moles of what is dissolved or left over, by its formula; solids that were made, too
 * @param dissolved what of it is in solution
 * @param parts the substances as the tables of hazards ask for them
 * @param volume of the liquids, as if volumes simply added up
 * @param whole whether the balance of charges holds all that is there: every amount known, no ion whose partner the equation leaves out, no second
 *        solute, nothing solid that could still dissolve in what another pot brings
 */
record Residue(Map<String, Figure> moles, Map<String, Formula> dissolved, List<Part> parts, Optional<Figure> volume, boolean whole) {
    static final Unit MOLE = Units.symbol("mol").orElseThrow();
    /** Where acid and alkali are reckoned to: the middle of water. */
    static final double NEUTRAL = 7;
    private static final double PER_LITRE = 1000;
    private static final double NOTHING = 1e-9;

    Residue {
        moles = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(moles));
        dissolved = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(dissolved));
        parts = List.copyOf(parts);
    }

    /** What is left of a bottle, as it is: how much is not known. */
    static Residue of(Matter bottle) {
        return new Residue(Map.of(), Map.of(), bottle.parts(), Optional.empty(), false);
    }

    /** So much of a bottle, as it is. @param parts what is in it */
    static Residue of(ResolvedQuantity bottle, Figure volume, List<Part> parts) {
        Optional<Figure> strength = bottle.figure(Property.STRENGTH);
        Optional<Formula> formula = bottle.matter().map(tarewright.procedure.declare.Matter::formula);
        if (strength.isEmpty() || formula.isEmpty()) {
            return new Residue(Map.of(), Map.of(), parts, Optional.of(volume), false);
        }
        String plain = formula.get().plain();
        Figure moles = Figure.of(Symbol.ofFormula("n", plain), MOLE, new Step.Product(1, List.of(new Step.Power(strength.get(), 1), new Step.Power(volume, 1))));
        return new Residue(Map.of(plain, moles), Map.of(plain, formula.get()), parts, Optional.of(volume), bottle.block().also().isEmpty());
    }

    /** So many of them poured together. */
    Residue times(double often) {
        Map<String, Figure> each = new LinkedHashMap<>();
        moles.forEach((formula, figure) -> each.put(formula, Residue.times(figure, often)));
        return new Residue(each, dissolved, parts, volume.map(v -> Residue.times(v, often)), whole);
    }

    private static Figure times(Figure figure, double often) {
        return often == 1 ? figure : Figure.of(figure.symbol(), figure.unit(), new Step.Product(often, List.of(new Step.Power(figure, 1))));
    }

    /** All of them in one vessel. What the one leaves solid the other may dissolve, so a pH is not known then. */
    static Residue together(List<Residue> all) {
        if (all.size() == 1) {
            return all.get(0);
        }
        Map<String, Figure> moles = new LinkedHashMap<>();
        Map<String, Formula> dissolved = new LinkedHashMap<>();
        Map<String, Part> parts = new LinkedHashMap<>();
        List<Step.Term> volumes = new ArrayList<>();
        boolean whole = true;
        boolean wet = true;
        for (Residue each : all) {
            each.moles.forEach((formula, figure) -> moles.merge(formula, figure, Residue::sum));
            dissolved.putAll(each.dissolved);
            each.parts.forEach(p -> parts.merge(key(p), p, Residue::either));
            each.volume.ifPresent(v -> volumes.add(new Step.Term(1, v)));
            wet &= each.volume.isPresent() || each.dissolved.isEmpty();
            whole &= each.whole && each.dissolved.keySet().containsAll(each.moles.keySet());
        }
        Optional<Figure> volume = volumes.isEmpty() || !wet ? Optional.empty()
                : Optional.of(Figure.of(Symbol.alone("V"), volumes.get(0).figure().unit(), new Step.Sum(volumes)));
        return new Residue(moles, dissolved, List.copyOf(parts.values()), volume, whole);
    }

    /** A salt and its hydrate are one substance in a common vessel; counted twice they would come to more than all of it. */
    private static String key(Part part) {
        String written = part.formula().orElse(part.substance());
        return Formula.parse(written).value().map(f -> f.anhydrous().plain()).orElse(written);
    }

    /** Two strengths of one substance: which of them it comes to is not known. */
    private static Part either(Part one, Part other) {
        return one.equals(other) ? one : new Part(one.substance(), one.formula(), Content.unstated());
    }

    static Figure sum(Figure one, Figure other) {
        return Figure.of(one.symbol(), MOLE, new Step.Sum(List.of(new Step.Term(1, one), new Step.Term(1, other))));
    }

    /** The pH at 25 °C, estimated; empty where something in it has no known constant. */
    OptionalDouble pH(ReferenceTables tables) {
        Map<String, InWater> known = inWater(tables);
        boolean reckoned = whole && known.size() == dissolved.size() && volume.filter(v -> v.value() > 0).isPresent()
                && dissolved.values().stream().allMatch(f -> f.charge() == 0);
        return reckoned ? OptionalDouble.of(pH(known, volume.orElseThrow().value())) : OptionalDouble.empty();
    }

    private double pH(Map<String, InWater> known, double cubicMetres) {
        return known.entrySet().stream().map(e -> e.getValue().times(moles.get(e.getKey()).value() / cubicMetres / PER_LITRE))
                .reduce(InWater.NOTHING, InWater::and).pH(Acidity.AT_25_C);
    }

    private Map<String, InWater> inWater(ReferenceTables tables) {
        Electrolytes electrolytes = new Electrolytes(tables.acidConstants());
        Map<String, InWater> known = new LinkedHashMap<>();
        dissolved.forEach((plain, formula) -> electrolytes.of(formula).ifPresent(w -> known.put(plain, w)));
        return known;
    }

    /**
     * What to do with it.
     *
     * @param name what it is called
     * @param neutraliser that the author names
     * @param pH that counts
     */
    WasteAdvice advice(String name, Optional<String> neutraliser, OptionalDouble pH, ReferenceTables tables, Rulebook rules) {
        Map<String, InWater> known = inWater(tables);
        boolean neutral = pH.isPresent() && pH.getAsDouble() >= WasteAdvice.STOP_FROM && pH.getAsDouble() <= WasteAdvice.STOP_TO;
        Matter mixture = new Matter(name, Form.SOLUTION, atTheirStrength(), OptionalDouble.empty(), OptionalDouble.empty(), pH);
        return new Waste(rules).of(new Leftover(mixture, neutral ? Optional.empty() : toTakeUp(known, 1),
                neutral ? Optional.empty() : toTakeUp(known, -1)), neutraliser);
    }

    /** @param sign 1 for acid, -1 for alkali */
    private Optional<Figure> toTakeUp(Map<String, InWater> known, int sign) {
        List<Step.Term> terms = known.entrySet().stream()
                .map(e -> new Step.Term(sign * e.getValue().acidAt(NEUTRAL), moles.get(e.getKey())))
                .filter(t -> Math.abs(t.coefficient()) > NOTHING).toList();
        if (terms.isEmpty()) {
            return Optional.empty();
        }
        Figure sum = Figure.of(Symbol.ofName("n", sign > 0 ? "acid" : "alkali"), MOLE, new Step.Sum(terms));
        return Optional.of(sum).filter(f -> f.value() > 0);
    }

    /** Each part at its strength in the mixture, where that is known. */
    private List<Part> atTheirStrength() {
        return parts.stream().map(p -> {
            Optional<Figure> much = p.formula().filter(dissolved::containsKey).map(moles::get);
            return much.isEmpty() || volume.filter(v -> v.value() > 0).isEmpty() ? p : new Part(p.substance(), p.formula(),
                    Content.molar(Math.max(0, much.get().value() / volume.get().value() / PER_LITRE)));
        }).toList();
    }
}
