package tarewright.procedure.check;

import java.util.List;
import java.util.Optional;
import tarewright.finding.Finding;
import tarewright.finding.Severity;
import tarewright.text.Span;

/** What the checks find. */
public sealed interface CheckFinding extends Finding {
    @Override
    default Severity severity() {
        return Severity.ERROR;
    }

    /**
     * More in a vessel than it holds.
     *
     * @param volume of all that is in it
     * @param advice the largest amount that fits, as set on its instrument; none where no single amount sets it
     */
    record OverCapacity(String vessel, String capacity, String volume, List<String> contents, Optional<String> advice, Span at, List<Span> also)
            implements CheckFinding {
        public OverCapacity {
            also = List.copyOf(also);
        }

        @Override
        public String id() {
            return "over-capacity";
        }
    }

    /** A room in which nobody could work. @param what temperature, pressure or volume */
    record UnlikelyRoom(String what, String value, String from, String to, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "unlikely-room";
        }
    }

    /** A solution made or taken from a block of another substance. */
    record MadeFromOther(String name, String holds, String source, String sourceHolds, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "made-from-other";
        }
    }

    /** A portion with another strength than its bottle. */
    record PortionStrength(String name, String strength, String bottle, String bottleStrength, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "portion-strength";
        }
    }

    /** An excess that is none, or less than the author asks for. @param wanted how many times, where the author asks for more than once */
    record NotInExcess(String name, String over, String present, String needed, Optional<String> wanted, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "not-in-excess";
        }
    }

    /** The author says that one limits and the amounts say another. */
    record LimitingClaim(String claimed, String limiting, String claimedTurns, String limitingTurns, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "limiting-claim";
        }
    }

    /** Something to be found out that the reaction does not use up. @param left over of it */
    record FoundLeftOver(String name, String limiting, String left, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "found-left-over";
        }
    }

    /** A reactant of the equation that no block provides. */
    record ReactantMissing(String formula, String reaction, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "reactant-missing";
        }
    }

    /** A typed amount that the instrument cannot set. */
    record NotDeliverable(String name, String amount, String instrument, String division, String lower, String upper, Span at)
            implements CheckFinding {
        @Override
        public String id() {
            return "not-deliverable";
        }
    }

    /** An amount that rounds to nothing on its instrument. */
    record RoundsToNothing(String name, String wanted, String instrument, String division, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "rounds-to-nothing";
        }
    }

    /** No {@code waste} block says where what is left goes. */
    record WasteMissing(Span at) implements CheckFinding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "waste-missing";
        }
    }

    /** A {@code settled} block for an error. */
    record CannotBeSettled(String finding, Span at, List<Span> also) implements CheckFinding {
        public CannotBeSettled {
            also = List.copyOf(also);
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "cannot-be-settled";
        }
    }

    /** A pot that gets hot. @param reached the temperature from that of the room, if all the heat stays in the liquid */
    record TooHot(String reaction, String rise, String reached, Severity severity, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "too-hot";
        }
    }

    /** A solution that gets hot while it is made, by more than 10 K (common practice, no source). @param rise if its flask keeps all the heat */
    record HotToMake(String name, String rise, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "hot-to-make";
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** More than the instrument holds. @param slip the likely slip where it is a hundred times too much */
    record Thousandfold(String name, String amount, String instrument, String capacity, Optional<String> slip, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "thousandfold";
        }
    }

    /** So little that a division of the instrument is more than a tenth of it. @param percent that one division is of the amount */
    record FewDivisions(String name, String amount, String instrument, String division, String percent, Span at) implements CheckFinding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "few-divisions";
        }
    }

    /** A flammable mixture inside the apparatus. @param share of the gas by volume */
    record FlammableInside(String gas, String share, String lower, String upper, Span at) implements CheckFinding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "flammable-inside";
        }
    }

    /** The upper end of the accepted range passes what the vessel holds. */
    record MayOverfill(String vessel, String capacity, String largest, Optional<String> advice, Span at, List<Span> also) implements CheckFinding {
        public MayOverfill {
            also = List.copyOf(also);
        }

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }

        @Override
        public String id() {
            return "may-overfill";
        }
    }

    /** The amounts of what limits a gas that keep it in the window that is asked for. */
    record FitsWindow(String gas, String volume, String window, String least, String most, Span at) implements CheckFinding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }

        @Override
        public String id() {
            return "fits-window";
        }
    }

    /** A gas outside the window that is asked for. @param least the amounts that would do; none where none can be set */
    record DoesNotFit(String gas, String volume, String window, Optional<String> least, Optional<String> most, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "does-not-fit";
        }
    }

    /** The author says that what limits varies, and with every amount it is the same. */
    record LimitingDoesNotVary(String reaction, String limiting, Span at) implements CheckFinding {
        @Override
        public String id() {
            return "limiting-does-not-vary";
        }
    }
}
