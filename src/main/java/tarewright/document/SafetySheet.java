package tarewright.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Substance;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Matter;
import tarewright.procedure.declare.Notes.CautionBlock;
import tarewright.procedure.declare.Notes.WasteBlock;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.safety.RuleSet;
import tarewright.safety.Statement;
import tarewright.tables.HazardTables.CountryRules;
import tarewright.wording.Numbers;

/**
 * The panel for wall and bench. Students read it too, so it keeps the same secrets as their handout; the hazards are those of
 * the real strength all the same.
 */
final class SafetySheet {
    private final Draft draft;
    private final Resolved whole;
    private final CountryRules country;
    private final Bench bench;
    private final Hazards hazards;

    /** @param draft of the hand that could hurt most @param whole with all that is dealt */
    SafetySheet(Draft draft, Resolved whole, CountryRules country) {
        this.draft = draft;
        this.whole = whole;
        this.country = country;
        this.bench = Bench.of(draft, country.rules());
        this.hazards = new Hazards(draft);
    }

    List<Piece> pieces() {
        Wear wear = new Wear(draft, bench, country.rules());
        List<Piece> pieces = new ArrayList<>(new Wall(draft, bench).pieces(wear.measures()));
        pieces.addAll(unknown());
        pieces.addAll(boxes("heading.on-the-bench", bench.bottles()));
        pieces.addAll(boxes("heading.made-here", bench.made()));
        pieces.addAll(under("heading.air", new Escapes(draft).pieces(bench)));
        pieces.addAll(new Apart(draft).pieces(bench, country.rules()));
        pieces.addAll(List.of(draft.heading(2, "heading.protection"), wear.withReasons()));
        pieces.addAll(cautions());
        pieces.addAll(new Accidents(draft).pieces(bench.verdicts(), wear.circumstances(), country.rules()));
        pieces.addAll(waste());
        pieces.addAll(Overview.totals(draft));
        pieces.addAll(basis());
        return pieces;
    }

    private List<Piece> unknown() {
        return bench.verdicts().stream().allMatch(v -> v.known()) ? List.of()
                : List.of(new Piece.Paragraph(List.of(new Text.Strong(Text.words(draft.say("safety.some-unknown"))))));
    }

    /** A box for each, also for what is not classified: that is said in it, with what suppliers may add. */
    private List<Piece> boxes(String heading, List<Bottle> bottles) {
        return under(heading, bottles.stream().<Piece>map(b -> hazards.box(b, amount(b), true)).toList());
    }

    private List<Piece> under(String heading, List<Piece> pieces) {
        List<Piece> all = new ArrayList<>();
        if (!pieces.isEmpty()) {
            all.add(draft.heading(2, heading));
            all.addAll(pieces);
        }
        return all;
    }

    /** What a group takes or makes of it; of what they read off no more than that it fits its vessel. */
    private List<Text> amount(Bottle bottle) {
        List<List<Text>> amounts = new ArrayList<>();
        for (ResolvedQuantity use : bottle.uses()) {
            Optional<Figure> amount = use.taken() ? use.amount() : use.figure(Property.VOLUME)
                    .or(() -> use.figure(Property.MASS));
            boolean kept = amount.isEmpty() || draft.keeps(amount.get()) || draft.secrets().hidesAmount(use) || !use.taken()
                    && draft.secrets().isRead(amount.get());
            if (!kept) {
                amounts.add(draft.compose("safety.for-a-group",
                        Map.of("amount", Text.words(draft.numbers().printed(amount.get())))));
            } else {
                capacity(use).ifPresent(c -> amounts.add(draft.compose("safety.less-than", Map.of("capacity", Text.words(c)))));
            }
        }
        return Typeset.joined(amounts.stream().distinct().toList(), "; ");
    }

    private Optional<String> capacity(ResolvedQuantity use) {
        return use.block().vessel().flatMap(v -> draft.procedure().procedure().apparatus(v.value()))
                .flatMap(ApparatusItem::capacity).map(At::value)
                .map(t -> Numbers.withUnit(draft.numbers().localised(t.number()), t.unit()));
    }

    private List<Piece> cautions() {
        List<CautionBlock> cautions = draft.procedure().procedure().cautions();
        return under("heading.cautions", cautions.stream().<Piece>map(c -> BodyWalk.caution(draft, c)).toList());
    }

    private List<Piece> waste() {
        WasteWords words = new WasteWords(draft, Disposal.of(draft, whole, country.rules()));
        List<List<Piece>> items = new ArrayList<>();
        for (WasteBlock waste : draft.procedure().procedure().wastes()) {
            items.add(List.of(new Piece.Paragraph(words.sentences(waste))));
        }
        items.addAll(new LeftOvers(draft, whole, country.rules()).sentences());
        items.add(List.of(draft.paragraph("waste.local-rules")));
        return List.of(draft.heading(2, "heading.waste"), new Piece.Bullets(items));
    }

    private String phrase(String english) {
        return draft.tables().phrase(english);
    }

    /** What this panel rests on, and what it is not. */
    private List<Piece> basis() {
        RuleSet set = country.rules().ruleSet();
        List<List<Piece>> items = new ArrayList<>();
        items.add(List.of(draft.paragraph("safety.local-rules")));
        items.add(List.of(draft.paragraph("safety.data-sheets")));
        items.add(List.of(draft.paragraph("safety.no-assessment")));
        items.add(List.of(draft.paragraph("safety.rule-set", "title", phrase(set.title()), "edition", phrase(set.edition()), "note",
                phrase(set.note()))));
        String code = draft.procedure().setting().country();
        if (!country.own() && !code.isEmpty()) {
            items.add(List.of(draft.paragraph("safety.not-own-rules", "country", code, "title", phrase(set.title()))));
        }
        List<String> memory = bench.verdicts().stream()
                .flatMap(v -> Stream.concat(v.statements().stream(), v.supplemental().stream()))
                .filter(s -> s.provenance().confidence() == Confidence.MEMORY).map(Statement::code).distinct().sorted().toList();
        if (!memory.isEmpty()) {
            items.add(List.of(draft.paragraph("safety.words-from-memory", "codes", String.join(", ", memory))));
        }
        names("safety.names-from-memory", draft.tables()::isUnproven).ifPresent(items::add);
        names("safety.names-lacking", draft.tables()::lacks).ifPresent(items::add);
        // A single point of it on a page of its own is overlooked.
        return List.of(new Piece.Together(List.of(draft.heading(2, "heading.basis"), new Piece.Bullets(items))));
    }

    /** Names of substances of which something must be said; none that the page keeps from its reader. */
    private Optional<List<Piece>> names(String key, Predicate<String> which) {
        Labels labels = new Labels(draft);
        Stream<String> taken = bench.things().taken().stream().map(t -> t.source().block()).filter(b -> b.labelAs().isEmpty() && !labels.isMasked(b))
                .flatMap(b -> labels.matter(b).stream()).map(Matter::name);
        Stream<String> made = bench.things().made().stream().filter(m -> m.block().isEmpty() && draft.disguise(m.species().formula()).isEmpty())
                .flatMap(m -> m.substance().stream()).map(Substance::name);
        List<String> names = Stream.concat(taken, made).filter(which).map(draft::called).distinct().sorted().toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(List.of(draft.paragraph(key, "names", String.join(", ", names))));
    }
}
