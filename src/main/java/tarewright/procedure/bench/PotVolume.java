package tarewright.procedure.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;

/** The volume of the liquids of a pot, as if volumes simply added up. */
final class PotVolume {
    private PotVolume() {
    }

    /** Empty where no volume is known. */
    static Optional<Figure> of(Resolved procedure, PotAccount pot) {
        List<Step.Term> volumes = Stream.concat(pot.reactants().stream().flatMap(r -> r.blocks().stream()),
                pot.leftOver().keySet().stream()).distinct()
                .flatMap(name -> procedure.quantity(name).stream())
                .filter(q -> q.block().is(Kind.SOLUTION) || q.block().is(Kind.LIQUID))
                .flatMap(q -> q.figure(Property.VOLUME).stream()).map(v -> new Step.Term(1, v)).toList();
        return volumes.isEmpty() ? Optional.empty()
                : Optional.of(Figure.of(Symbol.alone("V"), volumes.get(0).figure().unit(), new Step.Sum(volumes)));
    }
}
