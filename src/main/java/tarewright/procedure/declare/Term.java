package tarewright.procedure.declare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tarewright.procedure.syntax.Fields.Piece;
import tarewright.procedure.syntax.TypedBlock;
import tarewright.quantity.Typed;
import tarewright.setting.DayValue;
import tarewright.text.Span;

/**
 * A term as declared: what its sections do and print.
 *
 * @param title the term's name, as {@code Spring 2041}
 * @param school empty where none is named
 * @param paper the sheet of paper of every section
 * @param spare made beyond what is needed, as a fraction of it
 * @param documents which documents; empty for the usual ones
 * @param procedures for every section that does not list its own
 * @param copies how many handouts
 * @param sections in their order
 * @param stocks what is on the shelf
 * @param labels the sheets of labels, in the place of what a procedure says
 * @param versions of the questions' numbers, for every section that does not say its own
 */
public record Term(Optional<At<String>> title, String school, Optional<String> paper, Optional<At<Typed>> spare, List<At<String>> documents,
        List<Entry> procedures, Optional<Copies> copies, Optional<String> language, Optional<String> country, List<Section> sections,
        List<StockBlock> stocks, Optional<LabelPaper> labels, OptionalInt versions) {
    public Term {
        documents = List.copyOf(documents);
        procedures = List.copyOf(procedures);
        sections = List.copyOf(sections);
        stocks = List.copyOf(stocks);
    }

    /**
     * A procedure of a list. Those of one day share a lesson.
     *
     * @param name of its file
     * @param date ISO 8601, a day that exists; where it is not told, that of the section
     */
    public record Entry(Piece name, Optional<String> date) {
    }

    /** How many handouts lie in a packet. */
    public enum Copies {
        EACH_GROUP, EACH_STUDENT, ONE;

        /** The words in the source. */
        public String words() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * A class of students.
     *
     * @param date ISO 8601, a day that exists
     * @param procedures its own list; empty for the term's
     * @param versions of the questions' numbers
     * @param bad whether something of it could not be read, so that it cannot be printed
     */
    public record Section(TypedBlock block, OptionalInt groups, OptionalInt groupSize, Optional<String> date, Front.RoomFields room,
            List<DayValue> onTheDay, List<Entry> procedures, Optional<Copies> copies, Optional<At<Typed>> spare, OptionalInt versions, boolean bad) {
        public Section {
            onTheDay = List.copyOf(onTheDay);
            procedures = List.copyOf(procedures);
        }

        public String name() {
            return block.name();
        }

        /** Where it stands. */
        public Span at() {
            return block.nameSpan();
        }
    }
}
