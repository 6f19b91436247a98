package tarewright.procedure.prepare;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.declare.StockBlock.Price;
import tarewright.quantity.Rounding;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/**
 * What several sections need together, less what stands on the shelf.
 *
 * @param lines each thing once for each way of measuring it; by mass and by volume together where the bottle's density is told
 * @param things of the apparatus, if the sections follow each other
 */
public record Order(List<Line> lines, List<Thing> things) {
    private static final double SAME = 1e-9;

    public Order {
        lines = List.copyOf(lines);
        things = List.copyOf(things);
    }

    /**
     * One procedure of one section.
     *
     * @param section its name, may be empty
     * @param draws what it takes off the shelf
     */
    public record Part(String section, Supplies supplies, List<Draw> draws) {
        public Part {
            draws = List.copyOf(draws);
        }

        public String procedure() {
            return supplies.procedure().name();
        }

        /** The day of the class, where it is told. */
        public Optional<LocalDate> day() {
            return Optional.of(supplies.procedure().setting().occasion().date()).filter(d -> !d.isEmpty()).map(LocalDate::parse);
        }

        /** Equal for the procedures that one section does in one lesson, at the same time. */
        List<Object> lesson() {
            return List.of(section, supplies.procedure().setting().occasion().date());
        }
    }

    /**
     * One thing to have on the shelf.
     *
     * @param from the first part that takes it, and what that takes
     * @param needed of all parts
     * @param shares of each procedure, over all its sections
     * @param onHand nothing where it is not told
     * @param packs to buy: none where there is no pack that is measured in the same way
     */
    public record Line(Part part, Draw from, Figure needed, Map<String, Figure> shares, Optional<Figure> onHand, Optional<Packs> packs) {
        public Line {
            shares = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(shares));
        }

        /** What is counted in drops, in whole millilitres upward: it is sold by volume. A drop is 0.05 mL, as the unit says. */
        public Optional<Figure> ofDrops() {
            Unit millilitre = Units.symbol("mL").orElseThrow();
            return needed.unit().symbol().startsWith("drop") ? Optional.of(Figure.of(needed.symbol(), millilitre,
                    new Step.Set(needed, new Rounding(Rounding.Direction.UP, millilitre.factor()), Reason.ENOUGH)).shownTo(0)) : Optional.empty();
        }

        /** In SI units: what is needed beyond what is on hand. */
        public double lacking() {
            return Math.max(0, needed.value() - onHand.map(Figure::value).orElse(0.0));
        }
    }

    /** @param count nothing or more @param price of one, where it is told */
    public record Packs(long count, Typed pack, Optional<Price> price) {
        /** Of all of them. */
        public Optional<BigDecimal> cost() {
            return price.map(p -> p.amount().multiply(BigDecimal.valueOf(count)));
        }
    }

    /**
     * @param usedUp whether it is used up, so that each section needs its own
     * @param kept whether a class has it until its next lesson, so that several classes have theirs at once
     */
    public record Thing(String words, boolean usedUp, boolean kept, int count) {
    }

    public static Order of(List<Part> parts) {
        Map<String, List<Taken>> byKey = new LinkedHashMap<>();
        parts.forEach(p -> p.draws().stream().map(Packed::of).forEach(d -> byKey.computeIfAbsent(d.key(), k -> new ArrayList<>()).add(new Taken(p, d))));
        return new Order(byKey.values().stream().map(Order::line).toList(), Things.of(parts));
    }

    /** Of all packs to buy whose price is told, by currency. */
    public Map<String, BigDecimal> costs() {
        Map<String, BigDecimal> sums = new LinkedHashMap<>();
        lines.forEach(l -> l.packs().ifPresent(p -> p.cost().ifPresent(c -> sums.merge(p.price().orElseThrow().currency(), c, BigDecimal::add))));
        return sums;
    }

    private record Taken(Part part, Draw draw) {
    }

    private static Line line(List<Taken> all) {
        Taken first = all.get(0);
        Map<String, List<Figure>> amounts = new LinkedHashMap<>();
        all.forEach(t -> amounts.computeIfAbsent(t.part.procedure(), k -> new ArrayList<>()).add(t.draw.amount()));
        Map<String, Figure> shares = new LinkedHashMap<>();
        amounts.forEach((name, figures) -> shares.put(name, Draw.sum(figures)));
        Figure needed = Draw.sum(all.stream().map(t -> t.draw.amount()).toList());
        Line without = new Line(first.part, first.draw, needed, shares, first.draw.onHand(), Optional.empty());
        Optional<Packs> packs = first.draw.stock().flatMap(s -> packs(s, needed, without.lacking()));
        return new Line(first.part, first.draw, needed, shares, first.draw.onHand(), packs);
    }

    private static Optional<Packs> packs(StockBlock stock, Figure needed, double lacking) {
        return stock.pack().map(p -> p.value()).filter(p -> p.dimension().equals(needed.dimension()))
                .map(p -> new Packs((long) Math.ceil(lacking / p.si() - SAME), p, stock.price().map(x -> x.value())));
    }
}
