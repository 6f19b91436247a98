package tarewright.wording;

import java.util.Optional;

/**
 * A coefficient as a person would write it: a whole number or a simple fraction where it is one, so that of 2/3 the 2 stands
 * above the stroke and the 3 below.
 *
 * @param above positive
 * @param below positive and whole
 */
record Coefficient(boolean negative, double above, int below) {
    private static final int LARGEST_BELOW = 12;
    private static final double SAME = 1e-12;

    static Coefficient of(double value) {
        double size = Math.abs(value);
        for (int below = 1; below <= LARGEST_BELOW; below++) {
            double above = size * below;
            if (Math.abs(above - Math.rint(above)) <= SAME * above && above < 1e9) {
                return new Coefficient(value < 0, Math.rint(above), below);
            }
        }
        // One over a whole number: the share of one reading in a mean of many.
        double inverse = 1 / size;
        boolean share = Math.abs(inverse - Math.rint(inverse)) <= SAME * inverse && inverse < 1e6;
        return share ? new Coefficient(value < 0, 1, (int) Math.rint(inverse)) : new Coefficient(value < 0, size, 1);
    }

    Optional<Worked> aboveIfNotOne(Numbers numbers) {
        return above == 1 ? Optional.empty() : Optional.of(new Worked.Number(numbers.printedNumber(above)));
    }

    Optional<Worked> belowIfNotOne(Numbers numbers) {
        return below == 1 ? Optional.empty() : Optional.of(new Worked.Number(numbers.printedNumber(below)));
    }
}
