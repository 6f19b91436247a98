package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.Clash;
import tarewright.safety.Form;
import tarewright.safety.Incompatible;
import tarewright.safety.Matter;
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
 * @param pH of all of it together, estimated
 * @param advice on all of it together; the amount of neutraliser is for the whole class
 * @param clashes what must not meet in it
 */
public record WasteContainer(String into, boolean said, List<PotWaste> pots, List<Taken> bottles, Optional<Figure> volume, OptionalDouble pH, WasteAdvice advice,
        List<Clash> clashes) {
    private static final Pattern DRAIN = Pattern.compile("\\b(?:sink|drain|sewer|fregadero|desagüe|sumidero|pila|alcantarilla|alcantarillado)s?\\b",
            Pattern.UNICODE_CHARACTER_CLASS);
    private static final String NONE = "sink";

    public WasteContainer {
        pots = List.copyOf(pots);
        bottles = List.copyOf(bottles);
        clashes = List.copyOf(clashes);
    }

    /** What goes into one container, while it is collected. */
    private static final class Filling {
        private final List<PotWaste> pots = new ArrayList<>();
        private final List<Taken> bottles = new ArrayList<>();
        private boolean said;
    }

    /** All of a procedure: those of its reactions first, then those of what is left of bottles. */
    public static List<WasteContainer> of(Resolved procedure, OnTheBench bench, List<PotWaste> wastes, Rulebook rules) {
        Map<String, Filling> all = new LinkedHashMap<>();
        for (PotWaste waste : wastes) {
            Optional<String> authors = PotWaste.said(procedure, waste.left()).map(WasteBlock::into).filter(w -> !w.isBlank());
            Filling filling = all.computeIfAbsent(authors.orElseGet(() -> waste.advice().containers().stream().findFirst().orElse(NONE)),
                    k -> new Filling());
            filling.pots.add(waste);
            filling.said = authors.isPresent();
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
        Residue all = Residue.together(Stream.of(pots.stream().map(p -> p.ofTheClass(procedure)), runOut(procedure, bench, filling).stream(),
                filling.bottles.stream().map(t -> Residue.of(t.verdict().matter()))).flatMap(s -> s).toList());
        Optional<String> neutraliser = pots.stream().flatMap(p -> PotWaste.said(procedure, p.left()).stream())
                .flatMap(w -> w.neutraliseWith().stream()).map(m -> m.value().name()).findFirst();
        List<Matter> each = Stream.concat(pots.stream().map(p -> p.advice().left().matter()),
                filling.bottles.stream().map(t -> t.verdict().matter())).toList();
        return new WasteContainer(into, filling.said, pots, filling.bottles, all.volume(), all.pH(procedure.tables()),
                all.advice(into, neutraliser, procedure.tables(), rules),
                new Incompatible(rules).among(each, Set.of(), List.of()).stream().filter(c -> c.first() != c.second()).toList());
    }

    /** Whether the author says what it is to be neutralised with. */
    private boolean neutralised() {
        return pots.stream().anyMatch(p -> p.neutralisedByAuthor());
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
