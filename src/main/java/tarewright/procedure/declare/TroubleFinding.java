package tarewright.procedure.declare;

import java.util.List;
import java.util.Map;
import tarewright.finding.Facts;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/**
 * A trouble of the core, which knows no places, put at the place in the author's text.
 *
 * @param id the trouble's lasting name
 * @param at the smallest stretch that shows it
 * @param trouble the core's record
 */
public record TroubleFinding(String id, Span at, Object trouble) implements Finding {
    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public List<Span> also() {
        return List.of();
    }

    @Override
    public Map<String, Object> fields() {
        return Facts.ofTrouble(trouble);
    }
}
