package tarewright.procedure.declare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.procedure.syntax.Reader;
import tarewright.procedure.syntax.SourceFile;
import tarewright.quantity.Strength;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** A bottle on the shelf is read as its label says; what is wrong with it is told where it stands. */
class StockReaderTest {
    private static final ReferenceTables TABLES = Tables.load();

    private static SourceFile file(String text) {
        return Reader.read(new SourceText("shelf.md", text)).value();
    }

    private static Found<List<StockBlock>> read(String... fields) {
        return StockReader.read(file("```stock bottle\n" + String.join("\n", fields) + "\n```\n"), TABLES);
    }

    @Test
    void concentratedAcidIsReadAsTheLabelSays() {
        Found<List<StockBlock>> found = read("solute: HCl", "strength: 37 % w/w", "density: 1.18 g/mL", "pack: 2.5 L", "on hand: 1.1 L",
                "price: 31.40 per pack", "keeps: two years");
        assertEquals(List.of(), found.findings());
        StockBlock stock = found.value().get(0);
        assertEquals("bottle", stock.name());
        assertTrue(stock.dissolved());
        assertEquals("HCl", stock.matter().orElseThrow().value().formula().plain());
        assertTrue(stock.strength().orElseThrow().value() instanceof Strength.MassFraction);
        assertEquals(0.37, stock.strength().orElseThrow().value().typed().si(), 1e-12);
        assertEquals(1180, stock.density().orElseThrow().value().si(), 1e-9);
        assertEquals(2.5e-3, stock.pack().orElseThrow().value().si(), 1e-12);
        assertEquals(1.1e-3, stock.onHand().orElseThrow().value().si(), 1e-12);
        assertEquals(new StockBlock.Price(new BigDecimal("31.40"), ""), stock.price().orElseThrow().value());
        assertEquals("two years", stock.keeps().orElseThrow());
    }

    @Test
    void jarOfPelletsIsAPureSubstance() {
        Found<List<StockBlock>> found = read("substance: sodium hydroxide", "purity: 97 %", "pack: 500 g", "on hand: 0 g");
        assertEquals(List.of(), found.findings());
        StockBlock stock = found.value().get(0);
        assertEquals("NaOH", stock.matter().orElseThrow().value().formula().plain());
        assertEquals(0.97, stock.purity().orElseThrow().value().si(), 1e-12);
        assertEquals(0, stock.onHand().orElseThrow().value().si());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"31.40 per pack | 31.40 | ''", "31,40 EUR per pack | 31.40 | EUR", "€ 9 per pack | 9 | €", "€9.5 per pack | 9.5 | €"})
    void priceIsReadWithItsCurrency(String price, String amount, String currency) {
        Found<List<StockBlock>> found = read("substance: NaOH", "pack: 1 kg", "price: " + price);
        assertEquals(List.of(), found.findings());
        assertEquals(new StockBlock.Price(new BigDecimal(amount), currency), found.value().get(0).price().orElseThrow().value());
    }

    /** The finding and the text that it points at. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "substance: NaOH; pakc: 500 g | unknown-field | pakc",
        "pack: 500 g | field-missing | stock",
        "solute: HCl | field-missing | stock",
        "solute: HCl; strength: 37 % | ambiguous-percent | 37 %",
        "solute: HCl; strength: 0 mol/L | not-positive | 0 mol/L",
        "solute: HCl; strength: -2 mol/L | not-positive | -2 mol/L",
        "solute: HCl; strength: 1 to 2 mol/L | range-here | 1 to 2 mol/L",
        "solute: HCl; substance: HCl; strength: 1 mol/L | amount-fixed-twice | substance",
        "substance: NaOH; strength: 1 mol/L | amount-fixed-twice | strength",
        "solute: NaOH; strength: 1 mol/L; purity: 97 % | amount-fixed-twice | purity",
        "substance: NaOH; purity: 103 % | percent-over-100 | 103 %",
        "substance: NaOH; density: 2 g | wrong-dimension | 2 g",
        "substance: NaOH; pack: 5 s | bad-shape | 5 s",
        "substance: NaOH; pack: 0 g | not-above-zero | 0 g",
        "substance: NaOH; pack: 500 g; on hand: 1 L | bad-shape | 1 L",
        "substance: NaOH; pack: 500 g; on hand: -1 g | bad-shape | -1 g",
        "substance: NaOH; price: 3 per pack | field-missing | stock",
        "substance: NaOH; pack: 500 g; price: cheap | bad-shape | cheap",
        "substance: NaOH; pack: 500 g; price: 3 | bad-shape | 3",
        "substance: NaOH; pack: 500 g; price: € 3 EUR per pack | bad-shape | € 3 EUR per pack",
        "substance: natrium hydroxid | unknown-substance | natrium hydroxid",
        "substance: naoh | unknown-element | naoh"})
    void whatIsWrongIsToldAtItsPlace(String fields, String id, String at) {
        List<Finding> findings = read(fields.split("; ")).findings();
        assertEquals(List.of(id + " at " + at), findings.stream().map(f -> f.id() + " at " + f.at().text()).toList());
    }

    /** A bottle may stand beside the procedure's own blocks, and has its name to itself. */
    @Test
    void stockStandsInAProcedure() {
        SourceFile file = file("---\ntitle: Acid\n---\n\n```stock strong acid\nsolute: HCl\nstrength: 37 % w/w\n```\n");
        Found<Procedure> found = DeclarationReader.read(file, TABLES);
        assertEquals(List.of(), found.findings());
        assertEquals(List.of("strong acid"), found.value().stocks().stream().map(StockBlock::name).toList());
        assertTrue(found.value().stock("strong acid").isPresent());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", ": :", "pack", "price: per pack", "price: 99999999999999999999 per pack", "strength: 1e400 mol/L", "on hand: ;;;"})
    void anyTextIsReadWithoutThrowing(String fields) {
        assertEquals(1, read(fields).value().size());
    }
}
