package tarewright.document;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.prepare.Draw;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.prepare.Order;
import tarewright.procedure.prepare.Provision;
import tarewright.quantity.Typed;

/** What a term needs, less what is on hand, by pack; then what is got ready for whom, and how many of each thing. */
final class OrderSheet {
    private static final int BLANK = 6;

    private final List<Order.Part> parts;
    /** By the part itself: two sections may need the very same. */
    private final Map<Order.Part, Draft> drafts = new IdentityHashMap<>();
    private final Order order;
    private final Draft draft;

    /** @param needs at least one */
    OrderSheet(List<Need> needs) {
        this.parts = new ArrayList<>();
        for (Need need : needs) {
            Order.Part part = need.worked().part();
            parts.add(part);
            drafts.put(part, Draft.of(need.procedure(), true));
        }
        this.order = Order.of(parts);
        this.draft = drafts.get(parts.get(0));
    }

    Draft draft() {
        return draft;
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>(List.of(draft.paragraph("order.said"), draft.heading(2, "heading.order-buy")));
        pieces.addAll(toBuy());
        costs().ifPresent(pieces::add);
        pieces.add(draft.heading(2, "heading.order-shares"));
        pieces.addAll(shares());
        pieces.add(draft.heading(2, "heading.order-ready"));
        pieces.addAll(ready());
        if (!order.things().isEmpty()) {
            pieces.add(draft.heading(2, "heading.order-things"));
            Grid grid = new Grid(draft, "order.things").words("expect.what").numbers("order.count");
            order.things().forEach(t -> grid.row(Text.words(t.usedUp() || t.kept() ? draft.say(t.usedUp() ? "order.used-up" : "order.kept", "item", t.words()) : t.words()), number(t.count())));
            pieces.addAll(grid.pieces());
        }
        return pieces;
    }

    private List<Piece> toBuy() {
        Grid grid = new Grid(draft, "").words("expect.what").numbers("order.needed", "order.on-hand", "order.buy").words("order.pack").numbers("order.cost");
        for (Order.Line line : order.lines()) {
            grid.row(name(line), needed(line), line.onHand().map(this::shown).orElseGet(this::blank), buy(line),
                    line.packs().map(p -> Text.words(pack(p.pack()))).orElse(List.of()), cost(line));
        }
        return grid.pieces();
    }

    private List<Text> needed(Order.Line line) {
        return line.ofDrops().map(ml -> Text.words(draft.say("order.drops", "drops", draft.numbers().printed(line.needed()), "volume", draft.numbers().printed(ml))))
                .orElseGet(() -> shown(line.needed()));
    }

    private List<Text> buy(Order.Line line) {
        if (line.packs().isPresent()) {
            return List.of(new Text.Quantity(draft.say("order.packs", "count", line.packs().get().count())));
        }
        return line.onHand().isPresent() && line.lacking() == 0 ? Text.words(draft.say("order.nothing")) : blank();
    }

    private List<Text> cost(Order.Line line) {
        return line.packs().flatMap(p -> p.cost().map(c -> Text.words(money(c, p.price().orElseThrow().currency())))).orElse(List.of());
    }

    /** By currency; prices that are not told are said to be missing. */
    private Optional<Piece> costs() {
        Map<String, BigDecimal> sums = order.costs();
        boolean missing = order.lines().stream().anyMatch(l -> l.packs().flatMap(Order.Packs::cost).isEmpty());
        if (sums.isEmpty()) {
            return Optional.empty();
        }
        String all = sums.entrySet().stream().map(e -> money(e.getValue(), e.getKey())).collect(Collectors.joining(" + "));
        return Optional.of(draft.paragraph(missing ? "order.sum-some" : "order.sum", "sum", all));
    }

    private List<Piece> shares() {
        Grid grid = new Grid(draft, "").words("expect.what", "order.procedure").numbers("order.takes");
        for (Order.Line line : order.lines()) {
            line.shares().forEach((procedure, amount) -> grid.row(name(line), title(procedure), shown(amount)));
        }
        return grid.pieces();
    }

    private List<Piece> ready() {
        Grid grid = new Grid(draft, "").words("order.section", "order.procedure", "expect.what").numbers("prep.ready");
        for (Order.Part part : parts) {
            for (Provision provision : part.supplies().provisions()) {
                grid.row(Text.words(part.section()), title(part.procedure()), new Labels(drafts.get(part)).toMake(provision.source().block()), shown(provision.ready()));
            }
        }
        return grid.pieces();
    }

    // --- names and numbers

    private List<Text> name(Order.Line line) {
        return name(line.from(), drafts.get(line.part()));
    }

    /** As on the bottle of the shelf, else as on the label that the technician writes. */
    static List<Text> name(Draw draw, Draft draft) {
        Optional<StockBlock> stock = draw.stock();
        if (stock.isPresent() && draw.thing() instanceof Draw.Thing.Block) {
            List<Text> name = draft.prose().of(stock.get().name());
            return stock.get().strength().map(s -> draft.compose("label.with-strength", Map.of("name", name, "strength", draft.prose().of(draft.numbers().typed(s.at().text()))))).orElse(name);
        }
        if (draw.thing() instanceof Draw.Thing.From from) {
            return RecipePieces.source(draft, from.ingredient());
        }
        Labels labels = new Labels(draft);
        var block = ((Draw.Thing.Block) draw.thing()).block();
        return labels.matter(block).filter(m -> block.labelAs().isPresent()).map(m -> draft.prose().of(draft.called(m))).orElseGet(() -> labels.label(block));
    }

    private List<Text> title(String procedure) {
        return parts.stream().filter(p -> p.procedure().equals(procedure)).findFirst()
                .flatMap(p -> p.supplies().procedure().procedure().front().title()).map(t -> drafts.get(parts.stream()
                        .filter(p -> p.procedure().equals(procedure)).findFirst().orElseThrow()).prose().of(t.value())).orElse(Text.words(procedure));
    }

    private List<Text> shown(Figure figure) {
        return Text.words(draft.numbers().printed(figure));
    }

    private List<Text> number(int count) {
        return Text.words(Integer.toString(count));
    }

    private List<Text> blank() {
        return List.of(new Text.Blank(BLANK, draft.say("blank.for", "what", draft.say("order.on-hand"))));
    }

    private String pack(Typed pack) {
        return draft.numbers().printed(pack.unit().fromSi(pack.si()), pack.unit(), Math.max(0, pack.decimals()));
    }

    private String money(BigDecimal amount, String currency) {
        String number = draft.numbers().localised(amount.toPlainString());
        return currency.isEmpty() ? number : number + "\u202F" + currency;
    }
}
