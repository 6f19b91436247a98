package tarewright.chemistry.solution;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Confidence;
import tarewright.chemistry.Formula;
import tarewright.chemistry.FormulaResult;
import tarewright.chemistry.Provenance;
import tarewright.derivation.Figure;

/**
 * What goes into what, and whether it gets hot, when a solution is made.
 *
 * @param order what goes into what
 * @param hot whether it is known to heat strongly, is reckoned to warm the whole by {@link #WARM} or more, or may do so for all that is known
 * @param heat what is known of the heat
 * @param provenance of the order and of what is known to heat
 */
public record Care(Order order, boolean hot, Heat heat, Provenance provenance) {
    /** What is known of the heat. */
    public enum Heat {
        /** The rise is reckoned. */
        RECKONED,
        /** No figure is at hand, and it cannot come to much: a weak stock, or one of a salt. */
        LITTLE,
        /** No figure is at hand, and it may hurt. */
        NOT_KNOWN
    }

    /** What goes into what. */
    public enum Order {
        /** The acid, a little at a time, into most of the water. Never water into acid. */
        ACID_INTO_WATER,
        /** The solid, a little at a time, into most of the water, stirred and cooled. Never water onto the solid. */
        SOLID_INTO_WATER,
        /** The stock into some of the water. */
        STOCK_INTO_WATER,
        /** The solid is dissolved in some of the water. */
        DISSOLVE
    }

    /** In kelvins: a solution that warms by more is cooled before it is made up to the mark. Common practice, no source. */
    public static final double WARM = 5;

    /** In mol/m³: a stock no stronger than 1 mol/L gives off little heat when it is diluted further. Common practice, no source. */
    private static final double MILD = 1000;

    /** Acids by formula. Common practice: every acid goes into the water, however weak its stock. */
    private static final List<String> ACIDS = List.of("H2SO4", "HCl", "HNO3", "HBr", "HI", "HF", "HClO4", "H3PO4", "H3PO3", "HCOOH",
            "CH3COOH", "CCl3COOH", "CH2ClCOOH", "C2H5COOH", "CrO3");
    /** What sets free so much heat that its solution may boil or spit: from memory, with what the safety data sheets warn of. */
    private static final List<String> HOT = List.of("H2SO4", "HClO4", "HNO3", "HF", "H3PO4", "CrO3", "P4O10", "SO3", "NaOH", "KOH", "LiOH",
            "CaO", "BaO", "Na2O", "CaCl2", "MgCl2", "AlCl3", "FeCl3", "ZnCl2", "AlBr3", "TiCl4", "SnCl4", "Na2S");
    private static final Provenance MEMORY = new Provenance("common practice and safety data sheets, from memory", Confidence.MEMORY);

    /** In mol/m³: below it even 350 kJ/mol, more than nearly every salt gives, warms by less than {@link #WARM}. */
    private static final double FAINT = 60;

    /**
     * How a solution is to be made.
     *
     * @param solute of what is made
     * @param strength of what is made
     * @param rise in temperature of the whole, where it is known
     */
    public static Care of(Source source, Formula solute, Figure strength, Optional<Figure> rise) {
        boolean solid = source instanceof Source.Solid;
        // A hydrate has given off most of its heat already, and is then told by the rise alone.
        Formula taken = source instanceof Source.Solid jar ? jar.formula() : solute.anhydrous();
        boolean strong = source.strongest().map(c -> c.value() > MILD).orElse(true);
        boolean acid = listed(ACIDS, solute.anhydrous());
        boolean fierce = strong && listed(HOT, taken);
        boolean open = solid ? strength.value() > FAINT && taken.sameComposition(taken.anhydrous()) : strong && (acid || fierce);
        Heat heat = rise.isPresent() ? Heat.RECKONED : open || fierce ? Heat.NOT_KNOWN : Heat.LITTLE;
        boolean hot = fierce || rise.filter(r -> r.value() >= WARM).isPresent() || !solid && heat == Heat.NOT_KNOWN;
        Order order = acid ? Order.ACID_INTO_WATER : !solid ? Order.STOCK_INTO_WATER : hot ? Order.SOLID_INTO_WATER : Order.DISSOLVE;
        return new Care(order, hot, heat, MEMORY);
    }

    private static boolean listed(List<String> formulas, Formula formula) {
        return formulas.stream().anyMatch(f -> ((FormulaResult.Ok) Formula.parse(f)).formula().sameComposition(formula));
    }
}
