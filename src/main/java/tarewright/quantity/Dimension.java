package tarewright.quantity;

/**
 * A product of powers of the five base quantities that a teaching laboratory meets: length L, mass M, time T, thermodynamic
 * temperature Θ and amount of substance N (SI Brochure, 9th edition, 2.3.3).
 */
public record Dimension(int length, int mass, int time, int temperature, int amount) {
    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0);
    public static final Dimension LENGTH = new Dimension(1, 0, 0, 0, 0);
    public static final Dimension MASS = new Dimension(0, 1, 0, 0, 0);
    public static final Dimension TIME = new Dimension(0, 0, 1, 0, 0);
    public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 1, 0);
    public static final Dimension AMOUNT = new Dimension(0, 0, 0, 0, 1);
    public static final Dimension AREA = LENGTH.power(2);
    public static final Dimension VOLUME = LENGTH.power(3);
    public static final Dimension PRESSURE = new Dimension(-1, 1, -2, 0, 0);
    public static final Dimension ENERGY = new Dimension(2, 1, -2, 0, 0);
    /** Amount of substance over volume. */
    public static final Dimension CONCENTRATION = AMOUNT.over(VOLUME);
    public static final Dimension DENSITY = MASS.over(VOLUME);
    public static final Dimension MOLAR_MASS = MASS.over(AMOUNT);
    public static final Dimension MOLAR_VOLUME = VOLUME.over(AMOUNT);
    public static final Dimension LINEAR_DENSITY = MASS.over(LENGTH);

    public Dimension times(Dimension other) {
        return new Dimension(length + other.length, mass + other.mass, time + other.time, temperature + other.temperature,
                amount + other.amount);
    }

    public Dimension over(Dimension other) {
        return times(other.power(-1));
    }

    public Dimension power(int exponent) {
        return new Dimension(length * exponent, mass * exponent, time * exponent, temperature * exponent, amount * exponent);
    }
}
