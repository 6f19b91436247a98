package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import tarewright.safety.Classification;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Part;
import tarewright.safety.Rulebook;
import tarewright.safety.SubstanceHazards;
import tarewright.safety.Unknown;
import tarewright.tables.HazardTables;
import tarewright.tables.HazardTables.CountryRules;

/** What is taken out of the hazard tables is not known, on every page; nothing falls through silently. */
class RemovedSubstanceTest {
    private static final Rulebook RULES = HazardTables.standard();
    private static final String SOURCE = """
            ---
            title: T
            ---

            ```solution acid
            solute: HCl
            strength: 1.0 mol/L
            volume: 10 mL
            ```

            1. Measure {acid} of {label of acid}.
            """;

    /** The rules without any row that has a name or a formula of this one. */
    private static Rulebook without(SubstanceHazards gone) {
        List<SubstanceHazards> left = RULES.substances().rows();
        Rulebook rules = RULES;
        for (SubstanceHazards row : left) {
            boolean same = row.names().stream().anyMatch(n -> gone.names().stream().anyMatch(n::equalsIgnoreCase))
                    || row.formulas().stream().anyMatch(gone.formulas()::contains);
            if (same) {
                rules = rules.with(rules.substances().without(row.id()));
            }
        }
        return rules;
    }

    private static String text(Sheet.Kind kind, Rulebook rules) {
        Documents documents = new Documents(new CountryRules(rules, true));
        return Fixture.text(documents.sheets(Fixture.resolve(SOURCE), EnumSet.of(kind), List.of(), "abcdefg", "").get(0));
    }

    @Test
    void removingASubstanceTurnsItsPanelIntoHazardsNotKnown() {
        Rulebook without = without(RULES.substances().byId("hydrochloric-acid").orElseThrow());

        for (Sheet.Kind kind : List.of(Sheet.Kind.SAFETY, Sheet.Kind.HANDOUT, Sheet.Kind.KEY, Sheet.Kind.LABELS)) {
            assertFalse(text(kind, RULES).contains("Hazards not known"), kind.toString());
            assertTrue(text(kind, without).contains("Hazards not known: treat as hazardous."), text(kind, without));
        }
        assertTrue(text(Sheet.Kind.SAFETY, without).contains("on the wall: Hazards not known"), text(Sheet.Kind.SAFETY, without));
    }

    @Test
    void removingAnySubstanceMakesItUnknownInEveryFormAndStrength() {
        List<String> stillKnown = new ArrayList<>();
        for (SubstanceHazards row : RULES.substances().rows()) {
            Classification classification = new Classification(without(row));
            for (String name : row.names()) {
                for (Content content : List.of(Content.pure(), Content.percent(1), Content.molar(0.1), Content.unstated())) {
                    for (Form form : List.of(Form.SOLID, Form.SOLUTION)) {
                        Part part = row.formulas().isEmpty() ? Part.of(name, content) : Part.of(name, row.formulas().get(0), content);
                        if (!(classification.of(Matter.of(name, form, List.of(part))) instanceof Unknown)) {
                            stillKnown.add(row.id() + " as " + name);
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), stillKnown.stream().distinct().toList());
    }
}
