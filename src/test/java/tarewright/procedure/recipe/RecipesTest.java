package tarewright.procedure.recipe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.solution.Act;
import tarewright.chemistry.solution.Care;
import tarewright.chemistry.solution.Preparation;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.check.Checks;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.declare.StockReader;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.setting.Overrides;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** The technician's recipes, from what the author writes. Ten groups without spare, so that the class takes ten times a group's amount. */
class RecipesTest {
    private static final ReferenceTables TABLES = Tables.load();

    private static SourceFile file(String text) {
        return Reader.read(new SourceText("recipe.md", text)).value();
    }

    private static Resolved resolved(String... blocks) {
        String text = "---\ntitle: Recipe\ngroups: 10\nspare: 0 %\n---\n\n" + String.join("\n", blocks);
        return Resolver.resolve("recipe", file(text), Overrides.NONE, TABLES).value();
    }

    private static String block(String typeAndName, String fields) {
        return "```" + typeAndName + "\n" + fields.replace("; ", "\n") + "\n```\n";
    }

    private static Recipe recipe(String... blocks) {
        Recipes recipes = Recipes.of(resolved(blocks), List.of());
        assertEquals(List.of(), recipes.unmade());
        return recipes.recipe("s").orElseThrow();
    }

    private static Preparation only(Recipe recipe) {
        assertEquals(1, recipe.batches().size());
        assertEquals(1, recipe.batches().get(0).plan().steps().size());
        return recipe.batches().get(0).plan().first();
    }

    private static double litres(double si) {
        return si * 1000;
    }

    private static List<String> errors(String... blocks) {
        return Checks.run(resolved(blocks)).stream().filter(f -> f.severity() == Severity.ERROR).map(RecipesTest::told).toList();
    }

    private static String told(Finding finding) {
        return finding.id() + " at " + finding.at().text();
    }

    /**
     * 2 mol/L hydrochloric acid: suppliers' tables have 12.0 to 12.1 mol/L for 37 % w/w (1.18 to 1.19 g/mL; OpenStax, Chemistry 2e, Appendix F), so a litre takes
     * 165 mL to 167 mL. Acid goes into water: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"strength: 37 % w/w | SHELF", "strength: 37 % w/w; density: 1.184 g/mL | SHELF"})
    void hydrochloricAcidFromTheBottleOnTheShelf(String label, Ingredient.Kind kind) {
        Recipe recipe = recipe(block("stock strong acid", "solute: HCl; " + label),
                block("solution s", "solute: HCl; strength: 2.0 mol/L; volume: 100 mL; made from: strong acid; keeps: a year"));
        assertEquals(kind, recipe.from().kind());
        assertEquals(1, litres(recipe.volume().value()), 1e-12);
        assertEquals(166, only(recipe).taken().value() * 1e6, 1.0);
        assertTrue(only(recipe).check().agrees());
        assertEquals(Care.Order.ACID_INTO_WATER, recipe.care().order());
        assertEquals("a year", recipe.keeps().orElseThrow());
        List<Act> acts = recipe.batches().get(0).acts().get(0);
        int water = IntStream.range(0, acts.size()).filter(i -> acts.get(i) instanceof Act.Water).findFirst().orElseThrow();
        int acid = IntStream.range(0, acts.size()).filter(i -> acts.get(i) instanceof Act.Add).findFirst().orElseThrow();
        assertTrue(water < acid, acts.toString());
    }

    /** Without a bottle on the shelf the usual strength is taken, and the recipe knows that it is only the usual one. */
    @ParameterizedTest
    @CsvSource({"made from: concentrated hydrochloric acid", "made from: the big bottle", "keeps: a year"})
    void usualStrengthWhereTheShelfIsNotKnown(String field) {
        Recipe recipe = recipe(block("solution s", "solute: HCl; strength: 2.0 mol/L; volume: 100 mL; " + field));
        assertEquals(Ingredient.Kind.USUAL, recipe.from().kind());
        assertEquals(166, only(recipe).taken().value() * 1e6, 1.0);
    }

