package tarewright.procedure.syntax;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.commonmark.node.SourceSpan;

/**
 * Places in one cell of a table. The parser takes the backslash before each {@code |} off and counts on without it; this
 * puts it back.
 */
final class CellPlaces implements InlinePlaces {
    private final Places places;
    private final int cell;
    private final int end;
    /** Where the escaped bars stand as the parser counts, rising. */
    private final int[] bars;

    CellPlaces(Places places, SourceSpan cell) {
        this.places = places;
        this.cell = places.start(cell);
        this.end = places.end(cell);
        this.bars = bars(places.source().content().substring(this.cell, end));
    }

    private static int[] bars(String content) {
        IntStream.Builder bars = IntStream.builder();
        int taken = 0;
        for (int at = content.indexOf("\\|"); at >= 0; at = content.indexOf("\\|", at + 2)) {
            bars.add(at - taken);
            taken++;
        }
        return bars.build().toArray();
    }

    @Override
    public int start(SourceSpan span) {
        return restored(places.start(span));
    }

    @Override
    public int end(SourceSpan span) {
        return restored(places.end(span));
    }

    private int restored(int offset) {
        int before = Arrays.binarySearch(bars, offset - cell);
        return Math.min(offset + (before < 0 ? -before - 1 : before), end);
    }
}
