package tarewright.safety;

import java.util.Optional;
import java.util.OptionalDouble;

/** How much of a matter one of its parts is, as far as it is known. Uncertainties are standard uncertainties. */
public sealed interface Content {
    /** The undiluted substance. */
    record Pure() implements Content {
    }

    /** Nothing is known of the strength: the undiluted substance is assumed. */
    record Unstated() implements Content {
    }

    /**
     * Mass of the part over the mass of the whole.
     *
     * @param share 0 to 1
     * @param countedAs the formula whose mass is counted, where it may differ from the table's by water of crystallisation
     */
    record MassShare(double share, double uncertainty, Optional<String> countedAs) implements Content {
        public MassShare {
            Checks.share(share);
            Checks.uncertainty(uncertainty);
        }
    }

    /**
     * Amount of the part over the volume of the whole.
     *
     * @param molPerLitre 0 or more
     * @param density of the whole, in g/mL; where it is empty the lowest that it can have is taken, which overstates the mass
     * share
     */
    record Molar(double molPerLitre, double uncertainty, OptionalDouble density) implements Content {
        public Molar {
            Checks.notNegative(molPerLitre);
            Checks.uncertainty(uncertainty);
        }
    }

    /**
     * Mass of the part over the volume of the whole.
     *
     * @param gramsPerMillilitre 0 or more; 3 % w/v is 0.03
     * @param density of the whole, in g/mL, or empty as in {@link Molar}
     * @param countedAs as in {@link MassShare}
     */
    record MassPerVolume(double gramsPerMillilitre, double uncertainty, OptionalDouble density, Optional<String> countedAs)
            implements Content {
        public MassPerVolume {
            Checks.notNegative(gramsPerMillilitre);
            Checks.uncertainty(uncertainty);
        }
    }

    /**
     * Volume of the undiluted liquid over the volume of the whole.
     *
     * @param share 0 to 1
     * @param pureDensity of the undiluted liquid, in g/mL; where it is empty, twice that of water is taken
     * @param density of the whole, in g/mL, or empty as in {@link Molar}
     */
    record VolumeShare(double share, double uncertainty, OptionalDouble pureDensity, OptionalDouble density) implements Content {
        public VolumeShare {
            Checks.share(share);
            Checks.uncertainty(uncertainty);
        }
    }

    static Content pure() {
        return new Pure();
    }

    static Content unstated() {
        return new Unstated();
    }

    /** A mass share in per cent with no uncertainty. @param percent 0 to 100 */
    static Content percent(double percent) {
        return new MassShare(percent / 100, 0, Optional.empty());
    }

    /** A mass share in per cent. @param percent 0 to 100 @param uncertainty standard uncertainty in per cent */
    static Content percent(double percent, double uncertainty) {
        return new MassShare(percent / 100, uncertainty / 100, Optional.empty());
    }

    /** A molar strength with no uncertainty and no known density. */
    static Content molar(double molPerLitre) {
        return new Molar(molPerLitre, 0, OptionalDouble.empty());
    }
}
