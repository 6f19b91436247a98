package tarewright.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.PotWaste;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.safety.Rulebook;
import tarewright.safety.Statement;
import tarewright.safety.Verdict;
import tarewright.setting.Room;
import tarewright.setting.Setting;
import tarewright.wording.Numbers;

/** Everything that a print of one procedure says, fact by fact, for the manifest and for what changed. */
final class LotFacts {
    private static final Numbers NUMBERS = Numbers.in("en");
    private static final double PH_STEPS = 100;
    private final List<Fact> facts = new ArrayList<>();

    private LotFacts() {
    }

    static List<Fact> of(Resolved procedure, Rulebook rules, List<Finding> warnings) {
        LotFacts all = new LotFacts();
        all.setting(procedure.setting());
        procedure.quantities().forEach(q -> q.figures().forEach((property, figure) -> all.figure("quantity", q.name(), property.words(), figure)));
        procedure.values().forEach((name, figure) -> all.figure("quantity", name, "value", figure));
        procedure.readings().forEach(r -> all.figure("quantity", r.block().name(), "reading", r.value()));
        procedure.reactions().forEach(all::reaction);
        procedure.answers().forEach(all::answer);
        all.safety(BenchSafety.of(procedure, rules));
        all.add("warnings", "", "", warnings.stream().map(Finding::id).distinct().sorted().toList(), false);
        return List.copyOf(all.facts);
    }

    private void setting(Setting setting) {
        said("groups", setting.groups());
        said("group size", setting.groupSize());
        said("runs", setting.runs());
        said("spare", NUMBERS.plainNumber(setting.spare() * 100) + " %");
        Room room = setting.room();
        said("room temperature", NUMBERS.plain(room.temperature()));
        said("room pressure", NUMBERS.plain(room.pressure()));
        said("room humidity", NUMBERS.plain(room.humidity()));
        room.volume().ifPresent(v -> said("room volume", NUMBERS.plain(v)));
        said("hood", setting.hood().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        said("paper", setting.paper().name());
        said("language", setting.language());
        said("country", setting.country());
    }

    private void said(String what, Object shown) {
        String text = String.valueOf(shown);
        if (!text.isEmpty()) {
            add("setting", "", what, List.of(text), true);
        }
    }

    private void figure(String about, String of, String what, Figure figure) {
        add(about, of, what, List.of(NUMBERS.plain(figure)), typed(figure));
    }

    private static boolean typed(Figure figure) {
        Step step = figure.step();
        if (step instanceof Step.Given given) {
            return given.origin() instanceof Origin.Author || given.origin() instanceof Origin.Circumstance || given.origin() instanceof Origin.Expected;
        }
        return step instanceof Step.Set set && typed(set.target());
    }

    private void reaction(ResolvedReaction reaction) {
        String name = reaction.name();
        reaction.block().equation().ifPresent(e -> add("reaction", name, "equation", List.of(e.plain()), true));
        reaction.heat().ifPresent(h -> figure("reaction", name, "heat", h));
        reaction.temperatureRise().ifPresent(t -> figure("reaction", name, "temperature rise", t));
        for (ResolvedReaction.PotAccount pot : reaction.pots()) {
            String of = pot.batch().isEmpty() ? name : name + ", " + pot.batch();
            if (!pot.limiting().isEmpty()) {
                add("reaction", of, "limiting", List.of(String.join(", ", pot.limiting())), false);
            }
            pot.extent().ifPresent(e -> figure("reaction", of, "extent", e));
            pot.leftOver().forEach((block, figure) -> figure("reaction", of, "left over of " + block, figure));
        }
    }

    private void answer(ResolvedAnswer answer) {
        String number = answer.number();
        answer.value().ifPresent(value -> {
            add("question", number, "answer", List.of(NUMBERS.plain(value)), false);
            answer.accepted().ifPresent(range -> {
                int decimals = Numbers.decimals(value);
                add("question", number, "accepted", List.of(NUMBERS.plain(value.unit().fromSi(range.from()), value.unit(), decimals) + " to "
                        + NUMBERS.plain(value.unit().fromSi(range.to()), value.unit(), decimals)), false);
            });
            answer.slips().forEach(s -> add("question", number, "slip " + s.kind().id(), List.of(NUMBERS.plain(value.unit().fromSi(s.value()), value.unit(),
                    Numbers.decimals(value))), false));
        });
        if (answer.block().sought() instanceof AnswerBlock.InWords words) {
            add("question", number, "words", List.of(words.words().value()), true);
        } else if (answer.block().sought() instanceof AnswerBlock.Choice choice) {
            add("question", number, "choice", List.of(String.join("; ", choice.options())), true);
        }
        answer.block().marks().ifPresent(m -> add("question", number, "marks", List.of(String.valueOf(m)), true));
    }

    private void safety(BenchSafety safety) {
        safety.verdicts().forEach(this::verdict);
        safety.air().forEach((name, air) -> figure("safety", name, "air around a face", air.aroundFace()));
        add("safety", "", "hood", List.of(safety.hood().name().toLowerCase(Locale.ROOT).replace('_', ' ')), false);
        add("safety", "", "must not meet", safety.clashes().stream().map(String::valueOf).sorted().toList(), false);
        for (PotWaste waste : safety.waste()) {
            waste.volume().ifPresent(v -> figure("safety", waste.name(), "volume of waste", v));
            waste.pH().ifPresent(pH -> add("safety", waste.name(), "pH of waste", List.of(NUMBERS.plainNumber(Math.round(pH * PH_STEPS) / PH_STEPS)), false));
            add("safety", waste.name(), "waste containers", waste.advice().containers(), false);
        }
    }

    private void verdict(String name, Verdict verdict) {
        add("hazards", name, "signal word", verdict.signalWord().map(w -> w.name().toLowerCase(Locale.ROOT)).stream().toList(), false);
        add("hazards", name, "", Stream.concat(verdict.statements().stream(), verdict.supplemental().stream()).map(Statement::code).distinct().toList(), false);
        add("hazards", name, "pictograms", verdict.pictograms(), false);
        add("hazards", name, "known", List.of(verdict.known() ? "known" : "not known"), false);
    }

    private void add(String about, String of, String what, List<String> shown, boolean typed) {
        facts.add(new Fact(about, of, what, shown, typed));
    }
}
