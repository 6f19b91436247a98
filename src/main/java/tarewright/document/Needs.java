package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.bench.OwnSolutions;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedQuantity;

/** What one group needs: apparatus, and the amounts of what is in bottles. */
final class Needs {
    private static final int MOST_TOGETHER = 8;

    private final Draft draft;
    private final Labels labels;

    Needs(Draft draft) {
        this.draft = draft;
        this.labels = new Labels(draft);
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        chemicals().ifPresent(pieces::add);
        apparatus().ifPresent(pieces::add);
        return pieces.isEmpty() ? List.of() : withHeading(pieces);
    }

    private List<Piece> withHeading(List<Piece> pieces) {
        List<Piece> all = new ArrayList<>(List.of(draft.heading(2, "heading.needs")));
        all.addAll(pieces);
        // A short list is looked at as one; a long one may go over the page.
        return draft.procedure().quantities().size() > MOST_TOGETHER ? all : List.of(new Piece.Together(all));
    }

    private Optional<Piece> chemicals() {
        List<List<List<Text>>> rows = draft.procedure().quantities().stream().filter(q -> q.taken() && q.amount().isPresent())
                .filter(q -> q.block().portionOf().isPresent() || isMeasuredHere(q))
                .filter(q -> !OwnSolutions.holds(draft.procedure(), q.block())).map(this::row).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Piece.Table(List.of(),
                heads("needs.chemical", "needs.amount", "needs.instrument"), rows, List.of(false, false, false), true,
                        Piece.Use.READ));
    }

    /** A bottle from which portions are taken is not measured out itself. */
    private boolean isMeasuredHere(ResolvedQuantity quantity) {
        return draft.procedure().quantities().stream()
                .noneMatch(q -> q.block().portionOf().filter(p -> p.value().equals(quantity.name())).isPresent());
    }

    private List<List<Text>> row(ResolvedQuantity quantity) {
        List<Text> name = new ArrayList<>(labels.label(quantity.block()));
        List<Text> formula = labels.formula(quantity.block());
        if (!formula.isEmpty()) {
            Typeset.join(name, ", ");
            Typeset.append(name, formula);
        }
        return List.of(name, amount(quantity), Text.words(instrument(quantity)));
    }

    private String instrument(ResolvedQuantity quantity) {
        return quantity.instrument().map(ApparatusItem::words).orElse("");
    }

    private List<Text> amount(ResolvedQuantity quantity) {
        if (!draft.open() && draft.secrets().hidesAmount(quantity)) {
            return Text.words(draft.say("needs.as-found"));
        }
        Text amount = new Text.Quantity(draft.numbers().printed(quantity.amount().orElseThrow()));
        Optional<Figure> length = quantity.figure(Property.LENGTH);
        List<Text> each = length.isEmpty() ? List.of(amount)
                : draft.compose("needs.length", Map.of("length",
                        List.of(new Text.Quantity(draft.numbers().printed(length.get()))), "mass", List.of(amount)));
        return quantity.block().portions() == 1 ? each
                : draft.compose("needs.portions", Map.of("times", Text.words(Integer.toString(quantity.block().portions())),
                        "amount", each));
    }

    /** One line of text: what a group fetches is ticked off by eye, and a table of it takes the room of four steps. */
    private Optional<Piece> apparatus() {
        List<Text> line = new ArrayList<>(List.of(new Text.Strong(Text.words(draft.say("needs.apparatus") + ": "))));
        for (ApparatusItem item : draft.procedure().procedure().apparatus()) {
            if (line.size() > 1) {
                line.add(new Text.Words("; "));
            }
            line.add(new Text.Words(draft.say("needs.each", "item", item.words(), "share", share(item.share()))));
        }
        line.add(new Text.Words("."));
        return line.size() == 2 ? Optional.empty() : Optional.of(new Piece.Paragraph(line));
    }

    /** How many a group has. */
    private String share(ApparatusItem.Share share) {
        if (share.perGroups() == ApparatusItem.Share.STUDENT) {
            return Integer.toString(share.count() * draft.procedure().setting().groupSize());
        }
        if (share.perGroups() == ApparatusItem.Share.CLASS) {
            return draft.say("needs.shared-by-class", "count", share.count());
        }
        return share.perGroups() == 1 ? Integer.toString(share.count())
                : draft.say("needs.shared-by-groups", "count", share.count(), "groups", share.perGroups());
    }

    private List<List<Text>> heads(String... keys) {
        List<List<Text>> heads = new ArrayList<>();
        for (String key : keys) {
            heads.add(Text.words(draft.say(key)));
        }
        return heads;
    }
}
