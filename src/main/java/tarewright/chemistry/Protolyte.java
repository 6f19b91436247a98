package tarewright.chemistry;

import java.util.List;

/**
 * Something dissolved that can give up protons, as much as was put in, whatever of it is with or without them.
 *
 * @param molesPerLitre total concentration, not negative
 * @param pKa one for each proton, strongest first
 * @param chargeWithAll charge number of the form that has all these protons: 0 for acetic acid, 1 for ammonium
 */
public record Protolyte(double molesPerLitre, List<Double> pKa, int chargeWithAll) {
    public Protolyte {
        pKa = List.copyOf(pKa);
        if (!(molesPerLitre >= 0) || Double.isInfinite(molesPerLitre)) {
            throw new IllegalArgumentException("concentration " + molesPerLitre);
        }
    }

    /** A weak acid without charge, such as acetic acid. */
    public static Protolyte acid(double molesPerLitre, Double... pKa) {
        return new Protolyte(molesPerLitre, List.of(pKa), 0);
    }

    /** A weak base without charge, such as ammonia, by the pKa of its acid. */
    public static Protolyte base(double molesPerLitre, double pKaOfItsAcid) {
        return new Protolyte(molesPerLitre, List.of(pKaOfItsAcid), 1);
    }

    /** How many protons one of it has given up on average at a pH, from 0 to the number of its pKa. */
    public double protonsGiven(double pH) {
        // The greatest exponent is taken out first, so that no power overflows.
        double[] exponents = new double[pKa.size() + 1];
        double greatest = 0;
        for (int i = 0; i < pKa.size(); i++) {
            exponents[i + 1] = exponents[i] + pH - pKa.get(i);
            greatest = Math.max(greatest, exponents[i + 1]);
        }
        double weights = 0;
        double given = 0;
        for (int i = 0; i < exponents.length; i++) {
            double weight = Math.pow(10, exponents[i] - greatest);
            weights += weight;
            given += i * weight;
        }
        return given / weights;
    }

    /** Charge in mol/L that it carries at a pH. */
    double charge(double pH) {
        return molesPerLitre * (chargeWithAll - protonsGiven(pH));
    }
}
