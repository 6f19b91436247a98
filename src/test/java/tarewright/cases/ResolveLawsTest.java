package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.setting.Overrides;
import tarewright.wording.Numbers;

/** Laws that hold for any procedure, over procedures with random amounts from a fixed seed. */
class ResolveLawsTest {
    private static final int TIMES = 150;
    private static final long SEED = 20_250_611;
    private static final String IDEAL = "gases: ideal";
    /** What does not grow with the amounts. */
    private static final Set<Property> INTENSIVE = Set.of(Property.MOLAR_MASS, Property.MOLAR_VOLUME, Property.STRENGTH, Property.DENSITY,
            Property.PURITY, Property.EXCESS);

    private static Overrides groups(int groups) {
        return Overrides.NONE.withGroups(groups);
    }

    /** Every figure by block and property, in the coherent SI unit. */
    private static Map<String, Double> figures(Door.Outcome outcome) {
        Map<String, Double> all = new TreeMap<>();
        outcome.resolved().quantities()
                .forEach(q -> q.figures().forEach((p, f) -> all.put(q.name() + ", " + p.words(), beforeRoundingUp(p, f).value())));
        return all;
    }

    /** A class total is rounded up to its last digit, which no law of proportion knows. */
    private static Figure beforeRoundingUp(Property property, Figure figure) {
        return property == Property.CLASS_TOTAL && figure.step() instanceof Step.Set set ? set.target() : figure;
    }

    private static Map<String, String> shown(Door.Outcome outcome) {
        Map<String, String> all = new TreeMap<>();
        outcome.resolved().quantities()
                .forEach(q -> q.figures().forEach((p, f) -> all.put(q.name() + ", " + p.words(), Numbers.in("en").plain(f))));
        return all;
    }

    /** Reactions know proportions only: three times as much of everything gives three times as much of everything. */
    @Test
    void productsGrowWithWhatIsTyped() {
        for (int i = 0; i < TIMES; i++) {
            BigDecimal scale = new BigDecimal(List.of("2", "3", "0.5", "7.25", "10").get(i % 5));
            Door.Outcome once = Door.open(RandomProcedure.of(new SplittableRandom(SEED + i), BigDecimal.ONE, IDEAL).page()
                    .markdown());
            Door.Outcome more = Door.open(RandomProcedure.of(new SplittableRandom(SEED + i), scale, IDEAL).page().markdown());
            assertEquals(figures(once).keySet(), figures(more).keySet());
            for (ResolvedQuantity quantity : once.resolved().quantities()) {
                for (Map.Entry<Property, Figure> each : quantity.figures().entrySet()) {
                    if (each.getKey() == Property.LARGEST) {
                        continue; // The accepted range of what is typed depends on its last digit.
                    }
                    double factor = INTENSIVE.contains(each.getKey()) ? 1 : scale.doubleValue();
                    double wanted = beforeRoundingUp(each.getKey(), each.getValue()).value() * factor;
                    assertEquals(wanted, beforeRoundingUp(each.getKey(), more.figure(quantity.name(), each.getKey())).value(), 1e-9 * Math.abs(wanted) + 1e-15,
                            quantity.name() + each.getKey());
                }
            }
            assertEquals(once.resolved().reactions().get(0).pots().get(0).limiting(),
                    more.resolved().reactions().get(0).pots().get(0).limiting());
        }
    }

    /** What is used up weighs as much as what is made. Lavoisier, Traité élémentaire de chimie (1789), part 1, chapter 13. */
    @Test
    void massIsKept() {
        for (int i = 0; i < TIMES; i++) {
            RandomProcedure procedure = RandomProcedure.of(new SplittableRandom(SEED + i), BigDecimal.ONE);
            Door.Outcome outcome = Door.open(procedure.page().markdown());
            double used = 0;
            double made = 0;
            int reactants = procedure.equation().reactants().size();
            for (int term = 0; term < procedure.blocks().size(); term++) {
                String block = procedure.blocks().get(term);
                double molarMass = outcome.figure(block, Property.MOLAR_MASS).value();
                double moles = outcome.figure(block, Property.MOLES).value();
                if (term < reactants) {
                    used += (moles - outcome.figure(block, Property.LEFT_OVER).value()) * molarMass;
                } else {
                    made += moles * molarMass;
                }
            }
            assertEquals(used, made, 1e-9 * used, procedure.equation().plain());
        }
    }

