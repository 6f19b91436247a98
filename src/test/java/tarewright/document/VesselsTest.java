package tarewright.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tarewright.procedure.resolve.Resolved;
import tarewright.setting.Overrides;

/**
 * The drawings of the key: what stands where on a scale, and which reactant outlasts the other. Scales of lengths are
 * worked by hand.
 */
class VesselsTest {
    private static final Resolved HYDROGEN = Fixture.resolve(Fixture.source("hydrogen"));

    private static List<Piece.Drawing> drawings(Sheet sheet) {
        List<Piece.Drawing> found = new ArrayList<>();
        collect(sheet.pieces(), found);
        return found;
    }

    private static void collect(List<Piece> pieces, List<Piece.Drawing> found) {
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Drawing drawing) {
                found.add(drawing);
            } else if (piece instanceof Piece.Together together) {
                collect(together.inside(), found);
            } else if (piece instanceof Piece.Leaf leaf) {
                collect(leaf.inside(), found);
            }
        }
    }

    private static Piece.Drawing drawing(String spoken) {
        List<Piece.Drawing> all = drawings(Fixture.sheet(Sheet.Kind.KEY, HYDROGEN));
        return all.stream().filter(d -> d.spoken().contains(spoken))
                .findFirst().orElseThrow(() -> new AssertionError(all.toString()));
    }

    /** 80 mL of 100 mL is 88 mm of the 110 mm of the scale, which starts 6 mm from the edge. */
    @Test
    void theTeacherSeesTheSyringeAtTheExpectedVolume() {
        Piece.Drawing syringe = drawing("syringe");
        assertTrue(syringe.spoken().contains("at 80\u202FmL") || syringe.spoken().contains("at 80 mL"), syringe.spoken());
        assertTrue(syringe.svg().contains("<line x1=\"94.00\""), syringe.svg());
    }

    /** Marks of 1 mL on 100 mL: from 0 to 100 they are 101, eleven of them long and numbered. */
    @Test
    void theScaleHasTheMarksOfTheApparatusBlock() {
        String svg = drawing("syringe").svg();
        assertEquals(90, Pattern.compile("stroke-width=\"0.18\"").matcher(svg).results().count());
        assertEquals(11, Pattern.compile("stroke-width=\"0.30\"").matcher(svg).results().count());
    }

    /** 10.0 mmol of acid over 2, over 3.25 mmol of magnesium: 1.54 times as long. */
    @Test
    void theBarOfTheExcessIsLongerThanThatOfTheLimitingReactant() {
        String spoken = drawing("Mg: ").spoken();
        assertTrue(spoken.endsWith("Mg: 1.00; HCl: 1.54"), spoken);
    }

    @Test
    void theStudentSeesNoneOfThem() {
        Resolved procedure = HYDROGEN;
        assertEquals(List.of(), drawings(Fixture.sheet(Sheet.Kind.HANDOUT, procedure)));
        assertFalse(drawings(Fixture.sheet(Sheet.Kind.KEY, procedure)).isEmpty());
    }

    /** The fixture's titre is 29.50 mL: an end point, told from the zero of the burette. */
    @Test
    void aTitreIsToldFromTheZeroOfTheBurette() {
        List<Piece.Drawing> all = drawings(Fixture.sheet(Sheet.Kind.KEY, Fixture.resolve(Fixture.source("titration"),
                Overrides.NONE)));
        assertTrue(all.stream().anyMatch(d -> d.spoken().contains("burette") && d.spoken().contains("ends at 29.50")),
                all.toString());
    }
}
