package tarewright.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tarewright.chemistry.Cases.equation;
import static tarewright.chemistry.Cases.formula;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tarewright.chemistry.Balance.Check;
import tarewright.chemistry.Balance.ElementCount;
import tarewright.chemistry.Balance.Impossible;
import tarewright.chemistry.Balance.Impossible.Kind;
import tarewright.exact.Rational;

/** Equations of textbooks and of the literature on balancing; each row of the table says its source, or that it is from memory. */
class BalancingTest {
    static Stream<Map<String, String>> reactions() {
        return Cases.table("/tarewright/reactions.csv").stream();
    }

    /** The coefficients are found anew from the bare formulas; where the row says so, there are none or many. */
    @ParameterizedTest
    @MethodSource("reactions")
    void everyReactionOfTheTable(Map<String, String> row) {
        Equation written = equation(row.get("reactants") + " -> " + row.get("products"));
        Equation bare = equation(bare(row.get("reactants")) + " -> " + bare(row.get("products")));
        List<BigInteger> published = row.get("coefficients").isEmpty() ? List.of()
                : Arrays.stream(row.get("coefficients").split(" ")).map(BigInteger::new).toList();
        Balance balance = Balancing.balance(bare);
        switch (row.get("expect")) {
            case "balanced" -> {
                assertInstanceOf(Check.Correct.class, Balancing.check(written));
                if (row.get("unique").equals("yes")) {
                    assertEquals(new Balance.Unique(published), balance);
                } else {
                    assertTrue(assertInstanceOf(Balance.Ambiguous.class, balance).balancesAsWritten());
                }
                assertEquals(published, coefficients(Balancing.complete(bare)));
                assertEquals(published, coefficients(Balancing.complete(written)));
            }
            case "non-unique" -> assertEquals(Integer.parseInt(row.get("nullity")),
                    assertInstanceOf(Balance.Ambiguous.class, balance).reactions().size());
            case "impossible" -> assertInstanceOf(Impossible.class, balance);
            default -> throw new AssertionError(row.get("expect"));
        }
    }

    @Test
    void theTableIsWhole() {
        assertEquals(139, reactions().count());
    }

    static Stream<JsonNode> published() {
        return Cases.published("balance");
    }

    /** OpenStax, Chemistry 2e; each row names its section. The order of terms is free where water and its ions are added. */
    @ParameterizedTest
    @MethodSource("published")
    void asPublished(JsonNode row) {
        JsonNode given = row.get("given");
        Equation skeleton = equation(given.get("skeleton").asText());
        BalanceResult result = medium(given)
                .map(medium -> Redox.inMedium(skeleton, medium, given.has("half_reaction")))
                .orElseGet(() -> Balancing.complete(skeleton));
        assertEquals(sorted(row.get("answer").asText()), sorted(balanced(result).plain()));
    }

    /** The same answers pass the check, and are found again from their bare formulas. */
    @ParameterizedTest
    @MethodSource("published")
    void thePublishedAnswerIsCorrect(JsonNode row) {
        String answer = row.get("answer").asText();
        assertInstanceOf(Check.Correct.class, Balancing.check(equation(answer)));
        String[] sides = answer.split(" -> ");
        assertEquals(answer, balanced(Balancing.complete(equation(bare(sides[0]) + " -> " + bare(sides[1])))).plain());
    }

    private static Optional<Medium> medium(JsonNode given) {
        if (!given.has("medium")) {
            return Optional.empty();
        }
        Medium acid = given.has("proton_form") ? Medium.ACIDIC_HYDRONIUM : Medium.ACIDIC;
        return Optional.of(given.get("medium").asText().equals("acidic") ? acid : Medium.BASIC);
    }

    static Stream<JsonNode> netIonic() {
        return Cases.published("net_ionic");
    }

    /** OpenStax, Chemistry 2e, section 4.1, exercises 9 and 11. */
    @ParameterizedTest
    @MethodSource("netIonic")
    void netIonicAsPublished(JsonNode row) {
        NetIonic net = Balancing.net(ionic(row.get("given").get("complete_ionic").asText()));
        assertEquals(row.get("answer").asText(), assertInstanceOf(NetIonic.Net.class, net).equation().plain());
    }

    @Test
    void allPublishedCasesAreThere() {
        assertEquals(18, published().count());
        assertEquals(2, netIonic().count());
    }