    /** "Bulk recipes" for school practical work in Ireland: 10 g of sodium hydroxide for 2.5 L of 0.1 mol/L, 4 g a litre. */
    @Test
    void sodiumHydroxideFromPellets() {
        Recipe recipe = recipe(block("solution s", "solute: NaOH; strength: 0.100 mol/L; volume: 100 mL"));
        assertEquals(Ingredient.Kind.SOLID, recipe.from().kind());
        assertEquals(4.00, only(recipe).taken().value() * 1000, 0.01);
        assertFalse(recipe.hot());
    }

    /**
     * Dissolving sodium hydroxide gives 44.5 kJ/mol (CRC Handbook, enthalpy of solution of electrolytes; from memory): 5 mol/L warms by some 50 K, and 1 mol/L by 10.6 K.
     */
    @Test
    void strongAlkaliWarmsByMoreThanTenKelvins() {
        Recipe recipe = recipe(block("solution s", "solute: NaOH; strength: 1.00 mol/L; volume: 100 mL"));
        assertTrue(recipe.hot());
        assertEquals(10.6, recipe.rise().orElseThrow().value(), 0.3);
    }

    /**
     * 5 % w/v as CuSO4 from the pentahydrate: 7.82 g for 100 mL (CRC Handbook, concentrative properties, columns A % and H %; from memory). Ten groups take 50 mL
     * each, so half a litre takes 39.1 g. With the dry salt on the shelf it is 25 g, and the recipe says what differs.
     */
    @Test
    void copperSulfateCountedWithoutItsWater() {
        String solution = block("solution s", "solute: CuSO4.5H2O; strength: 5.0 % w/v as CuSO4; volume: 50 mL; made from: jar");
        Recipe crystals = recipe(block("stock jar", "substance: CuSO4.5H2O"), solution);
        assertEquals(39.1, only(crystals).taken().value() * 1000, 0.05);
        assertTrue(crystals.rework().isEmpty());
        Recipe dry = recipe(block("stock jar", "substance: CuSO4"), solution);
        assertEquals(25.0, only(dry).taken().value() * 1000, 0.01);
        assertEquals(new Rework.OtherHydrate("CuSO₄·5H₂O", "CuSO₄"), dry.rework().orElseThrow());
    }

    /**
     * A solution that names nothing to be made from starts from the stronger bottle that stands on the shelf, not from one as usually sold; by hand: 1 L of 1 mol/L from 4 mol/L takes 250 mL.
     * A bottle of just that strength is not diluted.
     */
    @Test
    void aStrongerBottleOnTheShelfIsDilutedThoughNothingNamesIt() {
        Recipe recipe = recipe(block("stock bench acid", "solute: HCl; strength: 4 mol/L"), block("solution s", "solute: HCl; strength: 1 mol/L; volume: 100 mL"));
        assertEquals(Ingredient.Kind.SHELF, recipe.from().kind());
        assertEquals("bench acid", recipe.from().name());
        assertEquals(250, only(recipe).taken().value() * 1e6, 1e-6);
        Recipe usual = recipe(block("stock bench acid", "solute: HCl; strength: 1 mol/L"), block("solution s", "solute: HCl; strength: 1 mol/L; volume: 100 mL"));
        assertEquals(Ingredient.Kind.USUAL, usual.from().kind());
    }

    /** A bottle of the term goes before one of the same name in the procedure, and the recipe says so. */
    @Test
    void bottleOfTheTermGoesFirst() {
        Resolved procedure = resolved(block("stock acid", "solute: HCl; strength: 4 mol/L"),
                block("solution s", "solute: HCl; strength: 1 mol/L; volume: 100 mL; made from: acid"));
        List<StockBlock> term = StockReader.read(file(block("stock acid", "solute: HCl; strength: 5 mol/L")), TABLES).value();
        Recipe recipe = Recipes.of(procedure, term).recipe("s").orElseThrow();
        assertEquals(200, only(recipe).taken().value() * 1e6, 1e-6);
        assertEquals(new Rework.OtherStrength("4 mol/L", "5 mol/L"), recipe.rework().orElseThrow());
    }

    /** 20 volume is 20 / 22.414 × 2 = 1.785 mol/L (the definition, at 0 °C and 101.325 kPa): half of it is 10 volume. */
    @Test
    void peroxideByItsVolumes() {
        Recipe recipe = recipe(block("stock peroxide", "solute: H2O2; strength: 20 vol"),
                block("solution s", "solute: H2O2; strength: 10 vol; volume: 50 mL; made from: peroxide"));
        assertEquals(250, only(recipe).taken().value() * 1e6, 1e-6);
    }

