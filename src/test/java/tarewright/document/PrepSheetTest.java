package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.procedure.bench.Naming;
import tarewright.procedure.bench.OnTheBench;
import tarewright.procedure.prepare.Equipment;
import tarewright.procedure.prepare.Provision;
import tarewright.procedure.prepare.Supplies;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.recipe.Recipe;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.ResolvedQuantity;
import tarewright.procedure.resolve.RinseAndFill;
import tarewright.setting.Setting;
import tarewright.tables.HazardTables;

/** The technician's sheet: how much of everything, in what, how many of each thing. Assumptions of the preparation room: common practice, no source. */
class PrepSheetTest {
    private static final String WORK = """
            ---
            title: Work
            groups: 14
            group size: 3
            runs: 2
            spare: 15 %
            ---
            ```apparatus
            balance: balance; reads to 0.001 g; two per class
            cylinder: measuring cylinder, 25 mL; graduation 0.5 mL; one per group
            bath: water bath; one per 4 groups
            paper: filter paper; two per group; used up
            gloves: gloves, pair; one per student; used up
            goggles: goggles; one per student
            strip: pH strip; one per group; kept
            ```

            ```reaction dissolving
            Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)
            ```

            ```solid metal
            substance: magnesium
            mass: 0.050 g
            weigh with: balance
            ```

            ```solution acid
            solute: HCl
            strength: 1.0 mol/L
            volume: 12.5 mL
            measure with: cylinder
            ```

            ```reading weighed
            of: mass of metal
            read with: balance
            ```

            1. Put {metal} into {acid}.

            ```waste
            of: dissolving
            into: dilute acid waste
            ```

            ```prep
            Make up {class total of acid}.
            ```
            """;

    /**
     * By hand: 12.5 mL × 2 runs = 25.0 mL; × 14 × 1.15 = 402.5 mL, made in a flask of 500 mL; a share of 28.75 mL, down 28 mL, in a 50 mL bottle.
     * 0.050 g × 2 × 14 × 1.15 = 1.610 g, up 1.7 g. Papers 2 × 2 × 14 × 1.15 = 64.4, gloves 3 × 2 × 14 × 1.15 = 96.6; goggles 3 × 14.
     * 14 groups weigh twice at two balances: 14 turns of 90 s are 21 min.
     */
    @ParameterizedTest
    @ValueSource(strings = {"14 groups of 3; 2 runs each; 15 % to spare",
        "| hydrochloric acid (1.0 mol/L) | 25.0 mL | 402.5 mL | «500 mL» |", "| magnesium | 0.100 g | 1.610 g | «1.7 g» |",
        "| hydrochloric acid (1.0 mol/L) | 28 mL | 14 | bottle, 50 mL |", "filter paper\u00A0×\u00A065; gloves, pair\u00A0×\u00A097", "| goggles | 3 | 42 |",
        "| water bath (1 for 4 groups) | 4 |", "| balance, reads to 0.001 g | 2 |", "about 21 min in all, if each group weighs 2 times and one weighing takes 90 s",
        "Make up 402.5 mL.", "Put what is left after the reaction into: dilute acid waste.", "H228"})
    void holds(String line) {
        String sheet = Fixture.text(Fixture.sheet(Sheet.Kind.PREP, WORK));
        assertTrue(sheet.contains(line), sheet);
    }

    @Test
    void whatIsUsedUpOrKeptDoesNotComeBack() {
        String sheet = Fixture.text(Fixture.sheet(Sheet.Kind.PREP, WORK));
        assertTrue(sheet.contains("Kept until the next lesson, and counted then: "), sheet);
        String back = sheet.substring(sheet.indexOf("What comes back"));
        assertTrue(back.contains("| goggles | 42 |"), back);
        assertTrue(back.contains("| bottle, 50 mL | 14 |") && back.contains("| vial or jar with a lid | 14 |"), back);
        assertTrue(back.contains("Pour nothing unused back into a stock bottle."), back);
        assertTrue(Stream.of("filter paper", "gloves", "pH strip").noneMatch(back::contains), back);
    }

