package tarewright.command;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.procedure.check.Checks;
import tarewright.procedure.declare.At;
import tarewright.procedure.resolve.Resolved;
import tarewright.text.Span;

/**
 * A handout that does not fit on the two sides of a leaf. @param pages that it has @param most that it should have: two
 * for each deal
 */
record HandoutLong(int pages, int most, Span at) implements Finding {
    private static final int SIDES = 2;

    /** What is to be said of a handout with so many pages, unless the author has answered it. */
    static Optional<Finding> of(Resolved procedure, int pages) {
        int most = SIDES * procedure.hands().size();
        if (pages <= most) {
            return Optional.empty();
        }
        Span at = procedure.procedure().front().title()
                .map(At::at).orElseGet(() -> procedure.procedure().source().text().span(0, 0));
        return Checks.unanswered(procedure, List.of(new HandoutLong(pages, most, at))).stream().findFirst();
    }

    @Override
    public String id() {
        return "handout-long";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }
}
