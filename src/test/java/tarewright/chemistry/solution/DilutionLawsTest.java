package tarewright.chemistry.solution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.solution.Shelf.millilitres;
import static tarewright.chemistry.solution.Shelf.molar;
import static tarewright.chemistry.solution.Shelf.typed;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.derivation.Figure;

/** What holds for every dilution, whatever its numbers. */
class DilutionLawsTest {
    private static final List<Double> PIPETTED = List.of(100.0, 50.0, 25.0, 20.0, 10.0, 5.0, 4.0, 2.0);

    record Dilution(double stock, double strength, double volume) {
        Figure wanted() {
            return typed(strength + " mol/L");
        }

        PlanResult plan() {
            return Plan.of(wanted(), typed(volume + " mL"), molar(stock + " mol/L"), Optional.empty());
        }
    }

    static Stream<Dilution> dilutions() {
        SplittableRandom random = new SplittableRandom(20);
        return Stream.generate(() -> {
            double stock = Math.pow(10, random.nextDouble(-2, 1.25));
            double strength = stock / Math.pow(10, random.nextDouble(0, 7));
            double volume = Flasks.sizes().get(random.nextInt(Flasks.sizes().size())) * 1e6;
            return new Dilution(stock, strength, volume);
        }).limit(120);
    }

    /** What is measured out brings what the flask must hold, to the division of the instruments. */
    @ParameterizedTest
    @MethodSource("dilutions")
    void amountIsConserved(Dilution dilution) {
        Plan plan = dilution.plan().value().orElseThrow();
        AmountCheck check = plan.check();
        assertTrue(check.agrees(), dilution + ": " + check.difference());
        assertEquals(dilution.strength() * dilution.volume() * 1e-3, check.out().value(), 1e-9 * check.out().value());
        double left = dilution.stock() * 1000;
        for (Preparation step : plan.steps()) {
            left *= step.taken().value() / step.volume().value();
        }
        assertEquals(dilution.strength() * 1000, left, 0.01 * plan.steps().size() * left);
    }

    /** No step dilutes more than a hundredfold or takes less than 1 mL, from no more than there is, into a usual flask. */
    @ParameterizedTest
    @MethodSource("dilutions")
    void everyStepCanBeDone(Dilution dilution) {
        List<Preparation> steps = dilution.plan().value().orElseThrow().steps();
        double whole = 1;
        for (int i = 0; i < steps.size(); i++) {
            Preparation step = steps.get(i);
            whole *= step.factor();
            assertTrue(step.factor() <= 100 * (1 + 1e-9), "factor " + step.factor());
            assertTrue(millilitres(step.exact()) >= 1 - 1e-9, "takes " + millilitres(step.exact()) + " mL of " + dilution);
            if (i > 0) {
                assertTrue(PIPETTED.stream().anyMatch(f -> Math.abs(f - step.factor()) < 1e-6), "factor " + step.factor());
                assertTrue(step.exact().value() <= steps.get(i - 1).volume().value() * (1 + 1e-9), "more than was made");
                assertTrue(Flasks.sizes().stream().anyMatch(s -> Math.abs(s - steps.get(0).volume().value()) < 1e-12));
            }
        }
        assertEquals(dilution.stock() / dilution.strength(), whole, 1e-6 * whole);
    }

    /** Diluted a to b and b to c is diluted a to c: what two steps take of the first, less what stays behind, is what one takes. */
    @ParameterizedTest
    @MethodSource("dilutions")
    void twoStepsAreOne(Dilution dilution) {
        double middle = Math.sqrt(dilution.stock() * dilution.strength());
        Figure volume = typed(dilution.volume() + " mL");
        Preparation first = Preparation.of(typed(middle + " mol/L"), volume, molar(dilution.stock() + " mol/L"));
        Preparation second = Preparation.of(dilution.wanted(), volume, molar(middle + " mol/L"));
        Preparation one = Preparation.of(dilution.wanted(), volume, molar(dilution.stock() + " mol/L"));
        double carried = first.exact().value() * second.exact().value() / volume.value();
        assertEquals(one.exact().value(), carried, 1e-9 * carried);
    }

    @ParameterizedTest
    @MethodSource("dilutions")
    void twiceTheVolumeTakesTwice(Dilution dilution) {
        Figure once = Preparation.of(dilution.wanted(), typed(dilution.volume() + " mL"), molar(dilution.stock() + " mol/L")).exact();
        Figure twice = Preparation.of(dilution.wanted(), typed(2 * dilution.volume() + " mL"), molar(dilution.stock() + " mol/L"))
                .exact();
        assertEquals(2 * once.value(), twice.value(), 1e-12 * twice.value());
    }

