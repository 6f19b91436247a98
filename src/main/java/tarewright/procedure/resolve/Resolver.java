package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tarewright.derivation.Accepted;
import tarewright.derivation.ByReadings;
import tarewright.derivation.Figure;
import tarewright.derivation.Symbol;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;
import tarewright.procedure.declare.AmountRule;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.DeclarationReader;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReactionBlock;
import tarewright.procedure.declare.ReadingBlock;
import tarewright.procedure.declare.TroubleFinding;
import tarewright.procedure.declare.LabelPaper;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.declare.ValueBlock;
import tarewright.procedure.expression.Evaluator;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.SourceFile;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Dimension;
import tarewright.quantity.Kinds;
import tarewright.quantity.Typed;
import tarewright.setting.DayValue;
import tarewright.setting.Overrides;
import tarewright.setting.Setting;
import tarewright.tables.ReferenceTables;
import tarewright.text.Span;
import tarewright.text.Spelling;

/** Works a procedure out for a setting. What could not be worked out is left out and was a finding. */
public final class Resolver {
    private final String name;
    private final Procedure procedure;
    private final Setting setting;
    private final ReferenceTables tables;
    private final Set<Finding> findings;
    private final Names names;
    private final Bench expected;
    private final Worksheet worksheet;

    private Resolver(String name, Procedure procedure, Setting setting, ReferenceTables tables, Set<Finding> findings,
            Map<String, List<Double>> supplied) {
        this.name = name;
        this.procedure = procedure;
        this.setting = setting;
        this.tables = tables;
        this.findings = findings;
        this.names = new Names(procedure, tables);
        List<Pot> pots = Pots.of(procedure, tables, findings::add);
        this.expected = Bench.asExpected(procedure, setting, tables, names, pots, findings::add);
        this.worksheet = new Worksheet(expected, supplied);
    }

    /**
     * Resolves a file that was read.
     *
     * @param name of the procedure, for file names and for other programs
     * @param source its syntax tree
     * @param overrides what goes before the procedure's own values
     * @param tables substances and their data; the names of the procedure's language are added to theirs
     */
    public static Found<Resolved> resolve(String name, SourceFile source, Overrides overrides, ReferenceTables tables) {
        return resolve(name, source, overrides, List.of(), Optional.empty(), tables);
    }

    /** The same with a term's bottles and label paper. @param shelf goes before the procedure's own of the same name */
    public static Found<Resolved> resolve(String name, SourceFile source, Overrides overrides, List<StockBlock> shelf, Optional<LabelPaper> labels, ReferenceTables packed) {
        Found<Procedure> inEnglish = DeclarationReader.read(source, name, overrides.onTheDay(), packed);
        ReferenceTables tables = packed.in(Settings.of(inEnglish.value().front(), overrides).language());
        Found<Procedure> own = tables == packed ? inEnglish : DeclarationReader.read(source, name, overrides.onTheDay(), tables);
        Found<Procedure> declared = new Found<>(own.value().withShelf(shelf).withLabels(labels), own.findings());
        Set<Finding> findings = new LinkedHashSet<>(declared.findings());
        Setting setting = Settings.of(declared.value().front(), overrides);
        List<Procedure> procedures = Versions.of(declared.value(), setting, tables, findings::add);
        List<Version> versions = new ArrayList<>();
        for (Procedure each : procedures) {
            String letter = Version.letter(versions.size());
            Set<Finding> its = versions.isEmpty() ? findings : new LinkedHashSet<>();
            versions.add(new Version(letter, whole(name, each, setting, tables, its)));
            // What is wrong in every version is told once.
            its.stream().filter(f -> !findings.contains(f)).forEach(f -> findings.add(new VersionFinding.In(letter, f)));
        }
        Resolved first = versions.get(0).resolved();
        List<Finding> inOrder = new ArrayList<>(findings);
        inOrder.sort(Comparator.comparingInt(f -> f.at().start()));
        Resolved all = versions.size() == 1 ? first : first.with(versions);
        List<DayValue> known = overrides.onTheDay().stream().filter(v -> !DeclarationReader.found(source, name, v)).toList();
        return new Found<>(known.size() == overrides.onTheDay().size() ? all
                : all.typedAs(resolve(name, source, overrides.withOnTheDay(known), shelf, labels, packed).value()), inOrder);
    }

