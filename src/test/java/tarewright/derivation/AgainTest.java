package tarewright.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Working a derivation out again with other values. */
class AgainTest {
    private final Figure mass = Nodes.input(6, 0.1);
    private final Figure molarMass = Nodes.exact(3);
    private final Figure amount = Nodes.quotient(mass, molarMass);
    private final Figure twice = Nodes.product(amount, amount);

    @Test
    void withNothingChangedNothingChanges() {
        assertEquals(2, new Again().value(amount));
        assertEquals(4, new Again().value(twice));
    }

    /** 9 / 3 = 3, squared 9; with the amount itself taken as 5, squared 25, whatever the mass. */
    @Test
    void aChangeReachesWhatStandsOnIt() {
        assertEquals(3, new Again().with(mass, 9).value(amount));
        assertEquals(9, new Again().with(mass, 9).value(twice));
        assertEquals(25, new Again().with(mass, 9).with(amount, 5).value(twice));
        assertEquals(4, twice.value());
    }

    /** Two changes count together: 9 / 2 = 4.5. */
    @Test
    void changesCountTogether() {
        assertEquals(4.5, new Again().with(mass, 9).with(molarMass, 2).value(amount));
    }

    @Test
    void aLaterChangeCountsToo() {
        Again again = new Again().with(molarMass, 2);
        assertEquals(3, again.value(amount));
        assertEquals(4.5, again.with(mass, 9).value(amount));
    }

    /** What the scale shows is a whole number of divisions whatever the truth. */
    @Test
    void whatIsSetFollowsItsTargetInDivisions() {
        assertEquals(1.5, new Again().with(mass, 1.3).value(Nodes.set(mass, 0.5, 0)));
    }

    @Test
    void eachFigureIsWorkedOutOnce() {
        assertEquals(7, new Again().with(mass, 7).value(Nodes.doubled(mass)));
    }
}
