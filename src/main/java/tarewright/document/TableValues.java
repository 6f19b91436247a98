package tarewright.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;

/** Values from tables and constants behind some figures, each once with its source; those from memory are marked. */
final class TableValues {
    private static final String MOLAR_MASS = "M";

    private final Draft draft;
    private final Map<String, Value> values = new LinkedHashMap<>();
    private final Set<Step> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    private record Value(Figure figure, String source, boolean proven) {
    }

    TableValues(Draft draft) {
        this.draft = draft;
    }

    void behind(Figure figure) {
        if (!seen.add(figure.step())) {
            return;
        }
        if (figure.symbol().letter().equals(MOLAR_MASS) && !figure.from().isEmpty()) {
            enter(figure, leaf(figure));
            return;
        }
        if (figure.from().isEmpty()) {
            enter(figure, figure);
        }
        if (figure.step() instanceof Step.Relation relation) {
            values.putIfAbsent(key(figure), new Value(figure, relation.source(), true));
        }
        figure.from().forEach(this::behind);
    }

    /** The first figure behind one that was not worked out: an atomic weight. */
    private static Figure leaf(Figure figure) {
        return figure.from().isEmpty() ? figure : leaf(figure.from().get(0));
    }

    private void enter(Figure figure, Figure leaf) {
        if (leaf.step() instanceof Step.Given given) {
            if (given.origin() instanceof Origin.Table table) {
                values.putIfAbsent(key(figure), new Value(figure, table.source(), table.proven()));
            } else if (given.origin() instanceof Origin.Constant constant) {
                values.putIfAbsent(key(figure), new Value(figure, constant.source(), true));
            }
        }
    }

    private static String key(Figure figure) {
        return figure.symbol().plain() + " " + figure.value();
    }

    /** The publication alone: behind a semicolon a source says in which file it was read. */
    List<Piece> pieces() {
        Grid grid = new Grid(draft, "").words("values.symbol").numbers("values.value").words("values.source");
        List<Value> all = new ArrayList<>(values.values());
        for (Value value : all) {
            String publication = draft.source(value.source().split("; ", 2)[0]);
            String source = value.proven() ? publication : draft.say("values.from-memory", "source", publication);
            grid.row(draft.typeset().symbol(value.figure().symbol()), Text.words(draft.numbers().printed(value.figure())),
                    Text.words(source));
        }
        return grid.under(2, "heading.values");
    }
}
