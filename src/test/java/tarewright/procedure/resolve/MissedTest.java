package tarewright.procedure.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.derivation.Again;
import tarewright.derivation.Figure;
import tarewright.derivation.Supplied;
import tarewright.finding.Found;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** Readings supplied to a student who missed the class. Two standard uncertainties to each side: JCGM 100:2008, 6.3.3. */
class MissedTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final int SEEDS = 200;

    static Stream<String> library() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            return files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".md") && !f.endsWith("-term.md")).map(f -> f.substring(0, f.length() - 3)).sorted().toList().stream();
        }
    }

    private static Resolved resolve(String name) throws IOException {
        Found<Resolved> found = Resolver.resolve(name, Reader.read(new SourceText(name, Files.readString(Path.of("procedures", name + ".md")))).value(), Overrides.NONE, TABLES);
        assertFalse(found.hasErrors(), () -> found.findings().toString());
        return found.value();
    }

    /** Worked again outside the class that draws: each reading on its division and within two standard uncertainties, outward to the last digit, each answer where the key accepts it, one reading another. */
    @ParameterizedTest
    @MethodSource("library")
    void whateverTheSeedTheReadingsAreAcceptedAndOneIsNotTheExpectedOne(String name) throws IOException {
        Resolved procedure = resolve(name);
        for (Hand hand : procedure.hands()) {
            Resolved one = hand.resolved();
            for (long seed = 0; seed < SEEDS; seed++) {
                Map<String, List<Double>> supplied = Missed.readings(one, new SplittableRandom(seed)).orElseThrow();
                Again paper = new Again();
                boolean differs = false;
                for (ResolvedReading reading : one.readings()) {
                    for (int i = 0; i < reading.each().size() && supplied.containsKey(reading.block().name()); i++) {
                        Figure each = reading.each().get(i);
                        double value = supplied.get(reading.block().name()).get(i);
                        differs |= Math.abs(value - each.value()) > 1e-6 * Math.abs(each.value());
                        paper.with(each, value);
                        Supplied.rounding(each).ifPresent(r -> {
                            double divisions = (value - r.zeroSi()) / r.divisionSi();
                            assertEquals(Math.rint(divisions), divisions, 1e-6, each::toString);
                        });
                    }
                }
                assertTrue(differs, name + " " + seed);
                for (ResolvedReading reading : one.readings()) {
                    Figure value = reading.value();
                    double digit = value.unit().factor() * Math.pow(10, -value.decimals().orElse(9));
                    double off = Math.abs(paper.value(value) - value.value());
                    double printed = Math.ceil(2 * value.standardUncertainty() / digit + 1e-6) * digit;
                    assertTrue(off <= printed * (1 + 1e-6), name + " " + seed + " " + reading.block().name());
                }
                for (ResolvedAnswer answer : one.answers()) {
                    if (answer.value().isPresent()) {
                        double value = paper.value(answer.value().get());
                        Figure figure = answer.value().get();
                        double digit = Math.pow(10, -figure.decimals().orElse(9));
                        double from = Math.floor(figure.unit().fromSi(answer.accepted().get().from()) / digit - 1e-6) * digit;
                        double to = Math.ceil(figure.unit().fromSi(answer.accepted().get().to()) / digit + 1e-6) * digit;
                        double shown = figure.unit().fromSi(value);
                        assertTrue(shown >= from - 1e-6 * Math.abs(shown) && shown <= to + 1e-6 * Math.abs(shown), name + " " + seed + " " + answer.number());
                    }
                }
            }
        }
    }

    /** The supplied procedure's answers are those of its readings, shown to as many digits as the expected ones; what is expected stays. */
    @ParameterizedTest
    @MethodSource("library")
    void theKeyIsWorkedFromTheSuppliedReadings(String name) throws IOException {
        Resolved procedure = resolve(name);
        Resolved missed = Missed.of(procedure, 11).orElseThrow();
        assertEquals(procedure.hands().size(), missed.hands().size());
        for (int h = 0; h < procedure.hands().size(); h++) {
            Resolved one = procedure.hands().get(h).resolved();
            Resolved other = missed.hands().get(h).resolved();
            Again paper = new Again();
            for (int r = 0; r < one.readings().size(); r++) {
                ResolvedReading reading = one.readings().get(r);
                for (int i = 0; i < reading.each().size() && reading.block().difference().isEmpty(); i++) {
                    paper.with(reading.each().get(i), other.readings().get(r).each().get(i).value());
                }
            }
            for (int a = 0; a < one.answers().size(); a++) {
                int at = a;
                one.answers().get(a).value().ifPresent(v -> {
                    Figure worked = other.answers().get(at).value().orElseThrow();
                    assertEquals(paper.value(v), worked.value(), 1e-9 * Math.abs(worked.value()), () -> name + " " + v);
                    assertEquals(v.decimals(), worked.decimals(), () -> name + " " + v);
                });
            }
            for (ResolvedQuantity quantity : one.quantities()) {
                quantity.amount().ifPresent(x -> assertEquals(x.value(), other.quantity(quantity.name()).orElseThrow().amount().orElseThrow().value(),
                        1e-12 * Math.abs(x.value()), () -> name + " " + quantity.name()));
            }
        }
    }

    /** The same seed gives the same readings, so that a lost copy can be printed again; another gives others. */
    @Test
    void readingsFollowFromTheSeed() throws IOException {
        Resolved procedure = resolve("acid-in-a-descaler");
        assertEquals(Missed.readings(procedure, new SplittableRandom(3)), Missed.readings(procedure, new SplittableRandom(3)));
        assertTrue(java.util.stream.LongStream.range(0, 9).mapToObj(s -> Missed.readings(procedure, new SplittableRandom(s))).distinct().count() > 1);
    }
}
