package tarewright.procedure.resolve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import tarewright.derivation.Figure;
import tarewright.derivation.Supplied;
import tarewright.derivation.Supplied.Limit;
import tarewright.derivation.Supplied.Spread;
import tarewright.quantity.Typed;

/** Readings for a student who was not there, as the instruments might have given them. */
public final class Missed {
    private Missed() {
    }

    /**
     * The procedure with such readings; each hand has its own. Every reading lies within what is accepted of it, and so does every answer worked from them; at
     * least one reading of each hand is not the expected one.
     *
     * @param seed the same seed gives the same readings
     * @return empty where nothing is read, or where no other reading than the expected one would be accepted
     */
    public static Optional<Resolved> of(Resolved procedure, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Map<String, List<Double>>> supplied = new ArrayList<>();
        for (Hand hand : procedure.hands()) {
            Optional<Map<String, List<Double>>> readings = readings(hand.resolved(), random);
            if (readings.isEmpty()) {
                return Optional.empty();
            }
            supplied.add(readings.get());
        }
        return Optional.of(Resolver.withReadings(procedure, supplied));
    }

    /** By reading that is read off an instrument, a value for each time, in coherent SI units. */
    static Optional<Map<String, List<Double>>> readings(Resolved one, SplittableRandom random) {
        List<ResolvedReading> readOff = one.readings().stream().filter(r -> r.block().difference().isEmpty()).toList();
        List<Figure> single = readOff.stream().flatMap(r -> r.each().stream()).toList();
        if (single.isEmpty()) {
            return Optional.empty();
        }
        List<Limit> limits = limits(one);
        // Where one division of an instrument is already more than what is accepted, the range counts as the key prints it, outward to the last digit.
        Optional<List<Double>> drawn = new Supplied(single, limits, spreads(one)).draw(random)
                .or(() -> new Supplied(single, limits.stream().map(Limit::printed).toList(), spreads(one)).draw(random));
        return drawn.map(values -> {
            Map<String, List<Double>> all = new LinkedHashMap<>();
            int at = 0;
            for (ResolvedReading reading : readOff) {
                all.put(reading.block().name(), values.subList(at, at + reading.each().size()));
                at += reading.each().size();
            }
            return all;
        });
    }

    /** Of every reading, repeated ones and their mean, and of every answer. */
    static List<Limit> limits(Resolved one) {
        List<Limit> limits = new ArrayList<>();
        Set<Figure> readings = new HashSet<>();
        one.readings().forEach(r -> {
            readings.addAll(r.each());
            readings.add(r.value());
        });
        readings.forEach(r -> limits.add(Limit.of(r)));
        one.answers().forEach(a -> a.value().ifPresent(v -> a.accepted().ifPresent(range -> limits.add(new Limit(v, range.from(), range.to())))));
        return limits;
    }

    private static List<Spread> spreads(Resolved one) {
        List<Spread> spreads = new ArrayList<>();
        for (ResolvedReading reading : one.readings()) {
            reading.block().concordant().ifPresent(c -> {
                Typed most = c.value();
                spreads.add(new Spread(reading.each(), most.value() * most.unit().factor()));
            });
        }
        return spreads;
    }
}