    /** One reactant is used up, and nothing is left over that was not there. */
    @Test
    void oneReactantLimits() {
        for (int i = 0; i < TIMES; i++) {
            RandomProcedure procedure = RandomProcedure.of(new SplittableRandom(SEED + i), BigDecimal.ONE);
            Door.Outcome outcome = Door.open(procedure.page().markdown());
            List<String> reactants = procedure.blocks().subList(0, procedure.equation().reactants().size());
            List<Double> turns = IntStream.range(0, reactants.size())
                    .mapToObj(r -> outcome.figure(reactants.get(r), Property.MOLES).value()
                    / procedure.equation().reactants().get(r).coefficient()).toList();
            double least = turns.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
            for (int r = 0; r < reactants.size(); r++) {
                assertEquals(turns.get(r) / least, outcome.figure(reactants.get(r), Property.EXCESS).value(), 1e-9);
                double left = outcome.figure(reactants.get(r), Property.LEFT_OVER).value();
                assertTrue(left >= 0 && left < outcome.figure(reactants.get(r), Property.MOLES).value());
                assertEquals(turns.get(r) == least, left == 0);
            }
        }
    }

    @Test
    void theOrderOfBlocksDoesNotMatter() {
        for (int i = 0; i < TIMES; i++) {
            Page page = RandomProcedure.of(new SplittableRandom(SEED + i), BigDecimal.ONE).page();
            List<Integer> order = new ArrayList<>(IntStream.range(0, page.size()).boxed().toList());
            SplittableRandom random = new SplittableRandom(SEED - i);
            for (int at = order.size() - 1; at > 0; at--) {
                java.util.Collections.swap(order, at, random.nextInt(at + 1));
            }
            assertEquals(figures(Door.open(page.markdown())), figures(Door.open(page.markdown(order))));
        }
    }

    @Test
    void lineEndsDoNotMatter() {
        for (int i = 0; i < TIMES / 3; i++) {
            String markdown = RandomProcedure.of(new SplittableRandom(SEED + i), BigDecimal.ONE).page().markdown();
            Map<String, Double> plain = figures(Door.open(markdown));
            assertEquals(plain, figures(Door.open(markdown.replace("\n", "\r\n"))));
            assertEquals(plain, figures(Door.open(markdown.replace("\n", "\r"))));
        }
    }

    /** Turkish has a dotless i, German a decimal comma, Arabic digits of its own. */
    @Test
    void theMachinesLanguageDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            for (int i = 0; i < TIMES / 10; i++) {
                String markdown = RandomProcedure.of(new SplittableRandom(SEED + i), BigDecimal.ONE,
                        "room: 18 °C; 98.2 kPa; 40 %").page().markdown();
                Locale.setDefault(Locale.ROOT);
                Door.Outcome root = Door.open(markdown);
                for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
                    Locale.setDefault(Locale.forLanguageTag(tag));
                    Door.Outcome here = Door.open(markdown);
                    assertEquals(figures(root), figures(here), tag);
                    assertEquals(shown(root), shown(here), tag);
                    assertEquals(root.findings().stream().map(f -> f.id() + f.fields()).toList(),
                            here.findings().stream().map(f -> f.id() + f.fields()).toList());
                }
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** A class of more groups needs more in all and nothing else for a group. */
    @Test
    void groupsChangeTheTotalsOnly() {
        for (int i = 0; i < TIMES / 3; i++) {
            String markdown = RandomProcedure.of(new SplittableRandom(SEED + i), BigDecimal.ONE, "groups: 12").page().markdown();
            Map<String, Double> dozen = figures(Door.open(markdown));
            Map<String, Double> thirty = figures(Door.open(markdown, groups(30)));
            int totals = 0;
            for (Map.Entry<String, Double> each : dozen.entrySet()) {
                boolean total = each.getKey().endsWith("class total");
                totals += total ? 1 : 0;
                assertEquals(each.getValue() * (total ? 2.5 : 1), thirty.get(each.getKey()), total ? each.getValue() * 1e-12 : 0,
                        each.getKey());
            }
            assertTrue(totals >= 1);
        }
    }

