package tarewright.procedure.syntax;

import tarewright.text.Span;

/**
 * Tells of braces without a partner. A closing one behind an opening one that found no partner is the other half of the
 * same mistake and is not told again.
 */
final class StrayBraces {
    private final Findings findings;
    private boolean open;

    StrayBraces(Findings findings) {
        this.findings = findings;
    }

    void found(char brace, Span at) {
        if (brace == '{') {
            findings.add(new SyntaxFinding.BraceNotClosed(at));
            open = true;
        } else {
            if (!open) {
                findings.add(new SyntaxFinding.BraceNotOpened(at));
            }
            open = false;
        }
    }
}
