package tarewright.procedure.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.BalancedEquation;
import tarewright.chemistry.Species;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.safety.AirEstimate;
import tarewright.safety.Classification;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Part;
import tarewright.safety.Rulebook;

/** What the reactions of a procedure make, each at the strength that it comes to in its pot. */
final class Products {
    private static final Unit MOLAR = Units.symbol("mol/L").orElseThrow();
    private static final Unit MOLE = Units.symbol("mol").orElseThrow();
    private static final String WATER = "H2O";

    private final Resolved procedure;
    private final Naming naming;
    private final Classification classification;
    private final Releases releases;
    private final Map<String, Candidate> most = new LinkedHashMap<>();

    /** @param much moles of a gas, strength of what is dissolved: of two sources of one product the larger counts */
    private record Candidate(Made made, double much) {
    }

    private Products(Resolved procedure, Rulebook rules, Naming naming) {
        this.procedure = procedure;
        this.naming = naming;
        this.classification = new Classification(rules);
        this.releases = new Releases(procedure, rules);
    }

    static List<Made> of(Resolved procedure, Rulebook rules, Naming naming) {
        Products products = new Products(procedure, rules, naming);
        products.collect();
        return products.most.values().stream().map(Candidate::made).toList();
    }

    private void collect() {
        for (ResolvedReaction reaction : procedure.reactions()) {
            if (reaction.block().shownOnly() || reaction.block().equation().isEmpty()) {
                continue;
            }
            BalancedEquation equation = reaction.block().equation().get();
            for (BalancedEquation.Term term : equation.products()) {
                if (!term.species().formula().plain().equals(WATER)) {
                    product(reaction, equation, term);
                }
            }
        }
    }

    private void product(ResolvedReaction reaction, BalancedEquation equation, BalancedEquation.Term term) {
        Species species = term.species();
        Optional<ResolvedQuantity> block = procedure.quantities().stream().filter(q -> !q.taken())
                .filter(q -> q.matter().filter(m -> m.formula().sameComposition(species.formula())).isPresent()).findFirst();
        Optional<Substance> substance = species.state()
                .flatMap(s -> procedure.tables().substances().of(species.formula(), s))
                .or(() -> procedure.tables().substances().of(species.formula()).stream().findFirst());
        Form form = form(species, block, substance, equation);
        Optional<Figure> moles = moles(reaction, term);
        Content content = content(reaction, term, form);
        Part part = Part.of(substance.map(Substance::name).orElse(species.formula().plain()), species.formula().plain(), content);
        Matter matter = Matter.of(naming.product(species, block, substance), form, List.of(part));
        int vessels = (int) reaction.pots().stream().filter(p -> p.extent().isPresent()).count();
        Optional<AirEstimate> air = form == Form.GAS ? moles.map(n -> releases.of(part, n, vessels)) : Optional.empty();
        Made made = new Made(reaction, species, block, substance, classification.of(matter), air);
        most.merge(form + " " + species.formula().plain(), new Candidate(made, much(form, moles, content)),
                (one, other) -> other.much() > one.much() ? other : one);
    }

    private static double much(Form form, Optional<Figure> moles, Content content) {
        if (form == Form.GAS) {
            return moles.map(Figure::value).orElse(0.0);
        }
        return content instanceof Content.Molar molar ? molar.molPerLitre() : Double.POSITIVE_INFINITY;
    }

    private static Form form(Species species, Optional<ResolvedQuantity> block, Optional<Substance> substance,
            BalancedEquation equation) {
        State state = species.state().or(() -> block.map(q -> state(q.block().kind()))).or(() -> substance.map(Substance::state))
                .orElse(State.AQUEOUS);
        boolean wet = equation.terms().stream().anyMatch(t -> t.species().state().filter(s -> s == State.AQUEOUS).isPresent());
        return switch (state) {
            case GAS -> Form.GAS;
            case LIQUID -> Form.LIQUID;
            case AQUEOUS -> Form.SOLUTION;
            case SOLID -> wet ? Form.SLURRY : Form.SOLID;
        };
    }

    private static State state(Kind kind) {
        return State.of(kind.state()).orElseThrow();
    }

    private static Optional<Figure> moles(ResolvedReaction reaction, BalancedEquation.Term term) {
        return reaction.pots().stream().flatMap(p -> p.extent().stream()).max((a, b) -> Double.compare(a.value(), b.value()))
                .map(extent -> Figure.of(Symbol.ofFormula("n", term.species().formula().plain()), MOLE,
                        new Step.Product(term.coefficient(), List.of(new Step.Power(extent, 1)))));
    }

    /** What is dissolved is spread over the liquids of its pot; where these are not known its strength is not. */
    private Content content(ResolvedReaction reaction, BalancedEquation.Term term, Form form) {
        if (form != Form.SOLUTION) {
            return Content.pure();
        }
        Optional<Figure> strongest = reaction.pots().stream().flatMap(pot -> concentration(pot, term).stream())
                .max((a, b) -> Double.compare(a.value(), b.value()));
        return strongest.map(c -> Contents.molar(c, OptionalDouble.empty())).orElseGet(Content::unstated);
    }

    private Optional<Figure> concentration(PotAccount pot, BalancedEquation.Term term) {
        Optional<Figure> whole = PotVolume.of(procedure, pot);
        if (whole.isEmpty() || pot.extent().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Figure.of(Symbol.ofFormula("c", term.species().formula().plain()), MOLAR,
                new Step.Product(term.coefficient(), List.of(new Step.Power(pot.extent().get(), 1), new Step.Power(whole.get(), -1)))));
    }
}
