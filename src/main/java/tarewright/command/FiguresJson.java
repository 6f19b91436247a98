package tarewright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.chemistry.BalancedEquation;
import tarewright.derivation.Accepted;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.procedure.declare.AnswerBlock;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Hand;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.ResolvedReaction;
import tarewright.procedure.resolve.ResolvedReaction.PotAccount;
import tarewright.procedure.resolve.ResolvedReading;
import tarewright.procedure.resolve.Slip;
import tarewright.procedure.resolve.Version;
import tarewright.quantity.Digits;
import tarewright.quantity.Rounding;
import tarewright.quantity.Unit;
import tarewright.setting.Room;
import tarewright.setting.Setting;
import tarewright.wording.FollowThrough;
import tarewright.wording.Numbers;
import tarewright.wording.WorkedLines;

/** A resolved procedure as one JSON object, for other programs. Values are in the unit named; {@code shown} is what a page says. */
final class FiguresJson {
    /** Binary arithmetic leaves 10.000000000000002 where 10 is meant; fourteen digits are more than any figure has. */
    private static final MathContext MEANT = new MathContext(14);
    private static final Numbers NUMBERS = Numbers.in("en");
    private static final WorkedLines WORKING = WorkedLines.in("en");
    private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(false);

    private FiguresJson() {
    }

    /** The whole object, findings left out. */
    static ObjectNode of(InputFile file, Resolved procedure) {
        ObjectNode all = NODES.objectNode();
        all.put("file", file.shown());
        all.put("procedure", procedure.name());
        all.set("setting", setting(procedure.setting()));
        worked(all, procedure);
        if (!procedure.dealt().isEmpty()) {
            ArrayNode hands = all.putArray("hands");
            procedure.hands().forEach(h -> hands.add(hand(h)));
        }
        if (!procedure.versions().isEmpty()) {
            ArrayNode versions = all.putArray("versions");
            procedure.versions().forEach(v -> versions.add(version(v)));
        }
        return all;
    }

    /** A version of the questions' numbers; with amounts that are dealt, for each hand. */
    private static ObjectNode version(Version version) {
        ObjectNode node = NODES.objectNode();
        node.put("version", version.letter());
        ObjectNode values = node.putObject("values");
        version.resolved().values().forEach((name, figure) -> values.set(name, single("value", figure)));
        answers(node, version.resolved());
        if (!version.resolved().dealt().isEmpty()) {
            ArrayNode hands = node.putArray("hands");
            for (Hand hand : version.resolved().dealt()) {
                ObjectNode each = hands.addObject();
                each.put("hand", hand.label());
                answers(each, hand.resolved());
            }
        }
        return node;
    }

    private static void worked(ObjectNode all, Resolved procedure) {
        ObjectNode quantities = all.putObject("quantities");
        procedure.quantities().forEach(q -> quantities.set(q.name(), quantity(q)));
        procedure.values().forEach((name, figure) -> quantities.set(name, single("value", figure)));
        procedure.readings().forEach(r -> quantities.set(r.block().name(), reading(r)));
        ObjectNode reactions = all.putObject("reactions");
        procedure.reactions().forEach(r -> reactions.set(r.name(), reaction(r)));
        answers(all, procedure);
    }

    private static void answers(ObjectNode all, Resolved procedure) {
        ArrayNode answers = all.putArray("answers");
        FollowThrough through = FollowThrough.of(procedure, "en");
        procedure.answers().forEach(a -> answers.add(answer(a, through)));
    }

    /** What some of the groups get, where amounts are dealt out. */
    private static ObjectNode hand(Hand hand) {
        ObjectNode node = NODES.objectNode();
        node.put("hand", hand.label());
        ArrayNode groups = node.putArray("groups");
        hand.groups().forEach(groups::add);
        ArrayNode runs = node.putArray("runs");
        hand.runs().forEach(runs::add);
        ObjectNode dealt = node.putObject("dealt");
        hand.dealt().forEach((name, amount) -> dealt.set(name, figure(amount)));
        worked(node, hand.resolved());
        return node;
    }

    // --- setting

    private static ObjectNode setting(Setting setting) {
        ObjectNode node = NODES.objectNode();
        node.put("groups", setting.groups());
        node.put("group size", setting.groupSize());
        node.put("runs", setting.runs());
        node.put("spare", clean(setting.spare()));
        Room room = setting.room();
        ObjectNode air = node.putObject("room");
        air.set("temperature", bare(room.temperature()));
        air.set("pressure", bare(room.pressure()));
        air.set("humidity", bare(room.humidity()));
        room.volume().ifPresent(v -> air.set("volume", bare(v)));
        return node;
    }

    static ObjectNode bare(Figure figure) {
        ObjectNode node = NODES.objectNode();
        node.put("value", clean(figure.shownValue()));
        node.put("unit", figure.unit().symbol());
        return node;
    }

    // --- figures

