package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Symbols as IUPAC's Green Book (3rd edition, 1.3 and 2.10) writes them: the letter, and in brackets what it belongs to. */
class SymbolTest {
    @Test
    void whatItBelongsToStandsInBrackets() {
        assertEquals("n(Mg)", Symbol.ofFormula("n", "Mg").plain());
        assertEquals("V(acid)", Symbol.ofName("V", "acid").plain());
        assertEquals("p", Symbol.alone("p").plain());
        assertEquals("mass of crucible", Symbol.words("mass of crucible").plain());
    }

    @Test
    void eachKindIsToldApart() {
        assertEquals(Symbol.Kind.FORMULA, Symbol.ofFormula("n", "Mg").kind());
        assertEquals(Symbol.Kind.NAME, Symbol.ofName("V", "acid").kind());
        assertEquals(Symbol.Kind.NAME, Symbol.alone("p").kind());
        assertEquals(Symbol.Kind.WORDS, Symbol.words("mass of crucible").kind());
    }
}
