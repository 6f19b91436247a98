package tarewright.procedure.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ReactionBlock;

/**
 * A reaction with what goes on in its pots.
 *
 * @param enthalpy of the reaction as written, where the table has every species
 * @param heat set free by one group
 * @param temperatureRise of the liquids of the pot, if all the heat stays in them
 */
public record ResolvedReaction(ReactionBlock block, List<PotAccount> pots, Optional<Figure> enthalpy, Optional<Figure> heat,
        Optional<Figure> temperatureRise) {
    public ResolvedReaction {
        pots = List.copyOf(pots);
    }

    public String name() {
        return block.name();
    }

    /**
     * One pot.
     *
     * @param batch empty for the only pot
     * @param limiting the block, or blocks, whose species is used up first
     * @param extent of the reaction
     * @param reactants each species of the left side that is there
     * @param leftOver by block name, what is not used up
     */
    public record PotAccount(String batch, List<String> limiting, Optional<Figure> extent, List<Reactant> reactants, Map<String, Figure> leftOver) {
        public PotAccount {
            limiting = List.copyOf(limiting);
            reactants = List.copyOf(reactants);
            leftOver = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(leftOver));
        }
    }

    /** @param blocks that bring the species; @param moles that are there; @param turns amount over coefficient, in mol */
    public record Reactant(String formula, int coefficient, List<String> blocks, Figure moles, double turns) {
        public Reactant {
            blocks = List.copyOf(blocks);
        }
    }
}
