package tarewright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.procedure.bench.OwnSolutions;
import tarewright.procedure.declare.QuantityBlock.Kind;
import tarewright.procedure.declare.QuantityBlock.Role;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.procedure.resolve.ResolvedReaction.Reactant;
import tarewright.procedure.resolve.ResolvedReading;
import tarewright.quantity.Digits;
import tarewright.setting.Setting;

/** What a class and a group use and what comes out: amounts, rounding, readings, the account of each pot, totals. */
final class Overview {
    private static final int FIGURES = 4;
    private static final double SAME = 1e-9;
    /** Half a per cent: about a division of a burette. */
    private static final double JUST_ENOUGH = 0.005;

    private final Draft draft;
    private final Resolved procedure;
    private final Labels labels;
    private final Workings workings;
    private final Accepted accepted;

    Overview(Draft draft) {
        this.draft = draft;
        this.procedure = draft.procedure();
        this.labels = new Labels(draft);
        this.workings = new Workings(draft);
        this.accepted = new Accepted(draft);
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>(List.of(draft.heading(2, "heading.expect")));
        pieces.addAll(amounts());
        pieces.addAll(made());
        pieces.addAll(readings());
        pieces.addAll(new Vessels(draft).pieces());
        pieces.addAll(new FlaskDrawings(draft).pieces());
        pieces.addAll(accounts());
        pieces.addAll(totals(draft));
        pieces.addAll(found());
        return pieces;
    }

    /** What comes of one hand's amounts, where equation and bars stand before it for another: the account of each pot. */
    List<Piece> outcome() {
        return accounts().stream().filter(p -> p instanceof Piece.Table || p instanceof Piece.Heading).toList();
    }

    private List<Piece> accounts() {
        return procedure.reactions().stream().flatMap(r -> r.pots().stream().flatMap(pot -> account(r, pot).stream())).toList();
    }

    // --- one group