    /** What a stronger solution of the procedure gives to a weaker one is made too. */
    @Test
    void strongerSolutionIsMadeForTheWeakerOneToo() {
        Resolved procedure = resolved(block("solution strong", "solute: NaCl; strength: 1.0 mol/L; volume: 20 mL"),
                block("solution s", "solute: NaCl; strength: 0.50 mol/L; volume: 50 mL; made from: strong"));
        Recipes recipes = Recipes.of(procedure, List.of());
        assertEquals(Ingredient.Kind.BLOCK, recipes.recipe("s").orElseThrow().from().kind());
        assertEquals(200 + 250, recipes.recipe("strong").orElseThrow().needed().value() * 1e6, 1e-6);
    }

    /** Iodine dissolves in iodide and hardly in water: a recipe with one of two solutes would be wrong, so there is none, and the sheet says why. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"solute: I2; strength: 0.050 mol/L | IODINE", "solute: phenolphthalein; role: indicator; strength: 0.050 mol/L | INDICATOR",
        "solute: NaCl; also: HCl, 0.1 mol/L; strength: 0.050 mol/L | TWO_SOLUTES", "solute: fennick salt; strength: 1 % w/v | NO_FORMULA", "solute: NaCl | NO_STRENGTH",
        "solute: NaCl; strength: 1 mol/L; made from: bottle | NO_SOURCE", "solute: HCl; strength: 37 % w/w | AS_SOLD"})
    void noHalfRecipe(String solute, Unmade.Why why) {
        Recipes recipes = Recipes.of(resolved(block("stock bottle", "solute: KCl; strength: 1 mol/L"), block("solution s", solute + "; volume: 10 mL")), List.of());
        assertEquals(List.of(), recipes.recipes());
        assertEquals(List.of(why), recipes.unmade().stream().map(Unmade::why).toList());
    }

    /**
     * Heat of diluting (Parker, NSRDS-NBS 2, 1965): hydrochloric acid of 37 % w/w is 16.1 mol/kg, 16.4 kJ/mol down to nothing; 2 mol/L keeps 2.7 of them. 2 mol/L × 13.7 kJ/mol over
     * 4.17 kJ/(L K) are 6.6 K. Nitric acid of 65 % is 29.5 mol/kg, some 12.8 kJ/mol; 6 mol/L, 7.7 mol/kg, keeps 2.6: 6 × 10.2 / 4.17 are 14.7 K, and a warning.
     */
    @ParameterizedTest
    @CsvSource({"HCl, 37 % w/w, 2.0, 6.6, false", "HNO3, 65 % w/w, 6.0, 14.7, true", "CH3COOH, 50 % w/w, 1.0, 0.3, false"})
    void dilutingAStockWarms(String acid, String label, String strength, double kelvin, boolean warned) {
        String[] blocks = {block("stock strong", "solute: " + acid + "; strength: " + label), block("solution s", "solute: " + acid + "; strength: " + strength + " mol/L; volume: 10 mL; made from: strong")};
        Recipe recipe = recipe(blocks);
        assertEquals(kelvin, recipe.rise().orElseThrow().value(), 0.3);
        assertEquals(Care.Heat.RECKONED, recipe.care().heat());
        assertEquals(warned, Checks.run(resolved(blocks)).stream().anyMatch(f -> f.id().equals("hot-to-make")));
    }

