package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.CommercialStrength;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.quantity.Digits;
import tarewright.safety.Classification;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Part;
import tarewright.safety.Rulebook;
import tarewright.safety.Verdict;

/**
 * A bottle of the shelf: what solutions of a procedure are made from, where it is not a quantity of the procedure itself, and its stock blocks.
 *
 * @param name as the author calls it
 * @param makes the blocks that are made from it; none of a stock block that nothing is made from
 * @param strength at which it is classified, as printed; empty where it is no solution or none is known
 * @param verdict at the strength of its stock block; without one, at that at which it is sold, where several are, at the strongest that its name fits
 */
public record Stock(String name, List<ResolvedQuantity> makes, Optional<String> strength, Verdict verdict) {
    private static final int FIGURES = 3;
    private static final double PER_CENT = 100;
    /** mol/m³ in mol/L. */
    private static final double PER_LITRE = 1000;

    public Stock {
        makes = List.copyOf(makes);
    }

    /** Of a whole procedure, in its order, with its own stock blocks alone. */
    public static List<Stock> of(Resolved procedure, Rulebook rules) {
        return of(procedure, List.of(), rules);
    }

    /** @param shelf stock blocks of a term: they go before those of the same name in the procedure; what is not used is left out */
    public static List<Stock> of(Resolved procedure, List<StockBlock> shelf, Rulebook rules) {
        Map<String, List<ResolvedQuantity>> makes = new LinkedHashMap<>();
        for (ResolvedQuantity quantity : procedure.quantities()) {
            QuantityBlock block = quantity.block();
            block.madeFrom().filter(n -> procedure.procedure().quantity(n.value()).isEmpty())
                    .ifPresent(n -> makes.computeIfAbsent(n.value(), k -> new ArrayList<>()).add(quantity));
        }
        procedure.procedure().stocks().forEach(s -> makes.computeIfAbsent(s.name(), k -> new ArrayList<>()));
        Classification classification = new Classification(rules);
        return makes.entrySet().stream().map(e -> block(procedure, shelf, e.getKey())
                .map(b -> declared(b, e.getValue(), classification)).orElseGet(() -> stock(procedure, e.getKey(), e.getValue(), classification))).toList();
    }

    private static Optional<StockBlock> block(Resolved procedure, List<StockBlock> shelf, String name) {
        return shelf.stream().filter(s -> s.name().equals(name)).findFirst().or(() -> procedure.procedure().stock(name))
                .filter(s -> s.matter().isPresent() || s.mixture().isPresent());
    }

    /** At the strength that its block says; where it says none, as if undiluted. A pure substance counts as wholly pure whatever its purity. */
    private static Stock declared(StockBlock block, List<ResolvedQuantity> makes, Classification classification) {
        OptionalDouble density = block.density().map(d -> OptionalDouble.of(d.value().si() / PER_LITRE)).orElse(OptionalDouble.empty());
        Optional<State> state = block.matter().flatMap(m -> m.value().substance()).or(() -> block.mixture().map(At::value)).map(Substance::state);
        Form form = block.dissolved() || state.isEmpty() ? Form.SOLUTION : Form.valueOf(state.get() == State.AQUEOUS ? "SOLUTION" : state.get().name());
        Content content = !block.dissolved() ? Content.pure() : block.matter().isEmpty() || block.strength().isEmpty() ? Content.unstated()
                : Contents.content(block.strength().get().value(), block.matter().get().value(), density);
        Part part = block.matter().map(m -> Contents.part(m.value(), content)).orElseGet(() -> Part.of(block.mixture().orElseThrow().value().name(), content));
        return new Stock(block.name(), makes, block.strength().map(s -> s.at().text()),
                classification.of(tarewright.safety.Matter.of(block.name(), form, List.of(part))));
    }

    private static Stock stock(Resolved procedure, String name, List<ResolvedQuantity> makes, Classification classification) {
        Optional<Substance> itself = procedure.tables().substances().named(name).filter(s -> s.state() != State.AQUEOUS);
        if (itself.isPresent()) {
            Form form = itself.get().state() == State.SOLID ? Form.SOLID : itself.get().state() == State.GAS ? Form.GAS : Form.LIQUID;
            Part part = new Part(itself.get().name(), itself.get().formula().map(f -> f.plain()), Content.pure());
            return new Stock(name, makes, Optional.empty(), classification.of(tarewright.safety.Matter.of(name, form, List.of(part))));
        }
        Optional<Matter> solute = makes.get(0).matter();
        Optional<CommercialStrength> sold = solute.flatMap(m -> sold(procedure, name, m));
        Content content = sold.map(Stock::content).orElseGet(Content::unstated);
        Part part = solute.map(m -> Contents.part(m, content)).orElseGet(() -> Part.of(name, Content.unstated()));
        return new Stock(name, makes, sold.map(Stock::words), classification.of(tarewright.safety.Matter.of(name, Form.SOLUTION, List.of(part))));
    }

    private static Optional<CommercialStrength> sold(Resolved procedure, String name, Matter solute) {
        List<CommercialStrength> all = procedure.tables().strengthsOf(solute.formula());
        List<String> words = List.of(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"));
        List<CommercialStrength> named = all.stream()
                .filter(s -> List.of(s.name().toLowerCase(Locale.ROOT).split("[^\\p{L}]+")).containsAll(words)).toList();
        return (named.isEmpty() ? all : named).stream().max(Comparator.comparingDouble(CommercialStrength::concentration));
    }

    private static String words(CommercialStrength sold) {
        boolean share = sold.basis() != CommercialStrength.Basis.VOLUMES_OF_OXYGEN;
        return Digits.significant(sold.strength(), FIGURES) + (share ? " % " : " ") + sold.basis().symbol();
    }

    private static Content content(CommercialStrength sold) {
        OptionalDouble density = sold.density().isEmpty() ? sold.density()
                : OptionalDouble.of(sold.density().getAsDouble() / PER_LITRE);
        return switch (sold.basis()) {
            case MASS_PERCENT -> Content.percent(sold.strength());
            case MASS_BY_VOLUME_PERCENT -> new Content.MassPerVolume(sold.strength() / PER_CENT, 0, density, Optional.empty());
            case VOLUME_PERCENT, VOLUMES_OF_OXYGEN -> new Content.Molar(sold.concentration() / PER_LITRE, 0, density);
        };
    }
}
