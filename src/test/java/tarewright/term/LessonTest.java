package tarewright.term;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.finding.Finding;
import tarewright.library.Library;
import tarewright.procedure.declare.Term;
import tarewright.procedure.declare.TermReader;
import tarewright.procedure.resolve.Resolved;
import tarewright.procedure.syntax.Reader;
import tarewright.safety.Rulebook;
import tarewright.tables.HazardTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** What of two procedures of one lesson must be kept apart is told; where nobody says on which day each is done, it is said that they were taken for one. */
class LessonTest {
    private static final Rulebook RULES = HazardTables.of("").rules();
    private static final Term.Section SECTION = TermReader.read(Reader.read(new SourceText("term.md", "---\nterm: Spring\n---\n\n```section Mon\n```\n")).value(), Tables.load()).value()
            .sections().get(0);

    private static Lesson.Part part(String procedure, boolean ownDay) {
        Resolved resolved = Library.resolve(Library.file(procedure), Library.setting(6, "20 °C", "101.3 kPa")).value();
        return new Lesson.Part(resolved, ownDay);
    }

    private static List<String> told(Lesson.Part... parts) {
        return new Lesson(SECTION, List.of(parts)).findings(RULES).stream().map(Finding::id).toList();
    }

    /** Peroxide and a metal with acid on the benches of one room: common practice, no source: oxidisers are kept from what burns. */
    @Test
    void whatMustNotMeetIsToldAndThatItWasTakenForOneLesson() {
        List<String> assumed = told(part("oxygen-from-peroxide", false), part("hydrogen-from-magnesium", false));
        assertEquals("lesson-assumed", assumed.get(assumed.size() - 1));
        assertTrue(assumed.size() > 1, assumed.toString());
        assertEquals(assumed.subList(0, assumed.size() - 1), told(part("oxygen-from-peroxide", true), part("hydrogen-from-magnesium", true)));
    }

    @Test
    void aProcedureAloneIsItsOwnAffair() {
        assertEquals(List.of(), told(part("oxygen-from-peroxide", false)));
    }
}
