package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Clash;
import tarewright.safety.Classification;
import tarewright.safety.Form;
import tarewright.safety.Incompatible;
import tarewright.safety.Matter;
import tarewright.safety.PairRule;
import tarewright.safety.Rulebook;
import tarewright.safety.WasteAdvice;
import tarewright.safety.WasteRule;

/**
 * One vessel for the waste of the class, with all pots that the author sends there; where nothing is said, the one that the tables name.
 *
 * @param into the author's words, or the table's word for it
 * @param said whether they are the author's
 * @param pots what is left in them goes into it
 * @param bottles what is left of them goes into it as it is
 * @param volume of the liquids of the whole class, with what burettes and pipettes were rinsed with and what was left in them
 * @param pH of all of it together, estimated; of amounts that are dealt none, since what one group leaves may react with what another leaves
 * @param putIn the pH of the vessels that are emptied into it, estimated; empty where that of none is known
 * @param advice on all of it together, where amounts are dealt on the worst vessel; its hazards are those of the worst that is put in; the amount of neutraliser is for the
 *        whole class
 * @param clashes what must not meet in it
 */
public record WasteContainer(String into, boolean said, List<PotWaste> pots, List<Taken> bottles, Optional<Figure> volume, OptionalDouble pH, Optional<PutIn> putIn,
        WasteAdvice advice, List<Clash> clashes) {
    private static final Pattern DRAIN = Pattern.compile("\\b(?:sink|drain|sewer|fregadero|desagüe|sumidero|pila|alcantarilla|alcantarillado)s?\\b",
            Pattern.UNICODE_CHARACTER_CLASS);
    private static final Pattern NEUTRAL = Pattern.compile("\\bneutr(?:al|o|a|os|as|ale|ales)\\b", Pattern.UNICODE_CHARACTER_CLASS);
    private static final String NONE = "sink";

    public WasteContainer {
        pots = List.copyOf(pots);
        bottles = List.copyOf(bottles);
        clashes = List.copyOf(clashes);
    }

    /** From the sourest vessel to the most alkaline. */
    public record PutIn(double lowest, double highest) {
    }

    /** What goes into one container, while it is collected. */
    private static final class Filling {
        private final List<PotWaste> pots = new ArrayList<>();
        private final List<Residue> residues = new ArrayList<>();
        private final Set<Hand> hands = new LinkedHashSet<>();
        private final List<Taken> bottles = new ArrayList<>();
        private boolean said;
    }

    /** All of a procedure: those of its reactions first, then those of what is left of bottles. */
    public static List<WasteContainer> of(Resolved procedure, Function<Resolved, OnTheBench> benches, Rulebook rules) {
        Map<String, Filling> all = new LinkedHashMap<>();
        OnTheBench bench = benches.apply(procedure);
        List<PotWaste> wastes = new ArrayList<>();
        for (Hand hand : procedure.hands()) {
            Resolved its = hand.resolved();
            for (PotWaste waste : PotWaste.of(hand, its, its == procedure ? bench : benches.apply(its), rules)) {
                Optional<String> authors = PotWaste.said(its, waste.left()).map(WasteBlock::into).filter(w -> !w.isBlank());
                Filling filling = all.computeIfAbsent(authors.orElseGet(() -> waste.advice().containers().stream().findFirst().orElse(NONE)),
                        k -> new Filling());
                filling.pots.add(waste);
                filling.residues.add(waste.ofTheClass(its));
                filling.hands.add(hand);
                filling.said = authors.isPresent();
                wastes.add(waste);
            }
        }
        for (WasteBlock block : procedure.procedure().wastes()) {
            List<Taken> bottles = bottles(block, bench, wastes);
            if (!block.into().isBlank() && !bottles.isEmpty()) {
                Filling filling = all.computeIfAbsent(block.into(), k -> new Filling());
                filling.bottles.addAll(bottles);
                filling.said = true;
            }
        }
        return all.entrySet().stream().map(e -> of(procedure, bench, e.getKey(), e.getValue(), rules)).toList();
    }

    /** What burettes and pipettes were rinsed with and what was left in them goes where the pots go that they fill. */
    private static List<Residue> runOut(Resolved procedure, OnTheBench bench, Filling filling) {
        List<Residue> all = new ArrayList<>();
        for (ResolvedQuantity quantity : procedure.quantities()) {
            boolean here = filling.pots.stream().anyMatch(p -> PotWaste.blocks(p.left()).contains(quantity.name()));
            ResolvedQuantity bottle = procedure.quantity(Bottles.source(procedure, quantity.block()).name()).orElse(quantity);
            Optional<Taken> taken = bench.taken().stream().filter(t -> t.source() == bottle || t.isUsedIn(List.of(quantity.name()))).findFirst();
            if (here && taken.isPresent()) {
                quantity.filling().ifPresent(f -> all.add(Residue.of(bottle, f.total(), taken.get().verdict().matter().parts())));
            }
        }
        return all;
    }

    /** The bottle that a block names; where nothing reacts, all of them. */
    private static List<Taken> bottles(WasteBlock block, OnTheBench bench, List<PotWaste> wastes) {
        if (block.of().isEmpty()) {
            return wastes.isEmpty() ? bench.taken().stream().filter(t -> t.verdict().matter().form() != Form.GAS).toList() : List.of();
        }
        String name = block.of().get().value();
        return bench.taken().stream().filter(t -> t.source().name().equals(name) || t.isUsedIn(List.of(name))).toList();
    }

    private static WasteContainer of(Resolved procedure, OnTheBench bench, String into, Filling filling, Rulebook rules) {
        List<PotWaste> pots = filling.pots;
        Residue all = Residue.together(Stream.of(filling.residues.stream(), runOut(procedure, bench, filling).stream(),
                filling.bottles.stream().map(t -> Residue.of(t.verdict().matter()))).flatMap(s -> s).toList());
        Optional<String> neutraliser = pots.stream().flatMap(p -> PotWaste.said(procedure, p.left()).stream())
                .flatMap(w -> w.neutraliseWith().stream()).map(m -> m.value().name()).findFirst();
        List<Matter> each = Stream.concat(pots.stream().map(p -> p.advice().left().matter()),
                filling.bottles.stream().map(t -> t.verdict().matter())).toList();
        boolean dealt = filling.hands.size() > 1;
        OptionalDouble pH = dealt ? OptionalDouble.empty() : all.pH(procedure.tables());
        Optional<PutIn> putIn = putIn(pots);
        OptionalDouble worst = worst(pH, putIn);
        WasteAdvice advice = all.advice(into, neutraliser, dealt ? worst : pH, procedure.tables(), rules);
        Matter mixture = advice.left().matter();
        WasteAdvice asPutIn = advice.classified(new Classification(rules).ofWaste(worst.isPresent() ? mixture.atPH(worst.getAsDouble()) : mixture));
        return new WasteContainer(into, filling.said, pots, filling.bottles, all.volume(), pH, putIn, asPutIn,
                clashes(each, rules));
    }

    /** Each rule once: many groups may leave the same. */
    private static List<Clash> clashes(List<Matter> each, Rulebook rules) {
        Set<PairRule> told = new LinkedHashSet<>();
        return new Incompatible(rules).among(each, Set.of(), List.of()).stream().filter(c -> c.first() != c.second()).filter(c -> told.add(c.rule())).toList();
    }

    private static Optional<PutIn> putIn(List<PotWaste> pots) {
        DoubleSummaryStatistics all = pots.stream().flatMapToDouble(p -> p.pH().stream()).summaryStatistics();
        return all.getCount() == 0 ? Optional.empty() : Optional.of(new PutIn(all.getMin(), all.getMax()));
    }

    /** Of all that is known, what lies farthest from the middle of water. */
    private static OptionalDouble worst(OptionalDouble pH, Optional<PutIn> putIn) {
        return DoubleStream.concat(pH.stream(), putIn.stream().flatMapToDouble(p -> DoubleStream.of(p.lowest(), p.highest()))).boxed()
                .max(Comparator.comparingDouble(v -> Math.abs(v - Residue.NEUTRAL))).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** The worst pH that is known of it: of a vessel that is put in, or of all together. */
    public OptionalDouble worst() {
        return worst(pH, putIn);
    }

    /** Whether the author says what it is to be neutralised with. */
    public boolean neutralised() {
        return pots.stream().anyMatch(p -> p.neutralisedByAuthor());
    }

    /** Whether the author pours away what may be poured away once it is neutral, but not as it is. */
    public boolean onceNeutral() {
        return drain() && advice.sink() == WasteRule.Sink.NEVER && advice.reasons().stream().map(WasteAdvice.Reason::rule)
                .filter(r -> r.sink() == WasteRule.Sink.NEVER).allMatch(WasteRule::mendedByNeutralising);
    }

    /** Whether it stands in a jar before it goes down the sink, since it is neutralised in it. */
    public boolean heldBack() {
        return onceNeutral() || drain() && neutralised();
    }

    /** Whether its name says neutral, and what is put in is not, or nobody knows. */
    public boolean falselyNeutral() {
        boolean is = pots.stream().allMatch(p -> p.pH().isPresent()) && worst().stream().allMatch(v -> v >= WasteAdvice.STOP_FROM && v <= WasteAdvice.STOP_TO);
        return said && !is && NEUTRAL.matcher(into.toLowerCase(Locale.ROOT)).find();
    }

    /** Whether the author pours it away. */
    public boolean drain() {
        return isDrain(into);
    }

    /** Whether an author's words for where something goes mean the sink. */
    public static boolean isDrain(String into) {
        return DRAIN.matcher(into.toLowerCase(Locale.ROOT)).find();
    }

    /**
     * Whether the author pours away what the tables let nobody pour away as it is, without neutralising it where that would do. What a pinch for the
     * whole class would neutralise is left to the water that is poured after it; the sheet still says to test it.
     */
    public boolean wronglyPoured() {
        boolean pinch = advice.neutralising().filter(r -> r.isPinch(1)).isPresent();
        boolean neutralised = (neutralised() || pinch) && advice.reasons().stream()
                .filter(r -> r.rule().sink() == WasteRule.Sink.NEVER).allMatch(r -> r.rule().mendedByNeutralising());
        return drain() && said && advice.sink() == WasteRule.Sink.NEVER && !neutralised;
    }
}
