package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The dangers of a procedure through the author's language: what is found, and what stands in {@code figures}. All procedures are invented. */
class SafetyFiguresTest {
    private static final String FRONT = """
            ---
            title: On the bench
            groups: 15
            room: 20 °C; 101.325 kPa; 180 m3
            %s
            ---

            """;
    private static final String WASTE = """
            ```waste
            into: as the school says
            ```
            """;

    @TempDir
    private Path folder;

    private JsonNode figures(String text) throws IOException {
        Files.writeString(folder.resolve("bench.md"), text);
        return new ObjectMapper().readTree(run("figures"));
    }

    private String run(String command) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Main.run(new String[] {command, folder.resolve("bench.md").toString()}, new PrintWriter(out, true), new PrintWriter(err, true));
        assertEquals("", err.toString());
        return out.toString();
    }

    private static String front(String more) {
        return FRONT.replace("%s\n", more.isEmpty() ? "" : more + "\n");
    }

    /** The severities of the findings with an id. */
    private static List<String> found(JsonNode figures, String id) {
        List<String> severities = new ArrayList<>();
        figures.get("findings").forEach(f -> {
            if (f.get("id").asText().equals(id)) {
                severities.add(f.get("severity").asText());
            }
        });
        return severities;
    }

    private static String gas(String more, String equation, String solid, String name) {
        return front(more) + """
                ```reaction making
                %s
                ```

                ```gas bubbles
                substance: %s
                made by: making
                wanted: 60 mL
                ```

                ```solid lumps
                substance: %s
                for: bubbles
                ```

                ```solution acid
                solute: HCl
                strength: 0.1 mol/L
                excess over: lumps
                at least: 1.5 times
                ```

                """.formatted(equation, name, solid) + WASTE;
    }

    private static String sulfide(String more) {
        return gas(more, "FeS(s) + HCl(aq) -> FeCl2(aq) + H2S(g)", "FeS", "hydrogen sulfide");
    }

    /**
     * 60 mL in 180 m³ is 0.333 ppm by volume, from 15 groups 5.0 ppm, in 1 m³ 60 ppm. H2S: H330 (CLP Annex VI, index 016-001-00-4);
     * ceiling 10 ppm (NIOSH Pocket Guide).
     */
    @Test
    void hydrogenSulfideDemandsAHood() throws IOException {
        JsonNode figures = figures(sulfide(""));
        JsonNode air = figures.at("/air/bubbles");
        assertEquals(5.0, air.get("all vessels").asDouble(), 0.05);
        assertEquals(0.333, air.get("one vessel").asDouble(), 0.003);
        assertEquals(60, air.get("around a face").asDouble(), 0.6);
        assertEquals("ppm", air.get("unit").asText());
        assertEquals("needed", figures.get("hood").asText());
        assertEquals(List.of("error"), found(figures, "hood-needed"));
        String said = run("proof");
        assertTrue(said.contains("0.33 ppm if one vessel leaks, 5.0 ppm if all do; 60 ppm"), said);
    }

    @Test
    void aHoodThatIsThereIsGiven() throws IOException {
        JsonNode figures = figures(sulfide("hood: yes"));
        assertEquals("given", figures.get("hood").asText());
        assertEquals(List.of(), found(figures, "hood-needed"));
        assertEquals(List.of("error"), found(figures(sulfide("hood: no")), "hood-needed"));
    }

    /** Carbon dioxide: 5000 ppm over a day, 30,000 ppm short-term (NIOSH Pocket Guide). */
    @Test
    void asMuchCarbonDioxideDoesNot() throws IOException {
        JsonNode figures = figures(gas("", "CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)", "CaCO3", "carbon dioxide"));
        assertEquals(5.0, figures.at("/air/bubbles/all vessels").asDouble(), 0.05);
        assertEquals("not needed", figures.get("hood").asText());
        assertEquals(List.of(), found(figures, "hood-needed"));
    }

    private static String two(String one, String other) {
        return front("") + """
                ```solution one
                solute: %s
                strength: 0.5 mol/L
                volume: 10 mL
                ```

                ```solution other
                solute: %s
                strength: 0.5 mol/L
                volume: 10 mL
                ```

                """.formatted(one, other) + WASTE;
    }

    /** Chlorine from hypochlorite and acid: EUH031 of sodium hypochlorite (CLP Annex VI, index 017-011-00-1). */
    @Test
    void acidAndHypochloriteMustNotMeet() throws IOException {
        assertEquals(List.of("error"), found(figures(two("HCl", "NaClO")), "must-not-meet"));
        assertEquals(List.of(), found(figures(two("HCl", "NaCl")), "must-not-meet"));
        String noDensity = two("HCl", "NaClO").replaceFirst("NaClO\nstrength: 0.5 mol/L", "NaClO\nstrength: 5 % w/w");
        assertEquals(List.of("error"), found(figures(noDensity), "must-not-meet"), "though a density is wanting");
    }

    @Test
    void dilutedAcidIsNotTheConcentratedAcid() throws IOException {
        JsonNode figures = figures(two("HCl", "NaCl").replace("volume: 10 mL\n```\n\n```solution other",
                "volume: 10 mL\nmade from: concentrated hydrochloric acid\n```\n\n```solution other"));
        // CLP Annex VI, index 017-002-01-X: Skin Corr. 1B from 25 %, STOT SE 3 (H335) from 10 %; below 10 % neither.
        assertEquals("[\"H314\",\"H335\"]", figures.at("/hazards/concentrated hydrochloric acid/statements").toString());
        assertEquals("Danger", figures.at("/hazards/concentrated hydrochloric acid/signal word").asText());
        assertEquals("[]", figures.at("/hazards/one/statements").toString());
        assertTrue(figures.at("/hazards/one/known").asBoolean());
        assertTrue(figures.at("/hazards/one/signal word").isMissingNode());
    }

    @Test
    void anUnknownSubstanceIsSaidToBeUnknown() throws IOException {
        JsonNode figures = figures(two("HCl", "Na2XeO4"));
        assertEquals(List.of("warning"), found(figures, "hazards-unknown"));
        assertFalse(figures.at("/hazards/other/known").asBoolean());
        assertEquals(List.of(), found(figures(two("HCl", "NaCl")), "hazards-unknown"));
    }

    private static String strong(String before, String inside) {
        return front("") + """
                ```solution alkali
                solute: NaOH
                strength: 2.0 mol/L
                volume: 10 mL
                ```

                """ + before + "1. Take {alkali} of {label of alkali}.\n" + inside + "\n" + WASTE;
    }

    private static String caution(String indent) {
        return (indent + "```caution\nseverity: danger\nhazard: burns\navoid: wear goggles\n```\n").replace("\n", "\n" + indent).stripTrailing() + "\n\n";
    }

    /** Sodium hydroxide from 5 % is H314 (CLP Annex VI, index 011-002-00-6); 2.0 mol/L is some 7.4 %. */
    @Test
    void aCorrosiveStepWantsItsCautionBefore() throws IOException {
        assertEquals(List.of("warning"), found(figures(strong("", "")), "caution-missing"));
        assertEquals(List.of("warning"), found(figures(strong("", "\n" + caution("   "))), "caution-missing"));
        assertEquals(List.of(), found(figures(strong(caution(""), "")), "caution-missing"));
        assertEquals(List.of(), found(figures(strong("", "").replace("2.0 mol/L", "0.1 mol/L")), "caution-missing"));
    }

    private static String bottle(String properties, String lumps) {
        return front("") + """
                ```apparatus
                bottle: glass bottle; capacity 100 mL%s; one per group
                ```

                ```reaction making
                CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)
                ```

                ```solid lumps
                substance: CaCO3
                mass: %s
                ```

                ```solution acid
                solute: HCl
                strength: 1.0 mol/L
                volume: 50.0 mL
                in: bottle
                ```

                """.formatted(properties, lumps) + WASTE;
    }

    /** 0.50 g is 5.0 mmol of gas, 0.24 bar over 101 kPa in the 50 mL left free by p V = n R T; 1.00 g twice that: worked by hand. */
    @Test
    void aClosedBottleMayBurst() throws IOException {
        assertEquals(List.of(), found(figures(bottle("", "1.00 g")), "over-pressure"));
        assertEquals(List.of("error"), found(figures(bottle("; closed", "1.00 g")), "over-pressure"));
        assertEquals(List.of("warning"), found(figures(bottle("; closed", "0.10 g")), "over-pressure"));
        assertEquals(List.of(), found(figures(bottle("; closed", "0.01 g")), "over-pressure"));
    }

    private static String mixture(String equation, String one, String other, String neutralise) {
        return front("") + """
                ```reaction mixing
                %s
                ```

                ```solution one
                solute: %s
                strength: 0.20 mol/L
                volume: 30.0 mL
                ```

                ```solution other
                solute: %s
                strength: 0.20 mol/L
                volume: 10.0 mL
                ```

                ```waste
                of: mixing
                into: acid waste
                %s
                ```
                """.formatted(equation, one, other, neutralise).replace("\n\n```\n", "\n```\n");
    }

    /** 4.0 mmol of H+ in 40 mL is 0.10 mol/L, pH 1.0; as much hydrogencarbonate is 0.336 g (84.007 g/mol, IUPAC 2021): by hand. */
    @Test
    void strongAcidLeftOver() throws IOException {
        JsonNode waste = figures(mixture("HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)", "HCl", "NaOH", "neutralise with: sodium hydrogencarbonate"))
                .at("/waste/mixing");
        assertEquals(1.0, waste.get("pH").asDouble(), 0.01);
        assertEquals(4.0, waste.at("/left/HCl/value").asDouble() * (waste.at("/left/HCl/unit").asText().equals("mol") ? 1000 : 1), 0.01);
        assertEquals(0.336, waste.at("/neutralise/for a group/value").asDouble(), 0.001);
        assertEquals(15 * 0.336, waste.at("/neutralise/class total/value").asDouble(), 0.01);
    }

    @Test
    void strongAlkaliLeftOver() throws IOException {
        JsonNode waste = figures(mixture("NaOH(aq) + HCl(aq) -> NaCl(aq) + H2O(l)", "NaOH", "HCl", "neutralise with: citric acid")).at("/waste/mixing");
        assertEquals(13.0, waste.get("pH").asDouble(), 0.01);
        // Three protons to a molecule of citric acid, 192.12 g/mol: 4.0 mmol / 3 * 192.12 = 0.256 g.
        assertEquals(0.256, waste.at("/neutralise/for a group/value").asDouble(), 0.001);
    }

    /** Acetic acid left with its salt, two to one: pH = 4.756 - lg 2 = 4.455 (Henderson-Hasselbalch; pKa CRC Handbook, 86th edition). */
    @Test
    void weakAcidLeftOver() throws IOException {
        JsonNode waste = figures(mixture("CH3COOH(aq) + NaOH(aq) -> CH3COONa(aq) + H2O(l)", "CH3COOH", "NaOH", "")).at("/waste/mixing");
        assertEquals(4.455, waste.get("pH").asDouble(), 0.01);
    }

    /** Copper ions take water apart and no constant of theirs is at hand: no pH rather than a wrong one. */
    @Test
    void noPHWhereAConstantIsMissing() throws IOException {
        JsonNode waste = figures(mixture("CuSO4(aq) + NaOH(aq) -> Cu(OH)2(s) + Na2SO4(aq)", "CuSO4", "NaOH", "")).at("/waste/mixing");
        assertFalse(waste.has("pH"), waste.toString());
        assertEquals("never", waste.get("sink").asText());
    }

    // --- the country's table, and the teacher's own

    /** ISO 3166 codes: Germany applies the EU's regulation; for the United States there is no table here, and nobody's own may stand in unsaid. */
    @Test
    void aCountryWithoutATableIsFoundAndSaysWhichTableIsUsed() throws IOException {
        String text = two("HCl", "NaCl");
        assertEquals(List.of(), found(figures(text), "country-not-known"));
        assertEquals(List.of(), found(figures(text.replace("groups: 15", "groups: 15\ncountry: DE")), "country-not-known"));
        String other = text.replace("groups: 15", "groups: 15\ncountry: US");
        assertEquals(List.of("warning"), found(figures(other), "country-not-known"));
        String said = run("proof");
        assertTrue(said.contains("no hazard table of `US` is at hand; EU CLP") && said.contains(" DE"), said);
    }

    /** A language without words is told, with those that there are; its regions are as good as the language. */
    @Test
    void anUnknownLanguageIsTold() throws IOException {
        String text = two("HCl", "NaCl");
        assertEquals(List.of(), found(figures(text.replace("groups: 15", "groups: 15\nlanguage: en-GB")), "language-not-known"));
        assertEquals(List.of("warning"), found(figures(text.replace("groups: 15", "groups: 15\nlanguage: Spanish")), "language-not-known"));
        assertEquals(List.of("warning"), found(figures(text.replace("groups: 15", "groups: 15\nlanguage: eo")), "language-not-known"));
        String said = run("proof");
        assertTrue(said.contains("no words in `eo`") && said.contains("one of en"), said);
    }

    /** Annex VI, 017-002-01-X: hydrochloric acid H315, H319, H335 from 10 %; the teacher's own row says H318 from 5 %. 2 mol/L is some 7 %. */
    @Test
    void aTeachersOwnHazardsGoBeforeOursAreNotedAndAreDangerousWithTheSameThings() throws IOException {
        String text = two("HCl", "NaClO").replaceFirst("0.5 mol/L", "2.0 mol/L");
        assertEquals("[]", figures(text).at("/hazards/one/statements").toString());

        Files.writeString(folder.resolve("hazards.csv"), "name,classification,limits,source\nhydrochloric acid,Eye Dam. 1 H318,5 % Eye Dam. 1 H318,our supplier\n");
        JsonNode own = figures(text);
        assertEquals("[\"H318\"]", own.at("/hazards/one/statements").toString());
        assertTrue(own.at("/hazards/one/basis").asText().contains("teacher"), own.at("/hazards/one").toString());
        assertEquals(List.of("note"), found(own, "hazards-overridden"));
        assertEquals(List.of("error"), found(own, "must-not-meet"), "the override changes what is on the label, not what it does with hypochlorite");
    }

    @Test
    void aHazardTableThatCannotBeReadStopsThePrint() throws IOException {
        Files.writeString(folder.resolve("hazards.csv"), "name,classification\nhydrochloric acid,harmless\n");
        assertEquals(List.of("error"), found(figures(two("HCl", "NaCl")), "not-a-hazard-class"));
    }

    /** Every key that other programs are promised, for blocks, products and stocks alike. */
    @Test
    void everyPromisedKeyStandsInTheFigures() throws IOException {
        JsonNode figures = figures(gas("", "Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)", "magnesium", "hydrogen").replace("solute: HCl\n",
                "solute: HCl\nmade from: concentrated hydrochloric acid\n"));
        for (String thing : List.of("bubbles", "lumps", "magnesium chloride", "concentrated hydrochloric acid")) {
            JsonNode hazards = figures.path("hazards").path(thing);
            for (String key : List.of("statements", "pictograms", "basis", "known")) {
                assertTrue(hazards.has(key), thing + " " + key + " " + figures.path("hazards"));
            }
        }
        assertEquals("Danger", figures.at("/hazards/concentrated hydrochloric acid/signal word").asText());
        for (String key : List.of("one vessel", "all vessels", "around a face", "unit")) {
            assertTrue(figures.at("/air/bubbles").has(key), figures.get("air").toString());
        }
        assertEquals("ppm", figures.at("/air/bubbles/unit").asText());
        assertEquals("not needed", figures.get("hood").asText());
        assertTrue(figures.at("/waste/making").has("pH"), figures.get("waste").toString());
        assertTrue(figures.at("/waste containers").size() > 0);
    }

    /**
     * A stock block is classified at its own strength. Annex VI: HCl 25 % and more H314, 10 % and more H335 (017-002-01-X); H2O2 from 8 % H318
     * (008-003-00-9); twenty volumes are 1.78 mol/L, some 6 %, so H319 alone (from 5 %).
     */
    @Test
    void aStockBlockIsClassifiedAtItsOwnStrength() throws IOException {
        String made = two("HCl", "NaCl").replaceFirst("volume: 10 mL", "volume: 10 mL\nmade from: shelf acid");
        for (String[] row : new String[][] {{"37 % w/w", "[\"H314\",\"H335\"]"}, {"12 % w/w", "[\"H315\",\"H319\",\"H335\"]"}, {"5 % w/w", "[]"}}) {
            JsonNode figures = figures(made + "\n```stock shelf acid\nsolute: HCl\nstrength: " + row[0] + "\ndensity: 1.1 g/mL\n```\n");
            assertEquals(row[1], figures.at("/hazards/shelf acid/statements").toString(), row[0]);
        }
        JsonNode peroxide = figures(two("HCl", "NaCl") + "\n```stock old peroxide\nsolute: H2O2\nstrength: 20 vol\n```\n");
        assertEquals("[\"H319\"]", peroxide.at("/hazards/old peroxide/statements").toString());
    }

    /** Stocks meet in the stock room: a warning, at the place of the stock block. EUH031 of sodium hypochlorite (CLP Annex VI, 017-011-00-1). */
    @Test
    void aStockBlockMustNotMeetWhatStandsBesideIt() throws IOException {
        JsonNode figures = figures(two("HCl", "NaCl") + "\n```stock bleach\nsolute: NaClO\nstrength: 0.5 mol/L\n```\n");
        assertEquals(List.of("warning"), found(figures, "must-not-meet"));
    }

    /** Magnesium in acid, and a neutralisation with too much alkali; each group does both. @param container of the second */
    private static String twoPots(String acidVolume, String container) {
        return front("") + """
                ```reaction fizz
                Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)
                ```

                ```reaction neutral
                NaOH(aq) + HNO3(aq) -> NaNO3(aq) + H2O(l)
                ```

                ```solid ribbon
                substance: magnesium
                moles: 1.000 mmol
                ```

                ```solution acid
                solute: HCl
                strength: 0.5000 mol/L
                volume: %s
                ```

                ```solution alkali
                solute: NaOH
                strength: 0.2000 mol/L
                volume: 50.00 mL
                ```

                ```solution nitric
                solute: HNO3
                strength: 0.2000 mol/L
                volume: 20.00 mL
                ```

                ```waste
                of: fizz
                into: tub
                neutralise with: sodium hydrogencarbonate
                ```

                ```waste
                of: neutral
                into: %s
                ```
                """.formatted(acidVolume, container);
    }

    /**
     * Worked by hand. Acid left: 0.5 mol/L x 20 mL - 2 x 1 mmol = 8 mmol a group; alkali left: 0.2 mol/L x (50 - 20) mL = 6 mmol. Alone the acid of 15 groups
     * takes 15 x 8 mmol x 84.006 g/mol (IUPAC 2021 weights) = 10.08 g of sodium hydrogencarbonate; together with the alkali 2 mmol are left: 2.52 g. In
     * 20 + 70 mL these are 0.0222 mol/L, pH 1.65.
     */
    @Test
    void potsOfOneContainerAreReckonedTogether() throws IOException {
        JsonNode apart = figures(twoPots("20.00 mL", "jug")).get("waste containers");
        assertEquals(10.08, apart.at("/tub/class total/neutraliser/value").asDouble(), 0.02);
        assertEquals("sodium-hydrogencarbonate", apart.at("/tub/neutralise with").asText());
        assertTrue(apart.at("/jug/pH").asDouble() > 12, apart.toString());

        JsonNode together = figures(twoPots("20.00 mL", "tub")).get("waste containers");
        assertEquals("[\"fizz\",\"neutral\"]", together.at("/tub/of").toString());
        assertEquals(2.52, together.at("/tub/class total/neutraliser/value").asDouble(), 0.01);
        assertEquals(1.65, together.at("/tub/pH").asDouble(), 0.01);
        assertEquals(15 * 90.0, together.at("/tub/class total/volume/value").asDouble(), 1e-6);
        assertFalse(together.at("/tub/class total/a pinch").asBoolean());
    }

    /** 0.5 mol/L x 16.01 mL - 2 mmol - 6 mmol is 5 µmol a group: 6 mg of hydrogencarbonate for the class, which nobody weighs out. */
    @Test
    void aTinyLeftOverTakesAPinch() throws IOException {
        JsonNode together = figures(twoPots("16.01 mL", "tub")).get("waste containers");
        assertEquals(0.0063, together.at("/tub/class total/neutraliser/value").asDouble(), 0.0002);
        assertTrue(together.at("/tub/class total/a pinch").asBoolean(), together.toString());
    }
}
