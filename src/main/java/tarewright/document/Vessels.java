package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.resolve.Resolved;
import tarewright.quantity.Typed;

/** The scales that the class reads, drawn from the apparatus block, with what they are expected to show: for the key only. */
final class Vessels {
    private static final int LENGTH = 110;
    private static final int EDGE = 6;
    private static final int HEIGHT = 20;
    private static final int BORE = 10;
    private static final int ROD = 14;
    /** Marks closer than this run into one another in print. */
    private static final double CLOSEST = 0.9;
    /** What a number may take along the scale. */
    private static final double FOR_NUMBER = 9;
    private static final double SAME = 1e-9;
    private static final int[] STEPS = {1, 2, 5, 10, 20, 25, 50, 100, 200, 250, 500};

    private final Draft draft;

    Vessels(Draft draft) {
        this.draft = draft;
    }

    /** How a vessel is drawn, told by the words that it is printed with. */
    enum Shape {
        SYRINGE("syringe", "jeringa"), BURETTE("burette", "bureta"), CYLINDER("cylinder", "probeta");

        private final List<String> words;

        Shape(String... words) {
            this.words = List.of(words);
        }

        static Optional<Shape> of(ApparatusItem item) {
            String printed = item.words().toLowerCase(Locale.ROOT);
            return List.of(values()).stream().filter(s -> s.words.stream().anyMatch(printed::contains)).findFirst();
        }
    }

    /** Each scale once, with all that is read on it or measured in it. */
    List<Piece> pieces() {
        Resolved procedure = draft.procedure();
        Map<ApparatusItem, Map<String, Figure>> scales = new LinkedHashMap<>();
        // A difference stands nowhere on a scale, but for what runs out of a burette that starts at its zero.
        procedure.readings().forEach(r -> r.instrument().filter(i -> r.block().difference().isEmpty()
                || Shape.of(i).filter(Shape.BURETTE::equals).isPresent())
                .ifPresent(i -> add(scales, i, r.block().name(), r.value())));
        procedure.quantities().stream().filter(q -> q.taken()).forEach(q -> q.instrument().ifPresent(i ->
                q.amount().ifPresent(a -> add(scales, i, q.name(), a))));
        List<Piece> drawn = new ArrayList<>();
        scales.forEach((item, levels) -> drawn.add(new Piece.Together(List.of(drawing(item, levels), caption(item, levels)))));
        return drawn;
    }

    private static void add(Map<ApparatusItem, Map<String, Figure>> scales, ApparatusItem item, String name, Figure level) {
        boolean fits = item.capacity().map(c -> c.value()).filter(c -> c.dimension().equals(level.dimension())
                && level.value() >= 0
                && level.value() <= c.si() * (1 + 1e-9) && c.value() >= 1).isPresent();
        boolean known = scales.getOrDefault(item, Map.of()).values().stream()
                .anyMatch(l -> Math.abs(l.value() - level.value()) <= SAME * level.value());
        if (fits && !known && Shape.of(item).isPresent()) {
            scales.computeIfAbsent(item, i -> new LinkedHashMap<>()).put(name, level);
        }
    }

    private Piece.Drawing drawing(ApparatusItem item, Map<String, Figure> levels) {
        Typed capacity = item.capacity().orElseThrow().value();
        double most = levels.values().stream().mapToDouble(Figure::value).max().orElseThrow() / capacity.si();
        Pencil pencil = new Pencil(LENGTH + 2 * EDGE + ROD, HEIGHT);
        Shape shape = Shape.of(item).orElseThrow();
        double top = HEIGHT - BORE - 1;
        double filled = most * LENGTH;
        pencil.box(EDGE, top, LENGTH, BORE, Pencil.WHITE);
        if (shape == Shape.SYRINGE) {
            pencil.box(EDGE - 4, top + BORE / 2.0 - 1, 4, 2, Pencil.WHITE);
            pencil.box(EDGE + filled, top + BORE / 2.0 - 1, LENGTH - filled + ROD, 2, Pencil.GREY);
            pencil.box(EDGE + filled, top + 0.6, 2, BORE - 1.2, Pencil.GREY);
            pencil.line(EDGE + LENGTH + ROD, top + 1, EDGE + LENGTH + ROD, top + BORE - 1, 1);
        } else if (shape == Shape.BURETTE) {
            // Its zero is at the top: what has run out is empty.
            pencil.box(EDGE + filled, top, LENGTH - filled, BORE, Pencil.GREY);
            pencil.box(EDGE + LENGTH, top + BORE / 2.0 - 1, 8, 2, Pencil.GREY);
            pencil.line(EDGE + LENGTH + 4, top + 1, EDGE + LENGTH + 4, top + BORE - 1, 1);
        } else {
            pencil.box(EDGE, top, filled, BORE, Pencil.GREY);
            pencil.line(EDGE, top - 1, EDGE, top + BORE + 1, 1);
        }
        marks(pencil, item, capacity, top);
        levels.values().forEach(level -> {
            double x = EDGE + LENGTH * level.value() / capacity.si();
            pencil.line(x, top - 1, x, top + BORE + 1, 0.8);
        });
        return pencil.done(said(item, levels));
    }

    /** Every mark where there is room, else every second, fifth … of them; numbers in steps of 1, 2 or 5. */
    private static void marks(Pencil pencil, ApparatusItem item, Typed capacity, double top) {
        double one = LENGTH / capacity.value();
        int numbered = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            numbered = STEPS[i] * one >= FOR_NUMBER ? STEPS[i] : numbered;
        }
        double own = item.graduation().map(g -> g.value().si() / capacity.si() * capacity.value()).orElse(1.0);
        double between = own;
        for (int step = 0; between * one < CLOSEST && step < STEPS.length; step++) {
            between = own * STEPS[step];
        }
        int count = (int) Math.floor(capacity.value() / between + 1e-9);
        for (int i = 0; i <= count; i++) {
            double at = i * between;
            double part = at / numbered - Math.rint(at / numbered);
            boolean isLong = Math.abs(part) < 1e-6;
            double x = EDGE + at * one;
            pencil.line(x, top, x, top + (isLong ? BORE * 0.45 : BORE * 0.22), isLong ? 0.3 : 0.18);
            if (isLong) {
                pencil.number((int) Math.rint(at), x, top - 5);
            }
        }
    }

    private String said(ApparatusItem item, Map<String, Figure> levels) {
        String level = Shape.of(item).filter(Shape.BURETTE::equals).isPresent() ? "vessel.run-out" : "vessel.level";
        return draft.say("vessel.spoken", "vessel", item.words(), "levels", String.join("; ", levels.entrySet().stream()
                .map(l -> draft.say(level, "name", l.getKey(), "level", draft.numbers().printed(l.getValue()))).toList()));
    }

    private Piece caption(ApparatusItem item, Map<String, Figure> levels) {
        return new Piece.Paragraph(draft.prose().of(said(item, levels)));
    }
}