    @Test
    void onlookersAreNamed() {
        NetIonic.Net net = (NetIonic.Net) Balancing.net(ionic("2 H^+ + SO4^2- + 2 Na^+ + 2 OH^- -> 2 Na^+ + SO4^2- + 2 H2O"));
        assertEquals("H^+ + OH^- -> H2O", net.equation().plain());
        assertEquals(List.of("SO4^2-", "Na^+"), net.onlookers().stream().map(Species::plain).toList());
        assertInstanceOf(NetIonic.NoReaction.class, Balancing.net(ionic("Na^+ + Cl^- -> Cl^- + Na^+")));
        assertInstanceOf(NetIonic.Bad.class, Balancing.net(ionic("Na^+ + 2 Cl^- -> Cl^- + Na^+")));
    }

    /** The examiner's inputs that must be refused, with what the message should say. */
    @Test
    void refusedWithTheElementsToBlame() {
        assertEquals(new Impossible(Kind.ONE_SIDED, List.of("Cl"), List.of(), List.of(), false), refused("bad-005"));
        assertEquals(new Impossible(Kind.ONE_SIDED, List.of("S"), List.of("C"), List.of(), false), refused("bad-006"));
        assertEquals(new Impossible(Kind.NO_POSITIVE_SET, List.of(), List.of(), List.of("H", "O"), false), refused("bad-008"));
        assertEquals(new Impossible(Kind.ONE_SIDED, List.of("O"), List.of(), List.of(), true), refused("bad-010"));
        assertEquals(new Check.Unbalanced(List.of(new ElementCount("O", Rational.of(6), Rational.of(4)))), refused("bad-003"));
        assertEquals(new Check.ChargeImbalance(Rational.of(2), Rational.of(1)), refused("bad-011"));
    }

    /** The kind of message is the one that the case asks for. */
    @ParameterizedTest
    @CsvSource({"unbalanced_equation", "impossible_equation", "charge_imbalance"})
    void refusedWithTheRightKindOfMessage(String kind) {
        assertTrue(Cases.refused(kind).count() > 0);
        Cases.refused(kind).forEach(row ->
                assertEquals(kind.replace('_', '-'), refused(row.get("id").asText()).id(), row.get("id").asText()));
    }

    private static BalanceTrouble refused(String id) {
        JsonNode given = Cases.refused("unbalanced_equation", "impossible_equation", "charge_imbalance")
                .filter(row -> row.get("id").asText().equals(id)).findFirst().orElseThrow().get("given");
        String text = given.has("skeleton") ? given.get("skeleton").asText() : given.get("equation").asText();
        return assertInstanceOf(BalanceResult.Bad.class, Balancing.complete(equation(text))).trouble();
    }

    @Test
    void onlyTheElementsThatAreNeededAreBlamed() {
        assertEquals(new Impossible(Kind.CHARGE, List.of(), List.of(), List.of("Fe"), false),
                Balancing.balance(equation("Fe^2+ -> Fe^3+")));
        assertEquals(List.of("H", "O"), ((Impossible) Balancing.balance(
                equation("H2O + NaCl + AgF -> H2O2 + AgCl + NaF"))).together(), "what is in order besides is not blamed");
        assertEquals(List.of("H", "O"), ((Impossible) Balancing.balance(equation("C6H12O6 -> CO2 + H2O"))).together(),
                "all the oxygen goes into the water that the hydrogen makes");
    }

    @Test
    void severalReactionsAreShownApart() {
        Balance.Ambiguous ambiguous = (Balance.Ambiguous) Balancing.balance(equation("C + O2 -> CO + CO2"));
        assertEquals(List.of("2 C + O2 -> 2 CO", "C + O2 -> CO2"), ambiguous.examples());
        ambiguous = (Balance.Ambiguous) Balancing.balance(equation("KMnO4 + H2O2 + H2SO4 -> K2SO4 + MnSO4 + H2O + O2"));
        assertTrue(ambiguous.examples().contains("2 H2O2 -> 2 H2O + O2"), ambiguous.examples()::toString);
    }

