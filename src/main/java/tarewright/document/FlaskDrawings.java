package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.procedure.resolve.ResolvedReaction.Reactant;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;

/**
 * Flasks and beakers from the apparatus block, standing, with the level that is expected in them: for the key only. A level stands where the drawn vessel holds so
 * much, its capacity being at its mark.
 */
final class FlaskDrawings {
    private static final int WIDTH = 110;
    private static final int HEIGHT = 40;
    private static final double MIDDLE = 22;
    private static final double FLOOR = 38;
    private static final double MARK = 8;
    /** From the mark to the rim. */
    private static final double ABOVE = 6;
    private static final double WALL = 0.5;
    private static final double SAME = 1e-9;

    private final Draft draft;

    FlaskDrawings(Draft draft) {
        this.draft = draft;
    }

    /** How a vessel is drawn, told by the words that it is printed with; the special before the general. */
    enum Shape {
        VOLUMETRIC(List.of("volumetric flask", "matraz aforado")), CONICAL(List.of("conical flask", "erlenmeyer", "matraz")), BEAKER(List.of("beaker", "vaso de precipitados"));

        private final List<String> words;

        Shape(List<String> words) {
            this.words = words;
        }

        static Optional<Shape> of(ApparatusItem item) {
            String printed = item.words().toLowerCase(Locale.ROOT);
            return List.of(values()).stream().filter(s -> s.words.stream().anyMatch(printed::contains)).findFirst();
        }

        /** Half its width at a height over its floor, in millimetres; {@link #MARK} is its capacity. */
        double half(double up) {
            return switch (this) {
                case CONICAL -> Math.max(4, 15 - up * 11 / 24);
                case BEAKER -> 11;
                // A pear with a long neck: its ring is far up in the neck.
                case VOLUMETRIC -> up < 18 ? Math.max(2, 10.5 * Math.sqrt(Math.max(0, 1 - Math.pow((up - 7) / 11.5, 2)))) : 2;
            };
        }

        /** How high over its floor the mark of its capacity stands. */
        double mark() {
            return FLOOR - MARK - (this == CONICAL ? 8 : this == BEAKER ? 4 : 0);
        }

        /** The volume up to a height, as a share of that up to the mark; each thin slice is a disc. */
        double share(double up) {
            DoubleUnaryOperator volume = to -> {
                double sum = 0;
                for (int i = 0; i < 200; i++) {
                    double half = half(to * (i + 0.5) / 200);
                    sum += half * half * to / 200;
                }
                return sum;
            };
            return volume.applyAsDouble(up) / volume.applyAsDouble(mark());
        }

        /** The height at which it holds a share of its capacity, 0 to 1. */
        double level(double share) {
            double low = 0;
            double high = mark();
            for (int i = 0; i < 40; i++) {
                double middle = (low + high) / 2;
                if (share(middle) < share) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high;
        }
    }

    /** Each vessel once, with what is expected to stand in it. */
    List<Piece> pieces() {
        List<Piece> drawn = new ArrayList<>();
        for (ApparatusItem item : draft.procedure().procedure().apparatus()) {
            Optional<Typed> capacity = item.capacity().map(At::value).filter(c -> c.dimension().equals(Dimension.VOLUME) && c.si() > 0);
            Optional<Shape> shape = Shape.of(item);
            if (capacity.isPresent() && shape.isPresent()) {
                Map<String, Double> levels = shape.get() == Shape.VOLUMETRIC ? madeUp(capacity.get()) : poured(item);
                boolean fits = levels.values().stream().allMatch(v -> v > 0 && v <= capacity.get().si() * (1 + SAME));
                if (!levels.isEmpty() && fits) {
                    String said = draft.say("vessel.spoken", "vessel", item.words(), "levels", String.join("; ", levels.keySet()));
                    drawn.add(new Piece.Together(List.of(drawing(shape.get(), capacity.get(), levels).done(said), new Piece.Paragraph(draft.prose().of(said)))));
                }
            }
        }
        return drawn;
    }

    /** What is made up to the mark of a flask of that size. */
    private Map<String, Double> madeUp(Typed capacity) {
        List<String> names = draft.procedure().quantities().stream().map(ResolvedQuantity::block)
                .filter(b -> b.madeUpTo().filter(v -> Math.abs(v.value().si() - capacity.si()) <= SAME * capacity.si()).isPresent()).map(QuantityBlock::name).toList();
        return names.isEmpty() ? Map.of() : Map.of(draft.say("flask.made-up", "names", String.join(", ", names)), capacity.si());
    }

