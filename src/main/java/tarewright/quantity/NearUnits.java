package tarewright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.quantity.NearUnit.Reason;

/** What an unknown unit may stand for: the same letters in another case, known mistakes, else likeness of spelling. */
final class NearUnits {
    private static final int MOST = 5;
    private static final int LONGEST = 24;

    /** The units that a message offers for a kind; in the other kinds the table's own order. */
    private static final Map<Dimension, List<String>> USUAL = Map.of(
            Dimension.MASS, List.of("g", "mg", "kg"),
            Dimension.VOLUME, List.of("mL", "L", "cm³", "dm³"),
            Dimension.LENGTH, List.of("cm", "mm", "m"),
            Dimension.TIME, List.of("min", "s", "h"),
            Dimension.TEMPERATURE, List.of("°C", "K"),
            Dimension.AMOUNT, List.of("mol", "mmol"),
            Dimension.CONCENTRATION, List.of("mol/L", "mmol/L"),
            Dimension.DENSITY, List.of("g/mL", "g/cm³", "g/L", "kg/m³"),
            Dimension.MOLAR_MASS, List.of("g/mol"),
            Dimension.LINEAR_DENSITY, List.of("g/m"));

    private NearUnits() {
    }

    static List<String> usual(Dimension wanted) {
        List<String> known = USUAL.get(wanted);
        return known != null ? known : ofKind(wanted).stream().limit(MOST).toList();
    }

    /** Whether a text is a name or abbreviation of a unit as a whole, though it may hold a space: {@code deg C}. */
    static boolean isKnownMistake(String typed) {
        return KnownMistakes.find(typed).isPresent();
    }

    /** @param wanted the kind that likeness of spelling looks in; a known mistake is known whatever is wanted */
    static List<NearUnit> find(Optional<Dimension> wanted, String typed) {
        if (typed.isEmpty() || typed.length() > LONGEST) {
            return List.of();
        }
        List<NearUnit> found = new ArrayList<>(sameLetters(typed));
        KnownMistakes.find(typed).ifPresent(found::add);
        if (found.isEmpty()) {
            found.addAll(alike(typed, wanted));
        }
        return found.stream().limit(MOST).toList();
    }

    /**
     * The trouble with only those suggestions that make the whole unit one of the wanted kind. Where none is left and the whole
     * unit is unknown, the usual units of the kind are offered.
     *
     * @param text the whole unit, in which the unknown one stands
     */
    static UnitTrouble.Unknown fitting(UnitTrouble.Unknown trouble, String text, Dimension wanted) {
        boolean whole = trouble.text().equals(Blanks.strip(text));
        List<NearUnit> near = find(whole ? Optional.of(wanted) : Optional.empty(), trouble.text()).stream()
                .filter(unit -> gives(wanted, text.substring(0, trouble.from()) + unit.symbol() + text.substring(trouble.to())))
                .toList();
        boolean usual = near.isEmpty() && whole && !usual(wanted).isEmpty();
        List<NearUnit> offered = usual
                ? usual(wanted).stream().map(symbol -> new NearUnit(symbol, Reason.USUAL)).toList() : near;
        return UnitTrouble.Unknown.of(trouble.text(), offered, trouble.from());
    }

    private static boolean gives(Dimension wanted, String mended) {
        return UnitReader.read(mended) instanceof UnitResult.Ok ok && ok.unit().dimension().equals(wanted);
    }

    /**
     * Units with the same letters in another case. Where only the case of a leading m differs, or two units have these letters,
     * each is many powers of ten from the other, and the author must say which.
     */
    private static List<NearUnit> sameLetters(String typed) {
        String folded = KnownMistakes.fold(typed);
        List<NearUnit> found = new ArrayList<>();
        List<String> same = UnitTable.symbols().keySet().stream()
                .filter(symbol -> KnownMistakes.fold(symbol).equals(folded) && !symbol.equals(typed)).toList();
        for (String symbol : same) {
            boolean prefix = "mM".indexOf(typed.charAt(0)) >= 0 && "mM".indexOf(symbol.charAt(0)) >= 0
                    && typed.charAt(0) != symbol.charAt(0);
            Reason reason = symbol.equals("mL") && prefix ? Reason.MILLI_NOT_MEGA
                    : prefix || same.size() > 1 ? Reason.CASE_DECIDES : Reason.LETTER_CASE;
            found.add(new NearUnit(symbol, reason));
        }
        if (folded.equals("mg") && typed.startsWith("M")) {
            // Mg is the megagram, which the table holds as the tonne.
            found.add(new NearUnit("t", Reason.CASE_DECIDES));
        }
        return found;
    }

    private static List<NearUnit> alike(String typed, Optional<Dimension> wanted) {
        String folded = KnownMistakes.fold(typed);
        if (folded.length() < 2) {
            return List.of();
        }
        return UnitTable.symbols().keySet().stream()
                .filter(symbol -> symbol.length() >= 2 && (wanted.isEmpty() || dimension(symbol).equals(wanted.get())))
                .filter(symbol -> Likeness.distance(KnownMistakes.fold(symbol), folded) == 1)
                .map(symbol -> new NearUnit(symbol, Reason.SPELLING)).toList();
    }

    private static Dimension dimension(String symbol) {
        return UnitTable.spellings().get(symbol).unit().dimension();
    }

    private static List<String> ofKind(Dimension wanted) {
        return UnitTable.symbols().keySet().stream().filter(symbol -> dimension(symbol).equals(wanted)).toList();
    }
}
