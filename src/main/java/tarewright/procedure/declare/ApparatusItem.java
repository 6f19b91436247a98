package tarewright.procedure.declare;

import java.util.Optional;
import java.util.OptionalDouble;
import tarewright.quantity.Typed;
import tarewright.text.Span;

/**
 * One line of an {@code apparatus} block.
 *
 * @param name by which other blocks call it
 * @param words what to print
 * @param capacity the most that it holds or reads
 * @param graduation distance of its marks
 * @param readsTo what it is read to, where that differs from a mark
 * @param least the lower end of its range
 * @param within largest error of a reading, as stated by its maker
 * @param delivers what one filling delivers
 * @param share how many there are to how many
 * @param usedUp whether it is used up
 * @param kept whether the group keeps it
 * @param closed whether it is shut while something forms in it
 */
public record ApparatusItem(String name, String words, Optional<At<Typed>> capacity, Optional<At<Typed>> graduation,
        Optional<At<Typed>> readsTo, Optional<At<Typed>> least, Optional<At<Typed>> within, Optional<At<Typed>> delivers, Share share,
        boolean usedUp, boolean kept, boolean closed, Span at) {

    /** How many there are. @param count of them @param perGroups for so many groups; 0 for the whole class, -1 for each student */
    public record Share(int count, int perGroups) {
        public static final int CLASS = 0;
        public static final int STUDENT = -1;
    }

    /** What a reading or a setting goes in steps of, in coherent SI units: what it is read to, else its marks, else what it delivers. */
    public OptionalDouble division() {
        return readsTo.or(() -> graduation).or(() -> delivers).map(d -> OptionalDouble.of(d.value().unit().factor() * d.value().value()))
                .orElse(OptionalDouble.empty());
    }

    /** The typed form of {@link #division()}. */
    public Optional<Typed> divisionTyped() {
        return readsTo.or(() -> graduation).or(() -> delivers).map(At::value);
    }

    /**
     * The standard uncertainty of one reading or one setting, in coherent SI units: rectangular over the stated largest error, else over half a
     * division (JCGM 100:2008, 4.3.7); a thing that delivers a fixed amount without a stated error: half of the last digit of that amount.
     */
    public OptionalDouble standardUncertainty() {
        if (within.isPresent()) {
            Typed w = within.get().value();
            return OptionalDouble.of(w.value() * w.unit().factor() / Math.sqrt(3));
        }
        Optional<Typed> marks = readsTo.or(() -> graduation).map(At::value);
        if (marks.isPresent()) {
            return OptionalDouble.of(marks.get().value() * marks.get().unit().factor() / 2 / Math.sqrt(3));
        }
        return delivers.map(d -> OptionalDouble.of(d.value().lastDigit() * d.value().unit().factor() / 2 / Math.sqrt(3)))
                .orElse(OptionalDouble.empty());
    }
}
