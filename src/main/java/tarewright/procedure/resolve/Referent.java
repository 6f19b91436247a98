package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.QuantityBlock;
import tarewright.procedure.declare.ReactionBlock;

/** What stands on the page in the place of a reference. */
public sealed interface Referent {
    /** A figure. @param measured whether it is an amount that the reader measures out */
    record Amount(Figure figure, boolean measured) implements Referent {
    }

    /** A name fit for a bottle. */
    record Bottle(QuantityBlock block) implements Referent {
    }

    record Equation(ReactionBlock block) implements Referent {
    }

    record Chemical(Formula formula) implements Referent {
    }

    /**
     * A space to write a reading in.
     *
     * @param what is to be written, in words
     * @param expected one figure for each time that it is read; empty where nothing could be worked out
     */
    record Blank(String what, List<Figure> expected) implements Referent {
        public Blank {
            expected = List.copyOf(expected);
        }
    }

    record Working(Figure figure) implements Referent {
    }

    record Plain(String text) implements Referent {
    }

    /** What could not be resolved, which was a finding. */
    record Nothing() implements Referent {
    }

    static Referent amount(Optional<Figure> figure, boolean measured) {
        return figure.<Referent>map(f -> new Amount(f, measured)).orElseGet(Nothing::new);
    }
}