    /** Of the liquids in a vessel: before what runs in from elsewhere, and after it. */
    private Map<String, Double> poured(ApparatusItem item) {
        List<ResolvedQuantity> inside = draft.procedure().quantities().stream().filter(q -> isLiquid(q) && q.taken()
                && q.block().vessel().filter(v -> v.value().equals(item.name())).isPresent()).toList();
        List<ResolvedQuantity> running = inside.isEmpty() ? List.of() : draft.procedure().quantities().stream().filter(q -> isLiquid(q) && q.taken()
                && q.block().vessel().isEmpty() && !inside.contains(q) && sharesPot(q, inside)).toList();
        Map<String, Double> levels = new LinkedHashMap<>();
        sum(inside).ifPresent(v -> levels.put(draft.say(running.isEmpty() ? "flask.holds" : "flask.before", "level", draft.numbers().printed(v)), v.value()));
        if (!levels.isEmpty() && !running.isEmpty()) {
            List<ResolvedQuantity> all = new ArrayList<>(inside);
            all.addAll(running);
            sum(all).ifPresent(v -> levels.put(draft.say("flask.after", "level", draft.numbers().printed(v)), v.value()));
        }
        return levels;
    }

    private static boolean isLiquid(ResolvedQuantity quantity) {
        return quantity.block().is(Kind.SOLUTION) || quantity.block().is(Kind.LIQUID);
    }

    private boolean sharesPot(ResolvedQuantity quantity, List<ResolvedQuantity> others) {
        return draft.procedure().reactions().stream().flatMap(r -> r.pots().stream()).map(PotAccount::reactants).anyMatch(reactants -> has(reactants, quantity)
                && others.stream().anyMatch(o -> has(reactants, o)));
    }

    private static boolean has(List<Reactant> reactants, ResolvedQuantity quantity) {
        return reactants.stream().anyMatch(r -> r.blocks().contains(quantity.name()));
    }

    /** Empty where one of them has no volume. */
    private static Optional<Figure> sum(List<ResolvedQuantity> parts) {
        List<Figure> volumes = parts.stream().flatMap(q -> q.figure(Property.VOLUME).stream()).toList();
        if (volumes.isEmpty() || volumes.size() < parts.size()) {
            return Optional.empty();
        }
        return Optional.of(volumes.size() == 1 ? volumes.get(0)
                : Figure.of(Symbol.alone("V"), volumes.get(0).unit(), new Step.Sum(volumes.stream().map(v -> new Step.Term(1, v)).toList())));
    }

    private Pencil drawing(Shape shape, Typed capacity, Map<String, Double> levels) {
        Pencil pencil = new Pencil(WIDTH, HEIGHT);
        double most = levels.values().stream().mapToDouble(v -> shape.level(Math.min(1, v / capacity.si()))).max().orElseThrow();
        pencil.shape(outline(shape, most), Pencil.GREY, 0);
        pencil.shape(outline(shape, shape.mark() + ABOVE), "none", WALL);
        double half = shape.half(shape.mark());
        pencil.line(MIDDLE - half, FLOOR - shape.mark(), MIDDLE + half, FLOOR - shape.mark(), 0.3);
        if (capacity.value() == Math.rint(capacity.value())) {
            pencil.number((int) capacity.value(), MIDDLE + half + 6, FLOOR - shape.mark() - 1.1);
        }
        for (double volume : levels.values()) {
            double up = shape.level(Math.min(1, volume / capacity.si()));
            pencil.line(MIDDLE - shape.half(up) - 2, FLOOR - up, MIDDLE + shape.half(up) + 2, FLOOR - up, 0.8);
        }
        return pencil;
    }

    /** Both walls up to a height, closed at floor and top. */
    private static List<double[]> outline(Shape shape, double to) {
        List<double[]> points = new ArrayList<>();
        int slices = 60;
        for (int i = 0; i <= slices; i++) {
            double up = to * i / slices;
            points.add(new double[] {MIDDLE - shape.half(up), FLOOR - up});
        }
        for (int i = slices; i >= 0; i--) {
            double up = to * i / slices;
            points.add(new double[] {MIDDLE + shape.half(up), FLOOR - up});
        }
        return points;
    }
}
