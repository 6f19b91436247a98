package tarewright.print;

import java.util.function.Function;
import tarewright.text.Span;

/** A picture of the author's that is not printed, and why; caught where its place in the text is known. */
final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Function<Span, PictureFinding> why;

    Refused(Function<Span, PictureFinding> why) {
        super(null, null, false, false);
        this.why = why;
    }

    PictureFinding at(Span place) {
        return why.apply(place);
    }
}
