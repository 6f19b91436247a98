package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ApparatusItem;

/**
 * What burettes or pipettes of one kind take of one solution beyond what they deliver: the rinse, and what a burette still holds at the end. None of it is
 * measured out, and all of it is thrown away.
 *
 * @param rinses how often each is rinsed
 * @param rinse what one rinse takes
 * @param rests what the instruments hold at the end, those alike together; at least one
 * @param total over all instruments of the class, without spare
 */
public record RinseAndFill(ApparatusItem item, int rinses, Figure rinse, List<Rest> rests, Figure total) {
    public RinseAndFill {
        rests = List.copyOf(rests);
    }

    /**
     * @param count of instruments that end alike
     * @param fillings of each, the first one among them
     * @param stays in each after the last delivery; a pipette runs empty
     */
    public record Rest(long count, long fillings, Optional<Figure> stays) {
    }

    /** Of the whole class. */
    public long instruments() {
        return rests.stream().mapToLong(Rest::count).sum();
    }
}
