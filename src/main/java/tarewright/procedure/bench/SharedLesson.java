package tarewright.procedure.bench;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tarewright.safety.Clash;
import tarewright.safety.Incompatible;
import tarewright.safety.Matter;
import tarewright.safety.PairRule;
import tarewright.safety.Rulebook;

/** What must not meet among procedures that one class, or one room, does at the same time. A flame of the one counts for the other. */
public final class SharedLesson {
    private SharedLesson() {
    }

    /**
     * Something of one procedure that must not meet something of another.
     *
     * @param clash its first matter is of the first procedure, its second of the other
     * @param container the waste container that both name, where it is what is left of both
     */
    public record Meeting(BenchSafety first, BenchSafety other, Clash clash, Optional<String> container) {
    }

    /** Of every two of them, gravest first within two. */
    public static List<Meeting> among(List<BenchSafety> lesson, Rulebook rules) {
        List<Meeting> all = new ArrayList<>();
        for (int i = 0; i < lesson.size(); i++) {
            for (int j = i + 1; j < lesson.size(); j++) {
                all.addAll(between(lesson.get(i), lesson.get(j), rules));
            }
        }
        return all;
    }

    private static List<Meeting> between(BenchSafety one, BenchSafety other, Rulebook rules) {
        Set<PairRule.Setting> going = EnumSet.noneOf(PairRule.Setting.class);
        going.addAll(Going.of(one.procedure()));
        going.addAll(Going.of(other.procedure()));
        List<Meeting> all = new ArrayList<>(meetings(one, matters(one), other, matters(other), going, Optional.empty(), rules));
        for (WasteContainer here : one.containers()) {
            other.containers().stream().filter(there -> there.into().equals(here.into())).forEach(there -> all.addAll(meetings(one, left(here), other,
                    left(there), Set.of(), Optional.of(here.into()), rules)));
        }
        return all;
    }

    /** Bottles, products, stocks. */
    private static List<Matter> matters(BenchSafety safety) {
        return Stream.concat(safety.bench().verdicts().stream(), safety.stocks().stream().map(Stock::verdict)).map(v -> v.matter()).toList();
    }

    private static List<Matter> left(WasteContainer container) {
        return Stream.concat(container.pots().stream().map(p -> p.advice().left().matter()), container.bottles().stream().map(b -> b.verdict().matter()))
                .toList();
    }

    private static List<Meeting> meetings(BenchSafety one, List<Matter> ones, BenchSafety other, List<Matter> others, Set<PairRule.Setting> going,
            Optional<String> container, Rulebook rules) {
        Incompatible incompatible = new Incompatible(rules);
        List<Meeting> all = new ArrayList<>();
        for (Matter here : ones) {
            for (Matter there : others) {
                incompatible.among(List.of(here, there), going, List.of()).stream().filter(c -> !c.withWater() && c.first() != c.second())
                        .map(c -> c.first() == here ? c : new Clash(c.second(), c.first(), c.secondPart(), c.firstPart(), c.rule()))
                        .forEach(c -> all.add(new Meeting(one, other, c, container)));
            }
        }
        all.sort((a, b) -> b.clash().severity().compareTo(a.clash().severity()));
        return all;
    }
}
