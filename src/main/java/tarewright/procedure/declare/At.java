package tarewright.procedure.declare;

import tarewright.text.Span;

/** A value and the place where the author wrote it. */
public record At<T>(T value, Span at) {
}
