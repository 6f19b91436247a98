package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.AmountRule.Measured;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.quantity.Dimension;
import tarewright.quantity.Rounding;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;

/** The figures of one block. */
final class Amounts {
    private static final double SAME = 1e-9;
    private static final List<String> WAYS_SOLID = List.of("mass", "moles", "for", "excess over", "made by");
    private static final List<String> WAYS_FLUID = List.of("volume", "moles", "for", "excess over", "made by");

    private final Bench bench;
    private final QuantityBlock block;

    Amounts(Bench bench, QuantityBlock block) {
        this.bench = bench;
        this.block = block;
    }

    /** The property that a group measures out. */
    static Property measuredOut(QuantityBlock block) {
        boolean byMass = block.is(Kind.SOLID) || block.is(Kind.LIQUID) && block.rule() instanceof AmountRule.Stated s && s.what() == Measured.MASS;
        return byMass ? Property.MASS : Property.VOLUME;
    }

    /** A figure that the block has ({@link Facets}), or that another of its figures is worked from. */
    Optional<Figure> figure(Property property) {
        switch (property) {
            case MOLES:
                return moles();
            case MASS:
                return mass();
            case VOLUME:
                return volume();
            case LENGTH:
                return length();
            case MOLAR_MASS:
                return molarMass();
            case STRENGTH:
                return new Strengths(bench, block).molar();
            case DENSITY:
                return new Strengths(bench, block).density();
            case PURITY:
                return purity();
            case CLASS_TOTAL:
                return classTotal(measuredOut(block));
            case CLASS_LENGTH:
                return classTotal(Property.LENGTH);
            case EXCESS:
                return new Reacting(bench).excess(block);
            case LEFT_OVER:
                return new Reacting(bench).leftOver(block);
            case MOST:
                return product(false);
            case YIELD:
                return product(true);
            case DRY:
                return new Gases(bench, block).free(false, Symbol.ofName("V", "dry"));
            case MOIST:
                return new Gases(bench, block).free(true, Symbol.ofName("V", "moist"));
            case DISSOLVED:
                return new Gases(bench, block).dissolved();
            case LARGEST:
                return new Gases(bench, block).largest();
            case MOLAR_VOLUME:
                return new Gases(bench, block).molarVolume();
            case TAKEN:
                return new Strengths(bench, block).taken();
            default:
                throw new IllegalStateException("no rule for " + property);
        }
    }

    // --- names and symbols

    /** {@code n(Mg)} where the formula tells the blocks of the procedure apart, else {@code n(ribbon)}. */
    Symbol symbol(String letter) {
        Optional<Matter> matter = bench.matter(block);
        if (matter.isEmpty() || block.shownAs().isPresent()) {
            return Symbol.ofName(letter, block.name());
        }
        Formula formula = matter.get().formula();
        boolean alone = bench.procedure.quantities().stream()
                .filter(q -> bench.matter(q).filter(m -> m.formula().sameComposition(formula)).isPresent()).count() == 1;
        return alone ? Symbol.ofFormula(letter, formula.plain()) : Symbol.ofName(letter, block.name());
    }

    private Optional<Figure> need(Property property) {
        return bench.figure(block, property);
    }

    // --- the typed and the derived amount

    private Optional<Typed> stated(Measured what) {
        return block.rule() instanceof AmountRule.Stated s && s.what() == what ? Optional.of(s.typed()) : Optional.empty();
    }

    /** A typed amount: known as well as its instrument sets it, else to half of its last digit. */
    private Figure given(String letter, Typed typed, Dimension dimension) {
        Optional<ApparatusItem> item = Kit.measuring(bench.instrument(block), dimension);
        double uncertainty = typed.plusMinus().isPresent() ? Kit.standardUncertainty(typed)
                : item.map(ApparatusItem::standardUncertainty).filter(u -> u.isPresent()).map(u -> u.getAsDouble())
                .orElseGet(() -> Kit.standardUncertainty(typed));
        return Kit.asTyped(Figure.given(symbol(letter), typed.unit(), typed.si(), new Origin.Author()).uncertain(uncertainty), typed);
    }

