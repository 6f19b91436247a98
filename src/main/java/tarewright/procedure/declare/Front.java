package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.quantity.Typed;

/** The front matter of a procedure. What was not written is absent; defaults belong to the setting. */
public record Front(Optional<At<String>> title, String code, String time, OptionalInt groupSize, OptionalInt runs, String level,
        Optional<At<String>> language, Optional<At<String>> country, RoomFields room, Optional<Boolean> hood, OptionalInt groups,
        Optional<At<Typed>> spare, Optional<String> paper, List<Piece> aims, List<Piece> after, Optional<LabelPaper> labels,
        Optional<Boolean> realGases) {
    public Front {
        aims = List.copyOf(aims);
        after = List.copyOf(after);
    }

    /** The same with labels on other paper. */
    Front withLabels(LabelPaper other) {
        return new Front(title, code, time, groupSize, runs, level, language, country, room, hood, groups, spare, paper, aims, after, Optional.of(other), realGases);
    }

    /** A {@code room} field: told apart by their units. */
    public record RoomFields(Optional<At<Typed>> temperature, Optional<At<Typed>> pressure, Optional<At<Typed>> humidity,
            Optional<At<Typed>> volume) {
        public static final RoomFields NONE = new RoomFields(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
