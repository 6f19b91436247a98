package tarewright.procedure.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.procedure.bench.BenchSafety;
import tarewright.procedure.bench.WasteContainer;
import tarewright.procedure.prepare.Provision;
import tarewright.procedure.prepare.Supplies;
import tarewright.procedure.recipe.Recipes;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/**
 * Enough solution is got ready to rinse and fill burettes and pipettes. Common practice, no source: rinse twice, each time with about a fifth of the size; a burette takes a tenth more than its
 * size, above its zero and below its last mark; it is filled up again when it no longer holds the next titre; what is left in it is thrown away.
 */
class RinseAndFillTest {
    private static final double MILLILITRE = 1e-6;
    private static final String TITRATION = """
            ---
            title: Titration
            groups: 6
            group size: 2
            spare: 10 %
            ---
            ```apparatus
            burette: burette, 50 mL; graduation 0.1 mL; reads to 0.05 mL; one per group
            pipette: pipette, 20 mL; delivers 20.0 mL; one per group
            ```

            ```reaction neutralisation
            HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)
            ```

            ```solution sample
            solute: HCl
            strength: 0.100 mol/L
            volume: 20.0 mL
            portions: 3
            measure with: pipette
            ```

            ```solution alkali
            solute: NaOH
            strength: 0.100 mol/L
            for: sample
            portions: 3
            measure with: burette
            ```

            ```waste
            of: neutralisation
            into: neutral waste
            ```

            1. Run {alkali} into {sample}.
            """;

    private static Resolved resolve(String text) {
        return Resolver.resolve("titration", Reader.read(new SourceText("titration.md", text)).value(), Overrides.NONE, Tables.load()).value();
    }

    private static double millilitres(Resolved procedure, String block) {
        return procedure.quantity(block).orElseThrow().filling().map(f -> f.total().value() / MILLILITRE).orElse(0.0);
    }

    private static Supplies supplies(Resolved procedure) {
        return Supplies.of(procedure, BenchSafety.of(procedure, HazardTables.of("").rules()).bench(), Recipes.of(procedure, List.of()));
    }

    /**
     * By hand, for one burette of 50 mL: 2 × 10 mL to rinse it. Titres of 20.00 mL: two go into one filling, the third into a second one, which holds 55 − 20 = 35 mL in the end. One titre:
     * 35 mL. Two: 55 − 40 = 15 mL. Titres of 10.00 mL: five from one filling, the third leaves 55 − 30 = 25 mL. Of 26.00 mL: one from each filling, 29 mL left.
     */
    @ParameterizedTest
    @CsvSource({"20.0, 3, 2, 35", "20.0, 1, 1, 35", "20.0, 2, 1, 15", "20.0, 4, 2, 15", "20.0, 5, 3, 35", "10.0, 3, 1, 25", "10.0, 5, 1, 5", "10.0, 6, 2, 45", "26.0, 3, 3, 29", "50.0, 2, 2, 5", "60.0, 1, 2, 45"})
    void aBuretteServesAsManyTitresAsItHoldsAndIsThenFilledAgain(String titre, int titres, int fillings, double left) {
        Resolved procedure = resolve(TITRATION.replace("volume: 20.0 mL\nportions: 3\nmeasure with: pipette", "volume: " + titre + " mL\nportions: " + titres).replace("portions: 3", "portions: " + titres));
        RinseAndFill filling = procedure.quantity("alkali").orElseThrow().filling().orElseThrow();
        assertEquals(List.of(6L), filling.rests().stream().map(RinseAndFill.Rest::count).toList());
        assertEquals(fillings, filling.rests().get(0).fillings());
        assertEquals(left, filling.rests().get(0).stays().orElseThrow().value() / MILLILITRE, 1e-6);
        assertEquals(10, filling.rinse().value() / MILLILITRE, 1e-6);
        assertEquals(6 * (20 + left), millilitres(procedure, "alkali"), 1e-6);
    }

    /** By hand: 6 × (3 × 20 + 20 + 35) × 1.1 = 759 mL of alkali; 6 × (3 × 20 + 2 × 4) × 1.1 = 448.8 mL of sample; one group 115 and 68 mL, its bottles 250 and 100 mL. */
    @Test
    void theClassTotalIsGroupsTimesAmountAndFillingWithSpareAndBottlesFollow() {
        Resolved procedure = resolve(TITRATION);
        assertEquals(759, procedure.quantity("alkali").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().value() / MILLILITRE, 1e-6);
        assertEquals(448.8, procedure.quantity("sample").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().value() / MILLILITRE, 1e-6);
        Map<String, List<Double>> wanted = Map.of("alkali", List.of(115.0, 759.0, 250.0), "sample", List.of(68.0, 448.8, 100.0));
        wanted.forEach((name, figures) -> {
            Provision provision = supplies(procedure).provision(name).orElseThrow();
            assertEquals(figures.get(0), provision.each().value() / MILLILITRE, 1e-6);
            assertEquals(figures.get(1), provision.total().value() / MILLILITRE, 1e-6);
            assertEquals(figures.get(2), provision.bottle().orElseThrow().value() / MILLILITRE, 1e-6);
        });
        assertEquals(20, procedure.quantity("alkali").orElseThrow().figure(Property.VOLUME).orElseThrow().value() / MILLILITRE, 1e-9, "what a group measures out stays");
    }

