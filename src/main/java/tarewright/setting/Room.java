package tarewright.setting;

import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Symbol;
import tarewright.quantity.Typed;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/**
 * The air of the room.
 *
 * @param temperature thermodynamic temperature
 * @param pressure of the air
 * @param humidity relative humidity as a fraction
 * @param volume of the room, where it is known
 */
public record Room(Figure temperature, Figure pressure, Figure humidity, Optional<Figure> volume) {
    /** 20 °C, 101.325 kPa, 50 % relative humidity, no volume: what stands in where nothing is said. */
    public static final Room USUAL = new Room(usual("T", "temperature of room", 20, "°C", 0.5, 0), usual("p", "pressure of room", 101.325, "kPa", 0.05, 3),
            usual("φ", "humidity of room", 50, "%", 5, 0), Optional.empty());

    private static Figure usual(String letter, String what, double value, String symbol, double halfWidth, int decimals) {
        Unit unit = Units.symbol(symbol).orElseThrow();
        return Figure.given(Symbol.alone(letter), unit, unit.toSi(value), new Origin.Circumstance(what))
                .uncertain(halfWidth * unit.factor() / Math.sqrt(3)).shownTo(decimals);
    }

    /** This room with what was typed in the place of what stands here. */
    public Room with(Optional<Typed> newTemperature, Optional<Typed> newPressure, Optional<Typed> newHumidity, Optional<Typed> newVolume) {
        return new Room(newTemperature.map(t -> typed("T", "temperature of room", t)).orElse(temperature),
                newPressure.map(p -> typed("p", "pressure of room", p)).orElse(pressure),
                newHumidity.map(h -> typed("φ", "humidity of room", h)).orElse(humidity),
                newVolume.map(v -> typed("V", "volume of room", v)).or(() -> volume));
    }

    /** A typed value is known to half of its last digit, unless its limits are stated. */
    private static Figure typed(String letter, String what, Typed typed) {
        double halfWidth = typed.plusMinusSi().orElse(typed.lastDigit() * typed.unit().factor() / 2);
        return Figure.given(Symbol.alone(letter), typed.unit(), typed.si(), new Origin.Circumstance(what))
                .uncertain(halfWidth / Math.sqrt(3)).shownTo(Math.max(typed.decimals(), 0));
    }
}
