package tarewright.fuzz;

import tarewright.finding.Finding;
import tarewright.tables.HazardTables;
import tarewright.tables.ReferenceTables;
import tarewright.tables.Tables;
import tarewright.text.SourceText;

/** Any text as a teacher's own table of substances and of hazards. */
public final class OwnTableTarget {
    private static final ReferenceTables TABLES = Tables.load();
    private static final HazardTables.CountryRules RULES = HazardTables.of("");

    private OwnTableTarget() {
    }

    public static void fuzzerTestOneInput(byte[] bytes) {
        SourceText text = new SourceText("hazards.csv", Held.text(bytes));
        Held.soon(() -> {
            Held.within(HazardTables.withOwn(RULES.rules(), text).findings(), text);
            for (Finding finding : TABLES.withOwn(text.content(), "substances.csv").findings()) {
                Held.within(finding.at().start(), finding.at().end(), text.content());
            }
        });
    }
}
