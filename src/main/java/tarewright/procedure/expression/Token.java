package tarewright.procedure.expression;

import tarewright.finding.Finding;
import tarewright.quantity.Typed;

/** A piece of a formula's text, by offsets within it. */
sealed interface Token {
    int from();

    int to();

    record Number(Typed typed, int from, int to) implements Token {
    }

    /** @param text with single spaces */
    record Name(String text, int from, int to) implements Token {
    }

    record Sign(Operator operator, int from, int to) implements Token {
    }

    record Open(int from, int to) implements Token {
    }

    record Close(int from, int to) implements Token {
    }

    record End(int from, int to) implements Token {
    }

    /** What cannot be read; nothing behind it is looked at. */
    record Bad(Finding finding, int from, int to) implements Token {
    }
}