    /**
     * By hand, titres of 20 mL: two groups at one burette make six titres in three fillings, 15 mL left. Seven groups: three such burettes and one with three titres, 35 mL left. One burette for six groups:
     * 18 titres in nine fillings, 15 mL left. Two for each group: 2 titres and 1, 15 and 35 mL left. One for each of two students: the same.
     */
    @ParameterizedTest
    @CsvSource({"6, one per 2 groups, 3 × 35", "7, one per 2 groups, 3 × 35 + 1 × 55", "6, one per class, 1 × 35", "6, two per group, 6 × 35 + 6 × 55", "6, one per student, 6 × 35 + 6 × 55",
        "1, one per 4 groups, 1 × 55"})
    void aBuretteThatGroupsShareIsRinsedAndFilledOnceForThem(int groups, String share, String sum) {
        Resolved procedure = resolve(TITRATION.replace("groups: 6", "groups: " + groups).replace("reads to 0.05 mL; one per group", "reads to 0.05 mL; " + share));
        double wanted = 0;
        for (String part : sum.split(" \\+ ")) {
            wanted += Integer.parseInt(part.split(" × ")[0]) * Double.parseDouble(part.split(" × ")[1]);
        }
        assertEquals(wanted, millilitres(procedure, "alkali"), 1e-6);
        double total = procedure.quantity("alkali").orElseThrow().figure(Property.CLASS_TOTAL).orElseThrow().value() / MILLILITRE;
        assertEquals((groups * 60 + wanted) * 1.1, total, 0.05 + 1e-6);
        assertTrue(supplies(procedure).provision("alkali").orElseThrow().ready().value() / MILLILITRE >= total - 1e-6);
    }

    /** Both solutions through the only burette: each group rinses and fills it for each, even where two groups share it. */
    @Test
    void whatTwoSolutionsGoThroughIsRinsedAndFilledForEachOfThem() {
        Resolved procedure = resolve(TITRATION.replace("measure with: pipette", "measure with: burette").replace("reads to 0.05 mL; one per group", "reads to 0.05 mL; one per 2 groups"));
        assertEquals(6 * 55, millilitres(procedure, "sample"), 1e-6);
        assertEquals(6 * 55, millilitres(procedure, "alkali"), 1e-6);
        Resolved two = resolve(TITRATION.replace("measure with: pipette", "measure with: burette").replace("reads to 0.05 mL; one per group", "reads to 0.05 mL; two per group"));
        assertEquals(6 * 55, millilitres(two, "alkali"), 1e-6);
    }

    /** Runs follow each other: two runs of three titres are six, 15 mL left. A burette whose size is not told counts as one of 50 mL, in Spanish words as well. */
    @Test
    void runsCountAndAnUntoldSizeIsTheUsualOne() {
        assertEquals(6 * 35, millilitres(resolve(TITRATION.replace("spare: 10 %", "spare: 10 %\nruns: 2")), "alkali"), 1e-6);
        assertEquals(6 * 55, millilitres(resolve(TITRATION.replace("burette, 50 mL;", "burette;")), "alkali"), 1e-6);
        assertEquals(6 * (10 + 27.5 - 20), millilitres(resolve(TITRATION.replace("burette, 50 mL;", "bureta de 25 mL con llave;")), "alkali"), 1e-6);
    }

    /** A measuring cylinder and a dropping pipette are not rinsed; what a group makes up itself is not handed out; two blocks of one bottle share its burette's rinse. */
    @Test
    void whatNeedsNoRinseTakesNothing() {
        assertEquals(0, millilitres(resolve(TITRATION.replace("pipette: pipette, 20 mL", "pipette: measuring cylinder, 20 mL")), "sample"));
        assertEquals(0, millilitres(resolve(TITRATION.replace("pipette: pipette, 20 mL", "pipette: dropping pipette, 20 mL")), "sample"));
        Resolved own = resolve(TITRATION.replace("```solution sample\n", "```solid salt\nsubstance: sodium carbonate\nmass: 1.0 g\n```\n\n```solution stock\nsolute: sodium carbonate\nmade from: salt\nmade up to: 100 mL\n"
                + "strength: 0.0943 mol/L\n```\n\n```solution part\nportion of: stock\nvolume: 10.0 mL\nmeasure with: pipette\n```\n\n```solution sample\n"));
        assertEquals(0, millilitres(own, "part"));
        Resolved two = resolve(TITRATION.replace("```solution alkali\n", "```solution trial\nportion of: alkali\nrole: rinse\nvolume: 20.0 mL\nmeasure with: burette\n```\n\n```solution alkali\n"));
        assertEquals(6 * 35, millilitres(two, "trial"), 1e-6, "four titres of 20 mL: 15 mL left");
        assertEquals(0, millilitres(two, "alkali"));
    }

    /**
     * By hand: 6 × 3 pots of 40 mL, 6 × 8 mL of sample and 6 × 55 mL of alkali are 1098 mL. Of the alkali (330 mL × 0.100 mol/L = 33.0 mmol) the sample (4.8 mmol) takes up a part: 28.2 mmol in
     * 1.098 L, pOH 1.59, pH 12.4 at 25 °C; without it the pots alone are neutral.
     */
    @Test
    void whatIsRinsedOutAndLeftOverGoesIntoTheWasteAndCountsThere() {
        Resolved procedure = resolve(TITRATION);
        List<WasteContainer> containers = BenchSafety.of(procedure, HazardTables.of("").rules()).containers();
        assertEquals(1, containers.size());
        assertEquals(1098, containers.get(0).volume().orElseThrow().value() / MILLILITRE, 1e-6);
        assertEquals(14 + Math.log10(28.2 / 1098), containers.get(0).pH().orElseThrow(), 0.15);
    }
}
