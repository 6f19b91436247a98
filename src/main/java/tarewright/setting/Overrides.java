package tarewright.setting;

import java.util.Optional;
import java.util.OptionalInt;
import tarewright.quantity.Typed;

/** What the command line or a section says in the place of the procedure's own values. */
public record Overrides(OptionalInt groups, Optional<Paper> paper, Optional<Typed> temperature, Optional<Typed> pressure, Optional<Typed> humidity,
        Optional<Typed> volume) {
    public static final Overrides NONE = new Overrides(OptionalInt.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty());
}
