package tarewright.procedure.bench;

import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.procedure.resolve.Resolved;
import tarewright.quantity.Unit;
import tarewright.safety.Air;
import tarewright.safety.AirEstimate;
import tarewright.safety.Part;
import tarewright.safety.Release;
import tarewright.safety.Rulebook;
import tarewright.setting.Room;

/** What a gas of this procedure would do to the air of its room. */
final class Releases {
    private final Resolved procedure;
    private final Air air;

    Releases(Resolved procedure, Rulebook rules) {
        this.procedure = procedure;
        this.air = new Air(rules);
    }

    /** @param moles in one vessel @param vessels of one group that hold it at the same time */
    AirEstimate of(Part gas, Figure moles, int vessels) {
        Figure all = Figure.given(Symbol.words("groups"), Unit.ONE, (double) procedure.setting().groups() * Math.max(1, vessels),
                new Origin.Counted());
        Room room = procedure.setting().room();
        return air.of(new Release(gas.substance(), gas.formula(), moles, all, room.temperature(), room.pressure(), room.volume()));
    }
}
