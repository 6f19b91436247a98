package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import tarewright.derivation.Gradient.Part;
import tarewright.derivation.Step.Term;

/** Partial derivatives gathered along a derivation (JCGM 100:2008, 5.1 and 5.2). */
class GradientTest {
    /** y = a b - a: ∂y/∂a = b - 1 by both ways together, ∂y/∂b = a. */
    @Test
    void bothWaysToASourceAdd() {
        Figure a = Nodes.input(2, 0.1);
        Figure b = Nodes.input(5, 0.3);
        Figure stranger = Nodes.input(5, 0.3);
        Gradient gradient = Nodes.difference(Nodes.product(a, b), a).gradient();
        assertEquals(4, gradient.withRespectTo(a));
        assertEquals(2, gradient.withRespectTo(b));
        assertEquals(0, gradient.withRespectTo(stranger));
        assertEquals(List.of(new Part(a, 4), new Part(b, 2)), gradient.parts());
        // √((4 × 0.1)² + (2 × 0.3)²) = √0.52
        assertEquals(Math.sqrt(0.52), gradient.standardUncertainty(), 1e-15);
    }

    /** A source that pulls the other way contributes as much. */
    @Test
    void theLargestComeFirstWhateverTheirSign() {
        Figure a = Nodes.input(1, 0.1);
        Figure b = Nodes.input(1, 0.2);
        Figure c = Nodes.input(1, 0.3);
        Figure d = Nodes.exact(1);
        Figure y = Nodes.of(new Step.Sum(List.of(new Term(1, a), new Term(-5, b), new Term(-2, c), new Term(100, d))));
        List<Part> largest = y.gradient().largest(3);
        assertEquals(List.of(b, c, a), largest.stream().map(Part::source).toList());
        assertEquals(1.0, largest.get(0).contribution(), 1e-15);
        assertEquals(0.6, largest.get(1).contribution(), 1e-15);
        assertEquals(List.of(b), y.gradient().largest(1).stream().map(Part::source).toList());
        assertEquals(3, y.gradient().largest(9).size());
    }

    /** A source whose ways cancel matters to nobody, and is not named among those that matter most. */
    @Test
    void whatCancelsIsNotNamed() {
        Figure a = Nodes.input(1, 0.1);
        assertEquals(List.of(), Nodes.difference(a, a).gradient().largest(2));
    }

    /** The excess reactant and the target of what was set are no sources. */
    @Test
    void whatDoesNotMoveItIsNoSource() {
        Figure limiting = Nodes.input(1, 0.1);
        Figure excess = Nodes.input(2, 0.1);
        assertEquals(List.of(limiting), sources(Nodes.least(excess, limiting)));
        Figure set = Nodes.set(excess, 0.1, 0.02);
        assertEquals(List.of(set), sources(Nodes.product(set, Nodes.exact(3))));
    }

    private static List<Figure> sources(Figure figure) {
        return figure.gradient().parts().stream().map(Part::source).toList();
    }

    /** A relation of exact figures alone is worked out once, and never for a derivative. */
    @Test
    void noDerivativeIsWorkedOutForWhatIsExact() {
        AtomicInteger worked = new AtomicInteger();
        Figure relation = Nodes.of(new Step.Relation("test", "none", List.of(Nodes.exact(2)), of -> {
            worked.incrementAndGet();
            return of[0];
        }));
        assertFalse(relation.gradient().standardUncertainty() > 0);
        assertEquals(1, worked.get());
    }
}
