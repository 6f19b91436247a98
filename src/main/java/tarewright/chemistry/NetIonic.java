package tarewright.chemistry;

import java.util.List;

/** What is left of a complete ionic equation when the same on both sides is struck out. */
public sealed interface NetIonic {
    /** The net equation in lowest whole numbers, and what only looks on. */
    record Net(BalancedEquation equation, List<Species> onlookers) implements NetIonic {
        public Net {
            onlookers = List.copyOf(onlookers);
        }
    }

    /** Everything looks on: nothing happens. */
    record NoReaction() implements NetIonic {
    }

    /** The equation as written does not balance. */
    record Bad(BalanceTrouble trouble) implements NetIonic {
    }
}