    /** Of half-strength sulfuric acid, of caustic soda lye and of a dry salt that the tables lack no figure is at hand: the sheet says so, and to go slowly. A weak stock is let be. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"solute: H2SO4; strength: 5 mol/L | solute: H2SO4; strength: 2 mol/L | NOT_KNOWN | true", "solute: NaOH; strength: 10 mol/L | solute: NaOH; strength: 2 mol/L | NOT_KNOWN | true",
        "solute: H2SO4; strength: 1 mol/L | solute: H2SO4; strength: 0.5 mol/L | LITTLE | false", "solute: NaCl; strength: 4 mol/L | solute: NaCl; strength: 1 mol/L | LITTLE | false",
        "solute: HCl; strength: 30 mol/L | solute: HCl; strength: 1 mol/L | NOT_KNOWN | true"})
    void anUnknownHeatIsNeverSilent(String stock, String made, Care.Heat heat, boolean told) {
        Recipe recipe = recipe(block("stock strong", stock), block("solution s", made + "; volume: 10 mL; made from: strong"));
        assertTrue(recipe.rise().isEmpty());
        assertEquals(heat, recipe.care().heat());
        List<Act> acts = recipe.batches().get(0).acts().get(0);
        assertEquals(told, acts.contains(new Act.HeatNotKnown()));
        assertEquals(told, acts.contains(new Act.Cool()));
        assertTrue(!told || acts.indexOf(new Act.HeatNotKnown()) < IntStream.range(0, acts.size()).filter(i -> acts.get(i) instanceof Act.Add).findFirst().orElseThrow());
    }

    /** By volume: 70 % v/v ethanol from one of 96 % takes 70 / 96 of the flask, 729 mL of a litre, and is made up with water (volumes shrink: common practice). */
    @Test
    void spiritByVolume() {
        Recipe recipe = recipe(block("stock spirit", "solute: C2H5OH; strength: 96 % v/v"), block("solution s", "solute: C2H5OH; strength: 70 % v/v; volume: 100 mL; made from: spirit"));
        assertEquals(729, only(recipe).exact().value() * 1e6, 1);
        assertTrue(only(recipe).check().agrees());
    }

    /** The finding and the text that it points at. Solubility of sodium chloride at 20 °C: 35.9 g in 100 g of water, 5.4 mol/L (CRC Handbook). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "solute: NaCl; strength: 7.0 mol/L; volume: 10 mL | beyond-solubility at 7.0 mol/L",
        "solute: NaCl; strength: 5.0 mol/L; volume: 10 mL | ''",
        "solute: HCl; strength: 3.0 mol/L; volume: 10 mL; made from: weak | stock-too-weak at weak",
        "solute: HCl; strength: 2.0 mol/L; volume: 10 mL; made from: weak | ''",
        "solute: HCl; strength: 3.0 mol/L; made from: w | dilution-impossible at 3.0 mol/L"})
    void whatCannotBeMadeIsToldAtItsPlace(String fields, String told) {
        assertEquals(told, String.join(", ", errors(block("stock weak", "solute: HCl; strength: 2.0 mol/L"),
                block("solution w", "solute: HCl; strength: 1.0 mol/L"), block("solution s", fields))));
    }

    /** The limit of 10 K is common practice, no source; the rise is that of the test on strong alkali. */
    @ParameterizedTest
    @CsvSource({"1.00, true", "0.50, false"})
    void whatGetsHotInTheMakingIsAWarning(String strength, boolean warned) {
        List<Finding> found = Checks.run(resolved(block("solution s", "solute: NaOH; strength: " + strength + " mol/L; volume: 10 mL")));
        assertEquals(warned, found.stream().anyMatch(f -> f.id().equals("hot-to-make") && f.severity() == Severity.WARNING), found.toString());
    }

    private static Stream<List<Double>> cases() {
        SplittableRandom random = new SplittableRandom(7);
        return Stream.generate(() -> List.of(Math.round(Math.exp(random.nextDouble() * 9 - 7) * 1e5) / 1e5 + 1e-4,
                (double) Math.round(1 + random.nextDouble() * 300))).limit(150);
    }

    /** Amount in is amount out, and there is enough for the class, whatever the strength and the volume. */
    @ParameterizedTest
    @MethodSource("cases")
    void amountInIsAmountOut(List<Double> each) {
        String strength = new java.math.BigDecimal(each.get(0)).setScale(5, java.math.RoundingMode.HALF_UP).toPlainString();
        Recipe recipe = recipe(block("stock acid", "solute: HCl; strength: 37 % w/w"),
                block("solution s", "solute: HCl; strength: " + strength + " mol/L; volume: " + each.get(1) + " mL; made from: acid"));
        assertTrue(recipe.volume().value() >= 10 * each.get(1) * 1e-6 * (1 - 1e-9));
        double made = 0;
        for (Recipe.Batch batch : recipe.batches()) {
            assertTrue(batch.plan().check().agrees(), recipe.toString());
            made += batch.count() * batch.plan().check().in().value();
        }
        double wanted = Double.parseDouble(strength) * 1000 * recipe.volume().value();
        assertEquals(wanted, made, 0.03 * wanted);
    }
}
