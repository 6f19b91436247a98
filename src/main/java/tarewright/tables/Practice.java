package tarewright.tables;

import java.util.List;

/**
 * How a preparation room usually works. None of it has a published source: every row of {@code practice.csv} says so, and a page that rests on one
 * says what was assumed.
 *
 * @param secondsPerWeighing at a balance read to 0.01 g or coarser
 * @param secondsPerFineWeighing at a finer one
 * @param fineDivision in kg; a balance with this division or a smaller one is fine
 * @param figures significant figures to which a total is rounded up
 * @param fullest part of its volume to which a bottle is filled at most
 * @param froth part of its volume to which a jar is filled at most in which waste is neutralised
 * @param rinses how often a burette or a pipette is rinsed with what goes into it
 * @param rinse part of its volume that one rinse takes
 * @param beyond part of its volume that a burette holds above its zero and below its last mark
 * @param burette in m³; one whose size is not told
 * @param bottles volumes of the usual bottles in m³, smallest first
 */
public record Practice(double secondsPerWeighing, double secondsPerFineWeighing, double fineDivision, int figures, double fullest, double froth,
        int rinses, double rinse, double beyond, double burette, List<Double> bottles) {
    private static final double GRAM = 1e-3;
    private static final double MILLILITRE = 1e-6;

    public Practice {
        bottles = bottles.stream().sorted().toList();
    }

    static Practice load() {
        List<Row> rows = Rows.of("practice.csv");
        return new Practice(one(rows, "weighing"), one(rows, "fine weighing"), one(rows, "fine division") * GRAM,
                (int) one(rows, "figures"), one(rows, "fullest"), one(rows, "froth"),
                (int) one(rows, "rinses"), one(rows, "rinse"), one(rows, "beyond"), one(rows, "burette") * MILLILITRE,
                rows.stream().filter(r -> r.text("name").equals("bottle")).map(r -> r.number("value") * MILLILITRE).toList());
    }

    private static double one(List<Row> rows, String name) {
        return rows.stream().filter(r -> r.text("name").equals(name)).mapToDouble(r -> r.number("value")).findFirst().orElseThrow();
    }
}
