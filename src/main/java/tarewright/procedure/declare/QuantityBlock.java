package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import tarewright.chemistry.Substance;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Strength;
import tarewright.quantity.Typed;

/**
 * A {@code solid}, {@code liquid}, {@code solution} or {@code gas}.
 *
 * @param block where it stands
 * @param kind which of the four
 * @param matter the substance, or the solute; none where it is taken from the block that this is a portion of
 * @param mixture what it is where that has no formula: starch, litmus, vinegar; it has a name and hazards and takes part in no equation
 * @param rule what fixes its amount
 * @param purity mass fraction of the substance in what is weighed or measured
 * @param density mass over volume of what is measured
 * @param strength of a solution
 * @param instrument the apparatus that weighs or measures it
 * @param ribbon how it is cut by length
 * @param reactsIn the reaction that it takes part in, where the author says so
 * @param batch which pot of that reaction; empty for the only one
 * @param vessel the apparatus that it is in
 * @param portionOf the block that it is taken from
 * @param portions how often a group measures it out, at least 1; as often as what it is for, where nothing is said
 * @param madeFrom the stock or the block that it is made from
 * @param madeUpTo the volume that it is made up to
 * @param role what it does
 * @param actsAs the ion of the equation that it brings
 * @param also further solutes
 * @param found whether the students find it out
 * @param labelAs what its bottle says instead of its name
 * @param shownAs the formula shown instead of its own
 * @param keeps how long it keeps, in the author's words
 * @param gas what only a gas has
 * @param dealt the amounts that are dealt out, where there are several; the rule is then one of them
 * @param member which one of a dilution series it is
 */
public record QuantityBlock(TypedBlock block, Kind kind, Optional<At<Matter>> matter, Optional<At<Substance>> mixture, AmountRule rule, Optional<At<Typed>> purity,
        Optional<At<Typed>> density, Optional<At<Strength>> strength, Optional<At<String>> instrument, Optional<Ribbon> ribbon,
        Optional<At<String>> reactsIn, String batch, Optional<At<String>> vessel, Optional<At<String>> portionOf, int portions,
        Optional<At<String>> madeFrom, Optional<At<Typed>> madeUpTo, Role role, Optional<At<Matter>> actsAs, List<AlsoDissolved> also,
        boolean found, Optional<String> labelAs, Optional<String> shownAs, Optional<String> keeps, GasFields gas,
        Optional<Dealt> dealt, Optional<Member> member) {
    public QuantityBlock {
        also = List.copyOf(also);
    }

    public String name() {
        return block.name();
    }

    /** Whether what fixes its amount, or what it is, could not be read: one finding has said so, and its figures are silently missing. */
    public boolean unreadable() {
        boolean named = block.fields().has("substance") || block.fields().has("solute");
        return rule instanceof AmountRule.Unreadable || named && matter.isEmpty() && mixture.isEmpty();
    }

    /** The same, measured out so often. */
    QuantityBlock withPortions(int often) {
        return new QuantityBlock(block, kind, matter, mixture, rule, purity, density, strength, instrument, ribbon, reactsIn, batch, vessel, portionOf, often, madeFrom,
                madeUpTo, role, actsAs, also, found, labelAs, shownAs, keeps, gas, dealt, member);
    }

    /** The same with one of the amounts that are dealt. @param which of them, from 0 */
    public QuantityBlock dealing(int which) {
        return dealt.map(d -> with(block, d.rules().get(which), portions, member)).orElse(this);
    }

    /** The same as a member of a dilution series. */
    QuantityBlock asMember(TypedBlock named, AmountRule taken, Member which) {
        return with(named, taken, portions, Optional.of(which));
    }

    private QuantityBlock with(TypedBlock named, AmountRule other, int often, Optional<Member> which) {
        return new QuantityBlock(named, kind, matter, mixture, other, purity, density, strength, instrument, ribbon, reactsIn, batch, vessel, portionOf, often, madeFrom,
                madeUpTo, role, actsAs, also, found, labelAs, shownAs, keeps, gas, dealt, which);
    }

    public boolean is(Kind other) {
        return kind == other;
    }

    /** Several amounts, dealt in turn. @param rules one for each; @param overRuns to the runs of each group and not to the groups */
    public record Dealt(List<AmountRule> rules, boolean overRuns) {
        public Dealt {
            rules = List.copyOf(rules);
        }
    }

    /** One of a dilution series. @param series the block's own name; @param number from 1 */
    public record Member(String series, int number) {
    }

    /** The four kinds, with the state of matter that each stands for in an equation. */
    public enum Kind {
        SOLID("s"), LIQUID("l"), SOLUTION("aq"), GAS("g");

        private final String state;

        Kind(String state) {
            this.state = state;
        }

        /** IUPAC's state symbol. */
        public String state() {
            return state;
        }

        /** The word in the source. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** What a block does in the pot. */
    public enum Role { REACTS, SOLVENT, INDICATOR, RINSE, CATALYST }

    /** Cut by length. @param linear mass over length; @param step the length to which it is cut */
    public record Ribbon(At<Typed> linear, At<Typed> step) {
    }

    /** A second solute. */
    public record AlsoDissolved(Matter matter, At<Strength> strength) {
    }

    /**
     * What only a gas has.
     *
     * @param overWater collected over water, and so moist
     * @param at a room of its own
     * @param fits the window of volumes asked for
     * @param wash volume of the liquid that washes it
     * @param deadVolume volume of the apparatus outside the scale
     * @param real whether to take the second virial coefficient into account; where nothing is said, wherever it matters
     */
    public record GasFields(boolean overWater, Optional<At<Typed>> temperature, Optional<At<Typed>> pressure, Optional<At<Typed>> fits,
            Optional<At<Typed>> wash, Optional<At<Typed>> deadVolume, Optional<Boolean> real) {
        public static final GasFields NONE = new GasFields(false, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty());
    }
}
