package tarewright.derivation;

/**
 * What a figure is called in a worked line: {@code n(Mg)}, {@code V(acid)}, {@code p}, {@code M(H2O)}.
 *
 * @param letter the symbol of the quantity as IUPAC's Green Book writes it, or words where there is none ({@code mass of crucible})
 * @param of what it belongs to: a formula in plain writing, or a block's name; empty if there is nothing to tell apart
 * @param kind what {@code of} is, and whether the letter is a symbol or words
 */
public record Symbol(String letter, String of, Kind kind) {
    /** How a symbol is set. */
    public enum Kind {
        /** {@code of} is a formula. */
        FORMULA,
        /** {@code of} is words, or nothing. */
        NAME,
        /** The letter itself is words: no symbol stands for this. */
        WORDS
    }

    public static Symbol ofFormula(String letter, String formula) {
        return new Symbol(letter, formula, Kind.FORMULA);
    }

    public static Symbol ofName(String letter, String name) {
        return new Symbol(letter, name, Kind.NAME);
    }

    public static Symbol alone(String letter) {
        return new Symbol(letter, "", Kind.NAME);
    }

    public static Symbol words(String words) {
        return new Symbol(words, "", Kind.WORDS);
    }

    /** As one line of plain text. */
    public String plain() {
        return of.isEmpty() ? letter : letter + "(" + of + ")";
    }
}
