package tarewright.quantity;

import java.util.Optional;

/** How much solute a solution holds, in the notation in which the author typed it. */
public sealed interface Strength {
    /** The number and its unit. */
    Typed typed();

    /** The formula that the strength counts, where it is not the solute itself: {@code CuSO4} in {@code 3 % w/v as CuSO4}. */
    Optional<String> asFormula();

    /** Amount of solute over the volume of the solution: {@code 1.0 mol/L}; SI unit mol/m³. */
    record Molar(Typed typed, Optional<String> asFormula) implements Strength {
    }

    /** Mass of solute over the mass of the solution: {@code 5.0 % w/w}, {@code 35 g/kg}; SI unit 1, over 0 to 1. */
    record MassFraction(Typed typed, Optional<String> asFormula) implements Strength {
    }

    /**
     * Mass of solute over the volume of the solution: {@code 3 % w/v}, {@code 30 g/L}, {@code 3 g/100 mL}; SI unit kg/m³.
     * One per cent w/v is one gram in 100 mL of solution, 10 kg/m³.
     */
    record MassPerVolume(Typed typed, Optional<String> asFormula) implements Strength {
    }

    /**
     * Volume of pure liquid solute over the volume of the solution made from it: {@code 70 % v/v}; SI unit 1, over 0 to 1. The
     * volumes of solute and solvent do not add up to that of the solution.
     */
    record VolumeFraction(Typed typed, Optional<String> asFormula) implements Strength {
    }

    /**
     * Volumes of oxygen, as a gas at 0 °C and 101.325 kPa, that one volume of a hydrogen peroxide solution gives off when it
     * decomposes: {@code 20 vol}; SI unit 1.
     */
    record VolumeStrength(Typed typed, Optional<String> asFormula) implements Strength {
    }
}