    static ObjectNode figure(Figure figure) {
        ObjectNode node = bare(figure);
        node.put("shown", NUMBERS.plain(figure));
        if (figure.step() instanceof Step.Set set) {
            rounding(node, figure, set.target(), set.rounding());
        } else if (figure.step() instanceof Step.Read read) {
            rounding(node, figure, read.truth(), read.rounding());
        }
        double u = figure.standardUncertainty();
        if (u > 0) {
            node.put("standard uncertainty", clean(u / figure.unit().factor()));
        }
        return node;
    }

    private static void rounding(ObjectNode node, Figure figure, Figure before, Rounding rounding) {
        Unit unit = figure.unit();
        node.put("before rounding", clean(unit.fromSi(before.value())));
        String division = Digits.decimals(rounding.divisionSi() / unit.factor(), Math.max(0, figure.decimals().orElse(0))) + " " + unit.symbol();
        node.put("rounding", switch (rounding.direction()) {
            case NEAREST -> "nearest " + division;
            case UP -> "up to " + division;
            case DOWN -> "down to " + division;
        });
    }

    private static ObjectNode single(String type, Figure figure) {
        ObjectNode node = NODES.objectNode();
        node.put("type", type);
        node.putObject("figures").set("value", figure(figure));
        return node;
    }

    private static ObjectNode quantity(ResolvedQuantity quantity) {
        ObjectNode node = NODES.objectNode();
        node.put("type", quantity.block().kind().word());
        quantity.matter().ifPresent(m -> node.put("formula", m.formula().plain()));
        ObjectNode figures = node.putObject("figures");
        for (Map.Entry<Property, Figure> each : quantity.figures().entrySet()) {
            figures.set(each.getKey().words(), figure(each.getValue()));
        }
        return node;
    }

    private static ObjectNode reading(ResolvedReading reading) {
        ObjectNode node = single("reading", reading.value());
        if (reading.each().size() > 1) {
            node.put("times", reading.each().size());
        }
        return node;
    }

    // --- reactions

    private static ObjectNode reaction(ResolvedReaction reaction) {
        ObjectNode node = NODES.objectNode();
        reaction.block().equation().ifPresent(equation -> {
            node.put("equation", equation.plain());
            ObjectNode coefficients = node.putObject("coefficients");
            for (BalancedEquation.Term term : equation.terms()) {
                coefficients.put(term.species().formula().plain(), term.coefficient());
            }
        });
        if (reaction.pots().size() == 1) {
            pot(node, reaction.pots().get(0));
        } else if (reaction.pots().size() > 1) {
            ObjectNode batches = node.putObject("batches");
            reaction.pots().forEach(p -> pot(batches.putObject(p.batch()), p));
        }
        return node;
    }

    private static void pot(ObjectNode node, PotAccount pot) {
        if (!pot.limiting().isEmpty()) {
            node.put("limiting", String.join(", ", pot.limiting()));
        }
        pot.extent().ifPresent(e -> node.set("extent", figure(e)));
        ObjectNode left = node.putObject("left over");
        pot.leftOver().forEach((name, figure) -> left.set(name, figure(figure)));
    }

    // --- answers

    private static ObjectNode answer(ResolvedAnswer answer, FollowThrough through) {
        ObjectNode node = NODES.objectNode();
        if (answer.number().matches("[0-9]{1,6}")) {
            node.put("question", Integer.parseInt(answer.number()));
        } else {
            node.put("question", answer.number());
        }
        if (answer.block().sought() instanceof AnswerBlock.InWords words) {
            node.put("words", words.words().value());
        } else if (answer.block().sought() instanceof AnswerBlock.Choice choice) {
            node.put("choice", choice.options().get(0));
        }
        answer.block().marks().ifPresent(m -> node.put("marks", m));
        answer.value().ifPresent(value -> {
            worked(node, value, answer.accepted(), answer.slips());
            through.formula(value).ifPresent(formula -> node.put("follow-through", formula));
        });
        return node;
    }

    private static void worked(ObjectNode node, Figure value, Optional<Accepted> accepted, List<Slip> slips) {
        ObjectNode worked = figure(value);
        accepted.filter(a -> a.standardUncertainty() > 0).ifPresent(a -> worked.put("standard uncertainty", clean(a.standardUncertainty() / value.unit().factor())));
        node.set("value", worked);
        ArrayNode working = node.putArray("working");
        WORKING.of(value).forEach(line -> working.add(line.plain()));
        accepted.ifPresent(range -> {
            ObjectNode limits = node.putObject("accepted");
            limits.put("from", clean(value.unit().fromSi(range.from())));
            limits.put("to", clean(value.unit().fromSi(range.to())));
            limits.put("unit", value.unit().symbol());
        });
        ArrayNode mistakes = node.putArray("slips");
        for (Slip slip : slips) {
            ObjectNode each = mistakes.addObject();
            each.put("slip", slip.kind().id());
            each.put("value", clean(value.unit().fromSi(slip.value())));
            each.put("unit", value.unit().symbol());
            each.put("cannot tell", slip.cannotTell());
        }
    }

    static double clean(double value) {
        return Double.isFinite(value) ? new BigDecimal(value).round(MEANT).doubleValue() : value;
    }
}
