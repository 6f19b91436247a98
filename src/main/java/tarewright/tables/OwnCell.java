package tarewright.tables;

import tarewright.text.Span;

/**
 * A cell of a teacher's own table.
 *
 * @param text what it holds, without the spaces around it
 * @param at where that stands
 */
record OwnCell(String text, Span at) {
    boolean isEmpty() {
        return text.isEmpty();
    }
}
