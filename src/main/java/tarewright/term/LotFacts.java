package tarewright.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import tarewright.derivation.Accepted;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Step;
import tarewright.finding.Finding;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.PotWaste;
import tarewright.procedure.bench.WorstHand;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.Version;
import tarewright.safety.Clash;
import tarewright.safety.Rulebook;
import tarewright.safety.Statement;
import tarewright.safety.Verdict;
import tarewright.setting.DayValue;
import tarewright.setting.Room;
import tarewright.setting.Setting;
import tarewright.wording.Numbers;
import tarewright.wording.Outward;

/**
 * Everything that a print of one procedure says, fact by fact, for the manifest and for what changed: figures and answers of each handout where amounts are dealt, what is got
 * ready, hazards as on the panel on the wall.
 */
final class LotFacts {
    private static final Numbers NUMBERS = Numbers.in("en");
    private static final double PH_STEPS = 100;
    private final List<Fact> facts = new ArrayList<>();
    private String hand = "";

    private LotFacts() {
    }

    /** @param footer words for every footer */
    static List<Fact> of(Resolved procedure, Rulebook rules, List<Finding> warnings, String footer) {
        LotFacts all = new LotFacts();
        all.setting(procedure.setting());
        all.said("footer", footer);
        for (Hand each : procedure.hands()) {
            all.hand = each.label();
            all.worked(each.resolved());
        }
        procedure.versions().stream().skip(1).forEach(all::version);
        all.hand = "";
        new PrepFacts(all::figure, all::add).of(procedure, rules);
        all.safety(BenchSafety.of(WorstHand.of(procedure, rules), rules));
        all.add("warnings", "", "", warnings.stream().map(Finding::id).distinct().sorted().toList(), false);
        return List.copyOf(all.facts);
    }

    /** What a handout and the key to it say. */
    private void worked(Resolved procedure) {
        procedure.quantities().forEach(q -> q.figures().forEach((property, figure) -> figure("quantity", q.name(), property.words(), figure)));
        procedure.values().forEach((name, figure) -> figure("quantity", name, "value", figure));
        procedure.readings().forEach(r -> figure("quantity", r.block().name(), "reading", r.value()));
        procedure.reactions().forEach(this::reaction);
        procedure.answers().forEach(this::answer);
    }

    private void setting(Setting setting) {
        said("school", setting.occasion().school());
        said("section", setting.occasion().section());
        said("date", setting.occasion().date());
        said("groups", setting.groups());
        said("group size", setting.groupSize());
        said("runs", setting.runs());
        said("versions", setting.versions() == 1 ? "" : setting.versions());
        said("spare", NUMBERS.plainNumber(setting.spare() * 100) + " %");
        Room room = setting.room();
        figure("setting", "", "room temperature", room.temperature());
        figure("setting", "", "room pressure", room.pressure());
        figure("setting", "", "room humidity", room.humidity());
        room.volume().ifPresent(v -> figure("setting", "", "room volume", v));
        said("hood", setting.hood().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        said("paper", setting.paper().name());
        said("language", setting.language());
        said("country", setting.country());
        add("setting", "", "on the day", setting.onTheDay().stream().map(DayValue::said).sorted().toList(), true);
    }

    private void said(String what, Object shown) {
        String text = String.valueOf(shown);
        if (!text.isEmpty()) {
            add("setting", "", what, List.of(text), true);
        }
    }

    private void figure(String about, String of, String what, Figure figure) {
        number(about, of, what, NUMBERS.plain(figure), List.of(figure.value()), typed(figure));
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

    /** Only the questions' numbers and their answers are another in another version. */
    private void version(Version version) {
        String behind = ", version " + version.letter();
        for (Hand each : version.resolved().hands()) {
            hand = each.label();
            each.resolved().values().forEach((name, figure) -> figure("quantity", name + behind, "value", figure));
            each.resolved().answers().forEach(a -> answer(a, behind));
        }
    }

    private void answer(ResolvedAnswer answer) {
        answer(answer, "");
    }

    private void answer(ResolvedAnswer answer, String behind) {
        String number = answer.number() + behind;
        answer.value().ifPresent(value -> {
            figure("question", number, "answer", value);
            answer.accepted().ifPresent(range -> accepted(number, value, range));
            answer.slips().forEach(s -> number("question", number, "slip " + s.kind().id().replace('-', ' '), NUMBERS.plain(value.unit().fromSi(s.value()), value.unit(),
                    Numbers.decimals(value)), List.of(s.value()), false));
        });
        if (answer.block().sought() instanceof AnswerBlock.InWords words) {
            add("question", number, "words", List.of(words.words().value()), true);
        } else if (answer.block().sought() instanceof AnswerBlock.Choice choice) {
            add("question", number, "choice", List.of(String.join("; ", choice.options())), true);
        }
        answer.block().marks().ifPresent(m -> add("question", number, "marks", List.of(String.valueOf(m)), true));
    }

    /** As the key prints it: to the answer's last digit, outward. */
    private void accepted(String number, Figure value, Accepted range) {
        Outward shown = Outward.of(value, range.from(), range.to());
        number("question", number, "accepted", NUMBERS.plain(shown.from(), shown.unit(), shown.decimals()) + " to "
                + NUMBERS.plain(shown.to(), shown.unit(), shown.decimals()), List.of(range.from(), range.to()), false);
    }

    private void safety(BenchSafety safety) {
        safety.verdicts().forEach(this::verdict);
        safety.air().forEach((name, air) -> figure("safety", name, "air around a face", air.aroundFace()));
        add("safety", "", "hood", List.of(safety.hood().name().toLowerCase(Locale.ROOT).replace('_', ' ')), false);
        add("safety", "", "must not meet", safety.clashes().stream().map(LotFacts::clash).distinct().sorted().toList(), false);
        for (PotWaste waste : safety.waste()) {
            waste.volume().ifPresent(v -> figure("safety", waste.name(), "volume of waste", v));
            waste.pH().ifPresent(pH -> number("safety", waste.name(), "pH of waste", NUMBERS.plainNumber(Math.round(pH * PH_STEPS) / PH_STEPS), List.of(pH), false));
            add("safety", waste.name(), "waste containers", waste.advice().containers(), false);
        }
    }

    private static String clash(Clash clash) {
        String with = clash.first() == clash.second() ? "" : " and " + clash.second().name();
        return clash.first().name() + with + " (" + clash.rule().hazard() + ")";
    }

    private void verdict(String name, Verdict verdict) {
        add("hazards", name, "signal word", verdict.signalWord().map(w -> w.name().toLowerCase(Locale.ROOT)).stream().toList(), false);
        add("hazards", name, "", Stream.concat(verdict.statements().stream(), verdict.supplemental().stream()).map(Statement::code).distinct().toList(), false);
        add("hazards", name, "pictograms", verdict.pictograms(), false);
        add("hazards", name, "known", List.of(verdict.known() ? "known" : "not known"), false);
    }

    private void add(String about, String of, String what, List<String> shown, boolean typed) {
        facts.add(new Fact(about, of, what, hand, shown, List.of(), typed));
    }

    private void number(String about, String of, String what, String shown, List<Double> values, boolean typed) {
        facts.add(new Fact(about, of, what, hand, List.of(shown), values, typed));
    }
}
