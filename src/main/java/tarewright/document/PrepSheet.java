package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.OwnSolutions;
import tarewright.procedure.bench.Stock;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.prepare.BalanceQueue;
import tarewright.procedure.prepare.Draw;
import tarewright.procedure.prepare.Equipment;
import tarewright.procedure.prepare.Keeps;
import tarewright.procedure.prepare.Provision;
import tarewright.procedure.prepare.Supplies;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.RinseAndFill;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Dimension;
import tarewright.safety.Rulebook;
import tarewright.safety.Statement;
import tarewright.safety.Verdict;
import tarewright.setting.Setting;
import tarewright.wording.Dates;
import tarewright.wording.Numbers;

/**
 * The technician's sheet, in the order of the work: the week before, the day before, the day, afterwards. It is open: what the students find out
 * stands in it, since somebody has to make it.
 */
final class PrepSheet implements Filling {
    private static final int BLANK = 9;

    private final Draft draft;
    private final Bench bench;
    private final Hazards hazards;
    private final Labels labels;
    private final Rulebook rules;
    private final BenchSafety safety;
    private final Recipes recipes;
    private final Supplies supplies;
    private final List<Draw> draws;
    private final RecipePieces making;
    private final Disposal disposal;

    /** @param shelf the bottles of the term */
    PrepSheet(Draft draft, List<StockBlock> shelf, Rulebook rules) {
        this.draft = draft;
        this.rules = rules;
        this.bench = Bench.of(draft, rules);
        this.hazards = new Hazards(draft);
        this.labels = new Labels(draft);
        this.safety = BenchSafety.of(draft.procedure(), shelf, rules);
        this.recipes = Recipes.of(draft.procedure(), shelf);
        this.supplies = Supplies.of(draft.procedure(), bench.things(), recipes);
        this.draws = Draw.of(supplies, recipes, shelf);
        this.making = new RecipePieces(draft, safety, rules);
        this.disposal = Disposal.of(draft, draft.procedure(), rules);
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>(List.of(forWhom(), said()));
        List<Piece.FormField> fields = new ArrayList<>();
        if (draft.procedure().setting().occasion().date().isEmpty()) {
            fields.add(new Piece.FormField(draft.say("prep.class-on"), 3));
        }
        fields.addAll(List.of(new Piece.FormField(draft.say("prep.made-by"), 3), new Piece.FormField(draft.say("prep.made-on"), 2),
                new Piece.FormField(draft.say("prep.checked-by"), 3)));
        pieces.add(new Piece.FormLine(fields));
        pieces.addAll(weekBefore());
        pieces.addAll(handling());
        pieces.addAll(dayBefore());
        pieces.addAll(theDay());
        pieces.addAll(afterwards());
        return pieces;
    }

    // --- for whom

    private Piece forWhom() {
        Setting setting = draft.procedure().setting();
        List<List<Text>> parts = new ArrayList<>();
        if (!setting.section().isEmpty()) {
            parts.add(Text.words(draft.say("prep.section", "section", setting.section())));
        }
        if (!setting.occasion().date().isEmpty()) {
            parts.add(Text.words(draft.say("prep.date", "date", Dates.printed(setting.occasion().date(), setting.language()))));
        }
        parts.add(Text.words(draft.say("prep.groups", "groups", setting.groups(), "size", setting.groupSize())));
        if (setting.runs() > 1) {
            parts.add(Text.words(draft.say("prep.runs", "runs", setting.runs())));
        }
        parts.add(Text.words(draft.say("prep.spare", "spare", draft.numbers().printedNumber(100 * setting.spare()))));
        parts.add(Text.words(draft.say("prep.room", "temperature", draft.numbers().printed(setting.room().temperature()), "pressure",
                draft.numbers().printed(setting.room().pressure()))));
        return new Piece.Paragraph(List.of(new Text.Strong(Typeset.joined(parts, "; "))));
    }

    private Piece said() {
        return draft.paragraph("prep.said", "figures", draft.procedure().tables().practice().figures());
    }

    // --- the week before