    private boolean derived() {
        return block.rule() instanceof AmountRule.For || block.rule() instanceof AmountRule.ExcessOver || isWeighedByMoles();
    }

    /** A typed amount of substance is what is aimed at where an instrument sets a mass or a volume for it. */
    private boolean isWeighedByMoles() {
        Dimension dimension = measuredOut(block) == Property.MASS ? Dimension.MASS : Dimension.VOLUME;
        return stated(Measured.MOLES).isPresent() && Kit.measuring(bench.instrument(block), dimension).filter(i -> i.division().isPresent()).isPresent();
    }

    private boolean comesFromReaction() {
        return block.rule() instanceof AmountRule.MadeBy || block.rule() instanceof AmountRule.Wanted;
    }

    /**
     * Whether the amount of a product follows from what is read of it. Where the reactants are known or read themselves, it follows from them: the volume of a gas over its amount is then a
     * result and not a circle. Where one of them is to be found out, or nothing of them is read, only the product's own reading tells.
     */
    private boolean ownReadingTells() {
        List<QuantityBlock> reactants = bench.potAsProduct(block).map(p -> p.reactants().stream().map(Part::block).toList()).orElse(List.of());
        return reactants.stream().anyMatch(r -> Unknowns.concerns(bench, r)) || reactants.stream().noneMatch(r -> bench.readingOf(r, measuredOut(r)).isPresent());
    }

    private boolean findsOut(Property property) {
        return bench.byReadings && Unknowns.finds(bench, block, property);
    }

    // --- amount of substance

    private Optional<Figure> moles() {
        if (findsOut(Property.MOLES)) {
            return new Unknowns(bench, block).moles();
        }
        Optional<Typed> typed = stated(Measured.MOLES);
        if (typed.isPresent() && !isWeighedByMoles()) {
            return Optional.of(given("n", typed.get(), Dimension.AMOUNT));
        }
        if (comesFromReaction() && !(bench.reads(block, measuredOut(block)).isPresent() && ownReadingTells())) {
            return new Reacting(bench).made(block, symbol("n"));
        }
        switch (block.kind()) {
            case SOLUTION:
                return both(need(Property.STRENGTH), new Strengths(bench, block).whole()).map(p -> product("n", Dimension.AMOUNT, 1, p.first(), 1, p.second(), 1));
            case GAS:
                return new Gases(bench, block).molesFromAmount();
            case LIQUID:
                if (measuredOut(block) == Property.VOLUME) {
                    return both(need(Property.VOLUME), need(Property.DENSITY)).flatMap(p -> need(Property.MOLAR_MASS)
                            .map(molar -> molesOfSample(List.of(new Power(p.first(), 1), new Power(p.second(), 1)), molar)));
                }
                return need(Property.MASS).flatMap(m -> need(Property.MOLAR_MASS).map(molar -> molesOfSample(List.of(new Power(m, 1)), molar)));
            default:
                return need(Property.MASS).flatMap(m -> need(Property.MOLAR_MASS).map(molar -> molesOfSample(List.of(new Power(m, 1)), molar)));
        }
    }

    private Figure molesOfSample(List<Power> sample, Figure molarMass) {
        List<Power> powers = new ArrayList<>(sample);
        statedPurity().ifPresent(w -> powers.add(new Power(w, 1)));
        powers.add(new Power(molarMass, -1));
        return worked("n", Dimension.AMOUNT, new Step.Product(1, powers));
    }

    private Optional<Figure> statedPurity() {
        return block.purity().isPresent() ? need(Property.PURITY) : Optional.empty();
    }

    private Optional<Figure> purity() {
        if (findsOut(Property.PURITY)) {
            return new Unknowns(bench, block).purity();
        }
        return block.purity().map(p -> bench.constituents.typed(p.value(), symbol("w")));
    }

    private Optional<Figure> molarMass() {
        if (findsOut(Property.MOLAR_MASS)) {
            return new Unknowns(bench, block).molarMass();
        }
        Optional<Matter> matter = bench.matter(block);
        if (matter.isEmpty()) {
            return Optional.empty();
        }
        List<String> unweighed = bench.constituents.unweighed(matter.get().formula());
        if (!unweighed.isEmpty()) {
            bench.note(new ResolveFinding.NoAtomicWeight(unweighed, matter.get().formula().unicode(), block.block().nameSpan()));
            return Optional.empty();
        }
        return Optional.of(bench.constituents.molarMass(matter.get().formula()));
    }

