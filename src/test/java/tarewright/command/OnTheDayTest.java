package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a bottle turns out to be on the day goes in the place of what the procedure types, and everything follows. */
class OnTheDayTest {
    private static final Path PROCEDURE = Path.of("procedures", "acid-in-a-descaler.md");

    @TempDir
    private Path folder;

    /** 3 × 0.0350 mol/L × 20.0 mL / 0.1032 mol/L = 20.349 mL, read to 0.05 mL: 20.35 mL (one citric acid takes three of alkali). */
    @Test
    void theExpectedTitreAndTheAnswerFollowTheRealStrengthOfTheTitrant() throws IOException {
        JsonNode figures = figures(PROCEDURE, "--on-the-day", "strength of alkali is 0.1032 mol/L");
        assertEquals(20.35, figures.at("/quantities/titre/figures/value/value").asDouble(), 1e-9, figures.at("/quantities/titre").toString());
        JsonNode planned = figures(PROCEDURE);
        assertEquals(21.0, planned.at("/quantities/titre/figures/value/value").asDouble(), 1e-9);
    }

    @ParameterizedTest(name = "{0} is {2}")
    @CsvSource({"strength of alkali, strength: 0.1000 mol/L, 0.1032 mol/L", "strength of sample, strength: 0.0350 mol/L, 0.0412 mol/L",
            "strength of indicator, strength: 0.1 % w/v, 0.05 % w/v"})
    void everyFigureIsAsIfTheProcedureHadTypedIt(String name, String typed, String real) throws IOException {
        String text = Files.readString(PROCEDURE);
        assertTrue(text.contains(typed), typed);
        Path edited = folder.resolve("acid-in-a-descaler.md");
        Files.writeString(edited, text.replaceFirst(typed, typed.substring(0, typed.indexOf(':')) + ": " + real));
        assertEquals(without(figures(edited)), without(figures(PROCEDURE, "--on-the-day", name + " is " + real)));
    }

    /**
     * A bottle was read that had been made already: 0.1000 mol/L is made, 0.1032 mol/L is in the key. 2 L × 0.1000 mol/L × 39.997 g/mol = 8.00 g of sodium hydroxide (molar mass by
     * the standard atomic weights of IUPAC).
     */
    @Test
    void theRecipeMakesWhatIsTypedWhateverIsFoundOnTheDay() throws IOException {
        JsonNode found = figures(PROCEDURE, "--on-the-day", "strength of alkali in acid-in-a-descaler is 0.1032 mol/L");
        assertEquals(8.00, found.at("/recipes/alkali/batches/0/steps/0/take/value").asDouble(), 1e-9);
        assertEquals(figures(PROCEDURE).at("/recipes/alkali/batches"), found.at("/recipes/alkali/batches"));
        assertEquals(20.35, found.at("/quantities/titre/figures/value/value").asDouble(), 1e-9);
    }

    /** Hydrochloric acid of 4 mol/L holds 13.7 % by mass and irritates from 10 % on (CLP, Annex VI, index number 017-002-01); of 0.1 mol/L it does not. */
    @Test
    void noHazardBecomesMilderByWhatIsFound() throws IOException {
        Path file = folder.resolve("acid.md");
        Files.writeString(file, "---\ntitle: An acid\n---\n\n```solution acid\nsolute: HCl\nstrength: 4.0 mol/L\nvolume: 10 mL\n```\n\n1. Measure {acid}.\n");
        JsonNode typed = figures(file).at("/hazards");
        assertTrue(typed.toString().contains("H315"), typed.toString());
        assertEquals(typed.toString().replaceAll("[0-9.]+ mol/L", ""), figures(file, "--on-the-day", "strength of acid is 0.1 mol/L").at("/hazards").toString().replaceAll("[0-9.]+ mol/L", ""));
    }

    @Test
    void aValueBlockIsSetByItsName() throws IOException {
        Path file = folder.resolve("value.md");
        Files.writeString(file, "---\ntitle: A value\n---\n\n```value volume of a mole\nis: 24.0 L/mol\n```\n\nIt is {volume of a mole}.\n");
        assertEquals(24.3, figures(file, "--on-the-day", "volume of a mole is 24.3 L/mol").at("/quantities/volume of a mole/figures/value/value").asDouble(), 1e-9);
    }

    @Test
    void whatTheProcedureDoesNotHaveIsToldWithTheNearestName() {
        Said said = run("proof", PROCEDURE.toString(), "--on-the-day", "strength of alkaly is 0.1032 mol/L");
        assertEquals(Main.ERRORS, said.status(), said.out());
        assertTrue(said.out().contains("unknown-day-value") && said.out().contains("`strength of alkali`"), said.out());
    }

    @Test
    void whatIsWorkedOutCannotBeSet() {
        Said said = run("proof", PROCEDURE.toString(), "--on-the-day", "volume of alkali is 20 mL");
        assertTrue(said.status() == Main.ERRORS && said.out().contains("day-value-derived"), said.out());
    }

    @Test
    void aValueOfAnotherKindIsToldAtItsPlaceOnTheCommandLine() {
        Said said = run("proof", PROCEDURE.toString(), "--on-the-day", "strength of alkali is 20 mL");
        assertTrue(said.status() == Main.ERRORS && said.out().contains("--on-the-day:1:23"), said.out());
    }

    @Test
    void groupsRunsSizeAndSpareAreSetOnTheCommandLine() throws IOException {
        JsonNode setting = figures(PROCEDURE, "--groups", "9", "--group-size", "3", "--runs", "2", "--spare", "25 %").get("setting");
        assertEquals("9 3 2 0.25", setting.get("groups").asInt() + " " + setting.get("group size").asInt() + " " + setting.get("runs").asInt() + " "
                + setting.get("spare").asDouble());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"--spare, -5 %", "--spare, 300 %", "--runs, 0", "--group-size, 0", "--on-the-day, strength of alkali",
            "--on-the-day, strength of alkali is 1 mol/L; strength of alkali is 2 mol/L"})
    void whatCannotBeMeantIsRefusedInWordsAndNothingIsDone(String option, String value) {
        Said said = run("proof", PROCEDURE.toString(), option, value);
        assertEquals(Main.USAGE, said.status(), said.out());
        assertTrue(said.err().startsWith("tarewright: ") && said.err().contains(option), said.err());
    }

    private static JsonNode without(JsonNode figures) {
        ((ObjectNode) figures).remove("file");
        ((ObjectNode) figures).remove("version");
        // How it is made does not follow what is found.
        ((ObjectNode) figures).remove("recipes");
        ((ObjectNode) figures.at("/prep")).remove("off the shelf");
        return figures;
    }

    private static JsonNode figures(Path file, String... options) throws IOException {
        String[] all = new String[options.length + 2];
        all[0] = "figures";
        all[1] = file.toString();
        System.arraycopy(options, 0, all, 2, options.length);
        Said said = run(all);
        assertEquals(Main.CLEAN, said.status(), said.out() + said.err());
        return new ObjectMapper().readTree(said.out());
    }

    private record Said(int status, String out, String err) {
    }

    private static Said run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(arguments, new PrintWriter(out), new PrintWriter(err, true));
        return new Said(status, out.toString(), err.toString());
    }
}