    @ParameterizedTest
    @MethodSource("dilutions")
    void noneGoesUpward(Dilution dilution) {
        if (dilution.stock() / dilution.strength() < 1.001) {
            return;
        }
        PlanResult up = Plan.of(typed(dilution.stock() + " mol/L"), typed("1 L"), molar(dilution.strength() + " mol/L"),
                Optional.empty());
        assertEquals("stock-too-weak", assertInstanceOf(PlanResult.Refused.class, up).trouble().id());
    }

    /** Whichever is named first, the same volumes are mixed; they add up, and bring what the mixture holds. */
    @ParameterizedTest
    @MethodSource("dilutions")
    void mixingIsSymmetric(Dilution dilution) {
        Figure strong = typed(dilution.stock() + " mol/L");
        Figure weak = dilution.wanted();
        double share = (dilution.volume() % 7 + 1) / 9;
        Figure between = typed((dilution.strength() + share * (dilution.stock() - dilution.strength())) + " mol/L");
        Figure volume = typed(dilution.volume() + " mL");
        if (dilution.stock() / dilution.strength() < 1.001) {
            return;
        }
        Mixture one = Mixture.of(strong, weak, between, volume).value().orElseThrow();
        Mixture other = Mixture.of(weak, strong, between, volume).value().orElseThrow();
        assertEquals(one.first().value(), other.second().value(), 1e-12 * volume.value());
        assertEquals(one.second().value(), other.first().value(), 1e-12 * volume.value());
        assertEquals(volume.value(), one.first().value() + one.second().value(), 1e-9 * volume.value());
        assertEquals(share * volume.value(), one.first().value(), 1e-6 * volume.value());
        assertTrue(one.check().agrees(), String.valueOf(one.check().difference()));
    }

    /** 70 % and 20 % to 50 %: 3 parts and 2 parts, the textbook's alligation cross (common practice, no source). */
    @Test
    void alligation() {
        Mixture mixture = Mixture.of(typed("0.70 mol/L"), typed("0.20 mol/L"), typed("0.50 mol/L"), typed("500 mL")).value().orElseThrow();
        assertEquals(300, millilitres(mixture.first()), 1e-9);
        assertEquals(200, millilitres(mixture.second()), 1e-9);
        assertInstanceOf(Mixture.Refused.class, Mixture.of(typed("0.70 mol/L"), typed("0.20 mol/L"), typed("0.71 mol/L"), typed("1 L")));
        assertInstanceOf(Mixture.Refused.class, Mixture.of(typed("0.70 mol/L"), typed("0.20 mol/L"), typed("0.19 mol/L"), typed("1 L")));
        assertInstanceOf(Mixture.Refused.class, Mixture.of(typed("0.50 mol/L"), typed("0.50 mol/L"), typed("0.50 mol/L"), typed("1 L")));
        assertEquals(500, millilitres(Mixture.of(typed("0.70 mol/L"), typed("0.20 mol/L"), typed("0.70 mol/L"), typed("500 mL")).value().orElseThrow().first()), 1e-9);
        assertEquals(0, millilitres(Mixture.of(typed("0.70 mol/L"), typed("0.20 mol/L"), typed("0.20 mol/L"), typed("500 mL")).value().orElseThrow().first()), 1e-9);
    }

    /** Common practice, no source: what goes into which flask. Beyond 2 L, full flasks of 2 L and the smallest for the rest. */
    @ParameterizedTest
    @CsvSource({"660, 1000 x1", "4, 5 x1", "100, 100 x1", "100.0000001, 250 x1", "2000, 2000 x1", "2300, 2000 x1 + 500 x1",
            "3300, 2000 x2", "4000, 2000 x2", "0, ''", "-1, ''", "1e12, ''", "NaN, ''"})
    void flasks(double millilitres, String wanted) {
        assertEquals(wanted, String.join(" + ", Flasks.filling(millilitres * 1e-6).stream()
                .map(f -> Math.round(f.capacity() * 1e6) + " x" + f.count()).toList()));
    }

    /** A tenth of a milligram cannot be weighed: a stronger solution is made first, and diluted. */
    @Test
    void tooLittleToWeigh() {
        Plan plan = Shelf.plan("0.00001 mol/L", "100 mL", Shelf.solid("KMnO4"));
        assertTrue(plan.steps().size() > 1);
        assertTrue(Shelf.grams(plan.first().taken()) >= 0.005, plan.first().taken().toString());
        assertTrue(plan.check().agrees());
        assertEquals(1e-6, plan.check().out().value(), 1e-15);
    }
}