    /** What the pot must have of this block: as typed, for another, or in excess over it. */
    private Optional<Figure> needed() {
        if (isWeighedByMoles()) {
            Typed typed = stated(Measured.MOLES).orElseThrow();
            return Optional.of(Kit.asTyped(Figure.given(symbol("n"), typed.unit(), typed.si(), new Origin.Author()), typed));
        }
        if (block.rule() instanceof AmountRule.ExcessOver over) {
            return new Reacting(bench).neededOver(block, over, symbol("n"));
        }
        return new Reacting(bench).neededFor(block, (AmountRule.For) block.rule(), symbol("n"));
    }

    private void missing() {
        bench.note(new ResolveFinding.MissingQuantity(block.name(), block.kind().word(), block.is(Kind.SOLID) ? WAYS_SOLID : WAYS_FLUID,
                block.block().nameSpan()));
    }

    // --- mass

    private Optional<Figure> mass() {
        if (block.is(Kind.SOLUTION)) {
            return need(Property.VOLUME).flatMap(v -> new Strengths(bench, block).knownDensity()
                    .map(d -> product("m", Dimension.MASS, 1, v, 1, d, 1)));
        }
        if (findsOut(Property.MASS)) {
            return new Unknowns(bench, block).mass();
        }
        Optional<Typed> typed = stated(Measured.MASS);
        if (typed.isPresent()) {
            return Optional.of(given("m", typed.get(), Dimension.MASS));
        }
        if (block.is(Kind.LIQUID) && measuredOut(block) == Property.VOLUME && (derived() || stated(Measured.VOLUME).isPresent())) {
            return both(need(Property.VOLUME), need(Property.DENSITY)).map(p -> product("m", Dimension.MASS, 1, p.first(), 1, p.second(), 1));
        }
        if (comesFromReaction() || stated(Measured.MOLES).isPresent() && !derived() || stated(Measured.VOLUME).isPresent()) {
            return both(need(Property.MOLES), need(Property.MOLAR_MASS)).map(p -> massOf(p.first(), p.second()));
        }
        if (derived()) {
            return both(needed(), need(Property.MOLAR_MASS)).map(p -> massOf(p.first(), p.second())).map(this::weighed);
        }
        missing();
        return Optional.empty();
    }

    private Figure massOf(Figure moles, Figure molarMass) {
        List<Power> powers = new ArrayList<>(List.of(new Power(moles, 1), new Power(molarMass, 1)));
        statedPurity().ifPresent(w -> powers.add(new Power(w, -1)));
        return worked("m", Dimension.MASS, new Step.Product(1, powers));
    }

    /** A wanted mass as it will be weighed: a ribbon is cut to a length, and what the balance then shows is read. */
    private Figure weighed(Figure wanted) {
        Optional<ApparatusItem> balance = Kit.measuring(bench.instrument(block), Dimension.MASS);
        Instruments instruments = new Instruments(bench, block);
        if (block.ribbon().isPresent()) {
            Figure length = need(Property.LENGTH).orElseThrow();
            Figure linear = linearDensity();
            Figure cut = product("m", Dimension.MASS, 1, linear, 1, length, 1);
            return balance.isPresent() ? instruments.read(cut, balance.get(), symbol("m")) : cut;
        }
        return instruments.set(wanted, balance, symbol("m"));
    }

    private Figure linearDensity() {
        Typed typed = block.ribbon().orElseThrow().linear().value();
        return bench.constituents.typed(typed, symbol("m/l"));
    }

    private Optional<Figure> length() {
        Optional<Figure> wanted = derived() ? both(needed(), need(Property.MOLAR_MASS)).map(p -> massOf(p.first(), p.second())) : need(Property.MASS);
        Typed step = block.ribbon().orElseThrow().step().value();
        return wanted.map(m -> {
            Unit unit = step.unit();
            Figure exact = Figure.of(symbol("l"), unit, new Step.Product(1, List.of(new Power(m, 1), new Power(linearDensity(), -1))));
            return new Instruments(bench, block).cut(exact, step, symbol("l"));
        });
    }

