package tarewright.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tarewright.derivation.ByReadings;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedAnswer;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/**
 * The standard uncertainty of every answer of every procedure that we ship, to first order, against invented students: 200,000 draws, within 5 %. Where the key says that the range
 * was drawn, because the limiting reactant may turn, the formula makes no claim; {@code LimitingTurnTest} holds what is printed there.
 */
class SimulationTest {
    private static final Path LIBRARY = Path.of("procedures");
    private static final int DRAWS = 200_000;
    private static final ReferenceTables TABLES = Tables.load();

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(LIBRARY)) {
            return all.filter(f -> f.toString().endsWith(".md") && !f.endsWith("spring-term.md")).sorted().toList();
        }
    }

    private static Resolved resolve(Path file) throws IOException {
        SourceText text = new SourceText(file.getFileName().toString(), Files.readString(file));
        return Resolver.resolve(text.name(), Reader.read(text).value(), Overrides.NONE, TABLES).value();
    }

    @Test
    void thereAreProcedures() throws IOException {
        assertFalse(files().isEmpty());
    }

    @TestFactory
    Stream<DynamicTest> firstOrderAgreesWithInventedStudents() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path file : files()) {
            Resolved procedure = resolve(file);
            List<Figure> readings = procedure.readings().stream().flatMap(r -> Stream.concat(Stream.of(r.value()), r.each().stream())).toList();
            for (ResolvedAnswer answer : procedure.answers()) {
                boolean claims = answer.value().isPresent() && answer.accepted().filter(a -> !a.drawn() && a.standardUncertainty() > 0).isPresent();
                if (claims) {
                    tests.add(DynamicTest.dynamicTest(file.getFileName() + " question " + answer.number(), () -> check(answer, readings)));
                }
            }
        }
        assertFalse(tests.size() < 30, () -> "only " + tests.size() + " answers are held");
        return tests.stream();
    }

    private static void check(ResolvedAnswer answer, List<Figure> readings) {
        ByReadings result = new ByReadings(answer.value().orElseThrow(), readings);
        double[] draws = result.draws(DRAWS, new SplittableRandom(19));
        double mean = 0;
        for (double draw : draws) {
            mean += draw / DRAWS;
        }
        double squares = 0;
        for (double draw : draws) {
            squares += (draw - mean) * (draw - mean);
        }
        double spread = Math.sqrt(squares / (DRAWS - 1));
        assertEquals(answer.accepted().orElseThrow().standardUncertainty(), spread, 0.05 * spread);
    }
}
