package tarewright.quantity;

import java.util.List;
import java.util.Optional;

/** The closed table of units, and the reading of units and compounds of them. */
public final class Units {
    private Units() {
    }

    /** The unit with this printed symbol or accepted spelling ({@code uL}, {@code degC}, {@code cm3}), in its exact case. */
    public static Optional<Unit> symbol(String text) {
        return Optional.ofNullable(UnitTable.spellings().get(text)).map(UnitTable.Entry::unit);
    }

    /**
     * A unit or a compound of units: {@code g/mol}, {@code J/(g K)}, {@code mol dm^-3}, {@code g/100 mL}. The unit has a
     * canonical printed symbol, whatever the spelling. A degree Celsius in a compound is a difference.
     */
    public static UnitResult parse(String text) {
        return UnitReader.read(text);
    }

    /** As {@link #parse(String)}, where a unit of the wanted kind stands: a mend is offered only if it gives one. */
    public static UnitResult parse(String text, Dimension wanted) {
        UnitResult result = UnitReader.read(text);
        return result instanceof UnitResult.Bad bad && bad.trouble() instanceof UnitTrouble.Unknown unknown
                ? new UnitResult.Bad(NearUnits.fitting(unknown, text, wanted)) : result;
    }

    /** The symbols of the units in the table, the commonest of each kind first. */
    public static List<String> all() {
        return List.copyOf(UnitTable.symbols().keySet());
    }

    /** Units of a kind that a message may offer, the commonest first; at most five. Empty for a kind without a unit. */
    public static List<String> of(Dimension wanted) {
        return NearUnits.usual(wanted);
    }

    /**
     * Units that an unknown one may stand for, the likeliest first; none where nothing is near. Known mistakes come before
     * likeness of spelling, and the case of a letter alone never decides between {@code mg} and {@code Mg}.
     */
    public static List<NearUnit> near(String typed) {
        return NearUnits.find(Optional.empty(), typed);
    }

    /** As {@link #near(String)}, only symbols of the wanted dimension; the unknown unit may be a compound. */
    public static List<String> near(Dimension wanted, String typed) {
        return parse(typed, wanted) instanceof UnitResult.Bad bad && bad.trouble() instanceof UnitTrouble.Unknown unknown
                ? unknown.suggestions().stream()
                        .map(symbol -> typed.substring(0, unknown.from()) + symbol + typed.substring(unknown.to())).toList()
                : List.of();
    }
}
