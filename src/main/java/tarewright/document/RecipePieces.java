package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.chemistry.solution.Act;
import tarewright.chemistry.solution.AmountCheck;
import tarewright.chemistry.solution.Care;
import tarewright.chemistry.solution.Preparation;
import tarewright.chemistry.solution.SolutionTrouble;
import tarewright.derivation.Figure;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.prepare.Provision;
import tarewright.procedure.recipe.Ingredient;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.recipe.Rework;
import tarewright.procedure.recipe.Unmade;
import tarewright.procedure.resolve.Property;
import tarewright.quantity.Digits;
import tarewright.quantity.Dimension;
import tarewright.quantity.UsualUnits;
import tarewright.safety.Classification;
import tarewright.safety.Protection;
import tarewright.safety.Rulebook;
import tarewright.safety.SignalWord;
import tarewright.safety.Verdict;
import tarewright.wording.Numbers;

/** How each solution is made, in words: what is dangerous to handle, then steps to tick, then the check. */
final class RecipePieces {
    /** Of the water that is put in first: it need not be measured. */
    private static final int FIGURES_OF_WATER = 2;
    private static final int FIGURES_OF_RISE = 2;
    /** What is needed there and then; the panel has the rest. */
    private static final Set<String> WORN = Set.of("eye-protection", "splash-goggles", "dust-goggles", "face-shield", "gloves", "gloves-solvent", "laboratory-coat",
            "hood", "ventilation", "no-flames", "no-dust", "no-students");

    private final Draft draft;
    private final Labels labels;
    private final Hazards hazards;
    private final Workings workings;
    private final BenchSafety safety;
    private final Rulebook rules;

    RecipePieces(Draft draft, BenchSafety safety, Rulebook rules) {
        this.draft = draft;
        this.labels = new Labels(draft);
        this.hazards = new Hazards(draft);
        this.workings = new Workings(draft);
        this.safety = safety;
        this.rules = rules;
    }

    // --- hazards

    /** What recipes start from and neither the students' bottles nor the stocks that are named have among them. */
    List<Bottle> newOnTheBench(Recipes recipes) {
        Map<String, Bottle> all = new java.util.LinkedHashMap<>();
        for (Recipe recipe : recipes.recipes()) {
            if (known(recipe).isEmpty()) {
                all.putIfAbsent(recipe.from().name(), new Bottle(draft.prose().of(draft.called(recipe.from().name())), List.of(), List.of(), verdict(recipe), false,
                        List.of(), Optional.empty()));
            }
        }
        return all.values().stream().filter(b -> !b.verdict().harmless()).toList();
    }

    /** Under the name that the procedure has for it. */
    private Optional<Verdict> known(Recipe recipe) {
        Optional<String> named = recipe.block().madeFrom().map(At::value);
        return Stream.concat(named.stream(), Stream.of(recipe.from().name())).flatMap(n -> Optional.ofNullable(safety.verdicts().get(n)).stream()).findFirst();
    }

    private Verdict verdict(Recipe recipe) {
        return known(recipe).orElseGet(() -> new Classification(rules).of(recipe.from().undiluted()));
    }

    private Optional<Piece> handling(Recipe recipe) {
        Verdict verdict = verdict(recipe);
        if (verdict.harmless()) {
            return Optional.empty();
        }
        boolean danger = !verdict.known() || verdict.signalWord().filter(SignalWord.DANGER::equals).isPresent();
        String level = danger ? "danger" : verdict.signalWord().isPresent() ? "warning" : "caution";
        String statements = Stream.concat(verdict.statements().stream(), verdict.supplemental().stream())
                .map(s -> draft.say("hazard.statement", "code", s.code(), "text", s.printed())).collect(Collectors.joining(". "));
        if (!verdict.known()) {
            statements = (draft.say("hazard.unknown", "parts", draft.called(recipe.from().name())) + " " + statements).strip();
        }
        String wear = new Protection(rules).of(List.of(verdict), Set.of()).stream().filter(m -> WORN.contains(m.rule().measure()))
                .map(m -> draft.words().find("wall." + m.rule().measure()).orElseGet(() -> draft.tables().phrase(m.rule().text()))).distinct().collect(Collectors.joining("; "));
        return Optional.of(new Piece.Caution(draft.say("caution." + level), List.of("danger", "warning", "caution").indexOf(level), source(recipe.from()),
                Text.words(statements), wear.isEmpty() ? List.of() : Text.words(wear + ".")));
    }

    // --- the recipe

