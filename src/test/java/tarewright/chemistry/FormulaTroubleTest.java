package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.chemistry.FormulaTrouble.AmbiguousCharge;
import tarewright.chemistry.FormulaTrouble.BadFormulaSyntax;
import tarewright.chemistry.FormulaTrouble.BracketMismatch;
import tarewright.chemistry.FormulaTrouble.CountTooLarge;
import tarewright.chemistry.FormulaTrouble.FormulaTooLong;
import tarewright.chemistry.FormulaTrouble.UnknownElement;
import tarewright.chemistry.FormulaTrouble.UnresolvedVariable;
import tarewright.chemistry.FormulaTrouble.ZeroCount;

/** What is refused, where it points, and what it offers. The inputs with a case file are the examiner's; the rest are ours. */
class FormulaTroubleTest {
    static Stream<JsonNode> refused() {
        return Cases.refused("unknown_element", "bracket_mismatch", "zero_count", "bad_formula_syntax", "empty_group",
                "unresolved_variable");
    }

    @ParameterizedTest
    @MethodSource("refused")
    void refusedWithTheRightKindOfMessage(JsonNode row) {
        String written = row.get("given").get("formula").asText();
        assertEquals(row.get("message_kind").asText().replace('_', '-'), trouble(written).id(), written);
    }

    @Test
    void thereAreNineSuchCases() {
        assertEquals(9, refused().count());
    }

    @Test
    void aSymbolInWrongCaseIsOfferedInRightCase() {
        assertEquals(new UnknownElement("nacl", List.of("NaCl"), List.of(), 0, 4), trouble("nacl"));
        assertEquals(List.of("NaCl"), ((UnknownElement) trouble("NACL")).formulas());
        assertEquals(List.of("Co2", "CO2"), ((UnknownElement) trouble("co2")).formulas(), "both readings");
        assertEquals("CuSO4.5H2O", ((UnknownElement) trouble("cuso4.5h2o")).formulas().get(0), "before the one with uranium");
        assertEquals(List.of(), ((UnknownElement) trouble("Na2Jo3")).formulas());
        assertEquals("Jo", ((UnknownElement) trouble("Na2Jo3")).symbol());
        assertEquals(List.of("Co", "Mo", "Ho"), ((UnknownElement) trouble("Na2Jo3")).symbols());
        assertEquals("Sodium", ((UnknownElement) trouble("Sodium")).symbol());
    }

    @Test
    void bothReadingsOfAChargeAreOffered() {
        assertEquals(new AmbiguousCharge("3+", List.of("Fe^3+", "Fe3^+"), 2, 4), trouble("Fe3+"));
        assertEquals(List.of("NH4^+", "NH^4+"), ((AmbiguousCharge) trouble("NH4+")).readings());
        assertEquals(List.of("SO4^2-", "SO42^-"), ((AmbiguousCharge) trouble("SO42-")).readings());
        assertEquals(List.of("[Cu(NH3)4]^2+", "[Cu(NH3)4]2^+"), ((AmbiguousCharge) trouble("[Cu(NH3)4]2+")).readings());
        assertEquals(List.of("NO3^-", "NO^3-"), ((AmbiguousCharge) trouble(" NO3-")).readings());
        for (String reading : ((AmbiguousCharge) trouble("Fe3+")).readings()) {
            assertInstanceOf(FormulaResult.Ok.class, Formula.parse(reading));
        }
    }

    @Test
    void bracketsAndCounts() {
        assertEquals(new BracketMismatch(")", BracketMismatch.Reason.NEVER_OPENED, 4, 5), trouble("CaOH)2"));
        assertEquals(new BracketMismatch("(", BracketMismatch.Reason.NEVER_CLOSED, 2, 3), trouble("Ca(OH2"));
        assertEquals(new BracketMismatch("]", BracketMismatch.Reason.OTHER_KIND, 5, 6), trouble("Ca(OH]2"));
        assertEquals(new ZeroCount(Optional.empty(), Optional.of("OH"), 2, 7), trouble("Ca(OH)0"));
        assertEquals(new ZeroCount(Optional.of("H"), Optional.empty(), 0, 2), trouble("H0Cl"));
        assertEquals(new ZeroCount(Optional.empty(), Optional.of("H2O"), 7, 11), trouble("Na2CO3.0H2O"));
        assertEquals("zero-count", trouble("Na2CO3.0.0H2O").id());
        assertEquals("count-too-large", trouble("CaSO4·20001/2H2O").id());
        assertEquals(new CountTooLarge("10000", 9999, 1, 6), trouble("C10000"));
        assertEquals("count-too-large", trouble("((C9999)9999)9999").id(), "what counts multiply up to");
        assertEquals("count-too-large", trouble("C99999999999999999999999").id());
        assertEquals("count-too-large", trouble("Na^100+").id());
        assertInstanceOf(FormulaResult.Ok.class, Formula.parse("C9999"));
    }

