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
     * canonical printed symbol, whatever the spelling.
     */
    public static UnitResult parse(String text) {
        return new UnitReader(text).read();
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
    public static List<String> near(String typed) {
        return NearUnits.find(Optional.empty(), typed).stream().map(NearUnit::symbol).toList();
    }

    /** As {@link #near(String)}, only units of the wanted dimension. */
    public static List<String> near(Dimension wanted, String typed) {
        return NearUnits.find(Optional.of(wanted), typed).stream().map(NearUnit::symbol).toList();
    }

    /** As {@link #near(String)}, with the reason for each. */
    public static List<NearUnit> nearWithReasons(Optional<Dimension> wanted, String typed) {
        return NearUnits.find(wanted, typed);
    }
}
