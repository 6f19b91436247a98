package tarewright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Figure;
import tarewright.derivation.Origin;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.finding.Finding;
import tarewright.procedure.expression.Evaluator;
import tarewright.procedure.expression.Expression;
import tarewright.procedure.expression.Expressions;
import tarewright.procedure.expression.Lookup;
import tarewright.procedure.syntax.Fields;
import tarewright.quantity.Rounding;
import tarewright.quantity.Unit;
import tarewright.quantity.UnitResult;
import tarewright.quantity.Units;
import tarewright.text.SourceText;

/** The worked lines of a key. Values by hand. */
class WorkedLinesTest {
    private final WorkedLines lines = WorkedLines.in("en");
    private final Figure mass = given(Symbol.ofFormula("m", "Mg"), 0.079, "g", 0.00058).shownTo(3);
    private final Figure magnesium = given(Symbol.ofFormula("M", "Mg"), 24.305, "g/mol", 0.0012);
    private final Figure moles = Figure.of(Symbol.ofFormula("n", "Mg"), unit("mmol"), product(1, mass, 1, magnesium, -1));

    private static Unit unit(String symbol) {
        return symbol.isEmpty() ? Unit.ONE : ((UnitResult.Ok) Units.parse(symbol)).unit();
    }

    private static Figure given(Symbol symbol, double value, String unit, double uncertainty) {
        Unit in = unit(unit);
        return Figure.given(symbol, in, in.toSi(value), new Origin.Author()).uncertain(uncertainty * in.factor());
    }

    private static Step.Product product(double coefficient, Object... figuresAndExponents) {
        List<Step.Power> powers = new ArrayList<>();
        for (int i = 0; i < figuresAndExponents.length; i += 2) {
            powers.add(new Step.Power((Figure) figuresAndExponents[i], (int) figuresAndExponents[i + 1]));
        }
        return new Step.Product(coefficient, powers);
    }

    private String plain(Figure figure) {
        return lines.of(figure).stream().map(WorkedLine::plain).collect(Collectors.joining("\n"));
    }

    @Test
    void aQuotient() {
        assertEquals("n(Mg) = m / M = 0.079 g / 24.305 g/mol = 3.25 mmol", plain(moles));
    }

    @Test
    void oneLineForEachFigureFromWhatIsKnown() {
        Figure acid = Figure.of(Symbol.ofFormula("n", "HCl"), unit("mmol"), product(2, moles, 1));
        Figure strength = given(Symbol.ofFormula("c", "HCl"), 1.0, "mol/L", 0).shownTo(1);
        Figure volume = Figure.of(Symbol.ofFormula("V", "HCl"), unit("mL"), product(1, acid, 1, strength, -1));
        assertEquals("""
                n(Mg) = m / M = 0.079 g / 24.305 g/mol = 3.25 mmol
                n(HCl) = 2 × n(Mg) = 2 × 3.25 mmol = 6.50 mmol
                V(HCl) = n / c = 6.50 mmol / 1.0 mol/L = 6.50 mL""", plain(volume));
    }

    @Test
    void aRoundingIsALineOfItsOwn() {
        Figure wanted = Figure.of(Symbol.ofName("V", "acid"), unit("mL"), product(2, given(Symbol.alone("V"), 3.3, "mL", 0), 1));
        Figure set = Figure.of(Symbol.ofName("V", "acid"), unit("mL"),
                new Step.Set(wanted, Rounding.of(Rounding.Direction.UP, 0.5, unit("mL")), Reason.EXCESS)).shownTo(1);
        assertEquals("V(acid) = 2 × V = 2 × 3.3 mL = 6.6 mL\nV(acid) = 6.6 mL ≈ 7.0 mL", plain(set));
        assertEquals(Optional.of(Reason.EXCESS), lines.of(set).get(1).rounded());
        Figure after = Figure.of(Symbol.ofName("n", "acid"), unit("mmol"),
                product(1, set, 1, given(Symbol.ofName("c", "acid"), 2.0, "mol/L", 0).shownTo(1), 1));
        assertEquals("n(acid) = V × c = 7.0 mL × 2.0 mol/L = 14 mmol", plain(after));
    }

    @Test
    void whatIsKnownIsOneStatement() {
        assertEquals("m(Mg) = 0.079 g", plain(mass));
        assertEquals("answer = m(Mg) = 0.079 g", plain(mass.as(Symbol.words("answer"))));
        Figure read = Figure.of(Symbol.words("weighed"), unit("g"),
                new Step.Read(mass, Rounding.of(Rounding.Direction.NEAREST, 0.001, unit("g")))).shownTo(3);
        assertEquals("weighed = 0.079 g", plain(read));
    }

