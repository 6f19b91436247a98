package tarewright.setting;

import tarewright.text.Span;

/**
 * A value as it really is on the day, in the place of the one that the procedure types: {@code strength of titrant is 0.1032 mol/L}.
 *
 * @param of what it is of: a property of a block ({@code strength of titrant}), or the name of a {@code value} block
 * @param value what is typed in the place of the field's value, read by the same rules as that
 * @param name where the name stands
 * @param at where the value stands, in the term's file or on the command line
 */
public record DayValue(String of, String value, Span name, Span at) {
    /** As it was said, for the version code and for the reader. */
    public String said() {
        return of + " is " + value;
    }
}
