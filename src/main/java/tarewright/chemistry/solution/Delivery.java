package tarewright.chemistry.solution;

import java.util.List;
import tarewright.derivation.Figure;
import tarewright.derivation.Reason;
import tarewright.derivation.Step;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Rounding;
import tarewright.quantity.StandardUncertainty;

/**
 * What a technician measures an amount with, by its size, and the division that it is set to. Common practice, no source:
 * chosen so that half a division is at most 1 % of the amount wherever there is such an instrument.
 */
public enum Delivery {
    /** A mass. */
    BALANCE,
    /** A volume that a bulb pipette has. */
    BULB_PIPETTE,
    /** Below 25 mL. */
    GRADUATED_PIPETTE,
    /** From 25 mL to 50 mL. */
    BURETTE,
    /** From 50 mL. */
    CYLINDER;

    private record Band(double from, double division) {
    }

    private static final double GRAM = 1e-3;
    private static final double MILLILITRE = 1e-6;
    private static final List<Band> MASSES = List.of(new Band(1000 * GRAM, GRAM), new Band(GRAM, 0.01 * GRAM),
            new Band(0.1 * GRAM, 0.001 * GRAM), new Band(0, 0.0001 * GRAM));
    private static final List<Band> VOLUMES = List.of(new Band(1000 * MILLILITRE, 10 * MILLILITRE),
            new Band(250 * MILLILITRE, 5 * MILLILITRE), new Band(50 * MILLILITRE, MILLILITRE),
            new Band(5 * MILLILITRE, 0.05 * MILLILITRE), new Band(0, 0.01 * MILLILITRE));

    /** Half a division over the amount, above which it is not measured well enough: a weighing or pipetting to 1 %. */
    public static final double COARSE = 0.01;

    /** Cylinders of 10, 25, 50 and 100 mL. */
    private static final List<Band> CYLINDERS = List.of(new Band(1000 * MILLILITRE, 10 * MILLILITRE), new Band(250 * MILLILITRE, 5 * MILLILITRE),
            new Band(50 * MILLILITRE, MILLILITRE), new Band(25 * MILLILITRE, 0.5 * MILLILITRE), new Band(10 * MILLILITRE, 0.2 * MILLILITRE), new Band(0, 0.1 * MILLILITRE));
    /** From here half a division of the smallest cylinder is no more than 1 %. */
    private static final double LEAST_IN_CYLINDER = 5 * MILLILITRE;

    /** What measures so much of a source: what fumes is not filled into a burette. */
    static Delivery of(Figure amount, Source source) {
        return inCylinder(amount, source) ? CYLINDER : of(amount);
    }

    private static boolean inCylinder(Figure amount, Source source) {
        return source.fumes() && amount.value() >= LEAST_IN_CYLINDER * (1 - COARSE);
    }

    /** What measures this mass or volume. */
    static Delivery of(Figure amount) {
        if (amount.dimension().equals(Dimension.MASS)) {
            return BALANCE;
        }
        if (Flasks.isBulb(amount.value())) {
            return BULB_PIPETTE;
        }
        return amount.value() < 25 * MILLILITRE ? GRADUATED_PIPETTE : amount.value() < 50 * MILLILITRE ? BURETTE : CYLINDER;
    }

    /** One division, in kg or m³, for an amount in the same. */
    static double division(Figure amount) {
        return division(amount, amount.dimension().equals(Dimension.MASS) ? MASSES : VOLUMES);
    }

    private static double division(Figure amount, List<Band> bands) {
        return bands.stream().filter(band -> amount.value() >= band.from()).findFirst().orElse(bands.get(bands.size() - 1)).division();
    }

    /** The amount as it is set on the instrument for its source. */
    static Figure set(Figure amount, Source source) {
        return set(amount, source.symbol(), inCylinder(amount, source) ? division(amount, CYLINDERS) : division(amount));
    }

    /** The amount as it is set on its instrument. */
    static Figure set(Figure amount, Symbol symbol) {
        return set(amount, symbol, division(amount));
    }

    private static Figure set(Figure amount, Symbol symbol, double division) {
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(division / amount.unit().factor()) - 1e-9));
        return Figure.of(symbol, amount.unit(), new Step.Set(amount, new Rounding(Rounding.Direction.NEAREST, division), Reason.INSTRUMENT))
                .uncertain(StandardUncertainty.rectangular(division / 2)).shownTo(decimals);
    }
}