    @Test
    void aLetterForANumber() {
        assertEquals(new UnresolvedVariable("x", Optional.of("H2O"), Optional.empty(), 7, 8), trouble("Na2CO3.xH2O"));
        assertEquals(new UnresolvedVariable("n", Optional.empty(), Optional.of("C6H10O5"), 9, 10), trouble("(C6H10O5)n"));
        assertEquals(new UnresolvedVariable("x", Optional.empty(), Optional.of("O"), 2, 3), trouble("NOx"));
    }

    /** A mistake, the text that shows it, and what to write instead. */
    @ParameterizedTest
    @CsvSource({
        "'', EMPTY, '', ",
        "'  ', EMPTY, '', ",
        ".5H2O, NOTHING_BEFORE_DOT, ., ",
        "CuSO4., NOTHING_AFTER_DOT, ., ",
        "CuSO4.5, NOTHING_AFTER_DOT, .5, ",
        "CuSO4..5H2O, NOTHING_AFTER_DOT, ., ",
        "(CuSO4.5H2O)2, DOT_IN_BRACKETS, ., ",
        "CaSO4.0.512H2O, FRACTION, 0.512, ",
        "CaSO4·1/101H2O, FRACTION, 1/101, ",
        "CaSO4·1/0H2O, STRAY_CHARACTER, /, ",
        "½H2O, STRAY_CHARACTER, ½, ",
        "2H2O, LEADING_NUMBER, 2, H2O",
        "3CdSO4.8H2O, LEADING_NUMBER, 3, (CdSO4)3.8H2O",
        "Na₂3Cl, STRAY_NUMBER, 3, ",
        "H2S04, ZERO_FOR_LETTER_O, 04, H2SO4",
        "CuSO4.5H20, ZERO_FOR_LETTER_O, 0, CuSO4.5H2O",
        "H20, ZERO_FOR_LETTER_O, 0, H2O",
        "Na Cl, SPACE, Na Cl, ",
        "Cu^SO4, CHARGE_WITHOUT_VALUE, ^, ",
        "Cu^, CHARGE_WITHOUT_VALUE, ^, ",
        "Cu^2, CHARGE_WITHOUT_VALUE, ^, ",
        "Cu^0+, CHARGE_ZERO, ^0+, ",
        "Fe^+3, CHARGE_ORDER, ^+3, Fe^3+",
        "Ca++, CHARGE_ORDER, ++, Ca^2+",
        "Cu^2+SO4^2-, CHARGE_NOT_LAST, ^2+, ",
        "(SO4^2-)3, CHARGE_NOT_LAST, ^, ",
        "H2+O2, SIGN_INSIDE, +, ",
        "Fe(II), OXIDATION_NUMBER, (II), Fe^2+",
        "Fe(III)Cl3, OXIDATION_NUMBER, (III), FeCl3",
        "H2O(l), STATE, (l), H2O",
        "NaCl!, STRAY_CHARACTER, !, ",
        "CH2=CH2, STRAY_CHARACTER, =, ",
        "{H}, STRAY_CHARACTER, {, ",
        "^2+, STRAY_CHARACTER, ^, ",
    })
    void mistakes(String written, FormulaMistake reason, String piece, String instead) {
        BadFormulaSyntax bad = assertInstanceOf(BadFormulaSyntax.class, trouble(written));
        assertEquals(reason, bad.reason());
        assertEquals(piece, bad.piece());
        assertEquals(Optional.ofNullable(instead), bad.instead());
    }

    @Test
    void aCharacterOutsideTheBasicPlaneIsPointedAtWhole() {
        BadFormulaSyntax bad = (BadFormulaSyntax) trouble("Na🧪");
        assertEquals("🧪", bad.piece());
        assertEquals(4, bad.to());
    }

    @Test
    void hugeTextsAreRefusedAtOnce() {
        assertEquals(new FormulaTooLong(1_000_000, 200, 0, 1_000_000), trouble("(".repeat(1_000_000)));
        assertEquals("formula-too-long", trouble("C".repeat(201)).id());
        assertInstanceOf(FormulaResult.Ok.class, Formula.parse("C".repeat(200)));
        assertEquals("bracket-mismatch", trouble("(".repeat(200)).id());
        assertInstanceOf(FormulaResult.Ok.class, Formula.parse("(".repeat(99) + "H" + ")".repeat(99)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nacl", "Fe3+", "CaOH)2", "H0", "Cu^", "Mg()2", "NOx", "C10000", "H2S04", "(CuSO4.5H2O)2"})
    void aTroubleMovesWithItsText(String written) {
        FormulaTrouble here = trouble(written);
        FormulaTrouble there = here.shifted(30);
        assertEquals(here.from() + 30, there.from());
        assertEquals(here.to() + 30, there.to());
        assertEquals(here, there.shifted(-30));
    }

    private static FormulaTrouble trouble(String written) {
        FormulaTrouble trouble = assertInstanceOf(FormulaResult.Bad.class, Formula.parse(written), written).trouble();
        assertTrue(trouble.from() >= 0 && trouble.from() <= trouble.to() && trouble.to() <= written.length(), trouble::toString);
        return trouble;
    }
}