    /** One version of the questions' numbers, with the hands of amounts that are dealt. */
    private static Resolved whole(String name, Procedure procedure, Setting setting, ReferenceTables tables, Set<Finding> findings) {
        List<Deal> deals = Deal.all(procedure, setting, findings::add);
        List<Resolver> resolvers = deals.stream().map(d -> new Resolver(name, d.procedure(), setting, tables, findings, Map.of())).toList();
        List<Bench.Share> shares = IntStream.range(0, deals.size()).mapToObj(i -> new Bench.Share(resolvers.get(i).expected, deals.get(i).times())).toList();
        resolvers.forEach(r -> r.expected.sharedBy(shares));
        List<Resolved> each = resolvers.stream().map(Resolver::resolve).toList();
        List<Graphs.Dealer> dealers = IntStream.range(0, deals.size()).mapToObj(i -> resolvers.get(i).dealer(deals.get(i).label())).toList();
        List<ResolvedGraph> graphs = new Graphs(dealers, findings::add).all();
        List<Hand> hands = new ArrayList<>();
        for (int i = 0; i < deals.size() && deals.size() > 1; i++) {
            Resolved alone = each.get(i).with(graphs, List.of());
            hands.add(new Hand(deals.get(i).label(), deals.get(i).groups(), deals.get(i).runs(), alone.amountsDealt(), alone));
        }
        return each.get(0).with(graphs, hands);
    }

    /**
     * The same procedure with readings that were supplied: what is worked from readings follows from them, what is expected stays.
     *
     * @param supplied for each hand, by reading, in coherent SI units, one value for each time that it is read
     */
    static Resolved withReadings(Resolved whole, List<Map<String, List<Double>>> supplied) {
        List<Hand> hands = whole.hands();
        List<Resolver> resolvers = IntStream.range(0, hands.size()).mapToObj(i -> new Resolver(whole.name(), hands.get(i).resolved().procedure(),
                whole.setting(), whole.tables(), new LinkedHashSet<>(), supplied.get(i))).toList();
        List<Bench.Share> shares = IntStream.range(0, hands.size()).mapToObj(i -> new Bench.Share(resolvers.get(i).expected, hands.get(i).times())).toList();
        resolvers.forEach(r -> r.expected.sharedBy(shares));
        List<Resolved> each = resolvers.stream().map(r -> r.resolve().with(whole.graphs(), List.of())).toList();
        List<Hand> dealt = whole.dealt().isEmpty() ? List.of() : IntStream.range(0, hands.size()).mapToObj(i -> new Hand(hands.get(i).label(),
                hands.get(i).groups(), hands.get(i).runs(), hands.get(i).dealt(), each.get(i))).toList();
        return each.get(0).with(whole.graphs(), dealt);
    }

    private Graphs.Dealer dealer(String label) {
        return new Graphs.Dealer(label, new Lookups(expected, worksheet), names, expected, worksheet);
    }

    private Resolved resolve() {
        checkNames();
        checkDoubles();
        List<ResolvedQuantity> quantities = procedure.quantities().stream().map(this::quantity).toList();
        Map<String, ResolvedReading> readings = worksheet.readings();
        Map<String, Figure> values = new LinkedHashMap<>();
        for (ValueBlock block : procedure.values()) {
            worksheet.value(block, expected).ifPresent(v -> values.put(block.name(), v));
        }
        List<ResolvedReaction> reactions = procedure.reactions().stream().map(this::reaction).toList();
        Bench byReadings = expected.byReadings(readings);
        List<ResolvedAnswer> answers = answers(new Lookups(byReadings, worksheet), readings);
        Map<Inline.Reference, Referent> referents = referents();
        dropEchoes();
        noteGaps(quantities, answers, referents);
        return new Resolved(name, procedure, setting, tables, quantities, reactions, List.copyOf(readings.values()), values, answers, referents,
                List.of(), List.of(), List.of());
    }

