package tarewright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Severity;
import tarewright.procedure.resolve.Property;

/**
 * Small preparations of gases in a syringe, from the table {@code gas-volumes.csv}: ideal gas at 22 °C and 101.325 kPa, volumes
 * worked in full by another
 * program from the limiting mass, dry and over water. A warning that a pot gets warm is not what is tested here.
 */
class GasVolumesTest {
    private static final double ALLOWED = 0.002;
    private static final Pattern TIMES = Pattern.compile("\\(([0-9.]+) times excess\\)");
    private static final Pattern STRENGTH = Pattern.compile("(.+)\\(aq\\) ([0-9.]+) M");

    static List<Map<String, String>> rows() {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                GasVolumesTest.class.getResourceAsStream("/tarewright/cases/gas-volumes.csv"), StandardCharsets.UTF_8));
                MappingIterator<Map<String, String>> all = new CsvMapper().readerForMapOf(String.class)
                        .with(CsvSchema.emptySchema().withHeader()).readValues(in)) {
            return all.readAll();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void dryAndMoistVolumesAgree(Map<String, String> row) {
        for (String said : List.of("gases: ideal", "level: evening class")) {
            Door.Outcome outcome = Door.open(page(row).front(said).markdown());
            assertEquals(List.of(), outcome.ids(Severity.ERROR).stream().filter(id -> !id.equals("too-hot")).toList());
            double dry = Double.parseDouble(row.get("dry_mL"));
            double wet = Double.parseDouble(row.get("wet_mL"));
            assertEquals(dry, outcome.shown("gas made", Property.DRY), dry * ALLOWED);
            assertEquals(wet, outcome.shown("gas made", Property.MOIST), wet * ALLOWED);
            assertEquals(wet, outcome.shown("gas made", Property.VOLUME), wet * ALLOWED, "what stands in the syringe is moist");
            assertEquals(List.of("weighed out"), outcome.resolved().reactions().get(0).pots().get(0).limiting());
        }
    }

    /** The table says how many times what is needed stands ready. */
    @Test
    void theExcessAgrees() {
        int asked = 0;
        for (Map<String, String> row : rows()) {
            Matcher times = TIMES.matcher(row.get("note"));
            if (times.find() && STRENGTH.matcher(row.get("excess reagent")).matches()) {
                asked++;
                assertEquals(Double.parseDouble(times.group(1)),
                        Door.open(page(row).markdown()).shown("poured on", Property.EXCESS), 0.05, row.get("equation"));
            }
        }
        assertEquals(8, asked);
    }

    @Test
    void theTableIsWhole() {
        assertEquals(13, rows().size());
    }

    private static Page page(Map<String, String> row) {
        String equation = row.get("equation");
        boolean catalysed = row.get("excess reagent").contains("catalyst");
        Page page = new Page("Preparation of a gas").front("room: 22 °C; 101.325 kPa").wasted()
                .block("reaction course", equation, catalysed ? "catalyst: MnO2" : "", "limiting: weighed out");
        if (row.get("limiting").equals("H2O2")) {
            // The table's remark: 0.15 g is in 5.0 mL of 3.0 % w/v.
            page.block("solution weighed out", "solute: H2O2", "strength: 3.0 % w/v", "volume: 5.0 mL");
        } else {
            page.block("solid weighed out", "substance: " + row.get("limiting"), "mass: " + row.get("mass_g") + " g");
        }
        Matcher strength = STRENGTH.matcher(row.get("excess reagent"));
        if (strength.matches()) {
            page.block("solution poured on", "solute: " + strength.group(1), "strength: " + strength.group(2) + " mol/L",
                    "volume: " + row.get("volume mL") + " mL");
        } else if (row.get("excess reagent").startsWith("H2O")) {
            page.block("liquid poured on", "substance: water", "volume: " + row.get("volume mL") + " mL");
        } else if (row.get("excess reagent").startsWith("Ca(OH)2")) {
            page.block("solid poured on", "substance: Ca(OH)2", "mass: 0.10 g");
        } else {
            page.block("solid helper", "substance: MnO2", "mass: 0.1 g", "role: catalyst");
        }
        return page.block("gas gas made", "substance: " + row.get("gas"), "made by: course", "collected: over water");
    }

    /** Common practice, no source: 0.2 g of sodium hydrogencarbonate gives about 60 mL of carbon dioxide. */
    @ParameterizedTest
    @ValueSource(strings = {"18 °C; 98 kPa", "20 °C; 101.3 kPa", "25 °C; 101.3 kPa"})
    void bakingSodaAndVinegarGiveAboutSixtyMillilitres(String room) {
        Door.Outcome outcome = Door.open(vinegar("5 mL", "over water").front("room: " + room).markdown()).sound();
        assertEquals(60, outcome.shown("carbon dioxide", Property.VOLUME), 5);
    }

    /**
     * Common practice, no source: 5 mL of 5 % vinegar is an excess for it. 0.25 g / 60.05 g/mol over 0.2 g / 84.01 g/mol is 1.75.
     */
    @Test
    void fiveMillilitresOfVinegarAreAnExcess() {
        Door.Outcome outcome = Door.open(vinegar("5 mL", "dry").markdown()).sound();
        assertEquals(1.75, outcome.shown("vinegar", Property.EXCESS), 0.005);
        assertEquals(List.of("soda"), outcome.resolved().reactions().get(0).pots().get(0).limiting());
        assertTrue(Door.open(vinegar("2 mL", "dry").markdown()).ids(Severity.ERROR).contains("limiting-claim"), "2 mL are not");
    }

    private static Page vinegar(String volume, String collected) {
        return new Page("Soda and vinegar").wasted()
                .block("reaction fizzing", "NaHCO3(s) + CH3COOH(aq) -> NaCH3COO(aq) + CO2(g) + H2O(l)", "limiting: soda")
                .block("solid soda", "substance: sodium hydrogencarbonate", "mass: 0.2 g")
                .block("solution vinegar", "solute: acetic acid", "strength: 5 % w/v", "volume: " + volume)
                .block("gas carbon dioxide", "substance: carbon dioxide", "made by: fizzing", "collected: " + collected);
    }
}
