package tarewright.procedure.recipe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tarewright.chemistry.Formula;
import tarewright.chemistry.SaltSolubility;
import tarewright.chemistry.State;
import tarewright.chemistry.solution.Act;
import tarewright.chemistry.solution.Care;
import tarewright.chemistry.solution.DissolvingHeat;
import tarewright.chemistry.solution.Flasks;
import tarewright.chemistry.solution.Plan;
import tarewright.chemistry.solution.PlanResult;
import tarewright.chemistry.solution.Preparation;
import tarewright.chemistry.solution.Saturation;
import tarewright.chemistry.solution.SolutionTrouble;
import tarewright.chemistry.solution.Source;
import tarewright.chemistry.solution.StockStrength;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.procedure.bench.Bottles;
import tarewright.procedure.bench.OwnSolutions;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.MolarMasses;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Dimension;
import tarewright.quantity.UsualUnits;

/**
 * How each solution that a technician makes is made; those that the groups make up themselves are not among them.
 *
 * @param recipes in the order of the procedure
 * @param unmade solutions that have none
 */
public record Recipes(List<Recipe> recipes, List<Unmade> unmade) {
    /** Mass fraction from which a liquid is as good as pure, so that its heat of dissolving is that of the pure one. */
    private static final double NEARLY_PURE = 0.9;

    /** Two tables of densities differ by less: what is within 1 % of the strength that is sold is what is sold. */
    private static final double AS_SOLD = 0.01;

    public Recipes {
        recipes = List.copyOf(recipes);
        unmade = List.copyOf(unmade);
    }

