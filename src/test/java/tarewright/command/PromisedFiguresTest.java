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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.library.Library;

/** What {@code figures} holds for every procedure that we ship, and that each finding with a name that others rely on can be had. All procedures are invented. */
class PromisedFiguresTest {
    @TempDir
    private Path folder;

    static List<Path> files() {
        return Library.files();
    }

    private static JsonNode figures(Path file) throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Main.run(new String[] {"figures", file.toString()}, new PrintWriter(out, true), new PrintWriter(err, true));
        assertEquals("", err.toString());
        return new ObjectMapper().readTree(out.toString());
    }

    /** An answer that is a number has an uncertainty or is exact, a range around it, a formula of the readings that it is worked from, and slips that say whether the number can tell them. */
    @ParameterizedTest
    @MethodSource("files")
    void everyAnswerCanBeMarkedAndEveryGasSaysHowMuchThereIs(Path file) throws IOException {
        JsonNode all = figures(file);
        assertTrue(all.get("answers").size() > 0, "answers of " + file);
        answers(all);
        gases(all);
        for (JsonNode hand : all.path("hands")) {
            answers(hand);
        }
    }

    private static boolean names(JsonNode working, Set<String> readings) {
        return readings.stream().anyMatch(r -> working.toString().matches(".*\\b" + r + "\\b.*"));
    }

    private static void answers(JsonNode of) {
        Set<String> readings = new LinkedHashSet<>();
        of.get("quantities").fields().forEachRemaining(q -> {
            if (q.getValue().get("type").asText().equals("reading")) {
                readings.add(q.getKey());
            }
        });
        for (JsonNode answer : of.get("answers")) {
            JsonNode value = answer.path("value");
            if (value.isMissingNode()) {
                assertTrue(answer.has("words") || answer.has("choice"), answer.toString());
                continue;
            }
            double number = value.get("value").asDouble();
            JsonNode accepted = answer.get("accepted");
            assertEquals(value.get("unit").asText(), accepted.get("unit").asText());
            double from = accepted.get("from").asDouble();
            double to = accepted.get("to").asDouble();
            assertTrue(from <= number && number <= to, answer.toString());
            assertTrue(value.has("standard uncertainty") ? value.get("standard uncertainty").asDouble() > 0 && from < to : from == to, answer.toString());
            assertTrue(answer.get("working").size() > 0, answer.toString());
            // A formula of the readings, if there are any in it: who weighs nothing has no number of his own to follow.
            assertTrue(!names(answer.get("working"), readings) || answer.has("follow-through"), answer.toString());
            assertTrue(!answer.has("follow-through") || readings.stream().anyMatch(answer.get("follow-through").asText()::contains), answer.toString());
            for (JsonNode slip : answer.get("slips")) {
                double wrong = slip.get("value").asDouble();
                assertFalse(slip.get("slip").asText().isBlank());
                assertEquals(value.get("unit").asText(), slip.get("unit").asText());
                assertTrue(slip.get("cannot tell").isBoolean());
                assertEquals(from <= wrong && wrong <= to, slip.get("cannot tell").asBoolean(), slip + " in " + accepted);
            }
        }
    }

    /** A gas says what it would be dry, how large it may become and, where water or a liquid is there, what it is moist and what dissolves. */
    private static void gases(JsonNode all) {
        for (JsonNode quantity : all.get("quantities")) {
            JsonNode figures = quantity.get("figures");
            if (quantity.get("type").asText().equals("gas") && figures.has("volume")) {
                double volume = number(figures, "volume");
                assertTrue(number(figures, "dry") > 0 && number(figures, "largest") >= volume, figures.toString());
                if (figures.has("moist")) {
                    assertTrue(number(figures, "moist") > number(figures, "dry"), figures.toString());
                }
                if (figures.has("dissolved")) {
                    assertTrue(number(figures, "dissolved") > 0 && volume < number(figures, figures.has("moist") ? "moist" : "dry"), figures.toString());
                }
                assertTrue(figures.get("volume").has("standard uncertainty"), figures.toString());
            }
        }
    }

    private static double number(JsonNode figures, String name) {
        return figures.get(name).get("value").asDouble();
    }

    /** Each of the four stands somewhere, so that nothing above is held for want of anything to hold. */
    @Test
    void theEggshellHasAllFourVolumes() throws IOException {
        JsonNode fizz = figures(Path.of("procedures", "chalk-in-an-eggshell.md")).at("/quantities/fizz/figures");
        for (String name : List.of("dry", "moist", "dissolved", "largest", "volume")) {
            assertTrue(fizz.has(name), name);
        }
    }

    // --- findings that have a name

    private Set<String> found(String front, String... blocks) throws IOException {
        StringBuilder text = new StringBuilder("---\ntitle: Named\ngroups: 10\nroom: 20 °C; 101.325 kPa; 180 m3\n" + front + "---\n\n");
        for (String block : blocks) {
            text.append("```").append(block).append("\n```\n\n");
        }
        Path file = folder.resolve("named.md");
        Files.writeString(file, text.toString());
        Set<String> ids = new LinkedHashSet<>();
        figures(file).get("findings").forEach(f -> ids.add(f.get("id").asText()));
        return ids;
    }

    private static final String WASTE = "waste\ninto: as the school says";
    private static final String MAGNESIUM = "reaction dissolving\nMg(s) + HCl(aq) -> MgCl2(aq) + H2(g)";
    private static final String SYRINGE = "apparatus\nsyringe: gas syringe; capacity 100 mL; graduation 1 mL\nbalance: balance; reads to 0.01 g\n"
            + "cylinder: measuring cylinder, 25 mL; capacity 25 mL; graduation 0.5 mL\nflask: flask; capacity 250 mL; closed";
    private static final String ACID = "solution acid\nsolute: HCl\nstrength: 1.0 mol/L\nvolume: 20 mL";
    private static final String HYDROGEN = "gas hydrogen\nsubstance: hydrogen\nmade by: dissolving\nin: syringe";

    /** 0.20 g of magnesium (24.305 g/mol) are 8.2 mmol; with acid for 10 mmol of it 198 mL at 20 °C, and the syringe holds 100. At 0.08 g it is 79 mL. */
    @Test
    void overCapacity() throws IOException {
        assertTrue(found("", SYRINGE, MAGNESIUM, "solid ribbon\nsubstance: Mg\nmass: 0.20 g", ACID, HYDROGEN, WASTE).contains("over-capacity"));
        assertFalse(found("", SYRINGE, MAGNESIUM, "solid ribbon\nsubstance: Mg\nmass: 0.08 g", ACID, HYDROGEN, WASTE).contains("over-capacity"));
    }

    /** Water takes several hundred volumes of ammonia (Sander 2023: 0.59 mol/(m³ Pa)), and 0.02 volumes of hydrogen. */
    @Test
    void tooSolubleToWash() throws IOException {
        String made = "reaction making\nNH4Cl(s) + NaOH(aq) -> NH3(g) + NaCl(aq) + H2O(l)";
        assertTrue(found("", SYRINGE, made, "solid salt\nsubstance: NH4Cl\nmass: 0.10 g", "solution lye\nsolute: NaOH\nstrength: 2.0 mol/L\nvolume: 10 mL",
                "gas ammonia\nsubstance: NH3\nmade by: making\nin: syringe\nwash: 5 mL", WASTE).contains("too-soluble-to-wash"));
        assertFalse(found("", SYRINGE, MAGNESIUM, "solid ribbon\nsubstance: Mg\nmass: 0.08 g", ACID, HYDROGEN + "\nwash: 5 mL", WASTE).contains("too-soluble-to-wash"));
    }

    /** 1.00 g of magnesium is 41 mmol and needs 82 mmol of acid; 20 mmol is no excess over it. Of 0.08 g it is three times what is needed. */
    @Test
    void limitingClaim() throws IOException {
        String claimed = MAGNESIUM + "\nlimiting: ribbon";
        assertTrue(found("", claimed, "solid ribbon\nsubstance: Mg\nmass: 1.00 g", ACID, WASTE).contains("limiting-claim"));
        assertFalse(found("", claimed, "solid ribbon\nsubstance: Mg\nmass: 0.08 g", ACID, WASTE).contains("limiting-claim"));
    }

    /** Acid for one and a half times 0.08 g of magnesium: with 0.50 g more in the same pot it is no excess any longer. */
    @Test
    void notInExcess() throws IOException {
        String two = "solution acid\nsolute: HCl\nstrength: 1.0 mol/L\nexcess over: ribbon\nat least: 1.5 times";
        assertFalse(found("", MAGNESIUM, "solid ribbon\nsubstance: Mg\nmass: 0.08 g", two, WASTE).contains("not-in-excess"));
        assertTrue(found("", MAGNESIUM, "solid ribbon\nsubstance: Mg\nmass: 0.08 g", "solid powder\nsubstance: Mg\nmass: 0.50 g", two, WASTE).contains("not-in-excess"));
    }

    /** A balance that reads to 0.01 g shows no 0.155 g; it shows 0.15 g. */
    @Test
    void notDeliverable() throws IOException {
        assertTrue(found("", SYRINGE, "solid ribbon\nsubstance: Mg\nmass: 0.155 g\nweigh with: balance", WASTE).contains("not-deliverable"));
        assertFalse(found("", SYRINGE, "solid ribbon\nsubstance: Mg\nmass: 0.15 g\nweigh with: balance", WASTE).contains("not-deliverable"));
    }

    /** 20 L out of a 25 mL cylinder is a slip for 20 mL. */
    @Test
    void thousandfold() throws IOException {
        String acid = "solution acid\nsolute: HCl\nstrength: 1.0 mol/L\nmeasure with: cylinder\nvolume: ";
        assertTrue(found("", SYRINGE, acid + "20 L", WASTE).contains("thousandfold"));
        assertFalse(found("", SYRINGE, acid + "20 mL", WASTE).contains("thousandfold"));
    }

    /** 5 mol/L of acid and alkali, 100 mL each: 0.5 mol × 56 kJ/mol = 28 kJ into 200 g, 33 K. At 0.1 mol/L it is 0.7 K. */
    @Test
    void tooHot() throws IOException {
        String made = "reaction neutralising\nHCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)";
        for (String strength : List.of("5.0", "0.1")) {
            assertEquals(strength.equals("5.0"), found("", made, "solution acid\nsolute: HCl\nstrength: " + strength + " mol/L\nvolume: 100 mL",
                    "solution lye\nsolute: NaOH\nstrength: " + strength + " mol/L\nvolume: 100 mL", WASTE).contains("too-hot"), strength);
        }
    }

    /** Acid on bleach sets chlorine free (common knowledge of the trade; EUH031 of CLP Annex II). Acid and salt do nothing. */
    @Test
    void mustNotMeet() throws IOException {
        assertTrue(found("", ACID, "solution bleach\nsolute: NaClO\nstrength: 0.7 mol/L\nvolume: 20 mL", WASTE).contains("must-not-meet"));
        assertFalse(found("", ACID, "solution brine\nsolute: NaCl\nstrength: 0.7 mol/L\nvolume: 20 mL", WASTE).contains("must-not-meet"));
    }

    /** Hydrogen sulfide is fatal if inhaled (H330, CLP Annex VI 016-001-00-4), carbon dioxide is not. */
    @Test
    void hoodNeeded() throws IOException {
        String sulfide = "reaction making\nFeS(s) + HCl(aq) -> FeCl2(aq) + H2S(g)";
        assertTrue(found("", sulfide, "solid lumps\nsubstance: FeS\nmass: 0.22 g", ACID, "gas bad\nsubstance: H2S\nmade by: making", WASTE).contains("hood-needed"));
        String chalk = "reaction making\nCaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)";
        assertFalse(found("", chalk, "solid lumps\nsubstance: CaCO3\nmass: 0.25 g", ACID, "gas good\nsubstance: CO2\nmade by: making", WASTE).contains("hood-needed"));
    }

    /** A salt that stands in no table is unknown and not harmless. */
    @Test
    void hazardsUnknown() throws IOException {
        assertTrue(found("", "solid odd\nsubstance: Rb2TeO4\nmass: 0.1 g", WASTE).contains("hazards-unknown"));
        assertFalse(found("", "solid salt\nsubstance: NaCl\nmass: 0.1 g", WASTE).contains("hazards-unknown"));
    }

    /** Waste that is said nowhere is left on the bench. */
    @Test
    void wasteMissing() throws IOException {
        assertTrue(found("", ACID).contains("waste-missing"));
        assertFalse(found("", ACID, WASTE).contains("waste-missing"));
    }
}