    /** A figure that waits for itself because its reaction or its substance could not be read is that mistake once more, not another one. */
    private void dropEchoes() {
        if (findings.stream().anyMatch(f -> f.severity() == Severity.ERROR && !(f instanceof ResolveFinding.Circular))) {
            findings.removeIf(f -> f instanceof ResolveFinding.Circular circular && circular.circle().size() == 1);
        }
    }

    /** Nothing may be missing from a page without a word: what is not there although no error says why is an error itself. */
    private void noteGaps(List<ResolvedQuantity> quantities, List<ResolvedAnswer> answers, Map<Inline.Reference, Referent> referents) {
        if (findings.stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
            return;
        }
        quantities.stream().filter(q -> q.amount().isEmpty() && Facets.of(expected, q.block()).contains(q.measuredOut()))
                .forEach(q -> findings.add(new ResolveFinding.NotWorkedOut(q.measuredOut().words() + " of " + q.name(), q.block().rule().at())));
        for (ResolvedAnswer answer : answers) {
            if (answer.block().sought() instanceof AnswerBlock.Worked worked && answer.value().isEmpty()) {
                findings.add(new ResolveFinding.NotWorkedOut(worked.formula().at().text(), worked.formula().at()));
            }
        }
        referents.forEach((reference, referent) -> {
            if (referent instanceof Referent.Nothing) {
                findings.add(new ResolveFinding.NotWorkedOut(reference.text(), reference.span()));
            }
        });
    }

    /** Two readings of one figure leave open which of them an answer is worked from; two answers in one item, which of them a number marks. */
    private void checkDoubles() {
        List<ReadingBlock> readings = procedure.readings().stream().filter(r -> r.of().isPresent()).toList();
        for (int i = 0; i < readings.size(); i++) {
            for (int k = 0; k < i; k++) {
                if (readings.get(i).of().get().value().equals(readings.get(k).of().get().value())) {
                    findings.add(new ResolveFinding.ReadTwice(readings.get(i).of().get().value(), readings.get(k).name(), readings.get(i).name(),
                            readings.get(i).of().get().at(), List.of(readings.get(k).of().get().at())));
                }
            }
        }
        Map<String, TypedBlock> first = new LinkedHashMap<>();
        Questions.numbers(procedure.source().body()).forEach((block, number) -> {
            TypedBlock earlier = first.putIfAbsent(number, block);
            if (earlier != null) {
                findings.add(new ResolveFinding.SecondAnswer(number, block.typeSpan(), List.of(earlier.typeSpan())));
            }
        });
    }

    // --- names of apparatus and blocks in fields

    private void checkNames() {
        List<String> apparatus = procedure.apparatus().stream().map(ApparatusItem::name).toList();
        List<String> blocks = procedure.quantities().stream().map(QuantityBlock::name).toList();
        for (QuantityBlock block : procedure.quantities()) {
            block.instrument().ifPresent(i -> apparatus(i, Amounts.measuredOut(block) == Property.MASS ? Dimension.MASS : Dimension.VOLUME));
            checkInstrument(block);
            block.vessel().ifPresent(i -> apparatus(i, Dimension.VOLUME));
            block.portionOf().ifPresent(i -> known(i, blocks, "block"));
        }
        procedure.readings().forEach(r -> r.instrument().ifPresent(i -> known(i, apparatus, "apparatus")));
        for (ReactionBlock reaction : procedure.reactions()) {
            reaction.limiting().ifPresent(l -> known(l, blocks, "block"));
        }
        List<String> wastable = new ArrayList<>(blocks);
        procedure.reactions().forEach(r -> wastable.add(r.name()));
        procedure.wastes().forEach(w -> w.of().ifPresent(o -> known(o, wastable, "block")));
    }