    @Test
    void whatIsWrittenIsCheckedAndKept() {
        assertEquals("2 H2 + O2 -> 2 H2O", complete("H2 + 1/2 O2 -> H2O"), "fractions are cleared");
        assertEquals("4 H2 + 2 O2 -> 4 H2O", complete("4 H2 + 2 O2 -> 4 H2O"), "not the lowest, but right");
        assertEquals("2 H2 + O2 -> 2 H2O", complete("H2 + O2 -> H2O"));
        assertEquals("2 KMnO4 + 5 H2O2 + 3 H2SO4 -> K2SO4 + 2 MnSO4 + 8 H2O + 5 O2",
                complete("2 KMnO4 + 5 H2O2 + 3 H2SO4 -> K2SO4 + 2 MnSO4 + 8 H2O + 5 O2"), "one of many, as the author has it");
        assertEquals("unbalanced-equation", trouble("H2 + 1 O2 -> H2O"), "an unwritten one counts as 1 beside a written one");
        assertEquals("charge-imbalance", trouble("Zn + Ag^+ -> Zn^2+ + 1 Ag"));
        assertEquals("coefficient-too-large", trouble("H9999 + Li9998 -> H9998Li9999"));
    }

    /** Gypsum burnt to plaster; a fraction of water stands for itself. */
    @Test
    void aFractionOfWaterBalances() {
        assertEquals("2 CaSO4.2H2O(s) -> 2 CaSO4.1/2H2O(s) + 3 H2O(g)", complete("CaSO4.2H2O(s) -> CaSO4.1/2H2O(s) + H2O(g)"));
        assertEquals("2 CaSO4.2H2O -> 2 CaSO4.1/2H2O + 3 H2O", complete("CaSO4.2H2O -> CaSO4.0.5H2O + 3/2 H2O"));
        assertEquals("unbalanced-equation", trouble("CaSO4.2H2O -> CaSO4.1/2H2O + 2 H2O"));
    }

    @Test
    void aBalancedEquationKnowsItsTerms() {
        BalancedEquation equation = balanced(Balancing.complete(equation("Mg(s) + HCl(aq) -> MgCl2(aq) + H2(g)")));
        assertEquals("Mg(s) + 2 HCl(aq) -> MgCl2(aq) + H2(g)", equation.plain());
        assertEquals("Mg(s) + 2 HCl(aq) → MgCl₂(aq) + H₂(g)", equation.unicode());
        assertEquals(Optional.of(2), equation.coefficient(formula("HCl")));
        assertEquals(Optional.empty(), equation.coefficient(formula("NaCl")));
        assertTrue(equation.isReactant(formula("Mg")) && equation.isProduct(formula("H2")));
        assertTrue(!equation.isProduct(formula("Mg")) && !equation.isReactant(formula("H2")));
    }

    /** A chain in which each coefficient is 9999/9998 times the one before: the first is a multiple of 9998 to the sixth. */
    @Test
    void coefficientsGrowBeyondAnyMachineNumber() {
        Balance.Unique unique = (Balance.Unique) Balancing.balance(equation("H9999 + Li9998Be9999 + B9998C9999 + N9998 -> "
                + "H9998Li9999 + Be9998B9999 + C9998N9999"));
        assertEquals(BigInteger.valueOf(9998).pow(6), unique.coefficients().get(0));
        assertEquals(BigInteger.valueOf(9999).pow(6), unique.coefficients().get(3));
    }

    private static String complete(String text) {
        return balanced(Balancing.complete(equation(text))).plain();
    }

    private static String trouble(String text) {
        return assertInstanceOf(BalanceResult.Bad.class, Balancing.complete(equation(text)), text).trouble().id();
    }

    private static BalancedEquation balanced(BalanceResult result) {
        return assertInstanceOf(BalanceResult.Ok.class, result, result::toString).equation();
    }

    private static List<BigInteger> coefficients(BalanceResult result) {
        return balanced(result).terms().stream().map(term -> BigInteger.valueOf(term.coefficient())).toList();
    }

    private static Equation ionic(String text) {
        EquationResult result = Equation.parseIonic(text);
        return result.value().orElseThrow(() -> new AssertionError(text + ": " + result));
    }

    private static String bare(String side) {
        return side.replaceAll("(^|\\+ )[0-9]+ ", "$1");
    }

    private static List<List<String>> sorted(String equation) {
        return Arrays.stream(equation.split(" -> "))
                .map(side -> Arrays.stream(side.split("(?<=[\\s)]) ?\\+ ")).map(String::strip).sorted().toList()).toList();
    }
}
