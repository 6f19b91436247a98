package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Formula;
import tarewright.finding.Finding;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Role;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.tables.ReferenceTables;
import tarewright.text.Spelling;

/** Sorts the blocks into the pots of the reactions. */
final class Pots {
    private final Procedure procedure;
    private final Ions ions;
    private final Consumer<Finding> findings;
    private final Set<String> bottles = new LinkedHashSet<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Part> leftOvers = new ArrayList<>();

    private Pots(Procedure procedure, ReferenceTables tables, Consumer<Finding> findings) {
        this.procedure = procedure;
        this.ions = new Ions(tables);
        this.findings = findings;
        for (QuantityBlock block : procedure.quantities()) {
            block.portionOf().ifPresent(n -> bottles.add(n.value()));
            block.madeFrom().ifPresent(n -> bottles.add(n.value()));
        }
    }

    static List<Pot> of(Procedure procedure, ReferenceTables tables, Consumer<Finding> findings) {
        Pots pots = new Pots(procedure, tables, findings);
        procedure.quantities().forEach(pots::place);
        return pots.gather();
    }

    /** What a block holds: its own substance, or that of the block that it is taken or made from. */
    static Optional<Matter> matter(Procedure procedure, QuantityBlock block) {
        Optional<Matter> own = block.matter().map(At::value);
        if (own.isPresent()) {
            return own;
        }
        Set<String> seen = new LinkedHashSet<>(Set.of(block.name()));
        Optional<At<String>> source = block.portionOf().or(block::madeFrom);
        while (source.isPresent() && seen.add(source.get().value())) {
            Optional<QuantityBlock> from = procedure.quantity(source.get().value());
            Optional<Matter> matter = from.flatMap(QuantityBlock::matter).map(At::value);
            if (matter.isPresent()) {
                return matter;
            }
            source = from.flatMap(f -> f.portionOf().or(f::madeFrom));
        }
        return Optional.empty();
    }

    private void place(QuantityBlock block) {
        Optional<Matter> matter = matter(procedure, block);
        if (block.role() != Role.REACTS || bottles.contains(block.name()) || matter.isEmpty()) {
            return;
        }
        if (block.actsAs().isPresent() && !bringsIon(block, matter.get(), block.actsAs().get())) {
            return;
        }
        AmountRule rule = block.rule();
        Optional<At<String>> makes = rule instanceof AmountRule.MadeBy by ? Optional.of(new At<>(by.reaction(), by.at()))
                : rule instanceof AmountRule.Wanted wanted ? wanted.madeBy() : Optional.empty();
        makes.ifPresent(m -> named(block, matter.get(), m, false));
        block.reactsIn().ifPresent(r -> named(block, matter.get(), r, true));
        chooseReaction(block, matter.get(), makes);
        if (rule instanceof AmountRule.For goal && goal.leftOver()) {
            leftOver(block, goal);
        }
    }

    /** Whether what a block acts as is in it, and is asked for anywhere. */
    private boolean bringsIon(QuantityBlock block, Matter matter, At<Matter> actsAs) {
        Formula ion = actsAs.value().formula();
        List<ReactionBlock> reactions = procedure.reactions().stream().filter(r -> r.equation().isPresent()).toList();
        if (ions.in(matter.formula(), ion).isEmpty()) {
            findings.accept(new ResolveFinding.IonNotBrought(matter.formula().unicode(), ion.unicode(), ions.of(matter.formula()), actsAs.at()));
            return false;
        }
        boolean asked = reactions.stream().anyMatch(r -> r.equation().get().term(ion).isPresent());
        if (!asked && reactions.size() == 1) {
            findings.accept(new ResolveFinding.SpeciesNotInEquation(ion.unicode(), reactions.get(0).name(),
                    reactions.get(0).equation().get().terms().stream().map(t -> t.species().unicode()).toList(), actsAs.at()));
        }
        return asked;
    }

    private void chooseReaction(QuantityBlock block, Matter matter, Optional<At<String>> makes) {
        AmountRule rule = block.rule();
        if (block.reactsIn().isPresent() || makes.isPresent() && procedure.reaction(makes.get().value()).isEmpty()) {
            return;
        }
        if (rule instanceof AmountRule.Wanted && makes.isEmpty()) {
            choose(block, candidates(block, matter, false));
        } else if (makes.isPresent()) {
            // What one reaction makes may go on into one other without the author having to say so.
            List<Part> onward = candidates(block, matter, true).stream().filter(p -> !p.reaction().name().equals(makes.get().value())).toList();
            if (onward.size() == 1) {
                parts.add(onward.get(0));
            }
        } else {
            List<Part> reacting = narrowed(block, candidates(block, matter, true));
            choose(block, reacting.isEmpty() ? candidates(block, matter, false) : reacting);
        }
    }

    /** A block in a reaction that the author names. */
    private void named(QuantityBlock block, Matter matter, At<String> name, boolean reactant) {
        Optional<ReactionBlock> reaction = procedure.reaction(name.value());
        if (reaction.isEmpty()) {
            List<String> names = procedure.reactions().stream().map(ReactionBlock::name).toList();
            findings.accept(new ResolveFinding.UnknownName(name.value(), "reaction", Spelling.near(name.value(), names), name.at()));
            return;
        }
        Optional<BalancedEquation> equation = reaction.get().equation();
        if (equation.isEmpty()) {
            return;
        }
        Optional<Part> part = part(block, matter, reaction.get(), reactant);
        if (part.isPresent()) {
            parts.add(part.get());
        } else {
            List<BalancedEquation.Term> side = reactant ? equation.get().reactants() : equation.get().products();
            findings.accept(new ResolveFinding.SpeciesNotInEquation(matter.formula().unicode(), name.value(),
                    side.stream().map(t -> t.species().unicode()).toList(), block.matter().map(At::at).orElse(name.at())));
        }
    }