    @Test
    void aFigureThatTakesAnotherOverHasNoLine() {
        assertEquals("n(Mg) = m / M = 0.079 g / 24.305 g/mol = 3.25 mmol", plain(moles.as(Symbol.words("answer"))));
    }

    /**
     * Atomic weights: IUPAC, abridged values of 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573): H 1.0080(2), O
     * 15.999(1).
     */
    @Test
    void molarMassesOnlyWhereAsked() {
        Figure hydrogen = given(Symbol.ofFormula("M", "H"), 1.008, "g/mol", 0.0002 / Math.sqrt(3));
        Figure oxygen = given(Symbol.ofFormula("M", "O"), 15.999, "g/mol", 0.001 / Math.sqrt(3));
        Figure water = Figure.of(Symbol.ofFormula("M", "H2O"), unit("g/mol"),
                new Step.Sum(List.of(new Step.Term(2, hydrogen), new Step.Term(1, oxygen))));
        Figure amount = Figure.of(Symbol.ofFormula("n", "H2O"), unit("mol"),
                product(1, given(Symbol.ofFormula("m", "H2O"), 9, "g", 0), 1, water, -1));
        assertEquals(1, lines.of(amount).size());
        assertEquals(2, lines.of(amount, true).size());
        String worked = "M(H2O) = 2 × M(H) + M(O) = 2 × 1.0080 g/mol + 15.9990 g/mol = 18.0150 g/mol";
        assertEquals(worked, lines.of(amount, true).get(0).plain());
        assertEquals(worked, plain(water));
    }

    @Test
    void sumsMeansExtremesAndTables() {
        Figure full = given(Symbol.words("full"), 24.35, "mL", 0).shownTo(2);
        Figure empty = given(Symbol.words("empty"), -0.15, "mL", 0).shownTo(2);
        assertEquals("titre = full − empty = 24.35 mL − (−0.15 mL) = 24.50 mL", plain(Figure.of(Symbol.words("titre"), unit("mL"),
                new Step.Sum(List.of(new Step.Term(1, full), new Step.Term(-1, empty)))).shownTo(2)));
        assertEquals("mean = (full + full + empty) / 3 = (24.35 mL + 24.35 mL + (−0.15 mL)) / 3 = 16.18 mL",
                plain(Figure.of(Symbol.words("mean"), unit("mL"), new Step.Sum(List.of(new Step.Term(1 / 3.0, full),
                        new Step.Term(1 / 3.0, full), new Step.Term(1 / 3.0, empty)))).shownTo(2)));
        Figure turns = Figure.of(Symbol.alone("ξ"), unit("mmol"), product(0.5, moles, 1));
        Figure extent = Figure.of(Symbol.alone("ξ"), unit("mmol"), new Step.Extreme(true, List.of(moles, turns)));
        assertEquals("""
                n(Mg) = m / M = 0.079 g / 24.305 g/mol = 3.25 mmol
                ξ = smallest of n(Mg), n(Mg) / 2 = smallest of 3.25 mmol, 3.25 mmol / 2 = 1.63 mmol""", plain(extent));
        Figure room = given(Symbol.alone("T"), 20, "°C", 0).shownTo(0);
        assertEquals("p(H2O) = vapour pressure of water at 20 °C = 2.3 kPa", plain(
                Figure.of(Symbol.ofFormula("p", "H2O"), unit("kPa"),
                        new Step.Relation("vapour pressure of water", "a table", List.of(room), t -> 2300))));
        assertEquals("ratio = 2 × n(Mg) / 3 = 2 × 3.25 mmol / 3 = 2.17 mmol",
                plain(Figure.of(Symbol.words("ratio"), unit("mmol"), product(2.0 / 3, moles, 1))).lines().toList().get(1));
    }

    @Test
    void aSymbolWithAStrokeOfItsOwnStandsInBrackets() {
        Figure perLength = given(Symbol.ofFormula("m/l", "Mg"), 1.1, "g/m", 0);
        assertEquals("l(Mg) = m / (m/l) = 0.079 g / 1.1 g/m = 71.8 mm",
                plain(Figure.of(Symbol.ofFormula("l", "Mg"), unit("mm"), product(1, mass, 1, perLength, -1))));
    }

    @Test
    void aFigureTakenOverShowsItsNumberOnce() {
        WorkedLine line = lines.of(Figure.of(Symbol.ofFormula("n", "H2"), unit("mmol"), product(1, moles, 1))).get(1);
        assertEquals("n(H2) = n(Mg) = 3.25 mmol", line.plain());
        assertEquals(List.of(), line.numbers());
    }

