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
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.QuantityBlock;
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
 * What solutions of a procedure are made from, where it is not a block of the procedure itself.
 *
 * @param name as the author calls it
 * @param makes the blocks that are made from it
 * @param strength at which it is classified, as printed; empty where it is no solution or none is known
 * @param verdict at the strength at which it is sold; where several are, at the strongest that its name fits
 */
public record Stock(String name, List<ResolvedQuantity> makes, Optional<String> strength, Verdict verdict) {
    private static final int FIGURES = 3;
    private static final double PER_CENT = 100;
    /** mol/m³ in mol/L. */
    private static final double PER_LITRE = 1000;

    public Stock {
        makes = List.copyOf(makes);
    }

    /** Of a whole procedure, in its order. */
    public static List<Stock> of(Resolved procedure, Rulebook rules) {
        Map<String, List<ResolvedQuantity>> makes = new LinkedHashMap<>();
        for (ResolvedQuantity quantity : procedure.quantities()) {
            QuantityBlock block = quantity.block();
            block.madeFrom().filter(n -> procedure.procedure().quantity(n.value()).isEmpty())
                    .ifPresent(n -> makes.computeIfAbsent(n.value(), k -> new ArrayList<>()).add(quantity));
        }
        Classification classification = new Classification(rules);
        return makes.entrySet().stream().map(e -> stock(procedure, e.getKey(), e.getValue(), classification)).toList();
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