    static Stream<Path> library() throws Exception {
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            return files.filter(f -> f.toString().endsWith(".md") && !f.endsWith("spring-term.md")).sorted().toList().stream();
        }
    }

    /** In decimal arithmetic, from the amounts as they are shown: groups × (runs × portions × amount + what rinses and fills, see RinseAndFillTest) × (1 + spare), then two figures upward, or the
     * smallest flask of ISO 1042 that holds it (from memory), beyond 2 L flasks of 2 L and one for the rest. */
    @ParameterizedTest
    @MethodSource("library")
    void everyTotalIsGroupsTimesAmountWithSpareRoundedUp(Path file) throws Exception {
        Resolved procedure = Fixture.resolve(Files.readString(file));
        Setting setting = procedure.setting();
        Recipes recipes = Recipes.of(procedure, List.of());
        Supplies supplies = Supplies.of(procedure, OnTheBench.of(procedure, HazardTables.of("").rules(), Naming.USUAL), recipes);
        assertTrue(!supplies.provisions().isEmpty());
        // Amounts that are dealt have no one amount for a group; DealtSuppliesTest sums them.
        for (Provision provision : supplies.provisions().stream().filter(p -> !p.varies()).toList()) {
            BigDecimal each = BigDecimal.ZERO;
            for (ResolvedQuantity use : provision.uses()) {
                double amount = use.figure(Property.LENGTH).or(use::amount).orElseThrow().shownValue();
                each = each.add(new BigDecimal(amount, MathContext.DECIMAL32).multiply(BigDecimal.valueOf((long) setting.runs() * use.block().portions())));
            }
            for (RinseAndFill filling : provision.fillings()) {
                BigDecimal ofAll = new BigDecimal(filling.total().shownValue(), MathContext.DECIMAL32);
                each = each.add(ofAll.divide(BigDecimal.valueOf(setting.groups()), MathContext.DECIMAL64));
            }
            BigDecimal total = each.multiply(BigDecimal.valueOf(setting.groups())).multiply(BigDecimal.ONE.add(BigDecimal.valueOf(setting.spare())));
            double unit = provision.each().unit().factor() / provision.uses().get(0).figure(Property.LENGTH)
                    .or(provision.uses().get(0)::amount).orElseThrow().unit().factor();
            double ready = provision.ready().shownValue() * (provision.ready().unit().factor() / provision.each().unit().factor()) * unit;
            Optional<Recipe> recipe = recipes.recipe(provision.name());
            double rounded = recipe.isPresent() ? flasks(recipe.get().needed().value()) / provision.each().unit().factor() * unit
                    : total.round(new MathContext(2, RoundingMode.CEILING)).doubleValue();
            assertEquals(rounded, ready, 1e-9 * total.doubleValue(), provision.name());
            assertTrue(ready >= total.doubleValue() * (1 - 1e-9), provision.name());
            assertTrue(provision.share().value() * setting.groups() <= provision.ready().value() * (1 + 1e-9), provision.name());
            assertTrue(provision.share().value() >= provision.each().value() * (1 - 1e-9), provision.name());
        }
    }

    private static double flasks(double cubicMetres) {
        double rest = cubicMetres;
        double made = 0;
        while (rest > 2e-3 * (1 + 1e-9)) {
            made += 2e-3;
            rest -= 2e-3;
        }
        for (double size : new double[] {5e-6, 10e-6, 25e-6, 50e-6, 100e-6, 250e-6, 500e-6, 1e-3, 2e-3}) {
            if (size >= rest * (1 - 1e-9)) {
                return made + size;
            }
        }
        throw new AssertionError(cubicMetres);
    }

    /** The whole sheet as text, read through by a person when it changes. By hand: 0.37 × 1.1837 g/mL ÷ 36.458 g/mol = 12.01 mol/L; 2.0 × 250 ÷ 12.01 = 41.6 mL, in a cylinder with divisions of 0.5 mL 41.5 mL. */
    @Test
    void aSheetWithARecipeReadsSo() throws Exception {
        String sheet = Fixture.text(Fixture.sheet(Sheet.Kind.PREP, ACID));
        Files.createDirectories(Path.of("target/golden"));
        Files.writeString(Path.of("target/golden/prep-recipe.txt"), sheet);
        assertEquals(new String(PrepSheetTest.class.getResourceAsStream("prep-recipe.txt").readAllBytes(), java.nio.charset.StandardCharsets.UTF_8), sheet);
    }

    /** The bottle of the term goes before that of the procedure, and the sheet says so; what cannot be made is named with why. */
    /** Copper(II) sulfate pentahydrate is weighed by the students and weighed again for Sample U: H302, H318 and H410 (CLP, Annex VI) stand once. */
    @Test
    void aJarThatIsHandedOutAndMadeFromHasOneBox() {
        String sheet = Fixture.text(Fixture.sheet(Sheet.Kind.PREP, """
                ---
                title: Blue
                ---
                ```apparatus
                balance: balance; reads to 0.01 g; two per class
                ```

                ```solid crystals
                substance: copper(II) sulfate pentahydrate
                mass: 2.50 g
                weigh with: balance
                ```

                ```solution sample
                solute: copper(II) sulfate
                strength: 0.070 mol/L
                volume: 15 mL
                ```

                1. Weigh {crystals}. Look at {sample}.

                ```waste
                into: copper waste
                ```
                """));
        List<String> boxes = sheet.lines().filter(l -> l.startsWith("hazard: copper")).toList();
        assertEquals(2, boxes.size(), boxes.toString());
        assertTrue(boxes.get(0).startsWith("hazard: copper(II) sulfate pentahydrate"), boxes.toString());
        assertTrue(boxes.get(1).startsWith("hazard: copper(II) sulfate, 0.070"), boxes.toString());
        assertTrue(sheet.contains("H318"), sheet);
    }

    @Test
    void theShelfOfTheTermIsWhatTheRecipeStartsFrom() {
        Resolved procedure = Fixture.resolve(ACID);
        List<StockBlock> weaker = Fixture.resolve(ACID.replace("37 % w/w", "20 % w/w")).procedure().stocks();
        String sheet = Fixture.text(Fixture.prep(procedure, weaker));
        assertTrue(sheet.contains("Reworked: the procedure names 37 % w/w, on the shelf is 20 % w/w."), sheet);
        assertTrue(sheet.contains("of concentrated acid (20 % w/w)"), sheet);
        List<StockBlock> tooWeak = Fixture.resolve(ACID.replace("37 % w/w", "5 % w/w").replace("2.0 mol/L", "0.5 mol/L")).procedure().stocks();
        String none = Fixture.text(Fixture.prep(procedure, tooWeak));
        assertTrue(none.contains("No recipe for **hydrochloric acid (2.0 mol/L)**: 2.00 mol/L cannot be made from concentrated acid, which has 1.4"), none);
    }

    private static final String ACID = """
            ---
            title: Acid from the bottle
            groups: 8
            ---
            ```reaction dissolving
            Zn(s) + HCl(aq) -> ZnCl2(aq) + H2(g)
            ```

            ```stock concentrated acid
            solute: HCl
            strength: 37 % w/w
            pack: 2.5 L
            on hand: 0.4 L
            price: 38.50 EUR per pack
            keeps: two years
            ```

            ```solid metal
            substance: zinc
            mass: 0.50 g
            ```

            ```solution acid
            solute: HCl
            strength: 2.0 mol/L
            volume: 25 mL
            made from: concentrated acid
            keeps: one year
            ```

            1. Put {metal} into {acid}.

            ```waste
            of: dissolving
            into: dilute acid waste
            ```
            """;

    /** 1 to 40 groups: one for every four, the last four may be fewer. */
    @Test
    void whatIsSharedIsEnoughForTheLastGroups() {
        for (int groups = 1; groups <= 40; groups++) {
            Resolved procedure = Fixture.resolve(WORK.replace("groups: 14", "groups: " + groups));
            List<Equipment> all = Supplies.of(procedure, OnTheBench.of(procedure, HazardTables.of("").rules(), Naming.USUAL), Recipes.of(procedure, List.of())).equipment();
            int baths = all.stream().filter(e -> e.item().name().equals("bath")).findFirst().orElseThrow().total();
            assertTrue(baths * 4 >= groups && (baths - 1) * 4 < groups, groups + " groups, " + baths + " baths");
        }
    }
}