    /** Molar gas constant: CODATA 2022, 8.314 462 618 J/(mol K). pV = nRT by hand: 78.2 mL. */
    @Test
    void aTemperatureInAProductIsInKelvin() {
        Figure r = given(Symbol.alone("R"), 8.314462618, "J/(mol K)", 0);
        Figure t = given(Symbol.alone("T"), 20, "°C", 0).shownTo(0);
        Figure p = given(Symbol.alone("p"), 101.3, "kPa", 0).shownTo(1);
        Figure volume = Figure.of(Symbol.ofFormula("V", "H2"), unit("mL"), product(1, moles, 1, r, 1, t, 1, p, -1));
        assertEquals("V(H2) = n(Mg) × R × T / p = 3.25 mmol × 8.314 J/(mol K) × 293.15 K / 101.3 kPa = 78.2 mL",
                lines.of(volume).get(1).plain());
    }

    @Test
    void unitsThatCancelAreStruckOnBothSides() {
        Worked.Fraction fraction = (Worked.Fraction) lines.of(moles).get(0).numbers().get(0);
        assertEquals(List.of(new UnitPart("g", 1, true)), ((Worked.Amount) fraction.above().get(0)).unit());
        assertEquals(List.of(new UnitPart("g", 1, true), new UnitPart("mol", -1, false)),
                ((Worked.Amount) fraction.below().get(0)).unit());
        Figure side = given(Symbol.alone("a"), 2, "cm", 0);
        Figure area = given(Symbol.alone("A"), 8, "cm²", 0);
        List<Worked> mixed = lines.of(Figure.of(Symbol.alone("h"), unit("cm"), product(1, area, 1, side, -1))).get(0).numbers();
        assertEquals("8 cm² / 2 cm", Worked.plain(mixed));
        Worked.Amount below = (Worked.Amount) ((Worked.Fraction) mixed.get(0)).below().get(0);
        long struck = below.unit().stream().filter(UnitPart::struck).count();
        assertEquals(0, struck, "a part of a square cannot be struck by itself");
    }

    @Test
    void formulasOfTheAuthorsReadAsTheyWereWritten() {
        assertEquals("result = n(Mg) × 24.0 L/mol = 3.25 mmol × 24.0 L/mol = 78.0 mL", last("moles * 24.0 L/mol"));
        assertEquals("result = (full − empty) × c = (24.35 mL − 0.15 mL) × 0.100 mol/L = 2.42 mmol", last("(full - empty) * c"));
        assertEquals("result = 100 % × full / empty = 100 % × 24.35 mL / 0.15 mL = 162.3", last("100 % * full / empty"));
        assertEquals("result = 1 / (2 × c) = 1 / (2 × 0.100 mol/L) = 5 L/mol", last("1 / (2 * c)"));
        assertEquals("result = full² / empty = (24.35 mL)² / 0.15 mL = 3.953 L", last("full^2 / empty"));
        assertEquals("result = 2.5 g + 1.5 g = 4.0 g", last("2.5 g + 1.5 g"));
        assertEquals("result = −full = −24.35 mL", last("-full"));
        assertEquals("result = full / empty − 1 = 24.35 mL / 0.15 mL − 1 = 161.3", last("full / empty - 1"));
    }

    private String last(String formula) {
        Fields.Piece piece = new Fields.Piece(formula, new SourceText("a.md", formula).span(0, formula.length()));
        Lookup lookup = new Lookup() {
            @Override
            public Optional<Figure> figure(Expression.Named named, Consumer<Finding> findings) {
                return Optional.of(switch (named.text()) {
                    case "moles" -> moles;
                    case "full" -> given(Symbol.words("full"), 24.35, "mL", 0).shownTo(2);
                    case "empty" -> given(Symbol.words("empty"), 0.15, "mL", 0).shownTo(2);
                    default -> given(Symbol.alone(named.text()), 0.1, "mol/L", 0).shownTo(3);
                });
            }

            @Override
            public List<Figure> repeated(Expression.Named named, Consumer<Finding> findings) {
                return List.of();
            }
        };
        Expression expression = Expressions.parse(piece).value().orElseThrow();
        Figure figure = Evaluator.evaluate(expression, Symbol.words("result"), Optional.empty(), lookup).value().orElseThrow();
        List<WorkedLine> all = lines.of(figure);
        return all.get(all.size() - 1).plain();
    }

    @Test
    void numbersAreInTheLanguage() {
        String spanish = WorkedLines.in("es").of(moles).get(0).plain();
        assertTrue(spanish.contains("0,079 g / 24,305 g/mol = 3,25 mmol"), spanish);
    }
}
