package tarewright.chemistry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import tarewright.chemistry.FormulaPart.Kind;
import tarewright.exact.Rational;

/**
 * A chemical formula: its pieces in the order written, and what they amount to. Two formulas are equal if they are written
 * alike but for the typing (subscripts, carets, kinds of dot); whether they hold the same atoms says
 * {@link #sameComposition}.
 */
public final class Formula {
    /** The longest text that is read, in UTF-16 units. */
    public static final int LONGEST = 200;
    /** The largest count that is read. */
    public static final int LARGEST_COUNT = 9999;
    /** The largest number of atoms of one element that counts may multiply up to. */
    public static final int MOST_ATOMS = 1_000_000;
    /** The largest charge, of either sign. */
    public static final int LARGEST_CHARGE = 99;

    private final List<FormulaPart> parts;
    private final Map<String, Integer> atoms;
    private final int units;
    private final int charge;

    private Formula(List<FormulaPart> parts, FormulaParts.Counted counted) {
        this.parts = List.copyOf(parts);
        this.atoms = counted.atoms();
        this.units = counted.units();
        this.charge = FormulaParts.charge(parts);
    }

    /** Of pieces that are in order; the atoms are counted from them. */
    static Formula of(List<FormulaPart> parts) {
        return of(parts, FormulaParts.count(parts)
                .orElseThrow(() -> new IllegalArgumentException("too many atoms in " + FormulaParts.plain(parts))));
    }

    /** Of pieces that are in order, and what was counted of them. */
    static Formula of(List<FormulaPart> parts, FormulaParts.Counted counted) {
        return new Formula(parts, counted);
    }

    /**
     * Reads a formula, spaces around it ignored: {@code NaHCO3}, {@code CuSO₄·5H₂O}, {@code CuSO4.5H2O},
     * {@code [Cu(NH3)4]^2+}, {@code Fe(3+)}, {@code SO₄²⁻}, {@code Na+}, and {@code e^-} for the electron.
     */
    public static FormulaResult parse(String text) {
        return FormulaReader.read(text);
    }

    /** Reads a formula that is only shown, in which a letter may stand for a count: {@code CuSO4.xH2O}. */
    public static ShownResult parseShown(String text) {
        return FormulaReader.readShown(text);
    }

    /** The pieces for typesetting, in order. */
    public List<FormulaPart> parts() {
        return parts;
    }

    /**
     * How many atoms of each element stand in {@link #units} formula units, adducts included, in the order of their first
     * appearance; none for the electron.
     */
    public Map<String, Integer> atoms() {
        return atoms;
    }

    /** How many formula units {@link #atoms} counts: 1, but 2 for {@code CaSO4·½H2O}, so that all counts are whole. */
    public int units() {
        return units;
    }

    /** How many atoms of an element stand in one formula unit; zero if it does not occur. */
    public Rational count(String symbol) {
        return Rational.of(atoms.getOrDefault(symbol, 0), units);
    }

    /** In elementary charges, signed. */
    public int charge() {
        return charge;
    }

    /** In ASCII as an author types it: {@code CuSO4.5H2O}, {@code SO4^2-}. Reading it gives an equal formula. */
    public String plain() {
        return FormulaParts.plain(parts);
    }

    /** With Unicode's subscripts, superscripts and dot: {@code CuSO₄·5H₂O}, {@code SO₄²⁻}. Reading it gives an equal formula. */
    public String unicode() {
        return FormulaParts.unicode(parts);
    }

    /** Whether another has the same atoms and the same charge, however grouped. */
    public boolean sameComposition(Formula other) {
        return charge == other.charge && units == other.units && atoms.equals(other.atoms);
    }

    /**
     * Molar mass in g/mol: the sum of atomic weights, the mass of electrons gained or lost left out (0.0005 g/mol each).
     *
     * @throws IllegalArgumentException if an element has no atomic weight there; see {@link #unweighed}
     */
    public double molarMass(Elements elements) {
        return contributions(elements).stream().mapToDouble(Contribution::molarMass).sum();
    }

    /**
     * The elements and their counts that make up the molar mass, in the order of {@link #atoms}.
     *
     * @throws IllegalArgumentException if an element has no atomic weight there; see {@link #unweighed}
     */
    public List<Contribution> contributions(Elements elements) {
        List<Contribution> contributions = new ArrayList<>();
        for (String symbol : atoms.keySet()) {
            Element element = elements.symbol(symbol)
                    .orElseThrow(() -> new IllegalArgumentException(symbol + " has no atomic weight here"));
            contributions.add(new Contribution(element, count(symbol)));
        }
        return List.copyOf(contributions);
    }

    /** The symbols in it that have no atomic weight in a table (technetium, most radioactive elements): ask before its mass. */
    public List<String> unweighed(Elements elements) {
        return atoms.keySet().stream().filter(symbol -> elements.symbol(symbol).isEmpty()).toList();
    }

    /** How many waters of crystallisation, 5 in {@code CuSO4.5H2O}, one half in {@code CaSO4·½H2O}; zero if there are none. */
    public Rational waters() {
        return FormulaParts.split(parts).stream().skip(1).map(FormulaParts::waters).reduce(Rational.ZERO, Rational::plus);
    }

    /** The whole number of waters of crystallisation; empty if there are none or a fraction, see {@link #waters}. */
    public OptionalInt watersOfCrystallisation() {
        boolean some = waters().signum() > 0 && waters().isWhole();
        return some ? OptionalInt.of(waters().numerator().intValueExact()) : OptionalInt.empty();
    }

    /** The same without its water of crystallisation, other adducts kept. */
    public Formula anhydrous() {
        List<List<FormulaPart>> kept = new ArrayList<>();
        for (List<FormulaPart> piece : FormulaParts.split(parts)) {
            if (kept.isEmpty() || FormulaParts.waters(piece).signum() == 0) {
                kept.add(piece);
            }
        }
        List<FormulaPart> joined = new ArrayList<>(kept.get(0));
        for (List<FormulaPart> piece : kept.subList(1, kept.size())) {
            joined.add(FormulaParts.DOT);
            joined.addAll(piece);
        }
        boolean lostCharge = charge != 0 && joined.stream().noneMatch(part -> part.kind() == Kind.SUPERSCRIPT);
        if (lostCharge) {
            joined.add(parts.get(parts.size() - 1));
        }
        return of(joined);
    }

    /** Whether this is the electron. */
    public boolean isElectron() {
        return atoms.isEmpty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Formula formula && parts.equals(formula.parts);
    }

    @Override
    public int hashCode() {
        return parts.hashCode();
    }

    @Override
    public String toString() {
        return plain();
    }
}
