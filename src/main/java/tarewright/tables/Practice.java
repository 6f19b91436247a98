package tarewright.tables;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

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
 * @param fumes by the formula of what is in it, the strength in mol/m³ from which a stock gives off vapour that hurts
 * @param bottles volumes of the usual bottles in m³, smallest first
 */
public record Practice(double secondsPerWeighing, double secondsPerFineWeighing, double fineDivision, int figures, double fullest, double froth,
        int rinses, double rinse, double beyond, double burette, Map<String, Double> fumes, List<Double> bottles) {
    private static final String FUMES = "fumes ";
    private static final double PER_LITRE = 1000;
    private static final double GRAM = 1e-3;
    private static final double MILLILITRE = 1e-6;

    public Practice {
        fumes = Map.copyOf(fumes);
        bottles = bottles.stream().sorted().toList();
    }

    static Practice load() {
        List<Row> rows = Rows.of("practice.csv");
        return new Practice(one(rows, "weighing"), one(rows, "fine weighing"), one(rows, "fine division") * GRAM,
                (int) one(rows, "figures"), one(rows, "fullest"), one(rows, "froth"),
                (int) one(rows, "rinses"), one(rows, "rinse"), one(rows, "beyond"), one(rows, "burette") * MILLILITRE,
                rows.stream().filter(r -> r.text("name").startsWith(FUMES)).collect(Collectors.toMap(r -> r.text("name").substring(FUMES.length()), r -> r.number("value") * PER_LITRE)),
                rows.stream().filter(r -> r.text("name").equals("bottle")).map(r -> r.number("value") * MILLILITRE).toList());
    }

    /** In mol/m³; empty for what does not fume. @param formula in plain writing */
    public OptionalDouble fumesFrom(String formula) {
        return fumes.containsKey(formula) ? OptionalDouble.of(fumes.get(formula)) : OptionalDouble.empty();
    }

    private static double one(List<Row> rows, String name) {
        return rows.stream().filter(r -> r.text("name").equals(name)).mapToDouble(r -> r.number("value")).findFirst().orElseThrow();
    }
}
