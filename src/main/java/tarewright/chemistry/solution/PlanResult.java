package tarewright.chemistry.solution;

import java.util.Optional;

/** What comes of planning a solution. */
public sealed interface PlanResult {
    /** The plan, if there is one. */
    Optional<Plan> value();

    record Made(Plan plan) implements PlanResult {
        @Override
        public Optional<Plan> value() {
            return Optional.of(plan);
        }
    }

    record Refused(SolutionTrouble trouble) implements PlanResult {
        @Override
        public Optional<Plan> value() {
            return Optional.empty();
        }
    }
}
