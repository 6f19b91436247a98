package tarewright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.document.Documents;
import tarewright.document.Sheet;
import tarewright.library.Library;
import tarewright.procedure.prepare.Need;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Overrides;
import tarewright.tables.HazardTables;
import tarewright.tables.Tables;
import tarewright.tables.Translations;
import tarewright.text.SourceText;

/**
 * In a Spanish document every word is the author's or comes from a Spanish file: what the page shows and what it tells a screen reader. Each procedure of the
 * library is printed as a Spanish one, whatever language its own words are in.
 */
class SpanishSheetsTest {
    private static final WebPrinter PRINTER = new WebPrinter(Templates.packed());
    private static final Documents DOCUMENTS = new Documents(HazardTables.of(""));
    private static final Path DATA = Path.of("src/main/resources/tarewright");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Pattern SPOKEN = Pattern.compile("(?:aria-label|alt|title|placeholder)=\"([^\"]*)\"");
    /** Symbols of elements one after another. */
    private static final Pattern SYMBOLS = Pattern.compile("([A-Z][a-z]?)+");
    /** Common English words that stand for no Spanish one and no unit. */
    private static final List<String> ENGLISH = List.of("the", "and", "with", "from", "of", "for", "not", "is", "are", "at", "by", "water", "acid", "each", "group",
            "wear", "keep", "never", "waste", "mass", "volume", "unknown", "table", "recalled", "solution", "answer");
    /** Symbols of units, codes of statements and standards, and names of what is cited. */
    private static final Set<String> SAME_EVERYWHERE = Set.of("mol", "mmol", "ml", "kg", "mg", "kpa", "pa", "cm", "mm", "min", "vol", "kj", "hz", "ghs", "euh", "clp", "ue", "ph",
            "ppm", "abcdefg", "aq", "δfh");
    /** Between such marks stand titles of cited works, in their own language, and what the author named. */
    private static final String QUOTED = "«[^»]*»";

    static Stream<Path> files() {
        return Library.files().stream();
    }

    private static Resolved inSpanish(String text) {
        String spanish = text.contains("\nlanguage: es\n") ? text : text.replaceFirst("\n---\n", "\nlanguage: es\n---\n");
        SourceText source = new SourceText("hoja.md", spanish);
        Resolved resolved = Resolver.resolve("hoja", Reader.read(source).value(), Overrides.NONE.withDate("2041-02-04"), Tables.load()).value();
        assertEquals("es", resolved.setting().language());
        return resolved;
    }

    private static Set<String> words(String text) {
        Set<String> words = new TreeSet<>();
        Matcher matcher = WORD.matcher(text.replace("\u200B", "").replace("\u00AD", ""));
        while (matcher.find()) {
            if (!SYMBOLS.matcher(matcher.group()).matches()) {
                words.add(matcher.group().toLowerCase(Locale.ROOT));
            }
        }
        return words;
    }

    /** What is read and what is told to a screen reader: no style sheet, no tag, no name of a class. */
    private static String text(Sheet sheet) {
        String page = new String(PRINTER.print(sheet), StandardCharsets.UTF_8);
        String body = page.substring(page.indexOf("<body")).replaceAll("(?s)<style.*?</style>", " ");
        StringBuilder all = new StringBuilder();
        Matcher spoken = SPOKEN.matcher(body);
        while (spoken.find()) {
            all.append(spoken.group(1)).append('\n');
        }
        return (all + body.replaceAll(QUOTED, " ").replaceAll("</?(sub|sup|i|b|wbr)[^>]*>", "").replaceAll("<[^>]*>", " ")).replaceAll("&[a-z#0-9]+;", " ");
    }

    private static Set<String> spanish() throws IOException {
        Set<String> all = new TreeSet<>(SAME_EVERYWHERE);
        for (String file : List.of("words/documents_es.properties", "words/quantities_es.properties")) {
            Files.readAllLines(DATA.resolve(file)).stream().filter(l -> !l.startsWith("#")).map(l -> l.substring(l.indexOf('=') + 1).replaceAll("\\{[^}]*}", " "))
                    .forEach(l -> all.addAll(words(l)));
        }
        Translations translations = Translations.into("es");
        Stream.of(translations.names(), translations.phrases()).flatMap(m -> m.values().stream()).forEach(t -> all.addAll(words(t.text().replaceAll(QUOTED, " "))));
        var english = HazardTables.of("").rules().statements();
        HazardTables.in(HazardTables.of(""), "es").rules().statements().all().stream().filter(t -> !t.text().equals(english.of(t.code()).text()))
                .forEach(t -> all.addAll(words(t.text())));
        HazardTables.in(HazardTables.of(""), "es").rules().responses().forEach(r -> all.addAll(words(r.fill())));
        all.add("febrero");
        return all;
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyWordIsTheAuthorsOrSpanish(Path file) throws IOException {
        String source = Files.readString(file);
        Resolved procedure = inSpanish(source);
        Set<String> known = spanish();
        known.addAll(words(source));
        Set<String> foreign = new TreeSet<>();
        List<Sheet> sheets = new ArrayList<>(DOCUMENTS.sheets(procedure, EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS,
                Sheet.Kind.MISSED, Sheet.Kind.MISSED_KEY), List.of(), "abcdefg", ""));
        sheets.add(Documents.order("hoja", List.of(new Need("", procedure, List.of(), HazardTables.in(HazardTables.of(""), "es").rules())), "abcdefg", ""));
        int looked = 0;
        for (Sheet sheet : sheets) {
            for (String word : words(text(sheet))) {
                looked++;
                if (!known.contains(word)) {
                    foreign.add(sheet.kind().word() + ": " + word);
                }
            }
        }
        assertEquals(Set.of(), foreign);
        assertTrue(looked > 400, "looked at " + looked);
    }

    /** What the shipped Spanish procedure prints has none of the commonest English words, whoever wrote them. */
    @Test
    void theSpanishProcedureHasNoEnglishWord() throws IOException {
        Resolved procedure = inSpanish(Files.readString(Path.of("procedures/vinagre-gota-a-gota.md")));
        List<String> found = new ArrayList<>();
        for (Sheet sheet : DOCUMENTS.sheets(procedure, EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.SAFETY, Sheet.Kind.PREP, Sheet.Kind.LABELS), List.of(), "abcdefg", "")) {
            Set<String> words = words(text(sheet));
            ENGLISH.stream().filter(words::contains).forEach(w -> found.add(sheet.kind().word() + ": " + w));
            assertFalse(Pattern.compile("[0-9]\\.[0-9]+ (mL|mol|g|mmol)").matcher(text(sheet)).find(), "a decimal point in " + sheet.kind());
        }
        assertEquals(List.of(), found);
    }

    /** The scan can fail: an English sheet is full of what it looks for. */
    @Test
    void theScanFindsEnglish() throws IOException {
        String text = Files.readString(Path.of("procedures/vinagre-gota-a-gota.md")).replace("language: es", "language: en");
        Resolved english = Resolver.resolve("sheet", Reader.read(new SourceText("sheet.md", text.replace("ácido acético", "acetic acid").replace("fenolftaleína", "phenolphthalein")
                .replace("hidróxido de sodio\nstrength", "sodium hydroxide\nstrength"))).value(), Overrides.NONE, Tables.load()).value();
        Set<String> words = words(text(DOCUMENTS.sheets(english, EnumSet.of(Sheet.Kind.SAFETY), List.of(), "abcdefg", "").get(0)));
        assertTrue(words.contains("the") && words.contains("sodium"), words.toString());
        assertFalse(spanish().contains("sodium"));
    }
}
