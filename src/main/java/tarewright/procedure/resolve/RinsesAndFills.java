package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Step.Term;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.ApparatusItem.Share;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.tables.Practice;

/**
 * Works out {@link RinseAndFill}. Each instrument is rinsed with what goes into it. A burette is filled to above its zero, serves as many deliveries as its scale holds,
 * and is then filled up again; at the end it holds what the last filling leaves, and what lies below its last mark. Common practice, no source.
 */
final class RinsesAndFills {
    private static final double SAME = 1e-9;
    private static final Unit MILLILITRE = Units.symbol("mL").orElseThrow();
    private static final String BURETTE = "buret";
    private static final String PIPETTE = "pipet";
    /** Filled by squeezing, for drops: not rinsed. */
    private static final Pattern DROPPING = Pattern.compile("drop|pasteur|teat|gotero|cuentagotas");
    private static final Pattern SIZE = Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,3})?)[\\s\\u00a0\\u202f]?(?:mL|ml|cm3|cm³)");

    private final Bench bench;
    private final Practice practice;

    RinsesAndFills(Bench bench) {
        this.bench = bench;
        this.practice = bench.tables.practice();
    }

    /** What is run out of which bottle by which instrument. */
    private record Outflow(QuantityBlock block, QuantityBlock bottle, ApparatusItem item, Property property) {
        boolean alike(Outflow other) {
            return bottle == other.bottle && item.equals(other.item);
        }
    }

    /** Counted with the first of the blocks that take from one bottle with one instrument; empty for the others, and for what a group makes up itself. */
    Optional<RinseAndFill> of(QuantityBlock block) {
        Optional<Outflow> own = outflow(block);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        List<Outflow> all = bench.procedure.quantities().stream().flatMap(b -> outflow(b).stream()).filter(own.get()::alike).toList();
        return all.get(0).block() == block ? filling(all) : Optional.empty();
    }

    // --- which instrument takes what out of which bottle

    private Optional<Outflow> outflow(QuantityBlock block) {
        Optional<ApparatusItem> item = bench.instrument(block).filter(i -> isBurette(i) || isPipette(i));
        boolean liquid = block.is(Kind.SOLUTION) || block.is(Kind.LIQUID);
        boolean made = block.rule() instanceof AmountRule.MadeBy || bench.potAsProduct(block).isPresent();
        if (item.isEmpty() || !liquid || made) {
            return Optional.empty();
        }
        Optional<QuantityBlock> from = ownFrom(block);
        QuantityBlock bottle = bottle(from.orElse(block));
        if (ownFrom(bottle).isPresent() || from.isEmpty() && Amounts.measuredOut(block) != Property.VOLUME) {
            return Optional.empty();
        }
        return Optional.of(new Outflow(block, bottle, item.get(), from.isPresent() ? Property.TAKEN : Property.VOLUME));
    }

    private QuantityBlock bottle(QuantityBlock block) {
        QuantityBlock at = block;
        for (int i = 0; i < bench.procedure.quantities().size(); i++) {
            Optional<QuantityBlock> from = at.portionOf().flatMap(p -> bench.procedure.quantity(p.value()));
            if (from.isEmpty()) {
                break;
            }
            at = from.get();
        }
        return at;
    }

    /** Whether its instrument measures out what it is made from, not what is made. */
    boolean ofWhatItIsMadeFrom(QuantityBlock block) {
        return ownFrom(block).isPresent();
    }

    /** What a group makes it up from, if the group does. */
    private Optional<QuantityBlock> ownFrom(QuantityBlock block) {
        return block.madeUpTo().isPresent() ? block.madeFrom().flatMap(n -> bench.procedure.quantity(n.value())).filter(b -> b != block) : Optional.empty();
    }

    static boolean isBurette(ApparatusItem item) {
        return item.words().toLowerCase(Locale.ROOT).contains(BURETTE);
    }

    static boolean isPipette(ApparatusItem item) {
        String words = item.words().toLowerCase(Locale.ROOT);
        return words.contains(PIPETTE) && !DROPPING.matcher(words).find();
    }

    // --- how much

    private Optional<RinseAndFill> filling(List<Outflow> all) {
        ApparatusItem item = all.get(0).item();
        List<Figure> amounts = all.stream().flatMap(o -> amounts(o).stream()).filter(f -> f.value() > 0 && f.dimension().equals(Dimension.VOLUME)).toList();
        if (amounts.isEmpty()) {
            return Optional.empty();
        }
        Figure least = amounts.stream().min(Comparator.comparingDouble(Figure::value)).orElseThrow();
        Figure most = amounts.stream().max(Comparator.comparingDouble(Figure::value)).orElseThrow();
        Figure holds = size(item, most);
        Figure rinse = shown(Figure.of(Symbol.words("one rinse"), holds.unit(), new Step.Product(practice.rinse(), List.of(new Power(holds, 1)))));
        long perGroup = (long) all.stream().mapToInt(o -> o.block().portions()).sum() * bench.setting.runs();
        List<RinseAndFill.Rest> rests = new ArrayList<>();
        List<Term> terms = new ArrayList<>();
        for (Bundle bundle : bundles(item, solutions(item), perGroup)) {
            RinseAndFill.Rest rest = isBurette(item) ? left(bundle, holds, least, most) : new RinseAndFill.Rest(bundle.count, 1, Optional.empty());
            rests.add(rest);
            rest.stays().ifPresent(s -> terms.add(new Term(bundle.count, s)));
        }
        terms.add(0, new Term((double) practice.rinses() * rests.stream().mapToLong(RinseAndFill.Rest::count).sum(), rinse));
        Figure total = shown(Figure.of(Symbol.words("rinsing and filling"), most.unit(), new Step.Sum(terms)));
        return Optional.of(new RinseAndFill(item, practice.rinses(), rinse, rests, total));
    }

    /** What is run out at a time, of every deal. */
    private List<Figure> amounts(Outflow outflow) {
        List<Bench> benches = bench.shares().isEmpty() ? List.of(bench) : bench.shares().stream().map(Bench.Share::bench).toList();
        return benches.stream().flatMap(b -> b.procedure.quantity(outflow.block.name()).flatMap(q -> b.figure(q, outflow.property)).stream()).toList();
    }

    /** Different bottles that go through the instrument. */
    private int solutions(ApparatusItem item) {
        Set<String> bottles = new LinkedHashSet<>();
        bench.procedure.quantities().stream().flatMap(b -> outflow(b).stream()).filter(o -> o.item.equals(item)).forEach(o -> bottles.add(o.bottle.name()));
        return Math.max(1, bottles.size());
    }

    /** What it holds: as the author says, else what it delivers, else the size in its words, else the usual burette or a pipette of just what is wanted. */
    private Figure size(ApparatusItem item, Figure wanted) {
        Optional<Typed> said = (isBurette(item) ? item.capacity() : item.delivers().or(item::capacity)).map(c -> c.value())
                .filter(t -> t.dimension().equals(Dimension.VOLUME) && t.si() > 0);
        Symbol symbol = Symbol.ofName("V", item.name());
        if (said.isPresent()) {
            return Kit.asTyped(Figure.given(symbol, said.get().unit(), said.get().si(), new Origin.Author()), said.get());
        }
        OptionalDouble inWords = inWords(item.words());
        boolean usual = inWords.isEmpty() && isBurette(item);
        double millilitres = usual ? practice.burette() / MILLILITRE.factor() : inWords.orElse(wanted.value() / MILLILITRE.factor());
        return shown(Figure.given(symbol, MILLILITRE, millilitres * MILLILITRE.factor(),
                usual ? new Origin.Table("common practice, no source", false) : new Origin.Author()));
    }

    private static OptionalDouble inWords(String words) {
        Matcher size = SIZE.matcher(words);
        double number = size.find() ? Double.parseDouble(size.group(1).replace(',', '.')) : 0;
        return number > 0 ? OptionalDouble.of(number) : OptionalDouble.empty();
    }

    /** Instruments that are used alike. @param deliveries of each */
    private record Bundle(long count, long deliveries) {
    }

    /**
     * Those that some groups share serve them one after another, and are rinsed and filled once for all; what several solutions go through, one after another, is rinsed
     * and filled by each group anew.
     */
    private List<Bundle> bundles(ApparatusItem item, int solutions, long perGroup) {
        Share share = item.share();
        int groups = bench.setting.groups();
        int together = share.perGroups() == Share.CLASS ? groups : Math.min(groups, Math.max(1, share.perGroups()));
        long each = (long) share.count() * (share.perGroups() == Share.STUDENT ? bench.setting.groupSize() : 1);
        if (each < solutions) {
            return split(groups, 1, perGroup);
        }
        long own = each / solutions;
        List<Bundle> bundles = new ArrayList<>(split(groups / together, own, together * perGroup));
        if (groups % together > 0) {
            bundles.addAll(split(1, own, groups % together * perGroup));
        }
        return bundles;
    }

    /** So many times the same: deliveries dealt evenly to the instruments, those without one left out. */
    private static List<Bundle> split(long times, long instruments, long deliveries) {
        long more = deliveries % instruments;
        long each = deliveries / instruments;
        List<Bundle> bundles = new ArrayList<>();
        if (more > 0) {
            bundles.add(new Bundle(times * more, each + 1));
        }
        if (each > 0) {
            bundles.add(new Bundle(times * (instruments - more), each));
        }
        return bundles;
    }

    /** What a burette holds after its last delivery; where deliveries differ, as if the last, smallest one came from a full burette: rather too much than too little. */
    private RinseAndFill.Rest left(Bundle bundle, Figure holds, Figure least, Figure most) {
        Figure full = Figure.of(Symbol.words("full burette"), holds.unit(), new Step.Product(1 + practice.beyond(), List.of(new Power(holds, 1))));
        boolean alike = most.value() - least.value() <= SAME * most.value();
        long perFilling = (long) Math.floor(holds.value() / most.value() * (1 + SAME));
        long fillings;
        double out;
        if (perFilling >= 1) {
            fillings = (bundle.deliveries + perFilling - 1) / perFilling;
            out = alike ? bundle.deliveries - perFilling * (fillings - 1) : 1;
        } else {
            long parts = (long) Math.ceil(most.value() / holds.value() * (1 - SAME));
            fillings = parts * bundle.deliveries;
            out = alike ? 1 - (parts - 1) * holds.value() / most.value() : 0;
        }
        List<Term> terms = new ArrayList<>(List.of(new Term(1, full)));
        if (out > SAME) {
            terms.add(new Term(-out, least));
        }
        return new RinseAndFill.Rest(bundle.count, fillings, Optional.of(shown(Figure.of(Symbol.words("left in the burette"), holds.unit(), new Step.Sum(terms)))));
    }

    /** With the digits that it has, and no more than three decimals. */
    private static Figure shown(Figure figure) {
        return figure.shownTo(Math.min(3, Kit.decimals(figure.value(), figure.unit())));
    }
}
