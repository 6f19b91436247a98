package tarewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import tarewright.chemistry.Balance;
import tarewright.chemistry.Balancing;
import tarewright.chemistry.Equation;
import tarewright.chemistry.EquationResult;
import tarewright.derivation.ByReadings;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedReading;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** The core once it is warm: a procedure resolved, the hard equations balanced, uncertainty propagated. Run by {@code mvn -Pbench test}. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(value = 1, jvmArgsAppend = {"-Xmx256m", "-XX:+UseSerialGC"})
public class CoreBenchmark {
    /** A titration, and five deals of amounts with a graph. */
    @State(Scope.Benchmark)
    public static class Procedure {
        @Param({"soda-measures-an-acid", "turning-point-of-chalk"})
        public String name;
        private ReferenceTables tables;
        private SourceText text;

        @Setup
        public void read() throws IOException {
            tables = Tables.load();
            text = new SourceText(name, Files.readString(Path.of("procedures", name + ".md")));
        }

        Resolved resolved() {
            return Resolver.resolve(name, Reader.read(text).value(), Overrides.NONE, tables).value();
        }
    }

    /** The answers of a procedure with what they are read from. */
    @State(Scope.Benchmark)
    public static class Answers {
        private List<Figure> answers;
        private List<Figure> readings;

        @Setup
        public void resolve(Procedure procedure) {
            Resolved resolved = procedure.resolved();
            answers = resolved.answers().stream().flatMap(a -> a.value().stream()).toList();
            readings = resolved.readings().stream().map(ResolvedReading::value).toList();
        }
    }

    /**
     * Hard to balance. Sources: the first Stout, "Redox Challenges", J. Chem. Educ. 72 (1995) 1125, recalled; the others well-known exercises in the literature on algebraic balancing, recalled.
     */
    @State(Scope.Benchmark)
    public static class Equations {
        private final List<Equation> hard = List.of("[Cr(N2H4CO)6]4[Cr(CN)6]3 + KMnO4 + H2SO4 -> K2Cr2O7 + MnSO4 + CO2 + KNO3 + K2SO4 + H2O",
                "K4Fe(CN)6 + KMnO4 + H2SO4 -> KHSO4 + Fe2(SO4)3 + MnSO4 + HNO3 + CO2 + H2O", "P2I4 + P4 + H2O -> PH4I + H3PO4",
                "K4Fe(CN)6 + H2SO4 + H2O -> K2SO4 + FeSO4 + (NH4)2SO4 + CO").stream().map(Equations::read).toList();

        private static Equation read(String text) {
            if (Equation.parse(text) instanceof EquationResult.Ok ok && Balancing.balance(ok.equation()) instanceof Balance.Unique) {
                return ok.equation();
            }
            throw new IllegalStateException(text);
        }
    }

    @Benchmark
    public Resolved resolveAProcedure(Procedure procedure) {
        return procedure.resolved();
    }

    @Benchmark
    public void balanceTheHardCases(Equations equations, Blackhole out) {
        equations.hard.forEach(e -> out.consume(Balancing.balance(e)));
    }

    @Benchmark
    public double propagateUncertainty(Procedure procedure, Answers answers) {
        double sum = 0;
        for (Figure answer : answers.answers) {
            sum += new ByReadings(answer, answers.readings).standardUncertainty();
        }
        return sum;
    }
}
