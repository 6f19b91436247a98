package tarewright.procedure.check;

import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What somebody who follows the page would stumble over. */
public sealed interface PageFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.WARNING;
    }

    /** Two things to do in one sentence of a step. @param second where the second begins */
    record TwoActions(String second, Span at) implements PageFinding {
        @Override
        public String id() {
            return "two-actions";
        }
    }

    /** An amount typed by hand in a step where a block has the same. @param amount of the block, as it prints */
    record TypedByHand(String text, String name, String amount, Span at) implements PageFinding {
        @Override
        public String id() {
            return "typed-by-hand";
        }
    }

    /** The number of waters that {@code shown as} hides, told by a name in the text. @param shown as the page has the formula */
    record HydrateNamed(String text, String name, String shown, Span at) implements PageFinding {
        @Override
        public String id() {
            return "hydrate-named";
        }
    }

    /** A reading that no place to write it in, no question and no graph asks for. */
    record ReadingNotUsed(String name, Span at) implements PageFinding {
        @Override
        public String id() {
            return "reading-not-used";
        }
    }

    /** A blank to fill though no step says to read anything. */
    record BlankWithoutStep(String name, Span at) implements PageFinding {
        @Override
        public String id() {
            return "blank-without-step";
        }
    }

    /** An amount to measure out, and nothing said of what measures it. */
    record NothingMeasures(String name, String amount, Span at) implements PageFinding {
        @Override
        public String id() {
            return "nothing-measures";
        }
    }
}
