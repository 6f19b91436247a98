package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/**
 * What the students find out, worked from what they read off: the amount of an unknown follows from the block that reacts with it, or is made from it,
 * and whose own amount is read.
 */
final class Unknowns {
    private static final Unit MOLE = Units.symbol("mol").orElseThrow();

    private final Bench bench;
    private final QuantityBlock unknown;

    Unknowns(Bench bench, QuantityBlock unknown) {
        this.bench = bench;
        this.unknown = unknown;
    }

    /** The amount of the unknown's substance. */
    Optional<Figure> moles() {
        Optional<QuantityBlock> partner = partner();
        if (partner.isEmpty()) {
            bench.note(new ResolveFinding.NothingExpected(unknown.name(), unknown.block().nameSpan()));
            return Optional.empty();
        }
        return bench.figure(partner.get(), Property.MOLES).flatMap(n -> new Reacting(bench).pair(unknown, partner.get())
                .map(pair -> Reacting.usual(Figure.of(new Amounts(bench, unknown).symbol("n"), MOLE, new Step.Product(pair.ratio(), List.of(new Power(n, 1)))))));
    }

    /** Reacts with it or is made from it, and is itself read off. */
    private Optional<QuantityBlock> partner() {
        return bench.potsOf(unknown).stream().flatMap(p -> p.parts().stream()).map(Part::block).filter(b -> b != unknown)
                .filter(b -> bench.readingOf(b, Property.VOLUME).isPresent() || bench.readingOf(b, Property.MASS).isPresent()
                        || bench.readingOf(b, Property.MOLES).isPresent()).findFirst();
    }

    Optional<Figure> strength() {
        return Amounts.both(bench.figure(unknown, Property.MOLES), bench.figure(unknown, Property.VOLUME)).map(p -> Figure.of(
                new Amounts(bench, unknown).symbol("c"), Constituents.unit("mol/L").orElseThrow(),
                new Step.Product(1, List.of(new Power(p.first(), 1), new Power(p.second(), -1)))));
    }

    /** The mass fraction of the substance in what was weighed. */
    Optional<Figure> purity() {
        return pureMass().flatMap(pure -> bench.figure(unknown, Property.MASS).map(sample -> Figure.of(new Amounts(bench, unknown).symbol("w"),
                Units.symbol("%").orElseThrow(), new Step.Product(1, List.of(new Power(pure, 1), new Power(sample, -1))))));
    }

    Optional<Figure> mass() {
        return pureMass();
    }

    private Optional<Figure> pureMass() {
        return Amounts.both(bench.figure(unknown, Property.MOLES), bench.figure(unknown, Property.MOLAR_MASS)).map(p -> {
            Figure mass = Figure.of(new Amounts(bench, unknown).symbol("m"), Units.symbol("g").orElseThrow(),
                    new Step.Product(1, List.of(new Power(p.first(), 1), new Power(p.second(), 1))));
            return mass.in(Kit.usual(Dimension.MASS, mass.value()));
        });
    }

}