    /** A balance weighs, a cylinder measures volumes: the other way round, nothing could be rounded to it. */
    private void checkInstrument(QuantityBlock block) {
        Dimension wanted = Amounts.measuredOut(block) == Property.MASS ? Dimension.MASS : Dimension.VOLUME;
        block.instrument().flatMap(i -> procedure.apparatus(i.value())).flatMap(ApparatusItem::divisionTyped)
                .filter(d -> !d.dimension().equals(wanted) && !(block.is(QuantityBlock.Kind.LIQUID) && d.dimension().equals(Dimension.MASS)))
                .ifPresent(d -> findings.add(new ResolveFinding.WrongInstrument(block.instrument().get().value(), Kinds.name(d.dimension()),
                        Kinds.name(wanted), block.instrument().get().at())));
    }

    /** Of names that are not near in spelling, those whose words say it, and else all that measure the same, would do. */
    private void apparatus(At<String> written, Dimension wanted) {
        List<ApparatusItem> items = procedure.apparatus();
        if (items.stream().anyMatch(i -> i.name().equals(written.value()))) {
            return;
        }
        List<String> near = Spelling.near(written.value(), items.stream().map(ApparatusItem::name).toList());
        List<String> said = items.stream().filter(i -> i.words().toLowerCase(Locale.ROOT).contains(written.value().toLowerCase(Locale.ROOT)))
                .map(ApparatusItem::name).toList();
        List<String> alike = items.stream().filter(i -> Kit.measures(i).filter(wanted::equals).isPresent()).map(ApparatusItem::name).toList();
        List<String> suggestions = !near.isEmpty() ? near : !said.isEmpty() ? said : alike;
        findings.add(new ResolveFinding.UnknownName(written.value(), "apparatus", suggestions, written.at()));
    }

    private void known(At<String> written, List<String> known, String wanted) {
        if (!known.contains(written.value())) {
            findings.add(new ResolveFinding.UnknownName(written.value(), wanted, Spelling.near(written.value(), known), written.at()));
        }
    }

    // --- the parts of the result

    private ResolvedQuantity quantity(QuantityBlock block) {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        for (Property property : Facets.of(expected, block)) {
            expected.figure(block, property).ifPresent(f -> figures.put(property, f));
        }
        boolean made = block.rule() instanceof AmountRule.MadeBy || block.rule() instanceof AmountRule.Wanted
                || expected.potAsProduct(block).isPresent() && expected.potAsReactant(block).isEmpty();
        return new ResolvedQuantity(block, expected.matter(block), figures, Amounts.measuredOut(block), expected.instrument(block), !made,
                new RinsesAndFills(expected).of(block), Map.of());
    }

    private ResolvedReaction reaction(ReactionBlock block) {
        Reacting reacting = new Reacting(expected);
        List<ResolvedReaction.PotAccount> accounts = new ArrayList<>();
        for (Pot pot : expected.pots) {
            if (pot.reaction() != block) {
                continue;
            }
            List<Reacting.Supply> supplies = reacting.supplies(pot).orElse(List.of());
            List<ResolvedReaction.Reactant> reactants = supplies.stream().map(s -> new ResolvedReaction.Reactant(s.species(), s.coefficient(),
                    s.blocks().stream().map(QuantityBlock::name).toList(), s.moles(), s.moles().value() / s.coefficient())).toList();
            Map<String, Figure> left = new LinkedHashMap<>();
            for (Part part : pot.reactants()) {
                expected.figure(part.block(), Property.LEFT_OVER).ifPresent(f -> left.put(part.block().name(), f));
            }
            accounts.add(new ResolvedReaction.PotAccount(pot.key().batch(), reacting.limiting(pot)
                    .map(l -> l.blocks().stream().map(QuantityBlock::name).toList()).orElse(List.of()), expected.extent(pot), reactants, left));
        }
        Heats heats = new Heats(expected, block);
        return new ResolvedReaction(block, accounts, heats.enthalpy(Optional.empty()), heats.heat(Optional.empty()), heats.temperatureRise(Optional.empty()));
    }

