package tarewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The term that is shipped: six sections, five procedures, five documents, in one command. Its totals are worked out again from {@code figures}. */
class DemoTermTest {
    private static final List<String> SECTIONS = List.of("Mon-A", "Mon-B", "Tue", "Wed", "Thu-early", "Thu-late");
    private static final List<String> PROCEDURES = List.of("hydrogen-from-magnesium", "chalk-from-two-solutions", "acid-in-a-descaler", "heat-of-neutralisation",
            "oxygen-from-peroxide");
    private static final Map<String, BigDecimal> UNITS = Map.of("mL", new BigDecimal("0.001"), "L", BigDecimal.ONE, "g", BigDecimal.ONE, "mg", new BigDecimal("0.001"), "mm",
            BigDecimal.ONE, "kg", new BigDecimal("1000"));
    /** Nominal volumes of flasks, mL (ISO 1042, from memory). */
    private static final List<Integer> FLASKS = List.of(5, 10, 25, 50, 100, 250, 500, 1000, 2000);
    @TempDir
    private Path out;

    private static String run(String... arguments) {
        StringWriter said = new StringWriter();
        assertEquals(0, Main.run(arguments, new PrintWriter(said), new PrintWriter(said)), said::toString);
        return said.toString();
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u202F]+", " ");
        }
    }

    @Test
    void sixSectionsOfFiveProceduresAndFiveDocumentsPrintInOneCommandAndTheTotalsAreRight() throws IOException {
        run("print", "--term", "procedures/spring-term.md", "--out", out.toString());
        for (String section : SECTIONS) {
            for (String procedure : PROCEDURES) {
                for (String kind : List.of("handout", "key", "safety", "prep", "labels")) {
                    assertTrue(Files.size(out.resolve(section).resolve(procedure + "-" + kind + ".pdf")) > 1000, section + " " + procedure + " " + kind);
                }
            }
            assertTrue(Files.isRegularFile(out.resolve(section).resolve(section + "-packet.pdf")), section);
        }
        for (String file : List.of("spring-term-order.pdf", "spring-term-prep.pdf", "spring-term-copies.csv")) {
            assertTrue(Files.isRegularFile(out.resolve(file)), file);
        }
        int totals = 0;
        Map<String, BigDecimal> needed = new java.util.TreeMap<>();
        for (String line : run("figures", "--term", "procedures/spring-term.md").lines().toList()) {
            JsonNode procedure = new ObjectMapper().readTree(line);
            totals += totals(procedure);
            String sheet = text(out.resolve(procedure.get("section").asText()).resolve(procedure.get("procedure").asText() + "-prep.pdf"));
            for (JsonNode draw : procedure.at("/prep/off the shelf")) {
                assertTrue(sheet.contains(draw.at("/take/shown").asText()), draw + "\n" + sheet);
                needed.merge(draw.get("what").asText() + " in " + draw.at("/take/unit").asText(), decimal(draw.at("/take/value")), BigDecimal::add);
            }
        }
        assertTrue(totals >= 60, totals + " totals");
        isOrdered(needed, text(out.resolve("spring-term-order.pdf")));
    }

    /**
     * What the prep sheets of all sections take off the shelf, added up, stands on the order list, less what is on hand. By hand: 1.1 L of concentrated acid are more than a fifth of a litre, so no pack
     * of 2.5 L is bought for it.
     */
    private static void isOrdered(Map<String, BigDecimal> needed, String order) {
        String toBuy = order.substring(order.indexOf("To have on the shelf"), order.indexOf("Who takes how much"));
        needed.forEach((what, sum) -> {
            String number = sum.setScale(Math.max(0, sum.stripTrailingZeros().scale()), RoundingMode.UNNECESSARY).toPlainString();
            String further = number.contains(".") ? "0*" : "(?:\\.0+)?";
            assertTrue(Pattern.compile("(?<![0-9.])" + Pattern.quote(number) + further + " " + what.substring(what.lastIndexOf(" in ") + 4)).matcher(toBuy).find(), what + ": " + number + "\n" + toBuy);
        });
        BigDecimal acid = needed.get("concentrated hydrochloric acid in mL");
        assertTrue(acid.compareTo(new BigDecimal(200)) > 0 && acid.compareTo(new BigDecimal(1100)) < 0, acid.toString());
        assertTrue(toBuy.matches(".*concentrated hydrochloric acid \\(37 % w/w\\) " + acid.toPlainString() + "0* mL 1.1 L 0 × 2.5 L 0.00 .*"), toBuy);
    }

    /** Groups × (runs × portions × amount + rinsing and filling) × (1 + spare), then two figures upward, or the flasks that hold it, as the technician's sheet of that section says. */
    private int totals(JsonNode procedure) throws IOException {
        String name = procedure.get("procedure").asText();
        String source = Files.readString(Path.of("procedures", name + ".md"));
        String sheet = text(out.resolve(procedure.get("section").asText()).resolve(name + "-prep.pdf"));
        JsonNode setting = procedure.get("setting");
        int runs = setting.get("runs").asInt();
        BigDecimal factor = decimal(setting.get("groups")).multiply(BigDecimal.ONE.add(decimal(setting.get("spare"))));
        int totals = 0;
        for (Map.Entry<String, JsonNode> handed : procedure.at("/prep/handed out").properties()) {
            for (JsonNode row : handed.getValue()) {
                String unit = row.at("/each/unit").asText();
                if (!UNITS.containsKey(unit)) {
                    continue;
                }
                BigDecimal each = BigDecimal.ZERO;
                for (JsonNode use : row.get("uses")) {
                    BigDecimal amount = amount(procedure.at("/quantities").get(use.asText()).get("figures"), unit);
                    int times = portions(source, use.asText()) * runs;
                    each = each.add(amount.multiply(BigDecimal.valueOf(times))).add(rinsingAndFilling(source, use.asText(), amount, times));
                }
                assertEquals(0, decimal(row.at("/each/value")).subtract(each).abs().compareTo(new BigDecimal("1e-9")) > 0 ? 1 : 0, name + " " + handed.getKey() + ": " + each);
                BigDecimal total = each.multiply(factor);
                boolean made = procedure.at("/recipes").has(handed.getKey());
                BigDecimal ready = made ? flasks(total.multiply(UNITS.get(unit)).movePointRight(3)).movePointLeft(3) : total.round(new MathContext(2, RoundingMode.CEILING))
                        .multiply(UNITS.get(unit));
                BigDecimal said = decimal(row.at("/ready/value")).multiply(UNITS.get(row.at("/ready/unit").asText()));
                assertEquals(0, ready.subtract(said).abs().compareTo(new BigDecimal("1e-9")) > 0 ? 1 : 0, name + " " + handed.getKey() + ": " + ready + ", " + said);
                String shown = row.at("/each/shown").asText() + " " + row.at("/total/shown").asText() + " " + row.at("/ready/shown").asText();
                assertTrue(sheet.replace("up to ", "").contains(shown), shown + "\n" + sheet);
                totals++;
            }
        }
        return totals;
    }

    /**
     * Of a burette or pipette that each group has, in millilitres; common practice, no source: twice a fifth of its size to rinse it; a burette holds a tenth more than its
     * size above zero and below its last mark, gives as many titres as go into its size, and is filled up again for the next. What is left after the last titre is lost.
     */
    private static BigDecimal rinsingAndFilling(String source, String block, BigDecimal titre, int titres) {
        String fields = block(source, block);
        Matcher with = Pattern.compile("(?m)^measure with: (.+)").matcher(fields);
        Matcher item = Pattern.compile("(?m)^" + (with.find() ? Pattern.quote(with.group(1)) : "-") + ": +(.*)").matcher(source);
        String words = item.find() ? item.group(1) : "";
        if (!words.contains("burette") && !words.contains("pipette")) {
            return BigDecimal.ZERO;
        }
        assertTrue(words.endsWith("one per group"), words);
        Matcher size = Pattern.compile("([0-9]+) mL").matcher(words);
        assertTrue(size.find(), words);
        BigDecimal holds = new BigDecimal(size.group(1));
        BigDecimal rinses = holds.multiply(new BigDecimal("0.4"));
        if (words.contains("pipette")) {
            return rinses;
        }
        BigDecimal level = holds;
        for (int i = 0; i < titres; i++) {
            level = (level.compareTo(titre) < 0 ? holds : level).subtract(titre);
        }
        return rinses.add(level).add(holds.multiply(new BigDecimal("0.1")));
    }

    private static String block(String source, String name) {
        Matcher at = Pattern.compile("```\\w+ " + Pattern.quote(name) + "\\n(?:.*\\n)*?```").matcher(source);
        return at.find() ? at.group() : "";
    }

    private static BigDecimal amount(JsonNode figures, String unit) {
        List<JsonNode> found = new ArrayList<>();
        for (String property : List.of("length", "volume", "mass")) {
            if (figures.has(property) && UNITS.containsKey(figures.get(property).get("unit").asText()) && sameKind(figures.get(property).get("unit").asText(), unit)) {
                found.add(figures.get(property));
            }
        }
        return decimal(found.get(0).get("value")).multiply(UNITS.get(found.get(0).get("unit").asText())).divide(UNITS.get(unit), MathContext.DECIMAL64);
    }

    private static boolean sameKind(String one, String other) {
        return one.endsWith("L") == other.endsWith("L") && one.endsWith("g") == other.endsWith("g");
    }

    private static int portions(String source, String block) {
        Matcher portions = Pattern.compile("(?m)^portions: (\\d+)").matcher(block(source, block));
        return portions.find() ? Integer.parseInt(portions.group(1)) : 1;
    }

    /** @param millilitres to hold; beyond 2 L flasks of 2 L and one for the rest */
    private static BigDecimal flasks(BigDecimal millilitres) {
        BigDecimal made = BigDecimal.ZERO;
        BigDecimal rest = millilitres;
        while (rest.compareTo(new BigDecimal("2000.000001")) > 0) {
            made = made.add(new BigDecimal(2000));
            rest = rest.subtract(new BigDecimal(2000));
        }
        BigDecimal left = rest.subtract(new BigDecimal("0.000001"));
        return made.add(BigDecimal.valueOf(FLASKS.stream().filter(f -> BigDecimal.valueOf(f).compareTo(left) >= 0).findFirst().orElseThrow()));
    }

    private static BigDecimal decimal(JsonNode number) {
        return new BigDecimal(number.asText());
    }
}
