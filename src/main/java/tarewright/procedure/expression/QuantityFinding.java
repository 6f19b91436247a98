package tarewright.procedure.expression;

import java.util.Map;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.quantity.QuantityTrouble;
import tarewright.text.Span;

/** A trouble with a quantity as typed, with the place in the source where it is. */
public record QuantityFinding(QuantityTrouble trouble, Span at) implements Finding {
    /** @param read where the text stands that the quantity was read from */
    public static QuantityFinding in(Span read, QuantityTrouble trouble) {
        return new QuantityFinding(trouble, read.part(trouble.from(), trouble.to()));
    }

    @Override
    public String id() {
        return trouble.id();
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public Map<String, Object> fields() {
        return trouble.fields();
    }
}