    private List<Piece> weekBefore() {
        List<List<List<Text>>> rows = new ArrayList<>();
        for (Provision provision : supplies.provisions()) {
            rows.add(List.of(name(provision), upTo(provision, provision.each()), shown(provision.total()),
                    List.of(new Text.Quantity(draft.numbers().printed(provision.ready()))), blank("prep.used"), blank("prep.left-over")));
        }
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, "heading.prep-week")));
        List<List<Piece>> steps = new ArrayList<>(List.of(step("prep.check-shelf")));
        List<String> usedUp = supplies.equipment().stream().filter(e -> e.item().usedUp())
                .map(e -> draft.say("prep.counted", "item", e.item().words(), "count", e.total())).toList();
        if (!usedUp.isEmpty()) {
            steps.add(step("prep.check-used-up", "items", String.join("; ", usedUp)));
        }
        pieces.add(new Piece.Steps(1, steps));
        if (!rows.isEmpty()) {
            pieces.add(new Piece.Table(Text.words(draft.say("prep.totals")), heads("expect.what", "totals.each", "totals.class", "prep.ready",
                    "prep.used", "prep.left-over"), rows, List.of(false, true, true, true, false, false), true, Piece.Use.FILL));
        }
        pieces.addAll(fillings());
        Grid shelfTable = new Grid(draft, "prep.off-the-shelf").words("expect.what").numbers("prep.takes", "order.on-hand");
        draws.stream().filter(d -> d.thing() instanceof Draw.Thing.From || d.stock().isPresent()).forEach(d -> shelfTable.row(OrderSheet.name(d, draft),
                List.of(new Text.Quantity(draft.numbers().printed(d.amount()))), d.onHand().map(this::shown).orElseGet(() -> blank("order.on-hand"))));
        pieces.addAll(shelfTable.pieces());
        return pieces;
    }

    /** What burettes and pipettes take beyond what is measured out with them. */
    private List<Piece> fillings() {
        List<List<Piece>> all = new ArrayList<>();
        for (Provision provision : supplies.provisions()) {
            for (RinseAndFill filling : provision.fillings()) {
                List<List<Text>> rests = filling.rests().stream().flatMap(r -> r.stays().map(s -> Text.words(draft.say("prep.filling-rest", "count", r.count(),
                        "stays", draft.numbers().printed(s), "fillings", r.fillings()))).stream()).toList();
                Map<String, List<Text>> parts = Map.of("name", name(provision), "item", Text.words(filling.item().words()), "rinses", Text.words(Integer.toString(filling.rinses())),
                        "rinse", shown(filling.rinse()), "count", Text.words(Long.toString(filling.instruments())), "rests", Typeset.joined(rests, "; "));
                all.add(List.of(new Piece.Paragraph(draft.compose(rests.isEmpty() ? "prep.filling-pipette" : "prep.filling-burette", parts))));
            }
        }
        return all.isEmpty() ? List.of() : List.of(draft.paragraph("prep.fillings"), new Piece.Bullets(all));
    }

    // --- what is dangerous to handle

    private List<Piece> handling() {
        List<Bottle> handled = bench.bottles().stream().filter(b -> b.uses().isEmpty()
                || b.uses().stream().anyMatch(u -> !OwnSolutions.holds(draft.procedure(), u.block()))).toList();
        List<Bottle> made = making.newOnTheBench(recipes);
        List<Bottle> once = made.stream().filter(m -> handled.stream().noneMatch(h -> isOne(h, m) && says(h, m))).toList();
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, "heading.prep-hazards"), draft.paragraph("safety.data-sheets")));
        safety.stocks().forEach(s -> pieces.add(hazards.box(new Bottle(draft.prose().of(s.name()),
                s.strength().map(draft.numbers()::typed).map(draft.prose()::of).orElse(List.of()), List.of(), s.verdict(), false, s.makes(), Optional.empty()),
                Text.words(draft.say("prep.stock")), false)));
        once.forEach(b -> pieces.add(hazards.box(b, Text.words(draft.say("prep.stock")), false)));
        handled.stream().filter(h -> !h.verdict().harmless() && once.stream().noneMatch(m -> isOne(h, m) && says(m, h)))
                .forEach(b -> pieces.add(hazards.box(b, List.of(), false)));
        disposal.bottles(draft, rules).stream().filter(v -> !v.harmless()).forEach(v -> pieces.add(hazards.box(new Bottle(Text.words(v.matter().name()), List.of(), List.of(), v,
                false, List.of(), Optional.empty()), Text.words(draft.say("prep.for-waste")), false)));
        pieces.addAll(hazards.harmless(handled));
        pieces.addAll(new Apart(draft).pieces(bench, rules));
        List<Verdict> undiluted = new ArrayList<>(safety.stocks().stream().map(Stock::verdict).toList());
        made.forEach(m -> undiluted.add(m.verdict()));
        undiluted.addAll(disposal.bottles(draft, rules));
        pieces.addAll(new Accidents(draft).inThePrepRoom(undiluted, rules));
        return pieces;
    }

    /** Whether the students' bottle is filled from the jar that a recipe starts from: one name, and no strength of its own. */
    private static boolean isOne(Bottle students, Bottle jar) {
        return students.strength().isEmpty() && Plain.of(students.name()).equals(Plain.of(jar.name()));
    }

    /** Whether the box of the one tells all that the box of the other would. */
    private static boolean says(Bottle one, Bottle other) {
        return codes(one).containsAll(codes(other)) && (other.verdict().known() || !one.verdict().known());
    }

    private static List<String> codes(Bottle bottle) {
        return Stream.concat(bottle.verdict().statements().stream(), bottle.verdict().supplemental().stream()).map(Statement::code).toList();
    }

    // --- the day before

    private List<Piece> dayBefore() {
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, "heading.prep-day-before")));
        BodyWalk walk = new BodyWalk(draft, this);
        Part.walk(draft.procedure().procedure().source().body(), part -> {
            if (part instanceof TypedBlock block && block.type().equals("prep")) {
                pieces.add(new Piece.Note(draft.say("prep.notes"), walk.inside(block)));
            }
        });
        recipes.recipes().stream().filter(r -> !onTheDay(r)).forEach(r -> pieces.addAll(making.recipe(r, supplies.provision(r.name()))));
        recipes.unmade().forEach(u -> pieces.add(making.unmade(u)));
        Grid bottles = new Grid(draft, "prep.bottles").words("expect.what").numbers("prep.share", "prep.containers").words("prep.container");
        for (Provision provision : supplies.provisions()) {
            if (!provision.varies()) {
                bottles.row(name(provision), shown(provision.share()),
                        isDrops(provision) ? List.of() : Text.words(Integer.toString(draft.procedure().setting().groups())), container(provision, provision.bottle()));
            }
            for (Provision.Dealt dealt : provision.dealt()) {
                bottles.row(draft.compose("prep.for-groups", Map.of("name", name(provision), "groups", Text.words(Hands.groups(draft, dealt.groups())))),
                        shown(dealt.share()), isDrops(provision) ? List.of() : Text.words(Integer.toString(dealt.groups().size())), container(provision, dealt.bottle()));
            }
        }
        pieces.addAll(bottles.pieces());
        pieces.add(new Piece.Steps(1, List.of(step("prep.portion"), step("prep.label"))));
        return pieces;
    }

    private static boolean isDrops(Provision provision) {
        return provision.each().unit().symbol().startsWith("drop");
    }

    private List<Text> container(Provision provision, Optional<Figure> bottle) {
        return Text.words(isDrops(provision) ? draft.say("prep.dropping-bottle") : bottle.map(b -> draft.say("prep.bottle", "volume", draft.numbers().printed(b)))
                .orElseGet(() -> draft.say(isVolume(provision) ? "prep.large" : "prep.vial")));
    }

    /** What keeps for a day or less. */
    private static boolean onTheDay(Recipe recipe) {
        return recipe.keeps().filter(Keeps::onTheDay).isPresent();
    }

    private static boolean isVolume(Provision provision) {
        return provision.each().dimension().equals(Dimension.VOLUME);
    }

    // --- the day

    private List<Piece> theDay() {
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, "heading.prep-day")));
        if (recipes.recipes().stream().anyMatch(PrepSheet::onTheDay)) {
            pieces.add(draft.paragraph("prep.make-first"));
        }
        recipes.recipes().stream().filter(PrepSheet::onTheDay).forEach(r -> pieces.addAll(making.recipe(r, supplies.provision(r.name()))));
        Grid tray = new Grid(draft, "prep.tray").words("expect.what").numbers("prep.on-tray", "prep.for-class");
        Grid shared = new Grid(draft, "prep.shared").words("expect.what").numbers("prep.for-class");
        Grid front = new Grid(draft, "prep.front").words("expect.what").numbers("prep.for-class");
        for (Equipment thing : supplies.equipment()) {
            List<Text> words = Text.words(item(thing));
            List<Text> total = Text.words(Integer.toString(thing.total()));
            switch (thing.place()) {
                case TRAY -> tray.row(words, Text.words(Integer.toString(thing.onTray())), total);
                case SHARED -> shared.row(Text.words(draft.say("prep.shared-by", "item", thing.item().words(), "count", thing.item().share().count(),
                        "groups", thing.item().share().perGroups())), total);
                default -> front.row(words, total);
            }
        }
        new Wear(draft, bench, rules).missing().forEach(m -> front.row(Text.words(m.getKey()), Text.words(m.getValue().toString())));
        disposal.frontBench(draft, bench, rules).forEach(r -> front.row(Text.words(r.getKey()), Text.words(r.getValue())));
        pieces.add(new Piece.Steps(1, List.of(step("prep.put-on-trays"))));
        pieces.addAll(tray.pieces());
        pieces.addAll(shared.pieces());
        pieces.addAll(front.pieces());
        supplies.queues().forEach(q -> pieces.add(queue(q)));
        return pieces;
    }

    private Piece queue(BalanceQueue queue) {
        return draft.paragraph(queue.balances() == 1 ? "prep.queue-one" : "prep.queue", "balances", queue.balances(), "item", queue.item().words(),
                "time", draft.numbers().printed(queue.time().shownTo(0)), "often", queue.weighings() == 1 ? draft.say("prep.once") : draft.say("prep.often", "times", queue.weighings()), "one",
                draft.numbers().printed(queue.oneWeighing()));
    }

    // --- afterwards

    private List<Piece> afterwards() {
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, "heading.prep-after")));
        List<List<Piece>> waste = new ArrayList<>();
        WasteWords words = new WasteWords(draft, disposal);
        draft.procedure().procedure().wastes().forEach(w -> waste.add(List.of(new Piece.Paragraph(words.sentences(w)))));
        waste.addAll(new LeftOvers(draft, draft.procedure(), rules).sentences());
        waste.add(List.of(draft.paragraph("waste.local-rules")));
        pieces.add(new Piece.Bullets(waste));
        List<String> kept = supplies.equipment().stream().filter(e -> e.item().kept() && !e.item().usedUp())
                .map(e -> draft.say("prep.counted", "item", e.item().words(), "count", e.total())).toList();
        if (!kept.isEmpty()) {
            pieces.add(draft.paragraph("prep.kept", "items", String.join("; ", kept)));
        }
        List<List<List<Text>>> back = new ArrayList<>();
        supplies.equipment().stream().filter(Equipment::comesBack).forEach(e -> back.add(returned(item(e), e.total())));
        containers().forEach((container, count) -> back.add(returned(container, count)));
        if (!back.isEmpty()) {
            pieces.add(new Piece.Table(Text.words(draft.say("prep.returns")), heads("expect.what", "prep.put-out", "prep.came-back", "prep.washed"),
                    back, List.of(false, true, false, false), true, Piece.Use.READ));
        }
        pieces.add(new Piece.Steps(1, List.of(step("prep.unused"), step("prep.put-away"), step("prep.write-back"))));
        return pieces;
    }

    private List<List<Text>> returned(String what, int count) {
        return List.of(Text.words(what), Text.words(Integer.toString(count)), blank("prep.came-back"), blank("prep.washed"));
    }

    /** The bottles and vials of the groups, those alike together; what is dropped out of a bottle that is put out as it is does not count. */
    private Map<String, Integer> containers() {
        Map<String, Integer> all = new LinkedHashMap<>();
        for (Provision provision : supplies.provisions()) {
            if (!isDrops(provision) && !provision.varies()) {
                all.merge(Plain.of(container(provision, provision.bottle())), draft.procedure().setting().groups(), Integer::sum);
            }
            provision.dealt().stream().filter(d -> !isDrops(provision)).forEach(d -> all.merge(Plain.of(container(provision, d.bottle())), d.groups().size(), Integer::sum));
        }
        return all;
    }

    // --- words

    /** A balance with how fine it is read: the term has others too. */
    private String item(Equipment thing) {
        return thing.item().readsTo().map(At::value).filter(t -> t.unit().dimension().equals(Dimension.MASS)).map(t -> draft.say("prep.reads-to", "item", thing.item().words(),
                "division", Numbers.withUnit(draft.numbers().localised(t.number()), t.unit()))).orElse(thing.item().words());
    }

    /** As on the bottle, and what is in it where the bottle does not say. */
    private List<Text> name(Provision provision) {
        List<Text> label = labels.label(provision.source().block());
        boolean masked = provision.source().block().labelAs().isPresent();
        Optional<String> really = labels.matter(provision.source().block()).map(draft::called).filter(n -> masked && !Plain.of(label).contains(n));
        return really.isEmpty() ? label : draft.compose("prep.really", Map.of("label", label, "name", draft.prose().of(really.get())));
    }

    /** An amount for one group, said to be the most where groups get different ones. */
    private List<Text> upTo(Provision provision, Figure figure) {
        return provision.varies() ? Text.words(draft.say("prep.up-to", "amount", draft.numbers().printed(figure))) : shown(figure);
    }

    private List<Text> shown(Figure figure) {
        return Text.words(draft.numbers().printed(figure));
    }

    private List<Text> blank(String key) {
        return List.of(new Text.Blank(BLANK, draft.say("blank.for", "what", draft.say(key))));
    }

    private List<Piece> step(String key, Object... named) {
        return List.of(draft.paragraph(key, named));
    }

    private List<List<Text>> heads(String... keys) {
        List<List<Text>> heads = new ArrayList<>();
        for (String key : keys) {
            heads.add(Text.words(draft.say(key)));
        }
        return heads;
    }

    // --- what the author's notes for the technician may hold

    @Override
    public List<Text> blank(String what, Figure expected, String head) {
        return shown(expected);
    }

    @Override
    public List<Text> hidden(String what, Figure figure) {
        return shown(figure);
    }

    @Override
    public List<Piece> space(AnswerBlock answer) {
        return List.of();
    }

    @Override
    public boolean plots() {
        return false;
    }

    @Override
    public boolean shows(TypedBlock block) {
        return block.type().equals("prep");
    }
}