    private List<Piece> amounts() {
        Grid grid = new Grid(draft, "expect.amounts").words("expect.what").numbers("expect.amount", "expect.moles")
                .words("expect.rounding");
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (!quantity.taken() || quantity.amount().isEmpty()) {
                continue;
            }
            List<Text> name = labels.label(quantity.block());
            List<Text> moles = quantity.figure(Property.MOLES).filter(n -> quantity.block().role() == Role.REACTS)
                    .map(this::shown).orElse(List.of());
            Optional<Figure> length = quantity.figure(Property.LENGTH);
            length.ifPresent(l -> grid.row(draft.compose("expect.length-of", Map.of("name", name)), shown(l), List.of(),
                    rounding(l)));
            String amount = draft.numbers().printed(quantity.amount().get());
            int portions = quantity.block().portions();
            boolean own = OwnSolutions.holds(procedure, quantity.block()) && quantity.block().portionOf().isEmpty();
            grid.row(own ? draft.compose("expect.makes-up", Map.of("name", name)) : name, Text.words(portions == 1 ? amount
                    : draft.say("totals.portions", "times", portions, "amount", amount)), moles,
                    rounding(quantity.amount().get()));
        }
        return grid.pieces();
    }

    private List<Text> shown(Figure figure) {
        return Text.words(draft.numbers().printed(figure));
    }

    /** {@code 0.07897 g → 0.079 g, to the nearest 0.001 g}. */
    private List<Text> rounding(Figure figure) {
        Optional<Figure> before = figure.step() instanceof Step.Set set ? Optional.of(set.target())
                : figure.step() instanceof Step.Read read ? Optional.of(read.truth()) : Optional.empty();
        return before.filter(b -> !isSame(b, figure))
                .map(b -> Text.words(draft.say("expect.rounded", "before", unrounded(b, figure), "after",
                draft.numbers().printed(figure), "why", workings.rounding(figure).orElse("")))).orElse(List.of());
    }

    private static boolean isSame(Figure before, Figure after) {
        return Math.abs(before.value() - after.value()) <= SAME * Math.abs(after.value());
    }

    private String unrounded(Figure before, Figure after) {
        Figure same = before.in(after.unit());
        int decimals = Math.max(Digits.decimalsOfSignificant(same.shownValue(), FIGURES), after.decimals().orElse(0));
        return draft.numbers().printed(same.shownValue(), same.unit(), decimals);
    }

    private List<Piece> made() {
        Grid grid = new Grid(draft, "expect.made").words("expect.what").numbers("expect.moles", "expect.mass-or-volume")
                .words("expect.as");
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (quantity.taken()) {
                continue;
            }
            List<Text> name = labels.label(quantity.block());
            List<Text> moles = quantity.figure(Property.MOLES).map(this::shown).orElse(List.of());
            boolean moist = quantity.figure(Property.MOIST).isPresent();
            if (quantity.block().is(Kind.GAS)) {
                quantity.figure(Property.MOIST).ifPresent(v ->
                        grid.row(name, moles, shown(v), Text.words(draft.say("expect.moist"))));
                quantity.figure(Property.DRY).ifPresent(v ->
                        grid.row(name, moist ? List.of() : moles, shown(v), Text.words(draft.say("expect.dry"))));
            } else {
                quantity.figure(Property.MOST).ifPresent(m ->
                        grid.row(name, moles, shown(m), Text.words(draft.say("expect.most"))));
                quantity.figure(Property.YIELD)
                        .filter(y -> quantity.figure(Property.MOST).filter(m -> m.value() == y.value()).isEmpty())
                        .ifPresent(m -> grid.row(name, List.of(), shown(m), Text.words(draft.say("expect.yield"))));
            }
        }
        return grid.pieces();
    }

    private List<Piece> readings() {
        Grid grid = new Grid(draft, "expect.readings").words("expect.reading").numbers("expect.expected")
                .words("expect.accept", "expect.why");
        for (ResolvedReading reading : procedure.readings()) {
            grid.row(draft.prose().of(reading.block().name()), List.of(new Text.Filled(draft.numbers().printed(reading.value()))),
                    Text.words(accepted.range(reading.value()).orElse("")), accepted.why(reading.value()));
        }
        return grid.pieces();
    }

    // --- the pot

    private List<Piece> account(ResolvedReaction reaction, PotAccount pot) {
        if (pot.reactants().isEmpty()) {
            return List.of();
        }
        Grid grid = new Grid(draft, "account.caption").words("account.species").number(List.of(new Text.Symbol("n")))
                .number(draft.compose("account.turns", Map.of("n", List.of(new Text.Symbol("n"))))).words("account.part")
                .numbers("account.excess", "account.left");
        boolean alone = pot.reactants().size() == 1;
        boolean justEnough = isJustEnough(pot);
        for (Reactant reactant : pot.reactants()) {
            boolean limits = reactant.blocks().stream().anyMatch(pot.limiting()::contains);
            Optional<Figure> excess = first(reactant).flatMap(q -> q.figure(Property.EXCESS));
            Optional<Figure> left = reactant.blocks().stream().filter(pot.leftOver()::containsKey).map(pot.leftOver()::get)
                    .findFirst();
            grid.row(set(reactant.formula()), shown(reactant.moles()), shown(turns(reactant)),
                    Text.words(draft.say(justEnough ? "account.just-enough" : alone ? "account.alone" : limits ? "account.limits"
                            : "account.in-excess")),
                    excess.filter(e -> !limits && !justEnough).map(e ->
                            Text.words(draft.say("account.times", "times", draft.numbers().printed(e)))).orElse(List.of()),
                    left.map(f -> limits ? Text.words("0") : shown(f)).orElse(List.of()));
        }
        List<Piece> pieces = new ArrayList<>();
        boolean several = procedure.reactions().stream().mapToInt(r -> r.pots().size()).sum() > 1;
        if (several) {
            String name = pot.batch().isEmpty() ? reaction.name()
                    : draft.say("account.batch", "reaction", reaction.name(), "batch", pot.batch());
            pieces.add(new Piece.Heading(3, Text.words(name)));
        }
        reaction.block().equation().ifPresent(e -> pieces.add(new Piece.Display(List.of(draft.equation(e, reaction.block())))));
        pieces.addAll(grid.pieces());
        pieces.addAll(justEnough ? List.of() : PotBars.of(draft, pot, pot.reactants().stream()
                .map(r -> set(r.formula())).toList()));
        pot.extent().ifPresent(x -> pieces.add(new Piece.Paragraph(Text.words(draft.say("account.extent", "extent",
                draft.numbers().printed(x))))));
        return pieces;
    }

    /** Whether every reactant is used up but for what one division of an instrument makes. */
    static boolean isJustEnough(PotAccount pot) {
        double least = pot.reactants().stream().mapToDouble(Reactant::turns).min().orElse(0);
        return pot.reactants().size() > 1 && pot.reactants().stream().allMatch(r -> r.turns() <= least * (1 + JUST_ENOUGH));
    }

    private Optional<ResolvedQuantity> first(Reactant reactant) {
        return reactant.blocks().stream().flatMap(b -> procedure.quantity(b).stream()).findFirst();
    }

    private static Figure turns(Reactant reactant) {
        return Figure.of(Symbol.ofFormula("n/ν", reactant.formula()), reactant.moles().unit(),
                new Step.Product(1.0 / reactant.coefficient(), List.of(new Step.Power(reactant.moles(), 1))));
    }

    private List<Text> set(String formula) {
        return Formula.parse(formula) instanceof FormulaResult.Ok ok ? List.of(draft.formula(ok.formula())) : Text.words(formula);
    }

    // --- the class

    /** What the class takes, with the number of groups and the spare said. */
    static List<Piece> totals(Draft draft) {
        Setting setting = draft.procedure().setting();
        Labels labels = new Labels(draft);
        Grid grid = new Grid(draft, "totals.caption").words("expect.what").numbers("totals.each", "totals.class");
        Map<String, List<Text>> withheld = new LinkedHashMap<>();
        boolean filled = false;
        for (ResolvedQuantity quantity : draft.procedure().quantities()) {
            // A ribbon is cut off a reel: what the class takes of it is a length.
            Optional<Figure> total = quantity.figure(Property.CLASS_LENGTH).or(() -> quantity.figure(Property.CLASS_TOTAL));
            if (total.isEmpty() || quantity.amount().isEmpty() || OwnSolutions.holds(draft.procedure(), quantity.block())) {
                continue;
            }
            if (!draft.open() && draft.secrets().hidesAmount(quantity)) {
                withheld.put(quantity.name(), labels.label(quantity.block()));
                continue;
            }
            filled |= quantity.filling().isPresent();
            String each = draft.numbers().printed(quantity.figure(Property.LENGTH).orElse(quantity.amount().get()));
            grid.row(labels.label(quantity.block()), Text.words(quantity.block().portions() == 1 ? each
                    : draft.say("totals.portions", "times", quantity.block().portions(), "amount", each)),
                            Text.words(draft.numbers().printed(total.get())));
        }
        List<Piece> pieces = new ArrayList<>();
        List<Piece> table = new ArrayList<>(grid.under(2, "heading.totals"));
        if (!table.isEmpty()) {
            String spare = draft.numbers().printedNumber(100 * setting.spare());
            String said = draft.say(setting.runs() == 1 ? "totals.said" : "totals.said-runs", "groups", setting.groups(), "runs", setting.runs(), "spare", spare);
            table.add(1, new Piece.Paragraph(Text.words(filled ? said + " " + draft.say("totals.filled") : said)));
            // The sentence between heading and table must not be the last on a page.
            pieces.add(new Piece.Together(table));
        }
        withheld.values().forEach(name -> pieces.add(new Piece.Paragraph(draft.compose("totals.withheld",
                Map.of("name", name)))));
        return pieces;
    }

    /** What the students do not see and find out. */
    private List<Piece> found() {
        Grid grid = new Grid(draft, "").words("found.label", "found.is").numbers("found.value");
        for (ResolvedQuantity quantity : procedure.quantities()) {
            if (quantity.block().found()) {
                List<Text> is = quantity.matter().<List<Text>>map(m ->
                        List.of(new Text.Words(draft.called(m) + ", "), draft.formula(m.formula()))).orElse(List.of());
                Property sought = quantity.block().is(Kind.SOLUTION) ? Property.STRENGTH
                        : quantity.block().purity().isPresent() ? Property.PURITY : Property.MASS;
                boolean formula = quantity.block().shownAs().isPresent();
                List<Text> value = quantity.figure(sought).filter(f -> !formula).map(this::shown).orElse(List.of());
                List<Text> label = quantity.matter().flatMap(m -> draft.secrets().shownAs(m.formula()))
                        .filter(f -> quantity.block().labelAs().isEmpty())
                        .<List<Text>>map(f -> List.of(draft.typeset().shown(f))).orElseGet(() -> labels.name(quantity.block()));
                grid.row(label, is, value);
            }
        }
        return grid.under(2, "heading.found");
    }
}
