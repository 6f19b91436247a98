package tarewright.procedure.recipe;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.chemistry.Formula;
import tarewright.chemistry.solution.Source;
import tarewright.chemistry.solution.StockStrength;
import tarewright.procedure.declare.StockBlock;
import tarewright.safety.Content;
import tarewright.safety.Form;
import tarewright.safety.Matter;
import tarewright.safety.Part;

/**
 * What a solution is made from.
 *
 * @param kind where it is known from
 * @param source how much of it brings how much
 * @param formula of what is in it
 * @param stock the bottle on the shelf, where it is one
 */
public record Ingredient(Kind kind, Source source, Formula formula, Optional<StockBlock> stock) {
    /** Where it is known from. */
    public enum Kind {
        /** A stock block. */
        SHELF,
        /** Another block of the procedure. */
        BLOCK,
        /** As it is usually sold: the label of the bottle is to be checked. */
        USUAL,
        /** The pure solid, no stock being named. */
        SOLID
    }

    public String name() {
        return source.name();
    }

    /** As it is classified when it is handled, before any water is added. A solid counts as wholly pure. */
    public Matter undiluted() {
        boolean solid = source instanceof Source.Solid;
        return Matter.of(name(), solid ? Form.SOLID : Form.SOLUTION, List.of(new Part(name(), Optional.of(formula.plain()), content())));
    }

    private Content content() {
        if (!(source instanceof Source.Stock stock)) {
            return Content.pure();
        }
        if (stock.strength() instanceof StockStrength.MassShare share) {
            return share.share().value() < 1 ? Content.percent(100 * share.share().value()) : Content.pure();
        }
        return new Content.Molar(stock.concentration().value() / 1000, 0, OptionalDouble.empty());
    }
}