    /** Enough of a reactant for a mass of product gives that mass. */
    @Test
    void forIsTheInverseOfMadeBy() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < TIMES; i++) {
            double grams = 0.1 + random.nextInt(1000) / 100.0;
            int yield = 50 + random.nextInt(51);
            Door.Outcome outcome = Door.open(new Page("Target").wasted()
                    .block("reaction course", "Pb(NO3)2(aq) + KI(aq) -> PbI2(s) + KNO3(aq)", "goes to: " + yield + " %")
                    .block("solution lead", "solute: Pb(NO3)2", "strength: 0.20 mol/L", "for: yellow")
                    .block("solution iodide", "solute: KI", "strength: 0.50 mol/L", "excess over: lead", "at least: 1.2 times")
                    .block("solid yellow", "substance: PbI2", "mass: " + String.format(Locale.ROOT, "%.2f", grams) + " g",
                            "made by: course").markdown()).sound();
            double typed = outcome.figure("yellow", Property.MASS).value();
            assertEquals(typed, outcome.figure("yellow", Property.YIELD).value(), typed * 1e-12);
            assertEquals(typed / (yield / 100.0), outcome.figure("yellow", Property.MOST).value(), typed * 1e-12);
        }
    }

    /** After all rounding an excess is at least what is asked for, and less than one division more. */
    @Test
    void anExcessStaysOne() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < TIMES; i++) {
            String division = List.of("0.05", "0.1", "0.5", "1").get(random.nextInt(4));
            double times = 1.05 + random.nextInt(100) / 50.0;
            String typedTimes = String.format(Locale.ROOT, "%.2f", times);
            Door.Outcome outcome = Door.open(new Page("Excess").wasted()
                    .block("apparatus", "cylinder: cylinder; graduation " + division + " mL",
                            "balance: balance; reads to 0.01 g")
                    .block("reaction course", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)")
                    .block("solid ribbon", "substance: Mg",
                            "mass: " + String.format(Locale.ROOT, "%.2f", 0.1 + random.nextInt(200) / 100.0) + " g",
                            "weigh with: balance")
                    .block("solution acid", "solute: HCl", "strength: 2.0 mol/L", "excess over: ribbon",
                            "at least: " + typedTimes + " times",
                            "measure with: cylinder").markdown());
            double excess = outcome.figure("acid", Property.EXCESS).value();
            double one = Double.parseDouble(division) * 1e-6 / (outcome.figure("acid", Property.VOLUME).value() / excess);
            assertTrue(excess >= Double.parseDouble(typedTimes) * (1 - 1e-9), excess + " of " + typedTimes);
            assertTrue(excess < Double.parseDouble(typedTimes) + one * (1 + 1e-9), excess + " of " + typedTimes + " and " + one);
            assertTrue(!outcome.findings().stream().map(f -> f.id()).toList().contains("not-in-excess"));
        }
    }

    /** What the students find in a titration is what was hidden, within the range that the burette and the pipette leave open. */
    @Test
    void aTitrationFindsTheHiddenStrength() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < TIMES; i++) {
            double hidden = 0.05 + random.nextInt(1500) / 10_000.0;
            Door.Outcome outcome = Door.open(Titrations.ofAcid(String.format(Locale.ROOT, "%.4f", hidden)).markdown()).sound();
            Figure found = outcome.answer();
            assertEquals(Math.round(hidden * 1e4) / 1e4 * 1000, found.value(), 2.0 * found.standardUncertainty());
            // Half a division of 0.05 mL on 20 mL or so: the reading is not the truth.
            assertTrue(found.standardUncertainty() > 1e-4 * found.value());
            assertEquals(Optional.empty(), outcome.findings().stream().filter(f -> f.id().equals("nothing-expected")).findAny());
        }
    }
}
