package tarewright.chemistry.solution;

import java.util.List;
import java.util.stream.Stream;
import tarewright.chemistry.Acidity;
import tarewright.chemistry.Protolyte;

/**
 * What is dissolved, as the balance of charges sees it: of one mole, or in mol/L of a solution.
 *
 * @param strongCharge of ions that take no part: cations of strong bases less anions of strong acids
 * @param weak weak acids and bases, in whichever form they were put in
 */
public record InWater(double strongCharge, List<Protolyte> weak) {
    /** Water alone, and what only brings its own ions, hydrogen and hydroxide: the balance of charges is solved for them. */
    public static final InWater NOTHING = new InWater(0, List.of());

    public InWater {
        weak = List.copyOf(weak);
    }

    /** So many times as much. @param often not negative; mol/L, where this is one mole */
    public InWater times(double often) {
        return new InWater(strongCharge * often,
                weak.stream().map(w -> new Protolyte(w.molesPerLitre() * often, w.pKa(), w.chargeWithAll())).toList());
    }

    /** Both in one solution. */
    public InWater and(InWater other) {
        return new InWater(strongCharge + other.strongCharge, Stream.concat(weak.stream(), other.weak.stream()).toList());
    }

    /** The pH of a solution that holds so much in a litre. */
    public double pH(Acidity water) {
        return water.of(strongCharge, weak);
    }

    /** Moles of acid, or if negative of alkali, that have to be taken up to bring it to a pH, free ions of water apart. */
    public double acidAt(double pH) {
        return -strongCharge - weak.stream().mapToDouble(w -> w.molesPerLitre() * (w.chargeWithAll() - w.protonsGiven(pH))).sum();
    }
}
