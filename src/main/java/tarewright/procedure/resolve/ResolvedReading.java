package tarewright.procedure.resolve;

import java.util.List;
import java.util.Optional;
import tarewright.derivation.Figure;
import tarewright.procedure.declare.ApparatusItem;
import tarewright.procedure.declare.ReadingBlock;

/**
 * What the students will read off.
 *
 * @param each one figure for each time that it is read; none for a reading by difference
 * @param value what stands for the reading in an answer: the one figure, or the mean
 * @param instrument that it is read with
 */
public record ResolvedReading(ReadingBlock block, List<Figure> each, Figure value, Optional<ApparatusItem> instrument) {
    public ResolvedReading {
        each = List.copyOf(each);
    }
}
