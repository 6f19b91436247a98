package tarewright.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said beside a label: where it comes from, what was assumed, who may not handle it. Invented substances of which one thing is known each. */
class ClassificationRemarksTest {
    private static List<Remark> remarks(Rows row) {
        return Rows.verdict(Form.SOLID, 50, row).remarks();
    }

    private static Rows plain() {
        return Rows.of("thing").basis(Basis.HARMONISED);
    }

    @Test
    void ofAPlainRowNothingIsSaid() {
        assertEquals(List.of(), remarks(plain()));
        assertEquals(List.of(), remarks(plain().basis(Basis.NOT_CLASSIFIED)));
    }

    @Test
    void whereARowComesFromIsSaid() {
        assertEquals(List.of(new Remark(Remark.About.SELF_CLASSIFIED, List.of("thing"))), remarks(plain().basis(Basis.SELF_CLASSIFIED)));
        assertEquals(List.of(new Remark(Remark.About.SELF_CLASSIFIED, List.of("thing"))), remarks(plain().basis(Basis.ADDITIONS)));
        assertEquals(List.of(new Remark(Remark.About.TEACHERS_TABLE, List.of("thing", "invented"))), remarks(plain().basis(Basis.TEACHER)));
        assertEquals(List.of(new Remark(Remark.About.FROM_MEMORY, List.of("thing", "the part"))), remarks(plain().fromMemory()));
        assertEquals(List.of(new Remark(Remark.About.MINIMUM_CLASSIFICATION, List.of("thing"))), remarks(plain().minimum()));
        assertEquals(List.of(new Remark(Remark.About.SUPPLIERS_ADD, List.of("thing", "H290, H335"))), remarks(plain().suppliersAdd("H290", "H335")));
        assertEquals(List.of(new Remark(Remark.About.RESTRICTED, List.of("thing", "TEACHER_ONLY"))), remarks(plain().restricted(Restriction.TEACHER_ONLY)));
    }

    /** CLP Annex I 4.1.3.5.5.5: of what is very toxic to water in category 1 a factor belongs to the row; without one 1 is taken, and said. */
    @ParameterizedTest
    @CsvSource({"Aquatic Acute|1|H400, true", "Aquatic Chronic|1|H410, true", "Aquatic Chronic|2|H411, false", "Skin Irrit.|2|H315, false"})
    void aMissingMultiplyingFactorIsSaid(String hazard, boolean said) {
        Remark missing = new Remark(Remark.About.M_FACTOR_NOT_GIVEN, List.of("thing"));
        assertEquals(said, remarks(plain().is(hazard)).contains(missing));
        assertEquals(List.of(), remarks(plain().is(hazard).mFactors(1, 1)));
    }

    @Test
    void whatWasAssumedOfTheStrengthIsSaid() {
        Classification classification = new Classification(Rows.rules(plain()));
        Verdict unstated = classification.of(Matter.of("m", Form.SOLID, List.of(Part.of("thing", Content.unstated()))));
        assertEquals(List.of(new Remark(Remark.About.STRENGTH_UNSTATED, List.of("thing"))), unstated.remarks());
        Verdict estimated = classification.of(Matter.of("m", Form.SOLUTION, List.of(Part.of("thing", Content.molar(1)))));
        assertEquals(List.of(new Remark(Remark.About.STRENGTH_ESTIMATED, List.of("thing"))), estimated.remarks());
    }

    /** A salt that stands for an ion is named with it; a name that only begins with a circumflex is no ion, nor is a plain formula. */
    @Test
    void anIonIsToldFromAFormula() {
        Classification classification = new Classification(Rows.rules(plain().formula("ZnCl2")));
        for (String formula : List.of("ZnCl2", "^thing")) {
            assertTrue(classification.of(Matter.of("m", Form.SOLUTION, List.of(Part.of("thing", formula, Content.percent(1))))).remarks().isEmpty());
        }
        Verdict ion = classification.of(Matter.of("m", Form.SOLUTION, List.of(Part.of("thing", "Zn^2+", Content.percent(1)))));
        assertEquals(List.of(new Remark(Remark.About.ION, List.of("Zn^2+", "thing"))), ion.remarks());
    }

    /** CLP Annex I 3.2.3.1.2: an extreme pH speaks where no class and no limit of what is there speaks of skin or eyes. */
    @ParameterizedTest
    @CsvSource({"Skin Irrit.|2|H315, false", "Eye Irrit.|2|H319, false", "STOT SE|3|H335, true", "Acute Tox.|4|H302, true"})
    void anExtremePHSpeaksWhereNothingElseDoes(String hazard, boolean burns) {
        assertEquals(burns, atPH(plain().is(hazard), 1, 1).has("H314"));
        assertEquals(burns, atPH(plain().limit(hazard, 90), 1, 1).has("H314"));
        assertTrue(atPH(plain().is(hazard), 0, 1).has("H314"), "what is not there says nothing");
    }

    private static Verdict atPH(Rows row, double percent, double pH) {
        return new Classification(Rows.rules(row)).of(Matter.of("m", Form.SOLUTION, List.of(Part.of("thing", Content.percent(percent)))).atPH(pH));
    }

    /** With a known strength of one and an uncertain one of another, the limit that the other may have passed is told once, of the other. */
    @Test
    void theUncertainPartIsTheOneNearItsLimit() {
        Classification classification = new Classification(Rows.rules(Rows.of("sure").is("Skin Irrit.|2|H315"), Rows.of("unsure").is("Skin Irrit.|2|H315")));
        Verdict both = classification.of(Matter.of("m", Form.SOLUTION, List.of(Part.of("sure", Content.percent(5)), Part.of("unsure", Content.percent(4.9, 0.1)))));
        NearLimit near = both.nearLimits().get(0);
        assertEquals(1, both.nearLimits().size());
        assertEquals(4.9, near.percent(), 1e-9);
        assertTrue(near.stricterTaken());
        assertEquals(List.of(), classification.of(Matter.of("m", Form.SOLUTION, List.of(Part.of("sure", Content.percent(5)), Part.of("unsure", Content.unstated())))).nearLimits());
    }
}