    private List<Part> candidates(QuantityBlock block, Matter matter, boolean reactant) {
        return procedure.reactions().stream().filter(r -> !r.shownOnly()).flatMap(r -> part(block, matter, r, reactant).stream()).toList();
    }

    /** Only the reactions that the block's target takes part in as well, where there is one. */
    private List<Part> narrowed(QuantityBlock block, List<Part> candidates) {
        Optional<String> target = block.rule() instanceof AmountRule.For goal ? Optional.of(goal.target())
                : block.rule() instanceof AmountRule.ExcessOver over ? Optional.of(over.target()) : Optional.empty();
        Optional<QuantityBlock> other = target.flatMap(procedure::quantity);
        Optional<Matter> matter = other.flatMap(o -> matter(procedure, o));
        if (candidates.size() < 2 || matter.isEmpty()) {
            return candidates;
        }
        List<Part> shared = candidates.stream().filter(c -> part(other.get(), matter.get(), c.reaction(), true).isPresent()
                || part(other.get(), matter.get(), c.reaction(), false).isPresent()).toList();
        return shared.isEmpty() ? candidates : shared;
    }

    private void choose(QuantityBlock block, List<Part> candidates) {
        if (candidates.size() > 1) {
            findings.accept(new ResolveFinding.AmbiguousReaction(block.name(), candidates.get(0).species().formula().unicode(),
                    candidates.stream().map(c -> c.reaction().name()).toList(), block.block().nameSpan(),
                    candidates.stream().map(c -> c.reaction().block().nameSpan()).toList()));
            return;
        }
        candidates.forEach(parts::add);
    }

    /** What is left over of another block comes into this block's pot. */
    private void leftOver(QuantityBlock block, AmountRule.For goal) {
        Optional<Part> own = parts.stream().filter(p -> p.block() == block && p.reactant()).findFirst();
        Optional<QuantityBlock> other = procedure.quantity(goal.target());
        if (own.isPresent() && other.isPresent()) {
            matter(procedure, other.get()).flatMap(m -> part(other.get(), m, own.get().reaction(), true))
                    .ifPresent(p -> leftOvers.add(new Part(p.block(), p.reaction(), p.species(), true, p.coefficient(), p.ions())));
        }
    }

    /** The part that a block would have on one side of a reaction: by formula and state, by the ion that it acts as, without its water of crystallisation. */
    private Optional<Part> part(QuantityBlock block, Matter matter, ReactionBlock reaction, boolean reactant) {
        if (reaction.equation().isEmpty()) {
            return Optional.empty();
        }
        List<BalancedEquation.Term> side = reactant ? reaction.equation().get().reactants() : reaction.equation().get().products();
        if (block.actsAs().isPresent()) {
            Formula ion = block.actsAs().get().value().formula();
            return side.stream().filter(t -> t.species().formula().equals(ion)).findFirst()
                    .map(t -> new Part(block, reaction, t.species(), reactant, t.coefficient(), ions.in(matter.formula(), ion).orElse(1)));
        }
        Optional<BalancedEquation.Term> exact = side.stream().filter(t -> t.species().formula().sameComposition(matter.formula()))
                .min((a, b) -> Integer.compare(fit(a, block), fit(b, block)));
        Optional<BalancedEquation.Term> term = exact.or(() -> side.stream()
                .filter(t -> t.species().formula().sameComposition(matter.formula().anhydrous())).findFirst());
        if (term.isPresent()) {
            return term.map(t -> new Part(block, reaction, t.species(), reactant, t.coefficient(), 1));
        }
        if (!block.is(QuantityBlock.Kind.SOLUTION)) {
            return Optional.empty();
        }
        List<Part> brought = new ArrayList<>();
        for (BalancedEquation.Term each : side) {
            OptionalInt times = ions.in(matter.formula(), each.species().formula());
            if (times.isPresent()) {
                brought.add(new Part(block, reaction, each.species(), reactant, each.coefficient(), times.getAsInt()));
            }
        }
        return brought.size() == 1 ? Optional.of(brought.get(0)) : Optional.empty();
    }

    private static int fit(BalancedEquation.Term term, QuantityBlock block) {
        return term.species().state().filter(s -> s.letters().equals(block.kind().state())).isPresent() ? 0 : 1;
    }

    private List<Pot> gather() {
        Map<Pot.Key, List<Part>> pots = new LinkedHashMap<>();
        parts.forEach(p -> pots.computeIfAbsent(p.pot(), k -> new ArrayList<>()).add(p));
        List<Pot> gathered = new ArrayList<>();
        pots.forEach((key, inside) -> gathered.add(new Pot(key, inside.get(0).reaction(), inside,
                leftOvers.stream().filter(p -> p.reaction().name().equals(key.reaction()) && inside.stream().anyMatch(
                        q -> q.block().rule() instanceof AmountRule.For goal && goal.leftOver() && goal.target().equals(p.block().name()))).toList())));
        return gathered;
    }
}
