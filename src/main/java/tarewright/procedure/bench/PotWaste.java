package tarewright.procedure.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Formula;
import tarewright.chemistry.State;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Rulebook;
import tarewright.safety.WasteAdvice;

/**
 * What is left in a pot in figures, and what to do with it.
 *
 * @param moles of what is dissolved or left over, by its formula; solids that were made, too
 * @param pH at 25 °C, estimated from what is left in solution; empty where something in it has no known constant
 * @param neutralisedByAuthor whether the author says what it is to be neutralised with
 * @param potsPerGroup how many such pots a group leaves
 * @param inClass how many the class leaves; where amounts are dealt, those of the groups that get these
 */
public record PotWaste(PotLeft left, Map<String, Figure> moles, Optional<Figure> volume, OptionalDouble pH, WasteAdvice advice,
        boolean neutralisedByAuthor, int potsPerGroup, int inClass) {
    public PotWaste {
        moles = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(moles));
    }

    /** Name of the reaction, with the batch where there are several. */
    public String name() {
        return left.pot().batch().isEmpty() ? left.reaction().name() : left.reaction().name() + " " + left.pot().batch();
    }

    public static List<PotWaste> of(Resolved procedure, OnTheBench bench, Rulebook rules) {
        return of(procedure.hands().get(0), procedure, bench, rules);
    }

    /** @param procedure with the amounts of that hand */
    static List<PotWaste> of(Hand hand, Resolved procedure, OnTheBench bench, Rulebook rules) {
        return PotLeft.of(procedure, bench).stream().filter(l -> !l.parts().isEmpty()).map(l -> waste(hand, procedure, l, rules)).toList();
    }

    private static PotWaste waste(Hand hand, Resolved procedure, PotLeft left, Rulebook rules) {
        Residue residue = new Account(procedure, left).residue();
        int portions = blocks(left).stream().flatMap(b -> procedure.quantity(b).stream()).mapToInt(q -> q.block().portions()).max().orElse(1);
        return new PotWaste(left, residue.moles(), residue.volume(), residue.pH(procedure.tables()),
                residue.advice(left.reaction().name(), neutraliser(procedure, left), residue.pH(procedure.tables()), procedure.tables(), rules),
                neutraliser(procedure, left).isPresent(), portions * hand.runs().size(), portions * hand.times());
    }

    /** What all pots of this kind of the class leave. */
    Residue ofTheClass(Resolved procedure) {
        return new Account(procedure, left).residue().times(inClass);
    }

    static List<String> blocks(PotLeft left) {
        return left.pot().reactants().stream().flatMap(r -> r.blocks().stream()).toList();
    }

    /** The author's word on what is left here: that on the reaction first, then that on all, then that on something that goes into it. */
    static Optional<WasteBlock> said(Resolved procedure, PotLeft left) {
        List<WasteBlock> all = procedure.procedure().wastes();
        return all.stream().filter(w -> w.of().filter(o -> o.value().equals(left.reaction().name())).isPresent()).findFirst()
                .or(() -> all.stream().filter(w -> w.of().isEmpty()).findFirst())
                .or(() -> all.stream().filter(w -> w.of().filter(o -> blocks(left).contains(o.value())).isPresent()).findFirst());
    }

    private static Optional<String> neutraliser(Resolved procedure, PotLeft left) {
        return said(procedure, left).flatMap(WasteBlock::neutraliseWith).map(m -> m.value().name());
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
                add(formula, Figure.of(Symbol.ofFormula("n", formula.plain()), Residue.MOLE,
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
            moles.merge(formula.plain(), figure, Residue::sum);
            if (inSolution) {
                dissolved.putIfAbsent(formula.plain(), formula);
            }
        }

        Residue residue() {
            boolean second = blocks(left).stream().flatMap(b -> procedure.quantity(b).stream()).anyMatch(q -> !q.block().also().isEmpty());
            return new Residue(moles, dissolved, left.parts(), PotVolume.of(procedure, left.pot()),
                    left.pot().extent().isPresent() && !second);
        }
    }
}
