package tarewright.procedure.declare;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.syntax.TypedBlock;

/** The blocks that say something rather than measure something. */
public final class Notes {
    private Notes() {
    }

    /** A safety message where it stands. */
    public record CautionBlock(TypedBlock block, StepWord severity, String hazard, String consequence, String avoid) {
    }

    /** The step words of ANSI Z535.6, most severe first. */
    public enum StepWord {
        DANGER, WARNING, CAUTION, NOTICE;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What happens to what is left. @param of the reaction or block; none for all that is left */
    public record WasteBlock(TypedBlock block, Optional<At<String>> of, String into, Optional<At<Matter>> neutraliseWith) {
    }

    /** What came out when it was tried. */
    public record TrialBlock(TypedBlock block, Optional<At<String>> of, Optional<At<Expression>> gave, Optional<At<String>> on) {
    }

    /** The author's answer to a warning. @param finding its id */
    public record SettledBlock(TypedBlock block, Optional<At<String>> finding, Optional<At<String>> because) {
    }

    /** The findings that a block of {@code settled} blocks answers. */
    public static boolean answers(List<SettledBlock> settled, String id) {
        return settled.stream().anyMatch(s -> s.because().isPresent() && s.finding().filter(f -> f.value().equals(id)).isPresent());
    }
}
