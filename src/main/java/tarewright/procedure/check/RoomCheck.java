package tarewright.procedure.check;

import java.util.Optional;
import java.util.function.Consumer;
import tarewright.derivation.Figure;
import tarewright.finding.Finding;
import tarewright.procedure.declare.At;
import tarewright.procedure.declare.Front.RoomFields;
import tarewright.procedure.resolve.Resolved;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;
import tarewright.setting.Room;
import tarewright.text.Span;

/**
 * A room in which nobody could work points to a slip: of a unit, or of a gas's own temperature in the place of the room's. People live and teach between about 52 kPa (over
 * 5,000 m) and 107 kPa (by the Dead Sea), and between frost and 45 °C (common practice, no source).
 */
final class RoomCheck implements Check {
    private static final Unit CELSIUS = Units.symbol("°C").orElseThrow();
    private static final Unit KILOPASCAL = Units.symbol("kPa").orElseThrow();
    private static final Unit CUBIC_METRE = Units.symbol("m³").orElseThrow();

    @Override
    public void check(Resolved procedure, Consumer<Finding> findings) {
        Room room = procedure.setting().room();
        RoomFields own = procedure.procedure().front().room();
        Span elsewhere = procedure.procedure().source().text().span(0, 0);
        within("temperature", room.temperature(), 0, 45, CELSIUS, own.temperature(), elsewhere, findings);
        within("pressure", room.pressure(), 50, 110, KILOPASCAL, own.pressure(), elsewhere, findings);
        room.volume().ifPresent(v -> within("volume", v, 5, 100_000, CUBIC_METRE, own.volume(), elsewhere, findings));
    }

    private static void within(String what, Figure value, double from, double to, Unit unit, Optional<At<Typed>> own, Span elsewhere, Consumer<Finding> findings) {
        if (value.value() < unit.toSi(from) || value.value() > unit.toSi(to)) {
            // What the command line or a term says of the room has no place in this file.
            Span at = own.filter(o -> o.value().si() == value.value()).map(At::at).orElse(elsewhere);
            findings.accept(new CheckFinding.UnlikelyRoom(what, Amount.of(value), Amount.of(unit.toSi(from), unit), Amount.of(unit.toSi(to), unit), at));
        }
    }
}
