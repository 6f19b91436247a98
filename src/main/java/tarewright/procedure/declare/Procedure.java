package tarewright.procedure.declare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.procedure.syntax.SourceFile;

/** A whole procedure as declared; blocks in source order. */
public record Procedure(SourceFile source, Front front, List<ReactionBlock> reactions, List<QuantityBlock> quantities, List<ValueBlock> values,
        List<ReadingBlock> readings, List<ApparatusItem> apparatus, List<Notes.CautionBlock> cautions, List<AnswerBlock> answers,
        List<Notes.WasteBlock> wastes, List<Notes.TrialBlock> trials, List<Notes.SettledBlock> settled,
        List<StockBlock> stocks, List<GraphBlock> graphs) {
    public Procedure {
        reactions = List.copyOf(reactions);
        quantities = List.copyOf(quantities);
        values = List.copyOf(values);
        readings = List.copyOf(readings);
        apparatus = List.copyOf(apparatus);
        cautions = List.copyOf(cautions);
        answers = List.copyOf(answers);
        wastes = List.copyOf(wastes);
        trials = List.copyOf(trials);
        settled = List.copyOf(settled);
        stocks = List.copyOf(stocks);
        graphs = List.copyOf(graphs);
    }

    /** The same with other quantities. */
    public Procedure with(List<QuantityBlock> others) {
        return new Procedure(source, front, reactions, others, values, readings, apparatus, cautions, answers, wastes, trials, settled, stocks,
                graphs);
    }

    /** The same with other values. */
    public Procedure withValues(List<ValueBlock> others) {
        return new Procedure(source, front, reactions, quantities, others, readings, apparatus, cautions, answers, wastes, trials, settled, stocks,
                graphs);
    }

    /** The same with labels on the term's paper. */
    public Procedure withLabels(Optional<LabelPaper> paper) {
        return paper.map(front::withLabels).map(f -> new Procedure(source, f, reactions, quantities, values, readings, apparatus, cautions, answers, wastes, trials, settled,
                stocks, graphs)).orElse(this);
    }

    /** The same with what a term's shelf has of its substances: what something is made from by name, and what else brings one of them; the term's bottle goes before its own of that name. */
    public Procedure withShelf(List<StockBlock> shelf) {
        List<StockBlock> all = new ArrayList<>(shelf.stream().filter(s -> quantities.stream().anyMatch(q -> concerns(s, q))).toList());
        stocks.stream().filter(own -> all.stream().noneMatch(s -> s.name().equals(own.name()))).forEach(all::add);
        return new Procedure(source, front, reactions, quantities, values, readings, apparatus, cautions, answers, wastes, trials, settled, all, graphs);
    }

    private static boolean concerns(StockBlock bottle, QuantityBlock block) {
        boolean named = bottle.name().equals(block.name()) || block.madeFrom().filter(n -> n.value().equals(bottle.name())).isPresent();
        return named || bottle.matter().filter(b -> block.matter().filter(m -> m.value().formula().anhydrous().sameComposition(b.value().formula().anhydrous())).isPresent()).isPresent();
    }

    /** The members of a dilution series; none where no series has that name. */
    public List<QuantityBlock> series(String name) {
        return quantities.stream().filter(q -> q.member().filter(m -> m.series().equals(name)).isPresent()).toList();
    }

    public Optional<QuantityBlock> quantity(String name) {
        return quantities.stream().filter(q -> q.name().equals(name)).findFirst();
    }

    public Optional<ReactionBlock> reaction(String name) {
        return reactions.stream().filter(r -> r.name().equals(name)).findFirst();
    }

    public Optional<ValueBlock> value(String name) {
        return values.stream().filter(v -> v.name().equals(name)).findFirst();
    }

    public Optional<ReadingBlock> reading(String name) {
        return readings.stream().filter(r -> r.name().equals(name)).findFirst();
    }

    public Optional<StockBlock> stock(String name) {
        return stocks.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    public Optional<ApparatusItem> apparatus(String name) {
        return apparatus.stream().filter(a -> a.name().equals(name)).findFirst();
    }
}
