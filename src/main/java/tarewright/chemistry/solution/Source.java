package tarewright.chemistry.solution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Formula;
import tarewright.derivation.Figure;
import tarewright.derivation.Step;
import tarewright.derivation.Step.Power;
import tarewright.derivation.Symbol;
import tarewright.quantity.Dimension;
import tarewright.quantity.Unit;
import tarewright.quantity.UsualUnits;

/** What a solution is made from: how much of it brings an amount of solute, and, worked apart, what a measured amount brings. */
public sealed interface Source {
    /** As it is called, for the symbols of its figures. */
    String name();

    /** The mass or the volume that brings this amount of substance. */
    Figure take(Figure moles);

    /** The amount of substance in this mass or volume. */
    Figure moles(Figure taken);

    /** The amount concentration that cannot be passed by diluting it; none for a solid. */
    Optional<Figure> strongest();

    /** Whether it gives off vapour that hurts: it is then measured in a cylinder in the hood, not from a burette. */
    default boolean fumes() {
        return false;
    }

    /** The symbol of the mass or the volume that is taken. */
    default Symbol symbol() {
        return Symbol.ofName(this instanceof Solid ? "m" : "V", name());
    }

    private static Figure amount(String name, Step.Product product) {
        Figure moles = Figure.of(Symbol.ofName("n", name), UsualUnits.of(Dimension.AMOUNT, 1), product);
        return moles.in(UsualUnits.of(Dimension.AMOUNT, moles.value()));
    }

    /**
     * A solid that is weighed.
     *
     * @param formula what is in the jar, hydrate or not
     * @param molarMass of one formula unit of it; one unit brings one of the solute
     * @param purity mass fraction of it in what is weighed, where it is stated
     */
    record Solid(String name, Formula formula, Figure molarMass, Optional<Figure> purity) implements Source {
        @Override
        public Figure take(Figure moles) {
            List<Power> powers = new ArrayList<>(List.of(new Power(moles, 1), new Power(molarMass, 1)));
            purity.ifPresent(w -> powers.add(new Power(w, -1)));
            return Figure.of(symbol(), UsualUnits.of(Dimension.MASS, 1), new Step.Product(1, powers));
        }

        @Override
        public Figure moles(Figure taken) {
            List<Power> powers = new ArrayList<>(List.of(new Power(taken, 1)));
            purity.ifPresent(w -> powers.add(new Power(w, 1)));
            powers.add(new Power(molarMass, -1));
            return amount(name, new Step.Product(1, powers));
        }

        @Override
        public Optional<Figure> strongest() {
            return Optional.empty();
        }
    }

    /**
     * A liquid or a solution that is measured by its volume.
     *
     * @param strength as it is stated
     * @param concentration that comes of it
     * @param fumes whether it gives off vapour that hurts
     */
    record Stock(String name, StockStrength strength, Figure concentration, boolean fumes) implements Source {
        private static final Unit MILLILITRE = UsualUnits.of(Dimension.VOLUME, 0);

        /** A stock by its strength. */
        public static Stock of(String name, StockStrength strength) {
            return new Stock(name, strength, strength.concentration(Symbol.ofName("c", name)), false);
        }

        /** The same, known to give off vapour that hurts. */
        public Stock fuming() {
            return new Stock(name, strength, concentration, true);
        }

        @Override
        public Figure take(Figure moles) {
            return Figure.of(symbol(), MILLILITRE, new Step.Product(1, List.of(new Power(moles, 1), new Power(concentration, -1))));
        }

        @Override
        public Figure moles(Figure taken) {
            List<Power> powers = new ArrayList<>(List.of(new Power(taken, 1)));
            powers.addAll(strength.product().powers());
            return amount(name, new Step.Product(strength.product().coefficient(), powers));
        }

        @Override
        public Optional<Figure> strongest() {
            return Optional.of(concentration);
        }
    }
}
