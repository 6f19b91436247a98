package tarewright.term;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tarewright.document.Sheet;
import tarewright.procedure.declare.Term;
import tarewright.procedure.declare.TermReader;
import tarewright.procedure.resolve.Property;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.resolve.Resolver;
import tarewright.procedure.syntax.Reader;
import tarewright.setting.Setting;
import tarewright.tables.HazardTables;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** What a section of a term gets: its own values before the term's, a folder, as many handouts as it has groups, students or neither. The term is invented. */
class SectionsTest {
    private static final ReferenceTables TABLES = Tables.load();
    private static final String FRONT = "---\nterm: Spring\nschool: Fennick Quay Evening College\npaper: letter\nspare: 20 %\n---\n\n";

    private static Term term(String text) {
        return TermReader.read(Reader.read(new SourceText("term.md", text)).value(), TABLES).value();
    }

    private static Resolved resolved(String name, Term term) throws IOException {
        String text = Files.readString(Path.of("procedures", name + ".md"));
        return Resolver.resolve(name, Reader.read(new SourceText(name + ".md", text)).value(), new Sections(term).overrides(term.sections().get(0)), TABLES).value();
    }

    /** By hand: 20.0 mL × 0.0350 mol/L × 3 / 0.1032 mol/L = 20.35 mL. What neither section nor term says is the procedure's. */
    @Test
    void theSectionGoesBeforeTheTermAndTheTermBeforeTheProcedure() throws IOException {
        Term term = term(FRONT + "```section Mon-A\ngroups: 7\nspare: 5 %\ndate: 2041-02-04\nroom: 24 °C\non the day: strength of alkali is 0.1032 mol/L\n```\n");
        Resolved procedure = resolved("acid-in-a-descaler", term);
        Setting setting = procedure.setting();
        assertEquals(List.of(7, 2), List.of(setting.groups(), setting.groupSize()));
        assertEquals(0.05, setting.spare(), 1e-12);
        assertEquals(297.15, setting.room().temperature().value(), 1e-9);
        assertEquals(101300, setting.room().pressure().value(), 1e-6, "the procedure's own pressure");
        assertEquals(List.of("Mon-A", "2041-02-04", "Fennick Quay Evening College", "LETTER"),
                List.of(setting.section(), setting.occasion().date(), setting.occasion().school(), setting.paper().name()));
        assertEquals(20.35e-6, procedure.quantity("alkali").orElseThrow().figure(Property.VOLUME).orElseThrow().value(), 1e-12);
        Setting ofTheTerm = resolved("acid-in-a-descaler", term(FRONT + "```section Tue\n```\n")).setting();
        assertEquals(0.20, ofTheTerm.spare(), 1e-12);
        assertEquals(12, ofTheTerm.groups(), "the usual class");
    }

    /** What a name of a section may hold and a name of a folder may not, on any system, becomes a hyphen; nothing climbs out of the output folder. */
    @ParameterizedTest
    @CsvSource({"Mon-A, Mon-A", "Año 2, Año-2", "9b/left, 9b-left", "../up, -up", "?, -", "..., section"})
    void everySectionHasAFolderThatAnySystemTakes(String section, String folder) {
        assertEquals(folder, Sections.folder(term(FRONT + "```section " + section + "\n```\n").sections().get(0)));
    }

    /** By hand: 10 groups of 2. Five amounts are dealt, so that a file serves five groups. */
    @ParameterizedTest
    @CsvSource({"acid-in-a-descaler, each group, 10", "acid-in-a-descaler, each student, 20", "acid-in-a-descaler, one, 1", "turning-point-of-chalk, each group, 2", "turning-point-of-chalk, each student, 4"})
    void asManyHandoutsAsTheSectionHas(String procedure, String copies, int wanted) throws IOException {
        Term term = term(FRONT + "```section Mon\ngroups: 10\ncopies: " + copies + "\n```\n");
        assertEquals(wanted, new Sections(term).handouts(term.sections().get(0), resolved(procedure, term)));
    }

    /** Two versions go round: of three groups two have A; the section's word on copies goes before the term's. */
    @Test
    void versionsGoRoundInTurn() throws IOException {
        Term term = term(FRONT.replace("spare", "versions: 2\ncopies: one\nspare") + "```section Mon\ngroups: 3\ncopies: each group\n```\n\n```section Tue\n```\n");
        Resolved procedure = resolved("acid-in-a-descaler", term);
        assertEquals(2, new Sections(term).handouts(term.sections().get(0), procedure));
        assertEquals(1, new Sections(term).handouts(term.sections().get(1), procedure));
    }

    /** The teacher's sheets come out of the copier first, the pile of handouts last; only what is printed is counted. */
    @Test
    void filesAreCopiedInTheOrderOfTheWork() throws IOException {
        Term term = term(FRONT + "```section Mon\ngroups: 4\n```\n");
        Set<Sheet.Kind> kinds = EnumSet.of(Sheet.Kind.HANDOUT, Sheet.Kind.PREP, Sheet.Kind.KEY);
        Lot lot = Lot.of("Mon", resolved("acid-in-a-descaler", term), List.of(), HazardTables.of(""), kinds, Map.of(), "", false, "");
        Map<String, Integer> copies = new Sections(term).copies(term.sections().get(0), lot, kinds);
        assertEquals(List.of("acid-in-a-descaler-key.pdf", "acid-in-a-descaler-prep.pdf", "acid-in-a-descaler-handout.pdf"), List.copyOf(copies.keySet()));
        assertEquals(List.of(1, 1, 4), List.copyOf(copies.values()));
    }
}
