package tarewright.setting;

import java.util.Optional;
import tarewright.text.Span;

/**
 * A value as it really is on the day, in the place of the one that the procedure types: {@code strength of titrant is 0.1032 mol/L}.
 *
 * @param of what it is of: a property of a block ({@code strength of titrant}), or the name of a {@code value} block; behind it may stand the procedure that
 *        alone is meant ({@code strength of titrant in acid-in-a-descaler})
 * @param value what is typed in the place of the field's value, read by the same rules as that
 * @param name where the name stands
 * @param at where the value stands, in the term's file or on the command line
 */
public record DayValue(String of, String value, Span name, Span at) {
    /** What it is of in this procedure, where it names the procedure. */
    public Optional<String> within(String procedure) {
        String named = " in " + procedure;
        return of.endsWith(named) ? Optional.of(of.substring(0, of.length() - named.length()).strip()) : Optional.empty();
    }

    /** As it was said, for the version code and for the reader. */
    public String said() {
        return of + " is " + value;
    }
}
