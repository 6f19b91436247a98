package tarewright.chemistry;

import java.util.List;

/**
 * The pH of solutions, from the balance of charges with the protons of water counted in.
 *
 * <p>Activities are taken as concentrations in mol/L: above some 0.1 mol/L a real pH differs by tenths. The pH is found to
 * 10⁻¹² by bisection; there is no small-x approximation.
 *
 * @param pKw ionic product of water, negative logarithm
 */
public record Acidity(double pKw) {
    /** Of {@link #AT_25_C}. */
    public static final String SOURCE = "CRC Handbook, 86th edition, p. 8-40";
    /** At 25 °C. */
    public static final Acidity AT_25_C = new Acidity(13.995);

    /** pH of a strong acid that gives one proton; 7 for none at all. */
    public double ofStrongAcid(double molesPerLitre) {
        return of(-molesPerLitre, List.of());
    }

    /** pH of a strong base that gives one hydroxide. */
    public double ofStrongBase(double molesPerLitre) {
        return of(molesPerLitre, List.of());
    }

    /** pH of a weak acid of one proton. */
    public double ofWeakAcid(double molesPerLitre, double pKa) {
        return of(0, List.of(Protolyte.acid(molesPerLitre, pKa)));
    }

    /** pH of a weak base without charge. */
    public double ofWeakBase(double molesPerLitre, double pKaOfItsAcid) {
        return of(0, List.of(Protolyte.base(molesPerLitre, pKaOfItsAcid)));
    }

    /**
     * pH of an acid without charge and the salt of its base with a strong base, in one solution.
     *
     * @param acid mol/L
     * @param salt mol/L
     * @param pKa of the acid
     */
    public double ofBuffer(double acid, double salt, double pKa) {
        return of(salt, List.of(Protolyte.acid(acid + salt, pKa)));
    }

    /**
     * pH of anything: the one at which all charges sum to zero.
     *
     * @param strongCharge mol/L of charge of ions that take no part: cations of strong bases less anions of strong acids
     * @param protolytes weak acids and bases in all their forms
     */
    public double of(double strongCharge, List<Protolyte> protolytes) {
        double most = Math.abs(strongCharge) + protolytes.stream()
                .mapToDouble(p -> p.molesPerLitre() * (p.pKa().size() + Math.abs(p.chargeWithAll()))).sum();
        double reach = 1 + Math.max(0, Math.log10(1 + most));
        return Bisection.rising(pH -> -charge(pH, strongCharge, protolytes), 0, -reach, pKw + reach, 1e-12);
    }

    private double charge(double pH, double strongCharge, List<Protolyte> protolytes) {
        double sum = Math.pow(10, -pH) - Math.pow(10, pH - pKw) + strongCharge;
        for (Protolyte protolyte : protolytes) {
            sum += protolyte.charge(pH);
        }
        return sum;
    }

    /** The share of a weak acid of one proton that has given it up, 0 to 1. */
    public double dissociated(double molesPerLitre, double pKa) {
        return Protolyte.acid(1, pKa).protonsGiven(ofWeakAcid(molesPerLitre, pKa));
    }

    /** Hydroxide in mol/L at a pH. */
    public double hydroxide(double pH) {
        return Math.pow(10, pH - pKw);
    }
}
