package tarewright.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.chemistry.Formula;
import tarewright.chemistry.State;
import tarewright.chemistry.Substance;
import tarewright.finding.Finding;
import tarewright.finding.Found;
import tarewright.finding.Severity;

class OwnTableTest {
    private static final ReferenceTables TABLES = Tables.load();

    private static Found<ReferenceTables> read(String csv) {
        return TABLES.withOwn(csv, "substances.csv");
    }

    private static List<String> ids(Found<ReferenceTables> found) {
        return found.findings().stream().map(Finding::id).toList();
    }

    @Test
    void aNewSubstanceIsAdded() {
        Found<ReferenceTables> found = read("name,formula,state,density,synonyms,source\n"
                + "europium(III) chloride hexahydrate,EuCl3·6H2O,s,4.89,europium salt | EuCl,supplier's sheet\n");
        assertEquals(List.of(), found.findings());
        Substance europium = found.value().substances().named("Europium salt").orElseThrow();
        assertEquals("EuCl3.6H2O", europium.formula().orElseThrow().plain());
        assertEquals(State.SOLID, europium.state());
        assertEquals(4890, europium.density().orElseThrow().kilogramsPerCubicMetre(), 1e-9);
        assertEquals("supplier's sheet", europium.provenance().source());
        assertEquals(TABLES.substances().all().size() + 1, found.value().substances().all().size());
    }

    @Test
    void aKnownSubstanceKeepsWhatTheRowLeavesEmpty() {
        Found<ReferenceTables> found = read("name,density,synonyms\ntoluene,0.870,thinner\n");
        assertEquals(List.of("substance-overridden"), ids(found));
        assertEquals(Severity.NOTE, found.findings().get(0).severity());
        Substance toluene = found.value().substances().named("thinner").orElseThrow();
        assertEquals(TABLES.substances().named("toluene").orElseThrow().formula(), toluene.formula());
        assertEquals(870, toluene.density().orElseThrow().kilogramsPerCubicMetre(), 1e-9);
        assertEquals("substances.csv", toluene.provenance().source());
        assertEquals(Optional.of(toluene), found.value().substances().named("methylbenzene"));
        assertEquals(List.of(toluene), found.value().substances().of(toluene.formula().orElseThrow()));
    }

