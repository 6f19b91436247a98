package tarewright.procedure.syntax;

import org.commonmark.node.SourceSpan;

/**
 * Places in one cell of a table. The parser takes the backslash before each {@code |} off and counts on without it; this
 * puts it back.
 */
final class CellPlaces implements InlinePlaces {
    private final Places places;
    private final int cell;
    private final String content;

    CellPlaces(Places places, SourceSpan cell) {
        this.places = places;
        this.cell = places.start(cell);
        this.content = places.source().content().substring(this.cell, places.end(cell));
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
        int counted = offset - cell;
        int taken = 0;
        for (int pipe = content.indexOf("\\|"); pipe >= 0 && pipe - taken < counted; pipe = content.indexOf("\\|", pipe + 2)) {
            taken++;
        }
        return Math.min(cell + counted + taken, cell + content.length());
    }
}
