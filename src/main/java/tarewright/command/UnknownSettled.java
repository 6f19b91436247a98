package tarewright.command;

import java.util.List;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** A {@code settled} block for something that no check ever finds: a slip would leave the warning standing, or seem to have answered it. */
record UnknownSettled(String text, List<String> suggestions, Span at) implements Finding {
    UnknownSettled {
        suggestions = List.copyOf(suggestions);
    }

    @Override
    public String id() {
        return "unknown-finding";
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }
}
