package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of a curve through rows (Fritsch and Butland 1984: it rises where the rows rise), over random rows. */
class CurveTest {
    private static final Provenance READ = new Provenance("a", Confidence.READ);
    private static final Provenance MEMORY = new Provenance("b", Confidence.MEMORY);

    static List<Curve> curves() {
        SplittableRandom random = new SplittableRandom(3);
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            List<Curve.Row> rows = new ArrayList<>();
            double x = random.nextDouble(-5, 5);
            double y = random.nextDouble(-5, 5);
            for (int j = random.nextInt(1, 12); j > 0; j--) {
                rows.add(new Curve.Row(x, y, j % 2 == 0 ? READ : MEMORY));
                x += random.nextDouble(0.01, 3);
                y += random.nextInt(4) == 0 ? 0 : random.nextDouble(-2, 3);
            }
            curves.add(new Curve(rows));
        }
        return curves;
    }

    @ParameterizedTest
    @MethodSource("curves")
    void everyRowIsMet(Curve curve) {
        for (Curve.Row row : curve.rows()) {
            assertEquals(row.y(), curve.at(row.x()), 1e-12);
            assertEquals(row.provenance(), curve.provenance(row.x()));
        }
    }

    @ParameterizedTest
    @MethodSource("curves")
    void betweenTwoRowsItGoesOneWayOnly(Curve curve) {
        for (int i = 1; i < curve.rows().size(); i++) {
            Curve.Row left = curve.rows().get(i - 1);
            Curve.Row right = curve.rows().get(i);
            double way = Math.signum(right.y() - left.y());
            double before = left.y();
            for (int step = 1; step <= 50; step++) {
                double y = curve.at(left.x() + (right.x() - left.x()) * step / 50);
                assertTrue((y - before) * way >= -1e-12 && (way != 0 || Math.abs(y - before) < 1e-12), "step " + step);
                before = y;
            }
        }
    }

    @Test
    void aStraightLineIsKept() {
        Curve curve = new Curve(List.of(new Curve.Row(0, 1, READ), new Curve.Row(1, 3, READ), new Curve.Row(4, 9, READ)));
        for (double x = 0; x <= 4; x += 0.1) {
            assertEquals(1 + 2 * x, curve.at(x), 1e-12);
        }
    }

    @Test
    void betweenTwoRowsTheLessProvenCounts() {
        Curve curve = new Curve(List.of(new Curve.Row(0, 1, READ), new Curve.Row(1, 3, MEMORY)));
        assertEquals(new Provenance("a; b", Confidence.MEMORY), curve.provenance(0.5));
        assertEquals(READ, curve.provenance(0));
    }

    @Test
    void rowsMustRise() {
        assertThrows(IllegalArgumentException.class,
                () -> new Curve(List.of(new Curve.Row(1, 1, READ), new Curve.Row(1, 2, READ))));
        assertThrows(IllegalArgumentException.class, () -> new Curve(List.of()));
    }
}