    /** @param provision what of it is put out for the groups, if anything is */
    List<Piece> recipe(Recipe recipe, Optional<Provision> provision) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece.Heading(3, draft.compose("recipe.make", Map.of("volume", quantity(recipe.volume()), "label", labels.toMake(recipe.block())))));
        handling(recipe).ifPresent(pieces::add);
        List<List<Text>> notes = new ArrayList<>();
        recipe.rework().ifPresent(r -> notes.add(List.of(new Text.Strong(Text.words(rework(r))))));
        if (draft.procedure().quantity(recipe.name()).flatMap(q -> q.typed(Property.STRENGTH)).isPresent()) {
            notes.add(draft.compose("recipe.found", Map.of("found", labels.strength(recipe.block()), "made", Text.words(draft.numbers().printed(recipe.strength())))));
        }
        switch (recipe.from().kind()) {
            case USUAL -> notes.add(draft.compose("recipe.usual", Map.of("source", source(recipe.from()))));
            case SOLID -> notes.add(draft.compose("recipe.solid", Map.of("source", source(recipe.from()))));
            default -> { }
        }
        if (!notes.isEmpty()) {
            pieces.add(new Piece.Paragraph(Typeset.joined(notes, " ")));
        }
        for (Recipe.Batch batch : recipe.batches()) {
            if (recipe.batches().size() > 1 || batch.count() > 1) {
                pieces.add(new Piece.Paragraph(List.of(new Text.Strong(Text.words(draft.say(batch.count() == 1 ? "recipe.one-flask" : "recipe.flasks",
                        "count", batch.count(), "flask", shown(batch.plan().last().volume())))))));
            }
            pieces.add(new Piece.Steps(1, steps(recipe, batch)));
            pieces.add(check(batch.plan().check()));
        }
        List<String> after = new ArrayList<>();
        provision.ifPresent(p -> after.add(perGroup(p)));
        recipe.keeps().ifPresent(k -> after.add(draft.say("recipe.keeps", "keeps", k)));
        if (!after.isEmpty()) {
            pieces.add(new Piece.Paragraph(Text.words(String.join(" ", after))));
        }
        return List.of(new Piece.Together(pieces.subList(0, Math.min(pieces.size(), 5))), new Piece.Together(pieces.subList(Math.min(pieces.size(), 5), pieces.size())))
                .stream().filter(t -> !t.inside().isEmpty()).<Piece>map(t -> t).toList();
    }

    private String perGroup(Provision provision) {
        if (provision.varies()) {
            return draft.say("recipe.each-by-group");
        }
        int groups = draft.procedure().setting().groups();
        return provision.bottle().map(b -> draft.say("recipe.each-bottle", "groups", groups, "share", shown(provision.share()), "bottle", shown(b)))
                .orElseGet(() -> draft.say("recipe.each", "groups", groups, "share", shown(provision.share())));
    }

    private List<List<Piece>> steps(Recipe recipe, Recipe.Batch batch) {
        List<List<Piece>> steps = new ArrayList<>();
        for (int i = 0; i < batch.acts().size(); i++) {
            Preparation step = batch.plan().steps().get(i);
            List<Text> source = i == 0 ? source(recipe.from()) : Text.words(draft.say("recipe.just-made"));
            Optional<Figure> rise = i == 0 ? recipe.rise().filter(r -> recipe.hot()) : Optional.empty();
            boolean last = i == batch.acts().size() - 1;
            new Wording(step, source, rise, last, batch.acts().get(i)).into(steps);
        }
        return steps;
    }

    /** One flask of a plan. @param last whether it is the solution that is wanted, and not a stronger one on the way */
    private final class Wording {
        private final Preparation step;
        private final List<Text> source;
        private final Optional<Figure> rise;
        private final boolean last;
        private final List<Act> acts;

        Wording(Preparation step, List<Text> source, Optional<Figure> rise, boolean last, List<Act> acts) {
            this.step = step;
            this.source = source;
            this.rise = rise;
            this.last = last;
            this.acts = acts;
        }

        void into(List<List<Piece>> steps) {
            double water = acts.stream().filter(Act.Water.class::isInstance).mapToDouble(a -> ((Act.Water) a).volume()).findFirst().orElse(0);
            boolean hot = acts.stream().anyMatch(Act.Cool.class::isInstance);
            for (Act act : acts) {
                if (act instanceof Act.Take take) {
                    String with = take.delivery().name().toLowerCase(Locale.ROOT).replace('_', '-');
                    say(steps, "recipe.take-" + with + (step.source().fumes() ? "-fuming" : ""), Map.of("amount", quantity(take.amount()), "source", source));
                } else if (act instanceof Act.Add add) {
                    boolean none = water < 0.005 * step.volume().value();
                    boolean stock = add.order() == Care.Order.STOCK_INTO_WATER;
                    String key = none && stock ? "recipe.add-alone" : stock && hot ? "recipe.add-stock-slowly"
                            : "recipe.add-" + add.order().name().toLowerCase(Locale.ROOT).replace('_', '-');
                    say(steps, key, Map.of("water", quantity(water), "flask", quantity(step.volume())));
                } else if (act instanceof Act.HeatNotKnown) {
                    say(steps, "recipe.heat-unknown", Map.of());
                } else if (act instanceof Act.Cool) {
                    say(steps, rise.isPresent() ? "recipe.cool-rise" : acts.contains(new Act.HeatNotKnown()) ? "recipe.cool-unknown" : "recipe.cool", rise.map(r -> Map.of("rise",
                            Text.words(draft.numbers().printedNumber(Double.parseDouble(Digits.significant(r.value(), FIGURES_OF_RISE))) + Numbers.NARROW_SPACE + "K"))).orElse(Map.of()));
                } else if (act instanceof Act.MakeUp) {
                    boolean inFlask = step.delivery() != tarewright.chemistry.solution.Delivery.BALANCE && !hot
                            && acts.stream().anyMatch(a -> a instanceof Act.Add add && add.order() == Care.Order.STOCK_INTO_WATER);
                    say(steps, (inFlask ? "recipe.make-up-flask" : "recipe.make-up-beaker") + (last ? "" : "-between"), Map.of("flask", quantity(step.volume())));
                }
            }
        }

        private void say(List<List<Piece>> steps, String key, Map<String, List<Text>> named) {
            steps.add(List.of(new Piece.Paragraph(draft.compose(key, named))));
        }
    }

    private Piece check(AmountCheck check) {
        return new Piece.Together(List.of(draft.paragraph("recipe.check"), new Piece.Working(List.of(
                workings.last(check.in(), draft.say("recipe.check-in")), workings.last(check.out(), draft.say("recipe.check-out"))))));
    }

    private String rework(Rework rework) {
        if (rework instanceof Rework.OtherHydrate hydrate) {
            return draft.say("recipe.other-hydrate", "named", hydrate.named(), "shelf", hydrate.onShelf());
        }
        Rework.OtherStrength strength = (Rework.OtherStrength) rework;
        return draft.say("recipe.other-strength", "named", strength.named(), "shelf", strength.onShelf());
    }

    // --- what has none

    Piece unmade(Unmade unmade) {
        List<Text> why = Text.words(unmade.trouble().map(this::why)
                .orElseGet(() -> draft.say("recipe.none-" + unmade.why().name().toLowerCase(Locale.ROOT).replace('_', '-'))));
        return new Piece.Paragraph(draft.compose("recipe.unmade", Map.of("label", List.of(new Text.Strong(labels.label(unmade.block()))), "why", why)));
    }

    private String why(SolutionTrouble trouble) {
        List<Object> named = new ArrayList<>();
        trouble.fields().forEach((name, value) -> {
            Object plain = value instanceof Optional<?> maybe ? maybe.map(Object::toString).orElse("") : value;
            named.add(name);
            named.add(plain);
        });
        boolean bound = trouble instanceof SolutionTrouble.BeyondSolubility beyond && beyond.bound();
        return draft.say("recipe." + trouble.id() + (bound ? "-bound" : ""), named.toArray());
    }

    // --- names and numbers

    private List<Text> source(Ingredient from) {
        return source(draft, from);
    }

    /** As on its label; a hydrate with its formula, since another one would need another mass. */
    static List<Text> source(Draft draft, Ingredient from) {
        Optional<QuantityBlock> block = from.kind() == Ingredient.Kind.BLOCK ? draft.procedure().procedure().quantity(from.name()) : Optional.empty();
        List<Text> name = block.map(new Labels(draft)::label).orElseGet(() -> draft.prose().of(draft.called(from.name())));
        Optional<String> typed = from.stock().flatMap(StockBlock::strength).map(s -> s.at().text())
                .or(() -> from.stock().flatMap(StockBlock::purity).map(p -> p.at().text()));
        boolean hydrate = !from.formula().sameComposition(from.formula().anhydrous());
        List<Text> detail = typed.map(t -> draft.prose().of(draft.numbers().typed(t))).orElseGet(() -> hydrate && !Plain.of(name).contains(from.formula().unicode())
                ? List.of(draft.formula(from.formula())) : List.of());
        return detail.isEmpty() ? name : draft.compose("label.with-strength", Map.of("name", name, "strength", detail));
    }

    private List<Text> quantity(Figure figure) {
        return List.of(new Text.Quantity(shown(figure)));
    }

    private List<Text> quantity(double volume) {
        var unit = UsualUnits.of(Dimension.VOLUME, volume);
        double value = Double.parseDouble(Digits.significant(unit.fromSi(volume), FIGURES_OF_WATER));
        return Text.words(draft.numbers().printedNumber(value) + Numbers.NARROW_SPACE + unit.symbol());
    }

    private String shown(Figure figure) {
        return draft.numbers().printed(figure);
    }
}
