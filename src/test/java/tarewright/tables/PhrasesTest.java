package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tarewright.chemistry.Constants;

/** Every phrase that a document takes from a data file has Spanish words, and no translation stands there for nothing. */
class PhrasesTest {
    private static final Path PICTOGRAMS = Path.of("src/main/resources/tarewright/pictograms");
    private static final Pattern TITLE = Pattern.compile("<title>(.*?)</title>");
    /** Said by the program itself as the source of a value; each is looked up in the class that says it. */
    private static final Set<String> SAID_IN_CODE = Set.of("water at 20 °C, used for dilute solutions", "water, used for dilute solutions",
            "Wagner and Pruß, J. Phys. Chem. Ref. Data 31 (2002) 387, eq. (2.5), the IAPWS saturation equation SR1-86(1992)");

    private static Stream<String> column(String file, String column) {
        return Rows.of(file).stream().map(r -> r.text(column)).filter(t -> !t.isEmpty());
    }

    /** The publication alone is printed: what stands behind a semicolon tells in which file it was read. */
    private static Stream<String> publications(String file, String column) {
        return column(file, column).map(s -> s.split("; ", 2)[0]);
    }

    /** Behind a value that is looked up at a temperature or a strength the whole source is printed. */
    private static Stream<String> inFull(String file) {
        return column(file, "source").flatMap(s -> Stream.of(s.split("; ")));
    }

    private static Stream<String> titles() throws IOException {
        try (Stream<Path> files = Files.list(PICTOGRAMS)) {
            return files.sorted().map(PhrasesTest::title).toList().stream();
        }
    }

    private static String title(Path drawing) {
        try {
            Matcher matcher = TITLE.matcher(Files.readString(drawing));
            return matcher.find() ? matcher.group(1) : drawing + " has no title";
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Set<String> printed() throws IOException {
        Set<String> all = new TreeSet<>(SAID_IN_CODE);
        String rules = "hazards/eu-clp/";
        Stream.of(column("hazards/waste.csv", "text"), column("hazards/neutralising.csv", "text"), column("hazards/protection.csv", "text"),
                column("hazards/reactive-pairs.csv", "hazard"), column("hazards/reactive-pairs.csv", "products"), column("hazards/reactive-pairs.csv", "advice"),
                column("hazards/rule-sets.csv", "title"), column("hazards/rule-sets.csv", "edition"), column("hazards/rule-sets.csv", "note"),
                column(rules + "small-packs.csv", "clause"), column(rules + "substances.csv", "from_memory"),
                publications("atomic-weights.csv", "source"), inFull("solution-density.csv"), publications("substances.csv", "density_source"),
                inFull("gas-virial.csv"), inFull("gas-solubility.csv"), publications("acid-base.csv", "source"),
                publications("thermo.csv", "source"), inFull("solubility-salts.csv"), publications("practice.csv", "source"),
                publications("commercial-strengths.csv", "source"),
                Stream.of(Constants.GAS_CONSTANT, Constants.MOLAR_VOLUME_101_325_KPA, Constants.WATER_HEAT_CAPACITY).map(c -> c.provenance().source().split("; ", 2)[0]),
                titles()).flatMap(s -> s).forEach(all::add);
        return all;
    }

    @Test
    void everyPhraseThatIsPrintedHasSpanishWords() throws IOException {
        Translations spanish = Translations.into("es");
        assertEquals(List.of(), printed().stream().filter(p -> spanish.phrase(p).isEmpty()).toList());
    }

    @Test
    void noTranslationIsOfAPhraseThatIsGone() throws IOException {
        Set<String> gone = new TreeSet<>(Translations.into("es").phrases().keySet());
        gone.removeAll(printed());
        assertEquals(Set.of(), gone);
    }

    /** A translation that was left in English would pass for one: only codes, formulas, names of works and words that are the same in both stay. */
    @Test
    void aTranslationDiffersFromItsEnglishUnlessItHasNoWords() {
        Pattern words = Pattern.compile("[a-z]{4,}");
        Set<String> same = Set.of("Burkholder et al. 2019 (L)", "Sander et al. 2011 (L)");
        List<String> left = Translations.into("es").phrases().entrySet().stream().filter(e -> e.getKey().equals(e.getValue().text()))
                .map(java.util.Map.Entry::getKey).filter(k -> words.matcher(k).find() && !same.contains(k)).toList();
        assertEquals(List.of(), left);
        assertEquals("gas tóxico", Translations.into("es-AR").phrase("toxic gas").orElseThrow().text());
        assertEquals(List.of(), Arrays.asList(Translations.into("en").phrases().keySet().toArray()));
    }
}
