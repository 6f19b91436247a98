package tarewright.procedure.prepare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tarewright.procedure.declare.ApparatusItem;

/**
 * How many of each thing a term needs. What returns is washed for the next lesson, so the largest number of one lesson does; what a class keeps until its next lesson is in use for all
 * classes that have it at once; what is used up is needed by each.
 */
final class Things {
    /** One thing in one lesson. @param until the last day on which it is in use; empty where the lesson has no day */
    private record InUse(List<Object> lesson, Optional<LocalDate> day, Optional<LocalDate> until, boolean kept, int count) {
        boolean on(LocalDate other) {
            return day.isEmpty() || !day.get().isAfter(other) && !until.orElse(other).isBefore(other);
        }
    }

    private Things() {
    }

    static List<Order.Thing> of(List<Order.Part> parts) {
        Map<String, ApparatusItem> items = new LinkedHashMap<>();
        Map<String, List<InUse>> uses = new LinkedHashMap<>();
        for (Order.Part part : parts) {
            Optional<LocalDate> later = FollowUp.of(part, parts).flatMap(FollowUp::day);
            for (Equipment each : part.supplies().equipment()) {
                String key = each.item().words().toLowerCase(Locale.ROOT) + each.item().usedUp();
                items.putIfAbsent(key, each.item());
                uses.computeIfAbsent(key, k -> new ArrayList<>()).add(new InUse(part.lesson(), part.day(), each.item().kept() ? later : part.day(), each.item().kept(), each.total()));
            }
        }
        return items.entrySet().stream().map(e -> thing(e.getValue(), uses.get(e.getKey()))).toList();
    }

    private static Order.Thing thing(ApparatusItem item, List<InUse> uses) {
        boolean kept = !item.usedUp() && uses.stream().anyMatch(InUse::kept);
        int count = item.usedUp() ? uses.stream().mapToInt(InUse::count).sum() : most(uses);
        return new Order.Thing(item.words(), item.usedUp(), kept, count);
    }

    /** The most that are in use at one time. What is kept and has no day may be in use on any. */
    private static int most(List<InUse> uses) {
        List<LocalDate> days = uses.stream().flatMap(u -> u.day().stream()).distinct().toList();
        return days.isEmpty() ? atOnce(uses) : days.stream().mapToInt(d -> atOnce(uses.stream().filter(u -> u.on(d)).toList())).max().orElse(0);
    }

    private static int atOnce(List<InUse> uses) {
        Map<List<Object>, Integer> lessons = new LinkedHashMap<>();
        uses.stream().filter(u -> !u.kept()).forEach(u -> lessons.merge(u.lesson(), u.count(), Integer::sum));
        return uses.stream().filter(InUse::kept).mapToInt(InUse::count).sum() + lessons.values().stream().mapToInt(n -> n).max().orElse(0);
    }
}