    // --- volume

    private Optional<Figure> volume() {
        Optional<Typed> typed = stated(Measured.VOLUME);
        if (typed.isPresent()) {
            return Optional.of(given("V", typed.get(), Dimension.VOLUME));
        }
        switch (block.kind()) {
            case SOLID:
                return block.density().isEmpty() ? Optional.empty() : both(need(Property.MASS), need(Property.DENSITY))
                        .map(p -> product("V", Dimension.VOLUME, 1, p.first(), 1, p.second(), -1));
            case GAS:
                return new Gases(bench, block).inVessel();
            case LIQUID:
                if (derived()) {
                    return both(needed(), need(Property.MOLAR_MASS)).flatMap(p -> need(Property.DENSITY).map(d -> {
                        List<Power> powers = new ArrayList<>(List.of(new Power(p.first(), 1), new Power(p.second(), 1), new Power(d, -1)));
                        statedPurity().ifPresent(w -> powers.add(new Power(w, -1)));
                        return measured(worked("V", Dimension.VOLUME, new Step.Product(1, powers)));
                    }));
                }
                return both(need(Property.MASS), need(Property.DENSITY)).map(p -> product("V", Dimension.VOLUME, 1, p.first(), 1, p.second(), -1));
            default:
                return solutionVolume();
        }
    }

    private Optional<Figure> solutionVolume() {
        if (derived()) {
            return both(needed(), need(Property.STRENGTH)).map(p -> measured(product("V", Dimension.VOLUME, 1, p.first(), 1, p.second(), -1)));
        }
        if (stated(Measured.MOLES).isPresent() || comesFromReaction()) {
            return both(need(Property.MOLES), need(Property.STRENGTH)).map(p -> product("V", Dimension.VOLUME, 1, p.first(), 1, p.second(), -1));
        }
        if (block.madeUpTo().isPresent()) {
            Typed flask = block.madeUpTo().get().value();
            return Optional.of(given("V", flask, Dimension.VOLUME));
        }
        missing();
        return Optional.empty();
    }

    private Figure measured(Figure wanted) {
        return new Instruments(bench, block).set(wanted, Kit.measuring(bench.instrument(block), Dimension.VOLUME), symbol("V"));
    }

    // --- products and totals

    /** The mass of a product, with or without the yield: of one whose mass is typed, what the amounts that are there come to. */
    private Optional<Figure> product(boolean withYield) {
        Optional<Figure> moles = !withYield ? new Reacting(bench).atMost(block, symbol("n"))
                : comesFromReaction() ? need(Property.MOLES) : new Reacting(bench).made(block, symbol("n"));
        return both(moles, need(Property.MOLAR_MASS)).map(p -> massOf(p.first(), p.second()));
    }

    private Optional<Figure> classTotal(Property measured) {
        if (isDealt(measured)) {
            return dealtTotal(measured);
        }
        return need(measured).map(each -> {
            List<Power> powers = new ArrayList<>(List.of(new Power(each, 1), new Power(count("groups", bench.setting.groups()), 1)));
            if (bench.setting.runs() > 1) {
                powers.add(new Power(count("runs", bench.setting.runs()), 1));
            }
            if (block.portions() > 1) {
                powers.add(new Power(count("portions", block.portions()), 1));
            }
            return total(each, withSpare(each, powers, measured));
        });
    }

    /** What is measured out, what rinses and fills burettes and pipettes, and the spare over both. */
    private List<Power> withSpare(Figure each, List<Power> measuredOut, Property measured) {
        Power spare = new Power(count("spare", 1 + bench.setting.spare()), 1);
        RinsesAndFills fillings = new RinsesAndFills(bench);
        Optional<RinseAndFill> filling = measured == Property.VOLUME && !fillings.ofWhatItIsMadeFrom(block) ? fillings.of(block) : Optional.empty();
        List<Power> powers = new ArrayList<>(measuredOut);
        if (filling.isPresent()) {
            Figure all = Figure.of(Symbol.words("all groups"), each.unit(), new Step.Product(1, measuredOut));
            Figure out = each.decimals().isPresent() ? all.shownTo(each.decimals().getAsInt()) : all;
            Figure both = Figure.of(Symbol.alone(""), each.unit(), new Step.Sum(List.of(new Step.Term(1, out), new Step.Term(1, filling.get().total()))));
            powers = new ArrayList<>(List.of(new Power(both, 1)));
        }
        powers.add(spare);
        return powers;
    }

