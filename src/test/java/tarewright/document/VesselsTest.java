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

    private static final String FLASKS = """
            ---
            title: Flasks
            ---

            ```apparatus
            burette: burette, 50 mL; graduation 0.1 mL; reads to 0.05 mL; one per group
            pipette: pipette with filler, 25 mL; delivers 25.0 mL; within 0.03 mL; one per group
            flask: conical flask, 100 mL; one per group
            beaker: beaker, 100 mL; one per group
            tall flask: volumetric flask, 100 mL; one per group
            balance: balance; reads to 0.001 g; one per class
            ```

            ```reaction meeting
            HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)
            ```

            ```solution sample
            solute: HCl
            strength: 0.100 mol/L
            volume: 25.0 mL
            measure with: pipette
            in: flask
            ```

            ```solution alkali
            solute: NaOH
            strength: 0.100 mol/L
            for: sample
            measure with: burette
            ```

            ```liquid rinse
            substance: water
            volume: 50 mL
            in: beaker
            role: rinse
            ```

            1. Move {sample} into the flask. Run in {label of alkali}. Put {rinse} of water into the beaker.
            """;

    /** A beaker is as wide below as above: 50 of 100 mL stand at half of the 26 mm to its mark, 13 mm over a floor that is 38 mm down. */
    @Test
    void theTeacherSeesTheLevelInABeaker() {
        Piece.Drawing beaker = drawings(Fixture.sheet(Sheet.Kind.KEY, Fixture.resolve(FLASKS))).stream().filter(d -> d.spoken().startsWith("beaker")).findFirst().orElseThrow();
        assertEquals("beaker, 100 mL: holds 50 mL.", beaker.spoken().replace('\u202F', ' '));
        assertTrue(beaker.svg().contains("y1=\"25.00\" x2=\"35.00\" y2=\"25.00\""), beaker.svg());
    }

    /** A cone holds most of its volume below: half of it stands lower than half of its height. 25.0 mL at first, 25.0 and 25.0 mL in the end. */
    @Test
    void theTeacherSeesTheLevelsInAConicalFlaskBeforeAndAfter() {
        Piece.Drawing flask = drawings(Fixture.sheet(Sheet.Kind.KEY, Fixture.resolve(FLASKS))).stream().filter(d -> d.spoken().startsWith("conical")).findFirst().orElseThrow();
        assertEquals("conical flask, 100 mL: holds 25.0 mL at first; holds 50.00 mL in the end.", flask.spoken().replace('\u202F', ' '));
        List<Double> levels = Pattern.compile("y2=\"([0-9.]+)\" stroke=\"#000000\" stroke-width=\"0.80\"").matcher(flask.svg()).results().map(m -> 38 - Double.parseDouble(m.group(1)))
                .toList();
        assertEquals(2, levels.size(), flask.svg());
        double mark = 22;
        assertTrue(levels.get(0) < levels.get(1) && levels.get(1) < mark / 2, levels.toString());
        // A frustum from 15 mm half-width, 11/24 mm narrower each mm: V(h) = π ∫ (15 − 11 y / 24)² dy.
        assertEquals(0.5, volume(levels.get(1)) / volume(mark), 0.005);
        assertEquals(0.25, volume(levels.get(0)) / volume(mark), 0.005);
    }

    private static double volume(double height) {
        double slope = 11 / 24.0;
        return (Math.pow(15, 3) - Math.pow(15 - slope * height, 3)) / (3 * slope);
    }
}