    private List<ResolvedAnswer> answers(Lookups lookups, Map<String, ResolvedReading> readings) {
        List<Figure> read = readings.values().stream().flatMap(r -> Stream.concat(Stream.of(r.value()), r.each().stream())).toList();
        Map<TypedBlock, String> numbers = Questions.numbers(procedure.source().body());
        List<ResolvedAnswer> all = new ArrayList<>();
        for (AnswerBlock block : procedure.answers()) {
            Optional<Figure> value = Optional.empty();
            if (block.sought() instanceof AnswerBlock.Worked worked) {
                String number = numbers.getOrDefault(block.block(), "");
                var found = Evaluator.evaluate(worked.formula().value(), Symbol.words("answer " + number), block.unit(), lookups);
                findings.addAll(found.findings());
                value = found.value().map(f -> Answers.precise(f, block.precision(), new ByReadings(f, read).standardUncertainty()));
            }
            Optional<Accepted> accepted = value.map(v -> accepted(new ByReadings(v, read), block));
            List<Slip> slips = value.isPresent() ? Slips.of(value.get(), accepted.get(), expected.constituents) : List.of();
            all.add(new ResolvedAnswer(block, numbers.getOrDefault(block.block(), ""), value, accepted, slips));
        }
        return all;
    }

    /** What the author allows ({@code 2 %} of the value, or a quantity), else what the instruments allow. */
    private Accepted accepted(ByReadings result, AnswerBlock block) {
        Figure value = result.result();
        if (block.within().isEmpty()) {
            return Accepted.around(result);
        }
        Typed within = block.within().get().value();
        double half = within.value() * within.unit().factor();
        if (within.dimension().equals(Dimension.NONE) && !value.dimension().equals(Dimension.NONE)
                || within.unit().symbol().equals("%") && !value.unit().symbol().equals("%")) {
            return Accepted.within(result, half * Math.abs(value.value()));
        }
        if (!within.dimension().equals(value.dimension())) {
            findings.add(new ResolveFinding.WrongAllowance(block.within().get().at().text(), block.within().get().at()));
            return Accepted.around(result);
        }
        return Accepted.within(result, half);
    }

    // --- references in the text

    private Map<Inline.Reference, Referent> referents() {
        Map<Inline.Reference, Referent> all = new LinkedHashMap<>();
        for (Inline.Reference reference : procedure.source().references()) {
            all.put(reference, referent(names.meaning(reference.text()), reference.text(), inside(reference.span())));
        }
        return all;
    }

    private static Span inside(Span braces) {
        return braces.part(1, braces.end() - braces.start() - 1);
    }

    private Referent referent(Meaning meaning, String text, Span at) {
        Lookups lookups = new Lookups(expected, worksheet);
        if (meaning instanceof Meaning.Label label) {
            return new Referent.Bottle(label.block());
        }
        if (meaning instanceof Meaning.Equation equation) {
            return new Referent.Equation(equation.block());
        }
        if (meaning instanceof Meaning.FormulaText formula) {
            return new Referent.Chemical(formula.formula());
        }
        if (meaning instanceof Meaning.Section) {
            return new Referent.Plain(setting.section());
        }
        if (meaning instanceof Meaning.BadFormula bad) {
            findings.add(new TroubleFinding(bad.trouble().id(), at.part(bad.offset() + bad.trouble().from(), bad.offset() + bad.trouble().to()),
                    bad.trouble()));
            return new Referent.Nothing();
        }
        if (meaning instanceof Meaning.Blank blank) {
            if (blank.of() instanceof Meaning.ReadOff read) {
                return worksheet.reading(read.block()).<Referent>map(r -> new Referent.Blank(read.block().name(),
                        r.each().isEmpty() ? List.of(r.value()) : r.each())).orElseGet(Referent.Nothing::new);
            }
            String what = text.substring("blank ".length());
            return lookups.figure(blank.of(), what, at).<Referent>map(f -> new Referent.Blank(what, List.of(f))).orElseGet(Referent.Nothing::new);
        }
        if (meaning instanceof Meaning.Working working) {
            return lookups.figure(working.of(), text, at).<Referent>map(Referent.Working::new).orElseGet(Referent.Nothing::new);
        }
        boolean measured = meaning instanceof Meaning.Itself || meaning instanceof Meaning.Of of
                && (of.property() == Property.LENGTH || of.property() == Amounts.measuredOut(of.block()));
        return Referent.amount(lookups.figure(meaning, text, at), measured);
    }
}
