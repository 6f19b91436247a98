package tarewright.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.library.Library;
import tarewright.print.PdfPrinter;
import tarewright.print.PlainText;
import tarewright.print.Printed;
import tarewright.print.Templates;
import tarewright.procedure.declare.StockBlock;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.HazardTables.CountryRules;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** What a term orders: the sum of its prep sheets less what is on hand, by pack. Rounding up to packs: common practice, no source. */
class OrderListTest {
    private static final CountryRules COUNTRY = HazardTables.of("");
    private static final String ACID = """
            ---
            title: Acid from the bottle
            ---
            ```apparatus
            flask: conical flask; two per group
            paper: filter paper; one per group; used up
            ```

            ```reaction dissolving
            Zn(s) + HCl(aq) -> ZnCl2(aq) + H2(g)
            ```

            ```stock concentrated acid
            solute: HCl
            strength: 37 % w/w
            pack: 100 mL
            on hand: 60 mL
            price: 9.50 EUR per pack
            ```

            ```stock zinc granules
            substance: zinc
            pack: 250 g
            on hand: 1 kg
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
            ```

            1. Put {metal} into {acid}.

            ```waste
            of: dissolving
            into: dilute acid waste
            ```
            """;

    private static Resolved acid(int groups) {
        Overrides overrides = Library.setting(groups, "20 °C", "101.3 kPa");
        return Resolver.resolve("acid", Reader.read(new SourceText("acid.md", ACID)).value(), overrides, Tables.load()).value();
    }

    private static String text(Sheet sheet) {
        return PlainText.of(sheet).replace('\u202F', ' ');
    }

    /**
     * By hand: 8 groups take 220 mL, made as 250 mL with 41.6 mL (cylinder: 41.5 mL) of concentrated acid; 12 take 330 mL, made as 500 mL with 83.3 mL (cylinder: 83 mL).
     * Together 41.5 + 41.5 + 83 = 166.0 mL; less 60 mL are 106.0 mL: two packs of 100 mL for 19.00. Zinc: 4.4 + 4.4 + 6.6 g, and a kilogram is there. Flasks: 24 for the largest;
     * papers 9 + 9 + 14.
     */
    @Test
    @DisplayName("three sections: what is needed, what is on hand, how many packs, what they cost; washed glass once, what is used up for each")
    void threeSections() {
        List<Need> needs = List.of(new Need("9a", acid(8), List.of(), COUNTRY.rules()), new Need("9b", acid(8), List.of(), COUNTRY.rules()), new Need("9c", acid(12), List.of(), COUNTRY.rules()));
        String sheet = text(Documents.order("Autumn", needs, "abcdefg", ""));
        for (String line : List.of("| concentrated acid (37 % w/w) | 166.0 mL | 60 mL | «2 ×» | 100 mL | 19.00 EUR |",
                "| zinc granules | 15.4 g | 1 kg | «0 ×» | 250 g |  |", "In all, where a price is known: 19.00 EUR.",
                "| concentrated acid (37 % w/w) | Acid from the bottle | 166.0 mL |", "| 9c | Acid from the bottle | hydrochloric acid (2.0 mol/L) | 500 mL |",
                "| conical flask | 24 |", "| filter paper (used up) | 32 |")) {
            assertTrue(sheet.contains(line), line + "\n" + sheet);
        }
    }

    @Test
    @DisplayName("a bottle of the term goes before that of the procedure: with more on hand nothing is bought")
    void theTermsShelfCounts() {
        List<StockBlock> shelf = Resolver.resolve("shelf", Reader.read(new SourceText("shelf.md", ACID.replace("on hand: 60 mL", "on hand: 2.5 L"))).value(), Overrides.NONE,
                Tables.load()).value().procedure().stocks();
        String sheet = text(Documents.order("Autumn", List.of(new Need("9a", acid(8), shelf, COUNTRY.rules())), "abcdefg", ""));
        assertTrue(sheet.contains("| concentrated acid (37 % w/w) | 41.5 mL | 2.5 L | «0 ×» | 100 mL | 0.00 EUR |"), sheet);
    }

    private static final List<Need> LIBRARY = library();

    private static List<Need> library() {
        List<Need> needs = new ArrayList<>();
        for (int section = 0; section < 3; section++) {
            int groups = 8 + 3 * section;
            String name = "9" + "abc".charAt(section);
            // The sheets are read by their English words below.
            Library.files().stream().map(f -> Library.resolve(f, Library.setting(groups, "20 °C", "101.3 kPa")).value()).filter(p -> p.setting().language().startsWith("en"))
                    .forEach(p -> needs.add(new Need(name, p, List.of(), COUNTRY.rules())));
        }
        return needs;
    }