    @Test
    void anotherFormulaUnderAKnownNameIsAWarning() {
        Finding finding = read("name,formula\nborax,Na2B4O7.5H2O\n").findings().get(0);
        assertEquals("substance-overridden", finding.id());
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals(Optional.of("Na2B4O7.10H2O"), finding.fields().get("ours"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '#', value = {
        "name,formula,state\\nfoo,NaXx,s # 2:7 # unknown-element # Xx",
        "name,formula,state\\nfoo,Fe3+,s # 2:7 # ambiguous-charge # 3+",
        "name,formula,state\\nfoo,NaCl, solid # 2:11 # not-a-substance-state # solid",
        "name,formula\\nfoo,NaCl # 2:1 # substance-state-missing # foo",
        "name,state,density\\nfoo,s,\"1,05\" # 2:8 # not-a-density # 1,05",
        "name,state,density\\nfoo,s,1050 # 2:7 # not-a-density # 1050",
        "name,state\\n,s # 2:1 # substance-name-missing # ,s",
        "name,state\\nfoo,s\\nFoo,l # 3:1 # substance-given-twice # Foo",
        "name,density\\nsoda ash,2.5\\nsodium carbonate,2.5 # 3:1 # substance-given-twice # sodium carbonate",
        "name,state,synonyms\\nfoo,s,acetone # 2:7 # synonym-moved # acetone",
        "name,state,synonyms\\nfoo,s,propanone # 2:7 # synonym-is-another-name # propanone",
        "name,formular\\nacetone,C3H6O # 1:6 # unknown-column # formular",
        "name,state,name\\nfoo,s,bar # 1:12 # column-given-twice # name",
        "formula,state\\nNaCl,s # 1:1 # name-column-missing # formula",
        "name,state\\nfoo,s,3 # 2:7 # cells-left-over # 3",
        "name,state\\n\"foo,s\\nbar,s # 2:1 # own-table-unreadable # \"foo,s"})
    void aMistakeIsFoundWhereItStands(String csv, String place, String id, String piece) {
        Found<ReferenceTables> found = read(csv.replace("\\n", "\n"));
        Finding finding = found.findings().stream().filter(each -> each.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError(ids(found).toString()));
        assertEquals("substances.csv:" + place, finding.at().toString());
        assertEquals(piece, finding.at().text());
    }

    @Test
    void aBadRowLeavesTheOthersAlone() {
        Found<ReferenceTables> found = read("name,formula,state\nfoo,Na(Cl,s\n\n  \nbar,NaCl,s\r\nbaz,KCl,s");
        assertEquals(1, found.findings().size());
        assertTrue(found.value().substances().named("foo").isEmpty());
        assertTrue(found.value().substances().named("bar").isPresent());
        assertTrue(found.value().substances().named("baz").isPresent());
    }

    @Test
    void aDensityInKilogramsPerCubicMetreIsSeen() {
        Finding finding = read("name,state,density\nfoo,l,1050\n").findings().get(0);
        assertEquals(Optional.of("1.05"), finding.fields().get("gramsPerMillilitre"));
    }

    /** What office programs write: a byte order mark, CRLF, semicolons in countries with a decimal comma. */
    @Test
    void filesOfOfficeProgramsAreRead() {
        Found<ReferenceTables> found = read("\uFEFFName;Formula;State;Density\r\nfoo;\"NaCl\";s;2.1\r\n");
        assertEquals(List.of(), found.findings());
        Substance foo = found.value().substances().named("foo").orElseThrow();
        assertEquals(2100, foo.density().orElseThrow().kilogramsPerCubicMetre(), 1e-9);
    }

    @Test
    void aTakenSynonymIsNoLongerTheOthers() {
        ReferenceTables found = read("name,state,synonyms\nfoo,s,acetone\n").value();
        assertEquals("foo", found.substances().named("acetone").orElseThrow().name());
        assertFalse(found.substances().named("propanone").orElseThrow().synonyms().contains("acetone"));
    }

    @Test
    void aNewIsomerMakesAtomsAloneAmbiguous() {
        Formula water = Formula.parse("OH2").value().orElseThrow();
        assertTrue(TABLES.enthalpies().of(water, State.LIQUID).isPresent());
        Found<ReferenceTables> found = read("name,formula,state\nwater the other way round,HOH,l\n");
        assertEquals(List.of(), found.findings());
        assertTrue(found.value().enthalpies().of(water, State.LIQUID).isEmpty());
    }

    @Test
    void sizeIsBounded() {
        Found<ReferenceTables> large = read("name,state\n" + "x".repeat(OwnRows.LONGEST));
        assertEquals(List.of("own-table-too-large"), ids(large));
        StringBuilder rows = new StringBuilder("name,state\n");
        for (int i = 0; i < OwnRows.MOST + 10; i++) {
            rows.append("foo ").append(i).append(",s\n");
        }
        Found<ReferenceTables> longer = read(rows.toString());
        assertEquals(List.of("own-table-too-long"), ids(longer));
        assertEquals(OwnRows.MOST + 2, longer.findings().get(0).at().line());
        assertEquals(TABLES.substances().all().size() + OwnRows.MOST, longer.value().substances().all().size());
    }

    @Test
    void anyTextIsRead() {
        SplittableRandom random = new SplittableRandom(5);
        String[] pieces = {"name", "formula", "state", ",", ",", "\n", "\"", "\r", "\r\n", ";", "NaCl", "s", "(", "\u0000",
            "\ud800", "²", "|", " ", "acetone", "1e9", "density", "synonyms", "\uFEFF", "\t", "foo"};
        for (int i = 0; i < 1000; i++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "name,formula,state,synonyms,density\n" : "");
            for (int j = random.nextInt(60); j > 0; j--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            Found<ReferenceTables> found = read(text.toString());
            found.findings().forEach(finding -> assertTrue(finding.at().line() >= 1));
        }
        assertInstanceOf(Found.class, read("\"".repeat(100_000)));
        assertInstanceOf(Found.class, read(",".repeat(1_000_000)));
        assertInstanceOf(Found.class, read("name,formula\n" + "x,(\n".repeat(4000)));
    }
}
