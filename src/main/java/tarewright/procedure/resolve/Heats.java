package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Constants;
import tarewright.chemistry.FormationEnthalpies;
import tarewright.chemistry.Provenance;
import tarewright.chemistry.ReactionEnthalpy;
import tarewright.chemistry.Species;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.text.Span;

/** The heat that a reaction sets free in a pot, and how far it warms the liquid that takes it up. */
final class Heats {
    private static final Unit KILOJOULE_PER_MOLE = Constituents.unit("kJ/mol").orElseThrow();
    private static final Unit JOULE = Units.symbol("J").orElseThrow();
    private static final Unit KILOJOULE = Units.symbol("kJ").orElseThrow();
    private static final Unit KELVIN = Units.symbol("K").orElseThrow();
    private static final Unit GRAM = Units.symbol("g").orElseThrow();
    private static final Unit HEAT_CAPACITY = Constituents.unit("J/(g K)").orElseThrow();
    /** Tables print formation enthalpies to a tenth of a kilojoule in a mole at best. */
    private static final double TABLE_HALF_WIDTH = 500;

    private final Bench bench;
    private final ReactionBlock reaction;

    Heats(Bench bench, ReactionBlock reaction) {
        this.bench = bench;
        this.reaction = reaction;
    }

    /** Enthalpy of the reaction as written, in kJ/mol; a finding at {@code at} where the table lacks a species. */
    Optional<Figure> enthalpy(Optional<Span> at) {
        if (reaction.equation().isEmpty()) {
            return Optional.empty();
        }
        FormationEnthalpies table = bench.tables.enthalpies();
        ReactionEnthalpy enthalpy = table.of(reaction.equation().get());
        if (enthalpy instanceof ReactionEnthalpy.Missing missing) {
            at.ifPresent(place -> bench.note(new ResolveFinding.NoEnthalpy(reaction.name(), missing.unknown().stream().map(Species::unicode).toList(),
                    missing.withoutState().stream().map(Species::unicode).toList(), place)));
            return Optional.empty();
        }
        return Optional.of(bench.constituents.enthalpy(reaction.name(), () -> sum(((ReactionEnthalpy.Known) enthalpy).parts())));
    }

    private static Figure sum(List<ReactionEnthalpy.Part> parts) {
        List<Term> terms = new ArrayList<>();
        for (ReactionEnthalpy.Part part : parts) {
            Provenance from = part.formation().provenance();
            Figure row = Figure.given(Symbol.ofFormula("ΔfH°", part.species().plain()), KILOJOULE_PER_MOLE, part.formation().joulesPerMole(),
                    new Origin.Table(from.source(), from.confidence() != Confidence.MEMORY));
            terms.add(new Term(part.coefficient(), row.shownTo(1)));
        }
        return Figure.of(Symbol.alone("ΔH"), KILOJOULE_PER_MOLE, new Step.Sum(terms)).uncertain(TABLE_HALF_WIDTH / Math.sqrt(3));
    }

    /** The heat set free by one group, positive where it is given off. */
    Optional<Figure> heat(Optional<Span> at) {
        return enthalpy(at).flatMap(h -> pot().flatMap(bench::extent).map(extent -> {
            Figure heat = Figure.of(Symbol.alone("q"), JOULE, new Step.Product(-1, List.of(new Power(extent, 1), new Power(h, 1))));
            return Math.abs(heat.value()) < 1000 ? heat : heat.in(KILOJOULE);
        }));
    }

    /** The rise in temperature of the liquids of the pot, if all the heat stays in them; solutions count as water. */
    Optional<Figure> temperatureRise(Optional<Span> at) {
        return heat(at).flatMap(q -> liquid().map(mass -> {
            Figure capacity = Figure.given(Symbol.alone("c"), HEAT_CAPACITY, Constants.WATER_HEAT_CAPACITY.value(),
                    new Origin.Constant(Constants.WATER_HEAT_CAPACITY.provenance().source())).shownTo(2);
            return Figure.of(Symbol.alone("ΔT"), KELVIN, new Step.Product(1, List.of(new Power(q, 1), new Power(mass, -1), new Power(capacity, -1))));
        }));
    }

    /** The pot that warms most: of several batches it is the one to know about. */
    private Optional<Pot> pot() {
        return bench.pots.stream().filter(p -> p.reaction() == reaction && !p.reactants().isEmpty())
                .max(Comparator.comparingDouble(p -> bench.extent(p).map(Figure::value).orElse(0.0) / liquid(p).map(Figure::value).orElse(1.0)));
    }

    private Optional<Figure> liquid() {
        return pot().flatMap(this::liquid);
    }

    /** The mass of the liquids in the pot, at 1 g/mL where no density is known. */
    private Optional<Figure> liquid(Pot pot) {
        List<Term> masses = new ArrayList<>();
        for (Part part : pot.reactants()) {
            if (part.block().is(Kind.SOLUTION) || part.block().is(Kind.LIQUID)) {
                Optional<Figure> volume = bench.figure(part.block(), Property.VOLUME);
                Optional<Figure> density = new Strengths(bench, part.block()).knownDensity();
                volume.ifPresent(v -> masses.add(new Term(1, Figure.of(Symbol.ofName("m", part.block().name()), GRAM, density
                        .map(d -> new Step.Product(1, List.of(new Power(v, 1), new Power(d, 1))))
                        .orElseGet(() -> new Step.Product(1, List.of(new Power(v, 1), new Power(water(), 1))))))));
            }
        }
        return masses.isEmpty() ? Optional.empty() : masses.size() == 1 ? Optional.of(masses.get(0).figure())
                : Optional.of(Figure.of(Symbol.ofName("m", "liquid"), GRAM, new Step.Sum(masses)));
    }

    private static Figure water() {
        return Figure.given(Symbol.alone("ρ"), Constituents.unit("g/mL").orElseThrow(), 1000, new Origin.Table("water, used for dilute solutions", true)).shownTo(2);
    }
}
