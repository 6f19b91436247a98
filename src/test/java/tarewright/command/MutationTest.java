package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tarewright.chemistry.Equation;
import tarewright.chemistry.EquationResult;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.finding.Finding;
import tarewright.quantity.QuantityResult;
import tarewright.quantity.QuantityText;
import tarewright.quantity.StrengthResult;
import tarewright.quantity.StrengthText;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;
import tarewright.setting.Overrides;
import tarewright.wording.FindingText;

/**
 * Whatever becomes of a procedure's text, `proof` answers with findings at places. The seed is fixed; `-Dmutants=N` tries more,
 * `-Dmutants.seed=N` others. The bound on time only stops what would never end.
 */
class MutationTest {
    private static final int MUTANTS = Integer.getInteger("mutants", 600);
    private static final long SEED = Long.getLong("mutants.seed", 1);
    private static final Duration ENDLESS = Duration.ofSeconds(60);

    private static final List<String> LIBRARY = library();

    private static List<String> library() {
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            List<String> texts = new ArrayList<>();
            for (Path file : files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
                texts.add(Files.readString(file));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private final OneFile outside = new OneFile();
    private final Workshop workshop = new Workshop(outside, Overrides.NONE);

    private List<Finding> proof(String text) {
        outside.holds(text.getBytes(StandardCharsets.UTF_8));
        return workshop.resolve(new InputFile(Path.of("m.md"), "m.md")).findings();
    }

    @Test
    void aSpoiltProcedureIsAnsweredWithFindingsAtPlaces() {
        assertFalse(LIBRARY.isEmpty());
        FindingText words = FindingText.in("en");
        TreeMap<String, String> crashes = new TreeMap<>();
        SplittableRandom seeds = new SplittableRandom(SEED);
        int told = 0;
        for (int i = 0; i < MUTANTS; i++) {
            String mutant = new Mutation(seeds.split(), LIBRARY).of(LIBRARY.get(i % LIBRARY.size()));
            try {
                List<Finding> findings = assertTimeoutPreemptively(ENDLESS, () -> proof(mutant));
                for (Finding finding : findings) {
                    assertTrue(finding.at().line() >= 1 && finding.at().column() >= 1, finding::id);
                    assertFalse(words.full(finding).isBlank(), finding::id);
                }
                told += findings.isEmpty() ? 0 : 1;
            } catch (RuntimeException | Error e) {
                Throwable cause = e.getCause() == null ? e : e.getCause();
                String where = Stream.of(cause.getStackTrace())
                        .filter(f -> f.getClassName().startsWith("tarewright")).limit(3).toList().toString();
                crashes.putIfAbsent(cause + " " + where, "mutant " + i + "\n" + mutant);
            }
        }
        assertTrue(told > MUTANTS / 4, told + " of " + MUTANTS + " mutants had a finding: the mutations are too mild");
        assertEquals(List.of(), List.copyOf(crashes.keySet()), () -> String.join("\n=====\n", crashes.values()));
    }

    @Test
    void aSpoiltFormulaEquationUnitOrAmountIsReadOrRefusedWithinItsText() {
        List<String> seeds = List.of("CuSO4·5H2O", "[Fe(CN)6]4-", "Al2(SO4)3", "CaCO3(s) + 2 HCl(aq) -> CaCl2(aq) + H2O(l) + CO2(g)",
                "MnO4-(aq) + 8 H+ + 5 e- ⇌ Mn2+ + 4 H2O",
                "mol/L", "g/mL", "kJ/mol", "µL", "25.0 ± 0.1 mL", "1.5 to 2.0 g", "37 % w/w", "0.100 mol/L as Na2CO3", "20 vol", "-5 °C", "1.2e-3 mol");
        Mutation mutation = new Mutation(new SplittableRandom(SEED), seeds);
        for (int i = 0; i < 20 * MUTANTS; i++) {
            String text = mutation.of(seeds.get(i % seeds.size()));
            if (Formula.parse(text) instanceof FormulaResult.Bad bad) {
                within(bad.trouble().from(), bad.trouble().to(), text);
            }
            if (Equation.parse(text) instanceof EquationResult.Bad bad) {
                bad.troubles().forEach(t -> within(t.from(), t.to(), text));
            }
            if (Units.parse(text) instanceof UnitResult.Bad bad) {
                within(bad.trouble().from(), bad.trouble().to(), text);
            }
            if (QuantityText.parse(text) instanceof QuantityResult.Bad bad) {
                within(bad.trouble().from(), bad.trouble().to(), text);
            }
            if (StrengthText.parse(text) instanceof StrengthResult.Bad bad) {
                within(bad.trouble().from(), bad.trouble().to(), text);
            }
        }
    }

    private static void within(int from, int to, String text) {
        assertTrue(0 <= from && from <= to && to <= text.length(), () -> from + ".." + to + " in '" + text + "'");
    }
}
