package tarewright.procedure.prepare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.syntax.Inline;
import tarewright.procedure.syntax.Part;
import tarewright.quantity.Dimension;
import tarewright.quantity.Typed;

/**
 * What a class does with something that it left until the next lesson: steps that begin with "Next week", and what the apparatus calls kept.
 *
 * @param day the section's first class a week later or after that; where the term has none, a week later; empty where the class has no day
 * @param steps their numbers, in order
 * @param needs what is kept, what those steps name, and the balance where they weigh
 */
public record FollowUp(Optional<LocalDate> day, List<Integer> steps, List<Equipment> needs) {
    private static final int WEEK = 7;
    private static final Pattern LATER = Pattern.compile("(?:next week|next lesson|the week after|a week later|la semana siguiente|la semana que viene|la próxima semana|una semana después"
            + "|la próxima clase|en la próxima clase|en la clase siguiente)(?!\\p{L}).*", Pattern.DOTALL);
    private static final Set<String> WEIGHING = Set.of("weigh", "reweigh", "weighed", "pesa", "pesar", "pese", "pesad");

    public FollowUp {
        steps = List.copyOf(steps);
        needs = List.copyOf(needs);
    }

    /** Nothing where everything is finished in the lesson. @param all parts of the term, for the section's next class */
    public static Optional<FollowUp> of(Order.Part part, List<Order.Part> all) {
        List<Integer> steps = new ArrayList<>();
        Set<String> words = new HashSet<>();
        later(part.supplies().procedure().procedure().source().body(), steps, words);
        List<Equipment> needs = part.supplies().equipment().stream().filter(e -> e.item().kept() || named(e.item(), words) && !gone(e) || words.stream().anyMatch(WEIGHING::contains) && weighs(e.item())).toList();
        boolean anything = !steps.isEmpty() || needs.stream().anyMatch(e -> e.item().kept());
        return anything ? Optional.of(new FollowUp(part.day().map(d -> next(part, d, all)), steps, needs)) : Optional.empty();
    }

    private static LocalDate next(Order.Part part, LocalDate day, List<Order.Part> all) {
        LocalDate week = day.plusDays(WEEK);
        return all.stream().filter(p -> p.section().equals(part.section())).flatMap(p -> p.day().stream()).filter(d -> !d.isBefore(week)).min(LocalDate::compareTo).orElse(week);
    }

    /** From the step that says so to the end of its list. */
    private static void later(List<Part> parts, List<Integer> steps, Set<String> words) {
        for (Part part : parts) {
            if (part instanceof Part.Items list && list.ordered() && list.items().stream().noneMatch(Part.Item::isQuestion)) {
                boolean after = false;
                for (int i = 0; i < list.items().size(); i++) {
                    String text = text(list.items().get(i).parts());
                    after |= LATER.matcher(text.strip().toLowerCase(Locale.ROOT)).matches();
                    if (after) {
                        steps.add(list.start() + i);
                        words.addAll(words(text));
                    }
                }
            } else if (!(part instanceof Part.Items)) {
                later(part.parts(), steps, words);
            }
        }
    }

    private static String text(List<Part> parts) {
        StringBuilder text = new StringBuilder();
        parts.stream().filter(Part.Paragraph.class::isInstance).forEach(p -> ((Part.Paragraph) p).inlines().forEach(top -> Inline.walk(top, inline -> {
            if (inline instanceof Inline.Words w) {
                text.append(w.text());
            }
        })));
        return text.toString();
    }

    private static Set<String> words(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")).map(w -> w.length() > 3 && w.endsWith("s") ? w.substring(0, w.length() - 1) : w)
                .filter(w -> !w.isEmpty()).collect(Collectors.toSet());
    }

    /** The one that each group had is used up by then: a paper with chalk on it is not put out again. */
    private static boolean gone(Equipment thing) {
        return thing.item().usedUp() && thing.onTray() == 1;
    }

    /** By its name, or by the last word before a comma: a watch glass is a glass. */
    private static boolean named(ApparatusItem item, Set<String> words) {
        String[] called = item.words().toLowerCase(Locale.ROOT).split(",", 2)[0].strip().split("\\s+");
        return words(item.name()).stream().anyMatch(words::contains) || words(called[called.length - 1]).stream().anyMatch(words::contains);
    }

    private static boolean weighs(ApparatusItem item) {
        return item.divisionTyped().map(Typed::dimension).filter(Dimension.MASS::equals).isPresent();
    }
}