    /** What is taken, in bold, in either table of a prep sheet: name, number, unit. */
    private static final Pattern TAKEN = Pattern.compile("\\| (.+?) \\| (?:[^«]+ \\| )?«([0-9.]+) ([^»]+)» \\| .*");
    private static final Pattern NEEDED = Pattern.compile("\\| (.+?) \\| ([0-9.]+) (\\S+)(?: \\([0-9.]+ m?L\\))? \\| .*");
    private static final Map<String, Double> UNITS = Map.of("g", 1.0, "mg", 1e-3, "kg", 1e3, "mL", 1.0, "L", 1e3, "mm", 1.0, "drops", 1.0);

    private static void add(String table, Pattern row, Map<String, Double> sums, String unlessMade) {
        // Water comes from the tap: it is got ready, but not ordered.
        table.lines().filter(l -> !l.startsWith("| water |")).map(row::matcher).filter(Matcher::matches).filter(m -> !unlessMade.contains(" of " + m.group(1).split(": ")[0] + "\n"))
                .forEach(m -> sums.merge(m.group(3).replaceFirst("^[mk]?g$", "g").replaceFirst("^m?L$", "mL"), Double.parseDouble(m.group(2)) * UNITS.get(m.group(3)), Double::sum));
    }

    /** The prep sheets are read as text: what comes off the shelf for recipes, and what is got ready without one. Added up by mass, volume, length, drops. */
    @Test
    @DisplayName("over three sections of the whole library the order is the sum of the prep sheets")
    void isTheSumOfThePrepSheets() {
        Map<String, Double> sums = new TreeMap<>();
        Documents documents = new Documents(COUNTRY);
        for (Need need : LIBRARY) {
            String prep = text(documents.sheets(need.procedure(), EnumSet.of(Sheet.Kind.PREP), List.of(), "abcdefg", "").get(0));
            String made = prep.lines().filter(l -> l.startsWith("### Make ")).map(l -> l + "\n").reduce("", String::concat);
            String week = prep.substring(0, prep.indexOf("## What you handle"));
            int shelf = week.indexOf("What comes off the shelf");
            // What is handed out and also made into a solution stands in both tables, in the second with all that is taken of it.
            String both = shelf < 0 ? "" : week.substring(shelf).lines().map(l -> " of " + l.split(" \\| ")[0].replaceFirst("^\\| ", "").replaceFirst(" \\([^()]*[A-Z].*$", "") + "\n")
                    .filter(l -> !l.isBlank()).reduce("", String::concat);
            add(shelf < 0 ? week : week.substring(0, shelf), TAKEN, sums, made + both);
            add(shelf < 0 ? "" : week.substring(shelf), TAKEN, sums, "");
        }
        String order = text(Documents.order("Autumn", LIBRARY, "abcdefg", ""));
        Map<String, Double> needed = new TreeMap<>();
        add(order.substring(order.indexOf("To have on the shelf"), order.indexOf("Who takes how much")), NEEDED, needed, "");
        assertTrue(sums.keySet().containsAll(List.of("g", "mL", "drops")), sums.toString());
        assertEquals(sums.keySet(), needed.keySet());
        sums.forEach((unit, sum) -> assertEquals(sum, needed.get(unit), 1e-3 * sum, unit));
    }

    @Test
    @DisplayName("the order list and a prep sheet with recipes are tagged PDF files without a failed check, on both papers")
    void passesThePdfRules() throws Exception {
        Printed order = new OrderList("autumn", LIBRARY, "abcdefg", "").print(new PdfPrinter(Templates.packed())).printed();
        assertEquals(List.of(), order.remarks());
        Files.createDirectories(Path.of("target/golden"));
        Files.write(Path.of("target/golden/autumn-order.pdf"), order.pdf());
        Sheet prep = new Documents(COUNTRY).sheets(acid(8), EnumSet.of(Sheet.Kind.PREP), List.of(), "abcdefg", "").get(0);
        for (byte[] pdf : List.of(order.pdf(), new PdfPrinter(Templates.packed()).print(prep).pdf())) {
            for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
                assertEquals(List.of(), tarewright.print.VeraPdf.check(pdf, flavour).failures());
            }
        }
        try (var document = Loader.loadPDF(order.pdf())) {
            assertEquals(order.pages(), document.getNumberOfPages());
        }
    }
}
