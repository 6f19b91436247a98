package tarewright.procedure.resolve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tarewright.procedure.declare.Procedure;
import tarewright.procedure.declare.ValueBlock;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.tables.ReferenceTables;

/** Where the values of a procedure are used: which follow from which, and in which places of the text they are shown. */
public final class Varied {
    private final Names names;
    private final Map<String, Set<String>> reach = new LinkedHashMap<>();
    private final List<Shown> shown = new ArrayList<>();

    /** Where in the text a reference stands. */
    public enum Place { TEXT, STEP, QUESTION, KEY, PREP }

    /** A reference to a value. @param question the outermost item of the question that it stands in */
    record Shown(Inline.Reference reference, Place place, Optional<Part.Item> question, String name, boolean blank) {
    }

    Varied(Procedure procedure, Names names) {
        this.names = names;
        Map<String, Set<String>> direct = new LinkedHashMap<>();
        procedure.values().forEach(v -> direct.put(v.name(), v.is().map(is -> values(is.value())).orElse(Set.of())));
        direct.keySet().forEach(v -> reach.put(v, from(v, direct)));
        walk(procedure.source().body(), Place.TEXT, Optional.empty());
    }

    /** Of a procedure that was worked out. */
    public static Varied of(Resolved procedure) {
        return new Varied(procedure.procedure(), new Names(procedure.procedure(), procedure.tables()));
    }

    static Varied of(Procedure procedure, ReferenceTables tables) {
        return new Varied(procedure, new Names(procedure, tables));
    }

    /** A value and those that it follows from, nearest first. */
    private static Set<String> from(String value, Map<String, Set<String>> direct) {
        Set<String> seen = new LinkedHashSet<>(Set.of(value));
        Deque<String> next = new ArrayDeque<>(seen);
        while (!next.isEmpty()) {
            direct.getOrDefault(next.remove(), Set.of()).stream().filter(seen::add).forEach(next::add);
        }
        return seen;
    }

    private Set<String> values(Expression formula) {
        Set<String> all = new LinkedHashSet<>();
        named(formula).forEach(n -> value(names.meaning(n.text())).ifPresent(all::add));
        return all;
    }

    /** The values that a formula follows from, through other values too. */
    public Set<String> reached(Expression formula) {
        Set<String> all = new LinkedHashSet<>();
        values(formula).forEach(v -> all.addAll(reach.getOrDefault(v, Set.of(v))));
        return all;
    }

    /** Every name in a formula. */
    static List<Expression.Named> named(Expression formula) {
        if (formula instanceof Expression.Named named) {
            return List.of(named);
        } else if (formula instanceof Expression.Selected selected) {
            return List.of(selected.of());
        } else if (formula instanceof Expression.Negated negated) {
            return named(negated.of());
        } else if (formula instanceof Expression.Binary binary) {
            List<Expression.Named> both = new ArrayList<>(named(binary.left()));
            both.addAll(named(binary.right()));
            return both;
        }
        return List.of();
    }

    /** The values that a student reads in the text of one question, its parts among it. */
    public Set<String> shownIn(Part.Item question) {
        Set<String> all = new LinkedHashSet<>();
        shown.stream().filter(s -> s.question().filter(q -> q == question).isPresent() && told(s)).forEach(s -> all.addAll(reach.get(s.name())));
        return all;
    }

    /** The values that a student reads anywhere. */
    Set<String> shown() {
        Set<String> all = new LinkedHashSet<>();
        shown.stream().filter(Varied::told).forEach(s -> all.addAll(reach.get(s.name())));
        return all;
    }

    /** The references that show one value, or what follows from it, wherever they stand. */
    List<Shown> of(String value) {
        return shown.stream().filter(s -> reach.get(s.name()).contains(value)).toList();
    }

    private static boolean told(Shown shown) {
        return !shown.blank() && shown.place() != Place.KEY && shown.place() != Place.PREP;
    }

    /** The questions of a procedure, each with its parts. */
    public static List<Part.Item> questions(List<Part> body) {
        List<Part.Item> all = new ArrayList<>();
        for (Part part : body) {
            if (part instanceof Part.Items list && list.ordered()) {
                for (Part.Item item : list.items()) {
                    all.addAll(item.isQuestion() ? List.of(item) : questions(item.parts()));
                }
            } else {
                all.addAll(questions(part.parts()));
            }
        }
        return all;
    }

    private void walk(List<Part> parts, Place place, Optional<Part.Item> question) {
        for (Part part : parts) {
            part.inlines().forEach(top -> Inline.walk(top, i -> {
                if (i instanceof Inline.Reference reference) {
                    Meaning meaning = names.meaning(reference.text());
                    value(meaning).ifPresent(v -> shown.add(new Shown(reference, place, question, v, meaning instanceof Meaning.Blank)));
                }
            }));
            if (part instanceof Part.Items list) {
                for (Part.Item item : list.items()) {
                    boolean asks = question.isEmpty() && list.ordered() && item.isQuestion();
                    walk(item.parts(), asks ? Place.QUESTION : place == Place.TEXT && list.ordered() ? Place.STEP : place,
                            asks ? Optional.of(item) : question);
                }
            } else if (part instanceof TypedBlock block) {
                walk(block.markdown(), block.type().equals("prep") ? Place.PREP : Place.KEY, question);
            } else {
                walk(part.parts(), place, question);
            }
        }
    }

    private static Optional<String> value(Meaning meaning) {
        if (meaning instanceof Meaning.Valued valued) {
            return Optional.of(valued.block().name());
        } else if (meaning instanceof Meaning.Working working) {
            return value(working.of());
        }
        return meaning instanceof Meaning.Blank blank ? value(blank.of()) : Optional.empty();
    }
}
