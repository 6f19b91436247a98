package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.Units;

/** A figure under another unit, symbol or number of decimals says the same thing. */
class FigureTest {
    private static final Unit MILLILITRE = Units.symbol("mL").orElseThrow();
    private static final Unit LITRE = Units.symbol("L").orElseThrow();
    private static final Figure VOLUME = Figure.given(Symbol.ofName("V", "acid"), MILLILITRE, 25e-6, new Origin.Author()).uncertain(3e-8).shownTo(2);

    @Test
    void isShownInItsUnit() {
        assertEquals(25e-6, VOLUME.value());
        assertEquals(25, VOLUME.shownValue(), 1e-12);
        assertEquals("V(acid) = 25.0 mL", Figure.given(VOLUME.symbol(), MILLILITRE, MILLILITRE.toSi(25), new Origin.Author()).toString());
        // SI Brochure, 9th edition, 2.3.1: t/°C = T/K - 273.15.
        Figure room = Figure.given(Symbol.alone("T"), Units.symbol("°C").orElseThrow(), 298.15, new Origin.Circumstance("temperature of room"));
        assertEquals(25, room.shownValue(), 1e-12);
        assertEquals(Dimension.TEMPERATURE, room.dimension());
    }

    @Test
    void anotherUnitChangesNeitherValueNorUncertainty() {
        Figure litres = VOLUME.in(LITRE);
        assertEquals(0.025, litres.shownValue(), 1e-15);
        assertEquals(VOLUME.value(), litres.value());
        assertEquals(3e-8, litres.ownUncertainty());
        assertEquals(3e-8, litres.standardUncertainty());
        assertSame(LITRE, litres.unit());
    }

    /** Two decimals of a millilitre are not two of a litre. */
    @Test
    void decimalsBelongToTheUnit() {
        assertEquals(OptionalInt.empty(), VOLUME.in(LITRE).decimals());
        assertEquals(OptionalInt.of(2), VOLUME.in(MILLILITRE).decimals());
        assertEquals(OptionalInt.of(2), VOLUME.uncertain(1e-8).decimals());
        assertEquals(OptionalInt.of(2), VOLUME.as(Symbol.alone("V")).decimals());
        assertEquals(OptionalInt.empty(), VOLUME.in(LITRE).as(Symbol.alone("V")).decimals());
        assertEquals(3e-8, VOLUME.shownTo(1).ownUncertainty());
    }

    @Test
    void aVolumeIsNotShownInGrams() {
        Unit gram = Units.symbol("g").orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> VOLUME.in(gram));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, Double.NaN, Double.POSITIVE_INFINITY})
    void anUncertaintyIsFiniteAndNotNegative(double wrong) {
        assertThrows(IllegalArgumentException.class, () -> VOLUME.uncertain(wrong));
    }

    @Test
    void aFigureMayBeExact() {
        assertEquals(0, VOLUME.uncertain(0).standardUncertainty());
        assertEquals(List.of(), VOLUME.uncertain(0).gradient().parts());
    }

    /** A law: a figure under another symbol moves with the first, so that their difference is exact. */
    @Test
    void anotherSymbolIsNoOtherSource() {
        Figure same = VOLUME.as(Symbol.words("what the pipette delivers"));
        assertEquals(VOLUME.value(), same.value());
        assertEquals(0, same.ownUncertainty());
        assertEquals(3e-8, same.standardUncertainty(), 1e-20);
        assertEquals(0, Nodes.difference(same, VOLUME).standardUncertainty());
        assertEquals("what the pipette delivers", same.symbol().plain());
        assertEquals(List.of(VOLUME), same.from());
    }

    /** What a figure brings in itself comes on top of what passes: √(3² + 4²) = 5. */
    @Test
    void ownUncertaintyComesOnTop() {
        Figure passed = Nodes.of(new Step.Same(Nodes.input(1, 0.03))).uncertain(0.04);
        assertEquals(0.05, passed.standardUncertainty(), 1e-15);
    }
}