    /** @param shelf the bottles of the term; the procedure's own are known */
    public static Recipes of(Resolved procedure, List<StockBlock> shelf) {
        Maker maker = new Maker(procedure, new Shelf(procedure, shelf));
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (technicians(procedure, quantity)) {
                maker.make(quantity);
            }
        }
        return new Recipes(maker.recipes, maker.unmade);
    }

    public Optional<Recipe> recipe(String block) {
        return recipes.stream().filter(r -> r.name().equals(block)).findFirst();
    }

    private static boolean technicians(Resolved procedure, ResolvedQuantity quantity) {
        return quantity.taken() && quantity.block().is(Kind.SOLUTION) && quantity.block().portionOf().isEmpty()
                && !OwnSolutions.holds(procedure, quantity.block());
    }

    /** Works recipes out for one procedure and shelf. */
    private static final class Maker {
        private final Resolved procedure;
        private final Shelf shelf;
        private final MolarMasses masses;
        private final List<Recipe> recipes = new ArrayList<>();
        private final List<Unmade> unmade = new ArrayList<>();

        Maker(Resolved procedure, Shelf shelf) {
            this.procedure = procedure;
            this.shelf = shelf;
            this.masses = new MolarMasses(procedure.tables());
        }

        void make(ResolvedQuantity quantity) {
            QuantityBlock block = quantity.block();
            Optional<Formula> solute = quantity.matter().map(Matter::formula);
            Optional<Figure> strength = quantity.strengthToMake();
            Optional<Figure> needed = needed(quantity, new HashSet<>());
            Optional<Ingredient> from = solute.flatMap(f -> shelf.of(block, f));
            Optional<Unmade.Why> why = why(block, solute, strength, needed, from);
            if (why.isPresent()) {
                unmade.add(new Unmade(block, why.get(), Optional.empty()));
                return;
            }
            Optional<Saturation> saturation = saturation(procedure, masses, solute.get());
            List<Recipe.Batch> batches = new ArrayList<>();
            Optional<Figure> rise = Optional.empty();
            Optional<Care> care = Optional.empty();
            List<Term> volumes = new ArrayList<>();
            for (Flasks.Filling filling : Flasks.filling(needed.get().value())) {
                Figure flask = flask(filling.capacity());
                PlanResult result = Plan.of(strength.get(), flask, from.get().source(), saturation);
                if (result instanceof PlanResult.Refused refused) {
                    unmade.add(new Unmade(block, Unmade.Why.IMPOSSIBLE, Optional.of(refused.trouble())));
                    return;
                }
                Plan plan = result.value().orElseThrow();
                if (care.isEmpty()) {
                    rise = rise(plan.first(), from.get());
                    care = Optional.of(Care.of(from.get().source(), solute.get(), plan.first().strength(), rise));
                }
                batches.add(new Recipe.Batch(filling.count(), plan, acts(plan, solute.get(), rise)));
                volumes.add(new Term(filling.count(), flask));
            }
            if (batches.isEmpty()) {
                unmade.add(new Unmade(block, Unmade.Why.NO_AMOUNT, Optional.empty()));
                return;
            }
            double made = volumes.stream().mapToDouble(t -> t.coefficient() * t.figure().value()).sum();
            Figure volume = Figure.of(Symbol.ofName("V", block.name()), UsualUnits.of(Dimension.VOLUME, made), new Step.Sum(volumes));
            recipes.add(new Recipe(block, strength.get(), needed.get(), volume, batches, from.get(), care.orElseThrow(), rise,
                    shelf.rework(block, solute.get(), from.get()), block.keeps()));
        }

        /**
         * Why there is none. Two solutes, iodine with the iodide that dissolves it, an indicator in alcohol would need more than one ingredient and water: half a recipe is
         * worse than none.
         */
        private static Optional<Unmade.Why> why(QuantityBlock block, Optional<Formula> solute, Optional<Figure> strength, Optional<Figure> needed, Optional<Ingredient> from) {
            if (block.role() == QuantityBlock.Role.INDICATOR) {
                return Optional.of(Unmade.Why.INDICATOR);
            }
            if (!block.also().isEmpty()) {
                return Optional.of(Unmade.Why.TWO_SOLUTES);
            }
            if (solute.isEmpty()) {
                return Optional.of(Unmade.Why.NO_FORMULA);
            }
            if (solute.get().plain().equals(IN_IODIDE)) {
                return Optional.of(Unmade.Why.IODINE);
            }
            if (strength.isEmpty()) {
                return Optional.of(Unmade.Why.NO_STRENGTH);
            }
            if (needed.isEmpty()) {
                return Optional.of(Unmade.Why.NO_AMOUNT);
            }
            if (from.isEmpty()) {
                return Optional.of(Unmade.Why.NO_SOURCE);
            }
            return asItComes(block, from.get(), strength) ? Optional.of(Unmade.Why.AS_SOLD) : Optional.empty();
        }

        /** What is as strong as it is sold, and not said to be made from anything, is poured out of its bottle. */
        private static boolean asItComes(QuantityBlock block, Ingredient from, Optional<Figure> strength) {
            return block.madeFrom().isEmpty() && from.kind() == Ingredient.Kind.USUAL
                    && strength.flatMap(s -> from.source().strongest().filter(c -> s.value() >= c.value() * (1 - AS_SOLD))).isPresent();
        }

        private static List<List<Act>> acts(Plan plan, Formula solute, Optional<Figure> rise) {
            List<List<Act>> acts = new ArrayList<>();
            for (Preparation step : plan.steps()) {
                acts.add(Act.of(step, Care.of(step.source(), solute, step.strength(), step == plan.first() ? rise : Optional.empty())));
            }
            return acts;
        }

        private static Figure flask(double volume) {
            return Figure.given(Symbol.alone("V"), UsualUnits.of(Dimension.VOLUME, volume), volume, new Origin.Counted());
        }

        /** Of a solid, of a liquid that is as good as pure, and of the acids whose heat of diluting is in the tables. */
        private Optional<Figure> rise(Preparation first, Ingredient from) {
            DissolvingHeat dissolving = new DissolvingHeat(procedure.tables().enthalpies());
            if (!(from.source() instanceof Source.Stock stock)) {
                return dissolving.enthalpy(from.formula(), State.SOLID).map(h -> DissolvingHeat.rise(first.strength(), h));
            }
            boolean pure = stock.strength() instanceof StockStrength.MassShare share && share.share().value() >= NEARLY_PURE;
            Optional<Figure> enthalpy = pure ? dissolving.enthalpy(from.formula(), State.LIQUID) : Optional.empty();
            return enthalpy.or(() -> procedure.tables().dilutionHeat(from.formula()).flatMap(t -> masses.of(from.formula())
                    .flatMap(m -> DissolvingHeat.ofDiluting(t, stock.strength(), m, first.strength())))).map(h -> DissolvingHeat.rise(first.strength(), h));
        }

        // --- how much of it

        /** What the class takes of the bottle, what the groups dilute of it, and what other solutions are made of it. */
        private Optional<Figure> needed(ResolvedQuantity bottle, Set<String> underWay) {
            if (!underWay.add(bottle.name())) {
                return Optional.empty();
            }
            List<Term> terms = new ArrayList<>();
            for (ResolvedQuantity each : procedure.quantities()) {
                boolean own = OwnSolutions.holds(procedure, each.block());
                boolean dilutes = each.block() != bottle.block() && each.block().madeFrom().filter(n -> n.value().equals(bottle.name())).isPresent();
                if (dilutes && own) {
                    taken(each).or(() -> each.figure(Property.CLASS_TOTAL)).ifPresent(f -> terms.add(new Term(1, f)));
                } else if (dilutes) {
                    needed(each, underWay).flatMap(v -> drawn(each, bottle, v)).ifPresent(f -> terms.add(new Term(1, f)));
                } else if (Bottles.source(procedure, each.block()) == bottle.block()) {
                    each.figure(Property.CLASS_TOTAL).ifPresent(f -> terms.add(new Term(1, f)));
                }
            }
            underWay.remove(bottle.name());
            return terms.isEmpty() ? Optional.empty() : terms.size() == 1 ? Optional.of(terms.get(0).figure())
                    : Optional.of(Figure.of(Symbol.ofName("V", bottle.name()), terms.get(0).figure().unit(), new Step.Sum(terms)));
        }

        /** What every group takes of it in every run, each hand its own amount, with spare. */
        private Optional<Figure> taken(ResolvedQuantity made) {
            double spare = 1 + procedure.setting().spare();
            List<Term> terms = new ArrayList<>();
            for (Hand hand : procedure.hands()) {
                hand.resolved().quantity(made.name()).flatMap(q -> q.figure(Property.TAKEN)).ifPresent(t -> terms.add(new Term(hand.times() * spare, t)));
            }
            if (!terms.isEmpty()) {
                made.filling().ifPresent(f -> terms.add(new Term(spare, f.total())));
            }
            return terms.isEmpty() ? Optional.empty()
                    : Optional.of(Figure.of(terms.get(0).figure().symbol(), terms.get(0).figure().unit(), new Step.Sum(terms)));
        }

        /** What a weaker solution that is made in whole flasks takes of a stronger one. */
        private Optional<Figure> drawn(ResolvedQuantity weaker, ResolvedQuantity bottle, Figure volume) {
            double made = Flasks.filling(volume.value()).stream().mapToDouble(f -> f.capacity() * f.count()).sum();
            return weaker.strengthToMake().flatMap(c -> bottle.strengthToMake().map(s -> Figure.of(
                    Symbol.ofName("V", weaker.name()), volume.unit(),
                    new Step.Product(1, List.of(new Power(c, 1), new Power(flask(made), 1), new Power(s, -1))))));
        }
    }

    /** A solution of iodine is one in iodide, which dissolves it many times over, whether the author says so or not: common practice, no source. */
    private static final String IN_IODIDE = "I2";

    private static Optional<Saturation> saturation(Resolved procedure, MolarMasses masses, Formula solute) {
        Formula dry = solute.anhydrous();
        Optional<SaltSolubility> salt = procedure.tables().saltSolubility(dry).filter(row -> !dry.plain().equals(IN_IODIDE));
        return salt.flatMap(s -> masses.of(dry).flatMap(m -> Saturation.of(s, procedure.tables().densities().of(dry), m)));
    }

    /** Why a solution with so much in it does not exist at 20 °C, whoever makes it; a second solute may keep more of the first dissolved. */
    public static Optional<SolutionTrouble> beyondSolubility(Resolved procedure, ResolvedQuantity solution) {
        if (!solution.block().is(Kind.SOLUTION) || !solution.block().also().isEmpty()) {
            return Optional.empty();
        }
        return solution.matter().flatMap(m -> saturation(procedure, new MolarMasses(procedure.tables()), m.formula()))
                .flatMap(s -> solution.figure(Property.STRENGTH).flatMap(s::refuses));
    }
}
