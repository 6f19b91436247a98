package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.Acidity;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.Protolyte;
import tarewright.chemistry.State;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.resolve.Resolved;
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

/**
 * What is left in a pot in figures, and what to do with it.
 *
 * @param moles of what is dissolved or left over, by its formula; solids that were made, too
 * @param pH at 25 °C, estimated from what is left in solution; empty where something in it has no known constant
 * @param potsPerGroup how many such pots a group leaves
 * @param groups in the class
 */
public record PotWaste(PotLeft left, Map<String, Figure> moles, Optional<Figure> volume, OptionalDouble pH, WasteAdvice advice,
        int potsPerGroup, int groups) {
    private static final Unit MOLE = Units.symbol("mol").orElseThrow();
    /** Where acid and alkali are reckoned to: the middle of water. */
    private static final double NEUTRAL = 7;
    private static final double PER_LITRE = 1000;

    public PotWaste {
        moles = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(moles));
    }

    /** Name of the reaction, with the batch where there are several. */
    public String name() {
        return left.pot().batch().isEmpty() ? left.reaction().name() : left.reaction().name() + " " + left.pot().batch();
    }

    static List<PotWaste> of(Resolved procedure, OnTheBench bench, Rulebook rules) {
        return PotLeft.of(procedure, bench).stream().filter(l -> !l.parts().isEmpty())
                .map(l -> new Account(procedure, l).waste(rules)).toList();
    }

    /** Adds up one pot. */
    private static final class Account {
        private final Resolved procedure;
        private final PotLeft left;
        private final Map<String, Figure> moles = new LinkedHashMap<>();
        private final Map<String, Formula> dissolved = new LinkedHashMap<>();

        Account(Resolved procedure, PotLeft left) {
            this.procedure = procedure;
            this.left = left;
            left.pot().extent().ifPresent(extent -> left.reaction().block().equation().ifPresent(e -> products(e, extent)));
            left.pot().leftOver().forEach((name, figure) -> procedure.quantity(name)
                    .filter(q -> figure.value() > 0 && !left.pot().limiting().contains(name)).ifPresent(q -> over(q, figure)));
        }

        private void products(BalancedEquation equation, Figure extent) {
            for (BalancedEquation.Term term : equation.products()) {
                Formula formula = term.species().formula();
                Optional<State> state = term.species().state();
                if (state.filter(s -> s == State.GAS).isPresent() || formula.plain().equals("H2O")) {
                    continue;
                }
                add(formula, Figure.of(Symbol.ofFormula("n", formula.plain()), MOLE,
                        new Step.Product(term.coefficient(), List.of(new Step.Power(extent, 1)))),
                        state.filter(s -> s == State.SOLID).isEmpty());
            }
        }

        private void over(ResolvedQuantity quantity, Figure figure) {
            quantity.matter().ifPresent(m -> {
                boolean solid = quantity.block().is(Kind.SOLID) && left.reaction().block().equation()
                        .flatMap(e -> e.term(m.formula())).flatMap(t -> t.species().state()).filter(s -> s == State.SOLID).isPresent();
                if (!quantity.block().is(Kind.GAS)) {
                    add(m.formula(), figure, !solid);
                }
            });
        }

        private void add(Formula formula, Figure figure, boolean inSolution) {
            moles.merge(formula.plain(), figure, (a, b) -> Figure.of(a.symbol(), MOLE,
                    new Step.Sum(List.of(new Step.Term(1, a), new Step.Term(1, b)))));
            if (inSolution) {
                dissolved.putIfAbsent(formula.plain(), formula);
            }
        }

        PotWaste waste(Rulebook rules) {
            Optional<Figure> volume = PotVolume.of(procedure, left.pot());
            Map<String, InWater> known = new LinkedHashMap<>();
            dissolved.forEach((plain, formula) -> InWater.of(formula, procedure.tables())
                    .ifPresent(w -> known.put(plain, w)));
            OptionalDouble pH = volume.filter(v -> v.value() > 0 && whole(known)).map(v -> pH(known, v.value()))
                    .orElse(OptionalDouble.empty());
            boolean neutral = pH.isPresent() && pH.getAsDouble() >= WasteAdvice.STOP_FROM && pH.getAsDouble() <= WasteAdvice.STOP_TO;
            Matter mixture = new Matter(left.reaction().name(), Form.SOLUTION, parts(volume), OptionalDouble.empty(),
                    OptionalDouble.empty(), pH);
            Leftover leftover = new Leftover(mixture, neutral ? Optional.empty() : toTakeUp(known, 1),
                    neutral ? Optional.empty() : toTakeUp(known, -1));
            int portions = left.pot().reactants().stream().flatMap(r -> r.blocks().stream())
                    .flatMap(b -> procedure.quantity(b).stream()).mapToInt(q -> q.block().portions()).max().orElse(1);
            return new PotWaste(left, moles, volume, pH, new Waste(rules).of(leftover, neutraliser()),
                    portions * procedure.setting().runs(), procedure.setting().groups());
        }

        /**
         * Whether the balance of charges holds all that is there: everything has known constants, nothing is an ion whose partner
         * the equation leaves out, and no bottle holds a second solute.
         */
        private boolean whole(Map<String, InWater> known) {
            boolean second = left.pot().reactants().stream().flatMap(r -> r.blocks().stream())
                    .flatMap(b -> procedure.quantity(b).stream()).anyMatch(q -> !q.block().also().isEmpty());
            return left.pot().extent().isPresent() && known.size() == dissolved.size() && !second
                    && dissolved.values().stream().allMatch(f -> f.charge() == 0);
        }

        private OptionalDouble pH(Map<String, InWater> known, double cubicMetres) {
            double charge = 0;
            List<Protolyte> weak = new ArrayList<>();
            for (Map.Entry<String, InWater> each : known.entrySet()) {
                double molesPerLitre = moles.get(each.getKey()).value() / cubicMetres / PER_LITRE;
                charge += each.getValue().strongCharge() * molesPerLitre;
                weak.addAll(each.getValue().weakAt(molesPerLitre));
            }
            return OptionalDouble.of(Acidity.AT_25_C.of(charge, weak));
        }

        /** @param sign 1 for acid, -1 for alkali */
        private Optional<Figure> toTakeUp(Map<String, InWater> known, int sign) {
            List<Step.Term> terms = known.entrySet().stream()
                    .map(e -> new Step.Term(sign * e.getValue().acidAt(NEUTRAL), moles.get(e.getKey())))
                    .filter(t -> Math.abs(t.coefficient()) > 1e-9).toList();
            if (terms.isEmpty()) {
                return Optional.empty();
            }
            Figure sum = Figure.of(Symbol.ofName("n", sign > 0 ? "acid" : "alkali"), MOLE, new Step.Sum(terms));
            return Optional.of(sum).filter(f -> f.value() > 0);
        }

        /** Each part at its strength in the mixture, where that is known. */
        private List<Part> parts(Optional<Figure> volume) {
            return left.parts().stream().map(p -> {
                Optional<Figure> much = p.formula().filter(dissolved::containsKey).map(moles::get);
                return much.isEmpty() || volume.filter(v -> v.value() > 0).isEmpty() ? p : new Part(p.substance(), p.formula(),
                        Content.molar(Math.max(0, much.get().value() / volume.get().value() / PER_LITRE)));
            }).toList();
        }

        private Optional<String> neutraliser() {
            List<String> blocks = left.pot().reactants().stream().flatMap(r -> r.blocks().stream()).toList();
            return procedure.procedure().wastes().stream().filter(w -> concerns(w, blocks))
                    .flatMap(w -> w.neutraliseWith().stream()).map(m -> m.value().name()).findFirst();
        }

        private boolean concerns(WasteBlock waste, List<String> blocks) {
            return waste.of().map(o -> o.value().equals(left.reaction().name()) || blocks.contains(o.value())).orElse(true);
        }
    }
}
