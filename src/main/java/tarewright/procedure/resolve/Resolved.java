package tarewright.procedure.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.setting.Setting;
import tarewright.tables.ReferenceTables;

/**
 * A procedure with every figure worked out for one setting.
 *
 * @param name of the procedure: its file's name without the ending
 * @param values figures of value blocks by name
 * @param referents what each reference of the text stands for
 * @param graphs axes to plot on
 * @param dealt one for each distinct deal, where amounts are dealt out; else none
 * @param versions of the questions' numbers, the first of them this itself with one version; none where there is one
 */
public record Resolved(String name, Procedure procedure, Setting setting, ReferenceTables tables, List<ResolvedQuantity> quantities,
        List<ResolvedReaction> reactions, List<ResolvedReading> readings, Map<String, Figure> values, List<ResolvedAnswer> answers,
        Map<Inline.Reference, Referent> referents, List<ResolvedGraph> graphs, List<Hand> dealt, List<Version> versions) {
    public Resolved {
        quantities = List.copyOf(quantities);
        reactions = List.copyOf(reactions);
        readings = List.copyOf(readings);
        values = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(values));
        answers = List.copyOf(answers);
        graphs = List.copyOf(graphs);
        dealt = List.copyOf(dealt);
        versions = List.copyOf(versions);
        referents = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(referents));
    }

    /** One for each distinct deal, in the order of the first group that gets it; where nothing is dealt out, a single one of this itself. */
    public List<Hand> hands() {
        return dealt.isEmpty() ? List.of(new Hand("", Hand.upTo(setting.groups()), Hand.upTo(setting.runs()), Map.of(), this)) : dealt;
    }

    /** Each version of the questions' numbers, in their order; where there is one, this itself without a letter. */
    public List<Version> eachVersion() {
        return versions.isEmpty() ? List.of(new Version("", this)) : versions;
    }

    Resolved with(List<Version> others) {
        return new Resolved(name, procedure, setting, tables, quantities, reactions, readings, values, answers, referents, graphs, dealt, others);
    }

    /** With what the procedure types, where something else was found on the day. @param typed the procedure without what was found */
    Resolved typedAs(Resolved typed) {
        List<Hand> hands = dealt.stream().map(h -> new Hand(h.label(), h.groups(), h.runs(), h.dealt(), h.resolved().typedAs(typed))).toList();
        List<Version> others = versions.stream().map(v -> new Version(v.letter(), v.resolved().typedAs(typed))).toList();
        List<ResolvedQuantity> its = quantities.stream().map(q -> typed.quantity(q.name()).map(q::typedAs).orElse(q)).toList();
        return new Resolved(name, procedure, setting, tables, its, reactions, readings, values, answers, referents, graphs, hands, others);
    }

    /** By block name, what is dealt out here. */
    Map<String, Figure> amountsDealt() {
        Map<String, Figure> all = new java.util.LinkedHashMap<>();
        quantities.stream().filter(q -> q.block().dealt().isPresent()).forEach(q -> q.amount().ifPresent(a -> all.put(q.name(), a)));
        return all;
    }

    public Optional<ResolvedGraph> graph(TypedBlock block) {
        return graphs.stream().filter(g -> g.block().block() == block).findFirst();
    }

    Resolved with(List<ResolvedGraph> graphs, List<Hand> dealt) {
        return new Resolved(name, procedure, setting, tables, quantities, reactions, readings, values, answers, referents, graphs, dealt, List.of());
    }

    public Optional<ResolvedQuantity> quantity(String blockName) {
        return quantities.stream().filter(q -> q.name().equals(blockName)).findFirst();
    }

    public Optional<ResolvedReading> reading(String blockName) {
        return readings.stream().filter(r -> r.block().name().equals(blockName)).findFirst();
    }

    public Optional<ResolvedAnswer> answer(TypedBlock block) {
        return answers.stream().filter(a -> a.block().block() == block).findFirst();
    }

    public Optional<AnswerBlock> declared(TypedBlock block) {
        return procedure.answers().stream().filter(a -> a.block() == block).findFirst();
    }

    /** What a reference stands for. */
    public Referent referent(Inline.Reference reference) {
        return referents.getOrDefault(reference, new Referent.Nothing());
    }
}
