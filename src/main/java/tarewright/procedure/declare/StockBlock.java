package tarewright.procedure.declare;

import java.math.BigDecimal;
import java.util.Optional;
import tarewright.chemistry.Substance;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;

/**
 * A bottle or a jar on the shelf: a {@code stock} block of a procedure, of a term, or of a file of its own.
 *
 * @param block where it stands
 * @param dissolved whether it is a solution ({@code solute}) or a pure substance ({@code substance})
 * @param matter what it is, or what is dissolved in it; none where that has no formula or could not be read
 * @param mixture what it is where that has no formula: starch, litmus, vinegar
 * @param strength of a solution
 * @param density mass over volume of what is in the bottle
 * @param purity mass fraction of a pure substance
 * @param pack how much one pack holds: a mass or a volume, above zero
 * @param onHand how much stands on the shelf: of the same kind as the pack where there is one, nothing or more
 * @param price of one pack; stands only beside a pack
 * @param keeps how long it keeps, in the author's words
 */
public record StockBlock(TypedBlock block, boolean dissolved, Optional<At<Matter>> matter, Optional<At<Substance>> mixture,
        Optional<At<Strength>> strength, Optional<At<Typed>> density, Optional<At<Typed>> purity, Optional<At<Typed>> pack,
        Optional<At<Typed>> onHand, Optional<At<Price>> price, Optional<String> keeps) {
    public String name() {
        return block.name();
    }

    /** What a pack costs. @param amount nothing or more @param currency as the author writes it, empty where there is none */
    public record Price(BigDecimal amount, String currency) {
    }
}
