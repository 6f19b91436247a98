package tarewright.procedure.prepare;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.resolve.RinseAndFill;
import tarewright.procedure.resolve.ResolvedQuantity;

/**
 * One substance or solution that is handed out.
 *
 * @param source the block whose bottle it is
 * @param uses what is measured out of it
 * @param fillings what rinses and fills burettes and pipettes of the class
 * @param each what one group takes in all its portions and runs, with its part of the fillings; where groups get different amounts, what the one takes that takes most
 * @param total what the class takes, with spare
 * @param ready the total rounded up to what is easily weighed or measured; of what is made by a recipe, the flasks that are filled
 * @param share what is put out for one group: its part of the spare in it, rounded down so that all shares together are no more than {@code ready}
 * @param bottle the volume of a usual bottle that holds the share; empty for what is weighed, and for what no bottle holds
 * @param dealt who gets how much, where groups get different amounts; else empty
 */
public record Provision(ResolvedQuantity source, List<ResolvedQuantity> uses, List<RinseAndFill> fillings, Figure each, Figure total, Figure ready, Figure share,
        Optional<Figure> bottle, List<Dealt> dealt) {
    public Provision {
        uses = List.copyOf(uses);
        fillings = List.copyOf(fillings);
        dealt = List.copyOf(dealt);
    }

    /** What these groups get. @param groups their numbers, from 1 */
    public record Dealt(List<Integer> groups, Figure share, Optional<Figure> bottle) {
        public Dealt {
            groups = List.copyOf(groups);
        }
    }

    /** Whether groups get different amounts of it; {@code share} is then that of those that get most. */
    public boolean varies() {
        return !dealt.isEmpty();
    }

    public String name() {
        return source.name();
    }

    /** The same, made in whole flasks. */
    Provision made(Figure volume) {
        return new Provision(source, uses, fillings, each, total, volume, share, bottle, dealt);
    }
}