    /** What the whole class takes. A total that falls short by the digits that are not shown would be too little for the last group. */
    private Figure total(Figure each, List<Power> powers) {
        Figure total = Figure.of(Symbol.ofName("total", block.name()), each.unit(), new Step.Product(1, powers));
        if (each.decimals().isEmpty()) {
            return total;
        }
        int decimals = Math.max(0, each.decimals().getAsInt());
        Rounding up = new Rounding(Rounding.Direction.UP, each.unit().factor() / Math.pow(10, decimals));
        Figure exact = total.shownTo(isSame(up.apply(total.value()), total.value()) ? decimals : decimals + 1);
        return Figure.of(Symbol.ofName("total", block.name()), each.unit(), new Step.Set(exact, up, Reason.ENOUGH)).shownTo(decimals);
    }

    private static boolean isSame(double one, double other) {
        return Math.abs(one - other) <= SAME * Math.abs(other);
    }

    /** Whether some groups measure out another amount than others. */
    private boolean isDealt(Property measured) {
        List<Optional<Figure>> all = bench.shares().stream().map(s -> ofShare(s, measured)).toList();
        return all.size() > 1 && all.stream().flatMap(Optional::stream).mapToDouble(Figure::value).distinct().count() > 1;
    }

    private Optional<Figure> ofShare(Bench.Share share, Property measured) {
        return share.bench().procedure.quantity(block.name()).flatMap(q -> share.bench().figure(q, measured));
    }

    /** What is dealt out, each amount as often as it is, with spare. */
    private Optional<Figure> dealtTotal(Property measured) {
        List<Step.Term> terms = new ArrayList<>();
        for (Bench.Share share : bench.shares()) {
            Optional<Figure> each = ofShare(share, measured);
            if (each.isEmpty()) {
                return Optional.empty();
            }
            terms.add(new Step.Term((double) share.times() * block.portions(), each.get()));
        }
        Figure first = terms.get(0).figure();
        Figure sum = Figure.of(Symbol.words("all groups"), first.unit(), new Step.Sum(terms));
        return Optional.of(total(first, withSpare(first, List.of(new Power(sum, 1)), measured)));
    }

    private static Figure count(String what, double number) {
        return Figure.given(Symbol.words(what), Unit.ONE, number, new Origin.Counted());
    }

    // --- helpers

    private Figure product(String letter, Dimension dimension, double coefficient, Figure first, int a, Figure second, int b) {
        return worked(letter, dimension, new Step.Product(coefficient, List.of(new Power(first, a), new Power(second, b))));
    }

    private Figure worked(String letter, Dimension dimension, Step step) {
        Figure figure = Figure.of(symbol(letter), si(dimension), step);
        return figure.in(displayUnit(dimension, figure.value()));
    }

    private static Unit si(Dimension dimension) {
        return new Unit("", dimension, 1);
    }

    /** The unit of the instrument or of what the author typed, where it has this dimension; else the usual one. */
    private Unit displayUnit(Dimension dimension, double value) {
        Optional<Unit> instrument = Kit.unit(Kit.measuring(bench.instrument(block), dimension));
        Optional<Unit> typed = block.rule() instanceof AmountRule.Stated s && s.typed().dimension().equals(dimension) ? Optional.of(s.typed().unit())
                : block.rule() instanceof AmountRule.Wanted w && w.typed().dimension().equals(dimension) ? Optional.of(w.typed().unit()) : Optional.empty();
        return instrument.or(() -> typed).orElseGet(() -> Kit.usual(dimension, value));
    }

    /** Two figures, if both are there. */
    record Both(Figure first, Figure second) {
    }

    static Optional<Both> both(Optional<Figure> first, Optional<Figure> second) {
        return first.flatMap(a -> second.map(b -> new Both(a, b)));
    }
}
