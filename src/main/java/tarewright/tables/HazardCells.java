package tarewright.tables;

import java.util.Arrays;

/** Cells of the hazard tables that are more than text or a number. */
final class HazardCells {
    private HazardCells() {
    }

    static boolean yes(Row row, String column) {
        return row.text(column).equals("yes");
    }

    static double number(Row row, String column, double otherwise) {
        return row.optionalNumber(column).orElse(otherwise);
    }

    /** One of a closed set, written in small letters with hyphens. */
    static <E extends Enum<E>> E choice(Class<E> of, Row row, String column) {
        return choice(of, row, column, row.text(column));
    }

    static <E extends Enum<E>> E choice(Class<E> of, Row row, String column, E otherwise) {
        return row.text(column).isEmpty() ? otherwise : choice(of, row, column);
    }

    static <E extends Enum<E>> E choice(Class<E> of, Row row, String column, String word) {
        String wanted = word.replace('-', '_');
        return Arrays.stream(of.getEnumConstants()).filter(e -> e.name().equalsIgnoreCase(wanted)).findFirst()
                .orElseThrow(() -> new IllegalStateException(row.file() + ", row " + row.number() + ", " + column + ": " + word));
    }
}
